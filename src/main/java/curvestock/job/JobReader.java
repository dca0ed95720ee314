package curvestock.job;

import curvestock.drawing.PaperSize;
import curvestock.machine.MachineSetup;
import curvestock.packing.SearchSettings;
import curvestock.piece.Demand;
import curvestock.purchase.StoreCuts;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import curvestock.units.TaxRate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads a job file of format 2, or of format 1, whose `extra:` it translates. */
public final class JobReader {

  /** The number after {@code curvestock:} of a file written today. */
  public static final int FORMAT = 2;

  /** In this format {@code extra:} was added to a single kerf, whatever it left standing. */
  private static final int FIRST_FORMAT = 1;

  /** More pieces than this are a slip of the pen. */
  private static final long MOST_PIECES = 100_000;

  private static final int MOST_SHEET_KINDS = 100;
  private static final int LONGEST_TITLE = 120;
  private static final int LONGEST_NOTE = 4000;
  private static final int LONGEST_CURRENCY = 8;
  private static final int LONGEST_PATH = 400;
  private static final String FORMAT_KEY = "curvestock";

  private final Problems problems;
  private final StockFiles stockFiles;
  private final String text;
  private Optional<String> stockText = Optional.empty();
  private int format = FORMAT;

  private JobReader(String text, Problems problems, StockFiles stockFiles) {
    this.text = text;
    this.problems = problems;
    this.stockFiles = stockFiles;
  }

  /**
   * The job that the text describes.
   *
   * @param text the whole file
   * @param fileName what to call the file in messages
   * @throws JobException if anything is wrong; it holds every problem found
   */
  public static Job read(String text, String fileName) {
    return read(text, fileName, StockFiles.NONE);
  }

  /**
   * The job that the text describes.
   *
   * @param stockFiles where its {@code stock-file:} is found
   * @throws JobException if anything is wrong; it holds every problem found
   */
  public static Job read(String text, String fileName, StockFiles stockFiles) {
    Problems problems = new Problems(fileName);
    Optional<Node> root = TreeReader.read(text, problems);
    Optional<Job> job = root.flatMap(node -> new JobReader(text, problems, stockFiles).job(node));
    problems.throwIfAny();
    return job.orElseThrow(() -> new IllegalStateException("no job and no problem"));
  }

  private Optional<Job> job(Node root) {
    if (!(root instanceof Node.Mapping mapping)) {
      problems.add(
          root.place(),
          "",
          "a job file must be a block of keys that begins with `curvestock: 2`, but this is "
              + root.kind());
      return Optional.empty();
    }
    if (!isOurFormat(mapping)) {
      return Optional.empty();
    }
    Optional<LengthUnit> unit = unit(mapping);
    Block top =
        new Block(
            new Reading(problems, unit),
            "",
            mapping,
            List.of(
                FORMAT_KEY,
                "title",
                "note",
                "invented",
                "units",
                "print",
                "currency",
                "sheets",
                "cutting",
                "helix",
                "pieces",
                "search",
                "rates",
                "machine",
                "stock-file",
                "store-cuts",
                "tax",
                "spares",
                "patterns",
                "limits",
                "laid"));
    return job(top, unit);
  }

  /** Of a job that gives every number its own unit: that in which its first sheet is made. */
  private static LengthUnit unitOf(List<SheetStock> sheets) {
    boolean inches =
        !sheets.isEmpty()
            && isWhole(sheets.get(0).length().inches())
            && isWhole(sheets.get(0).width().inches());
    return inches ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
  }

  private static boolean isWhole(double value) {
    return Math.abs(value - Math.rint(value)) < 1e-6;
  }

  private Optional<Job> job(Block top, Optional<LengthUnit> unit) {
    Optional<String> title = top.find("title").flatMap(field -> field.line(LONGEST_TITLE));
    Optional<String> note = top.find("note").flatMap(field -> field.text(LONGEST_NOTE));
    Optional<Boolean> invented = top.find("invented").flatMap(Field::flag);
    Optional<LengthStyle> style = PrintReader.read(top.find("print"), unit);
    Optional<String> currency = top.find("currency").flatMap(field -> field.line(LONGEST_CURRENCY));
    Optional<List<SheetReader.Offer>> offers = offers(top);
    Optional<List<SheetStock>> sheets =
        offers.map(list -> list.stream().flatMap(offer -> offer.stocks().stream()).toList());
    Optional<LengthUnit> own = unit.or(() -> sheets.map(JobReader::unitOf));
    CuttingReader cuttingReader = new CuttingReader(format == FIRST_FORMAT);
    Optional<Cutting> cutting =
        top.need("cutting", "cutting: {kerf: 1/8 in}").flatMap(cuttingReader::read);
    Optional<HelixReader.Asked> helix =
        top.find("helix")
            .flatMap(
                field ->
                    HelixReader.read(
                        field,
                        sheets.orElse(List.of()),
                        cutting,
                        style.orElse(LengthStyle.METRIC),
                        PrintReader.read(Optional.empty(), own).orElseThrow()));
    Optional<List<Demand>> pieces =
        top.find("pieces")
            .flatMap(field -> PieceReader.readAll(field, sheets.orElse(List.of()), style));
    Optional<Rates> rates = top.find("rates").flatMap(RatesReader::read);
    Optional<MachineSetup> machine =
        top.find("machine").flatMap(field -> MachineReader.read(field, cutting));
    Optional<PaperSize> paper = top.find("patterns").flatMap(PatternsReader::read);
    Optional<SearchSettings> search = top.find("search").flatMap(SearchReader::read);
    Optional<Limits> limits = top.find("limits").flatMap(Limits::read);
    if (top.find("helix").isEmpty() && top.find("pieces").isEmpty()) {
      top.note("nothing to cut: add a `helix:` block, a `pieces:` list, or both");
    }
    Optional<StoreCuts> cuts = top.find("store-cuts").flatMap(TermsReader::storeCuts);
    Optional<TaxRate> tax = top.find("tax").flatMap(TermsReader::tax);
    Optional<Job> read =
        top.build(
            () ->
                new Job(
                    title.orElse("Untitled job"),
                    note.orElse(""),
                    invented.orElse(false),
                    style.orElseThrow(),
                    currency.orElse(""),
                    sheets.orElseThrow(),
                    cutting.orElseThrow(),
                    helix.flatMap(HelixReader.Asked::ring),
                    helix.flatMap(HelixReader.Asked::structure),
                    pieces.orElse(List.of()),
                    search.orElse(SearchSettings.DEFAULT),
                    rates.orElse(Rates.NONE),
                    new Terms(terms(offers.orElseThrow()), cuts, tax.orElse(TaxRate.NONE), own),
                    Spares.NONE,
                    machine.orElse(MachineSetup.DEFAULT),
                    paper.orElse(PaperSize.usual(style.orElseThrow())),
                    List.of(),
                    List.of(new JobSource(text, stockText, cuttingReader.translated())),
                    List.of()));
    return read.flatMap(job -> withSpares(job, top))
        .filter(job -> isCountable(job, top))
        .filter(job -> isOfUsualSize(job, limits.orElse(Limits.USUAL), top))
        .filter(job -> isCuttable(job, top))
        .flatMap(job -> laid(job, top));
  }

  /** Layouts by hand come last: they must hold what everything above asks for. */
  private static Optional<Job> laid(Job job, Block top) {
    Optional<Field> field = top.find("laid");
    return field.isEmpty() ? Optional.of(job) : LaidReader.read(field.get(), job).map(job::laid);
  }

  /** Whether every outline can be grown by half the kerf, if that is asked for. */
  private static boolean isCuttable(Job job, Block top) {
    List<String> narrow = job.machine().tooNarrow(job.demands(), job.cutting());
    narrow.forEach(message -> top.find("machine").ifPresent(field -> field.note(message)));
    return narrow.isEmpty();
  }

  /** Spares come last: their keys are the pieces. */
  private static Optional<Job> withSpares(Job job, Block top) {
    Optional<Field> field = top.find("spares");
    if (field.isEmpty()) {
      return Optional.of(job);
    }
    return TermsReader.spares(field.get(), job.wanted()).map(job::with);
  }

  private static Map<String, SheetTerms> terms(List<SheetReader.Offer> offers) {
    Map<String, SheetTerms> terms = new HashMap<>();
    offers.forEach(offer -> terms.put(offer.sheet().name(), offer.terms()));
    return terms;
  }

  private Optional<List<SheetReader.Offer>> offers(Block top) {
    Optional<Field> field =
        top.need("sheets", "sheets: [{name: birch, size: 4x8 ft, thickness: 1/2 in, price: 50}]");
    Optional<List<SheetReader.Offer>> own =
        field.flatMap(list -> list.each("sheets", 1, MOST_SHEET_KINDS, SheetReader::read));
    Optional<Field> stock = top.find("stock-file");
    List<SheetReader.Offer> offers = new ArrayList<>(own.orElse(List.of()));
    stock.ifPresent(given -> offers.addAll(inStock(given)));
    Set<String> names = new HashSet<>();
    for (SheetReader.Offer offer : offers) {
      for (SheetStock sheet : offer.stocks()) {
        if (!names.add(sheet.name())) {
          field
              .or(() -> stock)
              .orElseThrow()
              .note("the name " + Words.quoted(sheet.name()) + " is given twice");
        }
      }
    }
    return own.map(list -> List.copyOf(offers));
  }

  /** The sheets of the stock file; its first problem is noted at the field that names it. */
  private List<SheetReader.Offer> inStock(Field field) {
    Optional<String> path = field.line(LONGEST_PATH);
    Optional<StockFiles.Found> found = path.map(stockFiles::find);
    if (found.isEmpty() || found.get().text().isEmpty()) {
      found.ifPresent(missing -> field.note(missing.problem()));
      return List.of();
    }
    stockText = found.get().text();
    Problems inside = new Problems(path.get());
    List<SheetReader.Offer> offers =
        TreeReader.read(found.get().text().get(), inside)
            .map(root -> new Field(new Reading(inside, Optional.empty()), "", root))
            .flatMap(root -> root.block("sheets"))
            .flatMap(block -> block.need("sheets", "sheets: []"))
            .flatMap(list -> list.each("sheets", 0, MOST_SHEET_KINDS, SheetReader::read))
            .orElse(List.of());
    try {
      inside.throwIfAny();
    } catch (JobException e) {
      field.note("has a mistake in it: " + e.problems().get(0));
    }
    return offers;
  }

  /** Notes a missing or foreign format number; then nothing else is worth reading. */
  private boolean isOurFormat(Node.Mapping mapping) {
    Optional<Node.Entry> entry = entry(mapping, FORMAT_KEY);
    if (entry.isEmpty()) {
      problems.add(
          mapping.place(),
          FORMAT_KEY,
          "is missing; write `curvestock: 2` on the first line, which says how to read the rest");
      // The rest is most likely written for this format all the same.
      return true;
    }
    if (entry.get().value() instanceof Node.Text text) {
      format = text.text().strip().equals("1") ? FIRST_FORMAT : FORMAT;
      if (text.text().strip().equals(String.valueOf(format))) {
        return true;
      }
    }
    problems.add(
        entry.get().value().place(),
        FORMAT_KEY,
        "must be 2 or 1, the formats this program reads, but was "
            + entry.get().value().kind()
            + "; write `curvestock: 2`, or use a program made for that format");
    return false;
  }

  private Optional<LengthUnit> unit(Node.Mapping mapping) {
    Optional<Field> units =
        entry(mapping, "units")
            .map(e -> new Field(new Reading(problems, Optional.empty()), "units", e.value()));
    Optional<LengthUnit> unit =
        units.flatMap(field -> PrintReader.unit(field, List.of("in", "mm", "cm", "m", "ft")));
    // A bad unit is noted once; any unit will do to look for other problems.
    return unit.isPresent() || units.isEmpty() ? unit : Optional.of(LengthUnit.INCH);
  }

  private static Optional<Node.Entry> entry(Node.Mapping mapping, String key) {
    return mapping.entries().stream().filter(entry -> entry.key().equals(key)).findFirst();
  }

  private static boolean isOfUsualSize(Job job, Limits limits, Block top) {
    Optional<String> objection = limits.objection(job);
    objection.ifPresent(top::note);
    return objection.isEmpty();
  }

  private static boolean isCountable(Job job, Block top) {
    long count = job.demands().stream().mapToLong(Demand::count).sum();
    if (count <= MOST_PIECES) {
      return true;
    }
    top.note(
        "has "
            + count
            + " pieces; at most "
            + MOST_PIECES
            + " are planned in one job; split it into several jobs");
    return false;
  }
}
