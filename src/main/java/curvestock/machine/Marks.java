package curvestock.machine;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import curvestock.layout.Placement;
import curvestock.piece.AnnularSector;
import java.util.List;

/** Lines to be drawn or engraved on pieces, not cut. */
public final class Marks {

  /** Half the tick's length, in widths of the piece. */
  private static final double TICK = 0.08;

  private Marks() {}

  /** The marks of a sector: its centre line from face to face, and a tick at its middle. */
  public static List<List<Edge>> of(Placement placement) {
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
}
