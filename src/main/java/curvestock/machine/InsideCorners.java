package curvestock.machine;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.units.Length;
import java.util.List;
import java.util.Optional;

/** How sharp the hollows of an outline are: a round tool leaves its own radius in each. */
public final class InsideCorners {

  /** Corners that turn by less (radians) are smooth. */
  private static final double SMOOTH = 1e-6;

  private InsideCorners() {}

  /** The smallest radius of a hollow or a hole, zero for a sharp one; empty if there is none. */
  public static Optional<Length> smallest(Outline outline) {
    double smallest = Double.POSITIVE_INFINITY;
    for (Loop loop : outline.loops().toList()) {
      List<Edge> edges = loop.edges();
      for (int i = 0; i < edges.size(); i++) {
        Edge edge = edges.get(i);
        if (edge instanceof Arc arc && arc.sweep() < 0) {
          smallest = Math.min(smallest, arc.radius());
        }
        double turn = edge.endDirection().cross(edges.get((i + 1) % edges.size()).startDirection());
        if (turn < -SMOOTH) {
          smallest = 0;
        }
      }
    }
    return Double.isInfinite(smallest)
        ? Optional.empty()
        : Optional.of(Length.ofMillimetres(smallest));
  }
}
