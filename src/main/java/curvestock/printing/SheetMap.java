package curvestock.printing;

import curvestock.drawing.Ink;
import curvestock.drawing.Legible;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.drawing.ShortName;
import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.handwork.ArcMark;
import curvestock.handwork.CuttingOrder.Rip;
import curvestock.handwork.PieceMarks;
import curvestock.layout.Layout;
import java.util.ArrayList;
import java.util.List;

/** A sheet made small: pieces with their numbers and lettered corners, pivots, straight cuts. */
final class SheetMap {

  private static final Pen SHEET = Pen.of(Ink.CUT, 0.4);
  private static final Pen PIECE = Pen.of(Ink.CUT, 0.25);
  private static final Pen PIVOT = Pen.of(Ink.CUT, 0.2);
  private static final Pen RIP = new Pen(Ink.CUT, 0.5, "5 1.5");

  /** Pieces smaller than this on the page, in millimetres, have no lettered corners. */
  private static final double ROOM_FOR_LETTERS = 4.5;

  private static final double TICK = 1;

  /** How far a letter stands from its corner, in millimetres, and degrees to the side of a hole. */
  private static final double[] AWAY = {2.2, 3, 3.8};

  private static final int[] TURNS = {0, 20, -20, 40, -40};

  /** Steps of the grid in which the roomiest place is looked for. */
  private static final int GRID = 24;

  private final Layout layout;
  private final List<String> labels;
  private final double factor;
  private final Point shift;
  private final Paper page;

  SheetMap(Layout layout, List<String> labels, Paper page, Box room) {
    this.layout = layout;
    this.labels = labels;
    this.page = page;
    Box sheet = layout.sheet().outline().box();
    factor = Math.min(room.width() / sheet.width(), room.height() / sheet.height());
    shift =
        new Point(
            (room.minX() + room.maxX() - factor * sheet.width()) / 2 - factor * sheet.minX(),
            room.maxY() - factor * sheet.maxY());
  }

  /** Height that a sheet takes at full text width, but no more than {@code most}. */
  static double height(Layout layout, double width, double most) {
    Box sheet = layout.sheet().outline().box();
    return Math.min(most, width * sheet.height() / sheet.width());
  }

  /** The pieces with their numbers alone. */
  void drawPieces(List<PieceMarks> marks) {
    outline(layout.sheet().outline(), "#ffffff", SHEET);
    layout.sheet().defects().forEach(defect -> outline(defect, Ink.DEFECT, PIECE));
    for (PieceMarks mark : marks) {
      outline(mark.placement().outline(), Ink.PIECE, PIECE);
    }
    marks.forEach(this::number);
  }

  void draw(List<PieceMarks> marks, List<Rip> rips) {
    drawPieces(marks);
    marks.forEach(this::letters);
    int number = 1;
    for (Rip rip : rips) {
      rip(rip, number++);
    }
    Point corner = place(new Point(0, 0));
    page.text("0,0", corner.plus(new Point(-1, -2)), 2.4, Anchor.END, false);
  }

  private void number(PieceMarks marks) {
    double side = smallSide(marks) * factor;
    double size = Math.max(Legible.SMALLEST, Math.min(6, side / 4));
    String label = labels.get(marks.index());
    if (marks.arcs().size() != 2) {
      size = fitting(label, marks);
      if (size < Legible.SMALLEST) {
        label = ShortName.of(label);
        size = Math.max(Legible.SMALLEST, fitting(label, marks));
      }
    }
    page.text(label, place(centre(marks)), size, Anchor.MIDDLE, true);
  }

  /** The font on the page at which the label lies within the piece. */
  private double fitting(String label, PieceMarks marks) {
    double largest = Math.min(6, smallSide(marks) * factor / 4) / factor;
    Outline outline = marks.placement().outline();
    return factor * Legible.within(outline, back(centre(marks)), label, largest, true);
  }

  private void letters(PieceMarks marks) {
    double side = smallSide(marks) * factor;
    if (marks.corners().size() <= MarkingSheets.MOST_CORNERS && side >= ROOM_FOR_LETTERS) {
      List<Edge> outer = small(marks.placement().outline().outer());
      SmoothTicks.draw(outer, TICK, page);
      for (int i = 0; i < outer.size(); i++) {
        Point stand = beside(i, outer, marks);
        page.text(PieceMarks.letter(i), stand, Legible.SMALLEST, Anchor.MIDDLE, false);
      }
    }
    for (ArcMark arc : marks.pivots()) {
      Point pivot = place(arc.pivot());
      Box sheet = layout.sheet().outline().box();
      boolean near = sheet.distance(Box.of(back(arc.pivot()), back(arc.pivot()))) * factor < 5;
      if (near && marks.pivots().size() <= 3) {
        page.line(pivot.minus(new Point(1.2, 0)), pivot.plus(new Point(1.2, 0)), PIVOT);
        page.line(pivot.minus(new Point(0, 1.2)), pivot.plus(new Point(0, 1.2)), PIVOT);
        String name = labels.get(marks.index());
        page.text(name, pivot.plus(new Point(1.5, 1.4)), Legible.SMALLEST, Anchor.START, false);
      }
    }
  }

  /** Where a corner's letter stands: within the corner, but on none of the piece's holes. */
  private Point beside(int corner, List<Edge> outer, PieceMarks marks) {
    Point before = outer.get((corner + outer.size() - 1) % outer.size()).endDirection();
    Point along = before.plus(outer.get(corner).startDirection());
    double inwards = along.angle() + Math.PI / 2;
    List<Point> stands = new ArrayList<>();
    for (int turn : TURNS) {
      for (double away : AWAY) {
        Point step = Point.polar(away, inwards + Math.toRadians(turn));
        stands.add(outer.get(corner).start().plus(step));
      }
    }
    return stands.stream()
        .filter(stand -> marks.holes().stream().allMatch(hole -> clear(stand, hole)))
        .findFirst()
        .orElse(stands.get(0));
  }

  private boolean clear(Point stand, PieceMarks.Hole hole) {
    double rim = hole.diameter().millimetres() / 2 * factor;
    return place(hole.centre()).distance(stand) > rim + Legible.SMALLEST / 2;
  }

  /** From the sheet's corner back to the sheet's own frame. */
  private Point back(Point point) {
    Box sheet = layout.sheet().outline().box();
    return point.plus(new Point(sheet.minX(), sheet.minY()));
  }

  /** On the centre line where there is one, away from the middle where other pivots often lie. */
  private Point centre(PieceMarks marks) {
    if (marks.arcs().size() == 2 && marks.corners().size() == 4) {
      ArcMark a = marks.arcs().get(0);
      ArcMark b = marks.arcs().get(1);
      double radius = (a.radius() + b.radius()) / 2;
      double middle = a.middle().minus(a.pivot()).angle();
      return a.pivot().plus(Point.polar(radius, middle + a.sweep() / 5));
    }
    // Of an angle or a bend the middle can lie outside.
    Box sheet = layout.sheet().outline().box();
    Point inSheet = marks.placement().outline().roomiest(GRID);
    return inSheet.minus(new Point(sheet.minX(), sheet.minY()));
  }

  private static double smallSide(PieceMarks marks) {
    if (marks.arcs().size() == 2) {
      return marks.arcs().get(0).middle().distance(marks.arcs().get(1).middle());
    }
    Box box = marks.placement().outline().box();
    return Math.min(box.width(), box.height());
  }

  private void rip(Rip rip, int number) {
    Point from = rip.upright() ? new Point(rip.at(), rip.from()) : new Point(rip.from(), rip.at());
    Point to = rip.upright() ? new Point(rip.at(), rip.to()) : new Point(rip.to(), rip.at());
    page.line(place(from), place(to), RIP);
    Point end = place(to).plus(rip.upright() ? new Point(4, -2.5) : new Point(-5, 1.8));
    page.text("cut " + number, end, 2.2, Anchor.MIDDLE, true);
  }

  private void outline(Outline outline, String fill, Pen pen) {
    int loop = 0;
    for (Loop one : outline.loops().toList()) {
      page.area(small(one), loop == 0 ? fill : "#ffffff", pen);
      loop++;
    }
  }

  private List<Edge> small(Loop loop) {
    return Miniature.small(loop.edges(), factor, shift);
  }

  private Point at(Point inSheet) {
    return inSheet.times(factor).plus(shift);
  }

  /** A point given from the sheet's corner. */
  private Point place(Point fromCorner) {
    return at(back(fromCorner));
  }
}
