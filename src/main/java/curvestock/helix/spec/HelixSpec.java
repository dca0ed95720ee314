package curvestock.helix.spec;

import curvestock.helix.standard.CurveWidening;
import curvestock.helix.standard.Scale;
import curvestock.helix.standard.Sourced;
import curvestock.units.Length;

/**
 * Everything that the builder states about a helix.
 *
 * @param scale of the trains
 * @param ground where tracks and roadbed run, seen from above
 * @param ascent what is known of the climb
 * @param bottom how the track enters, at the lower end
 * @param top how the track leaves, at the upper end
 * @param stack what lies between the plywood's underside and the rail tops
 * @param construction how pieces are joined
 * @param segmentation into which pieces the ring is cut
 * @param supports what holds the turns up
 * @param traffic what has to pass
 * @param prices of small parts
 * @param woodDensity of the plywood, in kg/m³
 */
public record HelixSpec(
    Scale scale,
    GroundPlan ground,
    Ascent ascent,
    EndPlan bottom,
    EndPlan top,
    RoadbedStack stack,
    Construction construction,
    Segmentation segmentation,
    SupportPlan supports,
    Traffic traffic,
    HardwarePrices prices,
    double woodDensity) {

  /**
   * Checks what no part can check alone.
   *
   * @throws IllegalArgumentException if the density is not above zero, the segments do not fit an
   *     oval's half turn, or an oval has easements
   */
  public HelixSpec {
    if (!(woodDensity > 0 && Double.isFinite(woodDensity))) {
      throw new IllegalArgumentException(
          "density must be above zero, but was " + woodDensity + " kg/m³");
    }
    if (ground.isOval()) {
      requireWholeHalfTurns(segmentation);
      if (bottom.easement().plus(top.easement()).millimetres() > 0) {
        throw new IllegalArgumentException(
            "easements are planned for circles only: an oval's own straights would need them too");
      }
    }
  }

  private static void requireWholeHalfTurns(Segmentation segmentation) {
    double pieces = 180 / segmentation.segment().degrees();
    if (segmentation.lower().isPresent()) {
      throw new IllegalArgumentException("on an oval all segments must be of one angle");
    }
    if (Math.abs(pieces - Math.rint(pieces)) > 1e-6 || segmentation.starter().isPresent()) {
      throw new IllegalArgumentException(
          "on an oval the segment angle must divide 180° and there can be no starter, but was "
              + segmentation.segment()
              + segmentation.starter().map(angle -> " with a starter of " + angle).orElse(""));
    }
  }

  /** The same on other supports. */
  public HelixSpec with(SupportPlan other) {
    return with(ground, ascent, other);
  }

  /** The same on another ground plan, with another ascent, on other supports. */
  public HelixSpec with(GroundPlan otherGround, Ascent otherAscent, SupportPlan other) {
    return new HelixSpec(
        scale,
        otherGround,
        otherAscent,
        bottom,
        top,
        stack,
        construction,
        segmentation,
        other,
        traffic,
        prices,
        woodDensity);
  }

  /** The same with another ascent. */
  public HelixSpec with(Ascent other) {
    return with(ground, other, supports);
  }

  /** The same with other ends. */
  public HelixSpec with(EndPlan entry, EndPlan exit) {
    return new HelixSpec(
        scale,
        ground,
        ascent,
        entry,
        exit,
        stack,
        construction,
        segmentation,
        supports,
        traffic,
        prices,
        woodDensity);
  }

  /** The same on another ground plan. */
  public HelixSpec with(GroundPlan other) {
    return with(other, ascent, supports);
  }

  /** The same joined in another way. */
  public HelixSpec with(Construction other) {
    return new HelixSpec(
        scale,
        ground,
        ascent,
        bottom,
        top,
        stack,
        other,
        segmentation,
        supports,
        traffic,
        prices,
        woodDensity);
  }

  /** The same cut into other segments. */
  public HelixSpec with(Segmentation other) {
    return new HelixSpec(
        scale,
        ground,
        ascent,
        bottom,
        top,
        stack,
        construction,
        other,
        supports,
        traffic,
        prices,
        woodDensity);
  }

  /** All plywood between two turns: every layer. */
  public Length plywood() {
    return stack.plywood().times(construction.layers());
  }

  /** What stands out sideways beyond the roadbed's edges: ears, or plates beside it. */
  public Length beyondEdges() {
    Length plates =
        construction instanceof Construction.PlatesBeside beside ? beside.thickness() : Length.ZERO;
    return earReach().longer(plates);
  }

  public boolean hasEars() {
    return earReach().compareTo(Length.ZERO) > 0;
  }

  /** How far ears stand out; zero without ears. */
  public Length earReach() {
    return supports.riser() instanceof Riser.ThreadedRods rods
        ? rods.ear().map(Riser.Ear::reach).orElse(Length.ZERO)
        : Length.ZERO;
  }

  /**
   * Half of the room that trains take sideways on straight track: half the longest vehicle, else
   * half of NEM 102's clear width, else, without a row for the scale, half the side margin.
   */
  public Length straightHalfWidth() {
    return traffic
        .longest()
        .map(vehicle -> vehicle.width().times(0.5))
        .or(() -> CurveWidening.straightHalfWidth(scale).map(Sourced::value))
        .orElse(ground.sideMargin().times(0.5));
  }

  /** Height of the rail tops above the plywood's underside. */
  public Length railAboveUnderside() {
    return plywood().plus(stack.aboveWood());
  }
}
