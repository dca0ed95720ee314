package curvestock.packing;

import curvestock.geometry.Arc;
import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import java.util.List;

/**
 * Signed distance of any outline: the nearest of its edges, inside or out by parity.
 *
 * <p>Edges whose box lies further away than some edge does are not measured: of a piece with ears
 * or an easement that is nearly all of them.
 */
final class OutlineField implements DistanceField {

  private final Outline outline;
  private final List<Edge> edges;
  private final Box box;
  private final double[] minX;
  private final double[] maxX;
  private final double[] minY;
  private final double[] maxY;

  /** Rounding of a box's distance, with room to spare, in square millimetres of a near miss. */
  private static final double ROUNDING = 1e-6;

  OutlineField(Outline outline) {
    this.outline = outline;
    this.box = outline.box();
    this.edges = outline.edges();
    int count = edges.size();
    minX = new double[count];
    maxX = new double[count];
    minY = new double[count];
    maxY = new double[count];
    for (int i = 0; i < count; i++) {
      Box around = edges.get(i).box();
      minX[i] = around.minX();
      maxX[i] = around.maxX();
      minY[i] = around.minY();
      maxY[i] = around.maxY();
    }
  }

  /** Square of the distance to an edge's box; zero within it. */
  private double toBox(int i, double x, double y) {
    double dx = Math.max(0, Math.max(minX[i] - x, x - maxX[i]));
    double dy = Math.max(0, Math.max(minY[i] - y, y - maxY[i]));
    return dx * dx + dy * dy;
  }

  /** Square of a distance that the nearest edge surely does not exceed. */
  private double reach(double x, double y, Point point) {
    int first = 0;
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < minX.length; i++) {
      double square = toBox(i, x, y);
      if (square < nearest) {
        nearest = square;
        first = i;
      }
    }
    double distance = edges.get(first).distanceTo(point);
    return distance * distance * (1 + ROUNDING) + ROUNDING;
  }

  @Override
  public double at(double x, double y) {
    Point point = new Point(x, y);
    double reach = reach(x, y, point);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < minX.length; i++) {
      if (toBox(i, x, y) <= reach) {
        least = Math.min(least, edges.get(i).distanceTo(point));
      }
    }
    return contains(point) ? -least : least;
  }

  @Override
  public double at(double x, double y, double[] outward) {
    Point point = new Point(x, y);
    double reach = reach(x, y, point);
    double least = Double.POSITIVE_INFINITY;
    Edge nearest = edges.get(0);
    for (int i = 0; i < minX.length; i++) {
      if (toBox(i, x, y) <= reach) {
        double distance = edges.get(i).distanceTo(point);
        if (distance < least) {
          least = distance;
          nearest = edges.get(i);
        }
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
