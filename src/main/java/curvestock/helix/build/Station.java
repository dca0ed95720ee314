package curvestock.helix.build;

import curvestock.helix.build.SupportRow.Edges;
import java.util.List;

/**
 * A place in plan where the roadbed is held up, the same on every turn.
 *
 * @param name as on tables and drawing: {@code S3} on the ring, {@code E1} on the entry's lead,
 *     {@code X1} on the exit's, each numbered in order of climb
 * @param places distances along the line where the roadbed passes the station, lowest first
 * @param edges where it can be held: both edges, or one if the other's support is left out
 */
public record Station(String name, List<Double> places, Edges edges) {
  public Station {
    places = List.copyOf(places);
  }

  /** A station at both edges. */
  public Station(String name, List<Double> places) {
    this(name, places, Edges.BOTH);
  }

  Station heldAt(Edges other) {
    return new Station(name, places, other);
  }

  /** Where the roadbed passes first, on supports that stand on the base. */
  public double lowest() {
    return places.get(0);
  }

  /** Where it passes last, with nothing above. */
  public double highest() {
    return places.get(places.size() - 1);
  }
}
