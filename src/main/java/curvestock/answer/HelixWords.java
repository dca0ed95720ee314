package curvestock.answer;

import curvestock.helix.Assumption;
import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
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
import curvestock.units.Money;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A whole helix in sentences: whether it works, and its figures. */
public final class HelixWords {

  /** So many assumed values are told in a sentence. */
  private static final int FEW_ASSUMED = 6;

  private static final String ONE_ASSUMED = "Your job does not say, so this is assumed: ";
  private static final String SOME_ASSUMED = "Your job does not say, so these are assumed: ";
  private static final String QUOTED = "as quoted elsewhere";

  /** A difference in height that a reader can see in the figures, in millimetres. */
  private static final double SEEN = 1;

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
    return decision("");
  }

  private String decision(String named) {
    int all = helix.verdicts().size();
    int fails = helix.count(State.FAIL);
    int marginal = helix.count(State.MARGINAL);
    if (fails > 0) {
      return "The helix does not work: %s of %s checks %s."
          .formatted(fails, all, fails == 1 ? "fails" : "fail");
    }
    return marginal == 0
        ? "The helix works: all %s checks pass.".formatted(all)
        : "The helix works: %s of %s checks pass, %s %s marginal%s."
            .formatted(all - marginal, all, marginal, marginal == 1 ? "is" : "are", named);
  }

  /** Whether it works, and what does not: for whoever reads of the sheets. */
  public List<String> warnings() {
    List<String> lines = new ArrayList<>(List.of(named()));
    lines.addAll(failures());
    return lines;
  }

  /** Whether it works, and if so the names of what is marginal. */
  public String named() {
    List<String> marginal =
        helix.verdicts().stream()
            .filter(verdict -> verdict.state() == State.MARGINAL)
            .map(VerdictWords::title)
            .toList();
    return decision(" (" + String.join("; ", marginal) + ")");
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
        "%s fails: %s%s"
            .formatted(
                Figures.capital(VerdictWords.title(worst)),
                words.finding(worst),
                also.isEmpty() ? "" : "; also " + also));
    boolean figuresGiven = group.stream().anyMatch(verdict -> verdict.remedy().isPresent());
    group.stream()
        .filter(verdict -> !figuresGiven || verdict.remedy().isPresent())
        .map(words::fix)
        .filter(fix -> !fix.isEmpty())
        .distinct()
        .forEach(fix -> lines.add("Fix: " + fix));
    return lines;
  }

  /** What is left over what is needed; below zero where it is not enough. */
  private static double room(Verdict verdict) {
    return verdict.measured().orElse(Text.NONE) instanceof Length has
            && verdict.needed().orElse(Text.NONE) instanceof Length needs
        ? has.minus(needs).millimetres()
        : 0;
  }

  /** How several fixes are taken; empty if there are not several. */
  public Optional<String> oneByOne() {
    VerdictWords words = new VerdictWords(style);
    return helix.verdicts().stream().filter(verdict -> !words.fix(verdict).isEmpty()).count() < 2
        ? Optional.empty()
        : Optional.of(
            "Each fix is worked out on its own. Make one, then run this again before you make the next.");
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

  /** What is meant by figures that are quoted; empty if no check has one. */
  public Optional<String> quoted() {
    VerdictWords words = new VerdictWords(style);
    return quoted(helix.verdicts().stream().map(words::finding));
  }

  /** The same of assumed values. */
  public Optional<String> quotedInAssumed() {
    return quoted(helix.order().assumed().stream().map(Assumption::reason));
  }

  private static Optional<String> quoted(Stream<String> texts) {
    return texts.anyMatch(each -> each.contains(QUOTED))
        ? Optional.of(
            "'As quoted elsewhere': taken from another text that quotes the original. Check the original if"
                + " it matters to you.")
        : Optional.empty();
  }

  /** What the job left open, in a sentence; empty if nothing. */
  public String assumed() {
    Table assumed = helix.assumed();
    if (assumed.isEmpty()) {
      return "";
    }
    if (assumed.rows().size() > FEW_ASSUMED) {
      return "Assumed: %s values that the job does not give. Check them: --details lists them all."
          .formatted(assumed.rows().size());
    }
    return IntStream.range(0, assumed.rows().size())
        .mapToObj(
            row ->
                "%s %s"
                    .formatted(
                        figures.of(assumed.at(row, "what"), Measure.TEXT),
                        figures.of(assumed.at(row, "value"), Measure.TEXT)))
        .collect(
            Collectors.joining("; ", assumed.rows().size() == 1 ? ONE_ASSUMED : SOME_ASSUMED, "."));
  }

  /** Where it goes and how it climbs. */
  public List<String> course() {
    GroundPlan ground = spec.ground();
    List<String> lines = new ArrayList<>();
    lines.add(
        "Scale %s, %s at %s radius, roadbed %s wide (radius %s to %s)%s."
            .formatted(
                spec.scale().name(),
                ground.trackRadii().size() == 1 ? "one track" : "two tracks",
                Figures.list(ground.trackRadii().stream().map(figures::length).toList()),
                figures.length(ground.width()),
                figures.length(ground.innerEdge()),
                figures.length(ground.outerEdge()),
                ground.isOval() ? ", straights of " + figures.length(ground.straight()) : ""));
    lines.addAll(size());
    HeightWords trains = new HeightWords(helix, figures);
    lines.add(trial());
    trains.tallestThatClears().ifPresent(lines::add);
    lines.add(trains.longestCarThatClears());
    List<String> parts = weights();
    lines.add(
        "Weighs about %s without track%s."
            .formatted(
                weight(),
                parts.isEmpty()
                    ? ""
                    : ": %s, and the rest is %s"
                        .formatted(
                            String.join(", ", parts),
                            helix.order().base().isPresent()
                                ? "roadbed"
                                : "the pieces from the sheets")));
    return lines;
  }

  /** How it climbs, how steep and how long its tracks are, and what room it takes. */
  public List<String> size() {
    Climb climb = plan.climb();
    List<String> lines = new ArrayList<>();
    lines.add(
        "Climbs %s %s: %s. Track enters at %s and leaves at %s (0° is at 3 o'clock on the plan; count counter-clockwise)."
            .formatted(
                figures.length(climb.climb()),
                spec.ground().direction() == Direction.CLOCKWISE
                    ? "clockwise"
                    : "counter-clockwise",
                parts(climb),
                bearing(-spec.bottom().leadIn().millimetres()),
                bearing(climb.ringLength() + spec.top().leadIn().millimetres())));
    lines.addAll(tracks());
    lines.add(takesUp());
    return lines;
  }

  /** What the turns climb, and what the leads add to it. */
  private String parts(Climb climb) {
    double ring = climb.risePerTurn().millimetres() * climb.turns();
    double rest = climb.climb().millimetres() - ring;
    String turns = Figures.decimal(climb.turns(), 3);
    String each = about(climb.risePerTurn());
    return rest > SEEN
        ? "%s over %s turns (%s a turn) and %s on the leads"
            .formatted(
                figures.length(Length.ofMillimetres(ring)),
                turns,
                each,
                figures.length(Length.ofMillimetres(rest)))
        : "%s turns, %s a turn".formatted(turns, each);
  }

  /** Nobody is to multiply a rounded length. */
  private String about(Length length) {
    String words = figures.length(length);
    return words.equals(figures.given(length)) ? words : "about " + words;
  }

  /** That a marginal check stops nobody; empty if none is. */
  public Optional<String> marginal() {
    return helix.verdicts().stream().anyMatch(verdict -> verdict.state() == State.MARGINAL)
        ? Optional.of(
            "A helix with a marginal check can be built: a figure has little to spare there, or is outside a rule of thumb or a standard. Make the fix where one is given.")
        : Optional.empty();
  }

  /** How to learn what an engine pulls before anything is cut. */
  private String trial() {
    return "Before you cut, run your engine with its longest train up a straight board set at %s: that is about as hard a pull as %s."
        .formatted(
            plan.equivalentGrades().get(0),
            plan.trackGrades().size() == 1 ? "this helix" : "the inner track");
  }

  /** A sentence for each track. */
  public List<String> tracks() {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < plan.trackGrades().size(); i++) {
      lines.add(
          "%s, %s%s %s radius: grade %s, pulls like %s on straight track (estimate)."
              .formatted(
                  plan.trackGrades().size() == 1 ? "Track" : i == 0 ? "Inner track" : "Outer track",
                  figures.run(plan.trackLengths().get(i)),
                  spec.ground().isOval() ? " with curves of" : " at",
                  figures.length(spec.ground().trackRadii().get(i)),
                  plan.trackGrades().get(i),
                  plan.equivalentGrades().get(i)));
    }
    return lines;
  }

  /** What the shopping list leaves out, and how much of it. */
  public String notListed() {
    return "Not on this list: track and underlay for about %s (%sleads included)%s."
        .formatted(
            figures.run((Length) helix.figures().at(0, "track")),
            plan.trackGrades().size() == 1 ? "" : "both tracks, ",
            helix.order().base().isPresent() ? ", and screws for the base" : ", and the base");
  }

  /** The helix on the floor with its leads, the longer side first. */
  static String room(Building helix, Figures figures) {
    return figures.sides(
        figures.onFloor((Length) helix.figures().at(0, "roomLength")),
        figures.onFloor((Length) helix.figures().at(0, "roomWidth")));
  }

  private String takesUp() {
    String ring = across(helix.order(), figures);
    Length side = figures.onFloor(helix.order().across());
    String room = room(helix, figures);
    String stands =
        helix.order().baseIsWider()
            ? "base"
            : plan.beyondEdge(true).compareTo(Length.ZERO) <= 0
                ? ""
                : plan.beyondEdge(true).equals(spec.beyondEdges())
                    ? "what stands out beyond the edge"
                    : "edge strips";
    return "Floor space %s; %s clear inside. Allow standing room around it. The highest rail is %s above the base%s."
        .formatted(
            room.equals(ring) || room.equals(figures.sides(side, side))
                ? "%s, leads%s included".formatted(ring, stands.isEmpty() ? "" : " and " + stands)
                : "%s%s, or %s with the leads"
                    .formatted(
                        ring, stands.isEmpty() ? "" : " (%s included)".formatted(stands), room),
            figures.length(helix.order().clearInside()),
            figures.roomy(height()),
            spec.traffic()
                .tallest()
                .map(
                    tallest ->
                        ", the roof of the tallest train %s"
                            .formatted(figures.roomy(height().plus(tallest))))
                .orElse(": add room for the trains"));
  }

  /** How wide the whole is, with its base and all that stands out beyond the roadbed's edge. */
  public static String across(HelixOrder order, Figures figures) {
    GroundPlan ground = order.plan().spec().ground();
    Length outer = figures.onFloor(order.across());
    return ground.isOval()
        ? figures.sides(outer.plus(ground.straight()), outer)
        : figures.length(outer) + " across";
  }

  /** What else every height and half-lap hangs on: half of what a height may be off. */
  public String thickness() {
    return "Measure how thick your sheets are first. Your job says %s: if yours are off by more than %s, change the job and make the packet again."
        .formatted(
            figures.given(spec.stack().plywood()),
            figures.sawn(
                figures.isImperial() ? Length.ofInches(1.0 / 64) : Length.ofMillimetres(0.4)));
  }

  private Length height() {
    return (Length) helix.figures().at(0, "roomHeight");
  }

  private String weight() {
    return figures.weight((Mass) helix.figures().at(0, "weight"));
  }

  private List<String> weights() {
    boolean rods = spec.supports().riser() instanceof Riser.ThreadedRods;
    return HelixTables.weights(helix.order(), figures, rods ? "rods" : "riser blocks");
  }

  private String bearing(double at) {
    Angle angle = plan.line().bearing(at);
    return figures.bearing(angle);
  }

  /** How much of everything on the shopping list has a price. */
  public static String total(Answer answer) {
    boolean sheets = answer.buying().isPresent();
    String unpriced = Figures.count(answer.unpriced(), "item");
    if (!answer.unfit().isEmpty()) {
      return "No total: what fits on no sheet cannot be bought";
    }
    if (!sheets && answer.priced().equals(Money.ZERO)) {
      return "No total: sheets not included, " + unpriced + " with no price given";
    }
    return "Total %s, sheets %s%s"
        .formatted(
            answer.figures().money(answer.priced()),
            sheets ? "included" : "not included",
            answer.unpriced() == 0
                ? ""
                : ", plus " + Figures.count(answer.unpriced(), "unpriced item"));
  }

  /** That the pieces cannot be cut from the sheets, why, and what would help; empty if they can. */
  public static List<String> unfit(Answer answer) {
    if (answer.unfit().isEmpty()) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    lines.add("This cannot be cut from the sheets of the job. Change it before you buy anything.");
    lines.addAll(answer.unfit());
    return lines;
  }
}
