package curvestock.job;

import curvestock.units.Length;
import curvestock.units.LengthFormatException;
import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import java.util.Optional;

/** How long a length of the file may be. */
enum Lengths {
  /** A radius, a width, a side. */
  SIZE(0.1, 100_000, "from 0.1 mm (0.004 in) to 100 m (328 ft)"),
  /** Of plywood. */
  THICKNESS(0.1, 200, "from 0.1 mm (0.004 in) to 200 mm (7.9 in)"),
  /** A kerf, a margin: zero is allowed. */
  GAP(0, 1000, "from 0 to 1 m (39 in)"),
  /** A place on a sheet or in a polygon. */
  COORDINATE(-100_000, 100_000, "within 100 m (328 ft) of zero");

  private final double least;
  private final double most;
  private final String rule;

  Lengths(double least, double most, String rule) {
    this.least = least;
    this.most = most;
    this.rule = rule;
  }

  Optional<Length> read(Field field) {
    return field
        .written("a length such as \"28 in\" or \"711 mm\"")
        .flatMap(text -> read(field, text, field.reading().unit()));
  }

  /**
   * @param unit of a number without one, if the file allows it
   */
  Optional<Length> read(Field field, String text, Optional<LengthUnit> unit) {
    Optional<Length> length = parse(field, text, unit);
    if (length.isEmpty()) {
      return length;
    }
    double millimetres = length.get().millimetres();
    if (millimetres < least || millimetres > most) {
      field.note("must be " + rule + ", but was " + Words.quoted(text));
      return Optional.empty();
    }
    return length;
  }

  private static Optional<Length> parse(Field field, String text, Optional<LengthUnit> unit) {
    try {
      return Optional.of(unit.isPresent() ? Length.parse(text, unit.get()) : Length.parse(text));
    } catch (LengthFormatException e) {
      field.note(bareNumber(text).orElse(e.getMessage()));
      return Optional.empty();
    }
  }

  /** The usual slip: a good number, but of what? */
  private static Optional<String> bareNumber(String text) {
    try {
      Length.parse(text);
      return Optional.empty();
    } catch (LengthFormatException noUnit) {
      try {
        Length inches = Length.parse(text, LengthUnit.INCH);
        LengthStyle whole = new LengthStyle(LengthUnit.MILLIMETRE, 0);
        String metric =
            inches.inches() >= 100
                ? whole.format(Length.ofMillimetres(inches.inches()))
                : whole.format(Length.ofMillimetres(Math.rint(inches.millimetres())));
        return Optional.of(
            Words.quoted(text)
                + " has no unit; write a number with a unit such as \""
                + text
                + " in\" or \""
                + metric
                + "\", or set `units: in` at the top");
      } catch (LengthFormatException noNumber) {
        return Optional.empty();
      }
    }
  }
}
