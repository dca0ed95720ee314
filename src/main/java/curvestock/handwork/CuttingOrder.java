package curvestock.handwork;

import curvestock.geometry.Box;
import curvestock.geometry.Point;
import curvestock.layout.Layout;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * An order to cut a sheet in by hand: first the straight cut that frees the offcut to keep, so that
 * no later one can run into it; then straight cuts from edge to edge that touch no piece, so that
 * handy boards result; then the pieces of each board one after the other from one end to the other,
 * so that what is left stays one board to clamp, and each while the wood under its trammel pivot is
 * still there, where that is possible.
 *
 * @param rips straight cuts, each through what the ones before left whole
 * @param boards what results, each with its pieces in the order of cutting
 * @param lost pivots on the sheet whose wood is not there when their piece is cut
 */
public record CuttingOrder(List<Rip> rips, List<Board> boards, List<LostPivot> lost) {

  /**
   * A straight cut from edge to edge of a board.
   *
   * @param upright whether it runs along y, at x = {@code at}; otherwise along x, at y = {@code at}
   * @param at middle of the kerf, from the sheet's lower left corner
   * @param from where it begins
   * @param to where it ends
   * @param before pieces to the left of it, or below
   * @param after pieces to the right of it, or above; empty if an offcut falls
   * @param freesKept whether what falls is the offcut that was promised
   */
  public record Rip(
      boolean upright,
      double at,
      double from,
      double to,
      List<Integer> before,
      List<Integer> after,
      boolean freesKept) {
    public Rip {
      before = List.copyOf(before);
      after = List.copyOf(after);
    }
  }

  /** A part of the sheet that stays whole until its pieces are cut out. */
  public record Board(Box box, List<Integer> pieces) {
    public Board {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * A pivot that a trammel cannot be set on, as it could before, when its piece is cut.
   *
   * @param piece that is swung about it
   * @param arc the first of the piece's arcs about it
   */
  public record LostPivot(int piece, ArcMark arc, Why why) {

    /** Where its wood has gone. */
    public enum Why {
      /** The piece that it lies on was cut before. */
      CUT_AWAY,
      /** A straight cut parted it from the piece. */
      OTHER_BOARD,
      /** Nothing but pieces that were cut before, or a thin web, held it to the piece. */
      LOOSE,
      /** It is outside the sheet, and only a thin web is left at the edge to clamp scrap to. */
      WEAK_EDGE
    }
  }

  /** An offcut narrower than this is no board to put away. */
  private static final double LEAST_OFFCUT = 75;

  public CuttingOrder {
    rips = List.copyOf(rips);
    boards = List.copyOf(boards);
    lost = List.copyOf(lost);
  }

  /**
   * For a layout on a rectangle; a remnant is taken as its box.
   *
   * @param kept the offcut promised for the next job, in the sheet's frame: the full width beside
   *     all pieces or the full length above them
   */
  public static CuttingOrder of(Layout layout, Optional<Box> kept) {
    return new Ripping(layout, kept).order(kept);
  }

  /** Splits boards as long as a cut goes through. */
  private static final class Ripping {
    private final List<Box> pieces;
    private final double kerf;
    private final Box sheet;
    private final Point home;
    private final List<Rip> rips = new ArrayList<>();
    private final List<Board> boards = new ArrayList<>();
    private final PivotWood pivots;

    Ripping(Layout layout, Optional<Box> kept) {
      pivots = new PivotWood(layout, kept);
      Box box = layout.sheet().outline().box();
      sheet = new Box(0, 0, box.width(), box.height());
      kerf = layout.cutting().kerf().millimetres();
      home = new Point(-box.minX(), -box.minY());
      pieces =
          layout.placements().stream().map(p -> p.outline().box()).map(b -> b.moved(home)).toList();
    }

    CuttingOrder order(Optional<Box> kept) {
      List<Integer> all = new ArrayList<>();
      for (int i = 0; i < pieces.size(); i++) {
        all.add(i);
      }
      split(kept.map(box -> freed(box.moved(home), all)).orElse(sheet), all);
      List<LostPivot> lost = boards.stream().flatMap(board -> pivots.lost(board).stream()).toList();
      return new CuttingOrder(rips, boards, lost);
    }

    /** Cuts the offcut off along its own edge; what is left. */
    private Box freed(Box kept, List<Integer> all) {
      boolean upright = kept.minX() > sheet.minX();
      double at = (upright ? kept.minX() : kept.minY()) - kerf / 2;
      double to = upright ? sheet.maxY() : sheet.maxX();
      rips.add(new Rip(upright, at, 0, to, all, List.of(), true));
      return upright
          ? new Box(0, 0, at - kerf / 2, sheet.maxY())
          : new Box(0, 0, sheet.maxX(), at - kerf / 2);
    }

    private void split(Box board, List<Integer> held) {
      Rip best = null;
      for (Rip rip : through(board, held)) {
        boolean better =
            best == null
                || Math.min(rip.before().size(), rip.after().size())
                    > Math.min(best.before().size(), best.after().size());
        best = better ? rip : best;
      }
      if (best == null) {
        boards.add(pivots.ordered(board, inOrder(board, held)));
        return;
      }
      rips.add(best);
      double half = kerf / 2;
      boolean upright = best.upright();
      double at = best.at();
      Box before =
          upright
              ? new Box(board.minX(), board.minY(), at - half, board.maxY())
              : new Box(board.minX(), board.minY(), board.maxX(), at - half);
      Box after =
          upright
              ? new Box(at + half, board.minY(), board.maxX(), board.maxY())
              : new Box(board.minX(), at + half, board.maxX(), board.maxY());
      split(before, best.before());
      if (!best.after().isEmpty()) {
        split(after, best.after());
      }
    }

    private List<Rip> through(Box board, List<Integer> held) {
      List<Rip> rips = new ArrayList<>();
      rips.addAll(along(board, held, true));
      rips.addAll(along(board, held, false));
      return rips;
    }

    /** Cuts that pass between pieces, and the one that takes the offcut beyond the last. */
    private List<Rip> along(Box board, List<Integer> held, boolean upright) {
      ToDoubleFunction<Integer> low = i -> upright ? pieces.get(i).minX() : pieces.get(i).minY();
      ToDoubleFunction<Integer> high = i -> upright ? pieces.get(i).maxX() : pieces.get(i).maxY();
      double end = upright ? board.maxX() : board.maxY();
      double from = upright ? board.minY() : board.minX();
      double to = upright ? board.maxY() : board.maxX();
      List<Integer> sorted = new ArrayList<>(held);
      sorted.sort(Comparator.comparingDouble(low));
      List<Rip> rips = new ArrayList<>();
      double reach = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < sorted.size(); i++) {
        reach = Math.max(reach, high.applyAsDouble(sorted.get(i)));
        boolean last = i == sorted.size() - 1;
        double next = last ? end - LEAST_OFFCUT : low.applyAsDouble(sorted.get(i + 1));
        // A hair of slack, since gaps are often just one kerf.
        if (next - reach >= kerf - 1e-6) {
          double at = last ? reach + kerf / 2 : (reach + next) / 2;
          rips.add(
              new Rip(
                  upright,
                  at,
                  from,
                  to,
                  sorted.subList(0, i + 1),
                  sorted.subList(i + 1, sorted.size()),
                  false));
        }
      }
      return rips;
    }

    /** From the far end of the board's longer side to its near end. */
    private List<Integer> inOrder(Box board, List<Integer> held) {
      boolean lying = board.width() >= board.height();
      List<Integer> sorted = new ArrayList<>(held);
      sorted.sort(
          Comparator.comparingDouble(
                  (Integer i) -> lying ? -pieces.get(i).maxX() : -pieces.get(i).maxY())
              .thenComparingInt(i -> i));
      return sorted;
    }
  }
}
