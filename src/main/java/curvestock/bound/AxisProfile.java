package curvestock.bound;

import java.util.Arrays;

/**
 * What weights along one side of a sheet a sector surely covers, wherever along that side it lies.
 *
 * <p>The side is cut into equal bins, each with a weight for every square millimetre above it. The
 * sector's centre moves from {@code from} to {@code to} in small steps that divide a bin, so areas
 * left of a bin's border are read from one table. Between two steps the covered weight is bounded
 * by its slopes, see {@link #least}.
 */
final class AxisProfile {

  private static final int STEPS = 7;

  /** Far more than double precision loses in the length of a border, in millimetres. */
  private static final double ROUNDING = 1e-6;

  private final int bins;
  private final int steps;
  private final double step;
  private final double lastStep;
  private final int first;
  private final double[] left;
  private final double[] variation;
  private final double[] leftAtEnd;

  /**
   * @param reach no point of the sector lies further from its centre
   * @param size of the side; the bins start at 0
   * @param bins an even number
   * @param centre first and last place of the sector's centre
   */
  AxisProfile(SectorProfile sector, double reach, double size, int bins, double[] centre) {
    double from = centre[0];
    double to = centre[1];
    this.bins = bins;
    step = size / bins / STEPS;
    steps = (int) Math.max(1, Math.ceil((to - from) / step));
    lastStep = to - (from + (steps - 1) * step);
    first = (int) Math.floor((from - reach) / step) - 1;
    int length = (int) Math.ceil((from + reach) / step) + 2 - first;
    left = new double[length];
    variation = new double[length];
    double before = 0;
    for (int k = 0; k < length; k++) {
      sector.cutAt((first + k) * step - from);
      left[k] = sector.area();
      variation[k] = sector.rise() - before + ROUNDING;
      before = sector.rise();
    }
    leftAtEnd = new double[bins + 1];
    for (int b = 0; b <= bins; b++) {
      sector.cutAt(b * size / bins - to);
      leftAtEnd[b] = sector.area();
    }
  }

  private double leftOf(int border, int place) {
    if (place == steps) {
      return leftAtEnd[border];
    }
    int k = border * STEPS - place - first;
    return left[Math.max(0, Math.min(left.length - 1, k))];
  }

  /** Covered areas by bin, those of mirrored bins added, times {@code scale}. */
  void row(int place, double scale, double[] row, int offset) {
    double before = leftOf(0, place);
    for (int b = 0; b < bins; b++) {
      double after = leftOf(b + 1, place);
      row[offset + Math.min(b, bins - 1 - b)] += (after - before) * scale;
      before = after;
    }
  }

  /** The weight covered at a place; weights of half the bins, mirrored. */
  double covered(int place, double[] weights, int offset) {
    return covered(place, mirrored(weights, offset));
  }

  private double[] mirrored(double[] weights, int offset) {
    double[] ofBins = new double[bins];
    Arrays.setAll(ofBins, b -> weights[offset + Math.min(b, bins - 1 - b)]);
    return ofBins;
  }

  /** First border that the piece may reach, at a place before the last. */
  private int from(int place) {
    return Math.max(0, (place + first) / STEPS);
  }

  /** Last border that the piece may reach, at a place before the last. */
  private int to(int place) {
    return Math.min(bins, (place + first + left.length) / STEPS + 1);
  }

  private double covered(int place, double[] ofBins) {
    int from = place < steps ? from(place) : 0;
    int to = place < steps ? to(place) : bins;
    double sum = 0;
    double before = from < to ? leftOf(from, place) : 0;
    for (int b = from; b < to; b++) {
      double after = leftOf(b + 1, place);
      sum += (after - before) * ofBins[b];
      before = after;
    }
    return sum;
  }

  /** The place where least is covered. */
  int worst(double[] weights, int offset) {
    double[] ofBins = mirrored(weights, offset);
    int worst = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int place = 0; place <= steps; place++) {
      double covered = covered(place, ofBins);
      if (covered < least) {
        least = covered;
        worst = place;
      }
    }
    return worst;
  }

  /**
   * At most the weight covered at any place, steps or between them. As the centre moves by a step
   * s, the covered weight changes at a rate of Σ J·l over the borders of bins: J the jump of the
   * weight there, l the length of that border in the sector. If l varies by at most v, the rate
   * varies by at most q = Σ |J|·v, and the weight sinks below both ends' by at most q·s/4.
   */
  double least(double[] weights, int offset) {
    double[] ofBins = mirrored(weights, offset);
    double[] jumps = new double[bins + 1];
    Arrays.setAll(jumps, b -> Math.abs((b < bins ? ofBins[b] : 0) - (b > 0 ? ofBins[b - 1] : 0)));
    double least = covered(0, ofBins);
    double before = least;
    for (int place = 0; place < steps; place++) {
      double after = covered(place + 1, ofBins);
      double rate = 0;
      for (int b = from(place); b <= to(place); b++) {
        int k = b * STEPS - place - first;
        if (k >= 0 && k < variation.length) {
          rate += jumps[b] * variation[k];
        }
      }
      double width = place == steps - 1 ? lastStep : step;
      least = Math.min(least, Math.min(before, after) - rate * width / 4);
      before = after;
    }
    return least;
  }
}
