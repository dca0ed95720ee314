package curvestock.helix.standard;

import curvestock.units.Length;
import java.util.List;

/** How far apart the supports of plywood roadbed may stand. Common practice, no source. */
public final class SupportSpacing {

  private static final List<CsvTable.Row> ROWS = CsvTable.read("support-spacing.csv").rows();

  /**
   * Plywood sold as half an inch may measure 0.438 in (PS 1-19, performance category 15/32) and
   * still goes by its row.
   */
  private static final double NOMINAL_ALLOWANCE = 0.875;

  /** The widest span is a rule of thumb: a twentieth more is no other span. */
  private static final double ABOUT = 1.05;

  private SupportSpacing() {}

  /** From the spacing that is surely close enough to the widest in use. */
  public record Range(Length careful, Length widest) {

    /** The widest span that passes: a rule of thumb is no gauge, so a twentieth more will do. */
    public Length most() {
      return widest.times(ABOUT);
    }
  }

  /**
   * The row of plywood sold as this thick (an eighth less than nominal is forgiven); between two
   * rows in proportion, as the span of a board that may sag by the same share of it grows with its
   * thickness; the first row for anything thinner, the last for anything thicker.
   */
  public static Sourced<Range> forThickness(Length thickness) {
    CsvTable.Row below = ROWS.get(0);
    for (CsvTable.Row row : ROWS) {
      Length nominal = row.length("thickness");
      if (nominal.times(NOMINAL_ALLOWANCE).compareTo(thickness) <= 0) {
        below = row;
      } else if (below.length("thickness").compareTo(thickness) < 0) {
        return between(below, row, thickness);
      }
    }
    return range(below, below.length("least"), below.length("most"));
  }

  private static Sourced<Range> between(CsvTable.Row below, CsvTable.Row above, Length thickness) {
    double from = below.length("thickness").millimetres();
    double part =
        (thickness.millimetres() - from) / (above.length("thickness").millimetres() - from);
    return range(below, between(below, above, "least", part), between(below, above, "most", part));
  }

  /** In whole quarters of an inch, the next less: it is a rule of thumb. */
  private static Length between(CsvTable.Row below, CsvTable.Row above, String key, double part) {
    double inches = below.length(key).inches() * (1 - part) + above.length(key).inches() * part;
    return Length.ofInches(Math.floor(inches * 4 + 1e-9) / 4);
  }

  private static Sourced<Range> range(CsvTable.Row row, Length careful, Length widest) {
    return row.sourced(new Range(careful, widest));
  }
}
