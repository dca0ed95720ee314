package curvestock.helix.build;

import curvestock.units.Length;
import java.util.List;

/**
 * A strip on edge, bent round the roadbed's edge and glued to it from one support to the next where
 * supports between are left out; on every turn that passes there. It begins at the underside and
 * stands up beside the track, so that nothing hangs over the turn below.
 *
 * @param stations where the supports are left out, at least one
 * @param outer whether at the outer edge
 * @param from distance along the line where the lowest begins
 * @param to where it ends
 */
public record Bridge(List<Station> stations, boolean outer, double from, double to) {

  private static final double ROUNDING = 1e-6;

  public Bridge {
    stations = List.copyOf(stations);
  }

  /** One for each turn that passes. */
  public int count() {
    return stations.get(0).places().size();
  }

  /** Along the line. */
  public Length length() {
    return Length.ofMillimetres(to - from);
  }

  /** The stations' names, for example {@code S19, S20}. */
  public String over() {
    return String.join(", ", stations.stream().map(Station::name).toList());
  }

  /** A sixteenth of the span, as for joists: common practice, no source. In steps of 5 mm. */
  public Length height() {
    return Length.ofMillimetres(5 * Math.ceil((to - from) / 16 / 5));
  }

  /** Whether the strip of some turn begins there. */
  boolean beginsAt(double start) {
    double lowest = stations.get(0).lowest();
    return stations.get(0).places().stream()
        .anyMatch(place -> Math.abs(place - lowest + from - start) < ROUNDING);
  }

  /** Both strips as one, if they lie in the same place. */
  boolean isOne(Bridge other) {
    return outer == other.outer
        && Math.abs(from - other.from) < ROUNDING
        && Math.abs(to - other.to) < ROUNDING;
  }
}
