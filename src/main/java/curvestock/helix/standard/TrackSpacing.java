package curvestock.helix.standard;

import curvestock.units.Length;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Published distances between two tracks, as a suggestion: the user's own figure always goes first.
 *
 * <p>Between two rows of a table the row of the smaller radius is taken, which is the wider one.
 */
public final class TrackSpacing {

  private static final List<CsvTable.Row> ROWS = CsvTable.read("track-spacing.csv").rows();
  private static final String STRAIGHT = "straight";
  private static final double O_RATIO = 48;

  private TrackSpacing() {}

  /** Size of the equipment in NMRA S-8, smallest first. */
  public enum EquipmentClass {
    II("II"),
    I("I"),
    IA("Ia");

    private final String label;

    EquipmentClass(String label) {
      this.label = label;
    }
  }

  /** NEM 112; empty if its table has no row for the scale at so small a radius. */
  public static Optional<Sourced<Length>> nem112(Scale scale, Length radius) {
    return ROWS.stream()
        .filter(row -> row.is("standard", "NEM_112") && scale.isCalled(row.text("scale")))
        .filter(row -> !row.is("radius", STRAIGHT) && row.length("radius").compareTo(radius) <= 0)
        .max(Comparator.comparing(row -> row.length("radius")))
        .map(row -> row.sourced(row.length("spacing")));
  }

  /**
   * NMRA S-8: its O-scale table for O, and that table scaled by 48/ratio for any other scale
   * (derived, not a quotation). Empty if the table has no row for so small a radius.
   */
  public static Optional<Sourced<Length>> nmraS8(
      Scale scale, Length radius, EquipmentClass equipment) {
    double factor = O_RATIO / scale.ratio();
    return ROWS.stream()
        .filter(row -> row.is("standard", "NMRA_S8") && row.is("group", equipment.label))
        .filter(row -> !row.is("radius", STRAIGHT))
        .filter(row -> row.length("radius").times(factor).compareTo(radius) <= 0)
        .max(Comparator.comparing(row -> row.length("radius")))
        .map(row -> s8(row, factor));
  }

  private static Sourced<Length> s8(CsvTable.Row row, double factor) {
    Length spacing = row.length("spacing").times(factor);
    return factor == 1
        ? row.sourced(spacing)
        : new Sourced<>(spacing, "O-scale table of NMRA S-8 to scale", Certainty.DERIVED);
  }
}
