package curvestock.dxf;

import curvestock.geometry.Arc;
import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.machine.Caption;
import curvestock.machine.Contour;
import curvestock.machine.Drilling;
import curvestock.machine.Engraving;
import curvestock.machine.MachineSetup.Letters;
import curvestock.machine.MachineSheet;
import curvestock.machine.Operation;
import curvestock.machine.Pocket;
import curvestock.machine.Turning;
import curvestock.units.Length;
import curvestock.units.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * A sheet for a machine, as the text of a DXF file: a layer for each {@link Operation}, the origin
 * at the sheet's lower left corner, y up, in cutting order, numbers in the setup's unit.
 */
public final class SheetDxf {

  /** Comments by which {@code check} knows the form of the cut and the pieces, people the unit. */
  private static final String FORM = "curvestock form: ";

  private static final String UNIT = "curvestock unit: ";

  private static final String PIECE = "curvestock piece ";

  private static final String COLOUR = "curvestock colour ";

  private static final String SIDE = "curvestock side: bottom";

  /** White or black, whichever shows. */
  private static final int ZERO_COLOUR = 7;

  /** Height of the title's letters where the margin has room for them, in millimetres. */
  private static final double TITLE = 4;

  private final MachineSheet sheet;
  private final DxfWriter writer;

  private SheetDxf(MachineSheet sheet) {
    this.sheet = sheet;
    this.writer = new DxfWriter(sheet.setup().dxfUnit().millimetres());
  }

  /** The file's text: ASCII, lines ended by carriage return and line feed. */
  public static String of(MachineSheet sheet) {
    return new SheetDxf(sheet).draw();
  }

  /**
   * The file of what is done from below, mirrored: for the sheet turned over.
   *
   * @throws java.util.NoSuchElementException if nothing is done from below
   */
  public static String underside(MachineSheet sheet) {
    return new SheetDxf(sheet).drawUnderside();
  }

  private String draw() {
    comments(false);
    writer.comment(FORM + sheet.form().words());
    listPieces();
    layers(sheet.machining().pockets(Operation.POCKET_TOP), sheet.machining().drillings());
    draw(Operation.SHEET, sheet.layout().sheet().outline());
    sheet.layout().sheet().defects().forEach(defect -> draw(Operation.SHEET, defect));
    sheet.machining().remnant().ifPresent(this::drawRemnant);
    title(false);
    sheet.machining().turning().ifPresent(this::drawTurning);
    sheet.marks().forEach(mark -> chain(layer(Operation.MARK), mark, false));
    Set<Engraving> numbers = Set.copyOf(sheet.labels());
    sheet.letters().forEach(each -> draw(each, numbers.contains(each)));
    drawPockets(Operation.POCKET_TOP, outline -> outline);
    drawDrillings(sheet.machining().drillings());
    sheet.ticks().forEach(tick -> chain(layer(Operation.TAB), tick, false));
    for (Contour contour : sheet.contours()) {
      contour.runs().forEach(run -> chain(layer(Operation.CUT), run, contour.closed()));
    }
    return writer.file(box());
  }

  private String drawUnderside() {
    Turning turning = sheet.machining().turning().orElseThrow();
    comments(true);
    writer.comment(SIDE);
    layers(sheet.machining().pockets(Operation.POCKET_BOTTOM), turning.holes());
    draw(Operation.SHEET, turning.line().apply(sheet.layout().sheet().outline()));
    sheet
        .layout()
        .sheet()
        .defects()
        .forEach(defect -> draw(Operation.SHEET, turning.line().apply(defect)));
    title(true);
    chain(layer(Operation.FLIP), List.of(turning.axis(box())), false);
    drawPockets(Operation.POCKET_BOTTOM, turning.line()::apply);
    drawDrillings(turning.holes());
    return writer.file(box());
  }

  private Box box() {
    return sheet.layout().sheet().outline().box();
  }

  private void comments(boolean bottom) {
    LengthUnit unit = sheet.setup().dxfUnit();
    Caption caption = sheet.machining().caption();
    writer.comment(caption.title(sheet, bottom));
    caption.facts(sheet, bottom).forEach(writer::comment);
    writer.comment(
        "All numbers are in " + (unit == LengthUnit.INCH ? "inches" : "millimetres") + ".");
    writer.comment(UNIT + unit.symbol());
  }

  /** Layer 0, which every file must have, then one for each operation, depth and diameter. */
  private void layers(List<Pocket> pockets, List<Drilling> drillings) {
    writer.layer("0", ZERO_COLOUR);
    ColourIndex colours = new ColourIndex();
    for (Operation operation : Operation.values()) {
      String colour = sheet.setup().colours().get(operation);
      int index = colours.take(colour);
      Set<String> names = new TreeSet<>();
      switch (operation) {
        case POCKET_TOP, POCKET_BOTTOM ->
            pockets.stream()
                .filter(p -> p.operation() == operation)
                .forEach(p -> names.add(layer(p)));
        case DRILL -> drillings.forEach(hole -> names.add(layer(hole)));
        default -> names.add(layer(operation));
      }
      for (String name : names) {
        writer.layer(name, index);
        writer.comment(COLOUR + name + ": " + colour);
      }
    }
  }

  /** A DXF's outlines bear no names, so the head says which piece goes through which point. */
  private void listPieces() {
    for (Contour contour : sheet.contours()) {
      if (contour.hole() == 0) {
        writer.comment(
            String.format(
                Locale.ROOT,
                "%s%d: %s at %.4f %.4f mm",
                PIECE,
                contour.number(),
                contour.placement().piece().id(),
                contour.start().x(),
                contour.start().y()));
      }
    }
  }

  private static String layer(Operation operation) {
    return operation.id().toUpperCase(Locale.ROOT);
  }

  private String layer(Pocket pocket) {
    return layer(pocket.operation()) + "-" + size(pocket.depth());
  }

  private String layer(Drilling hole) {
    return layer(Operation.DRILL) + "-" + size(hole.diameter());
  }

  /** In the file's unit, such as {@code 6_05MM}: the format's names have letters, digits, $ _ -. */
  private String size(Length length) {
    LengthUnit unit = sheet.setup().dxfUnit();
    String format = unit == LengthUnit.INCH ? "%.3f%s" : "%.2f%s";
    return String.format(Locale.ROOT, format, length.in(unit), unit.symbol())
        .replace('.', '_')
        .toUpperCase(Locale.ROOT);
  }

  /** In the margin below, or as near it as there is room, for those who open the file. */
  private void title(boolean bottom) {
    double margin = sheet.layout().cutting().margin().millimetres();
    double height = Math.max(1, Math.min(TITLE, margin / 2));
    Point start = new Point(box().minX() + height, box().minY() + height / 2);
    String words = sheet.machining().caption().title(sheet, bottom);
    writer.text(layer(Operation.TITLE), words, start, height, 0);
  }

  private void drawRemnant(Box rest) {
    Outline edge =
        Outline.rectangle(rest.width(), rest.height()).at(new Pose(rest.minX(), rest.minY(), 0));
    draw(Operation.REMNANT, edge);
  }

  private void drawTurning(Turning turning) {
    chain(layer(Operation.FLIP), List.of(turning.axis(box())), false);
    turning.holes().forEach(hole -> circle(layer(Operation.FLIP), hole));
  }

  private void drawPockets(Operation operation, UnaryOperator<Outline> seen) {
    for (Pocket pocket : sheet.machining().pockets(operation)) {
      chain(layer(pocket), seen.apply(pocket.area()).outer().edges(), true);
    }
  }

  private void drawDrillings(List<Drilling> drillings) {
    drillings.forEach(hole -> circle(layer(hole), hole));
  }

  private void circle(String layer, Drilling hole) {
    writer.circle(layer, hole.centre(), hole.diameter().millimetres() / 2);
  }

  private void draw(Operation operation, Outline outline) {
    outline.loops().forEach(loop -> chain(layer(operation), loop.edges(), true));
  }

  /** Words beside laps are strokes, whatever numbers are. */
  private void draw(Engraving label, boolean isNumber) {
    if (isNumber && sheet.setup().letters() == Letters.TEXT) {
      writer.text(
          layer(Operation.LABEL), label.words(), label.start(), label.height(), label.angle());
    } else {
      strokes(label);
    }
  }

  private void strokes(Engraving letters) {
    letters.strokes().forEach(stroke -> chain(layer(Operation.LABEL), stroke, false));
  }

  private void chain(String layer, List<Edge> edges, boolean closed) {
    if (closed && edges.stream().allMatch(edge -> isOnCircle(edge, edges.get(0)))) {
      Arc arc = (Arc) edges.get(0);
      writer.circle(layer, arc.centre(), arc.radius());
    } else if (sheet.setup().dxfJoined() && (closed || edges.size() > 1)) {
      writer.polyline(layer, edges, closed);
    } else {
      writer.separate(layer, whole(edges, closed));
    }
  }

  private static boolean isOnCircle(Edge edge, Edge first) {
    return edge instanceof Arc arc
        && first instanceof Arc other
        && arc.radius() == other.radius()
        && arc.centre().distance(other.centre()) < 1e-6;
  }

  /** Single edges need no start off the corners: the two halves of the first edge become one. */
  private static List<Edge> whole(List<Edge> edges, boolean closed) {
    Edge first = edges.get(0);
    Edge last = edges.get(edges.size() - 1);
    if (!closed || edges.size() < 3 || !goOn(last, first)) {
      return edges;
    }
    List<Edge> whole = new ArrayList<>(edges.subList(1, edges.size() - 1));
    whole.add(joined(last, first));
    return whole;
  }

  private static boolean goOn(Edge last, Edge first) {
    boolean alike = last instanceof Arc == first instanceof Arc;
    return alike && Math.abs(last.endDirection().cross(first.startDirection())) < 1e-9;
  }

  private static Edge joined(Edge last, Edge first) {
    return last instanceof Arc arc && first instanceof Arc next
        ? new Arc(arc.centre(), arc.radius(), arc.startAngle(), arc.sweep() + next.sweep())
        : new curvestock.geometry.Segment(last.start(), first.end());
  }
}
