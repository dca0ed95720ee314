package curvestock.helix.build;

import java.util.List;

/**
 * A place in plan where the turns are held up, the same on every turn.
 *
 * @param number from 1, in order of climb
 * @param places distances along the line where a turn passes the station, lowest turn first
 */
public record Station(int number, List<Double> places) {
  public Station {
    places = List.copyOf(places);
  }

  /** As on tables and drawing, for example {@code S3}. */
  public String name() {
    return "S" + number;
  }
}
