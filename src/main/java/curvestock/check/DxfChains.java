package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Puts single lines and arcs together that follow on each other in a file. */
final class DxfChains {

  /** Ends nearer than this meet, in millimetres; files round to a thousandth of it. */
  private static final double MEET = 0.001;

  private DxfChains() {}

  /**
   * Whole chains. A line or arc may stand in the file the other way round than it is run: an arc is
   * always given counter-clockwise.
   */
  static List<Chain> of(List<Chain> parts) {
    List<Chain> whole = new ArrayList<>();
    List<Trace> edges = new ArrayList<>();
    for (Chain part : parts) {
      if (part.closed() || part.edges().size() > 1) {
        finish(edges, whole);
        edges = new ArrayList<>();
        whole.add(closedIfItMeets(part));
        continue;
      }
      if (!edges.isEmpty() && isClosed(edges)) {
        finish(edges, whole);
        edges = new ArrayList<>();
      }
      if (!extend(edges, part.edges().get(0))) {
        finish(edges, whole);
        edges = new ArrayList<>(part.edges());
      }
    }
    finish(edges, whole);
    return whole;
  }

  private static boolean isClosed(List<Trace> edges) {
    return edges.size() > 1 && meet(edges.get(edges.size() - 1).end(), edges.get(0).start());
  }

  /** Adds an edge where the last one ends, turning either round if need be. */
  private static boolean extend(List<Trace> edges, Trace next) {
    if (edges.isEmpty()) {
      edges.add(next);
      return true;
    }
    Trace last = edges.get(edges.size() - 1);
    boolean ahead = meet(last.end(), next.start()) || meet(last.end(), next.end());
    if (!ahead && edges.size() == 1) {
      if (!meet(last.start(), next.start()) && !meet(last.start(), next.end())) {
        return false;
      }
      edges.set(0, last.reversed());
      last = edges.get(0);
    } else if (!ahead) {
      return false;
    }
    edges.add(meet(last.end(), next.start()) ? next : next.reversed());
    return true;
  }

  private static void finish(List<Trace> edges, List<Chain> whole) {
    if (!edges.isEmpty()) {
      whole.add(new Chain(edges, isClosed(edges)));
    }
  }

  private static Chain closedIfItMeets(Chain chain) {
    return new Chain(chain.edges(), chain.closed() || isClosed(chain.edges()));
  }

  private static boolean meet(Point a, Point b) {
    return a.distance(b) <= MEET;
  }
}
