package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the arcs that a drawing of straight lines stands for: runs of corners that lie on one
 * circle, each line straying from it by no more than the drawing says. The arcs run through the
 * corners as drawn, so nothing is gained or lost but the stated straying.
 */
final class ArcsFromLines {

  /** Corners lie on their circle but for the file's rounding, in millimetres. */
  private static final double ON_CIRCLE = 0.001;

  /** What rises less than this over its chord is straight, in millimetres. */
  private static final double BEND = 0.01;

  /** Fewer lines are a bevelled corner. */
  private static final int FEWEST_LINES = 3;

  private final List<Point> corners;
  private final double within;

  private ArcsFromLines(List<Point> corners, double within) {
    this.corners = corners;
    this.within = within;
  }

  private record Circle(Point centre, double radius) {}

  /**
   * The loop with arcs where it has them.
   *
   * @param within how far a line may stray from its arc
   * @param gap how long a line may be that stands for a tab and so strays further
   */
  static TraceLoop of(TraceLoop loop, double within, double gap) {
    List<Point> corners = new ArrayList<>();
    for (Trace edge : loop.edges()) {
      if (edge instanceof Trace.Round) {
        return loop;
      }
      if (edge.length() > 0) {
        corners.add(edge.start());
      }
    }
    return new ArcsFromLines(corners, within).loop(gap);
  }

  private TraceLoop loop(double gap) {
    int count = corners.size();
    // Thirds, as the first and the last corner lie too close to tell the centre by.
    Optional<Circle> whole =
        through(corner(0), corner(count / 3), corner(2 * count / 3))
            .filter(circle -> holds(circle, 0, count, gap));
    if (count > FEWEST_LINES && whole.isPresent()) {
      double turn = turn(whole.get().centre());
      if (Math.abs(Math.abs(turn) - 2 * Math.PI) < 1e-3) {
        double first = corners.get(0).minus(whole.get().centre()).angle();
        return new TraceLoop(
            List.of(
                new Trace.Round(
                    whole.get().centre(),
                    whole.get().radius(),
                    first,
                    Math.copySign(2 * Math.PI, turn))));
      }
    }
    List<Trace> edges = new ArrayList<>();
    int first = firstCorner(gap);
    int at = 0;
    while (at < count) {
      int lines = longestRun(first + at, count - at, gap);
      if (lines > 0) {
        Circle circle = circle(first + at, first + at + lines, gap).orElseThrow();
        edges.add(arc(circle, first + at, first + at + lines));
        at += lines;
      } else {
        edges.add(new Trace.Straight(corner(first + at), corner(first + at + 1)));
        at++;
      }
    }
    return new TraceLoop(edges);
  }

  /**
   * How many lines from a corner stand for one arc; 0 if none do. Doubled as long as they do, then
   * halved down, so that a long arc is not followed line by line.
   */
  private int longestRun(int from, int most, double gap) {
    if (most < FEWEST_LINES || circle(from, from + FEWEST_LINES, gap).isEmpty()) {
      return 0;
    }
    int good = FEWEST_LINES;
    int bad = most + 1;
    while (good + 1 < bad) {
      int next = Math.min(2 * good, (good + bad) / 2);
      if (circle(from, from + next, gap).isPresent()) {
        good = next;
      } else {
        bad = next;
      }
    }
    return good;
  }

  private Point corner(int index) {
    return corners.get(index % corners.size());
  }

  /** A corner at which no arc goes through, so that none is begun half-way. */
  private int firstCorner(double gap) {
    for (int i = 0; i < corners.size(); i++) {
      int before = i + corners.size();
      boolean through = false;
      for (int back = 1; back < FEWEST_LINES && !through; back++) {
        through = circle(before - back, before - back + FEWEST_LINES, gap).isPresent();
      }
      if (!through) {
        return i;
      }
    }
    return 0;
  }

  /** The circle through the first, middle and last of a run of corners, if all lie on it. */
  private Optional<Circle> circle(int from, int to, double gap) {
    Optional<Circle> found = through(corner(from), corner((from + to) / 2), corner(to));
    if (found.isEmpty() || !bends(from, to)) {
      return Optional.empty();
    }
    return found.filter(circle -> holds(circle, from, to, gap));
  }

  /** Whether all corners of a run lie on the circle and no line strays too far from it. */
  private boolean holds(Circle circle, int from, int to, double gap) {
    for (int i = from; i <= to; i++) {
      if (Math.abs(corner(i).distance(circle.centre()) - circle.radius()) > ON_CIRCLE) {
        return false;
      }
      if (i < to) {
        double half = corner(i).distance(corner(i + 1)) / 2;
        double root = Math.sqrt(Math.max(0, circle.radius() * circle.radius() - half * half));
        double strays = circle.radius() - root;
        boolean bridge = gap > 0 && 2 * half <= gap + ON_CIRCLE && half < circle.radius() / 2;
        if (strays > within + ON_CIRCLE && !bridge) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether a run of corners bends at all: three in a line lie on some vast circle by rounding. */
  private boolean bends(int from, int to) {
    Point chord = corner(to).minus(corner(from));
    Point middle = corner((from + to) / 2).minus(corner(from));
    // A drawing within less than that bends in finer steps too.
    double bend = Math.min(BEND, within / 2);
    return chord.norm() < bend || Math.abs(chord.cross(middle)) > bend * chord.norm();
  }

  private static Optional<Circle> through(Point a, Point b, Point c) {
    Point u = b.minus(a);
    Point v = c.minus(a);
    double twice = 2 * u.cross(v);
    double size = u.norm() * v.norm();
    if (!(Math.abs(twice) > 1e-9 * size)) {
      return Optional.empty();
    }
    double uu = u.dot(u);
    double vv = v.dot(v);
    Point offset = new Point((v.y() * uu - u.y() * vv) / twice, (u.x() * vv - v.x() * uu) / twice);
    return Optional.of(new Circle(a.plus(offset), offset.norm()));
  }

  private Trace arc(Circle circle, int from, int to) {
    double sweep = 0;
    for (int i = from; i < to; i++) {
      sweep += seen(circle.centre(), corner(i), corner(i + 1));
    }
    double first = corner(from).minus(circle.centre()).angle();
    return new Trace.Round(circle.centre(), circle.radius(), first, sweep);
  }

  private double turn(Point centre) {
    double turn = 0;
    for (int i = 0; i < corners.size(); i++) {
      turn += seen(centre, corner(i), corner(i + 1));
    }
    return turn;
  }

  private static double seen(Point centre, Point from, Point to) {
    Point a = from.minus(centre);
    Point b = to.minus(centre);
    return Math.atan2(a.cross(b), a.dot(b));
  }
}
