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
import curvestock.helix.build.GluedArea;
import curvestock.helix.spec.SegmentRun;
import curvestock.job.Job;
import curvestock.job.Rates;
import curvestock.layout.Layout;
import curvestock.piece.Demand;
import curvestock.units.Length;
import curvestock.units.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a comparison advises, in sentences. Only what layouts have shown is said. */
public final class CompareWords {

  private static final double PLAUSIBLE = 3;

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
    JointPrice joint = comparison.recommendation().orElseThrow().joint();
    String why =
        switch (reason) {
          case ONLY_CHOICE -> "No other size compared can be used.";
          case CHEAPEST -> "No other size is cheaper, counting %s.".formatted(counted(job, joint));
          case FEWEST_JOINTS -> "No size compared costs less, and this one has the fewest joints.";
          case FEWEST_SHEETS ->
              "Others cost the same and have as many joints; this one needs the fewest sheets.";
          case LARGEST_OFFCUTS ->
              "Others cost the same and have as many joints; this one leaves the most usable wood.";
          case LARGEST_PIECES ->
              "Others cost the same and have as many joints; this one has the largest pieces.";
          case NOT_CARRIED ->
              comparison.options().stream().anyMatch(CompareWords::isForLeadsAlone)
                  ? "But its end pieces, with their leads, do not fit through the opening in your job: shorten `lead-in:` and join the rest on."
                  : "But no size compared fits through the opening in your job: try shorter segments.";
        };
    return (isAnother(best) ? "%s come out best: %s. %s" : "Cut %s: %s. %s")
        .formatted(
            isAnother(best)
                ? DecisionWords.card(best.division())
                : SegmentName.plural(best.division()),
            needs(best),
            why);
  }

  private static boolean isForLeadsAlone(SegmentOption option) {
    return option.tooLargeFor().stream().allMatch(option::isForLeadAlone);
  }

  /** Whether the job cuts another size than this. */
  private boolean isAnother(SegmentOption best) {
    return comparison.own().filter(own -> !own.equals(best)).isPresent();
  }

  private String needs(SegmentOption option) {
    return "%s, %s, %s"
        .formatted(
            Figures.count(option.sheets(), "sheet"),
            figures.money(option.sheetCost()),
            Figures.count(option.joints(), "joint"));
  }

  /** What the job cuts, if that is another size than the one advised. */
  public Optional<String> asTheJobIs() {
    Optional<SegmentOption> best = comparison.best();
    return comparison
        .own()
        .filter(own -> best.stream().noneMatch(own::equals))
        .map(
            option ->
                "Your job is set for %s: %s."
                    .formatted(SegmentName.plural(option.division()), needs(option)));
  }

  /** Why, and what would change it. */
  public List<String> reasons() {
    List<String> lines = new ArrayList<>();
    comparison
        .best()
        .ifPresent(
            best -> {
              asTheJobIs().ifPresent(lines::add);
              assumption().ifPresent(lines::add);
              plates().ifPresent(lines::add);
              lines.addAll(new SheetSizeWords(comparison, figures).lines());
              comparison.alone().ifPresent(alone -> lines.add(alone(alone)));
              lines.addAll(changes());
              comparison.oneMoreTurn().ifPresent(more -> lines.add(oneMoreTurn(best, more)));
              comparison.ears().ifPresent(ears -> lines.add(ears(ears)));
            });
    return lines;
  }

  /** What a joint is taken to cost, and what would make another size the best. */
  public List<String> briefReasons() {
    List<String> lines = new ArrayList<>();
    if (comparison.best().isPresent()) {
      assumption().ifPresent(lines::add);
      plates().ifPresent(lines::add);
      lines.addAll(changes());
    }
    return lines;
  }

  /** Why sheets here may be more than those of a plan. */
  private Optional<String> plates() {
    return comparison.options().stream().anyMatch(option -> option.assumedSheets() > 0)
        ? Optional.of(
            "Sheets and cost include splice plates, assumed under each joint because the job does not"
                + " describe them; `plan` cuts no plates until you list them under `pieces:`.")
        : Optional.empty();
  }

  /** All that {@link SegmentOption#total} adds up, with the price of a joint. */
  static String counted(Job job, JointPrice joint) {
    Rates rates = job.rates();
    boolean cutting =
        rates.feedPerMinute().isPresent()
            && rates.machinePerHour().plus(rates.ownTimePerHour()).compareTo(Money.ZERO) > 0;
    return (cutting ? "plywood, cutting and joints" : "plywood and joints")
        + " (%s a joint)".formatted(Figures.of(job).money(joint.each()))
        + (rates.offcutsWorth() > 0 ? ", less what the offcuts are worth" : "");
  }

  private Optional<String> assumption() {
    JointPrice joint = comparison.recommendation().orElseThrow().joint();
    return joint.assumed()
        ? Optional.of(
            "Each joint is assumed to cost %s (1/%s of the price of a sheet%s). Set your own with `rates:` in the job file."
                .formatted(
                    figures.money(joint.each()),
                    JointPrice.JOINTS_PER_SHEET,
                    joint.parts().equals(Money.ZERO)
                        ? ""
                        : ", and %s for plate and screws".formatted(figures.money(joint.parts()))))
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
    found
        .dearerSheets()
        .filter(CompareWords::isPlausible)
        .ifPresent(swing -> lines.add(swing(swing, "more")));
    found
        .cheaperSheets()
        .filter(CompareWords::isPlausible)
        .ifPresent(swing -> lines.add(swing(swing, "less")));
    return lines;
  }

  /** Nobody sells sheets at a fifth of the price, or at five times as much. */
  private static boolean isPlausible(Recommendation.PriceSwing swing) {
    return swing.factor() <= PLAUSIBLE && swing.factor() >= 1 / PLAUSIBLE;
  }

  private String swing(Recommendation.Swing swing, String than) {
    return "If a joint costs you %s than %s in time and parts, cut %s instead."
        .formatted(than, figures.money(swing.eachJoint()), SegmentName.plural(swing.division()));
  }

  private String swing(Recommendation.PriceSwing swing, String than) {
    Money now = comparison.mainSheet().price();
    Money then = new Money(Math.round(now.minorUnits() * swing.factor()));
    String sheets =
        job.sheets().size() == 1
            ? "If a sheet costs %s than %s instead of %s"
                .formatted(than, figures.money(then), figures.money(now))
            : "If sheets cost %s %% %s"
                .formatted(Math.round(100 * Math.abs(swing.factor() - 1)), than);
    return "%s and a joint costs the same as now, cut %s instead."
        .formatted(sheets, SegmentName.plural(swing.division()));
  }

  private String oneMoreTurn(SegmentOption best, MoreTurn more) {
    String sheets =
        more.sheetCost().compareTo(Money.ZERO) <= 0
            ? "no more sheets"
            : more.sheets() <= 0
                ? "%s more for sheets".formatted(figures.money(more.sheetCost()))
                : "%s (%s)"
                    .formatted(
                        Figures.count(more.sheets(), "more sheet"),
                        figures.money(more.sheetCost()));
    Money eachJoint = comparison.recommendation().orElseThrow().joint().each();
    Money apart = more.sheetCost().plus(eachJoint.times(more.joints()));
    return "One more turn of %s would cost at most %s: %s and %s at %s%s."
        .formatted(
            SegmentName.plural(best.division().segment()),
            figures.money(more.all()),
            sheets,
            Figures.count(more.joints(), "more joint"),
            figures.money(eachJoint),
            more.all().equals(apart) ? "" : ", with cutting and offcuts counted");
  }

  private String ears(Ears ears) {
    String found =
        "%s with ears for the rods, %s with the rods through the roadbed."
            .formatted(
                Figures.count(ears.sheetsWith(), "sheet"),
                Figures.count(ears.sheetsWithout(), "sheet"));
    return ears.extra().equals(Money.ZERO)
        ? ears.sheetsWith() == ears.sheetsWithout()
            ? "Ears cost no extra sheet here: it takes %s with ears for the rods or with the rods through the roadbed."
                .formatted(Figures.count(ears.sheetsWith(), "sheet"))
            : "Ears cost no extra sheet here: " + found
        : "Ears cost %s in sheets: %s".formatted(figures.money(ears.extra()), found);
  }

  private String alone(LonePiece alone) {
    String advice =
        alone.tried()
            ? alone
                .saving()
                .map(
                    saving ->
                        SensitivityWords.advice(saving.dimension(), saving.change(), job.style())
                            + "you can do without that sheet: %s in all (tried)."
                                .formatted(Figures.count(saving.sheets(), "sheet")))
                .orElse(
                    "Small changes of margin, kerf, width and radius were tried; none does without it.")
            : "Look for a remnant that is large enough for it.";
    return "Sheet %s holds only one piece (%s). %s".formatted(alone.sheet(), alone.piece(), advice);
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
                    "Most turns from one sheet: " + peak(scan.bestForSheet()) + ".",
                    "Fewest pieces of one size for this helix:"))
        .orElse(List.of());
  }

  private String peak(AngleScan.Sample sample) {
    return "%s, %s to a sheet, %s turns"
        .formatted(
            SegmentName.plural(sample.angle()),
            sample.perSheet(),
            Figures.decimal(sample.turnsPerSheet(), 2));
  }

  /** How far the sheets asked about reach: a title, then a line a size; empty if none was asked. */
  public List<String> reach() {
    if (comparison.reach().isEmpty()) {
      return List.of();
    }
    boolean remnants = comparison.reach().get(0).onRemnants() > 0;
    List<String> lines = new ArrayList<>();
    lines.add(
        "With %s of %s%s you can build"
            .formatted(
                Figures.count(comparison.question().sheetsOnHand().orElseThrow(), "sheet"),
                comparison.mainSheet().name(),
                remnants ? " and the sheets on hand" : ""));
    for (Reach reach : comparison.reach()) {
      lines.add(
          "%s turns of %s (%s%s)"
              .formatted(
                  Figures.decimal(reach.turns(), 2),
                  SegmentName.plural(reach.division()),
                  Figures.count(reach.pieces(), "piece"),
                  remnants
                      ? ", %s of them from sheets on hand".formatted(reach.onRemnants())
                      : ""));
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
              .map(
                  option ->
                      SegmentName.brief(option.division())
                          + (option.isForLeadAlone(opening)
                              ? " (only the end pieces, with their leads)"
                              : ""))
              .collect(Collectors.joining(", "));
      if (!too.isEmpty()) {
        lines.add(
            "Too large for %s (%s): %s."
                .formatted(opening.name(), figures.sides(opening.length(), opening.width()), too));
      }
    }
    if (comparison.options().stream().anyMatch(option -> option.parts().assumed())) {
      lines.add(
          "The job does not say how pieces are joined. Assumed under each joint: a splice plate %s long, %s narrower than the roadbed, with 6 screws, cut from the same sheets."
              .formatted(figures.given(Length.ofInches(5)), figures.given(Length.ofInches(0.5))));
    }
    if (!job.rates().costSomething()) {
      lines.add(
          "Sizes are compared by the price of sheets and joints. To count cutting and your own time too,"
              + " set them under `rates:` in the job file.");
    }
    comparison
        .refused()
        .forEach(
            refusal ->
                lines.add(
                    "%s cannot be cut: %s"
                        .formatted(
                            SegmentName.brief(refusal.angle()),
                            refusal.reason().lines().findFirst().orElse(""))));
    return lines;
  }

  /** How cuts and glue are counted, for whoever is shown them. */
  public String counted() {
    return "The length of cut counts every edge once, with plates, blocks and holes. Glue is counted at %s."
        .formatted(GluedArea.words(job.style()));
  }

  /** What the column "Per sheet" leaves out, where the pieces would seem to fit on fewer sheets. */
  public Optional<String> perSheet() {
    return comparison.options().stream()
            .anyMatch(
                option ->
                    option.sheets() > 1
                        && option.cut() <= (option.sheets() - 1) * option.perSheet())
        ? Optional.of("'Per sheet' counts plain segments alone. The other parts need room too.")
        : Optional.empty();
  }

  /**
   * Each mixed plan: where which pieces go, and how to have it planned.
   *
   * @param sheets with what is cut from each sheet
   */
  public List<List<String>> mixed(boolean sheets) {
    return comparison.options().stream()
        .filter(option -> option.division().isMixed())
        .map(option -> mixed(option, sheets))
        .toList();
  }

  private List<String> mixed(SegmentOption option, boolean sheets) {
    SegmentRun lower = option.division().lower().orElseThrow();
    List<String> lines = new ArrayList<>();
    lines.add("Mixed plan " + SegmentName.brief(option.division()));
    lines.add(
        "From the bottom up%s: %s %s, %s turns; then %s."
            .formatted(
                job.structure().map(order -> order.plan().spec().construction().layers()).orElse(1)
                        > 1
                    ? ", in each of the two layers"
                    : "",
                lower.count(),
                SegmentName.plural(lower.segment()),
                Figures.decimal(lower.degrees() / 360, 2),
                SegmentName.plural(option.division().segment())));
    for (int i = 0; sheets && i < option.plan().layouts().size(); i++) {
      lines.add("Sheet " + (i + 1) + ": " + content(option, option.plan().layouts().get(i)));
    }
    lines.add(
        "To plan it, write under `helix:` in the job file: `segment-angle: %s` and `lower-segments: {count: %s, angle: %s}`."
            .formatted(
                plain(option.division().segment().degrees()),
                lower.count(),
                plain(lower.segment().degrees())));
    return lines;
  }

  private static String content(SegmentOption option, Layout layout) {
    Map<String, Integer> alike = new LinkedHashMap<>();
    for (Demand demand : option.plan().job().demands()) {
      alike.merge(demand.piece().name(), layout.count(demand.piece()), Integer::sum);
    }
    return alike.entrySet().stream()
        .filter(kind -> kind.getValue() > 0)
        .map(kind -> kind.getValue() + " x " + kind.getKey())
        .collect(Collectors.joining("; "));
  }

  private static String plain(double degrees) {
    return new BigDecimal(Double.toString(degrees)).stripTrailingZeros().toPlainString();
  }
}
