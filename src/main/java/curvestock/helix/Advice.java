package curvestock.helix;

import curvestock.helix.spec.Setting;
import curvestock.helix.verdict.Change;
import curvestock.helix.verdict.Remedy;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Angle;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.Quantity;
import curvestock.units.Share;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The remedies of a plan's verdicts, each tried out before it is told: applied to the
 * specification, all rules judged again, together with what else that makes necessary, and kept
 * only if the rule is met then and no other comes out worse. Rules that ask for another value of
 * the same setting get the one value that meets them all.
 */
final class Advice {

  /** Nobody wants to hear of a radius three times as large. */
  private static final double ABSURD = 2;

  private static final int MOST_ROUNDS = 3;

  private final HelixPlan plan;

  Advice(HelixPlan plan) {
    this.plan = plan;
  }

  /** The plan's verdicts with remedies that hold. */
  List<Verdict> verdicts() {
    List<Verdict> tried = new ArrayList<>();
    for (Verdict verdict : plan.verdicts()) {
      tried.add(verdict.remedy().isPresent() ? verdict.fixedBy(remedy(verdict)) : verdict);
    }
    return List.copyOf(new Opposed(plan, this).agreed(agreed(tried)));
  }

  /**
   * Where a failing rule has no remedy of its own that holds, or two ask for different values of
   * one setting, they get the fewest changes that meet every rule.
   */
  private List<Verdict> agreed(List<Verdict> tried) {
    List<Verdict> fails = tried.stream().filter(each -> each.state() == State.FAIL).toList();
    boolean unfixed = fails.stream().anyMatch(each -> each.remedy().isEmpty());
    if (!unfixed && !contradict(fails)) {
      return tried;
    }
    Optional<Remedy> whole = new FewestChanges(plan).remedy();
    if (whole.isEmpty()) {
      return tried;
    }
    List<Verdict> told = tried.stream().map(each -> orElse(each, whole)).toList();
    boolean differ = contradict(told.stream().filter(each -> each.state() == State.FAIL).toList());
    return differ
        ? tried.stream()
            .map(each -> each.state() == State.FAIL ? each.fixedBy(whole) : each)
            .toList()
        : told;
  }

  private static Verdict orElse(Verdict verdict, Optional<Remedy> whole) {
    boolean unfixed = verdict.state() == State.FAIL && verdict.remedy().isEmpty();
    return unfixed ? verdict.fixedBy(whole) : verdict;
  }

  /** Whether one setting is to have two values. */
  private static boolean contradict(List<Verdict> verdicts) {
    Map<Setting, Change> told = new EnumMap<>(Setting.class);
    for (Verdict verdict : verdicts) {
      for (Change change : verdict.remedy().map(Remedy::changes).orElse(List.of())) {
        Change other = told.putIfAbsent(change.setting(), change);
        if (other != null && !other.then().equals(change.then())) {
          return true;
        }
      }
    }
    return false;
  }

  private Optional<Remedy> remedy(Verdict verdict) {
    List<Change> own = verdict.remedy().orElseThrow().changes();
    List<Change> common = own.stream().map(change -> farthest(change, verdict.state())).toList();
    Optional<Remedy> found = holding(List.of(verdict), common);
    // Another value for the same figure would contradict the others' advice.
    boolean alone = verdict.state() == State.FAIL && !common.equals(own);
    return found.isEmpty() && alone ? holding(List.of(verdict), own) : found;
  }

  /**
   * The changes, with what else they make necessary; empty if they do not meet all of the verdicts,
   * which came out alike.
   */
  Optional<Remedy> holding(List<Verdict> verdicts, List<Change> asked) {
    State state = verdicts.get(0).state();
    List<Change> changes = asked;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      if (changes.stream().anyMatch(Advice::isAbsurd)) {
        return Optional.empty();
      }
      try {
        HelixPlan revised = HelixPlan.trial(Revision.of(plan.spec(), changes), plan.style());
        List<Verdict> worse =
            revised.verdicts().stream().filter(after -> isWorse(after, state)).toList();
        if (worse.isEmpty()) {
          HelixPlan whole = revised.whole();
          boolean met = verdicts.stream().allMatch(verdict -> isMet(verdict, whole));
          return met ? Optional.of(new Remedy(changes)) : Optional.empty();
        }
        List<Change> more = new ArrayList<>(changes);
        for (Verdict each : worse) {
          each.remedy().map(Remedy::changes).orElse(List.of()).forEach(change -> add(more, change));
        }
        if (more.equals(changes)) {
          return Optional.empty();
        }
        changes = List.copyOf(more);
      } catch (IllegalArgumentException cannotBePlanned) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** One more change, from where the plan stands; a setting that is changed already stays so. */
  private void add(List<Change> changes, Change more) {
    if (changes.stream().noneMatch(change -> change.setting() == more.setting())) {
      changes.add(more);
    }
  }

  /** The value farthest from now that any verdict as bad asks of this setting. */
  private Change farthest(Change change, State worst) {
    Change best = change;
    for (Verdict verdict : plan.verdicts()) {
      List<Change> changes = verdict.remedy().map(Remedy::changes).orElse(List.of());
      for (Change other : changes) {
        boolean same = other.setting() == change.setting() && verdict.state().compareTo(worst) >= 0;
        boolean sameWay = way(other) == way(change);
        if (same && sameWay && Math.abs(step(other)) > Math.abs(step(best))) {
          best = other;
        }
      }
    }
    return best;
  }

  static boolean isMet(Verdict verdict, HelixPlan revised) {
    return revised.verdicts().stream()
        .filter(other -> isSame(verdict, other))
        .allMatch(other -> other.state().compareTo(verdict.state()) < 0);
  }

  /** Whether a rule of the revised plan comes out worse than now, and as bad as what is fixed. */
  private boolean isWorse(Verdict after, State fixed) {
    return after.state().compareTo(fixed) >= 0
        && plan.verdicts().stream()
            .noneMatch(
                before -> isSame(before, after) && before.state().compareTo(after.state()) >= 0);
  }

  private static boolean isSame(Verdict a, Verdict b) {
    return a.rule() == b.rule() && a.place().equals(b.place());
  }

  static boolean isAbsurd(Change change) {
    double now = size(change.now());
    double then = size(change.then());
    boolean whole =
        change.setting() == Setting.RADIUS
            || change.setting() == Setting.TURNS
            || change.setting() == Setting.WIDTH
            || change.setting() == Setting.RISE_PER_TURN;
    return then <= 0 || (whole && (then > ABSURD * now || now > ABSURD * then));
  }

  private static double step(Change change) {
    return size(change.then()) - size(change.now());
  }

  static double way(Change change) {
    return Math.signum(step(change));
  }

  static double size(Quantity quantity) {
    if (quantity instanceof Length length) {
      return length.millimetres();
    }
    if (quantity instanceof Angle angle) {
      return angle.degrees();
    }
    if (quantity instanceof Count count) {
      return count.number();
    }
    return quantity instanceof Share share ? share.part() : 1;
  }

  /** All changes that failing rules ask for, one a setting: the farthest. */
  static List<Change> together(HelixPlan plan) {
    Map<Setting, Change> farthest = new EnumMap<>(Setting.class);
    for (Verdict verdict : plan.verdicts()) {
      if (verdict.state() == State.FAIL) {
        for (Change change : verdict.remedy().map(Remedy::changes).orElse(List.of())) {
          farthest.merge(
              change.setting(), change, (a, b) -> Math.abs(step(a)) >= Math.abs(step(b)) ? a : b);
        }
      }
    }
    return List.copyOf(farthest.values());
  }
}
