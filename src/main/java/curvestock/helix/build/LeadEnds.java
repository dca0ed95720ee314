package curvestock.helix.build;

import curvestock.helix.course.Climb;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.Riser.Ear;
import curvestock.units.Length;

/** Where supports may stand on the straights before and behind the ring, along the line. */
public final class LeadEnds {

  /** Wood beside an ear. */
  private static final double BESIDE_EAR = 5;

  /** What keeps rounding from judging a hole as too near the end. */
  private static final double TO_SPARE = 0.2;

  /**
   * From a support beside a lead to the lead's wood, and from a support of a lead to the turns that
   * it passes and to other supports, 1/4 in: our choice. A block set 1/8 in off and a roadbed cut
   * 1/16 in too wide still miss each other.
   */
  public static final double CLEAR = 6.35;

  private final HelixSpec spec;
  private final Climb climb;

  LeadEnds(HelixSpec spec, Climb climb) {
    this.spec = spec;
    this.climb = climb;
  }

  boolean hasEntry() {
    return spec.bottom().leadIn().millimetres() > 0;
  }

  boolean hasExit() {
    return spec.top().leadIn().millimetres() > 0;
  }

  /** Where the wood before the ring begins. */
  double entryWood() {
    return -spec.bottom().leadIn().millimetres();
  }

  /** Where the wood behind the ring ends. */
  double exitWood() {
    return climb.ringLength() + spec.top().leadIn().millimetres();
  }

  /** The outermost place for a support before the ring. */
  double entryEnd() {
    return -Math.max(0, spec.bottom().leadIn().millimetres() - inset());
  }

  /** The outermost place for a support behind the ring. */
  double exitEnd() {
    return climb.ringLength() + Math.max(0, spec.top().leadIn().millimetres() - inset());
  }

  /** On an oval the ring's stations hold what of the lead lies right under its straight. */
  double ringStationsFrom() {
    return spec.ground().isOval()
        ? Math.max(entryEnd(), -spec.ground().straight().millimetres())
        : 0;
  }

  /** How far a support keeps from the end of the wood. */
  private double inset() {
    Riser riser = spec.supports().riser();
    if (riser instanceof Riser.WoodBlocks blocks) {
      return blocks.along().millimetres() / 2;
    }
    Riser.ThreadedRods rods = (Riser.ThreadedRods) riser;
    HoleRule rule = new HoleRule(spec, climb);
    double hole =
        rule.diameter(rods).times(0.5).plus(HoleRule.WOOD_AT_END).millimetres() + TO_SPARE;
    double ear = rods.ear().map(Ear::width).map(Length::millimetres).orElse(0.0) / 2 + BESIDE_EAR;
    return Math.max(hole, ear);
  }

  /**
   * From where on a support under both edges of the exit's lead stands beside the turn below: the
   * inner one leaves it at √(Ro² − Ri²) along the tangent, and stands {@link #CLEAR} of it.
   */
  double exitClear() {
    GroundPlan ground = spec.ground();
    double outer = ground.outerEdge().plus(spec.beyondEdges()).millimetres() + CLEAR;
    double inner = ground.innerEdge().millimetres() + innerFace();
    double covered = Math.acos(Math.min(1, inner / outer)) / (2 * Math.PI);
    if (climb.turns() < 1 - covered) {
      return climb.ringLength();
    }
    double along = Math.sqrt(Math.max(0, outer * outer - inner * inner));
    return climb.ringLength() + along + halfAlong();
  }

  /** The least lead at the top whose outermost support stands beside the turn below. */
  Length exitToSupport() {
    return Length.ofMillimetres(exitClear() - climb.ringLength() + inset());
  }

  /** Of the inner support: how far from the roadbed's edge its inner face is. */
  private double innerFace() {
    return spec.supports().riser().outerFaceFromEdge().millimetres();
  }

  private double halfAlong() {
    return spec.supports().riser().along().millimetres() / 2;
  }
}
