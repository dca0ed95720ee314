package curvestock.helix.verdict;

import curvestock.helix.course.Climb;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Setting;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Share;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * How the rise per turn is changed in a job, which depends on the two figures of the climb that it
 * states: the rise itself, the turns where the climb is given, or the radius where a steepest grade
 * stands for the rise.
 */
final class Rises {

  private final HelixSpec spec;
  private final Climb climb;
  private final LengthStyle style;

  Rises(HelixSpec spec, Climb climb, LengthStyle style) {
    this.spec = spec;
    this.climb = climb;
    this.style = style;
  }

  /** So that every turn climbs at least so much. */
  List<Change> atLeast(Length rise) {
    Ascent ascent = spec.ascent();
    if (ascent.risePerTurn().isPresent()) {
      return List.of(rise(style.roundUp(rise)));
    }
    if (ascent.turns().isPresent() && ascent.climb().isPresent()) {
      double most = climbed() / rise.millimetres();
      return turns(hundredths(Feasible.turnsAtMost(spec, climb, most), Math::floor));
    }
    Grade grade = ascent.steepest().orElseThrow();
    return List.of(radius(Feasible.smallestRadius(spec, rise, grade)));
  }

  /** So that no turn climbs more. */
  List<Change> atMost(Length rise) {
    Ascent ascent = spec.ascent();
    if (ascent.risePerTurn().isPresent()) {
      return List.of(rise(style.roundDown(rise)));
    }
    double fewest = climbed() / rise.millimetres();
    return turns(hundredths(Feasible.turnsAtLeast(spec, climb, fewest), Math::ceil));
  }

  /** So that the inner track has at least this radius. */
  Change radius(Length innerTrack) {
    Length now = spec.ground().bedRadius();
    Length then = innerTrack.plus(now.minus(spec.ground().innerTrack()));
    return new Change(Setting.RADIUS, now, onGrid(then));
  }

  /** The next quarter inch or 5 mm, as a builder would choose it. */
  private Length onGrid(Length length) {
    Length step = style.unit().isImperial() ? Length.ofInches(0.25) : Length.ofMillimetres(5);
    return step.times(Math.ceil(length.millimetres() / step.millimetres() - 1e-9));
  }

  /** Whether grade or height follow from the number of turns that the job states. */
  boolean followFromTurns() {
    return spec.ascent().risePerTurn().isEmpty();
  }

  private double climbed() {
    return climb.turns() * climb.risePerTurn().millimetres();
  }

  private Change rise(Length then) {
    return new Change(Setting.RISE_PER_TURN, climb.risePerTurn(), then);
  }

  private List<Change> turns(double then) {
    return then > 0
        ? List.of(new Change(Setting.TURNS, Verdict.turns(climb.turns()), Verdict.turns(then)))
        : List.of();
  }

  /**
   * As printed, so that whoever takes that figure has the rise; bound turns are whole or halves.
   */
  private double hundredths(double turns, DoubleUnaryOperator rounding) {
    boolean free = !spec.ground().isOval() && spec.ascent().exit().isEmpty();
    return free ? rounding.applyAsDouble(turns * 100) / 100 : turns;
  }

  static Share share(Grade grade) {
    return new Share(grade.ratio());
  }
}
