package curvestock.helix.spec;

import curvestock.units.Length;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the builder changes about single supports.
 *
 * @param skipped supports to leave out: {@code S12} for both edges, {@code S12 outer} or {@code S12
 *     inner} for one
 * @param moved how far to move a station along the line, above zero in the direction of climb
 */
public record Adjustments(List<String> skipped, Map<String, Length> moved) {

  public static final Adjustments NONE = new Adjustments(List.of(), Map.of());

  public Adjustments {
    skipped = List.copyOf(skipped);
    moved = Collections.unmodifiableMap(new TreeMap<>(moved));
  }

  /** How far the station is moved, in millimetres. */
  public double shiftOf(String station) {
    return moved.getOrDefault(station, Length.ZERO).millimetres();
  }

  /** Whether the support at that edge ({@code inner} or {@code outer}) is left out. */
  public boolean skips(String station, String edge) {
    return skipped.contains(station) || skipped.contains(station + " " + edge);
  }
}
