package curvestock.bench;

import curvestock.bound.Bound;
import curvestock.layout.Layout;
import curvestock.packing.Control;
import curvestock.packing.Effort;
import curvestock.packing.FixedSet;
import curvestock.packing.Packer;
import curvestock.packing.SearchSettings;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * How time grows with the number of small pieces on a sheet, and writes {@code
 * benchmarks/report-growth.md}: squares of wood cut to hold 10 to 200 arcs of 10 × 2 in and 60°.
 */
public final class GrowthReport {

  private static final int[] PIECES = {10, 20, 50, 100, 200};
  private static final double SEARCH_DENSITY = 0.5;
  private static final int RUNS = 3;
  private static final Cutting CUTTING =
      Cutting.leaving(Length.ofInches(0.125), Length.ZERO, Length.ofInches(0.25));

  private record Measured(
      int wanted, int laid, double first, double quick, double search, double evaluation) {}

  private final Piece piece =
      Piece.of(
          "A",
          "arc",
          new AnnularSector(Length.ofInches(10), Length.ofInches(2), Angle.ofDegrees(60)));
  private final SearchSettings quick = new SearchSettings(1, Effort.QUICK);

  private GrowthReport() {}

  public static void main(String[] args) throws IOException {
    GrowthReport report = new GrowthReport();
    report.measure(20);
    List<Measured> measured = new ArrayList<>();
    for (int n : PIECES) {
      measured.add(report.measure(n));
    }
    Report written =
        new Report(
            Settings.REPORTS.resolve("report-growth.md"),
            "Time against pieces per sheet",
            "effort quick, seed 1");
    String text = report.markdown(measured);
    System.out.print(text);
    written.body(text);
    written.finish();
  }

  private SheetStock sheet(int n, double density) {
    double side = Math.sqrt(n * piece.shape().area() / density);
    return Shrinking.sheet(side, side);
  }

  private Measured measure(int n) {
    SheetStock tight = sheet(n, 0.75);
    int bound = Bound.quick(piece, tight, CUTTING).count();
    double first = least(() -> new Packer(tight, CUTTING, quick).most(piece, 1, Control.NONE));
    double start = ProcessorTime.seconds();
    Layout full = new Packer(tight, CUTTING, quick).most(piece, bound, Control.NONE).layout();
    double whole = secondsSince(start);
    SheetStock loose = sheet(n, SEARCH_DENSITY);
    List<Piece> pieces = Collections.nCopies(n, piece);
    double search = 0;
    for (int seed = 1; seed <= RUNS; seed++) {
      start = ProcessorTime.seconds();
      Optional<Layout> found =
          new FixedSet(pieces, seed).layOn(loose, CUTTING, List.of(), 50_000_000);
      search += found.isPresent() ? secondsSince(start) / RUNS : Double.NaN;
    }
    List<Piece> laid = Collections.nCopies(full.placements().size(), piece);
    double evaluation = new FixedSet(laid, 1).secondsPerEvaluation(full);
    return new Measured(n, laid.size(), first, whole, search, evaluation);
  }

  private static double least(Runnable work) {
    double least = Double.POSITIVE_INFINITY;
    for (int run = 0; run < RUNS; run++) {
      double start = ProcessorTime.seconds();
      work.run();
      least = Math.min(least, secondsSince(start));
    }
    return least;
  }

  private static double secondsSince(double start) {
    return ProcessorTime.seconds() - start;
  }

  private String markdown(List<Measured> measured) {
    StringBuilder text = new StringBuilder();
    text.append(
        "Arcs of radius 10 in, width 2 in, 60°; gap 1/8 in. Processor seconds of one thread.");
    text.append(
        "\n\n- first layout: structured layouts of a sheet for about n pieces, least of 3"
            + "\n- quick effort: the same with the search for one piece more; its budget is a"
            + " number of pair tests, so it grows little"
            + "\n- search alone: n pieces from random starts on a sheet they fill to 50 %,"
            + " mean of 3 seeds"
            + "\n- evaluation: energy with gradient of the laid pieces, broad phase included\n\n");
    text.append("| n | laid | first layout, s | quick effort, s | search alone, s |");
    text.append(" one evaluation, µs |\n|--:|--:|--:|--:|--:|--:|\n");
    for (Measured m : measured) {
      text.append(
          String.format(
              Locale.ROOT,
              "| %d | %d | %.4f | %.3f | %.3f | %.1f |%n",
              m.wanted,
              m.laid,
              m.first,
              m.quick,
              m.search,
              1e6 * m.evaluation));
    }
    text.append(
        String.format(
            Locale.ROOT,
            "| exponent | | %.2f | %.2f | %.2f | %.2f |%n",
            exponent(measured, Measured::first),
            exponent(measured, Measured::quick),
            exponent(measured, Measured::search),
            exponent(measured, Measured::evaluation)));
    text.append("\nThe exponent is the slope of the least-squares line through the logarithms");
    text.append(" of n (pieces laid for the evaluation) and of the time; 2 would be quadratic.\n");
    return text.toString();
  }

  private static double exponent(List<Measured> measured, ToDoubleFunction<Measured> time) {
    boolean ofLaid = time.applyAsDouble(measured.get(0)) == measured.get(0).evaluation;
    return PowerLaw.exponent(
        measured.stream().mapToDouble(m -> ofLaid ? m.laid : m.wanted).toArray(),
        measured.stream().mapToDouble(time).toArray());
  }
}
