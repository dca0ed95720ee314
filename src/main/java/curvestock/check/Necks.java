package curvestock.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Bodies of wood and the necks between them; how many ways lead from one body to another. */
final class Necks {

  /** A way over a neck; used the other way it is taken back. */
  private record Step(int neck, int from, int to) {}

  private final List<List<Integer>> necksOf = new ArrayList<>();
  private final List<List<Integer>> bodiesOf = new ArrayList<>();

  Necks(int bodies) {
    for (int i = 0; i < bodies; i++) {
      necksOf.add(new ArrayList<>());
    }
  }

  /** Adds a neck between the bodies; one that joins nothing is left out. */
  void add(List<Integer> joined) {
    if (joined.size() < 2) {
      return;
    }
    int neck = bodiesOf.size();
    bodiesOf.add(List.copyOf(joined));
    joined.forEach(body -> necksOf.get(body).add(neck));
  }

  /**
   * How many ways lead from one body to the other of which no two use one neck, at most {@code
   * enough}: augmenting paths (Ford and Fulkerson 1956) with necks of capacity one.
   */
  int ways(int from, int to, int enough) {
    Set<Step> used = new HashSet<>();
    Set<Integer> taken = new HashSet<>();
    int ways = 0;
    while (ways < enough && augment(from, to, used, taken)) {
      ways++;
    }
    return ways;
  }

  /** One more way by the fewest necks, where need be back over necks of former ways. */
  private boolean augment(int from, int to, Set<Step> used, Set<Integer> taken) {
    Map<Integer, Step> reachedBy = new HashMap<>();
    Deque<Integer> queue = new ArrayDeque<>(List.of(from));
    while (!queue.isEmpty() && !reachedBy.containsKey(to)) {
      int body = queue.remove();
      for (int neck : necksOf.get(body)) {
        for (int other : bodiesOf.get(neck)) {
          boolean free = !taken.contains(neck) || used.contains(new Step(neck, other, body));
          if (free && other != from && !reachedBy.containsKey(other)) {
            reachedBy.put(other, new Step(neck, body, other));
            queue.add(other);
          }
        }
      }
    }
    if (!reachedBy.containsKey(to)) {
      return false;
    }
    for (int body = to; body != from; body = reachedBy.get(body).from()) {
      Step step = reachedBy.get(body);
      if (used.remove(new Step(step.neck(), step.to(), step.from()))) {
        taken.remove(step.neck());
      } else {
        used.add(step);
        taken.add(step.neck());
      }
    }
    return true;
  }
}
