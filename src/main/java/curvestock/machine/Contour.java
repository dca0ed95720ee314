package curvestock.machine;

import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.layout.Placement;
import java.util.ArrayList;
import java.util.List;

/**
 * One line to cut: the outside of a piece or one of its holes.
 *
 * @param number of the piece, from 1, in the layout's order
 * @param hole number of the hole from 1, or 0 for the outside
 * @param runs one closed chain of edges, or with gaps for tabs several open ones in cutting order
 * @param closed whether the last edge meets the first
 */
public record Contour(
    int number, int hole, Placement placement, List<List<Edge>> runs, boolean closed) {

  /** Checks that a closed contour is one chain. */
  public Contour {
    runs = runs.stream().map(List::copyOf).toList();
    if (runs.isEmpty() || (closed && runs.size() > 1)) {
      throw new IllegalArgumentException("a closed contour must be one chain of edges");
    }
  }

  /** Where the tool comes down first. */
  public Point start() {
    return runs.get(0).get(0).start();
  }

  /** Where the tool is lifted at the end. */
  Point end() {
    List<Edge> last = runs.get(runs.size() - 1);
    return last.get(last.size() - 1).end();
  }

  /** The path's name in files, such as {@code piece-3} or {@code piece-3-hole-1}. */
  public String id() {
    return "piece-" + number + (hole == 0 ? "" : "-hole-" + hole);
  }

  /** All edges that are cut. */
  public List<Edge> edges() {
    List<Edge> all = new ArrayList<>();
    runs.forEach(all::addAll);
    return all;
  }

  /** Ways from each gap's beginning to its end, with the tool lifted. */
  double hops() {
    double sum = 0;
    for (int i = 1; i < runs.size(); i++) {
      List<Edge> before = runs.get(i - 1);
      sum += before.get(before.size() - 1).end().distance(runs.get(i).get(0).start());
    }
    return sum;
  }
}
