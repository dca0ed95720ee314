package curvestock.handwork;

import curvestock.geometry.Box;
import curvestock.geometry.FlatOutline;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.handwork.CuttingOrder.Board;
import curvestock.handwork.CuttingOrder.LostPivot;
import curvestock.handwork.CuttingOrder.LostPivot.Why;
import curvestock.handwork.PivotPlace.OffSheet;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The wood under trammel pivots while a sheet is cut. A pivot serves as long as its wood is still
 * held to the wood that is cut; so a piece is cut before the piece that its pivot lies on, where
 * that is possible, and the pivots that lose their wood all the same are listed.
 */
final class PivotWood {

  /** The step at which the sheet is looked at. */
  private static final double STEP = 10;

  /** Steps of a web that holds a pivot still: 40 mm, our own choice. */
  private static final int WEB = 4;

  /** A scrap is clamped to the sheet's edge for a pivot so near; else it lies on the bench. */
  private static final double CLAMPED = 150;

  private final List<List<ArcMark>> pivots = new ArrayList<>();
  private final Grid grid;

  /**
   * For a sheet; places are from its lower left corner.
   *
   * @param kept the offcut promised for the next job, in the sheet's frame
   */
  PivotWood(Layout layout, Optional<Box> kept) {
    for (PieceMarks mark : MarkingOut.of(layout, kept)) {
      pivots.add(mark.isSwung() ? mark.pivots() : List.of());
    }
    grid = new Grid(layout);
  }

  /**
   * The pieces of a board in the order given, but each before the piece that its pivot lies on;
   * backwards if fewer pivots lose their wood that way.
   */
  Board ordered(Box box, List<Integer> pieces) {
    List<Integer> backwards = new ArrayList<>(pieces);
    Collections.reverse(backwards);
    List<List<Integer>> orders =
        List.of(pieces, pivotsFirst(pieces), backwards, pivotsFirst(backwards));
    Board best = null;
    int fewest = Integer.MAX_VALUE;
    for (int i = 0; i < orders.size() && fewest > 0; i++) {
      Board board = new Board(box, orders.get(i));
      int lost = lost(board).size();
      if (lost < fewest) {
        best = board;
        fewest = lost;
      }
    }
    return best;
  }

  /** The first of those left that no other one's pivot lies on, or the first of all. */
  private List<Integer> pivotsFirst(List<Integer> base) {
    List<Integer> left = new ArrayList<>(base);
    List<Integer> order = new ArrayList<>();
    while (!left.isEmpty()) {
      int next =
          left.stream().filter(piece -> !carries(piece, left)).findFirst().orElse(left.get(0));
      order.add(next);
      left.remove(Integer.valueOf(next));
    }
    return order;
  }

  private boolean carries(int piece, List<Integer> others) {
    return others.stream()
        .filter(other -> other != piece)
        .flatMap(other -> pivots.get(other).stream())
        .anyMatch(arc -> arc.place().equals(new PivotPlace.OnPiece(piece)));
  }

  /** The pivots whose wood is gone or loose when their piece is to be cut. */
  List<LostPivot> lost(Board board) {
    List<LostPivot> lost = new ArrayList<>();
    BitSet wood = grid.within(board.box());
    BitSet gone = new BitSet();
    for (int piece : board.pieces()) {
      for (ArcMark arc : pivots.get(piece)) {
        why(arc, piece, board, wood, gone).ifPresent(w -> lost.add(new LostPivot(piece, arc, w)));
      }
      gone.set(piece);
      wood.andNot(grid.of(piece));
    }
    return lost;
  }

  private Optional<Why> why(ArcMark arc, int piece, Board board, BitSet wood, BitSet gone) {
    if (arc.place() instanceof OffSheet off) {
      boolean weak = off.beyond() < CLAMPED && !grid.held(arc.pivot(), piece, wood);
      return weak ? Optional.of(Why.WEAK_EDGE) : Optional.empty();
    }
    if (!holds(board.box(), arc.pivot())) {
      return Optional.of(Why.OTHER_BOARD);
    }
    if (arc.place() instanceof PivotPlace.OnPiece on && gone.get(on.index())) {
      return Optional.of(Why.CUT_AWAY);
    }
    return grid.held(arc.pivot(), piece, wood) ? Optional.empty() : Optional.of(Why.LOOSE);
  }

  private static boolean holds(Box box, Point point) {
    return box.distance(Box.of(point, point)) == 0;
  }

  /** The sheet in squares. */
  private static final class Grid {
    private final int columns;
    private final int rows;
    private final BitSet sheet = new BitSet();
    private final List<BitSet> pieces = new ArrayList<>();

    Grid(Layout layout) {
      Box box = layout.sheet().outline().box();
      Pose home = new Pose(-box.minX(), -box.minY(), 0);
      columns = (int) (box.width() / STEP) + 1;
      rows = (int) (box.height() / STEP) + 1;
      fill(layout.sheet().outline().at(home), sheet);
      for (Placement placement : layout.placements()) {
        BitSet cells = new BitSet();
        fill(placement.outline().at(home), cells);
        pieces.add(cells);
      }
    }

    private void fill(Outline outline, BitSet cells) {
      Box box = outline.box();
      FlatOutline flat = new FlatOutline(outline);
      for (int x = column(box.minX()); x <= column(box.maxX()); x++) {
        for (int y = row(box.minY()); y <= row(box.maxY()); y++) {
          if (flat.contains((x + 0.5) * STEP, (y + 0.5) * STEP)) {
            cells.set(y * columns + x);
          }
        }
      }
    }

    private int column(double x) {
      return Math.max(0, Math.min(columns - 1, (int) Math.floor(x / STEP)));
    }

    private int row(double y) {
      return Math.max(0, Math.min(rows - 1, (int) Math.floor(y / STEP)));
    }

    private static Point middle(int x, int y) {
      return new Point((x + 0.5) * STEP, (y + 0.5) * STEP);
    }

    BitSet of(int piece) {
      return pieces.get(piece);
    }

    BitSet within(Box box) {
      BitSet cells = new BitSet();
      sheet.stream()
          .filter(cell -> holds(box, middle(cell % columns, cell / columns)))
          .forEach(cells::set);
      return cells;
    }

    /**
     * Whether wood that is left, nowhere narrower than a {@link #WEB}, reaches from the pivot, or
     * from the sheet's edge next to it, to the piece.
     */
    boolean held(Point pivot, int piece, BitSet wood) {
      BitSet reached = new BitSet();
      List<Integer> front = new ArrayList<>();
      int x = column(pivot.x());
      int y = row(pivot.y());
      for (int dx = -WEB; dx <= 1; dx++) {
        for (int dy = -WEB; dy <= 1; dy++) {
          reach(x + dx, y + dy, wood, reached, front);
        }
      }
      while (!front.isEmpty()) {
        int square = front.remove(front.size() - 1);
        int cx = square % columns;
        int cy = square / columns;
        if (touches(cx, cy, pieces.get(piece))) {
          return true;
        }
        reach(cx - 1, cy, wood, reached, front);
        reach(cx + 1, cy, wood, reached, front);
        reach(cx, cy - 1, wood, reached, front);
        reach(cx, cy + 1, wood, reached, front);
      }
      return false;
    }

    /** A square as wide as a web, by its lower left cell, if all of it is wood. */
    private void reach(int x, int y, BitSet wood, BitSet reached, List<Integer> front) {
      int square = y * columns + x;
      boolean onSheet = x >= 0 && x + WEB <= columns && y >= 0 && y + WEB <= rows;
      if (onSheet && !reached.get(square) && isSolid(x, y, wood)) {
        reached.set(square);
        front.add(square);
      }
    }

    private boolean isSolid(int x, int y, BitSet wood) {
      for (int row = y; row < y + WEB; row++) {
        int from = row * columns + x;
        if (wood.nextClearBit(from) < from + WEB) {
          return false;
        }
      }
      return true;
    }

    private boolean touches(int x, int y, BitSet cells) {
      for (int row = y; row < y + WEB; row++) {
        int from = row * columns + x;
        int next = cells.nextSetBit(from);
        if (next >= 0 && next < from + WEB) {
          return true;
        }
      }
      return false;
    }
  }
}
