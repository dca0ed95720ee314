package curvestock.helix.standard;

import curvestock.units.Length;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A model scale.
 *
 * @param name as the trade calls it, for example {@code HO}; any name for a scale of one's own
 * @param ratio how many times the prototype is larger
 * @param gauge distance between the rails' inner faces
 */
public record Scale(String name, double ratio, Length gauge) {

  /** Millimetres in a foot of the prototype. */
  private static final double FOOT = 304.8;

  /** Millimetres between the rails: standard gauge is 1435, the widest narrow gauges 1100. */
  private static final double NARROW = 1250;

  private static final List<Sourced<Scale>> PUBLISHED =
      CsvTable.read("scales.csv").rows().stream()
          .map(
              row ->
                  row.sourced(
                      new Scale(row.text("name"), row.number("ratio"), row.length("gauge"))))
          .toList();

  /**
   * @throws IllegalArgumentException if the name is blank, or ratio or gauge are not above zero
   */
  public Scale {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a scale must have a name");
    }
    if (!(ratio > 0 && Double.isFinite(ratio))) {
      throw new IllegalArgumentException("scale ratio must be above zero, but was " + ratio);
    }
    gauge.requirePositive("gauge");
  }

  /** The scales of the open standards, smallest first, each with its source. */
  public static List<Sourced<Scale>> published() {
    return PUBLISHED;
  }

  /**
   * The published scale of that name.
   *
   * @throws IllegalArgumentException if the open standards know no such scale; the message lists
   *     those they know
   */
  public static Scale named(String name) {
    return PUBLISHED.stream()
        .map(Sourced::value)
        .filter(scale -> scale.name.equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "scale must be one of "
                        + PUBLISHED.stream()
                            .map(scale -> scale.value().name)
                            .collect(Collectors.joining(", "))
                        + ", but was "
                        + name));
  }

  /** Whether a table means this scale: HO and H0 are two spellings of one. */
  boolean isCalled(String tableName) {
    return name.equals(tableName) || (isHalfZero(name) && isHalfZero(tableName));
  }

  private static boolean isHalfZero(String name) {
    return name.equals("HO") || name.equals("H0");
  }

  /** Whether its track stands for a gauge well below the standard one of 1435 mm. */
  public boolean isNarrow() {
    return gauge.millimetres() * ratio < NARROW;
  }

  /** A length of the prototype, given in feet, at this scale. */
  public Length ofPrototypeFeet(double feet) {
    return Length.ofMillimetres(feet * FOOT / ratio);
  }
}
