package curvestock.helix;

import curvestock.helix.spec.Setting;
import curvestock.helix.verdict.Change;
import curvestock.helix.verdict.Remedy;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.Predicate;

/**
 * Checks that pull one figure opposite ways, as clearance asks for more rise and grade for less:
 * they get one answer, the figure as one of them asks and a radius with which the others are met
 * too. Where no radius does that, the value that most of them ask for stands, and the others have
 * no remedy: whoever follows the advice must not be sent back by the next line.
 */
final class Opposed {

  private final HelixPlan plan;
  private final Advice advice;

  Opposed(HelixPlan plan, Advice advice) {
    this.plan = plan;
    this.advice = advice;
  }

  /** The same verdicts, of which no marginal one pulls a figure the other way than any other. */
  List<Verdict> agreed(List<Verdict> verdicts) {
    List<Verdict> told = verdicts;
    for (Setting setting : EnumSet.complementOf(EnumSet.of(Setting.RADIUS))) {
      told = agreed(setting, told);
    }
    return told;
  }

  private List<Verdict> agreed(Setting setting, List<Verdict> verdicts) {
    Map<Change, List<Verdict>> asked = new LinkedHashMap<>();
    for (Verdict verdict : verdicts) {
      change(setting, verdict)
          .ifPresent(change -> asked.computeIfAbsent(change, c -> new ArrayList<>()).add(verdict));
    }
    if (asked.keySet().stream().map(Advice::way).filter(way -> way != 0).distinct().count() < 2) {
      return verdicts;
    }
    Predicate<Verdict> marginal = verdict -> verdict.state() == State.MARGINAL;
    List<Verdict> open = asked.values().stream().flatMap(List::stream).filter(marginal).toList();
    if (open.isEmpty()) {
      return verdicts;
    }
    // What a failing check asks for is settled; between marginal ones either will do.
    List<Change> failing =
        asked.keySet().stream()
            .filter(change -> !asked.get(change).stream().allMatch(marginal))
            .toList();
    List<Change> bases = failing.isEmpty() ? List.copyOf(asked.keySet()) : failing;
    Optional<Remedy> both =
        bases.stream()
            .flatMap(base -> withRadius(base, open).stream())
            .min(Comparator.comparing(remedy -> FewestChanges.size(remedy.changes())));
    Change kept =
        bases.stream().max(Comparator.comparing(base -> asked.get(base).size())).orElseThrow();
    return verdicts.stream()
        .map(verdict -> open.contains(verdict) ? told(verdict, both, asked.get(kept)) : verdict)
        .toList();
  }

  private static Verdict told(Verdict verdict, Optional<Remedy> both, List<Verdict> kept) {
    return both.isPresent() || !kept.contains(verdict) ? verdict.fixedBy(both) : verdict;
  }

  private static Optional<Change> change(Setting setting, Verdict verdict) {
    return verdict.remedy().stream()
        .flatMap(remedy -> remedy.changes().stream())
        .filter(change -> change.setting() == setting)
        .findFirst();
  }

  /** The change, and the least radius with which all of the verdicts are met. */
  private Optional<Remedy> withRadius(Change base, List<Verdict> open) {
    Length now = plan.spec().ground().bedRadius();
    Length step = FewestChanges.step(plan, 0.25, 5);
    IntFunction<Change> radius = FewestChanges.lengths(Setting.RADIUS, now, step).value();
    int twice = (int) Math.ceil(now.millimetres() / step.millimetres());
    return FewestSteps.of(
            steps ->
                Optional.of(List.of(base, radius.apply(steps)))
                    .filter(changes -> meets(changes, open)),
            twice)
        .flatMap(fewest -> advice.holding(open, fewest.found()));
  }

  private boolean meets(List<Change> changes, List<Verdict> open) {
    try {
      HelixPlan revised = HelixPlan.judged(Revision.of(plan.spec(), changes), plan.style());
      return open.stream().allMatch(verdict -> Advice.isMet(verdict, revised));
    } catch (IllegalArgumentException cannotBePlanned) {
      return false;
    }
  }
}
