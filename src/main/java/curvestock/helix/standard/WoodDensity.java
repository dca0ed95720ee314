package curvestock.helix.standard;

import curvestock.units.Length;
import java.util.Comparator;
import java.util.List;

/** Density of plywood in kg/m³, as a suggestion: the user's own figure goes first. */
public final class WoodDensity {

  private static final List<CsvTable.Row> ROWS = CsvTable.read("wood-density.csv").rows();

  private WoodDensity() {}

  /** Kinds of plywood that the table knows. */
  public enum Wood {
    BIRCH("birch"),
    SOFTWOOD("softwood");

    private final String label;

    Wood(String label) {
      this.label = label;
    }
  }

  /** The density of the table's thickness nearest to this one. */
  public static Sourced<Double> of(Wood wood, Length thickness) {
    return ROWS.stream()
        .filter(row -> row.is("wood", wood.label))
        .min(Comparator.comparingDouble(row -> Math.abs(gap(row, thickness))))
        .map(row -> row.sourced(row.number("density")))
        .orElseThrow();
  }

  private static double gap(CsvTable.Row row, Length thickness) {
    return row.length("thickness").minus(thickness).millimetres();
  }
}
