package curvestock.check;

import curvestock.geometry.Point;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/**
 * The least distance between two sets of edges, by halving.
 *
 * <p>A part of an edge lies within its sagitta of its chord, and its chord within the sagitta of
 * it. So the distance of two chords, less both sagittas, is never above the distance of the parts,
 * and with both sagittas added never below it. The pair of parts with the least lower bound is
 * halved until no lower bound is more than {@value #ACCURACY} mm below the best upper bound. No
 * closed form for arcs is used.
 */
final class GapMeasure {

  /** The result is at most this much above the true distance, and never below it. */
  static final double ACCURACY = 1e-6;

  /** Halvings in one measurement; ordinary pairs of pieces take a few thousand. */
  private static final int MOST_STEPS = 2_000_000;

  /** The least distance found, and a point half-way between the nearest points. */
  record Gap(double distance, Point at) {}

  private record Part(Trace edge, double from, double to) {

    double stray() {
      return edge.stray(from, to);
    }
  }

  /** A part and a rectangle that holds it, by which far pairs are passed over quickly. */
  private record Boxed(Part part, Bounds box) {

    static Boxed of(Part part) {
      Point a = part.edge().at(part.from());
      Point b = part.edge().at(part.to());
      double stray = part.stray();
      return new Boxed(
          part,
          new Bounds(
              Math.min(a.x(), b.x()) - stray,
              Math.min(a.y(), b.y()) - stray,
              Math.max(a.x(), b.x()) + stray,
              Math.max(a.y(), b.y()) + stray));
    }
  }

  private record Pair(Part a, Part b, double lower) {}

  private final PriorityQueue<Pair> open =
      new PriorityQueue<>((p, q) -> Double.compare(p.lower(), q.lower()));
  private double best;
  private Point at = Point.ORIGIN;

  private GapMeasure(double ceiling) {
    best = ceiling;
  }

  /**
   * The least distance, or {@code ceiling} if it is not below that.
   *
   * @throws CheckException if the edges are too intricate to measure
   */
  static Gap between(List<Trace> first, List<Trace> second, double ceiling) throws CheckException {
    GapMeasure measure = new GapMeasure(ceiling);
    List<Boxed> others = parts(second);
    for (Boxed a : parts(first)) {
      for (Boxed b : others) {
        if (a.box().distance(b.box()) < measure.best) {
          measure.consider(a.part(), b.part());
        }
      }
    }
    return measure.search();
  }

  /** Edges as parts of at most a quarter turn, for which the bounds hold. */
  private static List<Boxed> parts(List<Trace> edges) {
    return edges.stream()
        .flatMap(
            edge -> {
              int count =
                  edge instanceof Trace.Round round
                      ? Math.max(1, (int) Math.ceil(Math.abs(round.sweep()) / (Math.PI / 2)))
                      : 1;
              return IntStream.range(0, count)
                  .mapToObj(i -> Boxed.of(new Part(edge, (double) i / count, (i + 1.0) / count)));
            })
        .toList();
  }

  private Gap search() throws CheckException {
    int steps = 0;
    while (!open.isEmpty() && open.peek().lower() < best - ACCURACY) {
      if (++steps > MOST_STEPS) {
        throw new CheckException(
            "two outlines are too intricate to measure their gap: more than "
                + MOST_STEPS
                + " steps");
      }
      Pair pair = open.poll();
      boolean first = pair.a().stray() >= pair.b().stray();
      Part halved = first ? pair.a() : pair.b();
      double cut = (halved.from() + halved.to()) / 2;
      Part low = new Part(halved.edge(), halved.from(), cut);
      Part high = new Part(halved.edge(), cut, halved.to());
      consider(first ? low : pair.a(), first ? pair.b() : low);
      consider(first ? high : pair.a(), first ? pair.b() : high);
    }
    return new Gap(best, at);
  }

  private void consider(Part a, Part b) {
    Point a0 = a.edge().at(a.from());
    Point a1 = a.edge().at(a.to());
    Point b0 = b.edge().at(b.from());
    Point b1 = b.edge().at(b.to());
    double chords = chordDistance(a0, a1, b0, b1);
    double strays = a.stray() + b.stray();
    if (chords + strays < best) {
      best = chords + strays;
      at = amid(a0, a1, b0, b1);
    }
    if (strays > 0 && chords - strays < best - ACCURACY) {
      open.add(new Pair(a, b, chords - strays));
    }
  }

  /** Distance of two straight lines: 0 if they cross, else from an end of one to the other. */
  static double chordDistance(Point a0, Point a1, Point b0, Point b1) {
    if (side(a0, a1, b0) * side(a0, a1, b1) < 0 && side(b0, b1, a0) * side(b0, b1, a1) < 0) {
      return 0;
    }
    return Math.min(
        Math.min(fromLine(b0, a0, a1), fromLine(b1, a0, a1)),
        Math.min(fromLine(a0, b0, b1), fromLine(a1, b0, b1)));
  }

  /**
   * Half-way between the nearest points of two straight lines; of lines that cross, near the end
   * that reaches through least.
   */
  private static Point amid(Point a0, Point a1, Point b0, Point b1) {
    Point[][] pairs = {
      {b0, foot(b0, a0, a1)}, {b1, foot(b1, a0, a1)}, {a0, foot(a0, b0, b1)}, {a1, foot(a1, b0, b1)}
    };
    Point[] nearest = pairs[0];
    for (Point[] pair : pairs) {
      nearest = pair[0].distance(pair[1]) < nearest[0].distance(nearest[1]) ? pair : nearest;
    }
    return nearest[0].plus(nearest[1]).times(0.5);
  }

  private static double side(Point a, Point b, Point p) {
    return Math.signum((b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x()));
  }

  private static double fromLine(Point p, Point a, Point b) {
    double t = share(p, a, b);
    return Math.hypot(p.x() - a.x() - t * (b.x() - a.x()), p.y() - a.y() - t * (b.y() - a.y()));
  }

  /** The point of a straight line that is nearest to {@code p}. */
  private static Point foot(Point p, Point a, Point b) {
    double t = share(p, a, b);
    return new Point(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
  }

  /** How far along a straight line, 0 to 1, its nearest point to {@code p} lies. */
  private static double share(Point p, Point a, Point b) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double square = dx * dx + dy * dy;
    double t = square == 0 ? 0 : ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / square;
    return Math.max(0, Math.min(1, t));
  }
}
