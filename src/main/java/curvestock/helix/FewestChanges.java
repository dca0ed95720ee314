package curvestock.helix;

import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Setting;
import curvestock.helix.verdict.Change;
import curvestock.helix.verdict.Remedy;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Angle;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.Quantity;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * The fewest changes, and of those the smallest, with which no rule of a helix fails: one figure,
 * else two together, each set planned whole and judged by all rules.
 *
 * <p>Tried are what the failing rules ask for, and what a builder would turn at for such a rule:
 * rise or turns, radius, width, the joint, the number of supports and where the first one stands.
 */
final class FewestChanges {

  /** After so many first changes, the best first, a second is tried. */
  private static final int MOST_FIRST = 16;

  /** Ever wider steps; the smallest that works is then halved out between two of them. */
  private static final List<Integer> STEPS = List.of(1, 2, 3, 4, 6, 8, 11, 15, 20, 27, 36, 48, 64);

  /** Another joint is no small matter. */
  private static final double SIZE_OF_JOINT = 0.3;

  private static final double SIZE_OF_PLACE = 0.05;
  private static final int PLACES = 8;

  private static final Set<Rule> OF_SUPPORTS =
      Set.of(
          Rule.SUPPORT_SPACING,
          Rule.ROD_HOLES,
          Rule.EARS,
          Rule.APPROACH_SUPPORTS,
          Rule.LEAD_SUPPORTS);

  private final HelixPlan start;

  FewestChanges(HelixPlan plan) {
    this.start = plan;
  }

  /** What makes the helix work; empty if it does already, or no two changes will do. */
  Optional<Remedy> remedy() {
    if (start.works()) {
      return Optional.empty();
    }
    Trial now = new Trial(List.of(), start);
    List<Trial> first = trials(now);
    Optional<Trial> single = smallest(first);
    if (single.isPresent()) {
      return single.map(trial -> new Remedy(trial.changes()));
    }
    List<Trial> both =
        first.stream()
            .filter(trial -> trial.isProgressFrom(now))
            .sorted(Comparator.comparing(Trial::failing).thenComparing(Trial::size))
            .limit(MOST_FIRST)
            .flatMap(trial -> trials(trial).stream())
            .toList();
    return smallest(both).map(trial -> new Remedy(trial.changes()));
  }

  private static Optional<Trial> smallest(List<Trial> trials) {
    return trials.stream()
        .filter(Trial::works)
        .min(
            Comparator.comparing((Trial trial) -> trial.changes().size())
                .thenComparing(Trial::size));
  }

  /** A helix with some changes. */
  private record Trial(List<Change> changes, HelixPlan plan) {

    boolean works() {
      return plan.works();
    }

    int failing() {
      return fails().size();
    }

    private Set<List<Object>> fails() {
      Set<List<Object>> fails = new HashSet<>();
      for (Verdict verdict : plan.verdicts()) {
        if (verdict.state() == State.FAIL) {
          fails.add(List.of(verdict.rule(), verdict.place()));
        }
      }
      return fails;
    }

    /** No more fails than before, and other ones. */
    boolean isProgressFrom(Trial before) {
      Set<List<Object>> mine = fails();
      Set<List<Object>> others = before.fails();
      return mine.size() < others.size() || (mine.size() == others.size() && !mine.equals(others));
    }

    double size() {
      return FewestChanges.size(changes);
    }
  }

  /** How much a builder minds the changes: their shares of what is there. */
  static double size(List<Change> changes) {
    return changes.stream().mapToDouble(FewestChanges::size).sum();
  }

  private static double size(Change change) {
    return switch (change.setting()) {
      case JOINT -> SIZE_OF_JOINT;
      case FIRST_SUPPORT -> SIZE_OF_PLACE;
      default -> {
        double before = Advice.size(change.now());
        double after = Advice.size(change.then());
        yield Math.abs(after - before) / Math.max(before, after);
      }
    };
  }

  /** Values of one setting, nearest first; each step is one of the numbers. */
  record Ladder(IntFunction<Change> value, List<Integer> steps) {}

  private List<Trial> trials(Trial from) {
    List<Trial> trials = new ArrayList<>();
    Set<Rule> failing = new HashSet<>();
    for (Verdict verdict : from.plan().verdicts()) {
      if (verdict.state() == State.FAIL) {
        failing.add(verdict.rule());
        verdict.remedy().flatMap(remedy -> trial(from, remedy.changes())).ifPresent(trials::add);
      }
    }
    ladders(from.plan(), failing).forEach(ladder -> climb(from, ladder, trials));
    return trials;
  }

  /** Up the steps to the first that works; then back to the smallest between it and the last. */
  private void climb(Trial from, Ladder ladder, List<Trial> trials) {
    IntFunction<Optional<Trial>> attempt =
        steps -> trial(from, List.of(ladder.value().apply(steps)));
    int last = 0;
    for (int step : ladder.steps()) {
      Optional<Trial> trial = attempt.apply(step);
      trial.ifPresent(trials::add);
      if (trial.filter(Trial::works).isPresent()) {
        trials.add(
            new FewestSteps<>(step, trial.get())
                .above(last, steps -> attempt.apply(steps).filter(Trial::works))
                .found());
        return;
      }
      last = step;
    }
  }

  private Optional<Trial> trial(Trial from, List<Change> more) {
    List<Change> changes = new ArrayList<>(from.changes());
    for (Change change : more) {
      Change whole = change;
      for (Change before : from.changes()) {
        if (before.setting() == change.setting()) {
          whole = new Change(change.setting(), before.now(), change.then());
          changes.remove(before);
        }
      }
      changes.add(whole);
    }
    boolean two = changes.size() <= Math.max(2, more.size());
    if (!two || changes.stream().anyMatch(Advice::isAbsurd)) {
      return Optional.empty();
    }
    try {
      HelixPlan plan = HelixPlan.trial(Revision.of(start.spec(), changes), start.style());
      return Optional.of(new Trial(List.copyOf(changes), plan));
    } catch (IllegalArgumentException cannotBePlanned) {
      return Optional.empty();
    }
  }

  private List<Ladder> ladders(HelixPlan plan, Set<Rule> failing) {
    List<Ladder> ladders = new ArrayList<>();
    boolean supports = failing.stream().anyMatch(OF_SUPPORTS::contains);
    boolean others = !OF_SUPPORTS.containsAll(failing);
    if (failing.contains(Rule.FREE_HEIGHT)) {
      height(plan, ladders);
    }
    if (failing.contains(Rule.GRADE)) {
      slope(plan, ladders, -1);
    }
    if (supports) {
      supports(plan, ladders);
    }
    if (others && !failing.equals(Set.of(Rule.FREE_HEIGHT))) {
      Length step = step(plan, 0.25, 5);
      ladders.add(lengths(Setting.RADIUS, plan.spec().ground().bedRadius(), step));
      ladders.add(lengths(Setting.WIDTH, plan.spec().ground().width(), step));
    }
    return ladders;
  }

  private static void height(HelixPlan plan, List<Ladder> ladders) {
    slope(plan, ladders, 1);
    if (plan.spec().construction().hangsBelow().millimetres() > 0) {
      Change halfLap = new Change(Setting.JOINT, new Text("plate"), new Text("half-lap"));
      ladders.add(new Ladder(step -> halfLap, List.of(1)));
    }
  }

  /**
   * A steeper slope (1) or a gentler one (-1), by what the job states of the climb: the rise, or
   * the turns where the climb is to stay.
   */
  private static void slope(HelixPlan plan, List<Ladder> ladders, int way) {
    Ascent ascent = plan.spec().ascent();
    if (ascent.risePerTurn().isPresent()) {
      Length step = step(plan, 0.0625, 1).times(way);
      ladders.add(lengths(Setting.RISE_PER_TURN, plan.climb().risePerTurn(), step));
    } else if (ascent.turns().isPresent()) {
      Quantity now = Angle.ofDegrees(plan.climb().turns() * 360);
      boolean free = !plan.spec().ground().isOval() && ascent.exit().isEmpty();
      double step = free ? 0.25 : plan.spec().ground().isOval() ? 0.5 : 1;
      IntFunction<Change> value =
          steps -> {
            double then = plan.climb().turns() - way * steps * step;
            return new Change(Setting.TURNS, now, Angle.ofDegrees(Math.max(0, then) * 360));
          };
      ladders.add(new Ladder(value, STEPS));
    }
  }

  private static void supports(HelixPlan plan, List<Ladder> ladders) {
    int now = plan.spec().supports().perTurn();
    ladders.add(
        new Ladder(
            more -> new Change(Setting.SUPPORTS_PER_TURN, new Count(now), new Count(now + more)),
            IntStream.rangeClosed(1, now).boxed().toList()));
    double first = plan.stations().ring().get(0).places().get(0);
    double spacing = plan.stations().spacing().millimetres();
    Length here = Length.ofMillimetres(first);
    IntFunction<Change> place =
        step -> {
          double then = (first + spacing * step / PLACES) % spacing;
          return new Change(
              Setting.FIRST_SUPPORT, here, plan.style().roundDown(Length.ofMillimetres(then)));
        };
    ladders.add(new Ladder(place, IntStream.range(1, PLACES).boxed().toList()));
  }

  /** On the builder's own grid of sizes, upwards or, with a negative step, downwards. */
  static Ladder lengths(Setting setting, Length now, Length step) {
    double grid = Math.abs(step.millimetres());
    double way = Math.signum(step.millimetres());
    double whole = now.millimetres() / grid;
    double base = way > 0 ? Math.floor(whole + 1e-9) : Math.ceil(whole - 1e-9);
    IntFunction<Change> value =
        steps -> {
          double then = Math.max(0, (base + way * steps) * grid);
          return new Change(setting, now, Length.ofMillimetres(then));
        };
    return new Ladder(value, STEPS);
  }

  static Length step(HelixPlan plan, double inches, double millimetres) {
    return plan.style().unit().isImperial()
        ? Length.ofInches(inches)
        : Length.ofMillimetres(millimetres);
  }
}
