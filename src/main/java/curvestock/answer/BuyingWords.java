package curvestock.answer;

import curvestock.purchase.BrokenSheets;
import curvestock.purchase.Cost;
import curvestock.purchase.Panel;
import curvestock.units.Count;
import curvestock.units.Money;
import curvestock.units.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What to buy, in sentences. */
public final class BuyingWords {

  private final Buying buying;
  private final Figures figures;
  private final boolean ofHelix;

  public BuyingWords(Answer answer) {
    this.ofHelix = answer.building().isPresent();
    this.buying = answer.bought();
    this.figures = answer.figures();
  }

  /** The decision in a line: {@code Buy 2 sheets of birch, $136.00.} */
  public String decision() {
    if (buying.cost().net().equals(Money.ZERO)) {
      return "Nothing to buy: "
          + Figures.count(buying.sheets(), "sheet")
          + " on hand will do for all "
          + Figures.count(buying.pieces(), "piece")
          + ".";
    }
    return "Buy " + toBuy() + ": " + money() + ".";
  }

  private String toBuy() {
    Table lines = buying.purchase();
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < lines.rows().size(); i++) {
      if (lines.at(i, "cost") instanceof Money) {
        long bought = ((Count) lines.at(i, "bought")).number();
        parts.add(
            Figures.count(bought, "sheet")
                + " of "
                + figures.of(lines.at(i, "sheet"), Measure.TEXT));
      }
    }
    return String.join(" and ", parts);
  }

  /** The sum, with its tax if there is one. */
  public String money() {
    Cost cost = buying.cost();
    return cost.tax().isNone()
        ? figures.money(cost.paid())
        : figures.money(cost.paid())
            + " ("
            + figures.money(cost.net())
            + " + "
            + cost.tax()
            + " tax "
            + figures.money(cost.onTop())
            + ")";
  }

  /** What is proven of the cost. */
  public String proof() {
    return proof(buying.cost());
  }

  private String proof(Cost cost) {
    return cost.isProvenLeast()
        ? "Proven cheapest: no layout can save money."
        : "No purchase under " + figures.money(cost.leastPaid()) + " is possible.";
  }

  /** What is proven of the number of sheets; empty if only that it takes one. */
  public String sheetsProof() {
    int least = buying.cost().leastSheets();
    return least >= buying.sheets()
        ? "No layout needs fewer sheets: that is proven."
        : least <= 1 ? "" : "At least " + least + " sheets are needed: that is proven.";
  }

  /** How much of the sheets is used. */
  public String used() {
    return figures.percent(buying.yield())
        + " of "
        + (buying.layouts() == 1 ? "the sheet" : "the sheets")
        + " is used.";
  }

  /** Where the limits on pieces per sheet are from, each proof once. */
  public List<String> limitProofs() {
    Table per = buying.perSheet();
    return per.rows().stream()
        .map(row -> figures.of(row.get(per.columns().size() - 2), Measure.TEXT))
        .distinct()
        .map(proof -> "Limits are proven " + proof + ".")
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
      long found = ((Count) rows.at(i, "found")).number();
      lines.add(
          "To spend less, one sheet of "
              + sheet
              + " would have to hold "
              + needed
              + " of "
              + kind
              + "; the fullest layout found holds "
              + found
              + ".");
    }
    return lines;
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
                    "Not used: "
                        + each.sheet()
                        + " is "
                        + figures.given(each.thickness())
                        + " thick, and no piece needs that."));
    return remarks;
  }

  /** The sheet that is bought for one piece alone. */
  private Optional<String> alone() {
    Table cuts = buying.cuts();
    for (int i = 0; i < cuts.rows().size() && buying.layouts() > 1; i++) {
      boolean single = ((Count) cuts.at(i, "pieces")).number() == 1;
      if (single && isBought(cuts.at(i, "sheet"))) {
        return Optional.of(
            "Sheet "
                + (i + 1)
                + " holds one piece only, "
                + figures.of(cuts.at(i, "numbers"), Measure.TEXT)
                + "."
                + (ofHelix
                    ? " `curvestock compare` tries which small change saves that sheet."
                    : ""));
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
        "Sheets may measure "
            + figures.given(room.tolerance().shortBy())
            + " less than stated ("
            + room.tolerance().source()
            + "). ";
    return room.left().millimetres() < 0
        ? sheets
            + "Pieces of sheet "
            + room.sheet()
            + " would then reach over its edge: measure yours before you cut, or give their true"
            + " size or a margin."
        : sheets
            + "Marked out from the lower left corner, pieces then keep at least "
            + figures.style().formatDown(room.left())
            + " from the other edges.";
  }

  private String ripped(Buying.Rip rip) {
    BrokenSheets way = rip.way();
    String panels = rip.panels().stream().map(this::panel).collect(Collectors.joining(" and "));
    Money price = way.breakdown().cutting().times(way.sheets());
    boolean free = rip.forBed() && price.equals(Money.ZERO);
    return (rip.forBed() ? "For the machine's bed rip " : "Have the store rip ")
        + (way.sheets() == 1 ? "1 sheet" : way.sheets() + " sheets, each")
        + " into "
        + panels
        + ": "
        + Figures.count((long) way.breakdown().cuts() * way.sheets(), "cut")
        + (free ? "" : ", " + figures.money(price))
        + ".";
  }

  private String panel(Panel panel) {
    String name = panel.stock().name();
    return panel.perSheet()
        + " x "
        + name.substring(name.lastIndexOf("panel "))
        + " of at least "
        + figures.sides(panel.stock().length(), panel.stock().width());
  }

  private String carried(Buying.CarriedWhole whole) {
    Money dearer = buying.cost().paid().minus(whole.cost().paid());
    String without =
        (whole.forBed()
                ? "On a machine that takes whole sheets it would be "
                : "Carried whole it would be ")
            + Figures.count(whole.sheets(), "sheet")
            + " for "
            + figures.money(whole.cost().paid())
            + ": ";
    if (whole.moreSheets() <= 0 && dearer.compareTo(Money.ZERO) <= 0) {
      return without + "ripping costs nothing.";
    }
    String more =
        whole.moreSheets() > 0 ? Figures.count(whole.moreSheets(), "more sheet") + ", " : "";
    return without
        + "ripping costs "
        + more
        + figures.money(dearer)
        + (whole.forBed() ? " in all." : " in all; delivery for less would be cheaper.");
  }

  /**
   * Pieces that tabs do not hold, and what to do; empty if they hold all. A wider gap is not
   * advised: it helps some sheets, and on others makes the pieces lie so that more are loose.
   */
  public List<String> loose() {
    List<String> lines = new ArrayList<>();
    for (Buying.Loose each : buying.loose()) {
      lines.add(
          "Sheet "
              + each.sheet()
              + ": tabs do not hold "
              + Figures.count(each.pieces().size(), "piece")
              + " ("
              + String.join(", ", each.pieces())
              + "). Screw down or tape each of them, inside its outline, before it is cut.");
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
      lines.add("A quick layout: `curvestock plan` may need fewer sheets.");
    }
    return lines;
  }
}
