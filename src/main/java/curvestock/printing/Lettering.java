package curvestock.printing;

import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Words;
import curvestock.drawing.TextWidth;
import curvestock.geometry.Box;
import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Moves the words of a full-size drawing a little, to where no line runs through them, no other
 * word stands and no page ends: a name that is cut in two by the seam of two pages is lost.
 */
final class Lettering {

  /** Words move no further than this and half their own width: they belong to their place. */
  private static final double FARTHEST = 30;

  private static final double STEP = 2;
  private static final int DIRECTIONS = 16;

  /** Kept free around words. */
  private static final double AIR = 0.8;

  /** What is above and below the middle of capitals, in parts of the font's size. */
  private static final double HALF_HEIGHT = 0.55;

  /** Costs, in millimetres of moving. */
  private static final double ON_SEAM = 500;

  /** For each page that shows a part of the words only, though another shows them whole. */
  private static final double CUT_BY_A_PAGE = 60;

  private static final double ON_WORDS = 250;
  private static final double ON_CROSS = 40;
  private static final double ON_LINE = 3;

  /** Beyond a line words seem to name something else. */
  private static final double OVER_LINE = 40;

  private final TileGrid grid;
  private final List<Point> ink;
  private final List<Box> set = new ArrayList<>();

  private Lettering(TileGrid grid, List<Point> ink) {
    this.grid = grid;
    this.ink = ink;
  }

  /**
   * The drawing with its words moved.
   *
   * @param grid the pages it is printed on
   */
  static Paper clear(Paper drawing, TileGrid grid) {
    Lettering lettering = new Lettering(grid, InkPoints.of(drawing).all());
    Paper cleared = new Paper();
    for (Paper.Thing thing : drawing.things()) {
      if (thing instanceof Paper.Shape shape && shape.closed()) {
        cleared.area(shape.edges(), shape.fill(), shape.pen());
      } else if (thing instanceof Paper.Shape shape) {
        cleared.line(shape.edges(), shape.pen());
      } else if (thing instanceof Words words) {
        Point at = lettering.place(words);
        cleared.text(words.text(), at, words.size(), words.anchor(), words.bold());
      }
    }
    return cleared;
  }

  /** What a drawing's lines and words cover, in small pieces. */
  static List<Box> covered(Paper drawing) {
    List<Box> covered = new ArrayList<>();
    InkPoints.of(drawing).all().forEach(point -> covered.add(Box.of(point, point)));
    for (Paper.Thing thing : drawing.things()) {
      if (thing instanceof Words words) {
        covered.add(box(words, words.at()));
      }
    }
    return covered;
  }

  /** Those of the boxes that are in a place or so near to it. */
  static List<Box> near(List<Box> boxes, Box place, double reach) {
    Box around = grown(place, reach);
    List<Box> near = new ArrayList<>();
    for (Box box : boxes) {
      if (box.overlaps(around)) {
        near.add(box);
      }
    }
    return near;
  }

  /** What the words cover, with some air. */
  static Box box(Words words, Point at) {
    double wide =
        words.size()
            * (words.bold() ? TextWidth.boldEms(words.text()) : TextWidth.ems(words.text()));
    double left =
        words.anchor() == Anchor.START
            ? at.x()
            : at.x() - (words.anchor() == Anchor.MIDDLE ? wide / 2 : wide);
    double half = words.size() * HALF_HEIGHT;
    return new Box(left - AIR, at.y() - half - AIR, left + wide + AIR, at.y() + half + AIR);
  }

  private Point place(Words words) {
    double farthest = FARTHEST + box(words, words.at()).width() / 2;
    Box around = grown(box(words, words.at()), farthest);
    List<Point> near = ink.stream().filter(point -> holds(around, point)).toList();
    Point best = words.at();
    double least = cost(words, best, near);
    for (double away = STEP; away <= farthest && away < least; away += STEP) {
      for (int i = 0; i < DIRECTIONS; i++) {
        // Up and down first, which keeps a name at its place along a level line.
        double angle = Math.PI / 2 + 2 * Math.PI * i / DIRECTIONS;
        Point tried = words.at().plus(Point.polar(away, angle));
        double cost = away + cost(words, tried, near);
        if (cost < least - 1e-9) {
          least = cost;
          best = tried;
        }
      }
    }
    set.add(box(words, best));
    return best;
  }

  private double cost(Words words, Point at, List<Point> near) {
    Box box = box(words, at);
    double cost = isOnOnePage(box) ? 0 : ON_SEAM;
    cost += CUT_BY_A_PAGE * pagesThatCut(box);
    cost += set.stream().anyMatch(box::overlaps) ? ON_WORDS : 0;
    cost += isOnCross(box) ? ON_CROSS : 0;
    cost += ON_LINE * near.stream().filter(point -> holds(box, point)).count();
    return cost + (crosses(words.at(), at, near) ? OVER_LINE : 0);
  }

  /** Whether a page shows all of it. */
  private boolean isOnOnePage(Box box) {
    return grid.tiles().stream().map(grid::window).anyMatch(page -> holds(page, box));
  }

  private long pagesThatCut(Box box) {
    return grid.tiles().stream()
        .map(grid::window)
        .filter(page -> page.overlaps(box) && !holds(page, box))
        .count();
  }

  private static boolean holds(Box page, Box box) {
    return page.minX() <= box.minX()
        && page.minY() <= box.minY()
        && page.maxX() >= box.maxX()
        && page.maxY() >= box.maxY();
  }

  /** Whether a registration cross may lie there. */
  private boolean isOnCross(Box box) {
    return grid.tiles().stream()
        .map(grid::cell)
        .anyMatch(
            cell ->
                List.of(
                        new Point(cell.minX(), cell.minY()),
                        new Point(cell.minX(), cell.maxY()),
                        new Point(cell.maxX(), cell.minY()),
                        new Point(cell.maxX(), cell.maxY()))
                    .stream()
                    .anyMatch(corner -> holds(grown(box, TiledDrawing.ARM), corner)));
  }

  /** Whether it would move to the other side of a line. */
  private static boolean crosses(Point from, Point to, List<Point> near) {
    double far = from.distance(to);
    if (far < 1) {
      return false;
    }
    Point along = to.minus(from).times(1 / far);
    return near.stream()
        .map(point -> point.minus(from))
        .anyMatch(
            point -> {
              double ahead = along.dot(point);
              return ahead > 1 && ahead < far && Math.abs(along.cross(point)) < 0.6;
            });
  }

  private static boolean holds(Box box, Point point) {
    return point.x() >= box.minX()
        && point.x() <= box.maxX()
        && point.y() >= box.minY()
        && point.y() <= box.maxY();
  }

  private static Box grown(Box box, double by) {
    return new Box(box.minX() - by, box.minY() - by, box.maxX() + by, box.maxY() + by);
  }
}
