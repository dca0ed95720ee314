package curvestock.drawing;

import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.machine.Contour;
import curvestock.machine.Engraving;
import curvestock.machine.MachineSetup.Letters;
import curvestock.machine.MachineSheet;
import curvestock.machine.Operation;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.w3c.dom.Element;

/**
 * A sheet for a machine, as an SVG text: the document is exactly as large as the sheet, width and
 * height in millimetres, a matching viewBox, 1 user unit = 1 mm, nothing transformed, clipped,
 * filled or styled by sheets of rules.
 *
 * <p>A group for each {@link Operation}, in the order of work: {@code sheet} (not to be cut),
 * {@code mark}, {@code label}, {@code tab} (not to be cut), {@code cut}. In {@code cut} a path for
 * each contour, in cutting order: the outside of a piece has the id {@code piece-1}, {@code
 * piece-2} ... in the layout's order, its kind in {@code data-piece} and its pose in {@code
 * data-pose}; a hole has {@code piece-1-hole-1} and its owner in {@code data-hole-of}. The group's
 * {@code data-form} says how outlines differ from the finished size.
 */
public final class MachineDrawing {

  private final MachineSheet sheet;
  private final Box box;
  private final PathData paths;
  private final SvgCanvas canvas;

  private final Optional<String> warning;

  private MachineDrawing(MachineSheet sheet, Optional<String> warning) {
    this.sheet = sheet;
    this.warning = warning;
    box = sheet.layout().sheet().outline().box();
    paths = new PathData(box.maxY());
    canvas = new SvgCanvas(box.minX(), 0, box.width(), box.height());
  }

  /** The drawing's text. */
  public static String svg(MachineSheet sheet) {
    return svg(sheet, Optional.empty());
  }

  /** The same with a warning to whoever opens it, in its description. */
  public static String svg(MachineSheet sheet, Optional<String> warning) {
    return new MachineDrawing(sheet, warning).draw();
  }

  private String draw() {
    canvas.addText(canvas.root(), "desc", description());
    drawSheet();
    drawLines(Operation.MARK, sheet.marks());
    drawLabels();
    drawLines(Operation.TAB, sheet.ticks());
    drawCuts();
    return canvas.text();
  }

  private String description() {
    boolean arcs = sheet.setup().linesWithin().isEmpty();
    double grown = sheet.form().grown();
    return warning.map(words -> "Warning: " + words + ". ").orElse("")
        + "One user unit is one millimetre. A sheet point (x, y), measured from the sheet's lower"
        + " left corner with y up, is drawn at (x, H - y) with H = "
        + SvgNumber.of(box.maxY())
        + ". "
        + (arcs
            ? "Arcs are true circular arcs of at most 90 degrees each. "
            : "Arcs are written as straight lines: their corners lie on the arc, between them they"
                + " stray towards its centre by at most "
                + SvgNumber.of(sheet.form().linesWithin())
                + " mm. ")
        + (grown == 0
            ? "Outlines are the finished size: the tool's radius or half its kerf is not yet added."
            : "Outlines are the path of the tool's middle: grown by half the kerf, "
                + SvgNumber.of(grown)
                + " mm. Do not offset them again.");
  }

  private Element group(Operation operation) {
    return canvas.add(
        canvas.root(),
        "g",
        "id",
        operation.id(),
        "fill",
        "none",
        "stroke",
        sheet.setup().colours().get(operation),
        "stroke-width",
        SvgNumber.of(sheet.setup().lineWidth().millimetres()));
  }

  private void drawSheet() {
    Element group = group(Operation.SHEET);
    canvas.add(group, "path", "id", "edge", "d", paths.closed(sheet.layout().sheet().outline()));
    int number = 0;
    for (Outline defect : sheet.layout().sheet().defects()) {
      number++;
      canvas.add(group, "path", "id", "defect-" + number, "d", paths.closed(defect));
    }
  }

  private void drawLines(Operation operation, List<List<Edge>> lines) {
    if (lines.isEmpty()) {
      return;
    }
    Element group = group(operation);
    lines.forEach(line -> canvas.add(group, "path", "d", paths.open(line)));
  }

  private void drawLabels() {
    if (sheet.labels().isEmpty()) {
      return;
    }
    Element group = group(Operation.LABEL);
    for (Engraving label : sheet.labels()) {
      if (sheet.setup().letters() == Letters.TEXT) {
        canvas.addText(
            group,
            "text",
            label.words(),
            "x",
            SvgNumber.of(label.start().x()),
            "y",
            SvgNumber.of(box.maxY() - label.start().y()),
            "font-family",
            "sans-serif",
            "font-size",
            SvgNumber.of(label.height()));
      } else {
        String data = label.strokes().stream().map(paths::open).collect(Collectors.joining(" "));
        canvas.add(group, "path", "d", data);
      }
    }
  }

  private void drawCuts() {
    Element group = group(Operation.CUT);
    group.setAttributeNS(null, "data-form", sheet.form().words());
    for (Contour contour : sheet.contours()) {
      Element path = canvas.add(group, "path", "id", contour.id());
      if (contour.hole() == 0) {
        path.setAttributeNS(null, "data-piece", contour.placement().piece().id());
        path.setAttributeNS(null, "data-pose", pose(contour.placement().pose()));
      } else {
        path.setAttributeNS(null, "data-hole-of", "piece-" + contour.number());
      }
      String data =
          contour.closed()
              ? paths.closed(contour.runs().get(0))
              : contour.runs().stream().map(paths::open).collect(Collectors.joining(" "));
      path.setAttributeNS(null, "d", data);
    }
  }

  /** The pose in millimetres and degrees, as {@code data-pose} has it. */
  static String pose(Pose pose) {
    double degrees = Math.toDegrees(pose.rotation()) % 360;
    return String.join(
        " ", SvgNumber.of(pose.x()), SvgNumber.of(pose.y()), SvgNumber.of(degrees, 6));
  }
}
