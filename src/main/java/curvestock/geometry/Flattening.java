package curvestock.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Turns an outline into a JTS polygon whose arcs are chords or tangents, with a stated error on a
 * stated side.
 *
 * <p>{@link #around} contains the shape and exceeds it by at most the tolerance anywhere; {@link
 * #inside} is contained in the shape and falls short of it by at most the tolerance. An arc of
 * radius r cut in steps of angle s errs by r(1 − cos(s/2)) with chords and r(1/cos(s/2) − 1) with
 * tangents; the step is chosen so that the larger of the two stays within the tolerance.
 */
public final class Flattening {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final double tolerance;

  /**
   * @param tolerance the largest error in millimetres
   * @throws IllegalArgumentException if the tolerance is not above zero
   */
  public Flattening(double tolerance) {
    if (!(tolerance > 0)) {
      throw new IllegalArgumentException(
          "tolerance must be above zero, but was " + tolerance + " mm");
    }
    this.tolerance = tolerance;
  }

  /** A polygon that contains the outline. */
  public Polygon around(Outline outline) {
    return polygon(outline, true);
  }

  /** A polygon that lies in the outline. */
  public Polygon inside(Outline outline) {
    return polygon(outline, false);
  }

  private Polygon polygon(Outline outline, boolean around) {
    LinearRing shell = ring(outline.outer(), around);
    LinearRing[] holes =
        outline.holes().stream().map(hole -> ring(hole, around)).toArray(LinearRing[]::new);
    return FACTORY.createPolygon(shell, holes);
  }

  private LinearRing ring(Loop loop, boolean around) {
    List<Coordinate> corners = new ArrayList<>();
    for (Edge edge : loop.edges()) {
      corners.add(coordinate(edge.start()));
      if (edge instanceof Arc arc) {
        // Counter-clockwise arcs bulge out of the material: tangents lie outside, chords inside.
        boolean tangents = (arc.sweep() > 0) == around;
        addInner(arc, tangents, corners);
      }
    }
    corners.add(corners.get(0).copy());
    return FACTORY.createLinearRing(corners.toArray(Coordinate[]::new));
  }

  private void addInner(Arc arc, boolean tangents, List<Coordinate> corners) {
    int steps = steps(arc);
    double step = arc.sweep() / steps;
    if (tangents) {
      double reach = arc.radius() / StrictMath.cos(step / 2);
      for (int i = 0; i < steps; i++) {
        Point corner = Point.polar(reach, arc.startAngle() + (i + 0.5) * step);
        corners.add(coordinate(arc.centre().plus(corner)));
      }
    } else {
      for (int i = 1; i < steps; i++) {
        corners.add(coordinate(arc.pointAt(arc.startAngle() + i * step)));
      }
    }
  }

  private int steps(Arc arc) {
    double largest = 2 * StrictMath.acos(arc.radius() / (arc.radius() + tolerance));
    int needed = (int) Math.ceil(Math.abs(arc.sweep()) / largest);
    int atLeast = (int) Math.ceil(Math.abs(arc.sweep()) / (Math.PI / 4));
    return Math.max(needed, atLeast);
  }

  private static Coordinate coordinate(Point point) {
    return new Coordinate(point.x(), point.y());
  }
}
