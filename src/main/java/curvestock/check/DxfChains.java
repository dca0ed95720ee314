package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts single lines and arcs together that follow on each other, in whatever order they stand. */
final class DxfChains {

  /** Ends nearer than this meet, in millimetres; files round to a thousandth of it. */
  private static final double MEET = 0.001;

  private DxfChains() {}

  /**
   * Whole chains. A line or arc may stand in the file the other way round than it is run: an arc is
   * always given counter-clockwise. What follows in the file is joined first; then, where another
   * program has changed the order, whatever still meets.
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
    return new Ends(whole).joined();
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

  /** Where open chains end, in squares a little wider than ends may lie apart. */
  private static final class Ends {

    private static final double SQUARE = 2 * MEET;

    private record Square(long x, long y) {
      static Square of(Point point) {
        return new Square(
            (long) Math.floor(point.x() / SQUARE), (long) Math.floor(point.y() / SQUARE));
      }
    }

    private final List<Chain> chains;
    private final boolean[] used;
    private final Map<Square, List<Integer>> at = new HashMap<>();

    Ends(List<Chain> chains) {
      this.chains = chains;
      used = new boolean[chains.size()];
      for (int i = 0; i < chains.size(); i++) {
        if (!chains.get(i).closed()) {
          int index = i;
          for (Point end : List.of(chains.get(i).start(), chains.get(i).end())) {
            at.computeIfAbsent(Square.of(end), key -> new ArrayList<>()).add(index);
          }
        }
      }
    }

    List<Chain> joined() {
      List<Chain> whole = new ArrayList<>();
      for (int i = 0; i < chains.size(); i++) {
        if (!used[i]) {
          used[i] = true;
          whole.add(chains.get(i).closed() ? chains.get(i) : grown(chains.get(i)));
        }
      }
      return whole;
    }

    /** The chain with all that meets its end, then all that meets its start. */
    private Chain grown(Chain first) {
      Chain chain = first;
      for (int side = 0; side < 2 && !isClosed(chain.edges()); side++) {
        List<Trace> edges = new ArrayList<>(chain.edges());
        Optional<Chain> next = next(chain.end());
        while (next.isPresent()) {
          edges.addAll(next.get().edges());
          next = isClosed(edges) ? Optional.empty() : next(next.get().end());
        }
        chain = new Chain(edges, isClosed(edges));
        chain = chain.closed() || side == 1 ? chain : chain.reversed();
      }
      return edges(chain) == first.edges().size() ? first : chain;
    }

    private static int edges(Chain chain) {
      return chain.edges().size();
    }

    /** An unused chain that begins at the point, turned round if it ends there. */
    private Optional<Chain> next(Point point) {
      Square middle = Square.of(point);
      for (long x = middle.x() - 1; x <= middle.x() + 1; x++) {
        for (long y = middle.y() - 1; y <= middle.y() + 1; y++) {
          for (int index : at.getOrDefault(new Square(x, y), List.of())) {
            Chain chain = chains.get(index);
            boolean starts = meet(point, chain.start());
            if (!used[index] && (starts || meet(point, chain.end()))) {
              used[index] = true;
              return Optional.of(starts ? chain : chain.reversed());
            }
          }
        }
      }
      return Optional.empty();
    }
  }
}
