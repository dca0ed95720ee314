package curvestock.dxf;

import curvestock.geometry.Arc;
import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Builds a DXF file of release 12 (AC1009): pairs of lines, a group's code and its value.
 *
 * <p>Source of the form: the format's published reference, release 12 (group codes 0 to 79, 999 for
 * comments; bulge = tangent of a quarter of the swept angle; arcs counter-clockwise in degrees);
 * from memory. Release 12 itself has no variables for the unit: those of later releases are written
 * ($INSUNITS and $MEASUREMENT), which readers of today heed and older ones pass over, and a comment
 * says it too.
 */
final class DxfWriter {

  /** A millionth of the unit in millimetres, a ten-millionth in inches. */
  private static final int MILLIMETRE_DECIMALS = 6;

  private static final int INCH_DECIMALS = 7;

  private static final int ANGLE_DECIMALS = 9;

  /** So that bulged edges of a metre are good to a millionth of a millimetre. */
  private static final int BULGE_DECIMALS = 12;

  private static final double LARGEST_ARC = Math.PI / 2;
  private static final double ROUNDING = 1e-9;

  private static final double MILLIMETRE = 1;

  private final double unit;
  private final int decimals;
  private final StringBuilder entities = new StringBuilder();
  private final StringBuilder layers = new StringBuilder();
  private final List<String> comments = new ArrayList<>();
  private int layerCount;

  /**
   * An empty drawing.
   *
   * @param unit of the numbers, in millimetres: 1 or 25.4
   */
  DxfWriter(double unit) {
    this.unit = unit;
    this.decimals = unit == 1 ? MILLIMETRE_DECIMALS : INCH_DECIMALS;
  }

  /** A remark at the head of the file, plain ASCII on one line. */
  void comment(String words) {
    comments.add(ascii(words));
  }

  void layer(String name, int colour) {
    layerCount++;
    layers.append(group(0, "LAYER")).append(group(2, name)).append(group(70, "0"));
    layers.append(group(62, Integer.toString(colour))).append(group(6, "CONTINUOUS"));
  }

  /** A chain of edges as one polyline; arcs become bulged edges of at most 90° each. */
  void polyline(String layer, List<Edge> edges, boolean closed) {
    List<Edge> parts = parts(edges);
    entity("POLYLINE", layer);
    entities.append(group(66, "1"));
    point(10, Point.ORIGIN);
    entities.append(group(30, "0")).append(group(70, closed ? "1" : "0"));
    for (Edge part : parts) {
      double bulge = part instanceof Arc arc ? Math.tan(arc.sweep() / 4) : 0;
      vertex(layer, part.start(), bulge);
    }
    if (!closed) {
      vertex(layer, parts.get(parts.size() - 1).end(), 0);
    }
    entity("SEQEND", layer);
  }

  private void vertex(String layer, Point at, double bulge) {
    entity("VERTEX", layer);
    point(10, at);
    entities.append(group(30, "0"));
    if (bulge != 0) {
      entities.append(group(42, plain(bulge, BULGE_DECIMALS)));
    }
  }

  /** A line or an arc of its own for each edge; arcs counter-clockwise, as the format has them. */
  void separate(String layer, List<Edge> edges) {
    for (Edge part : parts(edges)) {
      if (part instanceof Arc arc) {
        Arc forward = arc.sweep() > 0 ? arc : arc.reversed();
        entity("ARC", layer);
        point(10, arc.centre());
        entities.append(group(30, "0")).append(group(40, number(arc.radius())));
        entities.append(group(50, degrees(forward.startAngle())));
        entities.append(group(51, degrees(forward.startAngle() + forward.sweep())));
      } else {
        entity("LINE", layer);
        point(10, part.start());
        entities.append(group(30, "0"));
        point(11, part.end());
        entities.append(group(31, "0"));
      }
    }
  }

  void circle(String layer, Point centre, double radius) {
    entity("CIRCLE", layer);
    point(10, centre);
    entities.append(group(30, "0")).append(group(40, number(radius)));
  }

  /** Text from its lower left corner, in the standard font. */
  void text(String layer, String words, Point start, double height, double angle) {
    entity("TEXT", layer);
    point(10, start);
    entities
        .append(group(30, "0"))
        .append(group(40, number(height)))
        .append(group(1, ascii(words)));
    entities.append(group(50, degrees(angle))).append(group(7, "STANDARD"));
  }

  /** The file; {@code extent} is what its header says that it covers. */
  String file(Box extent) {
    StringBuilder file = new StringBuilder();
    comments.forEach(words -> file.append(group(999, words)));
    Point low = new Point(extent.minX(), extent.minY());
    Point high = new Point(extent.maxX(), extent.maxY());
    file.append(group(0, "SECTION")).append(group(2, "HEADER"));
    file.append(group(9, "$ACADVER")).append(group(1, "AC1009"));
    variable(file, "$INSBASE", Point.ORIGIN, true);
    variable(file, "$EXTMIN", low, true);
    variable(file, "$EXTMAX", high, true);
    variable(file, "$LIMMIN", low, false);
    variable(file, "$LIMMAX", high, false);
    boolean metric = unit == MILLIMETRE;
    whole(file, "$MEASUREMENT", metric ? 1 : 0);
    whole(file, "$INSUNITS", metric ? 4 : 1);
    file.append(group(0, "ENDSEC"));
    file.append(group(0, "SECTION")).append(group(2, "TABLES"));
    file.append(group(0, "TABLE")).append(group(2, "LTYPE")).append(group(70, "1"));
    file.append(group(0, "LTYPE")).append(group(2, "CONTINUOUS")).append(group(70, "0"));
    file.append(group(3, "Solid line")).append(group(72, "65")).append(group(73, "0"));
    file.append(group(40, "0")).append(group(0, "ENDTAB"));
    file.append(group(0, "TABLE")).append(group(2, "LAYER"));
    file.append(group(70, Integer.toString(layerCount))).append(layers);
    file.append(group(0, "ENDTAB"));
    style(file);
    file.append(group(0, "ENDSEC"));
    file.append(group(0, "SECTION")).append(group(2, "ENTITIES"));
    file.append(entities);
    file.append(group(0, "ENDSEC")).append(group(0, "EOF"));
    return file.toString();
  }

  /** The one style of text: a plain font that every program has, of no fixed height. */
  private static void style(StringBuilder file) {
    file.append(group(0, "TABLE")).append(group(2, "STYLE")).append(group(70, "1"));
    file.append(group(0, "STYLE")).append(group(2, "STANDARD")).append(group(70, "0"));
    file.append(group(40, "0.0")).append(group(41, "1.0")).append(group(50, "0.0"));
    file.append(group(71, "0")).append(group(42, "2.5")).append(group(3, "txt"));
    file.append(group(4, "")).append(group(0, "ENDTAB"));
  }

  private static void whole(StringBuilder file, String name, int value) {
    file.append(group(9, name)).append(group(70, Integer.toString(value)));
  }

  private void variable(StringBuilder file, String name, Point value, boolean hasZ) {
    file.append(group(9, name)).append(group(10, number(value.x())));
    file.append(group(20, number(value.y())));
    if (hasZ) {
      file.append(group(30, "0"));
    }
  }

  private void entity(String name, String layer) {
    entities.append(group(0, name)).append(group(8, layer));
  }

  private void point(int code, Point at) {
    entities.append(group(code, number(at.x()))).append(group(code + 10, number(at.y())));
  }

  private static List<Edge> parts(List<Edge> edges) {
    List<Edge> parts = new ArrayList<>();
    for (Edge edge : edges) {
      int count =
          edge instanceof Arc arc
              ? Math.max(1, (int) Math.ceil(Math.abs(arc.sweep()) / LARGEST_ARC - ROUNDING))
              : 1;
      for (int i = 0; i < count; i++) {
        parts.add(count == 1 ? edge : edge.part((double) i / count, (i + 1.0) / count));
      }
    }
    return parts;
  }

  private String number(double millimetres) {
    return plain(millimetres / unit, decimals);
  }

  private static String degrees(double radians) {
    double angle = Math.toDegrees(radians) % 360;
    return plain(angle < 0 ? angle + 360 : angle, ANGLE_DECIMALS);
  }

  private static String plain(double value, int decimals) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0.0" : withPoint(rounded.toPlainString());
  }

  /** Some readers take a number without a point for a whole one. */
  private static String withPoint(String number) {
    return number.contains(".") ? number : number + ".0";
  }

  /**
   * The format's text is ASCII; other characters are written as its \\U+ escapes by no one alike.
   */
  private static String ascii(String words) {
    StringBuilder plain = new StringBuilder();
    words.codePoints().forEach(c -> plain.append(c >= ' ' && c < 127 ? (char) c : '?'));
    return plain.toString();
  }

  private static String group(int code, String value) {
    return String.format(java.util.Locale.ROOT, "%3d\r\n%s\r\n", code, value);
  }
}
