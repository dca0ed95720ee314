package curvestock.report;

import curvestock.compare.Comparison;
import curvestock.compare.FirstLook;
import curvestock.compare.JointFall;
import curvestock.compare.SegmentOption;
import curvestock.compare.SmallFit;
import curvestock.job.Job;
import curvestock.job.Rates;
import curvestock.units.Length;
import curvestock.units.LengthUnit;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A comparison in words: one table, one recommendation, and what would change it. */
public final class CompareSummary {

  /** One mark for each opening that a job can state. */
  private static final String[] STARS = {"*", "**", "***"};

  private final Comparison comparison;
  private final Job job;
  private final boolean priced;
  private final boolean timed;

  private CompareSummary(Comparison comparison) {
    this.comparison = comparison;
    this.job = comparison.job();
    this.priced = job.rates().costSomething();
    this.timed = job.rates().feedPerMinute().isPresent();
  }

  public static List<String> of(Comparison comparison) {
    return new CompareSummary(comparison).lines();
  }

  /** The first numbers, a line a choice. */
  public static List<String> firstLook(List<FirstLook> looks) {
    TextTable table =
        new TextTable().row(List.of("Regular patterns", "pieces", "a sheet", "turns a sheet"));
    for (FirstLook look : looks) {
      table.row(
          List.of(
              SegmentName.brief(look.angle()),
              Integer.toString(look.pieces()),
              look.perSheet() == 0 ? "none" : Integer.toString(look.perSheet()),
              decimal(look.turnsPerSheet(), 2)));
    }
    List<String> lines = new ArrayList<>(table.lines());
    lines.add("First numbers; the search for fuller layouts and the purchase follow.");
    return lines;
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(job.title() + (job.invented() ? "  [invented data]" : ""));
    lines.add("Which segment size? Counted on " + comparison.mainSheet().name());
    lines.add("");
    lines.addAll(sheetTable());
    lines.add("");
    lines.addAll(jointTable());
    lines.add("");
    lines.addAll(workTable());
    lines.add("");
    lines.addAll(remarks());
    comparison.options().stream()
        .filter(option -> option.division().isMixed())
        .forEach(option -> lines.addAll(MixedWords.of(option)));
    comparison
        .refused()
        .forEach(
            refusal ->
                lines.add(
                    SegmentName.brief(refusal.angle())
                        + " cannot be cut: "
                        + refusal.reason().lines().findFirst().orElse("")));
    lines.add("");
    lines.addAll(new CompareAdvice(comparison).lines());
    if (comparison.stopped()) {
      lines.add("");
      lines.add("Stopped early: this is what was compared until then.");
    }
    return lines;
  }

  private List<String> sheetTable() {
    TextTable table =
        new TextTable()
            .row(
                List.of(
                    "Segment",
                    "Pieces",
                    "Found on",
                    "No layout",
                    "Turns",
                    "Sheets",
                    "Their",
                    "Any layout",
                    "Becomes",
                    "Search"))
            .row(
                List.of(
                    "",
                    "",
                    "a sheet",
                    "holds over",
                    "a sheet",
                    "",
                    "cost",
                    "saves at most",
                    "pieces",
                    ""));
    for (SegmentOption option : comparison.options()) {
      table.row(
          List.of(
              SegmentName.brief(option.division()),
              Integer.toString(option.pieces()),
              option.fill().map(fill -> Integer.toString(fill.count())).orElse("mixed"),
              option.fill().map(fill -> Integer.toString(fill.bound().count())).orElse(""),
              option.fill().isPresent() ? decimal(option.turnsPerSheet(), 2) : "",
              Integer.toString(option.sheets()),
              money(option.sheetCost()),
              money(option.cost().couldStillSave()),
              decimal(100 * option.areaYield(), 0) + " %",
              option.effort().name().toLowerCase(Locale.ROOT)));
    }
    return table.lines();
  }

  private List<String> jointTable() {
    TextTable table =
        new TextTable()
            .row(
                List.of(
                    "Segment",
                    "Joints",
                    "A turn",
                    "Joints of",
                    "Plates,",
                    "In what is",
                    "Sheets",
                    "Screws",
                    "Glue,"))
            .row(
                List.of("", "", "", "turns fall", "blocks", "left over", "more for them", "", "g"));
    for (SegmentOption option : comparison.options()) {
      SmallFit small = option.small();
      table.row(
          List.of(
              SegmentName.brief(option.division()),
              Integer.toString(option.joints()),
              option.division().isMixed() ? "mixed" : decimal(option.jointsPerTurn(), 1),
              fall(option.fall()),
              small.wanted() == 0 ? "none" : Integer.toString(small.wanted()),
              small.wanted() == 0 ? "" : Integer.toString(small.nested()),
              small.wanted() == 0
                  ? ""
                  : small.complete() ? Integer.toString(small.extraSheets()) : "not to be had",
              Integer.toString(option.parts().screws()),
              decimal(option.parts().glueGrams(), 0)));
    }
    return table.lines();
  }

  private List<String> workTable() {
    List<String> top = new ArrayList<>(List.of("Segment", "Largest piece,", "Length", "Weight,"));
    List<String> below = new ArrayList<>(List.of("", job.style().unit().symbol(), "of cut", "kg"));
    if (timed) {
      top.add("Time");
      below.add("to cut");
    }
    if (priced) {
      top.addAll(List.of("Cutting", "Joints", "All"));
      below.addAll(List.of("costs", "cost", "costs"));
    }
    TextTable table = new TextTable().row(top).row(below);
    comparison.options().forEach(option -> table.row(workRow(option)));
    return table.lines();
  }

  private List<String> workRow(SegmentOption option) {
    List<String> cells =
        new ArrayList<>(
            List.of(
                SegmentName.brief(option.division()),
                largest(option),
                cut(option),
                decimal(option.weight(), 1)));
    if (timed) {
      long minutes = Math.round(option.work().cutMinutes().orElse(0));
      cells.add(String.format(Locale.ROOT, "%d:%02d h", minutes / 60, minutes % 60));
    }
    if (priced) {
      cells.add(money(option.work().cutting()));
      cells.add(
          money(option.work().eachJoint().times(option.joints()).plus(option.work().parts())));
      cells.add(money(option.total()));
    }
    return cells;
  }

  private List<String> remarks() {
    List<String> lines = new ArrayList<>();
    Rates rates = job.rates();
    for (int i = 0; i < rates.openings().size(); i++) {
      Rates.Opening opening = rates.openings().get(i);
      lines.add(
          STARS[i]
              + " does not fit "
              + opening.name()
              + " "
              + job.style().format(opening.length())
              + " x "
              + job.style().format(opening.width())
              + ".");
    }
    boolean assumed = comparison.options().get(0).parts().assumed();
    lines.add(
        (assumed
                ? "The job says nothing of its joints: a splice plate of 5 in, 1/2 in narrower than the"
                    + " roadbed, with 6 screws, cut from the same sheets, is assumed under each."
                    + " Birch is assumed. "
                : "")
            + "Cut length: every edge once, none shared; plates, blocks and holes are in it. Glue:"
            + " 200 g per square metre (common practice, no source).");
    if (!priced) {
      lines.add(
          "Only sheets are priced: give a `rates:` block in the job for cutting, joints and your"
              + " time.");
    }
    return lines;
  }

  private String largest(SegmentOption option) {
    return job.style().number(option.largest().length())
        + " x "
        + job.style().number(option.largest().width())
        + marks(option);
  }

  /** A star for each opening that the piece does not pass. */
  private String marks(SegmentOption option) {
    StringBuilder marks = new StringBuilder();
    for (int i = 0; i < job.rates().openings().size(); i++) {
      if (option.tooLargeFor().contains(job.rates().openings().get(i))) {
        marks.append(' ').append(STARS[i]);
      }
    }
    return marks.toString();
  }

  private String cut(SegmentOption option) {
    LengthUnit unit = job.style().unit().isImperial() ? LengthUnit.FOOT : LengthUnit.METRE;
    Length length = option.cutLength();
    return decimal(length.in(unit), 0) + " " + unit.symbol();
  }

  private static String fall(JointFall fall) {
    return switch (fall.line()) {
      case IN_LINE -> "in line";
      case STAGGERED_BY_HALF -> "staggered";
      case PARTLY_IN_LINE -> "partly in line";
      case WANDERING -> decimal(fall.leastDegrees(), 0) + "° apart";
      case NONE_ABOVE -> "one turn";
    };
  }

  private String money(Money money) {
    return money.format(job.currency());
  }

  static String decimal(double value, int places) {
    return String.format(Locale.ROOT, "%." + places + "f", value);
  }
}
