package curvestock.check;

import java.util.ArrayList;
import java.util.List;

/**
 * Collects faults up to a number that a person would still read. Loose pieces do not count: each is
 * named, so that it can be held, and they hide no other fault.
 */
final class Findings {

  private static final int MOST = 100;

  private final List<Finding> list = new ArrayList<>();
  private int counted;

  void add(Finding.Kind kind, String message, String... paths) {
    if (kind == Finding.Kind.LOOSE) {
      list.add(Finding.of(kind, message, paths));
    } else if (!isFull()) {
      list.add(Finding.of(kind, message, paths));
      counted++;
      if (isFull()) {
        list.add(
            Finding.of(
                Finding.Kind.MORE,
                "more than " + MOST + " faults were found; the rest is not listed"));
      }
    }
  }

  void addAll(List<Finding> others) {
    others.forEach(f -> add(f.kind(), f.message(), f.paths().toArray(String[]::new)));
  }

  /** Whether further tests would be for nothing. */
  boolean isFull() {
    return counted >= MOST;
  }

  List<Finding> list() {
    return List.copyOf(list);
  }
}
