package curvestock.answer;

import curvestock.helix.HelixPlan;
import curvestock.helix.clearance.EndClearance;
import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.clearance.HeightBudget;
import curvestock.helix.course.Climb;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.verdict.Place;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.helix.verdict.VerdictWords;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Mass;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A whole helix in sentences: whether it works, and its figures. */
public final class HelixWords {

  /** So many assumed values are told in a sentence. */
  private static final int FEW_ASSUMED = 6;

  private final Building helix;
  private final HelixPlan plan;
  private final HelixSpec spec;
  private final Figures figures;
  private final LengthStyle style;

  public HelixWords(Building helix, Figures figures) {
    this.helix = helix;
    this.plan = helix.plan();
    this.spec = plan.spec();
    this.figures = figures;
    this.style = figures.style();
  }

  /** Whether it works, in a line. */
  public String decision() {
    int all = helix.verdicts().size();
    int fails = helix.count(State.FAIL);
    int marginal = helix.count(State.MARGINAL);
    if (fails > 0) {
      return "Does not work: "
          + fails
          + " of "
          + all
          + (fails == 1 ? " checks fails." : " checks fail.");
    }
    return marginal == 0
        ? "Works: all " + all + " checks pass."
        : "Works: %d of %d checks pass, %d %s marginal."
            .formatted(all - marginal, all, marginal, marginal == 1 ? "is" : "are");
  }

  /** The same with the names of what is not ok, for the summary of a cutting plan. */
  public List<String> warnings() {
    List<String> lines = new ArrayList<>();
    List<String> failures = failures();
    if (!failures.isEmpty()) {
      lines.add("This helix fails: " + decision());
      lines.addAll(failures);
    }
    if (lines.isEmpty()) {
      lines.add(
          named() + (helix.count(State.MARGINAL) > 0 ? " Details: curvestock helix JOB" : ""));
    }
    return lines;
  }

  /** Whether it works, and if so the names of what is marginal. */
  public String named() {
    String marginal =
        helix.verdicts().stream()
            .filter(verdict -> verdict.state() == State.MARGINAL)
            .map(VerdictWords::title)
            .collect(Collectors.joining(", "));
    return decision()
        + (marginal.isEmpty() || !helix.works() ? "" : " Marginal: " + marginal + ".");
  }

  /**
   * What fails and what would fix it. A rule that fails in several places is told once: the worst
   * in full, the others by name.
   */
  public List<String> failures() {
    return Stream.of(Rule.values())
        .map(rule -> helix.verdicts().stream().filter(each -> fails(each, rule)).toList())
        .filter(group -> !group.isEmpty())
        .flatMap(group -> failure(group).stream())
        .toList();
  }

  private static boolean fails(Verdict verdict, Rule rule) {
    return verdict.rule() == rule && verdict.state() == State.FAIL;
  }

  private List<String> failure(List<Verdict> group) {
    VerdictWords words = new VerdictWords(style);
    Verdict worst = group.stream().min(Comparator.comparingDouble(HelixWords::room)).orElseThrow();
    String also =
        group.stream()
            .filter(verdict -> !verdict.equals(worst))
            .flatMap(verdict -> verdict.place().stream())
            .map(Place::words)
            .collect(Collectors.joining(", "));
    List<String> lines = new ArrayList<>();
    lines.add(
        VerdictWords.title(worst)
            + ": fail: "
            + words.finding(worst)
            + (also.isEmpty() ? "" : "; also " + also));
    boolean figuresGiven = group.stream().anyMatch(verdict -> verdict.remedy().isPresent());
    group.stream()
        .filter(verdict -> !figuresGiven || verdict.remedy().isPresent())
        .map(words::fix)
        .filter(fix -> !fix.isEmpty())
        .distinct()
        .forEach(fix -> lines.add("fix: " + fix));
    return lines;
  }

  /** What is left over what is needed; below zero where it is not enough. */
  private static double room(Verdict verdict) {
    return verdict.measured().orElse(Text.NONE) instanceof Length has
            && verdict.needed().orElse(Text.NONE) instanceof Length needs
        ? has.minus(needs).millimetres()
        : 0;
  }

  /** A line for each check that came out so, and how to fix it. */
  public List<String> checks(State state) {
    VerdictWords words = new VerdictWords(style);
    List<String> lines = new ArrayList<>();
    for (Verdict verdict : helix.verdicts()) {
      if (verdict.state() == state) {
        String title = VerdictWords.title(verdict);
        lines.add("%-8s  %s: %s".formatted(state.word(), title, words.finding(verdict)));
        String fix = words.fix(verdict);
        if (!fix.isEmpty()) {
          lines.add("          fix: " + fix);
        }
      }
    }
    return lines;
  }

  /** What the job left open, in a sentence; empty if nothing. */
  public String assumed() {
    Table assumed = helix.assumed();
    if (assumed.isEmpty()) {
      return "";
    }
    if (assumed.rows().size() > FEW_ASSUMED) {
      return Figures.count(assumed.rows().size(), "value")
          + " are assumed, since the job does not say; --details lists them all.";
    }
    return "Assumed, since the job does not say: "
        + IntStream.range(0, assumed.rows().size())
            .mapToObj(
                row ->
                    figures.of(assumed.at(row, "field"), Measure.TEXT)
                        + " "
                        + figures.of(assumed.at(row, "value"), Measure.TEXT))
            .collect(Collectors.joining("; "))
        + ".";
  }

  /** Where it goes and how it climbs. */
  public List<String> course() {
    GroundPlan ground = spec.ground();
    List<String> lines = new ArrayList<>();
    lines.add(
        "Scale "
            + spec.scale().name()
            + ", "
            + (ground.trackRadii().size() == 1 ? "one track at " : "two tracks at ")
            + ground.trackRadii().stream().map(figures::length).collect(Collectors.joining(" and "))
            + " radius, roadbed "
            + figures.length(ground.width())
            + " wide ("
            + figures.length(ground.innerEdge())
            + " to "
            + figures.length(ground.outerEdge())
            + ")"
            + (ground.isOval() ? ", straights of " + figures.length(ground.straight()) : ""));
    lines.addAll(size());
    lines.add("Weighs about " + weight() + " without track: " + weights());
    return lines;
  }

  /** How it climbs, how steep and how long its tracks are, and what room it takes. */
  public List<String> size() {
    Climb climb = plan.climb();
    List<String> lines = new ArrayList<>();
    lines.add(
        "Climbs "
            + figures.length(climb.climb())
            + " in "
            + Figures.decimal(climb.turns(), 3)
            + " turns, "
            + (spec.ground().direction() == Direction.CLOCKWISE ? "clockwise" : "counter-clockwise")
            + ", "
            + figures.length(climb.risePerTurn())
            + " a turn; enters at "
            + bearing(-spec.bottom().leadIn().millimetres())
            + ", leaves at "
            + bearing(climb.ringLength() + spec.top().leadIn().millimetres()));
    lines.addAll(tracks());
    lines.add(takesUp());
    return lines;
  }

  /** A sentence for each track. */
  public List<String> tracks() {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < plan.trackGrades().size(); i++) {
      lines.add(
          "Track at "
              + figures.length(spec.ground().trackRadii().get(i))
              + " radius: grade "
              + plan.trackGrades().get(i)
              + ", pulls like "
              + plan.equivalentGrades().get(i)
              + " on straight track (estimate); "
              + figures.run(plan.trackLengths().get(i))
              + " of track on the ring");
    }
    return lines;
  }

  private String takesUp() {
    GroundPlan ground = spec.ground();
    Length outer = ground.outerEdge().plus(spec.beyondEdges()).times(2);
    return "Takes up "
        + (ground.isOval() ? figures.length(outer.plus(ground.straight())) + " by " : "")
        + figures.length(outer)
        + (ground.isOval() ? "" : " across")
        + " without the leads; "
        + figures.length(ground.innerEdge().minus(spec.beyondEdges()).times(2))
        + " clear inside";
  }

  private String weight() {
    return figures.weight((Mass) helix.figures().at(0, "weight"));
  }

  private String weights() {
    boolean rods = spec.supports().riser() instanceof Riser.ThreadedRods;
    return HelixTables.weights(helix.order(), figures, rods ? "rods" : "riser blocks");
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
              + " free");
    }
    return lines;
  }

  /** The room at entry and exit. */
  public List<String> ends() {
    List<String> lines = new ArrayList<>();
    for (End end : End.values()) {
      EndClearance clearance = plan.clearanceAt(end);
      String place = end == End.BOTTOM ? "Entry" : "Exit";
      lines.add(
          clearance.applies()
              ? place
                  + ": the straight lies "
                  + (end == End.BOTTOM ? "under" : "over")
                  + " the ring for "
                  + figures.length(clearance.overlapLength())
                  + "; at least "
                  + figures.length(clearance.free(Length.ZERO))
                  + " free there, with nothing hanging below"
              : place + ": no turn lies over another here");
    }
    return lines;
  }

  private String bearing(double at) {
    Angle angle = plan.line().bearing(at);
    return figures.bearing(angle);
  }

  /** How much of everything on the shopping list has a price. */
  public static String total(Answer answer) {
    boolean sheets = answer.buying().isPresent();
    return "Total of stated prices "
        + answer.figures().money(answer.priced())
        + (sheets ? ", sheets included" : ", without the sheets")
        + (answer.unpriced() > 0
            ? "; plus " + Figures.count(answer.unpriced(), "unpriced item")
            : "");
  }
}
