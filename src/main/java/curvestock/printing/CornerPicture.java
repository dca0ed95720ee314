package curvestock.printing;

import curvestock.drawing.Ink;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.drawing.Paper.Words;
import curvestock.geometry.Arc;
import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.handwork.PieceMarks;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece as large as the text is wide, with the letter of every corner and the number of holes.
 */
final class CornerPicture {

  private static final Pen LINE = Pen.of(Ink.CUT, 0.25);
  private static final Pen HOLE = Pen.of(Ink.CUT, 0.15);
  private static final double SIZE = 2.4;
  private static final double TICK = 1;

  /** Kept free around the piece for letters beside it. */
  private static final double RIM = 5;

  /** How far letters stand from their corners: near if there is room. */
  private static final double[] AWAY = {2, 2.6, 3.2, 3.8, 4.5};

  private static final int DIRECTIONS = 24;

  /** Costs of a place. */
  private static final double ON_WORDS = 100;

  private static final double ON_LINE = 30;

  /** For each millimetre by which another corner is nearer to a letter than its own. */
  private static final double AMBIGUOUS = 20;

  /** Angles that are tried for the flattest. */
  private static final int TURNS = 36;

  /** Part of the text's width that shows a letter at every corner of an ear. */
  private static final double WIDTH = 0.75;

  private static final double LEAST_ASPECT = 0.1;

  private final Outline outline;

  /** Lies as flat as the piece can. */
  CornerPicture(Outline piece) {
    Outline flattest = piece;
    for (int i = 1; i < TURNS; i++) {
      Outline turned = piece.at(new Pose(0, 0, Math.PI * i / TURNS));
      flattest = aspect(turned) < aspect(flattest) ? turned : flattest;
    }
    outline = flattest;
  }

  private static double aspect(Outline outline) {
    return outline.box().height() / outline.box().width();
  }

  /** Height over width of the place that it takes. */
  double aspect() {
    return WIDTH * Math.max(LEAST_ASPECT, aspect(outline));
  }

  void draw(Paper page, Box room) {
    Box box = outline.box();
    double factor =
        Math.min((room.width() - 2 * RIM) / box.width(), (room.height() - 2 * RIM) / box.height());
    Point middle = new Point(room.minX() + room.maxX(), room.minY() + room.maxY()).times(0.5);
    Point shift =
        middle.minus(new Point(box.minX() + box.maxX(), box.minY() + box.maxY()).times(factor / 2));
    List<Edge> outer = Miniature.small(outline.outer().edges(), factor, shift);
    page.area(outer, Ink.PIECE, LINE);
    SmoothTicks.draw(outer, TICK, page);
    List<Box> set = new ArrayList<>();
    int number = 1;
    for (Loop hole : outline.holes()) {
      List<Edge> rim = Miniature.small(hole.edges(), factor, shift);
      page.area(rim, "#ffffff", HOLE);
      Point at = rim.get(0) instanceof Arc arc ? arc.centre() : rim.get(0).start();
      set.add(new Box(at.x() - 0.8, at.y() - 0.8, at.x() + 0.8, at.y() + 0.8));
      write(page, Integer.toString(number++), at, List.of(at), outer, set);
    }
    List<Point> corners = outer.stream().map(Edge::start).toList();
    for (int i = 0; i < corners.size(); i++) {
      write(page, PieceMarks.letter(i), corners.get(i), corners, outer, set);
    }
  }

  /** Beside its point, where it covers nothing and can be taken for no other's. */
  private static void write(
      Paper page, String text, Point of, List<Point> others, List<Edge> lines, List<Box> set) {
    Point best = of;
    double least = Double.POSITIVE_INFINITY;
    for (double away : AWAY) {
      for (int i = 0; i < DIRECTIONS; i++) {
        Point at = of.plus(Point.polar(away, 2 * Math.PI * i / DIRECTIONS));
        Box box = Lettering.box(new Words(text, at, SIZE, Anchor.MIDDLE, false), at);
        double near = others.stream().mapToDouble(at::distance).min().orElse(away);
        double cost = away + AMBIGUOUS * (away - near);
        cost += set.stream().anyMatch(box::overlaps) ? ON_WORDS : 0;
        cost += lines.stream().anyMatch(line -> line.distanceTo(at) < SIZE * 0.55) ? ON_LINE : 0;
        if (cost < least - 1e-9) {
          least = cost;
          best = at;
        }
      }
    }
    set.add(Lettering.box(new Words(text, best, SIZE, Anchor.MIDDLE, false), best));
    page.text(text, best, SIZE, Anchor.MIDDLE, false);
  }
}
