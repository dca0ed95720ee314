package curvestock.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Sorts the cut lines of a DXF, which know no pieces, into outsides and the holes in them. */
final class DxfPieces {

  private final Bridges bridges;
  private final List<Chain> contours = new ArrayList<>();
  private final List<TraceLoop> loops = new ArrayList<>();

  private DxfPieces(CutForm form) {
    this.bridges = new Bridges(form);
  }

  /**
   * For each piece its outside and its holes, closed.
   *
   * @throws CheckException if a line is open without a tab
   */
  static List<List<Chain>> of(DxfFile file) throws CheckException {
    DxfPieces pieces = new DxfPieces(file.form());
    pieces.close(file.cuts());
    return pieces.nest();
  }

  /** Open lines that follow on each other over tabs are one outline. */
  private void close(List<Chain> chains) throws CheckException {
    List<Chain> open = new ArrayList<>();
    for (Chain chain : chains) {
      if (chain.closed()) {
        contours.add(chain);
        continue;
      }
      if (open.size() == 1 && !followsEitherWay(open.get(0), chain)) {
        open.set(0, open.get(0).reversed());
      }
      Chain next = open.isEmpty() ? chain : inDirection(open.get(open.size() - 1), chain);
      open.add(next);
      if (bridges.join(next, open.get(0))) {
        contours.add(bridges.closed(open));
        open.clear();
      }
    }
    if (!open.isEmpty()) {
      contours.add(bridges.closed(open));
    }
    contours.forEach(chain -> loops.add(new TraceLoop(chain.edges())));
  }

  private boolean followsEitherWay(Chain before, Chain after) {
    return bridges.join(before, after) || bridges.join(before, after.reversed());
  }

  private Chain inDirection(Chain before, Chain after) {
    return !bridges.join(before, after) && bridges.join(before, after.reversed())
        ? after.reversed()
        : after;
  }

  private List<List<Chain>> nest() {
    List<Bounds> bounds = loops.stream().map(loop -> Bounds.of(loop.edges())).toList();
    List<List<Chain>> pieces = new ArrayList<>();
    int[] depth = new int[loops.size()];
    int[] parent = new int[loops.size()];
    for (int i = 0; i < depth.length; i++) {
      parent[i] = -1;
      for (int j = 0; j < depth.length; j++) {
        boolean near = i != j && bounds.get(i).distance(bounds.get(j)) == 0;
        if (near && loops.get(j).windings(loops.get(i).edges().get(0).at(0.5)) != 0) {
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
        List<Chain> piece = new ArrayList<>(List.of(contours.get(i)));
        IntStream.range(0, depth.length)
            .filter(j -> depth[j] % 2 == 1 && parent[j] == outside)
            .forEach(j -> piece.add(contours.get(j)));
        pieces.add(piece);
      }
    }
    return pieces;
  }
}
