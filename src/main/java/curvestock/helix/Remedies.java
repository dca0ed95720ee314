package curvestock.helix;

import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Setting;
import curvestock.helix.spec.SupportPlan;
import curvestock.helix.verdict.Change;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * What would work in place of a helix that does not: the nearest helixes of the same climb, ends
 * and trains of which no rule fails, each found by planning it whole.
 *
 * <p>Turns change by whole ones, so that the track leaves in the same direction (by halves on an
 * oval), and by quarters where the exit is free; radius and side margin grow by steps that a
 * builder would choose; supports keep their distance. Where that is not enough, what can be mended
 * by itself is mended first: see {@link Repairs}.
 */
public final class Remedies {

  private static final int MOST_ROUNDS = 4;

  /** A builder changes so many figures at once without another look. */
  private static final int FEW = 2;

  private static final int MOST_STEPS = 200;
  private static final int MOST_TURNS_OFF = 6;
  private static final double LEAST_TURNS = 0.2;
  private static final double QUARTER = 0.25;

  private final HelixSpec spec;
  private final LengthStyle style;
  private final double turns;
  private final boolean freeExit;
  private final Length climb;
  private final Length radiusStep;
  private final Length marginStep;

  private Remedies(HelixPlan plan) {
    this.spec = plan.spec();
    this.style = plan.style();
    freeExit = !spec.ground().isOval() && spec.ascent().exit().isEmpty();
    // Turns that nobody stated need be no odd number.
    double found = plan.climb().turns();
    boolean stated = spec.ascent().turns().isPresent();
    turns = freeExit && !stated ? Math.max(QUARTER, Math.rint(found / QUARTER) * QUARTER) : found;
    this.climb = plan.climb().climb();
    boolean imperial = style.unit().isImperial();
    radiusStep = imperial ? Length.ofInches(0.25) : Length.ofMillimetres(5);
    marginStep = imperial ? Length.ofInches(0.125) : Length.ofMillimetres(2);
  }

  /**
   * Helixes that work, each with as little changed as possible: other turns, a wider radius, or a
   * wider margin alone; where none of these is enough, two of them together. Empty if the helix
   * works or nothing of this kind makes it work.
   */
  public static List<HelixPlan> of(HelixPlan plan) {
    if (plan.works()) {
      return List.of();
    }
    Remedies plain = new Remedies(plan);
    List<HelixPlan> found = plain.small();
    if (found.isEmpty()) {
      found = sensible(plan, plain.find());
    }
    if (found.isEmpty()) {
      found = sensible(plan, plain.repaired());
    }
    if (found.isEmpty()) {
      found =
          new FewestChanges(plan)
              .remedy().flatMap(few -> plain.revised(few.changes())).stream().toList();
    }
    return found.isEmpty() ? plain.together().stream().toList() : List.copyOf(found);
  }

  /** Half the turns or twice the radius is another helix, not advice for this one. */
  private static List<HelixPlan> sensible(HelixPlan plan, List<HelixPlan> found) {
    double turns = plan.climb().turns();
    double radius = plan.spec().ground().bedRadius().millimetres();
    return found.stream()
        .filter(other -> other.climb().turns() > turns / 2 && other.climb().turns() < turns * 2)
        .filter(other -> other.spec().ground().bedRadius().millimetres() < radius * 2)
        .toList();
  }

  /** What works once that is mended which can be mended by itself. */
  private List<HelixPlan> repaired() {
    try {
      Optional<HelixSpec> mended = new Repairs(spec, marginStep).mended();
      if (mended.isEmpty()) {
        return List.of();
      }
      HelixPlan plan = HelixPlan.trial(mended.get(), style);
      return plan.works() ? List.of(plan) : new Remedies(plan).find();
    } catch (IllegalArgumentException cannotBePlanned) {
      return List.of();
    }
  }

  /** One thing changed by itself: what the failing rules ask for, the joint, the supports. */
  private List<HelixPlan> small() {
    List<HelixPlan> found = new ArrayList<>();
    List<Change> asked = Advice.together(HelixPlan.trial(spec, style));
    boolean few =
        !asked.isEmpty()
            && asked.size() <= FEW
            && spec.ascent().turns().isPresent()
            && asked.stream().noneMatch(change -> change.setting() == Setting.TURNS);
    if (few && asked.stream().noneMatch(Advice::isAbsurd)) {
      revised(asked).ifPresent(found::add);
    }
    if (spec.construction().hangsBelow().millimetres() > 0) {
      single(new Change(Setting.JOINT, new Text("plate"), new Text("half-lap")))
          .ifPresent(found::add);
    }
    int perTurn = spec.supports().perTurn();
    for (int more = perTurn + 1; more <= 2 * perTurn && found.isEmpty(); more++) {
      single(new Change(Setting.SUPPORTS_PER_TURN, new Count(perTurn), new Count(more)))
          .ifPresent(found::add);
    }
    if (spec.supports().firstAt().isPresent()) {
      attempt(spec.with(spec.supports().startingAt(Optional.empty()))).ifPresent(found::add);
    }
    return found;
  }

  private Optional<HelixPlan> single(Change change) {
    return revised(List.of(change));
  }

  private Optional<HelixPlan> revised(List<Change> changes) {
    try {
      return attempt(Revision.of(spec, changes));
    } catch (IllegalArgumentException cannotBePlanned) {
      return Optional.empty();
    }
  }

  /** What the failing rules ask for, with other numbers of supports if that is not enough. */
  private Optional<HelixPlan> together() {
    int perTurn = spec.supports().perTurn();
    return IntStream.rangeClosed(perTurn, 2 * perTurn)
        .mapToObj(more -> together(spec.with(spec.supports().with(more))))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** What the failing rules ask for, again and again until none fails. */
  private Optional<HelixPlan> together(HelixSpec start) {
    try {
      HelixPlan plan = HelixPlan.trial(start, style);
      for (int round = 0; round < MOST_ROUNDS && !plan.works(); round++) {
        List<Change> changes = Advice.together(plan);
        if (changes.isEmpty() || changes.stream().anyMatch(Advice::isAbsurd)) {
          return Optional.empty();
        }
        plan = HelixPlan.trial(Revision.of(plan.spec(), changes), style);
      }
      return Optional.of(plan).filter(HelixPlan::works);
    } catch (IllegalArgumentException cannotBePlanned) {
      return Optional.empty();
    }
  }

  private Optional<HelixPlan> attempt(HelixSpec other) {
    try {
      return Optional.of(HelixPlan.trial(other, style)).filter(HelixPlan::works);
    } catch (IllegalArgumentException cannotBePlanned) {
      return Optional.empty();
    }
  }

  private List<HelixPlan> find() {
    List<HelixPlan> found = new ArrayList<>();
    Optional<HelixPlan> sameExit = nearest(wholeStep());
    sameExit.ifPresent(found::add);
    if (freeExit) {
      nearest(QUARTER)
          .filter(plan -> sameExit.filter(plan::equals).isEmpty())
          .ifPresent(found::add);
    }
    least(steps -> attempt(turns, steps, 0)).ifPresent(found::add);
    least(steps -> attempt(turns, 0, steps)).ifPresent(found::add);
    if (found.isEmpty()) {
      smallest(HelixPlan::works).ifPresent(found::add);
      for (int wider = 1; wider <= MOST_STEPS && found.isEmpty(); wider *= 2) {
        int margin = wider;
        least(steps -> attempt(turns, steps, margin)).ifPresent(found::add);
      }
    }
    if (!found.isEmpty() && found.stream().noneMatch(Remedies::isGentle)) {
      smallest(plan -> plan.works() && isGentle(plan)).ifPresent(found::add);
    }
    return found;
  }

  /** The smallest radius that will do with any number of turns. */
  private Optional<HelixPlan> smallest(Predicate<HelixPlan> wanted) {
    Optional<FewestSteps<HelixPlan>> best = Optional.empty();
    for (double other : otherTurns(freeExit ? QUARTER : wholeStep())) {
      IntFunction<Optional<HelixPlan>> attempt = steps -> attempt(other, steps, 0).filter(wanted);
      // Worth halving only if it does better than the best so far.
      int below = best.map(found -> found.steps() - 1).orElse(MOST_STEPS);
      Optional<HelixPlan> tried = below < 1 ? Optional.empty() : attempt.apply(below);
      if (tried.isPresent()) {
        best = Optional.of(new FewestSteps<>(below, tried.get()).above(0, attempt));
      }
    }
    return best.map(FewestSteps::found);
  }

  /** Whether no grade is beyond the ceiling, be it the usual one. */
  private static boolean isGentle(HelixPlan plan) {
    return plan.verdicts().stream()
        .filter(verdict -> verdict.rule() == Rule.GRADE)
        .allMatch(verdict -> verdict.state() == State.OK);
  }

  private double wholeStep() {
    return spec.ground().isOval() ? 0.5 : 1;
  }

  private Optional<HelixPlan> nearest(double step) {
    return otherTurns(step).stream()
        .map(other -> attempt(other, 0, 0))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** Nearest first, fewer before more. */
  private List<Double> otherTurns(double step) {
    List<Double> others = new ArrayList<>();
    for (int off = 1; off * step <= MOST_TURNS_OFF; off++) {
      if (turns - off * step >= LEAST_TURNS) {
        others.add(turns - off * step);
      }
      others.add(turns + off * step);
    }
    return others;
  }

  /** The helix of the fewest steps that works, if more steps never make it worse. */
  private static Optional<HelixPlan> least(IntFunction<Optional<HelixPlan>> attempt) {
    return FewestSteps.of(attempt, MOST_STEPS).map(FewestSteps::found);
  }

  /** The helix with these changes, if it can be planned and works. */
  private Optional<HelixPlan> attempt(double otherTurns, int radiusSteps, int marginSteps) {
    try {
      HelixPlan plan = HelixPlan.trial(changed(otherTurns, radiusSteps, marginSteps), style);
      return plan.works() ? Optional.of(plan) : Optional.empty();
    } catch (IllegalArgumentException cannotBePlanned) {
      return Optional.empty();
    }
  }

  private HelixSpec changed(double otherTurns, int radiusSteps, int marginSteps) {
    GroundPlan old = spec.ground();
    Length apart = old.trackSpacing().orElse(Length.ZERO);
    GroundPlan ground =
        new GroundPlan(
            grown(old.bedRadius(), radiusStep, radiusSteps).minus(apart.times(0.5)),
            old.trackSpacing(),
            marginSteps == 0
                ? old.sideMargin()
                : grown(old.width(), marginStep.times(2), marginSteps).minus(apart).times(0.5),
            old.straight(),
            old.direction(),
            old.entry());
    Ascent stated = spec.ascent();
    Ascent ascent = Ascent.ofTurnsAndClimb(otherTurns, climb);
    ascent = stated.steepest().map(ascent::atMost).orElse(ascent);
    ascent = stated.exit().map(ascent::leavingAt).orElse(ascent);
    return spec.with(ground, ascent, supports(ground));
  }

  /** On the builder's own grid of sizes: the next multiple of the step, and so many further. */
  private static Length grown(Length length, Length step, int steps) {
    if (steps == 0) {
      return length;
    }
    double whole = Math.floor(length.millimetres() / step.millimetres() + 1e-9);
    return step.times(whole + steps);
  }

  /** As close together as before, in multiples of the pieces of a turn where they were. */
  private SupportPlan supports(GroundPlan ground) {
    SupportPlan old = spec.supports();
    double longer =
        ground.runPerTurn(ground.bedRadius()).millimetres()
            / spec.ground().runPerTurn(spec.ground().bedRadius()).millimetres();
    int pieces = (int) Math.rint(360 / spec.segmentation().segment().degrees());
    int step = pieces > 0 && old.perTurn() % pieces == 0 ? pieces : 1;
    int wanted = (int) Math.ceil(old.perTurn() * longer / step - 0.05) * step;
    return old.with(Math.max(old.perTurn(), wanted));
  }
}
