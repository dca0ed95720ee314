package curvestock.helix.standard;

import curvestock.units.Length;
import java.util.Comparator;
import java.util.List;

/** How far apart the supports of plywood roadbed may stand. Common practice, no source. */
public final class SupportSpacing {

  private static final List<CsvTable.Row> ROWS = CsvTable.read("support-spacing.csv").rows();

  /** Plywood sold as half an inch is thinner by up to this share and still goes by its row. */
  private static final double NOMINAL_ALLOWANCE = 0.92;

  private SupportSpacing() {}

  /** From the spacing that is surely close enough to the widest in use. */
  public record Range(Length careful, Length widest) {}

  /**
   * The row of the thickest plywood in the table that is not thicker than this one (8 % under the
   * nominal thickness is forgiven); the first row for anything thinner.
   */
  public static Sourced<Range> forThickness(Length thickness) {
    CsvTable.Row row =
        ROWS.stream()
            .filter(r -> r.length("thickness").times(NOMINAL_ALLOWANCE).compareTo(thickness) <= 0)
            .max(Comparator.comparing(r -> r.length("thickness")))
            .orElse(ROWS.get(0));
    return row.sourced(new Range(row.length("least"), row.length("most")));
  }
}
