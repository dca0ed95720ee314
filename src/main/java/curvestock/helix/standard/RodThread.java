package curvestock.helix.standard;

import curvestock.units.Length;
import java.util.List;

/**
 * A threaded rod.
 *
 * @param name as it is sold, for example {@code M8}
 * @param diameter nominal outer diameter
 * @param pitch how far a nut moves in one turn
 */
public record RodThread(String name, Length diameter, Length pitch) {

  private static final List<Sourced<RodThread>> KNOWN =
      CsvTable.read("rod-threads.csv").rows().stream()
          .map(
              row ->
                  row.sourced(
                      new RodThread(row.text("name"), row.length("diameter"), row.length("pitch"))))
          .toList();

  /**
   * @throws IllegalArgumentException if the name is blank, or a length not above zero
   */
  public RodThread {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a threaded rod must have a name");
    }
    diameter.requirePositive("rod diameter");
    pitch.requirePositive("thread pitch");
  }

  public static List<Sourced<RodThread>> known() {
    return KNOWN;
  }

  /**
   * The thread of that name.
   *
   * @throws IllegalArgumentException if no such thread is in the table
   */
  public static RodThread named(String name) {
    return KNOWN.stream()
        .map(Sourced::value)
        .filter(thread -> thread.name.equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "thread must be one of "
                        + KNOWN.stream().map(thread -> thread.value().name).toList()
                        + ", but was "
                        + name));
  }
}
