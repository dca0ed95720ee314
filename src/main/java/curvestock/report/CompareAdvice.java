package curvestock.report;

import curvestock.compare.AngleScan;
import curvestock.compare.Comparison;
import curvestock.compare.JointPrice;
import curvestock.compare.Reach;
import curvestock.compare.Recommendation;
import curvestock.compare.SegmentOption;
import curvestock.compare.Sensitivity;
import curvestock.job.Job;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a comparison advises, a sentence a line. Only what layouts have shown is said. */
public final class CompareAdvice {

  private static final int DECIMALS = 1000;

  private final Comparison comparison;
  private final Job job;

  public CompareAdvice(Comparison comparison) {
    this.comparison = comparison;
    this.job = comparison.job();
  }

  /** All advice, under headings. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    Optional<SegmentOption> best = comparison.best();
    if (best.isPresent()) {
      lines.add("Recommended");
      lines.add("  " + recommendation());
      assumption().ifPresent(sentence -> lines.add("  " + sentence));
      changes().forEach(sentence -> lines.add("  " + sentence));
      oneMoreTurn(best.get()).ifPresent(sentence -> lines.add("  " + sentence));
    }
    comparison
        .sensitivity()
        .ifPresent(
            found -> {
              lines.add("");
              lines.add("How far that holds");
              sensitivity(found).forEach(sentence -> lines.add("  " + sentence));
            });
    comparison.scan().ifPresent(scan -> scan(lines, scan));
    if (!comparison.reach().isEmpty()) {
      reach(lines);
    }
    return lines;
  }

  /** The recommendation and its reason in one sentence; there must be one. */
  public String recommendation() {
    SegmentOption best = comparison.best().orElseThrow();
    Recommendation.Reason reason = comparison.recommendation().orElseThrow().reason();
    String facts =
        "Cut "
            + SegmentName.plural(best.angle())
            + ": "
            + sheets(best.sheets())
            + " for "
            + money(best.sheetCost())
            + ", "
            + best.joints()
            + " joints";
    return facts
        + "; "
        + switch (reason) {
          case ONLY_CHOICE -> "of the choices compared it is the only one that can be used.";
          case CHEAPEST -> "sheets and work together, no other choice compared is so cheap.";
          case FEWEST_JOINTS ->
              "no choice compared costs less, and of those that cost the same it has the fewest"
                  + " joints.";
          case FEWEST_SHEETS ->
              "others cost the same and have as many joints; this one takes the fewest sheets.";
          case LARGEST_PIECES ->
              "others cost the same and have as many joints; this one has the largest pieces.";
          case NOT_CARRIED ->
              "but no choice compared fits the opening that the job states: shorter segments are"
                  + " needed.";
        };
  }

  /** What a joint was taken to cost, if it was not given. */
  private Optional<String> assumption() {
    JointPrice joint = comparison.recommendation().orElseThrow().joint();
    return joint.assumed()
        ? Optional.of(
            "A joint is taken at "
                + money(joint.each())
                + " (assumed: 1/"
                + JointPrice.JOINTS_PER_SHEET
                + " of a sheet); give yours in the job's `rates:`.")
        : Optional.empty();
  }

  /** What would change the recommendation. */
  public List<String> changes() {
    Recommendation recommendation = comparison.recommendation().orElseThrow();
    List<String> sentences = new ArrayList<>();
    recommendation
        .dearerJoints()
        .ifPresent(
            swing ->
                sentences.add(
                    "If a joint costs you more than "
                        + money(swing.eachJoint())
                        + " in time and parts, "
                        + SegmentName.plural(swing.angle())
                        + " win."));
    recommendation
        .cheaperJoints()
        .ifPresent(
            swing ->
                sentences.add(
                    "If a joint costs you less than "
                        + money(swing.eachJoint())
                        + " in time and parts, "
                        + SegmentName.plural(swing.angle())
                        + " win."));
    if (sentences.isEmpty()) {
      sentences.add("No price of a joint would change that among the choices compared.");
    }
    return sentences;
  }

  private Optional<String> oneMoreTurn(SegmentOption best) {
    return comparison
        .oneMoreTurn()
        .map(
            more ->
                more.compareTo(Money.ZERO) <= 0
                    ? "One more turn costs no more sheets."
                    : "One more turn in "
                        + SegmentName.plural(best.angle())
                        + " costs at most "
                        + money(more)
                        + " more for sheets.");
  }

  /** The steps that were found, a sentence each. */
  public List<String> sensitivity(Sensitivity found) {
    List<String> sentences = new ArrayList<>();
    SegmentOption option = found.option();
    sentences.add(spare(option));
    List<String> minor = new ArrayList<>();
    for (Sensitivity.Step step : found.steps()) {
      if (step.perSheet() == 0 || step.sheets() != found.baseSheets()) {
        sentences.add(capital(change(step)) + ": " + effect(found, step) + ".");
      } else {
        minor.add(change(step) + " " + step.perSheet());
      }
    }
    if (!minor.isEmpty()) {
      sentences.add(
          "Other pieces on a sheet than "
              + option.perSheet()
              + ", but no sheet more or less: "
              + String.join("; ", minor)
              + ".");
    }
    sentences.add(
        found.steps().isEmpty()
            ? "None of the changes tried (radius, width, kerf, margin, size of the sheet) made a"
                + " difference."
            : "Each was tried by laying the pieces out anew, "
                + (found.byPattern() ? "in regular patterns." : "with a quick search.")
                + " Smaller changes that were tried made no difference.");
    return sentences;
  }

  private String spare(SegmentOption option) {
    Length along = option.fill().spareAlong();
    Length across = option.fill().spareAcross();
    String fullest = "The fullest layout found, " + option.perSheet() + " on a sheet, has ";
    return fullest
        + spare(along)
        + " to spare along the sheet and "
        + spare(across)
        + " across it.";
  }

  private String change(Sensitivity.Step step) {
    boolean less = step.change().millimetres() < 0;
    String by = job.style().formatGiven(step.change().times(less ? -1 : 1));
    return switch (step.dimension()) {
      case RADIUS -> "radius " + by + (less ? " smaller" : " larger");
      case WIDTH -> "roadbed " + by + (less ? " narrower" : " wider");
      case KERF -> "kerf " + by + (less ? " finer" : " wider");
      case MARGIN -> "margin " + by + (less ? " less" : " more");
      case SHEET_LENGTH -> "sheet cut " + by + (less ? " short" : " long");
      case SHEET_WIDTH -> "sheet cut " + by + (less ? " narrow" : " wide");
    };
  }

  private String effect(Sensitivity found, Sensitivity.Step step) {
    int base = found.option().perSheet();
    if (step.perSheet() == 0) {
      return "no piece fits";
    }
    String count =
        step.perSheet() > base
            ? step.perSheet() + " fit a sheet instead of " + base
            : "only " + step.perSheet() + " were found to fit a sheet instead of " + base;
    int saved = found.baseSheets() - step.sheets();
    return count
        + ", and "
        + (saved > 0
            ? "you save " + (saved == 1 ? "a sheet" : saved + " sheets")
            : "you need " + (saved == -1 ? "one sheet" : -saved + " sheets") + " more");
  }

  private void scan(List<String> lines, AngleScan scan) {
    lines.add("");
    lines.add("All angles from 30° to 180°, in regular patterns");
    lines.add("  Most turns from a sheet: " + peak(scan.bestForSheet()) + ".");
    lines.add("  Fewest pieces of one size for this helix:");
    for (AngleScan.ForJob choice : scan.front()) {
      lines.add(
          "    "
              + sheets(choice.sheets())
              + ": "
              + choice.pieces()
              + " of "
              + choice.sample().angle()
              + (choice.equals(scan.bestForJob()) ? " (cheapest, joints included)" : ""));
    }
  }

  private static String peak(AngleScan.Sample sample) {
    return SegmentName.plural(sample.angle())
        + ", "
        + sample.perSheet()
        + " on a sheet, "
        + CompareSummary.decimal(sample.turnsPerSheet(), 2)
        + " turns";
  }

  private void reach(List<String> lines) {
    int sheets = comparison.question().sheetsOnHand().orElseThrow();
    lines.add("");
    lines.add("With " + sheets(sheets) + " of " + comparison.mainSheet().name());
    for (Reach reach : comparison.reach()) {
      lines.add(
          "  "
              + SegmentName.plural(reach.angle())
              + ": "
              + CompareSummary.decimal(reach.turns(), 2)
              + " turns ("
              + reach.pieces()
              + " pieces)");
    }
  }

  /** Rounded down, so that no more is promised than there is. */
  private String spare(Length length) {
    boolean imperial = job.style().unit().isImperial();
    LengthStyle style = imperial ? LengthStyle.INCH_DECIMALS : LengthStyle.METRIC;
    double value = length.in(style.unit());
    double down = Math.floor(value * DECIMALS + 1e-6) / DECIMALS;
    return style.format(Length.of(imperial ? down : Math.floor(value * 100) / 100, style.unit()));
  }

  private static String capital(String sentence) {
    return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
  }

  private static String sheets(int count) {
    return count == 1 ? "1 sheet" : count + " sheets";
  }

  private String money(Money money) {
    return money.format(job.currency());
  }
}
