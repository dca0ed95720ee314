package curvestock.packing.atlas;

import java.nio.ByteBuffer;
import java.util.Base64;
import java.util.Locale;

/**
 * A layout of like arcs on a rectangle, for the largest pieces that it was found to take.
 *
 * <p>Of each piece three numbers: where its middle lies (the point at mid-width on its bisector),
 * as a share of the long and of the short side of the rectangle that widened pieces may touch, and
 * the direction from its centre to there. Each is kept in 16 bits: to within 0.02 mm on a sheet of
 * 2440 mm.
 */
public final class Chart {

  private static final int BYTES = 6;
  private static final double STEPS = 65535;

  private final Proportions proportions;
  private final int count;
  private final String places;

  private Chart(Proportions proportions, int count, String places) {
    this.proportions = proportions;
    this.count = count;
    this.places = places;
  }

  /**
   * A chart of pieces that lie there.
   *
   * @param places for each piece the shares of the long and the short side, from 0 to 1, and the
   *     direction in radians
   */
  public static Chart of(Proportions proportions, double[] places) {
    ByteBuffer bytes = ByteBuffer.allocate(BYTES * (places.length / 3));
    for (int k = 0; k < places.length; k++) {
      double turns = places[k] / (2 * Math.PI);
      double share = k % 3 == 2 ? turns - Math.floor(turns) : places[k];
      long step = Math.round(STEPS * Math.max(0, Math.min(1, share)));
      bytes.putShort((short) step);
    }
    String text = Base64.getEncoder().withoutPadding().encodeToString(bytes.array());
    // What is kept is what will be read back, also of the proportions.
    return parse(line(proportions, places.length / 3, text));
  }

  /**
   * The chart on a line of the table.
   *
   * @throws IllegalArgumentException if it is none
   */
  static Chart parse(String line) {
    String[] parts = line.split(" ", -1);
    if (parts.length != 6) {
      throw new IllegalArgumentException("a chart must have 6 parts, but had: " + line);
    }
    Proportions proportions =
        new Proportions(
            StrictMath.toRadians(Double.parseDouble(parts[0])),
            Double.parseDouble(parts[2]),
            Double.parseDouble(parts[3]),
            Double.parseDouble(parts[1]));
    Chart chart = new Chart(proportions, Integer.parseInt(parts[4]), parts[5]);
    if (parts[5].length() != (BYTES * chart.count * 4 + 2) / 3) {
      throw new IllegalArgumentException(
          "a chart of " + chart.count + " pieces must name as many places, but was: " + line);
    }
    return chart;
  }

  /** Sweep in degrees, aspect, outer radius, width, count, and the places in base 64. */
  String line() {
    return line(proportions, count, places);
  }

  private static String line(Proportions of, int count, String places) {
    return String.format(
        Locale.ROOT,
        "%.3f %.4f %.5f %.5f %d %s",
        StrictMath.toDegrees(of.sweep()),
        of.aspect(),
        of.outer(),
        of.width(),
        count,
        places);
  }

  /** The largest pieces for which it was found. */
  public Proportions proportions() {
    return proportions;
  }

  /** Pieces in it. */
  public int count() {
    return count;
  }

  /** The places as {@link #of} takes them. */
  public double[] places() {
    ByteBuffer bytes = ByteBuffer.wrap(Base64.getDecoder().decode(places));
    double[] read = new double[3 * count];
    for (int k = 0; k < read.length; k++) {
      double share = (bytes.getShort() & 0xffff) / STEPS;
      read[k] = k % 3 == 2 ? 2 * Math.PI * share : share;
    }
    return read;
  }
}
