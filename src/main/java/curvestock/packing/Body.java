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
import java.util.stream.IntStream;

/**
 * A shape made ready for the search, all in its own frame: its distance field, points along its
 * boundary in groups with bounding circles, and the arcs and straight edges on which a nearest
 * point can lie between corners.
 *
 * <p>Corners are always among the points. Points between them only serve to feel deep overlaps; the
 * exact nearest points are found from the arcs and edges (see {@link Overlap}).
 */
final class Body {

  private static final int POINTS_PER_GROUP = 5;
  private static final int GROUPS_PER_EDGE = 20;

  /** Enough for a strip three thousand times as long as wide. */
  private static final int MOST_POINTS_PER_EDGE = 5000;

  static final int LAST_BIT = 63;
  private static final double ROUNDING = 1e-9;

  final DistanceField field;
  final double area;

  /** Bounding circle. */
  final double centreX;

  final double centreY;
  final double radius;

  /**
   * Boundary points; group g holds the points groupStart[g] to groupStart[g + 1], and its circle
   * the whole stretch of boundary from its first point to the next group's: all circles together
   * cover the boundary.
   */
  final double[] pointX;

  final double[] pointY;
  final int[] groupStart;
  final double[] groupX;
  final double[] groupY;
  final double[] groupRadius;

  /** Whether two straight edges meet in a tip sharper than a right angle. */
  final boolean tipped;

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

  /** The groups on each convex arc, as bits of {@link #bit}. */
  final long[] arcGroups;

  /** Straight edges: start, unit vector, length. */
  final double[] edgeX;

  final double[] edgeY;
  final double[] edgeUnitX;
  final double[] edgeUnitY;
  final double[] edgeLength;

  /** The groups on each straight edge, as bits of {@link #bit}. */
  final long[] edgeGroups;

  /** Distinct centres of all arcs. */
  final double[] arcCentreX;

  final double[] arcCentreY;

  /**
   * Which way the sheet's grain may run, in this frame; {@code grainWithin} of π/2 leaves it free.
   */
  final double grainDirection;

  final double grainWithin;

  private volatile Lattices lattices;

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

    tipped = outline.loops().anyMatch(loop -> hasTip(loop.edges()));
    List<Edge> edges = outline.edges();
    List<Point> corners = edges.stream().map(Edge::start).toList();
    cornerX = corners.stream().mapToDouble(Point::x).toArray();
    cornerY = corners.stream().mapToDouble(Point::y).toArray();

    List<Group> groups = groups(edges, spacing(outline));
    List<Point> points = groups.stream().flatMap(group -> group.points.stream()).toList();
    pointX = points.stream().mapToDouble(Point::x).toArray();
    pointY = points.stream().mapToDouble(Point::y).toArray();
    groupStart = new int[groups.size() + 1];
    for (int g = 0; g < groups.size(); g++) {
      groupStart[g + 1] = groupStart[g] + groups.get(g).points.size();
    }
    groupX = groups.stream().mapToDouble(group -> group.centre.x()).toArray();
    groupY = groups.stream().mapToDouble(group -> group.centre.y()).toArray();
    groupRadius = groups.stream().mapToDouble(Group::radius).toArray();

    List<Arc> convex = new ArrayList<>();
    List<Segment> straight = new ArrayList<>();
    List<Point> arcCentres = new ArrayList<>();
    for (Edge edge : edges) {
      if (edge instanceof Arc arc) {
        if (arc.sweep() > 0) {
          convex.add(arc);
        }
        if (arcCentres.stream().noneMatch(arcCentre -> arcCentre.distance(arc.centre()) < 1e-9)) {
          arcCentres.add(arc.centre());
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
    arcGroups = convex.stream().mapToLong(arc -> bits(groups, edges.indexOf(arc))).toArray();
    edgeGroups = straight.stream().mapToLong(edge -> bits(groups, edges.indexOf(edge))).toArray();
    arcCentreX = arcCentres.stream().mapToDouble(Point::x).toArray();
    arcCentreY = arcCentres.stream().mapToDouble(Point::y).toArray();
  }

  /** All its lattices with that gap, made when first asked for; the last gap's are kept. */
  List<PeriodicLattice> lattices(double gap) {
    Lattices known = lattices;
    if (known == null || known.gap != gap) {
      known = new Lattices(gap, new LatticeFamilies(this, gap).all());
      lattices = known;
    }
    return known.all;
  }

  private record Lattices(double gap, List<PeriodicLattice> all) {
    Lattices {
      all = List.copyOf(all);
    }
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

  /** The bit that stands for group g: the last one for all that have none of their own. */
  static int bit(int g) {
    return Math.min(g, LAST_BIT);
  }

  private static long bits(List<Group> groups, int edge) {
    long bits = 0;
    for (int g = 0; g < groups.size(); g++) {
      bits |= groups.get(g).holds(edge) ? 1L << bit(g) : 0;
    }
    return bits;
  }

  /**
   * Points that follow each other on the boundary, from one edge to another or on the same, and a
   * circle round the stretch they stand for.
   */
  private record Group(int from, int to, List<Point> points, Point centre, double radius) {

    /** From one share of the edge to another. */
    static Group of(int number, Edge edge, List<Point> points, double from, double to) {
      Point first = along(edge, from);
      Point last = along(edge, to);
      if (edge instanceof Arc arc && Math.abs(arc.sweep()) * (to - from) > Math.PI) {
        return new Group(number, number, points, arc.centre(), arc.radius() + ROUNDING);
      }
      // An arc of up to half a turn lies in the circle that has its chord for a diameter.
      return new Group(
          number, number, points, first.plus(last).times(0.5), first.distance(last) / 2 + ROUNDING);
    }

    boolean holds(int edge) {
      return from <= edge && edge <= to;
    }

    /** This stretch and the next as one: the least circle round both circles. */
    Group and(Group next) {
      List<Point> both = new ArrayList<>(points);
      both.addAll(next.points);
      double apart = centre.distance(next.centre);
      if (apart + next.radius <= radius) {
        return new Group(from, next.to, both, centre, radius);
      }
      if (apart + radius <= next.radius) {
        return new Group(from, next.to, both, next.centre, next.radius);
      }
      double round = (apart + radius + next.radius) / 2;
      Point middle = centre.plus(next.centre.minus(centre).times((round - radius) / apart));
      return new Group(from, next.to, both, middle, round + ROUNDING);
    }
  }

  /** Short edges that follow each other share a group: of an easement there are dozens. */
  private static List<Group> joined(List<Group> groups, int perGroup) {
    List<Group> joined = new ArrayList<>();
    for (Group group : groups) {
      int last = joined.size() - 1;
      if (last >= 0 && joined.get(last).points.size() + group.points.size() <= perGroup) {
        joined.set(last, joined.get(last).and(group));
      } else {
        joined.add(group);
      }
    }
    return joined;
  }

  private static List<Group> groups(List<Edge> edges, double spacing) {
    List<Group> groups = new ArrayList<>();
    double longest = edges.stream().mapToDouble(Edge::length).max().orElse(0);
    int perGroup = (int) Math.max(POINTS_PER_GROUP, longest / spacing / GROUPS_PER_EDGE);
    for (int number = 0; number < edges.size(); number++) {
      Edge edge = edges.get(number);
      int parts =
          (int) Math.max(1, Math.min(MOST_POINTS_PER_EDGE, Math.ceil(edge.length() / spacing)));
      int runs = (parts + perGroup - 1) / perGroup;
      for (int run = 0; run < runs; run++) {
        int first = parts * run / runs;
        int next = parts * (run + 1) / runs;
        List<Point> points = new ArrayList<>();
        for (int i = first; i < next; i++) {
          points.add(along(edge, (double) i / parts));
        }
        groups.add(Group.of(number, edge, points, (double) first / parts, (double) next / parts));
      }
    }
    groups = joined(groups, perGroup);
    for (int i = 0; i < edges.size(); i++) {
      Edge before = edges.get(i);
      Edge after = edges.get((i + 1) % edges.size());
      if (isSharp(before, after)) {
        groups.add(tip((i + 1) % edges.size(), before, after, spacing));
      }
    }
    return groups;
  }

  private static boolean hasTip(List<Edge> loop) {
    int size = loop.size();
    return IntStream.range(0, size).anyMatch(i -> isSharp(loop.get(i), loop.get((i + 1) % size)));
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
  private static Group tip(int number, Edge before, Edge after, double spacing) {
    List<Point> points = new ArrayList<>();
    double reach = Math.min(spacing, Math.min(before.length(), after.length()));
    for (int k = 1; k <= 4; k++) {
      double away = reach / (1 << k);
      points.add(along(before, 1 - away / before.length()));
      points.add(along(after, away / after.length()));
    }
    return new Group(number, number, points, after.start(), reach / 2 + ROUNDING);
  }

  private static Point along(Edge edge, double share) {
    if (edge instanceof Arc arc) {
      return arc.pointAt(arc.startAngle() + share * arc.sweep());
    }
    return edge.start().plus(edge.end().minus(edge.start()).times(share));
  }
}
