package curvestock.helix.standard;

import curvestock.units.Length;
import java.util.List;

/**
 * A threaded rod and its nut.
 *
 * @param name as it is sold, for example {@code M8}
 * @param diameter nominal outer diameter
 * @param pitch how far a nut moves in one turn
 * @param flats width of the nut across flats
 * @param nutHeight of the nut
 */
public record RodThread(
    String name, Length diameter, Length pitch, Length flats, Length nutHeight) {

  /** Basic pitch diameter: d − 0.6495 P, the same for ISO 724 and ASME B1.1. */
  private static final double BELOW_NOMINAL = 3 * Math.sqrt(3) / 8;

  /**
   * Kilograms in a cubic millimetre of steel. With the area at the pitch diameter it gives the
   * masses of DIN 976-1's table: 50.2 kg for 1000 of M10 × 100 mm (as quoted elsewhere).
   */
  static final double STEEL = 7850e-9;

  /** By DIN 934, M8: 5.2 g of 5.4 g for the full hexagon (from memory). */
  private static final double CHAMFERED = 0.04;

  private static final double COUPLING = 3;

  private static final List<Sourced<RodThread>> KNOWN =
      CsvTable.read("rod-threads.csv").rows().stream()
          .map(
              row ->
                  row.sourced(
                      new RodThread(
                          row.text("name"),
                          row.length("diameter"),
                          row.length("pitch"),
                          row.length("flats"),
                          row.length("nut"))))
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
    flats.requirePositive("nut's width across flats");
    nutHeight.requirePositive("nut height");
  }

  /**
   * Height of a hexagon coupling nut: three diameters, as DIN 6334 has it (from memory); those sold
   * by the inch are about as high.
   */
  public Length couplingNut() {
    return diameter.times(COUPLING);
  }

  /** Diameter at which thread and groove are equally wide. */
  public Length pitchDiameter() {
    return diameter.minus(pitch.times(BELOW_NOMINAL));
  }

  /** Weight of a metre of rod. */
  public double kilogramsPerMetre() {
    return circle(pitchDiameter()) * 1000 * STEEL;
  }

  /** Weight of a nut: the chamfers of its corners and mouths take about a twenty-fifth. */
  public double nutKilograms() {
    double hexagon = Math.sqrt(3) / 2 * Math.pow(flats.millimetres(), 2);
    double whole = (hexagon - circle(pitchDiameter())) * nutHeight.millimetres() * STEEL;
    return whole * (1 - CHAMFERED);
  }

  /** The washer that is usual on this rod. */
  public Washer usualWasher() {
    return Washer.usualFor(name);
  }

  /** The washer as wide as that: the standard's, where it has one. */
  public Washer washer(Length outer) {
    return Washer.forThread(name, outer);
  }

  private static double circle(Length diameter) {
    return Math.PI / 4 * Math.pow(diameter.millimetres(), 2);
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
