package curvestock.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is wrong while a file is read, so that all of it is told at once. */
final class Problems {

  /** No one mends more than this in one go; keeps a hostile file from filling the memory. */
  private static final int MOST = 500;

  private final String file;
  private final List<Problem> found = new ArrayList<>();
  private int count;

  Problems(String file) {
    this.file = file;
  }

  void add(Place place, String path, String message) {
    count++;
    if (isFull()) {
      return;
    }
    Problem problem = new Problem(file, place.line(), place.column(), path, message);
    if (!found.contains(problem)) {
      found.add(problem);
    }
  }

  /** Whether more problems would not be told, so that their words need not be found. */
  boolean isFull() {
    return found.size() >= MOST;
  }

  /** How many were found so far; a caller compares two counts to see whether its part is sound. */
  int count() {
    return count;
  }

  /**
   * @throws JobException if any problem was found
   */
  void throwIfAny() {
    if (!found.isEmpty()) {
      List<Problem> sorted = new ArrayList<>(found);
      sorted.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
      throw new JobException(sorted);
    }
  }
}
