package curvestock.drawing;

import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Segment;
import curvestock.helix.build.RoadbedMark;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.machine.MachineSetup;
import curvestock.machine.MachineSheet;
import curvestock.machine.Marks;
import curvestock.piece.Bend;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.w3c.dom.Element;

/**
 * A cut sheet as an SVG text at true scale: width and height in millimetres, a matching viewBox, 1
 * user unit = 1 mm, nothing transformed, clipped or styled by sheets of rules.
 *
 * <p>Groups, by what is done with them: {@code sheet} the sheet's edge and its defects, {@code cut}
 * one closed path per piece (holes as further sub-paths), {@code mark} lines to draw or engrave,
 * {@code label} text. A piece's path has the id {@code piece-1}, {@code piece-2} ... in the
 * layout's order, its kind in {@code data-piece} and its pose in {@code data-pose} (x, y in
 * millimetres from the sheet's lower left corner, degrees counter-clockwise).
 */
public final class SheetDrawing {

  /** Room around an annotated sheet. */
  private static final double BORDER = 20;

  /** Narrower drawings could not hold the scale bars and their text. */
  private static final double LEAST_WIDTH = 320;

  private final Layout layout;
  private final Box box;
  private final PathData paths;

  private SheetDrawing(Layout layout) {
    this.layout = layout;
    box = layout.sheet().outline().box();
    paths = new PathData(box.maxY());
  }

  /**
   * The drawing for people: pieces shaded, numbered and named, a title block with scale bars in a
   * strip below the sheet.
   *
   * @throws IllegalArgumentException if the title has labels, but not one for each piece
   */
  public static String annotated(Layout layout, SheetTitle title) {
    int pieces = layout.placements().size();
    if (!title.labels().isEmpty() && title.labels().size() != pieces) {
      throw new IllegalArgumentException(
          "labels must be one for each of "
              + pieces
              + " pieces, but there were "
              + title.labels().size());
    }
    return new SheetDrawing(layout).draw(title);
  }

  /** The drawing for machines as it is without any wish: see {@link MachineDrawing}. */
  public static String clean(Layout layout) {
    return MachineDrawing.svg(MachineSheet.of(layout, List.of(), MachineSetup.DEFAULT));
  }

  private String draw(SheetTitle title) {
    double width = Math.max(LEAST_WIDTH, box.width() + 2 * BORDER);
    TitleBlock block = new TitleBlock(layout, title, width - 2 * BORDER);
    double beside = box.height() + 3 * BORDER;
    List<List<PieceLabel.Text>> texts =
        texts(title, Legible.onOnePage(width, beside + block.height()));
    if (hasShortNumbers(numbers(title), texts)) {
      ShortName.legend(numbers(title)).ifPresent(block::add);
    }
    double left = box.minX() - BORDER;
    double height = beside + block.height();
    SvgCanvas canvas = new SvgCanvas(left, -BORDER, width, height);
    canvas.addText(canvas.root(), "title", title.job() + ", sheet " + title.sheet());
    canvas.addText(canvas.root(), "desc", description());
    canvas.add(
        canvas.root(),
        "rect",
        "id",
        "paper",
        "x",
        SvgNumber.of(left),
        "y",
        SvgNumber.of(-BORDER),
        "width",
        SvgNumber.of(width),
        "height",
        SvgNumber.of(height),
        "fill",
        "#ffffff");
    drawSheet(canvas, "2", "#ffffff");
    drawPieces(canvas, "1.2", Ink.PIECE);
    drawMarks(canvas, title);
    Element labels =
        canvas.add(
            canvas.root(), "g", "id", "label", "fill", Ink.LABEL, "font-family", "sans-serif");
    texts.forEach(piece -> piece.forEach(text -> drawText(canvas, labels, text)));
    title.remnant().ifPresent(rest -> drawRemnant(canvas, labels, rest, title));
    block.draw(canvas, labels, box.minX(), box.height() + BORDER);
    return canvas.text();
  }

  private String description() {
    return "One user unit is one millimetre. A sheet point (x, y), measured from the sheet's lower"
        + " left corner with y up, is drawn at (x, H - y) with H = "
        + SvgNumber.of(box.maxY())
        + ". Arcs are true circular arcs of at most 90 degrees each. Outlines are the finished"
        + " size: the tool's radius or half its kerf is not yet added.";
  }

  private void drawSheet(SvgCanvas canvas, String stroke, String fill) {
    Element group =
        canvas.add(
            canvas.root(),
            "g",
            "id",
            "sheet",
            "fill",
            fill,
            "stroke",
            Ink.SHEET,
            "stroke-width",
            stroke);
    canvas.add(group, "path", "id", "edge", "d", paths.closed(layout.sheet().outline()));
    int number = 0;
    for (Outline defect : layout.sheet().defects()) {
      number++;
      Element path = canvas.add(group, "path", "id", "defect-" + number, "d", paths.closed(defect));
      if (!fill.equals("none")) {
        path.setAttributeNS(null, "fill", Ink.DEFECT);
      }
    }
  }

  private void drawPieces(SvgCanvas canvas, String stroke, String fill) {
    Element group =
        canvas.add(
            canvas.root(),
            "g",
            "id",
            "cut",
            "fill",
            fill,
            "fill-rule",
            "evenodd",
            "stroke",
            Ink.CUT,
            "stroke-width",
            stroke);
    int number = 0;
    for (Placement placement : layout.placements()) {
      number++;
      canvas.add(
          group,
          "path",
          "id",
          "piece-" + number,
          "data-piece",
          placement.piece().id(),
          "data-pose",
          MachineDrawing.pose(placement.pose()),
          "d",
          paths.closed(placement.outline()));
    }
  }

  private void drawMarks(SvgCanvas canvas, SheetTitle title) {
    Element group =
        canvas.add(
            canvas.root(),
            "g",
            "id",
            "mark",
            "fill",
            "none",
            "stroke",
            Ink.MARK,
            "stroke-width",
            "0.7");
    for (Placement placement : layout.placements()) {
      for (List<Edge> mark : Marks.of(placement)) {
        Element path = canvas.add(group, "path", "d", paths.open(mark));
        boolean tick = mark.size() == 1 && mark.get(0) instanceof Segment;
        if (!tick) {
          path.setAttributeNS(null, "stroke-dasharray", "18 5 3 5");
        }
      }
    }
    for (int i = 0; i < layout.placements().size(); i++) {
      for (RoadbedMark mark : marks(title, i)) {
        mark.lines().forEach(line -> canvas.add(group, "path", "d", paths.open(List.of(line))));
      }
    }
  }

  /** The marks of the plan on a piece, where it lies on the sheet. */
  private List<RoadbedMark> marks(SheetTitle title, int piece) {
    return title.marks().isEmpty()
        ? List.of()
        : title.marks().get(piece).stream()
            .map(mark -> mark.at(layout.placements().get(piece).pose()))
            .toList();
  }

  private static boolean hasShortNumbers(List<String> numbers, List<List<PieceLabel.Text>> texts) {
    return IntStream.range(0, numbers.size())
        .anyMatch(i -> !texts.get(i).get(0).words().startsWith(numbers.get(i)));
  }

  /** What is written on each piece. */
  private List<List<PieceLabel.Text>> texts(SheetTitle title, double readable) {
    List<String> numbers = numbers(title);
    String widestOnBend = widest(numbers, true);
    String widestElse = widest(numbers, false);
    List<List<PieceLabel.Text>> all = new ArrayList<>();
    for (int i = 0; i < numbers.size(); i++) {
      Placement placement = layout.placements().get(i);
      String name = title.notes().isEmpty() ? placement.piece().name() : title.notes().get(i);
      String widest = hasBend(placement) ? widestOnBend : widestElse;
      all.add(PieceLabel.of(placement, numbers.get(i), widest, name, marks(title, i), readable));
    }
    return all;
  }

  /** The widest number on pieces with a bend, or on all others, so that those come out alike. */
  private String widest(List<String> numbers, boolean onBend) {
    return IntStream.range(0, numbers.size())
        .filter(i -> hasBend(layout.placements().get(i)) == onBend)
        .mapToObj(numbers::get)
        .max(Comparator.comparingDouble(TextWidth::ems))
        .orElse("");
  }

  private static boolean hasBend(Placement placement) {
    return Bend.of(placement.piece().shape()).isPresent();
  }

  /** Dashed, with its size: it is kept, not cut. */
  private void drawRemnant(SvgCanvas canvas, Element group, Box left, SheetTitle title) {
    double inset = 4;
    canvas.add(
        group,
        "rect",
        "id",
        "remnant",
        "x",
        SvgNumber.of(left.minX() + inset),
        "y",
        SvgNumber.of(box.maxY() - left.maxY() + inset),
        "width",
        SvgNumber.of(left.width() - 2 * inset),
        "height",
        SvgNumber.of(left.height() - 2 * inset),
        "fill",
        "none",
        "stroke",
        Ink.MARK,
        "stroke-width",
        "2",
        "stroke-dasharray",
        "24 12");
    List<String> words =
        List.of(
            "to keep",
            title.style().formatDown(Length.ofMillimetres(left.width())) + " x",
            title.style().formatDown(Length.ofMillimetres(left.height())));
    double widest = words.stream().mapToDouble(TextWidth::ems).max().orElse(1);
    double size = Math.min(0.8 * left.width() / widest, Math.min(48, left.height() / 5));
    double y = box.maxY() - (left.minY() + left.maxY()) / 2 - size * (words.size() - 2.4) * 0.6;
    for (String line : words) {
      canvas.addText(
          group,
          "text",
          line,
          "x",
          SvgNumber.of((left.minX() + left.maxX()) / 2),
          "y",
          SvgNumber.of(y),
          "font-size",
          SvgNumber.of(size, 2),
          "fill",
          Ink.MARK,
          "text-anchor",
          "middle");
      y += 1.2 * size;
    }
  }

  private List<String> numbers(SheetTitle title) {
    return title.labels().isEmpty()
        ? IntStream.rangeClosed(1, layout.placements().size()).mapToObj(Integer::toString).toList()
        : title.labels();
  }

  private void drawText(SvgCanvas canvas, Element group, PieceLabel.Text text) {
    if (text.words().isBlank()) {
      return;
    }
    if (text.backed()) {
      double width = 1.1 * text.size() * TextWidth.boldEms(text.words());
      canvas.add(
          group,
          "rect",
          "x",
          SvgNumber.of(text.middle().x() - width / 2),
          "y",
          SvgNumber.of(box.maxY() - text.middle().y() - text.size() / 2),
          "width",
          SvgNumber.of(width),
          "height",
          SvgNumber.of(text.size()),
          "fill",
          Ink.PIECE);
    }
    Element element =
        canvas.addText(
            group,
            "text",
            text.words(),
            "x",
            SvgNumber.of(text.middle().x()),
            "y",
            // Capitals stand about 0.72 of the font size high: half of that below the middle.
            SvgNumber.of(box.maxY() - text.middle().y() + 0.36 * text.size()),
            "font-size",
            SvgNumber.of(text.size(), 2),
            "text-anchor",
            "middle");
    if (text.bold()) {
      element.setAttributeNS(null, "font-weight", "bold");
    }
  }
}
