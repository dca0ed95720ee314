package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether a drawn shape is a nominal shape, moved and turned but not turned over.
 *
 * <p>The pose is not taken from the file but fitted to the outline itself: edges are paired in
 * order, from every possible start, and ends and middles brought together by least squares (the
 * plane case of the orthogonal Procrustes problem, reflections left out). The deviation is then
 * bounded from above along every pair of edges. Straight edges pair only with straight ones, arcs
 * with arcs: a polyline, however fine, is not an arc.
 */
final class Congruence {

  /**
   * A way to lay the nominal shape on the drawn one.
   *
   * @param error the largest distance between the two outlines, in millimetres, from above
   * @param rotation of the nominal shape in radians; empty if any will do, as for a ring
   * @param move takes a point of the nominal shape to its place on the sheet
   */
  record Fit(double error, OptionalDouble rotation, Move move) {}

  /** A turn, then a shift. */
  record Move(double cos, double sin, double x, double y) {

    Point apply(Point p) {
      return new Point(x + cos * p.x() - sin * p.y(), y + sin * p.x() + cos * p.y());
    }

    double angle() {
      return Math.atan2(sin, cos);
    }
  }

  /** Points at which paired arcs are compared; between them their deviation cannot grow much. */
  private static final int SAMPLES = 16;

  /** Pairs of edges this different in length are not worth a fit. */
  private static final double LENGTH_SLACK = 5;

  private final TraceShape nominal;
  private final TraceShape drawn;

  private Congruence(TraceShape nominal, TraceShape drawn) {
    this.nominal = joined(nominal);
    this.drawn = joined(drawn);
  }

  private static TraceShape joined(TraceShape shape) {
    return new TraceShape(
        Joined.of(shape.outer()), shape.holes().stream().map(Joined::of).toList());
  }

  /**
   * All ways in which the outlines agree edge by edge; empty if their edges do not even pair up.
   * Arcs that rise less over their chords than is forgiven may be drawn as those; that counts as
   * error.
   */
  static List<Fit> fits(TraceShape nominal, TraceShape drawn) {
    List<Fit> fits = new Congruence(nominal, drawn).fits();
    List<Double> rises =
        nominal.edges().stream()
            .map(edge -> edge.stray(0, 1))
            .filter(rise -> rise > 0 && rise < LayoutCheck.SHAPE_TOLERANCE)
            .distinct()
            .sorted()
            .toList();
    for (int i = 0; fits.isEmpty() && i < rises.size(); i++) {
      double rise = rises.get(i);
      for (Fit fit : new Congruence(nominal.withChords(rise), drawn).fits()) {
        fits.add(new Fit(fit.error() + rise, fit.rotation(), fit.move()));
      }
    }
    return fits;
  }

  /** The deviation without any move; empty if the edges do not pair up. */
  static OptionalDouble errorInPlace(TraceShape nominal, TraceShape drawn) {
    Congruence pair = new Congruence(nominal, drawn);
    if (pair.nominal.holes().size() != pair.drawn.holes().size()) {
      return OptionalDouble.empty();
    }
    Move none = move(0, Point.ORIGIN, Point.ORIGIN);
    double error =
        Math.max(
            loopError(pair.nominal.outer().edges(), pair.drawn.outer(), none),
            pair.holesError(none));
    return Double.isFinite(error) ? OptionalDouble.of(error) : OptionalDouble.empty();
  }

  /** Whether two closed lines lie on each other, whichever way they run. */
  static boolean onEachOther(TraceLoop a, TraceLoop b) {
    TraceShape other = new TraceShape(b.turned(true), List.of());
    return errorInPlace(new TraceShape(a.turned(true), List.of()), other)
            .orElse(Double.POSITIVE_INFINITY)
        <= LayoutCheck.SHAPE_TOLERANCE;
  }

  private List<Fit> fits() {
    List<Fit> fits = new ArrayList<>();
    if (nominal.holes().size() != drawn.holes().size()) {
      return fits;
    }
    List<Trace> fixed = nominal.outer().edges();
    boolean circle = isCircle(nominal.outer()) && isCircle(drawn.outer());
    for (Move move : circle ? circleMoves() : cornerMoves()) {
      double error = Math.max(loopError(fixed, drawn.outer(), move), holesError(move));
      if (Double.isFinite(error)) {
        boolean free = circle && steadyPoints(nominal).isEmpty();
        OptionalDouble rotation = free ? OptionalDouble.empty() : OptionalDouble.of(move.angle());
        fits.add(new Fit(error, rotation, move));
      }
    }
    return fits;
  }

  private List<Move> cornerMoves() {
    List<Move> moves = new ArrayList<>();
    List<Trace> fixed = nominal.outer().edges();
    List<Trace> found = drawn.outer().edges();
    for (int shift = 0; shift < found.size(); shift++) {
      if (pairUp(fixed, found, shift)) {
        moves.add(leastSquares(fixed, found, shift));
      }
    }
    return moves;
  }

  /** Whole circles: their centres fix the place, and the holes, if off centre, the rotation. */
  private List<Move> circleMoves() {
    Point from = centre(nominal.outer());
    Point to = centre(drawn.outer());
    List<Point> steady = steadyPoints(nominal);
    if (steady.isEmpty()) {
      return List.of(move(0, from, to));
    }
    Point reference = steady.get(0).minus(from);
    return steadyPoints(drawn).stream()
        .map(point -> move(point.minus(to).angle() - reference.angle(), from, to))
        .toList();
  }

  /** Points of holes that turn with the shape: corners, and centres off the outer circle's. */
  private static List<Point> steadyPoints(TraceShape shape) {
    Point middle = centre(shape.outer());
    List<Point> points = new ArrayList<>();
    for (TraceLoop hole : shape.holes()) {
      if (!isCircle(hole)) {
        hole.edges().forEach(edge -> points.add(edge.start()));
      } else if (centre(hole).distance(middle) > LayoutCheck.SHAPE_TOLERANCE) {
        points.add(centre(hole));
      }
    }
    return points;
  }

  private static Move move(double angle, Point from, Point to) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return new Move(
        cos,
        sin,
        to.x() - cos * from.x() + sin * from.y(),
        to.y() - sin * from.x() - cos * from.y());
  }

  private static Move leastSquares(List<Trace> fixed, List<Trace> found, int shift) {
    List<Point> from = new ArrayList<>();
    List<Point> to = new ArrayList<>();
    for (int i = 0; i < fixed.size(); i++) {
      Trace other = found.get((i + shift) % found.size());
      for (double t : new double[] {0, 0.5}) {
        from.add(fixed.get(i).at(t));
        to.add(other.at(t));
      }
    }
    Point a = mean(from);
    Point b = mean(to);
    double dot = 0;
    double cross = 0;
    for (int i = 0; i < from.size(); i++) {
      Point p = from.get(i).minus(a);
      Point q = to.get(i).minus(b);
      dot += p.dot(q);
      cross += p.cross(q);
    }
    return move(Math.atan2(cross, dot), a, b);
  }

  private static Point mean(List<Point> points) {
    double x = points.stream().mapToDouble(Point::x).sum() / points.size();
    double y = points.stream().mapToDouble(Point::y).sum() / points.size();
    return new Point(x, y);
  }

  private static boolean pairUp(List<Trace> fixed, List<Trace> found, int shift) {
    if (fixed.size() != found.size()) {
      return false;
    }
    for (int i = 0; i < fixed.size(); i++) {
      Trace a = fixed.get(i);
      Trace b = found.get((i + shift) % found.size());
      boolean alike =
          a instanceof Trace.Round round
              ? b instanceof Trace.Round other && round.sweep() * other.sweep() > 0
              : b instanceof Trace.Straight;
      if (!alike || Math.abs(a.length() - b.length()) > LENGTH_SLACK) {
        return false;
      }
    }
    return true;
  }

  /** The deviation of the best pairing of a nominal loop, moved, with a drawn one. */
  private static double loopError(List<Trace> fixed, TraceLoop loop, Move move) {
    List<Trace> found = loop.edges();
    double best = Double.POSITIVE_INFINITY;
    for (int shift = 0; shift < found.size(); shift++) {
      if (pairUp(fixed, found, shift)) {
        double worst = 0;
        for (int i = 0; i < fixed.size() && worst < best; i++) {
          Trace other = found.get((i + shift) % found.size());
          worst = Math.max(worst, edgeError(fixed.get(i), other, move));
        }
        best = Math.min(best, worst);
      }
    }
    return best;
  }

  private double holesError(Move move) {
    List<TraceLoop> left = new ArrayList<>(drawn.holes());
    double worst = 0;
    for (TraceLoop hole : nominal.holes()) {
      double best = Double.POSITIVE_INFINITY;
      Optional<TraceLoop> nearest = Optional.empty();
      for (TraceLoop candidate : left) {
        double error = loopError(hole.edges(), candidate, move);
        if (error < best) {
          best = error;
          nearest = Optional.of(candidate);
        }
      }
      nearest.ifPresent(left::remove);
      worst = Math.max(worst, best);
    }
    return worst;
  }

  /** An upper bound of the distance between equal shares of two edges. */
  private static double edgeError(Trace nominal, Trace drawn, Move move) {
    if (!(nominal instanceof Trace.Round a) || !(drawn instanceof Trace.Round b)) {
      // Along straight edges the deviation is greatest at an end.
      return Math.max(
          move.apply(nominal.start()).distance(drawn.start()),
          move.apply(nominal.end()).distance(drawn.end()));
    }
    if (a.isWholeCircle() && b.isWholeCircle()) {
      return move.apply(a.centre()).distance(b.centre()) + Math.abs(a.radius() - b.radius());
    }
    double worst = 0;
    for (int i = 0; i <= SAMPLES; i++) {
      double t = (double) i / SAMPLES;
      worst = Math.max(worst, move.apply(a.at(t)).distance(b.at(t)));
    }
    // Between samples it grows at most by this rate: the difference of the two velocities.
    double turn = move.angle() + a.first() - b.first();
    turn -= 2 * Math.PI * Math.rint(turn / (2 * Math.PI));
    double turned = Math.max(Math.abs(turn), Math.abs(turn + a.sweep() - b.sweep()));
    double rate = Math.abs(a.length() - b.length()) + b.length() * turned;
    return worst + rate / (2 * SAMPLES);
  }

  private static boolean isCircle(TraceLoop loop) {
    return loop.edges().size() == 1
        && loop.edges().get(0) instanceof Trace.Round round
        && round.isWholeCircle();
  }

  private static Point centre(TraceLoop loop) {
    return loop.edges().get(0) instanceof Trace.Round round ? round.centre() : Point.ORIGIN;
  }
}
