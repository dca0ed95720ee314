package curvestock.job;

import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import java.util.Optional;

/**
 * What every reader shares: where problems go, and the unit of bare numbers.
 *
 * @param unit what {@code units:} at the top of the file says; empty if bare lengths are refused
 */
record Reading(Problems problems, Optional<LengthUnit> unit) {

  /** How messages print lengths. */
  LengthStyle style() {
    return unit.filter(LengthUnit::isImperial).isPresent()
        ? LengthStyle.INCH_FRACTIONS
        : LengthStyle.METRIC;
  }
}
