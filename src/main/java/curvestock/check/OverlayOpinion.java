package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The second opinion on overlap: areas by JTS, on polygons that lie within the drawn shapes by at
 * most {@value #TOLERANCE} mm, so that only a true overlap has an area.
 */
final class OverlayOpinion {

  private static final double TOLERANCE = 0.001;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private OverlayOpinion() {}

  /** A polygon inside the shape. */
  static Polygon inside(TraceShape shape) {
    LinearRing[] holes =
        shape.holes().stream().map(OverlayOpinion::ring).toArray(LinearRing[]::new);
    return FACTORY.createPolygon(ring(shape.outer()), holes);
  }

  /** Area that both polygons cover, in square millimetres. */
  static double sharedArea(Polygon a, Polygon b) throws CheckException {
    if (!a.getEnvelopeInternal().intersects(b.getEnvelopeInternal())) {
      return 0;
    }
    return area(a, b, OverlayNG.INTERSECTION);
  }

  /** Area of the first polygon outside the second, in square millimetres. */
  static double areaOutside(Polygon a, Polygon region) throws CheckException {
    return area(a, region, OverlayNG.DIFFERENCE);
  }

  private static double area(Polygon a, Polygon b, int operation) throws CheckException {
    try {
      return OverlayNGRobust.overlay(a, b, operation).getArea();
    } catch (TopologyException e) {
      throw new CheckException("an outline crosses itself: " + e.getMessage(), e);
    }
  }

  private static LinearRing ring(TraceLoop loop) {
    List<Coordinate> corners = new ArrayList<>();
    for (Trace edge : loop.edges()) {
      corners.add(coordinate(edge.start()));
      if (edge instanceof Trace.Round round) {
        addInner(round, corners);
      }
    }
    corners.add(corners.get(0).copy());
    while (corners.size() < 4) {
      corners.add(corners.get(0).copy());
    }
    return FACTORY.createLinearRing(corners.toArray(Coordinate[]::new));
  }

  /** Chords where the material bulges out (counter-clockwise), tangents where it is hollow. */
  private static void addInner(Trace.Round arc, List<Coordinate> corners) {
    double widest = 2 * Math.acos(arc.radius() / (arc.radius() + TOLERANCE));
    int steps = (int) Math.ceil(Math.abs(arc.sweep()) / Math.min(widest, Math.PI / 8));
    double step = arc.sweep() / steps;
    if (arc.sweep() > 0) {
      for (int i = 1; i < steps; i++) {
        corners.add(coordinate(arc.at((double) i / steps)));
      }
      return;
    }
    double reach = arc.radius() / Math.cos(step / 2);
    for (int i = 0; i < steps; i++) {
      double angle = arc.first() + (i + 0.5) * step;
      corners.add(
          new Coordinate(
              arc.centre().x() + reach * Math.cos(angle),
              arc.centre().y() + reach * Math.sin(angle)));
    }
  }

  private static Coordinate coordinate(Point point) {
    return new Coordinate(point.x(), point.y());
  }
}
