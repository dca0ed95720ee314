package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Joins edges that were cut up for writing (arcs of at most 90°, a start in the middle of an edge)
 * back to whole edges, so that a loop can be compared with its nominal form edge by edge.
 */
final class Joined {

  /** Parts of one edge lie on its joined form within this, in millimetres. */
  private static final double ON_EDGE = 0.002;

  /**
   * Parts of one arc have the same radius but for the rounding of ends, which counts most where
   * parts are short.
   */
  private static final double SAME_RADIUS = 0.005;

  /** Shorter edges are artefacts of rounding. */
  private static final double SHORTEST = 0.001;

  private Joined() {}

  /** The loop with all parts joined, starting at a true corner if it has one. */
  static TraceLoop of(TraceLoop loop) {
    List<Trace> edges = loop.edges().stream().filter(edge -> edge.length() > SHORTEST).toList();
    if (edges.isEmpty()) {
      return loop;
    }
    edges = fromCorner(edges);
    List<Trace> joined = new ArrayList<>();
    int from = 0;
    while (from < edges.size()) {
      int to = from + 1;
      Trace whole = edges.get(from);
      while (to < edges.size()) {
        Trace longer = join(edges.subList(from, to + 1));
        if (!carries(longer, edges.subList(from, to + 1))) {
          break;
        }
        whole = longer;
        to++;
      }
      joined.add(whole);
      from = to;
    }
    return new TraceLoop(joined);
  }

  private static List<Trace> fromCorner(List<Trace> edges) {
    for (int i = 0; i < edges.size(); i++) {
      List<Trace> joint = List.of(edges.get((i + edges.size() - 1) % edges.size()), edges.get(i));
      if (edges.size() == 1 || !carries(join(joint), joint)) {
        List<Trace> turned = new ArrayList<>(edges.subList(i, edges.size()));
        turned.addAll(edges.subList(0, i));
        return turned;
      }
    }
    return edges;
  }

  /** The edge that the parts would make if they belong to one; {@link #carries} judges that. */
  private static Trace join(List<Trace> parts) {
    Trace first = parts.get(0);
    Trace last = parts.get(parts.size() - 1);
    if (!(first instanceof Trace.Round start)) {
      return new Trace.Straight(first.start(), last.end());
    }
    double sweep = 0;
    double x = 0;
    double y = 0;
    double radius = 0;
    for (Trace part : parts) {
      if (part instanceof Trace.Round round) {
        sweep += round.sweep();
        x += round.sweep() * round.centre().x();
        y += round.sweep() * round.centre().y();
        radius += round.sweep() * round.radius();
      }
    }
    Point centre = new Point(x / sweep, y / sweep);
    radius /= sweep;
    double angle = Math.atan2(start.start().y() - centre.y(), start.start().x() - centre.x());
    boolean closes = Math.abs(Math.abs(sweep) - 2 * Math.PI) * radius <= ON_EDGE;
    return new Trace.Round(
        centre, radius, angle, closes ? Math.copySign(2 * Math.PI, sweep) : sweep);
  }

  private static boolean carries(Trace whole, List<Trace> parts) {
    return parts.stream()
        .allMatch(
            part ->
                whole instanceof Trace.Round round
                    ? part instanceof Trace.Round other && carriesRound(round, other)
                    : part instanceof Trace.Straight && carriesStraight(whole, part));
  }

  private static boolean carriesRound(Trace.Round whole, Trace.Round part) {
    return Math.abs(whole.radius() - part.radius()) <= SAME_RADIUS
        && Math.signum(whole.sweep()) == Math.signum(part.sweep())
        && Math.abs(whole.sweep()) < 2 * Math.PI + 1e-9
        && isOn(whole, part.start())
        && isOn(whole, part.at(0.5))
        && isOn(whole, part.end());
  }

  private static boolean isOn(Trace.Round whole, Point point) {
    return Math.abs(whole.centre().distance(point) - whole.radius()) <= ON_EDGE;
  }

  private static boolean carriesStraight(Trace whole, Trace part) {
    Point along = whole.end().minus(whole.start());
    double length = along.norm();
    if (length == 0 || along.dot(part.end().minus(part.start())) <= 0) {
      return false;
    }
    return Math.abs(along.cross(part.start().minus(whole.start()))) <= ON_EDGE * length
        && Math.abs(along.cross(part.end().minus(whole.start()))) <= ON_EDGE * length;
  }
}
