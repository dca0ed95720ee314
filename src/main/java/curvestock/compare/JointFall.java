package curvestock.compare;

import java.util.List;

/**
 * Where the joints of successive turns fall.
 *
 * @param line in words
 * @param leastDegrees how near a joint lies at least to one of the turn above, along the ring; zero
 *     where they stand above each other
 */
public record JointFall(JointLine line, double leastDegrees) {

  private static final double TOLERANCE = 1e-6;

  /**
   * Judges the joints of one layer, as far as there is a joint a turn or more above.
   *
   * @param joints in degrees along the ring, rising, 360 a turn
   * @param segment swept angle of most pieces, in degrees
   */
  static JointFall of(List<Double> joints, double segment) {
    double top = joints.isEmpty() ? 0 : joints.get(joints.size() - 1);
    double least = Double.POSITIVE_INFINITY;
    boolean allInLine = true;
    boolean allHalf = true;
    boolean pairs = false;
    for (double lower : joints) {
      if (lower + 360 <= top + TOLERANCE) {
        double nearest = nearest(joints, lower + 360);
        pairs = true;
        least = Math.min(least, nearest);
        allInLine &= nearest < TOLERANCE;
        allHalf &= Math.abs(nearest - segment / 2) < TOLERANCE;
      }
    }
    if (!pairs) {
      return new JointFall(JointLine.NONE_ABOVE, 0);
    }
    JointLine line =
        allInLine
            ? JointLine.IN_LINE
            : least < TOLERANCE
                ? JointLine.PARTLY_IN_LINE
                : allHalf ? JointLine.STAGGERED_BY_HALF : JointLine.WANDERING;
    return new JointFall(line, least < TOLERANCE ? 0 : least);
  }

  private static double nearest(List<Double> joints, double at) {
    return joints.stream().mapToDouble(joint -> Math.abs(joint - at)).min().orElseThrow();
  }
}
