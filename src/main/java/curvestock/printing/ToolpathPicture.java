package curvestock.printing;

import curvestock.drawing.Ink;
import curvestock.drawing.Legible;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.machine.Contour;
import curvestock.machine.MachineSheet;
import java.util.List;

/** In what order a machine cuts a sheet: contours numbered where the tool comes down. */
record ToolpathPicture(MachineSheet sheet) implements Illustration {

  private static final Pen EDGE = Pen.of(Ink.CUT, 0.4);
  private static final Pen CUT = Pen.of(Ink.CUT, 0.2);
  private static final Pen LIFTED = new Pen(Ink.MARK, 0.2, "1.5 1");

  /** Of more contours than this not every one is numbered. */
  private static final int MOST_NUMBERS = 60;

  private static final int STEP = 5;

  @Override
  public void place(PageFlow flow, String caption) {
    Box box = sheet.layout().sheet().outline().box();
    flow.flexible(box.height() / box.width(), caption, this::draw);
  }

  private void draw(Paper page, Box room) {
    Outline wood = sheet.layout().sheet().outline();
    Box box = wood.box();
    double factor = room.width() / box.width();
    Point tool = new Point(room.minX(), room.minY());
    Point shift = tool.minus(new Point(box.minX(), box.minY()).times(factor));
    page.area(Miniature.small(wood.outer().edges(), factor, shift), "#ffffff", EDGE);
    int step = sheet.contours().size() <= MOST_NUMBERS ? 1 : STEP;
    int number = 0;
    for (Contour contour : sheet.contours()) {
      contour.runs().forEach(run -> page.line(Miniature.small(run, factor, shift), CUT));
      Point down = contour.start().times(factor).plus(shift);
      page.line(tool, down, LIFTED);
      List<Edge> edges = contour.edges();
      tool = edges.get(edges.size() - 1).end().times(factor).plus(shift);
      number++;
      if (number == 1 || number % step == 0) {
        page.circle(down, 0.5, Ink.CUT, CUT);
        Point stand = down.plus(new Point(0.9, 1.4));
        page.text(Integer.toString(number), stand, Legible.SMALLEST, Anchor.START, true);
      }
    }
  }
}
