package curvestock.printing;

import curvestock.drawing.Ink;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.geometry.Arc;
import curvestock.geometry.Box;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;

/** The template of a piece of which only the outline is known: listed pieces, plates, bases. */
final class PlainTemplate {

  private static final Pen CUT = Pen.of(Ink.CUT, 0.35);
  private static final Pen CENTRE = new Pen(Ink.MARK, 0.25, "12 3 2 3");
  private static final Pen TICK = Pen.of(Ink.MARK, 0.15);
  private static final double LETTERS = 4;

  private final Piece piece;
  private final int count;
  private final Ruler ruler;
  private final Paper paper = new Paper();
  private final List<String> notes = new ArrayList<>();

  private PlainTemplate(Demand demand, LengthStyle style) {
    this.piece = demand.piece();
    this.count = demand.count();
    this.ruler = new Ruler(style);
  }

  static PaperTemplate of(Demand demand, LengthStyle style) {
    return new PlainTemplate(demand, style).template();
  }

  private PaperTemplate template() {
    notes.add("Piece " + piece.id() + " is needed " + (count == 1 ? "once." : count + " times."));
    notes.add(
        "Full line: cut on its waste side."
            + (sector() ? " Long dashes: centre line." : "")
            + " The printed side is the upper side.");
    Pose view = view();
    Outline outline = piece.shape().outline().at(view);
    for (Loop loop : outline.loops().toList()) {
      paper.area(loop.edges(), "none", CUT);
    }
    DrillCrosses.draw(piece.shape(), view, ruler, paper).ifPresent(notes::add);
    Point middle = new Point(0, 0);
    if (piece.shape().blank() instanceof AnnularSector sector) {
      middle = view.apply(new Point(sector.radius().millimetres(), 0));
      centreLine(sector, view);
      radii(sector, middle);
    } else {
      Box box = outline.box();
      middle = new Point((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
    }
    paper.text(
        piece.id() + "  " + piece.name(), middle.plus(new Point(0, 6)), 5, Anchor.MIDDLE, true);
    if (!(piece.shape().blank() instanceof AnnularSector whole && whole.isRing())) {
      notes.add(CornerLetters.draw(outline, paper, Ruler.forHand(ruler.style())));
    }
    return new PaperTemplate(piece.id(), piece.id() + ", " + piece.name(), count, notes, paper);
  }

  private boolean sector() {
    return piece.shape().blank() instanceof AnnularSector;
  }

  /** A sector with its bulge up, anything else as it was given. */
  private Pose view() {
    return sector() ? new Pose(0, 0, Math.PI / 2) : Pose.HOME;
  }

  private void centreLine(AnnularSector sector, Pose view) {
    double half = sector.sweep().radians() / 2;
    Arc line = new Arc(Point.ORIGIN, sector.radius().millimetres(), -half, 2 * half);
    paper.line(List.of(line.at(view)), CENTRE);
    double tick = sector.width().millimetres() / 10;
    double radius = sector.radius().millimetres();
    Segment middle = new Segment(new Point(radius - tick, 0), new Point(radius + tick, 0));
    paper.line(List.of(middle.at(view)), TICK);
  }

  private void radii(AnnularSector sector, Point middle) {
    double half = sector.width().millimetres() / 2;
    note("outer edge, R ", sector.outerRadius(), middle.plus(new Point(0, half - 5)));
    note("centre line, R ", sector.radius(), middle.plus(new Point(0, -6)));
    note("inner edge, R ", sector.innerRadius(), middle.plus(new Point(0, 5 - half)));
  }

  private void note(String words, Length radius, Point at) {
    paper.text(words + ruler.of(radius), at, LETTERS, Anchor.MIDDLE, false);
  }
}
