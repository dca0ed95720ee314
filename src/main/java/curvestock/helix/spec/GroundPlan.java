package curvestock.helix.spec;

import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * Where tracks and roadbed run, seen from above.
 *
 * @param innerTrack centre-line radius of the inner track, or of the only one
 * @param trackSpacing distance to the outer track's centre line; empty for a single track
 * @param sideMargin from the outer tracks' centre lines to the roadbed's edges, the same on both
 *     sides
 * @param straight length of each of the two straights of an oval, zero for a circle
 * @param direction which way round the track climbs
 * @param entry direction from the centre to the place where the track enters, counter-clockwise
 *     from +x
 */
public record GroundPlan(
    Length innerTrack,
    Optional<Length> trackSpacing,
    Length sideMargin,
    Length straight,
    Direction direction,
    Angle entry) {

  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if a length is not above zero (the straight may be zero), or
   *     if the roadbed would reach the centre
   */
  public GroundPlan {
    innerTrack.requirePositive("centre-line radius");
    trackSpacing.ifPresent(spacing -> spacing.requirePositive("track spacing"));
    sideMargin.requirePositive("side margin");
    straight.requireNotNegative("straight");
    if (sideMargin.compareTo(innerTrack) >= 0) {
      throw new IllegalArgumentException(
          "side margin must be less than the inner track's radius ("
              + innerTrack
              + "), but was "
              + sideMargin);
    }
  }

  /** A circle of one track that climbs counter-clockwise from +x, on roadbed of the given width. */
  public static GroundPlan circle(Length radius, Length width) {
    return new GroundPlan(
        radius,
        Optional.empty(),
        width.times(0.5),
        Length.ZERO,
        Direction.COUNTER_CLOCKWISE,
        Angle.ofDegrees(0));
  }

  /**
   * The side margin that a stated roadbed width leaves.
   *
   * @throws IllegalArgumentException if the tracks are further apart than the roadbed is wide
   */
  public static Length marginOfWidth(Length width, Optional<Length> trackSpacing) {
    Length margin = width.minus(trackSpacing.orElse(Length.ZERO)).times(0.5);
    if (margin.millimetres() <= 0) {
      throw new IllegalArgumentException(
          "roadbed width must be more than the track spacing ("
              + trackSpacing.orElse(Length.ZERO)
              + "), but was "
              + width);
    }
    return margin;
  }

  public Length outerTrack() {
    return innerTrack.plus(trackSpacing.orElse(Length.ZERO));
  }

  /** The tracks' centre-line radii, inner first. */
  public List<Length> trackRadii() {
    return trackSpacing.isPresent() ? List.of(innerTrack, outerTrack()) : List.of(innerTrack);
  }

  public Length innerEdge() {
    return innerTrack.minus(sideMargin);
  }

  public Length outerEdge() {
    return outerTrack().plus(sideMargin);
  }

  public Length width() {
    return outerEdge().minus(innerEdge());
  }

  /** Radius of the roadbed's own centre line, along which heights and pieces are planned. */
  public Length bedRadius() {
    return innerEdge().plus(outerEdge()).times(0.5);
  }

  /** Length of one turn of a track or line of the given radius: 2πR and both straights. */
  public Length runPerTurn(Length radius) {
    return radius.times(2 * Math.PI).plus(straight.times(2));
  }

  public boolean isOval() {
    return straight.millimetres() > 0;
  }
}
