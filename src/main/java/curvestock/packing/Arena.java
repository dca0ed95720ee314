package curvestock.packing;

import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.List;

/**
 * Where pieces may lie: a sheet with its margin, the gap to keep between pieces, and defects to
 * keep the same gap from.
 */
final class Arena {

  final Outline outline;
  final boolean rectangle;
  final Box box;
  final double margin;
  final double gap;
  final double grain;
  final List<Outline> defects;

  /**
   * Only for sheets that are not rectangles: field, outward normals of the edges, inner corners.
   */
  final OutlineField field;

  final double[] normalX;
  final double[] normalY;
  final double[] innerCornerX;
  final double[] innerCornerY;

  Arena(SheetStock sheet, Cutting cutting) {
    this(sheet, cutting.spacing().millimetres(), cutting.margin().millimetres());
  }

  private Arena(SheetStock sheet, double gap, double margin) {
    this.outline = sheet.outline();
    this.rectangle = sheet.isRectangle();
    this.box = outline.box();
    this.gap = gap;
    this.margin = margin;
    this.grain = sheet.grain().radians();
    this.defects = sheet.defects();
    this.field = new OutlineField(outline);
    List<Edge> edges = outline.edges();
    normalX = edges.stream().mapToDouble(edge -> along(edge).y() / edge.length()).toArray();
    normalY = edges.stream().mapToDouble(edge -> -along(edge).x() / edge.length()).toArray();
    List<Point> inner = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      Edge next = edges.get((i + 1) % edges.size());
      if (along(edges.get(i)).cross(along(next)) < 0) {
        inner.add(next.start());
      }
    }
    innerCornerX = inner.stream().mapToDouble(Point::x).toArray();
    innerCornerY = inner.stream().mapToDouble(Point::y).toArray();
  }

  private static Point along(Edge edge) {
    return edge.end().minus(edge.start());
  }

  /** A rectangle with nothing to keep clear of. */
  boolean isPlain() {
    return rectangle && defects.isEmpty();
  }

  double usableWidth() {
    return box.width() - 2 * margin;
  }

  double usableHeight() {
    return box.height() - 2 * margin;
  }
}
