package curvestock.printing;

import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.geometry.Point;

/** A line of known length between two ticks, to check the scale of a print by. */
final class ScaleBar {

  private static final double TICK = 1.5;
  private static final double LETTERS = 2.8;

  private ScaleBar() {}

  /** From its left end to the right. */
  static void across(Paper page, Point from, double length, String words, Pen pen) {
    Point to = from.plus(new Point(length, 0));
    page.line(from, to, pen);
    tick(page, from, new Point(0, TICK), pen);
    tick(page, to, new Point(0, TICK), pen);
    page.text(
        "this bar must measure " + words, to.plus(new Point(2.5, 0)), LETTERS, Anchor.START, false);
  }

  /** From its lower end up; its words one below the other under it, nearer than any other bar. */
  static void up(Paper page, Point from, double length, String words, Pen pen) {
    Point to = from.plus(new Point(0, length));
    page.line(from, to, pen);
    tick(page, from, new Point(TICK, 0), pen);
    tick(page, to, new Point(TICK, 0), pen);
    double below = -1.2 * LETTERS;
    for (String word : words.split(" ", -1)) {
      page.text(word, from.plus(new Point(0, below)), LETTERS, Anchor.MIDDLE, false);
      below -= 1.2 * LETTERS;
    }
  }

  private static void tick(Paper page, Point at, Point reach, Pen pen) {
    page.line(at.minus(reach), at.plus(reach), pen);
  }
}
