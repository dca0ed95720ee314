package curvestock.packing;

import java.util.Arrays;

/**
 * The pairs of many pieces whose bounding circles may come near each other, listed anew only when
 * one has moved more than a skin allows.
 */
final class BroadPhase {

  private final Body[] bodies;
  private final int count;
  private final double gap;
  private final double skin;
  private final double[] listedX;
  private final double[] listedY;
  private boolean known;

  /** Near pairs as lower number * count + higher number, in that order. */
  int[] pairs;

  int listed;

  BroadPhase(Body[] bodies, double gap) {
    this.bodies = bodies;
    this.count = bodies.length;
    this.gap = gap;
    skin = 0.5 * Arrays.stream(bodies).mapToDouble(body -> body.radius).min().orElse(1);
    listedX = new double[count];
    listedY = new double[count];
    pairs = new int[Math.max(16, count * 8)];
  }

  /** The list is made anew when it is asked for next. */
  void forget() {
    known = false;
  }

  /** Brings the list up to date with these centres of the circles; whether it was made anew. */
  boolean update(double[] circleX, double[] circleY) {
    if (known && !movedTooFar(circleX, circleY)) {
      return false;
    }
    list(circleX, circleY);
    return true;
  }

  private boolean movedTooFar(double[] circleX, double[] circleY) {
    double limit = skin * skin / 4;
    for (int i = 0; i < count; i++) {
      double dx = circleX[i] - listedX[i];
      double dy = circleY[i] - listedY[i];
      if (dx * dx + dy * dy > limit) {
        return true;
      }
    }
    return false;
  }

  /** Sorts the bounding circles along x and lists the pairs that may come near. */
  private void list(double[] circleX, double[] circleY) {
    listed = 0;
    Integer[] order = new Integer[count];
    Arrays.setAll(order, i -> i);
    Arrays.sort(
        order,
        (a, b) -> Double.compare(circleX[a] - bodies[a].radius, circleX[b] - bodies[b].radius));
    for (int a = 0; a < count; a++) {
      int i = order[a];
      double reach = circleX[i] + bodies[i].radius + gap + skin;
      for (int b = a + 1; b < count; b++) {
        int j = order[b];
        if (circleX[j] - bodies[j].radius > reach) {
          break;
        }
        double dx = circleX[i] - circleX[j];
        double dy = circleY[i] - circleY[j];
        double limit = bodies[i].radius + bodies[j].radius + gap + skin;
        if (dx * dx + dy * dy < limit * limit) {
          note(Math.min(i, j) * count + Math.max(i, j));
        }
      }
    }
    Arrays.sort(pairs, 0, listed);
    System.arraycopy(circleX, 0, listedX, 0, count);
    System.arraycopy(circleY, 0, listedY, 0, count);
    known = true;
  }

  private void note(int pair) {
    if (listed == pairs.length) {
      pairs = Arrays.copyOf(pairs, pairs.length * 2);
    }
    pairs[listed++] = pair;
  }
}
