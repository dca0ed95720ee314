package curvestock.bench;

import curvestock.packing.Effort;
import curvestock.piece.Demand;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;

/**
 * Quick effort against a greater one, on the cases and on random kinds, and writes {@code
 * benchmarks/report-quick.md}, against thorough effort {@code report-quick-thorough.md}: how many
 * of the counts it reaches, and in which time. Rows done are kept in a {@link Journal}; what one
 * run does not come to is done by the next.
 */
public final class QuickReport {

  private static final int[] PARTS = {2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12};
  private static final int[] SHEETS = {0, 1, 2, 3, 4, 5};
  private static final int NO_LIMIT = 4000;
  private static final double SQUARE_INCH = 25.4 * 25.4;

  /** A goal: processor time of a kind over the calibrator. */
  private static final double MOST = 3;

  private final Effort greater;
  private final double calibrator = Calibrator.seconds();
  private final List<QuickRow> rows = new ArrayList<>();
  private final int asked;

  private QuickReport(Effort greater, int asked) {
    this.greater = greater;
    this.asked = asked;
  }

  /**
   * @param arguments the greater effort; random kinds; seed of their sizes; pattern of the names;
   *     most processor seconds of this run
   */
  public static void main(String[] arguments) throws IOException {
    Effort greater = Effort.valueOf(arguments[0].toUpperCase(Locale.ROOT));
    Pattern only = Pattern.compile(arguments[3]);
    double seconds = Double.parseDouble(arguments[4]);
    List<BenchCase> all = new ArrayList<>(CaseTable.read(Settings.DATA.resolve("cases.csv")));
    all.addAll(random(Integer.parseInt(arguments[1]), Long.parseLong(arguments[2])));
    List<BenchCase> cases = all.stream().filter(c -> only.matcher(c.name()).matches()).toList();
    String asked = "quick against " + arguments[0] + " effort, seed 1";
    String sizes = arguments[1] + " random kinds by seed " + arguments[2];
    String which = cases.size() == all.size() ? "" : ", of these all called " + arguments[3];
    String name = greater == Effort.THOROUGH ? "quick-thorough" : "quick";
    Report report =
        new Report(
            Settings.REPORTS.resolve("report-" + name + ".md"),
            "Quick effort against " + arguments[0],
            asked + ", " + sizes + which);
    Journal journal = Journal.open(Engine.packing(), name, asked + ", " + sizes);
    QuickReport quick = new QuickReport(greater, cases.size());
    quick.run(cases, journal, report, seconds);
    if (quick.rows.size() == cases.size()) {
      report.finish();
    }
  }

  private void run(List<BenchCase> cases, Journal journal, Report report, double seconds)
      throws IOException {
    double start = ProcessorTime.seconds();
    for (BenchCase c : cases) {
      Optional<List<String>> known = journal.line(c.name());
      if (known.isPresent()) {
        rows.add(QuickRow.parse(c.name(), known.get()));
      } else if (ProcessorTime.seconds() - start < seconds) {
        QuickRow row = QuickRow.of(c, greater);
        journal.note(c.name(), row.cells());
        rows.add(row);
        System.out.println(line(row));
      }
      report.body(text());
    }
    System.out.println(text());
  }

  /** Random arcs on usual sheets with usual gaps, as far as one fits. */
  private static List<BenchCase> random(int count, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<BenchCase> cases = new ArrayList<>();
    while (cases.size() < count) {
      RandomArc arc = RandomArc.next(random, PARTS, SHEETS);
      BenchCase c =
          new BenchCase(
              arc.toString(),
              arc.stock(),
              arc.cutting(),
              List.of(new Demand(arc.piece(), NO_LIMIT)));
      if (BoundingRows.count(c) > 0) {
        cases.add(c);
      }
    }
    return cases;
  }

  private String text() {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT,
            "%d of %d cases done. Processor time of one thread over the calibrator.%n%n| goal | found"
                + " |%n|---|---|%n",
            rows.size(),
            asked));
    share(text, "counts of the greater effort reached in at least 95 %", QuickRow::isReached);
    text.append(
        String.format(
            Locale.ROOT,
            "| at least 95 %% of its pieces, single kinds together | %.0f of %.0f (%.1f %%) |%n",
            pieces(QuickRow::quick),
            pieces(QuickRow::thorough),
            100 * pieces(QuickRow::quick) / Math.max(1, pieces(QuickRow::thorough))));
    share(text, "never below rows or stack", row -> !row.isBelowRival());
    share(text, "at most 3 × the calibrator a kind", row -> row.seconds() <= MOST * calibrator);
    share(text, "every layout valid by a second judgement", QuickRow::valid);
    text.append("\n| case | quick | ");
    text.append(greater.name().toLowerCase(Locale.ROOT));
    text.append(" | share | rows or stack | quick, × | greater, × |\n");
    text.append("|---|--:|--:|--:|--:|--:|--:|\n");
    rows.forEach(row -> text.append(line(row)).append('\n'));
    return text.toString();
  }

  private double pieces(ToDoubleFunction<QuickRow> of) {
    return rows.stream().filter(row -> !row.mixed()).mapToDouble(of).sum();
  }

  private void share(StringBuilder text, String goal, Predicate<QuickRow> which) {
    long found = rows.stream().filter(which).count();
    List<String> not = rows.stream().filter(which.negate()).map(QuickRow::name).limit(12).toList();
    text.append(
        String.format(
            Locale.ROOT,
            "| %s | %d of %d (%.0f %%)%s |%n",
            goal,
            found,
            rows.size(),
            rows.isEmpty() ? 0 : 100.0 * found / rows.size(),
            not.isEmpty() ? "" : "; not: " + String.join("; ", not)));
  }

  private String line(QuickRow row) {
    double unit = row.mixed() ? SQUARE_INCH : 1;
    String mark = row.isReached() ? "" : "**";
    return String.format(
        Locale.ROOT,
        "| %s | %.0f | %s%.0f%s | %.1f %% | %.0f | %.2f | %.1f |",
        row.name(),
        row.quick() / unit,
        mark,
        row.thorough() / unit,
        mark,
        100 * row.quick() / row.thorough(),
        row.rival() / unit,
        row.seconds() / calibrator,
        row.longer() / calibrator);
  }
}
