package curvestock.job;

import curvestock.drawing.PaperSize;
import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.SegmentPlan;
import curvestock.helix.verdict.Verdict.State;
import curvestock.layout.LaidSheet;
import curvestock.machine.MachineSetup;
import curvestock.packing.SearchSettings;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.purchase.Panel;
import curvestock.purchase.Product;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.sheet.SizeTolerance;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that a job file says.
 *
 * @param title what the job is called on drawings
 * @param note free text of the user, may be empty
 * @param invented whether the file says that its data are made up; drawings then say so too
 * @param style how lengths are printed
 * @param currency printed before prices, may be empty
 * @param sheets what can be cut from; at least one, names all different
 * @param cutting kerf, extra and margin
 * @param helix the ring of segments wanted, if any; of a whole circular helix its plain ring
 * @param structure the whole helix wanted, if the file says more of it than the ring
 * @param pieces the pieces listed one by one; may be empty if there is a helix
 * @param search seed and effort
 * @param rates what cutting and joining cost
 * @param terms on which terms sheets are bought
 * @param spares pieces beyond those wanted
 * @param machine how the files for machines are written
 * @param paper what full-size patterns are tiled on
 * @param laid sheets laid by hand; empty to have them laid
 * @param sources the texts it was read from, one for each job of a batch; empty if it is no longer
 *     what they say
 * @param members the jobs whose pieces it asks for, if it is several together; empty for one
 */
public record Job(
    String title,
    String note,
    boolean invented,
    LengthStyle style,
    String currency,
    List<SheetStock> sheets,
    Cutting cutting,
    Optional<SegmentPlan> helix,
    Optional<HelixOrder> structure,
    List<Demand> pieces,
    SearchSettings search,
    Rates rates,
    Terms terms,
    Spares spares,
    MachineSetup machine,
    PaperSize paper,
    List<LaidSheet> laid,
    List<JobSource> sources,
    List<Batch.Member> members) {

  /**
   * A helix whose pieces the job cuts.
   *
   * @param numbers what stands before the numbers of its schedule on the wood
   * @param ids what stands before the ids of its pieces
   */
  public record Bed(String numbers, String ids, HelixPlan plan) {}

  /**
   * @throws IllegalArgumentException if there is no sheet, or nothing to cut
   */
  public Job {
    sheets = List.copyOf(sheets);
    pieces = List.copyOf(pieces);
    laid = List.copyOf(laid);
    sources = List.copyOf(sources);
    members = List.copyOf(members);
    if (sheets.isEmpty()) {
      throw new IllegalArgumentException("a job must have at least one sheet");
    }
    if (helix.isEmpty() && structure.isEmpty() && pieces.isEmpty()) {
      throw new IllegalArgumentException("a job must have a helix, pieces, or both");
    }
  }

  /** The same job with another seed or effort. */
  public Job with(SearchSettings settings) {
    return new Job(
        title, note, invented, style, currency, sheets, cutting, helix, structure, pieces, settings,
        rates, terms, spares, machine, paper, laid, sources, members);
  }

  /** The helixes whose pieces it cuts: its own, or those of the jobs that it is together. */
  public List<Bed> beds() {
    List<Bed> beds = new ArrayList<>();
    structure.ifPresent(order -> beds.add(new Bed("", "", order.plan())));
    for (Batch.Member member : members) {
      member
          .job()
          .structure()
          .ifPresent(
              order -> beds.add(new Bed(member.tag() + "/", member.tag() + ".", order.plan())));
    }
    return beds;
  }

  /**
   * Which rules of the helix fail, for example {@code this helix fails: grade}; empty if none does
   * or there is none.
   */
  public Optional<String> failure() {
    List<String> rules =
        structure.stream()
            .flatMap(order -> order.plan().verdicts().stream())
            .filter(verdict -> verdict.state() == State.FAIL)
            .map(verdict -> verdict.rule().title())
            .distinct()
            .toList();
    return rules.isEmpty()
        ? Optional.empty()
        : Optional.of("this helix fails: " + String.join(", ", rules));
  }

  /** The same job; if its helix fails, the title says so, and with it every sheet and paper. */
  public Job marked() {
    return failure()
        .filter(words -> !title.endsWith(words))
        .map(words -> titled(title + " · " + words))
        .orElse(this);
  }

  private Job titled(String other) {
    return new Job(
        other, note, invented, style, currency, sheets, cutting, helix, structure, pieces, search,
        rates, terms, spares, machine, paper, laid, sources, members);
  }

  /** The same job with other spares. */
  public Job with(Spares others) {
    return new Job(
        title, note, invented, style, currency, sheets, cutting, helix, structure, pieces, search,
        rates, terms, others, machine, paper, laid, sources, members);
  }

  /** The same job with patterns on other paper. */
  public Job with(PaperSize other) {
    return new Job(
        title, note, invented, style, currency, sheets, cutting, helix, structure, pieces, search,
        rates, terms, spares, machine, other, laid, sources, members);
  }

  /** The same job with its sheets laid by hand, or not, if there are none. */
  public Job laid(List<LaidSheet> others) {
    return new Job(
        title, note, invented, style, currency, sheets, cutting, helix, structure, pieces, search,
        rates, terms, spares, machine, paper, others, sources, members);
  }

  /** The same job on other sheets, cut another way. */
  public Job on(List<SheetStock> stock, Cutting way) {
    return new Job(
        title, note, invented, style, currency, stock, way, helix, structure, pieces, search, rates,
        terms, spares, machine, paper, List.of(), List.of(), members);
  }

  /** The same job that asks for exactly these pieces, and for no helix: what comparisons plan. */
  public Job only(List<Demand> wanted) {
    return new Job(
        title,
        note,
        invented,
        style,
        currency,
        sheets,
        cutting,
        Optional.empty(),
        Optional.empty(),
        wanted,
        search,
        rates,
        terms,
        spares,
        machine,
        paper,
        List.of(),
        List.of(),
        List.of());
  }

  /** All pieces to cut: those of the helix, then those listed, with spares. Ids are unique. */
  public List<Demand> demands() {
    return wanted().stream().map(spares::with).toList();
  }

  /** The pieces that the layout needs, without spares, in the order of {@link #demands}. */
  public List<Demand> wanted() {
    List<Demand> wanted =
        structure
            .map(HelixOrder::demands)
            .or(() -> helix.map(SegmentPlan::demands))
            .orElse(List.of());
    return Stream.concat(wanted.stream(), pieces.stream()).toList();
  }

  /**
   * Whether the piece may be cut from the sheet: by the piece's thickness, or, if it has none, by
   * that of the first sheet.
   */
  public boolean suits(Piece piece, SheetStock sheet) {
    return sheet.isAsThickAs(piece.thickness().orElse(sheets.get(0).thickness()));
  }

  /** How much less than its size a sheet may measure when it comes home. */
  public SizeTolerance tolerance(SheetStock sheet) {
    return terms.tolerance(sheet, style);
  }

  /** The same job if every sheet comes as small as its tolerance allows. */
  public Job onSmallestSheets() {
    return on(sheets.stream().map(sheet -> tolerance(sheet).smallest(sheet)).toList(), cutting);
  }

  /** The sheets as they are sold, carried whole. */
  public List<Product> wholeProducts() {
    return sheets.stream().map(terms::whole).toList();
  }

  /**
   * The sheets as they come under the saw: whole, or ripped so that they can be carried and fit the
   * machine's bed. Those for which there is no way are left out.
   */
  public List<Product> products() {
    return sheets.stream().flatMap(sheet -> product(sheet).stream()).toList();
  }

  private Optional<Product> product(SheetStock sheet) {
    return machine
        .bed()
        .map(bed -> terms.onBed(sheet, bed, cutting.kerf()))
        .orElseGet(() -> terms.carried(sheet));
  }

  /** Everything that may lie under the saw: the sheets, and the panels that a store rips. */
  public List<SheetStock> boards() {
    return Stream.concat(
            sheets.stream(),
            products().stream()
                .flatMap(product -> product.breakdowns().stream())
                .flatMap(breakdown -> breakdown.panels().stream())
                .map(Panel::stock))
        .distinct()
        .toList();
  }

  /** Whether the job says anything of the machine that cuts it. */
  public boolean isForMachine() {
    return !machine.equals(MachineSetup.DEFAULT);
  }
}
