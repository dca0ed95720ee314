package curvestock.helix.standard;

import curvestock.units.Length;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** NEM 103: how much wider the clear space must be on each side of a curve. */
public final class CurveWidening {

  private static final List<CsvTable.Row> ROWS = CsvTable.read("curve-widening.csv").rows();

  private static final List<CsvTable.Row> HALF_WIDTHS =
      CsvTable.read("clear-half-width.csv").rows();

  private CurveWidening() {}

  /** Bodies up to 20, 24.2 and 27.2 m long. */
  public enum VehicleGroup {
    A(20),
    B(24.2),
    C(27.2);

    private final double metres;

    VehicleGroup(double metres) {
      this.metres = metres;
    }

    /** Of the body, in full size. */
    public Length longestBody() {
      return Length.ofMillimetres(metres * 1000);
    }
  }

  /**
   * The widening on each side; between two rows that of the smaller radius, which is the wider one.
   * Empty if the table has no row for the scale at so small a radius.
   */
  public static Optional<Sourced<Length>> eachSide(Scale scale, Length radius, VehicleGroup group) {
    return ROWS.stream()
        .filter(row -> scale.isCalled(row.text("scale")) && row.is("group", group.name()))
        .filter(row -> row.length("radius").compareTo(radius) <= 0)
        .max(Comparator.comparing(row -> row.length("radius")))
        .map(row -> row.sourced(row.length("widening")));
  }

  /** Half of the clear width beside straight track, by NEM 102; empty without a row. */
  public static Optional<Sourced<Length>> straightHalfWidth(Scale scale) {
    return HALF_WIDTHS.stream()
        .filter(row -> scale.isCalled(row.text("scale")))
        .map(row -> row.sourced(row.length("half")))
        .findFirst();
  }
}
