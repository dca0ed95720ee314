package curvestock.bench;

import curvestock.packing.Effort;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Runs all cases of {@code benchmarks/data/cases.csv} against the three rivals and writes {@code
 * benchmarks/report-cases.md}, at quick effort {@code report-cases-quick.md}, anew after each case.
 */
public final class CompareCases {

  private CompareCases() {}

  public static void main(String[] args) throws IOException {
    Settings settings = Settings.fromProperties();
    List<BenchCase> cases = CaseTable.read(Settings.DATA.resolve("cases.csv"));
    warmUp(cases.get(0), settings);
    List<Comparison> done = new ArrayList<>();
    Effort effort = settings.search().effort();
    Report report =
        new Report(
            settings.report(effort == Effort.QUICK ? "report-cases-quick.md" : "report-cases.md"),
            "The engine against three rivals",
            settings.asked());
    for (BenchCase c : cases) {
      if (c.name().matches(settings.only())) {
        Comparison comparison = Comparison.of(c, settings);
        done.add(comparison);
        show(comparison);
        report.body(CompareReport.of(done, settings));
      }
    }
    report.finish();
  }

  /** So that the first case is not charged for loading classes and native code. */
  private static void warmUp(BenchCase c, Settings settings) {
    Comparison.of(c, new Settings(settings.search(), 1, 300, settings.only()));
  }

  private static void show(Comparison c) {
    System.out.printf(
        Locale.ROOT,
        "%-30s engine %.0f of %d (%s, %.3f s, whole %.1f s) rows %.0f stack %.0f grid %.0f"
            + " (%.1f + %.1f s)%s%n",
        c.which().name(),
        c.engine().value(),
        c.engine().bound(),
        c.engine().how(),
        c.engine().toBest(),
        c.engine().whole(),
        c.rows(),
        c.stack(),
        c.grid().value(),
        c.grid().building(),
        c.grid().toBest(),
        (c.engine().valid() ? "" : " INVALID") + (c.isBelowRival() ? " BELOW A RIVAL" : ""));
  }
}
