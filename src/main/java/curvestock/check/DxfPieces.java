package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Sorts the cut lines of a DXF, which know no pieces, into outsides and the holes in them. */
final class DxfPieces {

  /** A listed beginning lies on its line within this, in millimetres. */
  private static final double AT = 0.005;

  private final Bridges bridges;
  private final SharedLines shared;
  private final CutForm form;
  private final List<Chain> contours = new ArrayList<>();
  private final List<TraceLoop> loops = new ArrayList<>();
  private final List<Boolean> doubled = new ArrayList<>();
  private final List<String> faults = new ArrayList<>();

  private DxfPieces(CutForm form, SharedLines shared) {
    this.form = form;
    this.shared = shared;
    this.bridges = new Bridges(form, shared);
  }

  /**
   * A piece's lines, closed.
   *
   * @param chains its outside, then its holes
   * @param doubled whether one of them is drawn more than once
   */
  record Drawn(List<Chain> chains, boolean doubled) {

    Drawn {
      chains = List.copyOf(chains);
    }
  }

  /**
   * What was found.
   *
   * @param faults lines that belong to no closed outline, and why
   */
  record Sorted(List<Drawn> pieces, List<String> faults) {}

  /** For each piece its outside and its holes, closed, of a file that lists none. */
  static Sorted of(List<Chain> cuts, CutForm form) {
    return of(cuts, form, List.of());
  }

  /**
   * For each piece its outside and its holes, closed.
   *
   * @param begins where outsides begin, if the file says so
   */
  static Sorted of(List<Chain> cuts, CutForm form, List<Point> begins) {
    DxfPieces pieces = new DxfPieces(form, SharedLines.of(cuts));
    pieces.closeListed(cuts, begins);
    pieces.keepSingle();
    return new Sorted(pieces.nest(), List.copyOf(pieces.faults));
  }

  /** Open lines from one that begins an outside to the next are one outline, if they close. */
  private void closeListed(List<Chain> chains, List<Point> begins) {
    List<Chain> group = new ArrayList<>();
    for (Chain chain : chains) {
      boolean isNew =
          chain.closed()
              || begins.stream()
                  .anyMatch(
                      at -> at.distance(chain.start()) <= AT || at.distance(chain.end()) <= AT);
      if (isNew) {
        closeGroup(group);
      }
      if (chain.closed()) {
        contours.add(chain);
      } else {
        group.add(chain);
      }
    }
    closeGroup(group);
  }

  private void closeGroup(List<Chain> group) {
    if (group.isEmpty()) {
      return;
    }
    try {
      contours.add(new Bridges(form, shared.without(group)).closed(inOneDirection(group)));
    } catch (CheckException e) {
      // Listed wrongly, not at all, or with a hole: then by how the lines go on.
      close(List.copyOf(group));
    }
    group.clear();
  }

  private List<Chain> inOneDirection(List<Chain> group) {
    List<Chain> turned = new ArrayList<>();
    for (Chain chain : group) {
      if (turned.size() == 1 && !followsEitherWay(turned.get(0), chain)) {
        turned.set(0, turned.get(0).reversed());
      }
      turned.add(turned.isEmpty() ? chain : inDirection(turned.get(turned.size() - 1), chain));
    }
    return turned;
  }

  /** Open lines that follow on each other over tabs and shared cuts are one outline. */
  private void close(List<Chain> chains) {
    List<Chain> open = new ArrayList<>();
    for (int i = 0; i < chains.size(); i++) {
      Chain chain = chains.get(i);
      if (chain.closed()) {
        contours.add(chain);
        continue;
      }
      if (open.size() == 1 && !followsEitherWay(open.get(0), chain)) {
        open.set(0, open.get(0).reversed());
      }
      if (form.tabs() == 0
          && !open.isEmpty()
          && !followsEitherWay(open.get(open.size() - 1), chain)) {
        closeTabs(open);
      }
      open.add(open.isEmpty() ? chain : inDirection(open.get(open.size() - 1), chain));
      List<Chain> next = i + 1 < chains.size() ? List.of(chains.get(i + 1)) : List.of();
      if (closes(open, next) || !mayBeInterrupted()) {
        closeTabs(open);
      }
    }
    if (!open.isEmpty()) {
      closeTabs(open);
    }
  }

  /**
   * Whether the lines so far are a whole outline: its last gap may be cut by a neighbour, but not
   * by its own next line.
   */
  private boolean closes(List<Chain> open, List<Chain> next) {
    Chain last = open.get(open.size() - 1);
    if (!bridges.join(last, open.get(0))) {
      return false;
    }
    List<Chain> others = new ArrayList<>(open);
    others.addAll(next);
    return new Bridges(form, shared.without(others)).join(last, open.get(0))
        || next.stream().noneMatch(chain -> goesOn(last, chain, open.get(0)));
  }

  /** Whether the next line follows, and is nearer than the outline's beginning. */
  private boolean goesOn(Chain last, Chain next, Chain first) {
    double back = last.end().distance(first.start());
    double on = Math.min(last.end().distance(next.start()), last.end().distance(next.end()));
    return on < back && followsEitherWay(last, next);
  }

  private void closeTabs(List<Chain> open) {
    try {
      contours.add(bridges.closed(open));
    } catch (CheckException e) {
      faults.add(
          "the line that starts at " + Shown.place(open.get(0).start()) + ": " + e.getMessage());
    }
    open.clear();
  }

  private boolean mayBeInterrupted() {
    return form.tabs() > 0 || form.grown() > 0;
  }

  private boolean followsEitherWay(Chain before, Chain after) {
    return bridges.join(before, after) || bridges.join(before, after.reversed());
  }

  private Chain inDirection(Chain before, Chain after) {
    return !bridges.join(before, after) && bridges.join(before, after.reversed())
        ? after.reversed()
        : after;
  }

  /**
   * Of lines that lie on each other one is kept, and noted: two would each lie in the other, and
   * neither be an outside.
   */
  private void keepSingle() {
    List<Chain> single = new ArrayList<>();
    List<Bounds> bounds = new ArrayList<>();
    for (Chain contour : contours) {
      TraceLoop loop = new TraceLoop(contour.edges());
      Bounds box = Bounds.of(contour.edges());
      int same = 0;
      while (same < single.size()
          && !(box.isLike(bounds.get(same), LayoutCheck.SHAPE_TOLERANCE)
              && Congruence.onEachOther(loop, loops.get(same)))) {
        same++;
      }
      if (same < single.size()) {
        doubled.set(same, true);
      } else {
        single.add(contour);
        loops.add(loop);
        bounds.add(box);
        doubled.add(false);
      }
    }
    contours.clear();
    contours.addAll(single);
  }

  /** By the point farthest from the other's line: neighbours that share a cut touch elsewhere. */
  private static boolean liesIn(TraceLoop inner, TraceLoop outer) {
    Point farthest =
        inner.edges().stream()
            .map(edge -> edge.at(0.5))
            .max(
                Comparator.comparingDouble(
                    at ->
                        outer.edges().stream()
                            .mapToDouble(edge -> edge.distanceTo(at))
                            .min()
                            .orElse(0)))
            .orElseThrow();
    return outer.windings(farthest) != 0;
  }

  private List<Drawn> nest() {
    List<Bounds> bounds = loops.stream().map(loop -> Bounds.of(loop.edges())).toList();
    List<Drawn> pieces = new ArrayList<>();
    int[] depth = new int[loops.size()];
    int[] parent = new int[loops.size()];
    for (int i = 0; i < depth.length; i++) {
      parent[i] = -1;
      for (int j = 0; j < depth.length; j++) {
        boolean near = i != j && bounds.get(i).distance(bounds.get(j)) == 0;
        if (near && liesIn(loops.get(i), loops.get(j))) {
          depth[i]++;
          boolean smaller =
              parent[i] < 0
                  || Math.abs(loops.get(j).area()) < Math.abs(loops.get(parent[i]).area());
          parent[i] = smaller ? j : parent[i];
        }
      }
    }
    for (int i = 0; i < depth.length; i++) {
      if (depth[i] % 2 == 0) {
        int outside = i;
        List<Integer> own = new ArrayList<>(List.of(i));
        IntStream.range(0, depth.length)
            .filter(j -> depth[j] % 2 == 1 && parent[j] == outside)
            .forEach(own::add);
        pieces.add(
            new Drawn(
                own.stream().map(contours::get).toList(), own.stream().anyMatch(doubled::get)));
      }
    }
    return pieces;
  }
}
