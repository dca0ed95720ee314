package curvestock.dxf;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.machine.Contour;
import curvestock.machine.Engraving;
import curvestock.machine.MachineSetup.Letters;
import curvestock.machine.MachineSheet;
import curvestock.machine.Operation;
import curvestock.units.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A sheet for a machine, as the text of a DXF file: a layer for each {@link Operation}, the origin
 * at the sheet's lower left corner, y up, in cutting order, numbers in the setup's unit.
 */
public final class SheetDxf {

  /** Comments by which {@code check} knows the form of the cut and the pieces, people the unit. */
  private static final String FORM = "curvestock form: ";

  private static final String UNIT = "curvestock unit: ";

  private static final String PIECE = "curvestock piece ";

  private final MachineSheet sheet;
  private final DxfWriter writer;

  private final Optional<String> warning;

  private SheetDxf(MachineSheet sheet, Optional<String> warning) {
    this.sheet = sheet;
    this.warning = warning;
    this.writer = new DxfWriter(sheet.setup().dxfUnit().millimetres());
  }

  /** The file's text: ASCII, lines ended by carriage return and line feed. */
  public static String of(MachineSheet sheet) {
    return of(sheet, Optional.empty());
  }

  /** The same with a warning to whoever opens it, as a comment. */
  public static String of(MachineSheet sheet, Optional<String> warning) {
    return new SheetDxf(sheet, warning).draw();
  }

  private String draw() {
    LengthUnit unit = sheet.setup().dxfUnit();
    warning.ifPresent(words -> writer.comment("Warning: " + words + "."));
    writer.comment(
        "All numbers are in "
            + (unit == LengthUnit.INCH ? "inches" : "millimetres")
            + "; this release of the format cannot say so itself.");
    writer.comment(UNIT + unit.symbol());
    writer.comment(FORM + sheet.form().words());
    listPieces();
    for (Operation operation : Operation.values()) {
      writer.layer(layer(operation), operation.colourIndex());
    }
    draw(Operation.SHEET, sheet.layout().sheet().outline());
    sheet.layout().sheet().defects().forEach(defect -> draw(Operation.SHEET, defect));
    sheet.marks().forEach(mark -> chain(Operation.MARK, mark, false));
    sheet.labels().forEach(this::draw);
    sheet.ticks().forEach(tick -> chain(Operation.TAB, tick, false));
    for (Contour contour : sheet.contours()) {
      contour.runs().forEach(run -> chain(Operation.CUT, run, contour.closed()));
    }
    return writer.file(sheet.layout().sheet().outline().box());
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

  private void draw(Operation operation, Outline outline) {
    outline.loops().forEach(loop -> chain(operation, loop.edges(), true));
  }

  private void draw(Engraving label) {
    if (sheet.setup().letters() == Letters.TEXT) {
      writer.text(
          layer(Operation.LABEL), label.words(), label.start(), label.height(), label.angle());
    } else {
      label.strokes().forEach(stroke -> chain(Operation.LABEL, stroke, false));
    }
  }

  private void chain(Operation operation, List<Edge> edges, boolean closed) {
    String layer = layer(operation);
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
