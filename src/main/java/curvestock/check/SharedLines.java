package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The straight lines that are cut on a sheet, by which an outline is closed whose neighbour one
 * kerf away is cut along the same line: the line is drawn once, with one of the two.
 */
final class SharedLines {

  /** Lines nearer than this are one cut, in millimetres. */
  private static final double ONE_CUT = 0.01;

  /** An outline alone: no line is shared. */
  static final SharedLines NONE = new SharedLines(List.of());

  private final List<Trace> lines;

  private SharedLines(List<Trace> lines) {
    this.lines = List.copyOf(lines);
  }

  /** All straight lines of the chains. */
  static SharedLines of(List<Chain> chains) {
    return new SharedLines(
        chains.stream()
            .flatMap(chain -> chain.edges().stream())
            .filter(edge -> edge instanceof Trace.Straight)
            .toList());
  }

  /** The same without those of an outline itself, which does not share with itself. */
  SharedLines without(List<Chain> own) {
    Set<Trace> left = new HashSet<>();
    own.forEach(chain -> left.addAll(chain.edges()));
    own.forEach(chain -> left.addAll(chain.reversed().edges()));
    return new SharedLines(lines.stream().filter(line -> !left.contains(line)).toList());
  }

  /**
   * Whether cuts run all the way from one point to the other, but for tabs.
   *
   * @param tabGap the longest stretch that may be left out
   */
  boolean cover(Point from, Point to, double tabGap) {
    double length = from.distance(to);
    if (length <= ONE_CUT) {
      return false;
    }
    Point along = to.minus(from).times(1 / length);
    List<double[]> covered = new ArrayList<>();
    for (Trace line : lines) {
      Point a = line.start().minus(from);
      Point b = line.end().minus(from);
      if (Math.abs(along.cross(a)) <= ONE_CUT && Math.abs(along.cross(b)) <= ONE_CUT) {
        double low = Math.max(0, Math.min(along.dot(a), along.dot(b)));
        double high = Math.min(length, Math.max(along.dot(a), along.dot(b)));
        if (high - low > 0) {
          covered.add(new double[] {low, high});
        }
      }
    }
    covered.sort(Comparator.comparingDouble(stretch -> stretch[0]));
    double reached = 0;
    double longest = covered.isEmpty() ? Double.POSITIVE_INFINITY : 0;
    for (double[] stretch : covered) {
      longest = Math.max(longest, stretch[0] - reached);
      reached = Math.max(reached, stretch[1]);
    }
    return Math.max(longest, length - reached) <= tabGap + ONE_CUT;
  }
}
