package curvestock.helix.build;

import curvestock.helix.spec.StockBoard;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Lengths nested along boards of one kind, boards and rods alike, longest first, each where it
 * leaves the least (best-fit decreasing: never more than 11/9 of the fewest and one; Johnson et
 * al., Worst-case performance bounds for simple one-dimensional packing algorithms, SIAM J. Comput.
 * 3, 1974; from memory). Where that is not proven the fewest, {@link FullestBoards} may do with
 * less.
 *
 * <p>One end of each board is squared, and every length takes a kerf, the last on its board too: it
 * is cut off what is left over. Only a length that leaves a whole board no room for both has that
 * board for itself.
 */
public final class BoardCutting {

  private static final double ROUNDING = 1e-6;

  private final StockBoard stock;
  private final double kerf;
  private final Length squaring;
  private final UnaryOperator<Length> printed;
  private final List<List<Cut>> boards;
  private final int leastPossible;

  /**
   * A length to cut.
   *
   * @param part what it becomes
   * @param length what it takes of the board, the saw's cut not counted
   */
  public record Cut(String part, Length length) {}

  /**
   * A board with what is cut from it.
   *
   * @param cuts from one end, longest first
   * @param left over at the other end
   * @param whole whether its one length leaves no room for squaring an end and a kerf
   */
  public record Board(List<Cut> cuts, Length left, boolean whole) {
    public Board {
      cuts = List.copyOf(cuts);
    }
  }

  /**
   * Nests the lengths.
   *
   * @throws IllegalArgumentException if a length is longer than a board
   */
  public BoardCutting(StockBoard stock, Length kerf, List<Cut> cuts) {
    this(stock, kerf, Length.ZERO, UnaryOperator.identity(), cuts);
  }

  /**
   * Nests the lengths.
   *
   * @param squaring what of each board is cut off to square its end
   * @param printed the length that papers name for a length: that is what will be cut, so what is
   *     printed adds up
   * @throws IllegalArgumentException if a length is longer than a board
   */
  public BoardCutting(
      StockBoard stock,
      Length kerf,
      Length squaring,
      UnaryOperator<Length> printed,
      List<Cut> cuts) {
    this.stock = stock;
    this.kerf = kerf.millimetres();
    this.squaring = squaring;
    this.printed = printed;
    List<Cut> longestFirst = new ArrayList<>(cuts);
    longestFirst.sort(Comparator.comparing(Cut::length).reversed());
    longestFirst.forEach(this::requireFits);
    double board = stock.length().minus(squaring).millimetres();
    leastPossible =
        LeastBoards.of(
            longestFirst.stream().map(cut -> Math.min(board, takes(cut))).toList(), board);
    List<List<Cut>> fitted = bestFit(longestFirst);
    List<List<Cut>> filled =
        fitted.size() == leastPossible
            ? fitted
            : new FullestBoards<>(board, this::takes).fill(longestFirst);
    boards = filled.size() < fitted.size() ? filled : fitted;
  }

  /** Of a board, with its kerf. */
  private double takes(Cut cut) {
    return printed.apply(cut.length()).millimetres() + kerf;
  }

  private double left(List<Cut> board) {
    return stock.length().minus(squaring).millimetres()
        - board.stream().mapToDouble(this::takes).sum();
  }

  private void requireFits(Cut cut) {
    if (cut.length().millimetres() > stock.length().millimetres() + ROUNDING) {
      throw new IllegalArgumentException(
          "every length cut from "
              + stock.name()
              + " must be at most its length ("
              + stock.length()
              + "), but one was "
              + cut.length()
              + ": state a longer stock, or join lengths");
    }
  }

  private List<List<Cut>> bestFit(List<Cut> longestFirst) {
    List<List<Cut>> fitted = new ArrayList<>();
    for (Cut cut : longestFirst) {
      Optional<List<Cut>> best =
          fitted.stream()
              .filter(board -> takes(cut) <= left(board) + ROUNDING)
              .min(Comparator.comparing(this::left));
      best.ifPresentOrElse(
          board -> board.add(cut), () -> fitted.add(new ArrayList<>(List.of(cut))));
    }
    return fitted;
  }

  /** What is cut from each board. */
  public List<Board> boards() {
    return boards.stream()
        .map(
            board ->
                new Board(
                    board, Length.ofMillimetres(Math.max(0, left(board))), left(board) < -ROUNDING))
        .toList();
  }

  /** What every length loses to the saw. */
  public Length kerf() {
    return Length.ofMillimetres(kerf);
  }

  /** What of each board is cut off to square its end. */
  public Length squaring() {
    return squaring;
  }

  public StockBoard stock() {
    return stock;
  }

  /**
   * A number of boards that no nesting by the same rules can go below: {@link LeastBoards} of the
   * lengths with their kerfs.
   */
  public int leastPossible() {
    return leastPossible;
  }
}
