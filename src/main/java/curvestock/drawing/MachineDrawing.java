package curvestock.drawing;

import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
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
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.w3c.dom.Element;

/**
 * A sheet for a machine, as an SVG text: the document is exactly as large as the sheet, width and
 * height in millimetres, a matching viewBox, 1 user unit = 1 mm, nothing transformed, clipped,
 * filled or styled by sheets of rules.
 *
 * <p>A group for each {@link Operation}, in the order of work, which vector editors show as a
 * layer: {@code sheet}, {@code remnant}, {@code flip} (not to be cut), {@code mark}, {@code label},
 * {@code pocket-top}, {@code drill}, {@code tab} (not to be cut), {@code cut}. In {@code cut} a
 * path for each contour, in cutting order: the outside of a piece has the id {@code piece-1},
 * {@code piece-2} ... in the layout's order, its kind in {@code data-piece} and its pose in {@code
 * data-pose}; a hole has {@code piece-1-hole-1} and its owner in {@code data-hole-of}. The group's
 * {@code data-form} says how outlines differ from the finished size. Holes to be drilled and
 * pockets have the finished size and their own, whatever the form; the former have their diameter
 * in {@code data-diameter}, the latter their depth in {@code data-depth}, both in millimetres.
 *
 * <p>What is done from below is a drawing of its own ({@link #underside}), mirrored over the line
 * in its group {@code flip}.
 */
public final class MachineDrawing {

  private final MachineSheet sheet;
  private final Box box;
  private final PathData paths;
  private final SvgCanvas canvas;

  private MachineDrawing(MachineSheet sheet) {
    this.sheet = sheet;
    box = sheet.layout().sheet().outline().box();
    paths = new PathData(box.maxY());
    canvas = new SvgCanvas(box.minX(), 0, box.width(), box.height());
  }

  /** The drawing's text. */
  public static String svg(MachineSheet sheet) {
    return new MachineDrawing(sheet).draw();
  }

  /**
   * The drawing of what is done from below, mirrored: for the sheet turned over.
   *
   * @throws java.util.NoSuchElementException if nothing is done from below
   */
  public static String underside(MachineSheet sheet) {
    return new MachineDrawing(sheet).drawUnderside();
  }

  private String draw() {
    addWords(false);
    drawSheet(outline -> outline);
    drawRemnant();
    sheet.machining().turning().ifPresent(this::drawTurning);
    drawLines(Operation.MARK, sheet.marks());
    drawLabels();
    drawPockets(Operation.POCKET_TOP, outline -> outline);
    drawDrillings(sheet.machining().drillings());
    drawLines(Operation.TAB, sheet.ticks());
    drawCuts();
    return canvas.text();
  }

  private String drawUnderside() {
    Turning turning = sheet.machining().turning().orElseThrow();
    canvas.root().setAttributeNS(null, "data-side", "bottom");
    addWords(true);
    drawSheet(turning.line()::apply);
    Element flip = group(Operation.FLIP);
    canvas.add(flip, "path", "id", "axis", "d", paths.open(List.of(turning.axis(box))));
    drawPockets(Operation.POCKET_BOTTOM, turning.line()::apply);
    drawDrillings(turning.holes());
    return canvas.text();
  }

  private void addWords(boolean bottom) {
    Caption caption = sheet.machining().caption();
    canvas.addText(canvas.root(), "title", caption.title(sheet, bottom));
    String warning = caption.warning().map(words -> "Warning: " + words + ". ").orElse("");
    canvas.addText(
        canvas.root(), "desc", warning + (bottom ? about() : about() + " " + description()));
    canvas.addText(canvas.root(), "metadata", String.join("; ", caption.facts(sheet, bottom)));
  }

  private String about() {
    return "One user unit is one millimetre. A sheet point (x, y), measured from the sheet's lower"
        + " left corner with y up, is drawn at (x, H - y) with H = "
        + SvgNumber.of(box.maxY())
        + ".";
  }

  private String description() {
    boolean arcs = sheet.setup().linesWithin().isEmpty();
    double grown = sheet.form().grown();
    return (arcs
            ? "Arcs are true circular arcs of at most 90 degrees each. "
            : "Arcs are short straight lines with their ends on the arc; between these they run inside"
                + " it by at most "
                + SvgNumber.of(sheet.form().linesWithin())
                + " mm. ")
        + (grown == 0
            ? "Outlines are at finished size: the tool's radius or half its kerf is not yet added."
            : "Outlines are the path of the tool's centre: offset by half the kerf, "
                + SvgNumber.of(grown)
                + " mm. Do not offset them again.");
  }

  private Element group(Operation operation) {
    return group(canvas.root(), operation, operation.id(), operation.id());
  }

  private Element group(Element parent, Operation operation, String id, String name) {
    Element group =
        canvas.add(
            parent,
            "g",
            "id",
            id,
            "fill",
            "none",
            "stroke",
            sheet.setup().colours().get(operation),
            "stroke-width",
            SvgNumber.of(sheet.setup().lineWidth().millimetres()));
    canvas.makeLayer(group, name);
    return group;
  }

  private void drawSheet(UnaryOperator<Outline> seen) {
    Element group = group(Operation.SHEET);
    Outline edge = seen.apply(sheet.layout().sheet().outline());
    canvas.add(group, "path", "id", "edge", "d", paths.closed(edge));
    int number = 0;
    for (Outline defect : sheet.layout().sheet().defects()) {
      number++;
      canvas.add(group, "path", "id", "defect-" + number, "d", paths.closed(seen.apply(defect)));
    }
  }

  private void drawRemnant() {
    sheet
        .machining()
        .remnant()
        .ifPresent(
            rest -> {
              Outline edge =
                  Outline.rectangle(rest.width(), rest.height())
                      .at(new Pose(rest.minX(), rest.minY(), 0));
              canvas.add(group(Operation.REMNANT), "path", "d", paths.closed(edge));
            });
  }

  private void drawTurning(Turning turning) {
    Element group = group(Operation.FLIP);
    canvas.add(group, "path", "id", "axis", "d", paths.open(List.of(turning.axis(box))));
    for (Drilling dowel : turning.holes()) {
      canvas.add(group, "path", "id", dowel.id(), "d", paths.closed(dowel.rim().edges()));
    }
  }

  private void drawPockets(Operation operation, UnaryOperator<Outline> seen) {
    List<Pocket> pockets = sheet.machining().pockets(operation);
    if (pockets.isEmpty()) {
      return;
    }
    String depth = SvgNumber.of(pockets.get(0).depth().millimetres());
    String name = operation.id() + " " + depth + " mm deep";
    Element group = group(canvas.root(), operation, operation.id(), name);
    for (Pocket pocket : pockets) {
      canvas.add(
          group,
          "path",
          "id",
          pocket.id(),
          "data-depth",
          SvgNumber.of(pocket.depth().millimetres()),
          "d",
          paths.closed(seen.apply(pocket.area())));
    }
  }

  /** A layer for each diameter, the smallest first, within the layer of all. */
  private void drawDrillings(List<Drilling> drillings) {
    if (drillings.isEmpty()) {
      return;
    }
    Element all = group(Operation.DRILL);
    Map<String, List<Drilling>> sizes =
        drillings.stream()
            .sorted(Comparator.comparingDouble(each -> each.diameter().millimetres()))
            .collect(
                Collectors.groupingBy(
                    each -> SvgNumber.of(each.diameter().millimetres()),
                    LinkedHashMap::new,
                    Collectors.toList()));
    sizes.forEach(
        (size, holes) -> {
          String name = "drill " + size + " mm";
          Element group = group(all, Operation.DRILL, name.replace(' ', '-'), name);
          holes.forEach(hole -> drawDrilling(group, hole, size));
        });
  }

  private void drawDrilling(Element group, Drilling hole, String size) {
    Element path = canvas.add(group, "path", "id", hole.id(), "data-diameter", size);
    if (hole.number() > 0) {
      path.setAttributeNS(null, "data-hole-of", "piece-" + hole.number());
    }
    path.setAttributeNS(null, "d", paths.closed(hole.rim().edges()));
  }

  private void drawLines(Operation operation, List<List<Edge>> lines) {
    if (lines.isEmpty()) {
      return;
    }
    Element group = group(operation);
    lines.forEach(line -> canvas.add(group, "path", "d", paths.open(line)));
  }

  private void drawLabels() {
    if (sheet.labels().isEmpty() && sheet.machining().words().isEmpty()) {
      return;
    }
    Element group = group(Operation.LABEL);
    Set<Engraving> words = Set.copyOf(sheet.machining().words());
    boolean text = sheet.setup().letters() == Letters.TEXT;
    for (Engraving each : sheet.letters()) {
      if (words.contains(each)) {
        canvas.add(group, "path", "data-word", each.words(), "d", strokes(each));
      } else if (!text) {
        canvas.add(group, "path", "d", strokes(each));
      }
    }
    for (Engraving label : sheet.machining().levelNumbers()) {
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
    }
  }

  private String strokes(Engraving letters) {
    return letters.strokes().stream().map(paths::open).collect(Collectors.joining(" "));
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
