package curvestock.helix.standard;

import curvestock.helix.standard.CurveWidening.VehicleGroup;
import curvestock.units.Length;
import java.util.List;
import java.util.Locale;

/** NEM 111: the smallest radius, as a multiple of the gauge. */
public final class SmallestRadius {

  private static final List<CsvTable.Row> ROWS = CsvTable.read("smallest-radius.csv").rows();

  private SmallestRadius() {}

  /** What the line is for. */
  public enum Use {
    PERMITTED,
    BRANCH,
    MAIN
  }

  public static Sourced<Length> nem111(Scale scale, Use use, VehicleGroup group) {
    return ROWS.stream()
        .filter(row -> row.is("use", use.name().toLowerCase(Locale.ROOT)))
        .filter(row -> row.is("group", group.name()))
        .map(row -> row.sourced(scale.gauge().times(row.number("gauges"))))
        .findFirst()
        .orElseThrow();
  }
}
