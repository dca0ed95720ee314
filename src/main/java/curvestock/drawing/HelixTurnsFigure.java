package curvestock.drawing;

import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.geometry.Point;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.Joint;
import curvestock.helix.build.ScheduleRow;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.GroundPlan;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.List;

/** A small figure for each turn of a helix, side by side below what is on the paper. */
final class HelixTurnsFigure {

  private final HelixPlan plan;
  private final HelixTitle title;
  private final GroundPlan ground;
  private final double half;
  private final double size;
  private final int columns;
  private final Paper paper;

  /**
   * A figure.
   *
   * @param columns how many turns stand side by side at most
   */
  HelixTurnsFigure(HelixPlan plan, HelixTitle title, double size, int columns, Paper paper) {
    this.plan = plan;
    this.title = title;
    this.ground = plan.spec().ground();
    this.half = ground.width().millimetres() / 2;
    this.size = size;
    this.columns = columns;
    this.paper = paper;
  }

  void draw() {
    int count = (int) Math.ceil(plan.climb().turns() - 1e-9);
    double left = paper.minX();
    double width = (paper.maxX() - paper.minX()) / Math.min(columns, Math.max(count, 2));
    double top = paper.minY() - 2 * size;
    double ringWide = ground.outerEdge().times(2).millimetres();
    double wide = ringWide + (alongX() ? ground.straight().millimetres() : 0);
    double high = ringWide + (alongX() ? 0 : ground.straight().millimetres());
    double factor = (width - 6.5 * size) / Math.max(wide, high);
    double cell = high * factor + 7 * size;
    for (int turn = 1; turn <= count; turn++) {
      int column = (turn - 1) % columns;
      int row = (turn - 1) / columns;
      Point middle =
          new Point(left + (column + 0.5) * width, top - (row + 0.5) * cell + 0.8 * size);
      turn(turn, factor, middle, high * factor / 2);
    }
  }

  /** Whether an oval's straights run more along x than along y. */
  private boolean alongX() {
    return Math.abs(Math.sin(ground.entry().radians())) > Math.sqrt(0.5);
  }

  private void turn(int turn, double factor, Point middle, double down) {
    double straight = ground.straight().millimetres();
    // An oval's middle lies half a straight away from the middle of its first half turn.
    Waypoint half = plan.line().at(plan.climb().runPerTurn().millimetres() / 2 - straight);
    Point shift = ground.isOval() ? Point.polar(straight / 2, half.heading()) : Point.ORIGIN;
    PlanFigure figure = new PlanFigure(plan, factor, middle.minus(shift.times(factor)));
    Pen pen = Pen.of(Ink.CUT, size / 16);
    List<ScheduleRow> rows =
        plan.schedule().rows().stream().filter(row -> row.turn() == turn).toList();
    for (ScheduleRow row : rows) {
      BedPiece piece = row.piece();
      String fill = piece.layer() == 1 ? Ink.PIECE : "none";
      paper.area(figure.roadbed(piece.from(), piece.to()), fill, pen);
    }
    for (ScheduleRow row : rows) {
      number(figure, row);
    }
    String rail = rows.isEmpty() ? "" : ", rail top " + height(rows.get(0).railFrom());
    // Below the ring, where no number stands in its way however small the ring is.
    Point below = middle.minus(new Point(0, down + 2.3 * size));
    paper.text("turn " + turn + rail, below, 0.75 * size, Anchor.MIDDLE, true);
  }

  /** As fine as the table of supports has it. */
  private String height(Length height) {
    LengthStyle style = title.style();
    return style.denominator() > 0
        ? LengthStyle.INCH_FRACTIONS.format(height)
        : style.formatMade(height);
  }

  private void number(PlanFigure figure, ScheduleRow row) {
    BedPiece piece = row.piece();
    boolean layers = plan.joints().layers() > 1;
    // On the roadbed if it is wide enough for figures, else inside the ring.
    double narrow =
        2 * half * figure.factor() < 1.3 * size ? -half - 0.8 * size / figure.factor() : 0;
    double off = !layers ? narrow : piece.layer() == 1 ? half + 40 : -half - 40;
    double at = (piece.from() + piece.to()) / 2;
    Point stand = figure.beside(at, off);
    if (layers) {
      HelixPlanDrawing.label(
          paper,
          piece.number(),
          stand,
          figure.outwards(at).times(Math.signum(off)),
          0.8 * size,
          true);
    } else {
      paper.text(piece.number(), stand, 0.9 * size, Anchor.MIDDLE, true);
    }
    if (!layers || piece.layer() == 1) {
      Point out = figure.beside(piece.from(), half);
      Point away = figure.outwards(piece.from());
      String name = piece.lower().map(Joint::name).orElse("entry");
      HelixPlanDrawing.label(
          paper, name, out.plus(away.times(0.5 * size)), away, 0.7 * size, false);
    }
  }
}
