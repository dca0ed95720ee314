package curvestock.packing;

import curvestock.geometry.Arc;
import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import java.util.List;

/** Signed distance of any outline: the nearest of its edges, inside or out by parity. */
final class OutlineField implements DistanceField {

  private final Outline outline;
  private final List<Edge> edges;
  private final Box box;

  OutlineField(Outline outline) {
    this.outline = outline;
    this.box = outline.box();
    this.edges = outline.edges();
  }

  @Override
  public double at(double x, double y) {
    Point point = new Point(x, y);
    double least = Double.POSITIVE_INFINITY;
    for (Edge edge : edges) {
      least = Math.min(least, edge.distanceTo(point));
    }
    return contains(point) ? -least : least;
  }

  @Override
  public double at(double x, double y, double[] outward) {
    Point point = new Point(x, y);
    double least = Double.POSITIVE_INFINITY;
    Edge nearest = edges.get(0);
    for (Edge edge : edges) {
      double distance = edge.distanceTo(point);
      if (distance < least) {
        least = distance;
        nearest = edge;
      }
    }
    double signed = contains(point) ? -least : least;
    Point foot = nearestPoint(nearest, point);
    if (least > 1e-12) {
      outward[0] = (point.x() - foot.x()) / signed;
      outward[1] = (point.y() - foot.y()) / signed;
    } else {
      Point normal = outwardNormal(nearest, foot);
      outward[0] = normal.x();
      outward[1] = normal.y();
    }
    return signed;
  }

  /** Most points asked for lie beyond the box, where parity need not be counted. */
  private boolean contains(Point point) {
    return point.x() >= box.minX()
        && point.x() <= box.maxX()
        && point.y() >= box.minY()
        && point.y() <= box.maxY()
        && outline.contains(point);
  }

  private static Point nearestPoint(Edge edge, Point point) {
    if (edge instanceof Segment segment) {
      return segment.nearest(point);
    }
    Arc arc = (Arc) edge;
    double direction = point.minus(arc.centre()).angle();
    if (arc.spans(direction)) {
      return arc.pointAt(direction);
    }
    return point.distance(arc.start()) < point.distance(arc.end()) ? arc.start() : arc.end();
  }

  /** The material lies to the left of each edge, so outward is to the right. */
  private static Point outwardNormal(Edge edge, Point on) {
    Point along;
    if (edge instanceof Arc arc) {
      Point radial = on.minus(arc.centre()).times(Math.signum(arc.sweep()) / arc.radius());
      return radial;
    }
    along = edge.end().minus(edge.start());
    double length = along.norm();
    return length > 0 ? new Point(along.y() / length, -along.x() / length) : new Point(1, 0);
  }
}
