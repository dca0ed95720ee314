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
  /** A saw's kerf or a router bit; zero is allowed, for a knife or to see the ideal. */
  KERF(0, 50.8, "from 0 to 50.8 mm (2 in)"),
  /** A distance along the track, a straight: zero is allowed. */
  DISTANCE(0, 100_000, "from 0 to 100 m (328 ft)"),
  /** A margin, extra spacing: zero is allowed. */
  GAP(0, 1000, "from 0 to 1 m (39 in)"),
  /** Clear width for a person. */
  OPENING(0, 10_000, "from 0 to 10 m (33 ft)"),
  /** How far lines may stray from the arcs they stand for. */
  FINENESS(0.005, 0.2, "from 0.005 mm (0.0002 in) to 0.2 mm (0.008 in)"),
  /** Of a drawn line. */
  LINE_WIDTH(0.001, 2, "from 0.001 mm to 2 mm (0.08 in)"),
  /** Diameter of a cutting tool. */
  BIT(0.1, 50.8, "from 0.1 mm (0.004 in) to 50.8 mm (2 in)"),
  /** Of a bridge of wood. */
  TAB(0.1, 50, "from 0.1 mm (0.004 in) to 50 mm (2 in)"),
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
      field.note(lacksUnit(text) ? missingUnit(text) : e.getMessage());
      return Optional.empty();
    }
  }

  /** Whether the text is a length but for its unit. */
  static boolean lacksUnit(String text) {
    return !isLength(text, Optional.empty()) && isLength(text, Optional.of(LengthUnit.INCH));
  }

  private static boolean isLength(String text, Optional<LengthUnit> unit) {
    try {
      return unit.map(u -> Length.parse(text, u)).orElseGet(() -> Length.parse(text)) != null;
    } catch (LengthFormatException e) {
      return false;
    }
  }

  /** The usual slip: a good number, but of what? */
  private static String missingUnit(String text) {
    double number = Length.parse(text, LengthUnit.MILLIMETRE).millimetres();
    // Big numbers are most likely millimetres already.
    double millimetres = number >= 100 ? number : Math.rint(number * 25.4);
    return Words.quoted(text)
        + " has no unit; write a number with a unit such as \""
        + text
        + " in\" or \""
        + LengthStyle.METRIC.format(Length.ofMillimetres(millimetres))
        + "\", or set `units: in` at the top";
  }
}
