package curvestock.bench;

import curvestock.packing.Effort;
import curvestock.packing.SearchSettings;
import java.nio.file.Path;
import java.util.Locale;

/**
 * What a run was asked for, from the system properties {@code bench.*}.
 *
 * @param seconds time limit of the grid model's solver
 * @param placements most placements in the grid model
 * @param only pattern of the names of the cases to run
 */
record Settings(SearchSettings search, double seconds, int placements, String only) {

  static final Path DATA = Path.of("benchmarks", "data");
  static final Path REPORTS = Path.of("benchmarks");

  static Settings fromProperties() {
    String effort = System.getProperty("bench.effort", "quick").toUpperCase(Locale.ROOT);
    return new Settings(
        new SearchSettings(1, Effort.valueOf(effort)),
        Double.parseDouble(System.getProperty("bench.seconds", "10")),
        Integer.getInteger("bench.placements", 1500),
        System.getProperty("bench.only", ".*"));
  }

  /** A run of part of the table leaves the report of the whole alone. */
  Path report(String name) {
    return REPORTS.resolve(only.equals(".*") ? name : "part-" + name);
  }

  /** As heads of reports say it: {@code effort quick, seed 1}. */
  String asked() {
    return "effort " + search.effort().name().toLowerCase(Locale.ROOT) + ", seed " + search.seed();
  }
}
