package curvestock.printing;

import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Pen;
import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import java.util.List;

/** A drawing made smaller and moved, without its text. */
final class Miniature {

  private static final double LINE = 0.15;

  private Miniature() {}

  static void draw(Paper drawing, double factor, Point shift, Paper page) {
    for (Paper.Thing thing : drawing.things()) {
      if (thing instanceof Paper.Shape shape) {
        List<Edge> edges = shape.edges().stream().map(e -> small(e, factor, shift)).toList();
        Pen pen = Pen.of(shape.pen().stroke(), LINE);
        if (shape.closed()) {
          page.area(edges, shape.fill(), pen);
        } else {
          page.line(edges, pen);
        }
      }
    }
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
