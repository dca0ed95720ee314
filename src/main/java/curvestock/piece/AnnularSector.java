package curvestock.piece;

import curvestock.geometry.Arc;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.List;

/**
 * A piece of curved roadbed: the part of a flat ring between two radii and two end faces.
 *
 * <p>Frame: origin at the centre of the arcs, +x along the bisector, so the piece spans the
 * directions −sweep/2 to +sweep/2. A sweep of 360° is a whole ring with a hole and no end faces.
 *
 * @param radius centre-line radius: the mean of the inner and outer radius
 * @param width radial width
 * @param sweep swept angle, above 0° and at most 360°
 */
public record AnnularSector(Length radius, Length width, Angle sweep) implements Shape {

  /** Below this the two end faces would all but touch; such a piece is a whole ring. */
  private static final double WHOLE_RING_DEGREES = 360;

  /**
   * @throws IllegalArgumentException if width or radius are not above zero, if the inner radius is
   *     below zero, or if the sweep is out of range
   */
  public AnnularSector {
    radius.requirePositive("radius");
    width.requirePositive("width");
    if (width.millimetres() > 2 * radius.millimetres()) {
      throw new IllegalArgumentException(
          "width must be at most twice the centre-line radius ("
              + radius.times(2)
              + "), but was "
              + width);
    }
    if (!(sweep.degrees() > 0 && sweep.degrees() <= WHOLE_RING_DEGREES)) {
      throw new IllegalArgumentException(
          "angle must be above 0° and at most 360°, but was " + sweep);
    }
  }

  public Length innerRadius() {
    return Length.ofMillimetres(radius.millimetres() - width.millimetres() / 2);
  }

  public Length outerRadius() {
    return Length.ofMillimetres(radius.millimetres() + width.millimetres() / 2);
  }

  public boolean isRing() {
    return sweep.degrees() >= WHOLE_RING_DEGREES;
  }

  /** Closed form t/2·(R² − r²), in square millimetres. */
  @Override
  public double area() {
    return sweep.radians() * radius.millimetres() * width.millimetres();
  }

  /**
   * Straight distance between the two outer corners: 2R·sin(t/2); the outer diameter above 180°.
   */
  public Length chord() {
    double half = Math.min(sweep.radians() / 2, Math.PI / 2);
    return outerRadius().times(2 * Math.sin(half));
  }

  /** Height of the outer arc above the chord of its ends: R(1 − cos(t/2)). */
  public Length sagitta() {
    return outerRadius().times(1 - Math.cos(sweep.radians() / 2));
  }

  @Override
  public Outline outline() {
    double outer = outerRadius().millimetres();
    double inner = innerRadius().millimetres();
    if (isRing()) {
      Loop rim = Loop.circle(Point.ORIGIN, outer);
      return inner > 0
          ? new Outline(rim, List.of(Loop.circle(Point.ORIGIN, inner).reversed()))
          : Outline.of(rim);
    }
    double half = sweep.radians() / 2;
    Arc outerArc = new Arc(Point.ORIGIN, outer, -half, 2 * half);
    if (inner <= 0) {
      return Outline.of(
          new Loop(
              List.of(
                  outerArc,
                  new Segment(outerArc.end(), Point.ORIGIN),
                  new Segment(Point.ORIGIN, outerArc.start()))));
    }
    Arc innerArc = new Arc(Point.ORIGIN, inner, half, -2 * half);
    return Outline.of(
        new Loop(
            List.of(
                outerArc,
                Segment.joining(outerArc, innerArc),
                innerArc,
                Segment.joining(innerArc, outerArc))));
  }
}
