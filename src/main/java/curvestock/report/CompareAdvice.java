package curvestock.report;

import curvestock.compare.AngleScan;
import curvestock.compare.Comparison;
import curvestock.compare.JointPrice;
import curvestock.compare.Reach;
import curvestock.compare.Recommendation;
import curvestock.compare.SegmentOption;
import curvestock.job.Job;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a comparison advises, a sentence a line. Only what layouts have shown is said. */
public final class CompareAdvice {

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
      ears().ifPresent(sentence -> lines.add("  " + sentence));
    }
    comparison
        .sensitivity()
        .ifPresent(
            found -> {
              lines.add("");
              lines.add("How far that holds");
              new SensitivityWords(job, found)
                  .sentences()
                  .forEach(sentence -> lines.add("  " + sentence));
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
            + SegmentName.plural(best.division())
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
                        + SegmentName.plural(swing.division())
                        + " win."));
    recommendation
        .cheaperJoints()
        .ifPresent(
            swing ->
                sentences.add(
                    "If a joint costs you less than "
                        + money(swing.eachJoint())
                        + " in time and parts, "
                        + SegmentName.plural(swing.division())
                        + " win."));
    if (sentences.isEmpty()) {
      sentences.add("No price of a joint would change that among the choices compared.");
    }
    recommendation
        .dearerSheets()
        .ifPresent(swing -> sentences.add(priceSentence(swing, "more", "dearer")));
    recommendation
        .cheaperSheets()
        .ifPresent(swing -> sentences.add(priceSentence(swing, "less", "cheaper")));
    return sentences;
  }

  private String priceSentence(Recommendation.PriceSwing swing, String than, String change) {
    Money now = comparison.mainSheet().price();
    String sheets =
        job.sheets().size() == 1
            ? "If a sheet costs "
                + than
                + " than "
                + money(new Money(Math.round(now.minorUnits() * swing.factor())))
                + " (now "
                + money(now)
                + ")"
            : "If sheets are "
                + Math.round(100 * Math.abs(swing.factor() - 1))
                + " % "
                + change
                + " than now";
    return sheets
        + " and a joint what it does now, "
        + SegmentName.plural(swing.division())
        + " win.";
  }

  private Optional<String> oneMoreTurn(SegmentOption best) {
    return comparison
        .oneMoreTurn()
        .map(
            more ->
                "One more turn in "
                    + SegmentName.plural(best.division())
                    + (more.sheetCost().compareTo(Money.ZERO) <= 0
                        ? " costs no more sheets, but "
                        : " costs at most "
                            + money(more.sheetCost())
                            + " more for sheets ("
                            + more.sheets()
                            + " more), and ")
                    + more.joints()
                    + " joints more; with joints and cutting, "
                    + money(more.all())
                    + ".");
  }

  private Optional<String> ears() {
    return comparison
        .ears()
        .map(
            ears -> {
              String found =
                  sheets(ears.sheetsWith())
                      + " with ears for the rods, "
                      + sheets(ears.sheetsWithout())
                      + " without, the rods then going through the roadbed";
              boolean same = ears.extra().equals(Money.ZERO);
              return same
                  ? "Ears cost no sheet here: " + found + "."
                  : "Ears cost " + money(ears.extra()) + " in sheets: " + found + ".";
            });
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
    boolean remnants = comparison.reach().get(0).onRemnants() > 0;
    lines.add(
        "With "
            + sheets(sheets)
            + " of "
            + comparison.mainSheet().name()
            + (remnants ? " and what the job lists as on hand" : ""));
    for (Reach reach : comparison.reach()) {
      lines.add(
          "  "
              + SegmentName.plural(reach.division())
              + ": "
              + CompareSummary.decimal(reach.turns(), 2)
              + " turns ("
              + reach.pieces()
              + " pieces"
              + (remnants ? ", " + reach.onRemnants() + " of them from what is on hand" : "")
              + ")");
    }
  }

  private static String sheets(int count) {
    return count == 1 ? "1 sheet" : count + " sheets";
  }

  private String money(Money money) {
    return money.format(job.currency());
  }
}
