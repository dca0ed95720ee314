package curvestock.answer;

import curvestock.purchase.BrokenSheets;
import curvestock.purchase.Cost;
import curvestock.purchase.Panel;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.Money;
import curvestock.units.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What to buy, in sentences. */
public final class BuyingWords {

  /** So many kinds are told in a sentence. */
  private static final int FEW_KINDS = 4;

  private static final String NO_LAYOUT = "No layout can hold more than the limit";

  private static final String BY_AREA =
      "The limit is what would fit by area alone, with the gaps allowed for. No layout can beat it.";

  private final Buying buying;
  private final Figures figures;
  private final Answer answer;
  private final boolean ofHelix;

  public BuyingWords(Answer answer) {
    this.ofHelix = answer.building().isPresent();
    this.answer = answer;
    this.buying = answer.bought();
    this.figures = answer.figures();
  }

  /** The decision in a line: {@code Buy 2 sheets of birch, $136.00.} */
  public String decision() {
    if (buying.cost().net().equals(Money.ZERO)) {
      return "Nothing to buy: %s on hand %s enough for %s."
          .formatted(
              Figures.count(buying.sheets(), "sheet"),
              buying.sheets() == 1 ? "is" : "are",
              Figures.count(buying.pieces(), "piece"));
    }
    return "Buy %s: %s.".formatted(toBuy(), money());
  }

  /** That there is more to buy than sheets, where all of it stands, and what it comes to. */
  public Optional<String> everythingElse() {
    int sheets = buying.purchase().rows().size();
    // Nobody buys the tax.
    int tax = buying.cost().tax().isNone() ? 0 : 1;
    int more = answer.shopping().rows().size() - sheets - tax;
    return more <= 0
        ? Optional.empty()
        : Optional.of(
            "%s to buy besides the sheets. %s."
                .formatted(Figures.count(more, "more item"), HelixWords.total(answer)));
  }

  private String toBuy() {
    Table lines = buying.purchase();
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < lines.rows().size(); i++) {
      if (lines.at(i, "cost") instanceof Money) {
        long bought = ((Count) lines.at(i, "bought")).number();
        String sheet = figures.of(lines.at(i, "sheet"), Measure.TEXT);
        String sides = figures.sides((Length) lines.at(i, "length"), (Length) lines.at(i, "width"));
        parts.add(
            "%s of %s%s"
                .formatted(
                    Figures.count(bought, "sheet"),
                    sheet,
                    sheet.contains(" x ") ? "" : " (" + sides + ")"));
      }
    }
    return Figures.list(parts);
  }

  /** The sum, with its tax if there is one. */
  public String money() {
    Cost cost = buying.cost();
    String paid = figures.money(cost.paid());
    return cost.tax().isNone()
        ? paid
        : "%s (%s + %s tax %s)"
            .formatted(paid, figures.money(cost.net()), cost.tax(), figures.money(cost.onTop()));
  }

  /** The decision, and what stands in the way of a cheaper one: what a first screen shows. */
  public List<String> headline() {
    if (buying.cost().isProvenLeast()) {
      return List.of(decision() + " " + proof());
    }
    return obstacles().isEmpty()
        ? List.of(decision() + " " + proof())
        : List.of(decision(), standing());
  }

  /** That nothing is cheaper, or what stands in the way of it. */
  public String standing() {
    List<String> obstacles = obstacles();
    return buying.cost().isProvenLeast() || obstacles.isEmpty() ? proof() : obstacles.get(0);
  }

  /** The same with the least that is proven, unless that is the price of a single sheet. */
  public String proven() {
    return standing().equals(proof()) || buying.cost().leastSheets() <= 1
        ? standing()
        : proof() + " " + standing();
  }

  /** What is proven of the cost. */
  public String proof() {
    Cost cost = buying.cost();
    return cost.isProvenLeast()
        ? "Proven cheapest."
        : "Nothing cheaper was found. No purchase under %s is possible."
            .formatted(figures.money(cost.leastPaid()));
  }

  /** The decision, and whether any other could be cheaper. */
  public String decided() {
    return buying.cost().isProvenLeast() ? decision() + " " + proof() : decision();
  }

  /** What the sheets cost at least, if that is less than what is paid. */
  public Optional<String> least() {
    return buying.cost().isProvenLeast() ? Optional.empty() : Optional.of(proof());
  }

  /** What is proven of the number of sheets; empty if only that it takes one. */
  public String sheetsProof() {
    int least = buying.cost().leastSheets();
    return least >= buying.sheets()
        ? "No layout needs fewer sheets (proven)."
        : least <= 1 ? "" : "At least %s sheets are needed (proven).".formatted(least);
  }

  /** How much of the sheets is used. */
  public String used() {
    return "%s of the plywood is used.".formatted(figures.percent(buying.yield()));
  }

  /** Where the limits on pieces per sheet are from, each proof once. */
  public List<String> limitProofs() {
    Table per = buying.perSheet();
    return per.rows().stream()
        .map(row -> figures.of(row.get(per.columns().size() - 2), Measure.TEXT))
        .map(
            proof -> proof.startsWith("by area:") ? BY_AREA : NO_LAYOUT + ", proven " + proof + ".")
        .distinct()
        .toList();
  }

  /** Why no cheaper purchase was found: the pieces that one sheet would have to hold. */
  public List<String> obstacles() {
    Table rows = buying.obstacles();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < rows.rows().size(); i++) {
      String kind = figures.of(rows.at(i, "kind"), Measure.TEXT);
      String sheet = figures.of(rows.at(i, "sheet"), Measure.TEXT);
      long needed = ((Count) rows.at(i, "needed")).number();
      long together = ((Count) rows.at(i, "together")).number();
      long found = ((Count) rows.at(i, "found")).number();
      lines.add(
          "%s %s; the fullest layout found holds %s."
              .formatted(
                  (Math.max(needed, together) == buying.pieces()
                          ? "One sheet of %s would do only if it held"
                          : "To spend less on these pieces, one sheet of %s would have to hold")
                      .formatted(sheet),
                  together > needed
                      ? "all %s pieces, %s of them %s".formatted(together, needed, kind)
                      : "%s%s %s pieces"
                          .formatted(needed == wanted(kind) ? "all " : "", needed, kind),
                  together > needed ? found + " " + kind : Long.toString(found)));
    }
    return lines;
  }

  /** What the names of the kinds stand for, where these are few. */
  public Optional<String> legend() {
    Table kinds = buying.kinds();
    return kinds.rows().size() > FEW_KINDS
        ? Optional.empty()
        : Optional.of(
            IntStream.range(0, kinds.rows().size())
                .mapToObj(
                    i -> kinds.words(i, "kind", figures) + ": " + kinds.words(i, "name", figures))
                .collect(Collectors.joining("; ", "", "."))
                .concat(HalfLapWords.included(answer)));
  }

  /** How many pieces of a kind are cut. */
  private long wanted(String kind) {
    Table kinds = buying.kinds();
    return IntStream.range(0, kinds.rows().size())
        .filter(i -> figures.of(kinds.at(i, "kind"), Measure.TEXT).equals(kind))
        .mapToLong(i -> ((Count) kinds.at(i, "count")).number())
        .sum();
  }

  /** How sheets are ripped, what that costs, and which sheets are not used. */
  public List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    alone().ifPresent(remarks::add);
    buying.room().ifPresent(room -> remarks.add(room(room)));
    buying.rips().forEach(rip -> remarks.add(ripped(rip)));
    buying.carriedWhole().ifPresent(whole -> remarks.add(carried(whole)));
    buying
        .unused()
        .forEach(
            each ->
                remarks.add(
                    "Not used: %s is %s thick, and no piece is cut from that thickness."
                        .formatted(each.sheet(), figures.given(each.thickness()))));
    return remarks;
  }

  /** The sheet that is bought for one piece alone. */
  private Optional<String> alone() {
    Table cuts = buying.cuts();
    for (int i = 0; i < cuts.rows().size() && buying.layouts() > 1; i++) {
      boolean single = ((Count) cuts.at(i, "pieces")).number() == 1;
      if (single && isBought(cuts.at(i, "sheet"))) {
        String piece = figures.of(cuts.at(i, "numbers"), Measure.TEXT);
        return Optional.of(
            (ofHelix
                    ? "Sheet %s holds only one piece, %s; `curvestock compare` looks for a small"
                        + " change that saves that sheet."
                    : "Sheet %s holds only one piece, %s.")
                .formatted(i + 1, piece));
      }
    }
    return Optional.empty();
  }

  private boolean isBought(Quantity sheet) {
    Table lines = buying.purchase();
    return IntStream.range(0, lines.rows().size())
        .filter(i -> lines.at(i, "sheet").equals(sheet))
        .anyMatch(i -> lines.at(i, "cost") instanceof Money);
  }

  private String room(SheetRoom room) {
    String sheets =
        SheetSizeWords.undersize(
            figures.given(room.tolerance().shortBy()), room.tolerance().source());
    return room.left().millimetres() < 0
        ? "%s. Pieces of sheet %s would then run over its edge: measure yours before you cut, or give their true size or a larger margin."
            .formatted(sheets, room.sheet())
        : "%s. Mark out from the lower left corner: even then the pieces stay at least %s from the other edges."
            .formatted(sheets, figures.style().formatDown(room.left()));
  }

  private String ripped(Buying.Rip rip) {
    BrokenSheets way = rip.way();
    String panels = rip.panels().stream().map(this::panel).collect(Collectors.joining(" and "));
    Money price = way.breakdown().cutting().times(way.sheets());
    boolean free = rip.forBed() && price.equals(Money.ZERO);
    return "%s %s into %s: %s%s."
        .formatted(
            rip.forBed() ? "For the machine's bed, rip" : "Have the store rip",
            way.sheets() == 1 ? "1 sheet" : way.sheets() + " sheets, each",
            panels,
            Figures.count((long) way.breakdown().cuts() * way.sheets(), "cut"),
            free ? "" : ", " + figures.money(price));
  }

  private String panel(Panel panel) {
    String name = panel.stock().name();
    return "%s x %s of at least %s"
        .formatted(
            panel.perSheet(),
            name.substring(name.lastIndexOf("panel ")),
            figures.sides(panel.stock().length(), panel.stock().width()));
  }

  private String carried(Buying.CarriedWhole whole) {
    Money dearer = buying.cost().paid().minus(whole.cost().paid());
    String without =
        "%s, %s %s enough, for %s"
            .formatted(
                whole.forBed() ? "On a machine that takes whole sheets" : "Carried home whole",
                Figures.count(whole.sheets(), "sheet"),
                whole.sheets() == 1 ? "is" : "are",
                figures.money(whole.cost().paid()));
    if (whole.moreSheets() <= 0 && dearer.compareTo(Money.ZERO) <= 0) {
      return without + ", so ripping costs nothing extra.";
    }
    String more =
        whole.moreSheets() > 0 ? Figures.count(whole.moreSheets(), "more sheet") + ", " : "";
    return "%s, so ripping costs %s%s in all%s."
        .formatted(
            without,
            more,
            figures.money(dearer),
            whole.forBed() ? "" : "; have them delivered if that costs less");
  }

  /**
   * Pieces that tabs do not hold, and what to do; empty if they hold all. A wider gap is not
   * advised: it helps some sheets, and on others makes the pieces lie so that more are loose.
   */
  public List<String> loose() {
    List<String> lines = new ArrayList<>();
    for (Buying.Loose each : buying.loose()) {
      lines.add(
          "Sheet %s: tabs do not hold %s (%s). Screw down or tape each one, inside its outline, before it is cut."
              .formatted(
                  each.sheet(),
                  Figures.count(each.pieces().size(), "piece"),
                  String.join(", ", each.pieces())));
    }
    return lines;
  }

  /** What planning was not allowed to finish, or did not try; empty if it did all. */
  public List<String> reservations() {
    List<String> lines = new ArrayList<>();
    if (buying.stopped()) {
      lines.add("Stopped early: this is the best so far; a full run may need fewer sheets.");
    }
    if (buying.rough()) {
      lines.add("Quick layout: `curvestock plan` may need fewer sheets.");
    }
    return lines;
  }
}
