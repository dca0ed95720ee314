package curvestock.printing;

import curvestock.drawing.Ink;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Pen;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import java.util.List;

/** Ticks where one edge of a piece runs into the next without a corner that an eye could find. */
final class SmoothTicks {

  /** What they are, once on a paper that has any. */
  static final String NOTE =
      "A short tick across the outline marks where a straight runs into an arc, or the radius"
          + " changes, with no corner to see.";

  private static final Pen TICK = Pen.of(Ink.CUT, 0.2);

  /** Sine of one degree: nobody sees a corner that turns by less. */
  private static final double UNSEEN = 0.0175;

  private SmoothTicks() {}

  /**
   * Draws them.
   *
   * @param outer the piece's outer edges, as they lie on the page
   * @param half how far a tick reaches to either side of the outline, in millimetres
   */
  static void draw(List<Edge> outer, double half, Paper page) {
    for (int i = 0; i < outer.size(); i++) {
      if (isSmooth(outer, i)) {
        Point along = outer.get(i).startDirection();
        Point across = new Point(-along.y(), along.x()).times(half);
        Point at = outer.get(i).start();
        page.line(at.minus(across), at.plus(across), TICK);
      }
    }
  }

  /** Whether any is drawn. */
  static boolean has(List<Edge> outer) {
    for (int i = 0; i < outer.size(); i++) {
      if (isSmooth(outer, i)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isSmooth(List<Edge> outer, int corner) {
    Point before = outer.get((corner + outer.size() - 1) % outer.size()).endDirection();
    Point after = outer.get(corner).startDirection();
    return before.dot(after) > 0 && Math.abs(before.cross(after)) < UNSEEN;
  }
}
