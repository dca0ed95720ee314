package curvestock.answer;

import curvestock.helix.HelixPlan;
import curvestock.helix.clearance.EndClearance;
import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.clearance.HeightBudget;
import curvestock.helix.clearance.LongestCar;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.verdict.Place;
import curvestock.helix.verdict.Rule;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The height between turns in sentences: where it goes, and the train that it leaves room for. */
public final class HeightWords {

  /** A height that a reader can see in the figures, in millimetres. */
  private static final double SEEN = 0.1;

  private final Building helix;
  private final HelixPlan plan;
  private final HelixSpec spec;
  private final Figures figures;
  private final LengthStyle style;

  public HeightWords(Building helix, Figures figures) {
    this.helix = helix;
    this.plan = helix.plan();
    this.spec = plan.spec();
    this.figures = figures;
    this.style = figures.style();
  }

  /** The tallest train for which every clearance is enough; empty if no turn is over another. */
  public Optional<String> tallestThatClears() {
    return plan.tallestTrain()
        .filter(tallest -> tallest.compareTo(Length.ZERO) > 0)
        .map(
            tallest ->
                "The tallest train that clears everywhere stands %s above the rail, with at least %s to spare%s."
                    .formatted(
                        figures.atMost(tallest),
                        figures.length(spec.traffic().spare()),
                        spec.traffic()
                            .tallest()
                            .map(yours -> "; yours stands " + figures.length(yours))
                            .orElse("")));
  }

  /** How long a car may be, or what to give so that it can be told. */
  public String longestCarThatClears() {
    String passes =
        spec.ground().trackSpacing().isPresent() ? "supports and each other" : "supports";
    return spec.traffic()
        .longest()
        .map(
            yours ->
                LongestCar.like(spec)
                    .map(
                        length ->
                            "A car with a body up to %s long clears the %s%s (yours: %s), if it is as wide as yours and its truck centres are %s of its length apart."
                                    .formatted(
                                        figures.atMost(length),
                                        passes,
                                        spare(),
                                        figures.length(yours.length()),
                                        share(yours))
                                + reliable(length))
                    .orElse("No car as wide as yours clears the %s.".formatted(passes)))
        .orElseGet(this::longestByStandard);
  }

  /** What clears is not all that runs well. */
  private String reliable(Length clears) {
    Length third = spec.ground().innerTrack().times(1.0 / 3);
    return third.compareTo(clears) < 0
        ? " Cars run best if they are no longer than a third of the radius, %s (rule of thumb)."
            .formatted(figures.atMost(third))
        : "";
  }

  private String spare() {
    Length spare = spec.traffic().spare();
    return spare.equals(Length.ZERO) ? "" : " with " + figures.given(spare) + " to spare";
  }

  private String share(Vehicle vehicle) {
    return String.format(
        Locale.ROOT,
        "%.0f %%",
        100 * vehicle.truckCentres().millimetres() / vehicle.length().millimetres());
  }

  private String longestByStandard() {
    return LongestCar.group(spec)
            .map(
                group ->
                    "The longest cars that clear the supports are those of NEM 103's group %s, %s over the body. "
                        .formatted(
                            group,
                            figures.length(group.longestBody().times(1 / spec.scale().ratio()))))
            .orElse("How long a car clears the supports cannot be told from your job. ")
        + "Give your longest car (`trains: longest:` with length, width and truck-centres) to have it checked.";
  }

  /** Where the height between turns goes, a sum a line, in decimals so that it can be checked. */
  public List<String> budgets() {
    LengthStyle decimals = new LengthStyle(style.unit(), 0);
    List<String> lines = new ArrayList<>();
    for (HeightBudget budget : plan.budgets()) {
      lines.add(
          decimals.format(budget.risePerTurn())
              + budget.items().stream()
                  .filter(item -> item.height().millimetres() > 0)
                  .map(item -> " - " + decimals.number(item.height()) + " " + item.name())
                  .collect(Collectors.joining())
              + " = "
              + decimals.format(budget.free())
              + " clear");
    }
    return lines;
  }

  /** The room at entry and exit, as the rule on it found. */
  public List<String> ends() {
    List<String> lines = new ArrayList<>();
    for (End end : End.values()) {
      EndClearance clearance = plan.clearanceAt(end);
      Place at = end == End.BOTTOM ? Place.ENTRY : Place.EXIT;
      lines.add(
          helix.verdicts().stream()
              .filter(verdict -> verdict.is(Rule.FREE_HEIGHT, at))
              .findFirst()
              .map(verdict -> end(end, clearance, (Length) verdict.measured().orElseThrow()))
              .orElse(
                  (end == End.BOTTOM ? "Entry" : "Exit") + ": no turn passes over another here"));
    }
    return lines;
  }

  private String end(End end, EndClearance clearance, Length free) {
    Length hanging = clearance.free(Length.ZERO).minus(free);
    return "%s: the straight runs %s the ring for %s, with at least %s clear there; %s"
        .formatted(
            end == End.BOTTOM ? "Entry" : "Exit",
            end == End.BOTTOM ? "under" : "over",
            figures.length(clearance.overlapLength()),
            figures.length(free),
            hanging.millimetres() < SEEN
                ? "no plate, cross piece or batten hangs down there"
                : "%s hangs below the roadbed there".formatted(figures.length(hanging)));
  }
}
