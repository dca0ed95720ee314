package curvestock.printing;

import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Pen;
import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A drawing made smaller and moved. */
final class Miniature {

  private static final double LINE = 0.15;

  private Miniature() {}

  /** Without its text, in thin lines. */
  static void draw(Paper drawing, double factor, Point shift, Paper page) {
    for (Paper.Thing thing : drawing.things()) {
      if (thing instanceof Paper.Shape shape) {
        draw(shape, Pen.of(shape.pen().stroke(), LINE), factor, shift, page);
      }
    }
  }

  /** With its text, its lines as much thinner. */
  static void whole(Paper drawing, double factor, Point shift, Paper page) {
    for (Paper.Thing thing : drawing.things()) {
      if (thing instanceof Paper.Shape shape) {
        draw(shape, small(shape.pen(), factor), factor, shift, page);
      } else if (thing instanceof Paper.Words words) {
        page.text(
            words.text(),
            words.at().times(factor).plus(shift),
            words.size() * factor,
            words.anchor(),
            words.bold());
      }
    }
  }

  private static void draw(Paper.Shape shape, Pen pen, double factor, Point shift, Paper page) {
    List<Edge> edges = small(shape.edges(), factor, shift);
    if (shape.closed()) {
      page.area(edges, shape.fill(), pen);
    } else {
      page.line(edges, pen);
    }
  }

  private static Pen small(Pen pen, double factor) {
    String dashes =
        pen.dashes().isBlank()
            ? ""
            : Arrays.stream(pen.dashes().trim().split("\\s+", -1))
                .map(d -> String.format(Locale.ROOT, "%.3f", Double.parseDouble(d) * factor))
                .collect(Collectors.joining(" "));
    return new Pen(pen.stroke(), pen.width() * factor, dashes);
  }

  static List<Edge> small(List<Edge> edges, double factor, Point shift) {
    return edges.stream().map(edge -> small(edge, factor, shift)).toList();
  }

  private static Edge small(Edge edge, double factor, Point shift) {
    if (edge instanceof Arc arc) {
      Point centre = arc.centre().times(factor).plus(shift);
      return new Arc(centre, arc.radius() * factor, arc.startAngle(), arc.sweep());
    }
    return new Segment(
        edge.start().times(factor).plus(shift), edge.end().times(factor).plus(shift));
  }
}
