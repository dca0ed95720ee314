package curvestock.handwork;

import java.util.ArrayList;
import java.util.List;

/**
 * An arc set out from its chord, without a pivot: half the chord to both sides of its middle, and
 * the arc's height above it at stations; a batten bent through the heights gives the arc.
 *
 * <p>Exact: height(x) = √(R² − x²) − √(R² − (c/2)²), from the circle's equation.
 *
 * @param chord straight distance between the arc's ends
 * @param midHeight height above the chord's middle (the sagitta)
 * @param offsets at stations from the middle outwards, the same to both sides, without the middle
 *     and the ends
 */
public record ChordOffsets(double chord, double midHeight, List<Offset> offsets) {

  /**
   * One station.
   *
   * @param station distance from the chord's middle
   * @param height of the arc above the chord there
   */
  public record Offset(double station, double height) {}

  public ChordOffsets {
    offsets = List.copyOf(offsets);
  }

  /**
   * For an arc of at most half a turn.
   *
   * @param sweep in radians, above 0 and at most π
   * @param spacing from station to station
   * @throws IllegalArgumentException if a value is out of range
   */
  public static ChordOffsets of(double radius, double sweep, double spacing) {
    if (!(radius > 0 && spacing > 0 && sweep > 0 && sweep <= Math.PI * (1 + 1e-12))) {
      throw new IllegalArgumentException(
          "an arc set out from its chord must have a radius and spacing above zero and sweep at most"
              + " 180°, but had radius "
              + radius
              + " mm, spacing "
              + spacing
              + " mm, sweep "
              + Math.toDegrees(sweep)
              + "°");
    }
    double half = radius * Math.sin(Math.min(sweep, Math.PI) / 2);
    double foot = Math.sqrt(Math.max(0, radius * radius - half * half));
    List<Offset> offsets = new ArrayList<>();
    for (int i = 1; i * spacing < half; i++) {
      double x = i * spacing;
      offsets.add(new Offset(x, Math.sqrt(radius * radius - x * x) - foot));
    }
    return new ChordOffsets(2 * half, radius - foot, offsets);
  }
}
