package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Edges that follow on each other, as drawn: a closed line, or one that a tab interrupts. */
record Chain(List<Trace> edges, boolean closed) {

  Chain {
    edges = List.copyOf(edges);
  }

  Point start() {
    return edges.get(0).start();
  }

  Point end() {
    return edges.get(edges.size() - 1).end();
  }

  Trace last() {
    return edges.get(edges.size() - 1);
  }

  Chain reversed() {
    List<Trace> reversed = new ArrayList<>();
    for (int i = edges.size() - 1; i >= 0; i--) {
      reversed.add(edges.get(i).reversed());
    }
    return new Chain(reversed, closed);
  }
}
