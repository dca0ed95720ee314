package curvestock.helix.build;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Fills one board after another: with the longest length that is left, and beside it whatever
 * leaves the least over (minimum bin slack: J. N. D. Gupta and J. C. Ho, A new heuristic algorithm
 * for the one-dimensional bin-packing problem, Production Planning and Control 10, 1999; from
 * memory).
 */
final class FullestBoards<T> {

  /** Lengths tried on one board at most, so that the time is bounded. */
  private static final int STEPS = 20_000;

  private static final double ROUNDING = 1e-6;

  private final ToDoubleFunction<T> takes;
  private final double board;
  private List<T> left = List.of();
  private List<Integer> fullest = List.of();
  private double least;
  private int steps;

  /**
   * @param board what a board holds
   * @param takes what a length takes of it
   */
  FullestBoards(double board, ToDoubleFunction<T> takes) {
    this.board = board;
    this.takes = takes;
  }

  /** What goes on each board. */
  List<List<T>> fill(List<T> longestFirst) {
    left = new ArrayList<>(longestFirst);
    List<List<T>> boards = new ArrayList<>();
    while (!left.isEmpty()) {
      least = Double.POSITIVE_INFINITY;
      steps = 0;
      List<Integer> chosen = new ArrayList<>(List.of(0));
      fill(1, board - takes.applyAsDouble(left.get(0)), chosen);
      boards.add(fullest.stream().map(left::get).toList());
      for (int i = fullest.size() - 1; i >= 0; i--) {
        left.remove((int) fullest.get(i));
      }
    }
    return boards;
  }

  /** Tries the lengths from that one on in the room that is left; of alike ones the first. */
  private void fill(int from, double room, List<Integer> chosen) {
    if (room < least - ROUNDING) {
      least = room;
      fullest = List.copyOf(chosen);
    }
    double tried = -1;
    for (int i = from; i < left.size() && least > ROUNDING && steps < STEPS; i++) {
      double length = takes.applyAsDouble(left.get(i));
      if (length != tried && length <= room + ROUNDING) {
        steps++;
        tried = length;
        chosen.add(i);
        fill(i + 1, room - length, chosen);
        chosen.remove(chosen.size() - 1);
      }
    }
  }
}
