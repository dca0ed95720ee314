package curvestock.bench;

import curvestock.bound.Bound;
import curvestock.packing.Control;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Proven limits beside the best counts known, for the single kinds of the cases, and writes {@code
 * benchmarks/report-bounds.md}. Nothing is packed: counts are read from the reports on the cases.
 */
public final class BoundsReport {

  /** As many as a plan at normal effort allows. */
  private static final long PROOF_TESTS = 3_000_000;

  /**
   * @param count the best known
   * @param atOnce the limit before any search
   * @param edgesMs processor time of the bound by edge waste
   * @param casesMs the same of the bound by cases, where it is tried
   * @param closely the bound at thorough effort without the cover by points, which takes minutes
   */
  private record Row(
      String name,
      int count,
      int atOnce,
      Bound bound,
      double edgesMs,
      double casesMs,
      Bound closely) {

    int gap() {
      return bound.count() - count;
    }

    int gapAtOnce() {
      return atOnce - count;
    }

    String rule() {
      return bound.proof().split(":", 2)[0];
    }
  }

  private BoundsReport() {}

  public static void main(String[] args) throws IOException {
    Settings settings = Settings.fromProperties();
    Map<String, Integer> known = new LinkedHashMap<>();
    readCounts("report-cases.md", known);
    readCounts("report-cases-quick.md", known);
    List<Row> rows = new ArrayList<>();
    Report report =
        new Report(
            settings.report("report-bounds.md"),
            "Proven limits beside the best counts known",
            "proofs as at effort normal, nothing searched, so no seed");
    for (BenchCase c : CaseTable.read(Settings.DATA.resolve("cases.csv"))) {
      if (!c.isMixed() && c.name().matches(settings.only())) {
        rows.add(row(c, known.get(c.name())));
        report.body(markdown(rows));
      }
    }
    report.finish();
    System.out.print(markdown(rows));
  }

  /** Counts of the single kinds in a report on the cases, in bold in its first table. */
  private static void readCounts(String report, Map<String, Integer> known) throws IOException {
    for (String line : Files.readAllLines(Settings.REPORTS.resolve(report))) {
      String[] cells = line.split("\\|");
      if (line.startsWith("## Several kinds")) {
        return;
      }
      if (cells.length > 5 && cells[2].strip().startsWith("**")) {
        int count = Integer.parseInt(cells[2].replace("*", "").strip());
        known.merge(cells[1].strip(), count, Math::max);
      }
    }
  }

  private static Row row(BenchCase c, int known) {
    Bound quick = Bound.quick(c.piece(), c.sheet(), c.cutting());
    double start = ProcessorTime.seconds();
    Bound edges =
        tried(quick, known, () -> quick.byEdges(c.piece(), c.sheet(), c.cutting(), false));
    double middle = ProcessorTime.seconds();
    Bound bound = tried(edges, known, () -> byCases(c, edges, known));
    double end = ProcessorTime.seconds();
    Bound closely =
        tried(bound, known, () -> bound.byEdges(c.piece(), c.sheet(), c.cutting(), true));
    return new Row(
        c.name(),
        known,
        quick.count(),
        bound,
        1000 * (middle - start),
        1000 * (end - middle),
        closely);
  }

  /** What is proven best needs no further proof. */
  private static Bound tried(Bound bound, int known, Supplier<Bound> sharper) {
    return bound.count() > known ? sharper.get() : bound;
  }

  private static Bound byCases(BenchCase c, Bound bound, int known) {
    return bound.byCases(c.piece(), c.sheet(), c.cutting(), known, PROOF_TESTS, Control.NONE);
  }

  private static String markdown(List<Row> rows) {
    StringBuilder text =
        new StringBuilder(
            """
            Single kinds of `data/cases.csv`. Count: the larger of [report-cases.md](report-cases.md) and
            [report-cases-quick.md](report-cases-quick.md). At once: the limit before any search, by area as a rule.
            Limit: what a plan at normal effort proves. Closely: with the edges looked at as at thorough effort,
            without the cover by points, which takes minutes. Processor time of one thread.

            """);
    text.append("| goal | found |\n|---|---|\n");
    line(text, "limit = count in a quarter of the kinds", best(rows));
    line(text, "gap of limit and count halved, median", gaps(rows));
    line(
        text,
        "limit below the one at once",
        rows.stream().filter(row -> row.bound().count() < row.atOnce()).count()
            + " of "
            + rows.size()
            + " kinds; closely "
            + rows.stream().filter(row -> row.closely().count() < row.atOnce()).count());
    line(
        text,
        "edges: at most 0.3 processor seconds a kind",
        String.format(
            Locale.ROOT,
            "median %.2f s, most %.2f s; over 0.3 s: %d",
            median(rows.stream().mapToDouble(Row::edgesMs).toArray()) / 1000,
            rows.stream().mapToDouble(Row::edgesMs).max().orElse(0) / 1000,
            rows.stream().filter(row -> row.edgesMs() > 300).count()));
    text.append(
        "\n| case | count | at once | limit | proven | closely | edges | cases |\n"
            + "|---|--:|--:|--:|---|--:|--:|--:|\n");
    for (Row row : rows) {
      text.append(
          String.format(
              Locale.ROOT,
              "| %s | %d | %d | %s | %s | %d | %.0f ms | %.0f ms |%n",
              row.name(),
              row.count(),
              row.atOnce(),
              row.gap() == 0 ? "**" + row.bound().count() + "**" : row.bound().count(),
              row.rule(),
              row.closely().count(),
              row.edgesMs(),
              row.casesMs()));
    }
    return text.toString();
  }

  private static void line(StringBuilder text, String goal, String found) {
    text.append("| ").append(goal).append(" | ").append(found).append(" |\n");
  }

  private static String best(List<Row> rows) {
    long reached = rows.stream().filter(row -> row.gap() == 0).count();
    return reached
        + " of "
        + rows.size()
        + "; within one: "
        + rows.stream().filter(row -> row.gap() <= 1).count();
  }

  private static String gaps(List<Row> rows) {
    double[] shares =
        rows.stream()
            .filter(row -> row.gapAtOnce() > 0)
            .mapToDouble(row -> (double) row.gap() / row.gapAtOnce())
            .toArray();
    return String.format(
        Locale.ROOT,
        "median gap %.0f, at once %.0f; median of one over the other %.2f",
        median(rows.stream().mapToDouble(Row::gap).toArray()),
        median(rows.stream().mapToDouble(Row::gapAtOnce).toArray()),
        median(shares));
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted.length == 0 ? 0 : sorted[sorted.length / 2];
  }
}
