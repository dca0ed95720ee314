package curvestock.helix.standard;

import curvestock.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * NEM 113 (2016): an easement of length L = √(24·f·R) shifts the circle by f from its tangent. None
 * is needed beyond a radius of 60 gauges.
 */
public final class EasementLength {

  private static final List<CsvTable.Row> ROWS = CsvTable.read("easement-shift.csv").rows();
  private static final double NEEDED_UP_TO_GAUGES = 60;

  private EasementLength() {}

  /** The published shift; empty for a scale without one. */
  public static Optional<Sourced<Length>> shift(Scale scale) {
    return ROWS.stream()
        .filter(row -> scale.isCalled(row.text("scale")))
        .map(row -> row.sourced(row.length("shift")))
        .findFirst();
  }

  /** √(24·shift·radius). */
  public static Length of(Length shift, Length radius) {
    return Length.ofMillimetres(Math.sqrt(24 * shift.millimetres() * radius.millimetres()));
  }

  /** Whether the radius is small enough to ask for an easement. */
  public static boolean isAskedFor(Scale scale, Length radius) {
    return radius.compareTo(scale.gauge().times(NEEDED_UP_TO_GAUGES)) <= 0;
  }
}
