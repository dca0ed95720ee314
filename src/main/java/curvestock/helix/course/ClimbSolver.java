package curvestock.helix.course;

import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Works out the third of turns, climb and rise per turn from the two that are stated.
 *
 * <p>With N turns of run L, rise per turn P, vertical curves of length V that reach l outside the
 * ring, and approach grades a: climb = P/L·(N·L + Σl − ΣV/2) + Σa·V/2. Where each curve lies half
 * outside the ring and the approaches are level this is the textbook's climb = N·P.
 */
public final class ClimbSolver {

  /** What people round away when they type three figures of which two would do. */
  private static final double AGREEMENT_MM = 0.5;

  private static final double WHOLE = 1e-6;
  private static final double MOST_TURNS = 100;

  private final LengthStyle style;
  private final GroundPlan ground;
  private final Ascent ascent;
  private final double run;
  private final double extraRun;
  private final double fixedRise;
  private final double curves;
  private final double leads;

  /**
   * @param style of the lengths in messages
   */
  public ClimbSolver(HelixSpec spec, LengthStyle style) {
    this.style = style;
    ground = spec.ground();
    ascent = spec.ascent();
    run = ground.runPerTurn(ground.bedRadius()).millimetres();
    EndPlan bottom = spec.bottom();
    EndPlan top = spec.top();
    curves = bottom.verticalCurve().plus(top.verticalCurve()).millimetres();
    leads = bottom.climbLead().plus(top.climbLead()).millimetres();
    extraRun = leads - curves / 2;
    fixedRise = approachRise(bottom) + approachRise(top);
  }

  private static double approachRise(EndPlan end) {
    return end.approachGrade().ratio() * end.verticalCurve().millimetres() / 2;
  }

  /**
   * The climb, worked out.
   *
   * @throws IllegalArgumentException if the figures stated contradict each other, leave no helix,
   *     or do not end where the track is to leave; the message says which figures would
   */
  public Climb solve() {
    Climb climb = ascent.turns().isPresent() ? withTurns(ascent.turns().getAsDouble()) : noTurns();
    requireOval(climb.turns());
    requireExit(climb.turns());
    requireCurvesFit(climb.ringLength());
    return climb;
  }

  private void requireCurvesFit(double ring) {
    if (ring + leads < curves) {
      throw new IllegalArgumentException(
          "vertical curves must fit the ring and their leads ("
              + shown(ring + leads)
              + "), but were "
              + shown(curves)
              + " together: shorten them, let them begin further outside, or add turns");
    }
  }

  private Climb withTurns(double turns) {
    requireCurvesFit(turns * run);
    if (ascent.climb().isPresent() && ascent.risePerTurn().isPresent()) {
      requireAgreement(turns, ascent.climb().get(), ascent.risePerTurn().get());
    }
    if (ascent.climb().isPresent()) {
      return climb(turns, riseFor(turns, ascent.climb().get().millimetres()));
    }
    return climb(turns, ascent.risePerTurn().map(Length::millimetres).orElseGet(this::steepRise));
  }

  private Climb noTurns() {
    double climb = ascent.climb().orElseThrow().millimetres();
    if (ascent.risePerTurn().isPresent()) {
      double rise = ascent.risePerTurn().get().millimetres();
      return climb(requireTurns(turnsFor(climb, rise)), rise);
    }
    double fewest = requireTurns(turnsFor(climb, steepRise()));
    double turns = nextTurns(fewest);
    return climb(turns, riseFor(turns, climb));
  }

  private double requireTurns(double turns) {
    if (!(turns > 0 && turns <= MOST_TURNS)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "the climb and grade or rise per turn stated need %.2f turns, but turns must be above"
                  + " 0 and at most 100: check climb, rise and vertical curves",
              turns));
    }
    return turns;
  }

  private Climb climb(double turns, double rise) {
    if (!(rise > 0)) {
      throw new IllegalArgumentException(
          "the climb must be more than the approaches' own rise on the vertical curves ("
              + shown(fixedRise)
              + "), but was "
              + style.format(ascent.climb().orElse(Length.ZERO)));
    }
    double total = rise / run * (turns * run + extraRun) + fixedRise;
    return new Climb(
        turns, Length.ofMillimetres(total), Length.ofMillimetres(rise), Length.ofMillimetres(run));
  }

  private double riseFor(double turns, double climb) {
    return (climb - fixedRise) / (turns + extraRun / run);
  }

  private double turnsFor(double climb, double rise) {
    return (climb - fixedRise) / rise - extraRun / run;
  }

  /** Rise per turn at the steepest grade, which the inner track meets first. */
  private double steepRise() {
    return ascent.steepest().orElseThrow().ratio()
        * ground.runPerTurn(ground.innerTrack()).millimetres();
  }

  private String shown(double millimetres) {
    return style.format(Length.ofMillimetres(millimetres));
  }

  private void requireAgreement(double turns, Length climb, Length rise) {
    double made = climb(turns, rise.millimetres()).climb().millimetres();
    if (Math.abs(made - climb.millimetres()) > AGREEMENT_MM) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "turns, climb and rise per turn contradict each other: %.4g turns of %s climb %s,"
                  + " not %s; leave out one of them: %s a turn, or %.4g turns, would fit",
              turns,
              style.formatGiven(rise),
              shown(made),
              style.formatGiven(climb),
              shown(riseFor(turns, climb.millimetres())),
              turnsFor(climb.millimetres(), rise.millimetres())));
    }
  }

  /** The share of a turn by which the exit lies ahead of the entry; empty if the exit is free. */
  private OptionalDouble exitShare() {
    if (ascent.exit().isEmpty()) {
      return OptionalDouble.empty();
    }
    double ahead = ascent.exit().get().degrees() - ground.entry().degrees();
    double share = ground.direction().sign() * ahead / 360;
    return OptionalDouble.of(share - Math.floor(share));
  }

  /** The fewest turns, not fewer than these, that end at the exit, or in half turns on an oval. */
  private double nextTurns(double fewest) {
    if (exitShare().isPresent()) {
      double share = exitShare().getAsDouble();
      double turns = Math.ceil(fewest - share - WHOLE) + share;
      return turns > WHOLE ? turns : turns + 1;
    }
    return ground.isOval() ? Math.ceil(fewest * 2 - WHOLE) / 2 : fewest;
  }

  private void requireExit(double turns) {
    if (exitShare().isEmpty()) {
      return;
    }
    double off = turns - exitShare().getAsDouble();
    if (Math.abs(off - Math.rint(off)) * 360 > 0.01) {
      double below = Math.floor(off) + exitShare().getAsDouble();
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "turns must end at the exit (%s, entry %s), but were %.4g; %s%.4g turns would, or leave out"
                  + " the exit",
              ascent.exit().orElseThrow(),
              ground.entry(),
              turns,
              below > 0 ? String.format(Locale.ROOT, "%.4g or ", below) : "",
              below + 1));
    }
  }

  private void requireOval(double turns) {
    if (ground.isOval() && Math.abs(turns * 2 - Math.rint(turns * 2)) > WHOLE) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "turns of an oval must be whole or half turns, but were %.4g; %.1f or %.1f would do",
              turns,
              Math.floor(turns * 2) / 2,
              Math.ceil(turns * 2) / 2));
    }
  }
}
