package curvestock.machine;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * Straight lines for machines that know no arcs. All corners lie on the true arc; between them a
 * line strays towards the arc's centre by at most the tolerance: r(1 − cos(s/2)) for steps of angle
 * s. So a piece is up to that much too narrow at its outer edge and too wide at its inner one.
 */
final class Chords {

  /** So that a reader can tell an arc from a bevelled corner. */
  private static final int FEWEST = 4;

  /** Parts of arcs that rise less than this over their chord are one line, in millimetres. */
  private static final double ALL_BUT_STRAIGHT = 0.015;

  private final double tolerance;

  /** Lines that stray at most {@code tolerance} millimetres. */
  Chords(double tolerance) {
    this.tolerance = tolerance;
  }

  List<Edge> of(List<Edge> edges) {
    List<Edge> lines = new ArrayList<>();
    for (Edge edge : edges) {
      if (edge instanceof Arc arc) {
        addLines(arc, lines);
      } else {
        lines.add(edge);
      }
    }
    return lines;
  }

  private void addLines(Arc arc, List<Edge> lines) {
    double step = 2 * Math.acos(Math.max(0, 1 - tolerance / arc.radius()));
    double rise = arc.radius() * (1 - Math.cos(arc.sweep() / 2));
    int needed = (int) Math.ceil(Math.abs(arc.sweep()) / step);
    int parts = needed <= 1 && rise < ALL_BUT_STRAIGHT ? 1 : Math.max(FEWEST, needed);
    Point from = arc.start();
    for (int i = 1; i <= parts; i++) {
      Point to = arc.pointAt(arc.startAngle() + arc.sweep() * i / parts);
      lines.add(new Segment(from, to));
      from = to;
    }
  }
}
