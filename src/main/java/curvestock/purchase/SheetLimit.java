package curvestock.purchase;

import java.util.BitSet;
import java.util.List;

/**
 * What is proven about every possible layout of one sheet, found or not: at most {@code counts[i]}
 * pieces of kind i fit, whatever else lies there, and the areas that pieces take add up to at most
 * {@code capacity}.
 *
 * @param capacity area in square millimetres, such as the usable sheet widened by half a spacing
 * @param areas area in square millimetres that a piece of each kind takes, such as the piece
 *     widened by half a spacing; in the order of the demands
 * @param counts proven upper bounds, in the order of the demands
 * @param proof how they are proven, in a few words
 */
public record SheetLimit(double capacity, List<Double> areas, List<Integer> counts, String proof) {

  /**
   * @throws IllegalArgumentException if the lists differ in length, an area is not above zero or
   *     not finite, or a count is below zero
   */
  public SheetLimit {
    areas = List.copyOf(areas);
    counts = List.copyOf(counts);
    if (areas.size() != counts.size()) {
      throw new IllegalArgumentException(
          "a sheet's limits must give an area and a count for each piece, but were %s areas and %s counts"
              .formatted(areas.size(), counts.size()));
    }
    if (!(capacity >= 0) || Double.isInfinite(capacity)) {
      throw new IllegalArgumentException(
          "capacity must be finite and not negative, but was " + capacity + " mm²");
    }
    for (double area : areas) {
      if (!(area > 0) || Double.isInfinite(area)) {
        throw new IllegalArgumentException(
            "area of a piece must be finite and above zero, but was " + area + " mm²");
      }
    }
    for (int count : counts) {
      if (count < 0) {
        throw new IllegalArgumentException(
            "proven count of a piece must not be negative, but was " + count);
      }
    }
  }

  /** The same limit for some of the pieces, in their order. */
  SheetLimit only(BitSet kinds) {
    return new SheetLimit(
        capacity,
        kinds.stream().mapToObj(areas::get).toList(),
        kinds.stream().mapToObj(counts::get).toList(),
        proof);
  }
}
