package curvestock.bench;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** The comparison as Markdown: the verdicts first, then counts, then ratios. */
final class CompareReport {

  private static final double SQUARE_INCH = 25.4 * 25.4;

  private final List<Comparison> done;
  private final Settings settings;
  private final StringBuilder text = new StringBuilder();

  private CompareReport(List<Comparison> done, Settings settings) {
    this.done = done;
    this.settings = settings;
  }

  /** Below the head. */
  static String of(List<Comparison> done, Settings settings) {
    CompareReport report = new CompareReport(done, settings);
    report.head();
    report.verdicts();
    report.singles();
    report.mixed();
    report.ratios();
    return report.text.toString();
  }

  private void head() {
    line(
        "%d cases. Grid model: at most %d placements, turns of 45°, %.0f s of CP-SAT on 2 workers from"
            + " a greedy first solution; its step is in the table. All times are processor seconds: the"
            + " engine's of its one thread, the solver's of the whole process.",
        done.size(), settings.placements(), settings.seconds());
    line("");
  }

  private void verdicts() {
    line("| goal | found |");
    line("|---|---|");
    line("| every layout valid by a second judgement | %s |", names(c -> !c.engine().valid()));
    line("| never below a rival | %s |", names(Comparison::isBelowRival));
    line(
        "| pieces at least 1.5 × bounding rows, median of single kinds | median %.2f, least %.2f |",
        median(c -> c.engine().value() / c.rows(), c -> !c.which().isMixed() && c.rows() > 0),
        least(c -> c.engine().value() / c.rows(), c -> !c.which().isMixed() && c.rows() > 0));
    line(
        "| area against bounding rows, median of several kinds | median %.2f |",
        median(c -> c.engine().value() / c.rows(), c -> c.which().isMixed() && c.rows() > 0));
    line(
        "| final count at least 20 × sooner than the grid model's own best, solver alone | median"
            + " %.0f ×; missed in %s |",
        median(Comparison::timesSooner, CompareReport::solverFound),
        names(c -> solverFound(c) && c.timesSooner() < 20));
    line(
        "| the same with the building of the grid | median %.0f ×; missed in %s |",
        median(Comparison::timesSoonerInAll, CompareReport::gridFound),
        names(c -> gridFound(c) && c.timesSoonerInAll() < 20));
    line(
        "| as many pieces as the grid model's best at least 20 × sooner, with building | median %.0f"
            + " ×; missed in %s |",
        median(Comparison::timesSoonerEven, c -> gridFound(c) && !c.which().isMixed()),
        names(c -> gridFound(c) && !c.which().isMixed() && c.timesSoonerEven() < 20));
    line(
        "| proven best possible (count = bound) | %d of %d single kinds |",
        done.stream()
            .filter(c -> !c.which().isMixed() && c.engine().pieces() == c.engine().bound())
            .count(),
        done.stream().filter(c -> !c.which().isMixed()).count());
    line("");
  }

  private static boolean solverFound(Comparison c) {
    return c.grid().toBest() > 0;
  }

  private static boolean gridFound(Comparison c) {
    return c.grid().value() > 0;
  }

  private String names(Predicate<Comparison> test) {
    List<String> names = done.stream().filter(test).map(c -> c.which().name()).toList();
    if (names.isEmpty()) {
      return "no exception";
    }
    boolean few = names.size() <= 12;
    return names.size() + (few ? ": " + String.join(", ", names) : " cases, see the ratios");
  }

  private double median(ToDoubleFunction<Comparison> of, Predicate<Comparison> which) {
    double[] sorted = done.stream().filter(which).mapToDouble(of).sorted().toArray();
    int n = sorted.length;
    return n == 0 ? Double.NaN : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
  }

  private double least(ToDoubleFunction<Comparison> of, Predicate<Comparison> which) {
    return done.stream().filter(which).mapToDouble(of).min().orElse(Double.NaN);
  }

  private void singles() {
    line("## Single kinds: pieces on one sheet");
    line("");
    line(
        "| case | count | bound | found by | seconds to it | yield | (a) rows | (b) stack | (c) grid"
            + " | its step | building | to its best |");
    line("|---|--:|--:|---|--:|--:|--:|--:|--:|--:|--:|--:|");
    for (Comparison c : done) {
      if (!c.which().isMixed()) {
        line(
            "| %s | **%.0f** | %d | %s | %.3f | %.1f %% | %.0f | %.0f | %s | %.1f mm | %.1f s | %.2f s |",
            c.which().name(),
            c.engine().value(),
            c.engine().bound(),
            c.engine().how(),
            c.engine().toBest(),
            100 * c.engine().areaYield(),
            c.rows(),
            c.stack(),
            grid(c, 1, "%.0f"),
            c.grid().step(),
            c.grid().building(),
            c.grid().toBest());
      }
    }
    line("");
    line(
        "\\* CP-SAT proved that its grid allows no more. That is no bound on free layouts."
            + " 0.00 s: CP-SAT found nothing in time, the greedy first solution stands.");
    line("");
  }

  private static String grid(Comparison c, double unit, String form) {
    String value = String.format(Locale.ROOT, form, c.grid().value() / unit);
    return value + (c.grid().proven() ? "\\*" : "");
  }

  private void mixed() {
    line("## Several kinds: area of pieces on one sheet, in square inches");
    line("");
    line(
        "| case | area | pieces | wanted | yield | seconds | (a) rows | (b) stack | (c) grid | its"
            + " step | building | to its best |");
    line("|---|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|");
    for (Comparison c : done) {
      if (c.which().isMixed()) {
        line(
            "| %s | **%.0f** | %d | %d | %.1f %% | %.3f | %.0f | %.0f | %s | %.1f mm | %.1f s | %.2f s |",
            c.which().name(),
            c.engine().value() / SQUARE_INCH,
            c.engine().pieces(),
            c.engine().bound(),
            100 * c.engine().areaYield(),
            c.engine().toBest(),
            c.rows() / SQUARE_INCH,
            c.stack() / SQUARE_INCH,
            grid(c, SQUARE_INCH, "%.0f"),
            c.grid().step(),
            c.grid().building(),
            c.grid().toBest());
      }
    }
    line("");
  }

  private void ratios() {
    line("## Ratios: the engine over each rival");
    line("");
    line(
        "| case | (a) rows | (b) stack | (c) grid | sooner than (c), solver alone | with building | to as many pieces |");
    line("|---|--:|--:|--:|--:|--:|--:|");
    for (Comparison c : done) {
      line(
          "| %s | %s | %s | %s | %s | %s | %s |",
          c.which().name(),
          ratio(c.engine().value(), c.rows()),
          ratio(c.engine().value(), c.stack()),
          ratio(c.engine().value(), c.grid().value()),
          solverFound(c) ? String.format(Locale.ROOT, "%.0f ×", c.timesSooner()) : "–",
          gridFound(c) ? String.format(Locale.ROOT, "%.0f ×", c.timesSoonerInAll()) : "–",
          gridFound(c) ? String.format(Locale.ROOT, "%.0f ×", c.timesSoonerEven()) : "–");
    }
  }

  private static String ratio(double ours, double theirs) {
    return theirs > 0 ? String.format(Locale.ROOT, "%.2f", ours / theirs) : "–";
  }

  private void line(String form, Object... values) {
    text.append(values.length == 0 ? form : String.format(Locale.ROOT, form, values)).append('\n');
  }
}
