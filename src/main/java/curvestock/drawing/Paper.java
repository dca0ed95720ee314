package curvestock.drawing;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;

/**
 * A sheet of paper for figures: y up like the figures, millimetres, the text at the end. Things are
 * collected first and the paper is cut to what is on it; what prints them, as SVG or on pages,
 * takes the same things.
 */
public final class Paper {

  /**
   * How a line is drawn.
   *
   * @param stroke its colour, {@code #rrggbb}
   * @param width in millimetres
   * @param dashes lengths of dash and gap by turns, set off by blanks; empty for a full line
   */
  public record Pen(String stroke, double width, String dashes) {
    public static Pen of(String stroke, double width) {
      return new Pen(stroke, width, "");
    }
  }

  /** Where a text stands at its point. */
  public enum Anchor {
    START,
    MIDDLE,
    END
  }

  private static final PathData PATHS = new PathData(0);

  /** Something on the paper. */
  public sealed interface Thing permits Shape, Words {}

  /**
   * A line or an area.
   *
   * @param edges each begins where the one before ends
   * @param closed whether it is an area
   * @param fill colour of the area, {@code #rrggbb} or {@code none}
   */
  public record Shape(List<Edge> edges, boolean closed, String fill, Pen pen) implements Thing {
    public Shape {
      edges = List.copyOf(edges);
    }
  }

  /**
   * A level text.
   *
   * @param at the middle of its capitals' height
   * @param size of the font in millimetres
   */
  public record Words(String text, Point at, double size, Anchor anchor, boolean bold)
      implements Thing {}

  private final List<Thing> things = new ArrayList<>();
  private double minX = Double.POSITIVE_INFINITY;
  private double maxX = Double.NEGATIVE_INFINITY;
  private double minY = Double.POSITIVE_INFINITY;
  private double maxY = Double.NEGATIVE_INFINITY;

  /** An open line. */
  public void line(List<Edge> edges, Pen pen) {
    edges.forEach(this::reach);
    things.add(new Shape(edges, false, "none", pen));
  }

  public void line(Point from, Point to, Pen pen) {
    line(List.of(new Segment(from, to)), pen);
  }

  /** A closed area whose edges follow on each other. */
  public void area(List<Edge> edges, String fill, Pen pen) {
    edges.forEach(this::reach);
    things.add(new Shape(edges, true, fill, pen));
  }

  public void polygon(List<Point> corners, String fill, Pen pen) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i + 1 < corners.size(); i++) {
      edges.add(new Segment(corners.get(i), corners.get(i + 1)));
    }
    area(edges, fill, pen);
  }

  public void circle(Point middle, double radius, String fill, Pen pen) {
    area(List.of(new Arc(middle, radius, 0, 2 * Math.PI)), fill, pen);
  }

  /** A level text whose capitals have their middle at the height of {@code at}. */
  public void text(String text, Point at, double size, Anchor anchor, boolean bold) {
    double wide = size * (bold ? TextWidth.boldEms(text) : TextWidth.ems(text));
    double left = anchor == Anchor.START ? 0 : anchor == Anchor.MIDDLE ? -wide / 2 : -wide;
    reach(new Point(at.x() + left, at.y() - size / 2));
    reach(new Point(at.x() + left + wide, at.y() + size / 2));
    things.add(new Words(text, at, size, anchor, bold));
  }

  /** Everything on it, the lowest first. */
  public List<Thing> things() {
    return List.copyOf(things);
  }

  private void reach(Edge edge) {
    reach(new Point(edge.box().minX(), edge.box().minY()));
    reach(new Point(edge.box().maxX(), edge.box().maxY()));
  }

  private void reach(Point point) {
    minX = Math.min(minX, point.x());
    maxX = Math.max(maxX, point.x());
    minY = Math.min(minY, point.y());
    maxY = Math.max(maxY, point.y());
  }

  public double minX() {
    return minX;
  }

  public double maxX() {
    return maxX;
  }

  public double minY() {
    return minY;
  }

  public double maxY() {
    return maxY;
  }

  /** Lines of text below everything, wrapped to the paper's width. */
  public void paragraphs(List<String> paragraphs, double size) {
    double left = minX;
    double ems = (maxX - minX) / size;
    double y = minY - 2 * size;
    for (String paragraph : paragraphs) {
      for (String line : TextWidth.wrap(paragraph, ems)) {
        text(line, new Point(left, y), size, Anchor.START, false);
        y -= 1.45 * size;
      }
    }
  }

  /** The drawing as SVG, 1 user unit = 1 mm of paper. */
  public String svg(String title, String description, double border) {
    double width = maxX - minX + 2 * border;
    double height = maxY - minY + 2 * border;
    SvgCanvas canvas = new SvgCanvas(minX - border, -maxY - border, width, height);
    canvas.addText(canvas.root(), "title", title);
    canvas.addText(canvas.root(), "desc", description);
    canvas.add(
        canvas.root(),
        "rect",
        "id",
        "paper",
        "x",
        SvgNumber.of(minX - border),
        "y",
        SvgNumber.of(-maxY - border),
        "width",
        SvgNumber.of(width),
        "height",
        SvgNumber.of(height),
        "fill",
        "#ffffff");
    for (Thing thing : things) {
      if (thing instanceof Shape shape) {
        draw(canvas, shape);
      } else if (thing instanceof Words words) {
        draw(canvas, words);
      }
    }
    return canvas.text();
  }

  private static void draw(SvgCanvas canvas, Shape shape) {
    Element path =
        canvas.add(
            canvas.root(),
            "path",
            "d",
            PATHS.open(shape.edges()) + (shape.closed() ? " Z" : ""),
            "fill",
            shape.fill(),
            "stroke",
            shape.pen().stroke(),
            "stroke-width",
            SvgNumber.of(shape.pen().width()));
    if (!shape.pen().dashes().isEmpty()) {
      path.setAttributeNS(null, "stroke-dasharray", shape.pen().dashes());
    }
  }

  private static void draw(SvgCanvas canvas, Words words) {
    String anchor =
        switch (words.anchor()) {
          case START -> "start";
          case MIDDLE -> "middle";
          case END -> "end";
        };
    Element text =
        canvas.addText(
            canvas.root(),
            "text",
            words.text(),
            "x",
            SvgNumber.of(words.at().x()),
            "y",
            SvgNumber.of(-words.at().y() + 0.36 * words.size()),
            "font-size",
            SvgNumber.of(words.size(), 2),
            "font-family",
            "sans-serif",
            "fill",
            Ink.LABEL,
            "text-anchor",
            anchor);
    if (words.bold()) {
      text.setAttributeNS(null, "font-weight", "bold");
    }
  }
}
