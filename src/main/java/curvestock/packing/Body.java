package curvestock.packing;

import curvestock.geometry.Arc;
import curvestock.geometry.BoundingCircle;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import curvestock.piece.Grain;
import curvestock.piece.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * A shape made ready for the search, all in its own frame: its distance field, points along its
 * boundary in groups with bounding circles, and the arcs and straight edges on which a nearest
 * point can lie between corners.
 *
 * <p>Corners are always among the points. Points between them only serve to feel deep overlaps; the
 * exact nearest points are found from the arcs and edges (see {@link Overlap}).
 */
final class Body {

  private static final int POINTS_PER_GROUP = 6;
  private static final int MOST_POINTS_PER_EDGE = 400;

  final DistanceField field;
  final double area;

  /** Bounding circle. */
  final double centreX;

  final double centreY;
  final double radius;

  /** Boundary points; group g holds the points groupStart[g] to groupStart[g + 1]. */
  final double[] pointX;

  final double[] pointY;
  final int[] groupStart;
  final double[] groupX;
  final double[] groupY;
  final double[] groupRadius;

  /** Corners, where extremes can lie. */
  final double[] cornerX;

  final double[] cornerY;

  /** Convex arcs: centre, radius, unit vector to the middle, cosine of half the sweep. */
  final double[] arcX;

  final double[] arcY;
  final double[] arcRadius;
  final double[] arcMiddleX;
  final double[] arcMiddleY;
  final double[] arcCosHalf;

  /** Straight edges: start, unit vector, length. */
  final double[] edgeX;

  final double[] edgeY;
  final double[] edgeUnitX;
  final double[] edgeUnitY;
  final double[] edgeLength;

  /** Distinct centres of all arcs. */
  final double[] hubX;

  final double[] hubY;

  /**
   * Which way the sheet's grain may run, in this frame; {@code grainWithin} of π/2 leaves it free.
   */
  final double grainDirection;

  final double grainWithin;

  Body(Piece piece) {
    this(piece.shape().blank().outline(), DistanceField.of(piece.shape()), piece.grain());
  }

  /** An outline that is not a piece, such as a defect. */
  Body(Outline outline) {
    this(outline, new OutlineField(outline), Grain.FREE);
  }

  private Body(Outline outline, DistanceField field, Grain grain) {
    this.field = field;
    grainDirection = grain.direction().radians();
    grainWithin = grain.isFree() ? Math.PI / 2 : grain.within().radians();
    area = outline.area();
    BoundingCircle circle = BoundingCircle.of(outline);
    centreX = circle.centre().x();
    centreY = circle.centre().y();
    radius = circle.radius();

    List<Edge> edges = outline.edges();
    List<Point> corners = edges.stream().map(Edge::start).toList();
    cornerX = corners.stream().mapToDouble(Point::x).toArray();
    cornerY = corners.stream().mapToDouble(Point::y).toArray();

    List<List<Point>> groups = groups(edges, spacing(outline));
    List<Point> points = groups.stream().flatMap(List::stream).toList();
    pointX = points.stream().mapToDouble(Point::x).toArray();
    pointY = points.stream().mapToDouble(Point::y).toArray();
    groupStart = new int[groups.size() + 1];
    groupX = new double[groups.size()];
    groupY = new double[groups.size()];
    groupRadius = new double[groups.size()];
    for (int g = 0; g < groups.size(); g++) {
      enclose(g, groups.get(g));
    }

    List<Arc> convex = new ArrayList<>();
    List<Segment> straight = new ArrayList<>();
    List<Point> hubs = new ArrayList<>();
    for (Edge edge : edges) {
      if (edge instanceof Arc arc) {
        if (arc.sweep() > 0) {
          convex.add(arc);
        }
        if (hubs.stream().noneMatch(hub -> hub.distance(arc.centre()) < 1e-9)) {
          hubs.add(arc.centre());
        }
      } else {
        straight.add((Segment) edge);
      }
    }
    arcX = convex.stream().mapToDouble(arc -> arc.centre().x()).toArray();
    arcY = convex.stream().mapToDouble(arc -> arc.centre().y()).toArray();
    arcRadius = convex.stream().mapToDouble(Arc::radius).toArray();
    arcMiddleX = convex.stream().mapToDouble(arc -> StrictMath.cos(middle(arc))).toArray();
    arcMiddleY = convex.stream().mapToDouble(arc -> StrictMath.sin(middle(arc))).toArray();
    arcCosHalf =
        convex.stream()
            .mapToDouble(arc -> StrictMath.cos(Math.min(Math.PI, Math.abs(arc.sweep()) / 2)))
            .toArray();
    edgeX = straight.stream().mapToDouble(edge -> edge.start().x()).toArray();
    edgeY = straight.stream().mapToDouble(edge -> edge.start().y()).toArray();
    edgeLength = straight.stream().mapToDouble(Segment::length).toArray();
    edgeUnitX =
        straight.stream().mapToDouble(e -> (e.end().x() - e.start().x()) / e.length()).toArray();
    edgeUnitY =
        straight.stream().mapToDouble(e -> (e.end().y() - e.start().y()) / e.length()).toArray();
    hubX = hubs.stream().mapToDouble(Point::x).toArray();
    hubY = hubs.stream().mapToDouble(Point::y).toArray();
  }

  /** Whether the piece may be turned by this angle on a sheet with this direction of grain. */
  boolean grainAllows(double angle, double sheetGrain) {
    double off = grainDirection + angle - sheetGrain;
    off -= Math.PI * Math.rint(off / Math.PI);
    return Math.abs(off) <= grainWithin + 1e-9;
  }

  boolean grainFree() {
    return grainWithin >= Math.PI / 2;
  }

  private static double middle(Arc arc) {
    return arc.startAngle() + arc.sweep() / 2;
  }

  /**
   * About half the width of the shape, taking it for a band: so that nothing slips between points.
   */
  private static double spacing(Outline outline) {
    return 0.6 * 2 * outline.area() / outline.perimeter();
  }

  private static List<List<Point>> groups(List<Edge> edges, double spacing) {
    List<List<Point>> groups = new ArrayList<>();
    for (Edge edge : edges) {
      int parts =
          (int) Math.max(1, Math.min(MOST_POINTS_PER_EDGE, Math.ceil(edge.length() / spacing)));
      List<Point> group = new ArrayList<>();
      for (int i = 0; i < parts; i++) {
        if (group.size() == POINTS_PER_GROUP) {
          groups.add(group);
          group = new ArrayList<>();
        }
        group.add(along(edge, (double) i / parts));
      }
      groups.add(group);
    }
    for (int i = 0; i < edges.size(); i++) {
      Edge before = edges.get(i);
      Edge after = edges.get((i + 1) % edges.size());
      if (isSharp(before, after)) {
        groups.add(tip(before, after, spacing));
      }
    }
    return groups;
  }

  /** Whether two straight edges meet in a tip sharper than a right angle. */
  private static boolean isSharp(Edge before, Edge after) {
    if (before instanceof Arc || after instanceof Arc) {
      return false;
    }
    Point in = before.end().minus(before.start());
    Point out = after.end().minus(after.start());
    return in.dot(out) < -1e-9 && in.cross(out) > 0;
  }

  /** Points ever closer to a tip: two sharp tips can cross between points that are far apart. */
  private static List<Point> tip(Edge before, Edge after, double spacing) {
    List<Point> points = new ArrayList<>();
    double reach = Math.min(spacing, Math.min(before.length(), after.length()));
    for (int k = 1; k <= 4; k++) {
      double away = reach / (1 << k);
      points.add(along(before, 1 - away / before.length()));
      points.add(along(after, away / after.length()));
    }
    return points;
  }

  private static Point along(Edge edge, double share) {
    if (edge instanceof Arc arc) {
      return arc.pointAt(arc.startAngle() + share * arc.sweep());
    }
    return edge.start().plus(edge.end().minus(edge.start()).times(share));
  }

  private void enclose(int g, List<Point> group) {
    groupStart[g + 1] = groupStart[g] + group.size();
    Point first = group.get(0);
    Point last = group.get(group.size() - 1);
    Point centre = first.plus(last).times(0.5);
    groupX[g] = centre.x();
    groupY[g] = centre.y();
    groupRadius[g] = group.stream().mapToDouble(centre::distance).max().orElse(0) + 1e-9;
  }
}
