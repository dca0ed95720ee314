package curvestock.machine;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import curvestock.layout.Placement;
import curvestock.piece.AnnularSector;
import curvestock.piece.FreeShape;
import java.util.ArrayList;
import java.util.List;

/** Lines to be drawn or engraved on pieces, not cut. */
public final class Marks {

  /** Half the tick's length, in widths of the piece. */
  private static final double TICK = 0.08;

  /** Half the length of a tick on roadbed of any form, in millimetres. */
  private static final double TICK_BESIDE = 9;

  private Marks() {}

  /**
   * The centre line from face to face, and a tick across it: at a sector's middle; on other roadbed
   * where the bend begins or ends.
   */
  public static List<List<Edge>> of(Placement placement) {
    if (placement.piece().shape().blank() instanceof FreeShape free) {
      return along(free.course(), placement.pose());
    }
    if (!(placement.piece().shape().blank() instanceof AnnularSector sector)) {
      return List.of();
    }
    double radius = sector.radius().millimetres();
    double sweep = sector.sweep().radians();
    double reach = sector.width().millimetres() * TICK;
    Arc line = new Arc(Point.ORIGIN, radius, -sweep / 2, sweep);
    Edge tick = new Segment(new Point(radius - reach, 0), new Point(radius + reach, 0));
    return List.of(List.of(line.at(placement.pose())), List.of(tick.at(placement.pose())));
  }

  private static List<List<Edge>> along(List<Edge> course, Pose pose) {
    List<List<Edge>> marks = new ArrayList<>();
    if (!course.isEmpty()) {
      marks.add(course.stream().<Edge>map(edge -> edge.at(pose)).toList());
    }
    for (int i = 1; i < course.size(); i++) {
      if (course.get(i - 1) instanceof Arc ^ course.get(i) instanceof Arc) {
        marks.add(List.of(across(course.get(i)).at(pose)));
      }
    }
    return marks;
  }

  private static Edge across(Edge edge) {
    Point along = edge.startDirection();
    Point aside = new Point(-along.y(), along.x()).times(TICK_BESIDE);
    return new Segment(edge.start().minus(aside), edge.start().plus(aside));
  }
}
