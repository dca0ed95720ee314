package curvestock.answer;

import curvestock.compare.AngleScan;
import curvestock.compare.Comparison;
import curvestock.compare.Ears;
import curvestock.compare.JointPrice;
import curvestock.compare.LonePiece;
import curvestock.compare.MoreTurn;
import curvestock.compare.Reach;
import curvestock.compare.Recommendation;
import curvestock.compare.SegmentOption;
import curvestock.helix.spec.SegmentRun;
import curvestock.job.Job;
import curvestock.job.Rates;
import curvestock.layout.Layout;
import curvestock.piece.Demand;
import curvestock.units.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a comparison advises, in sentences. Only what layouts have shown is said. */
public final class CompareWords {

  private final Comparison comparison;
  private final Job job;
  private final Figures figures;

  public CompareWords(Choices choices) {
    this.comparison = choices.comparison();
    this.job = comparison.job();
    this.figures = choices.heading().figures();
  }

  /** The recommendation and its reason; empty if nothing can be cut. */
  public Optional<String> decision() {
    return comparison.best().map(this::decision);
  }

  private String decision(SegmentOption best) {
    Recommendation.Reason reason = comparison.recommendation().orElseThrow().reason();
    return "Cut "
        + SegmentName.plural(best.division())
        + ": "
        + Figures.count(best.sheets(), "sheet")
        + ", "
        + figures.money(best.sheetCost())
        + ", "
        + Figures.count(best.joints(), "joint")
        + ". "
        + switch (reason) {
          case ONLY_CHOICE -> "It is the only size compared that can be used.";
          case CHEAPEST -> "Cheapest, counting plywood and joints" + eachJoint() + ".";
          case FEWEST_JOINTS -> "No size compared costs less, and this one has the fewest joints.";
          case FEWEST_SHEETS ->
              "Others cost the same and have as many joints; this one needs the fewest sheets.";
          case LARGEST_OFFCUTS ->
              "Others cost the same and have as many joints; this one leaves the most usable wood.";
          case LARGEST_PIECES ->
              "Others cost the same and have as many joints; this one has the largest pieces.";
          case NOT_CARRIED ->
              "But no size compared fits the opening that the job states: try shorter segments.";
        };
  }

  private String eachJoint() {
    JointPrice joint = comparison.recommendation().orElseThrow().joint();
    return " (" + figures.money(joint.each()) + " a joint)";
  }

  /** Why, and what would change it. */
  public List<String> reasons() {
    List<String> lines = new ArrayList<>();
    comparison
        .best()
        .ifPresent(
            best -> {
              assumption().ifPresent(lines::add);
              lines.addAll(new SheetSizeWords(comparison, figures).lines());
              comparison.alone().ifPresent(alone -> lines.add(alone(alone)));
              lines.addAll(changes());
              comparison.oneMoreTurn().ifPresent(more -> lines.add(oneMoreTurn(best, more)));
              comparison.ears().ifPresent(ears -> lines.add(ears(ears)));
            });
    return lines;
  }

  private Optional<String> assumption() {
    JointPrice joint = comparison.recommendation().orElseThrow().joint();
    return joint.assumed()
        ? Optional.of(
            "Each joint is assumed to cost "
                + figures.money(joint.each())
                + " (1/"
                + JointPrice.JOINTS_PER_SHEET
                + " of a sheet); set your own with `rates:`.")
        : Optional.empty();
  }

  /** What would make another size the best. */
  public List<String> changes() {
    Recommendation found = comparison.recommendation().orElseThrow();
    List<String> lines = new ArrayList<>();
    found.dearerJoints().ifPresent(swing -> lines.add(swing(swing, "more")));
    found.cheaperJoints().ifPresent(swing -> lines.add(swing(swing, "less")));
    if (lines.isEmpty()) {
      lines.add("This stays best whatever a joint costs.");
    }
    found.dearerSheets().ifPresent(swing -> lines.add(swing(swing, "more", "dearer")));
    found.cheaperSheets().ifPresent(swing -> lines.add(swing(swing, "less", "cheaper")));
    return lines;
  }

  private String swing(Recommendation.Swing swing, String than) {
    return "If a joint costs you "
        + than
        + " than "
        + figures.money(swing.eachJoint())
        + " in time and parts, cut "
        + SegmentName.plural(swing.division())
        + " instead.";
  }

  private String swing(Recommendation.PriceSwing swing, String than, String change) {
    Money now = comparison.mainSheet().price();
    Money then = new Money(Math.round(now.minorUnits() * swing.factor()));
    String sheets =
        job.sheets().size() == 1
            ? "If a sheet costs "
                + than
                + " than "
                + figures.money(then)
                + " (now "
                + figures.money(now)
                + ")"
            : "If sheets get " + Math.round(100 * Math.abs(swing.factor() - 1)) + " % " + change;
    return sheets
        + " while a joint costs the same, cut "
        + SegmentName.plural(swing.division())
        + " instead.";
  }

  private String oneMoreTurn(SegmentOption best, MoreTurn more) {
    return "One more turn in "
        + SegmentName.plural(best.division())
        + (more.sheetCost().compareTo(Money.ZERO) <= 0
            ? " needs no more sheets, but "
            : " costs at most "
                + figures.money(more.sheetCost())
                + " more for sheets ("
                + more.sheets()
                + " more) and ")
        + Figures.count(more.joints(), "more joint")
        + "; with joints and cutting, "
        + figures.money(more.all())
        + ".";
  }

  private String ears(Ears ears) {
    String found =
        Figures.count(ears.sheetsWith(), "sheet")
            + " with ears for the rods, "
            + Figures.count(ears.sheetsWithout(), "sheet")
            + " with the rods through the roadbed.";
    return ears.extra().equals(Money.ZERO)
        ? "Ears cost no extra sheet here: " + found
        : "Ears cost " + figures.money(ears.extra()) + " in sheets: " + found;
  }

  private String alone(LonePiece alone) {
    String found = "Sheet " + alone.sheet() + " holds one piece only (" + alone.piece() + "). ";
    if (!alone.tried()) {
      return found + "With another kind of sheet for it, or a remnant, that sheet may be saved.";
    }
    return found
        + alone
            .saving()
            .map(
                saving ->
                    SensitivityWords.advice(saving.dimension(), saving.change(), job.style())
                        + "that sheet is saved: "
                        + Figures.count(saving.sheets(), "sheet")
                        + " (tried).")
            .orElse("None of the small changes of margin, kerf, width and radius tried saves it.");
  }

  /** How sensitive the answer is; empty if that was not looked at. */
  public List<String> sensitivity() {
    return comparison
        .sensitivity()
        .map(found -> new SensitivityWords(job, found).sentences())
        .orElse(List.of());
  }

  /** What all angles give. */
  public List<String> scan() {
    return comparison
        .scan()
        .map(
            scan ->
                List.of(
                    "Most turns from a sheet: " + peak(scan.bestForSheet()) + ".",
                    "Fewest pieces of one size for this helix:"))
        .orElse(List.of());
  }

  private String peak(AngleScan.Sample sample) {
    return SegmentName.plural(sample.angle())
        + ", "
        + sample.perSheet()
        + " to a sheet, "
        + Figures.decimal(sample.turnsPerSheet(), 2)
        + " turns";
  }

  /** How far the sheets asked about reach: a title, then a line a size; empty if none was asked. */
  public List<String> reach() {
    if (comparison.reach().isEmpty()) {
      return List.of();
    }
    boolean remnants = comparison.reach().get(0).onRemnants() > 0;
    List<String> lines = new ArrayList<>();
    lines.add(
        "With "
            + Figures.count(comparison.question().sheetsOnHand().orElseThrow(), "sheet")
            + " of "
            + comparison.mainSheet().name()
            + (remnants ? " and what the job lists as on hand" : ""));
    for (Reach reach : comparison.reach()) {
      lines.add(
          SegmentName.plural(reach.division())
              + ": "
              + Figures.decimal(reach.turns(), 2)
              + " turns ("
              + Figures.count(reach.pieces(), "piece")
              + (remnants ? ", " + reach.onRemnants() + " of them from what is on hand" : "")
              + ")");
    }
    return lines;
  }

  /** What the figures leave out or take for granted. */
  public List<String> remarks() {
    List<String> lines = new ArrayList<>();
    for (Rates.Opening opening : job.rates().openings()) {
      String too =
          comparison.options().stream()
              .filter(option -> option.tooLargeFor().contains(opening))
              .map(option -> SegmentName.brief(option.division()))
              .collect(Collectors.joining(", "));
      if (!too.isEmpty()) {
        lines.add(
            "Too large for "
                + opening.name()
                + " ("
                + figures.sides(opening.length(), opening.width())
                + "): "
                + too
                + ".");
      }
    }
    if (comparison.options().stream().anyMatch(option -> option.parts().assumed())) {
      lines.add(
          "The job says nothing of its joints: a 5 in splice plate, 1/2 in narrower than the roadbed,"
              + " with 6 screws, cut from the same birch sheets, is assumed under each.");
    }
    lines.add(
        "Length of cut: every edge once, plates, blocks and holes included. Glue: 200 g per square"
            + " metre (rule of thumb).");
    if (!job.rates().costSomething()) {
      lines.add(
          "Only sheets are priced: give a `rates:` block in the job for cutting, joints and your"
              + " time.");
    }
    comparison
        .refused()
        .forEach(
            refusal ->
                lines.add(
                    SegmentName.brief(refusal.angle())
                        + " cannot be cut: "
                        + refusal.reason().lines().findFirst().orElse("")));
    return lines;
  }

  /** Each mixed plan: where which pieces go, and how to have it planned. */
  public List<List<String>> mixed() {
    return comparison.options().stream()
        .filter(option -> option.division().isMixed())
        .map(this::mixed)
        .toList();
  }

  private List<String> mixed(SegmentOption option) {
    SegmentRun lower = option.division().lower().orElseThrow();
    List<String> lines = new ArrayList<>();
    lines.add("Mixed plan " + SegmentName.brief(option.division()));
    lines.add(
        "From the bottom up "
            + lower.count()
            + " "
            + SegmentName.plural(lower.segment())
            + ", "
            + Figures.decimal(lower.degrees() / 360, 2)
            + " turns; above them "
            + SegmentName.plural(option.division().segment())
            + ".");
    for (int i = 0; i < option.plan().layouts().size(); i++) {
      lines.add("Sheet " + (i + 1) + ": " + content(option, option.plan().layouts().get(i)));
    }
    lines.add(
        "To plan it write in the job's helix: `segment-angle: "
            + plain(option.division().segment().degrees())
            + "` and `lower-segments: {count: "
            + lower.count()
            + ", angle: "
            + plain(lower.segment().degrees())
            + "}`.");
    return lines;
  }

  private static String content(SegmentOption option, Layout layout) {
    return option.plan().job().demands().stream()
        .filter(demand -> layout.count(demand.piece()) > 0)
        .map((Demand demand) -> layout.count(demand.piece()) + " x " + demand.piece().name())
        .collect(Collectors.joining("; "));
  }

  private static String plain(double degrees) {
    return new BigDecimal(Double.toString(degrees)).stripTrailingZeros().toPlainString();
  }
}
