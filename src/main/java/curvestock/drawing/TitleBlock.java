package curvestock.drawing;

import curvestock.helix.build.RoadbedMark;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.w3c.dom.Element;

/** The strip under a drawn sheet: what it is, how to cut it, two bars to check the scale by. */
final class TitleBlock {

  /** Text stays readable when the drawing is printed small: about an 80th of the sheet's length. */
  private static final double SHARE_OF_LENGTH = 1.0 / 85;

  private static final double SMALLEST = 6;
  private static final double LARGEST = 30;
  private static final double LEADING = 1.45;
  private static final double HEADING = 1.35;

  private static final String CAUTIONS =
      "Cautions: wear eye and hearing protection and a dust mask, and use extraction. Clamp the "
          + "work; support pieces and offcuts so that none drops or pinches the blade. Unplug before "
          + "changing a blade or bit. A full sheet takes two people. Never leave a running machine "
          + "alone. Follow your tool's manual and local rules; measure the bars and cut one test "
          + "piece first.";

  private record Line(String text, double size, boolean bold) {}

  private final List<Line> lines = new ArrayList<>();
  private final double size;
  private final double ems;

  /**
   * @param width how wide the text may become, in millimetres
   */
  TitleBlock(Layout layout, SheetTitle title, double width) {
    size = Math.max(SMALLEST, Math.min(LARGEST, width * SHARE_OF_LENGTH));
    ems = width / size;
    String sheet = "Sheet " + title.sheet() + " of " + title.sheets();
    for (String text : TextWidth.wrap(title.job() + " - " + sheet, ems / HEADING / 1.12)) {
      lines.add(new Line(text, size * HEADING, true));
    }
    List<String> paragraphs = new ArrayList<>();
    paragraphs.add(material(layout.sheet(), title));
    paragraphs.add((cutting(layout, title.style()) + " " + title.machine()).strip());
    paragraphs.add(pieces(layout));
    marks(title).ifPresent(paragraphs::add);
    paragraphs.add(CAUTIONS);
    if (title.invented()) {
      paragraphs.add(SheetTitle.INVENTED_NOTE);
    }
    paragraphs.forEach(this::add);
  }

  /** A paragraph more. */
  void add(String paragraph) {
    for (String text : TextWidth.wrap(paragraph, ems)) {
      lines.add(new Line(text, size, false));
    }
  }

  private static String material(SheetStock sheet, SheetTitle title) {
    LengthStyle style = title.style();
    // Measured thickness is no tidy fraction: always decimals.
    LengthStyle decimals = new LengthStyle(style.unit(), 0);
    String thickness = decimals.format(sheet.thickness());
    boolean asSold = decimals.format(sheet.nominalThickness()).equals(thickness);
    String form = sheet.isRectangle() ? "" : " (remnant, longest by widest)";
    return "Sheet: "
        + sheet.name()
        + (title.material().isBlank() || title.material().equals(sheet.name())
            ? ""
            : ", " + title.material())
        + ", "
        + style.format(sheet.length())
        + " × "
        + style.format(sheet.width())
        + form
        + ", "
        + thickness
        + " thick"
        + (asSold ? "" : " (sold as " + style.formatGiven(sheet.nominalThickness()) + ")")
        + ". "
        + grain(sheet.grain())
        + (sheet.defects().isEmpty() ? "" : " Grey areas are knots and other defects, kept clear.");
  }

  private static String grain(Angle grain) {
    if (grain.degrees() == 0) {
      return "Face grain runs left to right.";
    }
    return grain.degrees() == 90
        ? "Face grain runs up and down."
        : "Face grain runs at " + grain + " counter-clockwise from the lower edge.";
  }

  private static String cutting(Layout layout, LengthStyle style) {
    return "Kerf %s, %s, at least %s from the sheet's edge. Outlines are at finished size: cut on the waste side of the line."
        .formatted(
            style.format(layout.cutting().kerf()),
            layout.cutting().apart(style),
            style.format(layout.cutting().margin()));
  }

  private static String pieces(Layout layout) {
    Map<Piece, Integer> counts = new LinkedHashMap<>();
    for (Placement placement : layout.placements()) {
      counts.merge(placement.piece(), 1, Integer::sum);
    }
    String list =
        counts.entrySet().stream()
            .map(e -> e.getValue() + " × " + e.getKey().id() + " (" + e.getKey().name() + ")")
            .collect(Collectors.joining(", "));
    int all = layout.placements().size();
    return (all == 1 ? "1 piece" : all + " pieces")
        + (list.isEmpty() ? "" : ": " + list)
        + String.format(Locale.ROOT, ". %.1f %% of the sheet is used.", 100 * layout.areaYield());
  }

  /** What the marks on the pieces mean. */
  private static Optional<String> marks(SheetTitle title) {
    Set<RoadbedMark.Sort> sorts = EnumSet.noneOf(RoadbedMark.Sort.class);
    title.marks().forEach(on -> on.forEach(mark -> sorts.add(mark.sort())));
    List<String> sentences = new ArrayList<>();
    if (sorts.contains(RoadbedMark.Sort.STATION)) {
      sentences.add("S, E and X with a number: where that support stands.");
    }
    if (sorts.contains(RoadbedMark.Sort.SHOULDER)) {
      sentences.add(
          "At a half-lap, cut away half the thickness from the end to the line across: from above at a"
              + " piece's upper end, from below at its lower end, as marked.");
    }
    if (sorts.contains(RoadbedMark.Sort.SCREW)) {
      sentences.add(
          "Crosses: screws come up through the splice plate below; drill pilot holes there.");
    }
    return sentences.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", sentences));
  }

  /** How much room the block takes from top to bottom, in millimetres. */
  double height() {
    return lines.stream().mapToDouble(line -> line.size() * LEADING).sum() + 3 * size * LEADING;
  }

  /** Draws the block with its upper left corner at (x, y) of the SVG. */
  void draw(SvgCanvas canvas, Element group, double x, double y) {
    double at = y;
    for (Line line : lines) {
      at += line.size() * LEADING;
      Element text =
          canvas.addText(
              group,
              "text",
              line.text(),
              "x",
              SvgNumber.of(x),
              "y",
              SvgNumber.of(at),
              "font-size",
              SvgNumber.of(line.size()));
      if (line.bold()) {
        text.setAttributeNS(null, "font-weight", "bold");
      }
    }
    drawBars(canvas, group, x, at + size * LEADING);
  }

  private void drawBars(SvgCanvas canvas, Element group, double x, double y) {
    drawBar(canvas, group, x, y, 100, "must measure 100 mm");
    drawBar(canvas, group, x, y + size * LEADING, 4 * 25.4, "must measure 4 in");
  }

  private void drawBar(
      SvgCanvas canvas, Element group, double x, double y, double length, String text) {
    double tick = size * 0.35;
    String d =
        String.join(
            " ",
            "M " + SvgNumber.of(x) + " " + SvgNumber.of(y - tick),
            "L " + SvgNumber.of(x) + " " + SvgNumber.of(y + tick),
            "M " + SvgNumber.of(x) + " " + SvgNumber.of(y),
            "L " + SvgNumber.of(x + length) + " " + SvgNumber.of(y),
            "M " + SvgNumber.of(x + length) + " " + SvgNumber.of(y - tick),
            "L " + SvgNumber.of(x + length) + " " + SvgNumber.of(y + tick));
    canvas.add(
        group,
        "path",
        "d",
        d,
        "fill",
        "none",
        "stroke",
        Ink.LABEL,
        "stroke-width",
        SvgNumber.of(size / 12));
    canvas.addText(
        group,
        "text",
        text,
        "x",
        SvgNumber.of(x + 4 * 25.4 + size),
        "y",
        SvgNumber.of(y + size * 0.36),
        "font-size",
        SvgNumber.of(size));
  }
}
