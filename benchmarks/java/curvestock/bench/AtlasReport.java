package curvestock.bench;

import curvestock.bound.Bound;
import curvestock.layout.Layout;
import curvestock.packing.Control;
import curvestock.packing.Effort;
import curvestock.packing.Packed;
import curvestock.packing.PackedStore;
import curvestock.packing.Packer;
import curvestock.packing.Packers;
import curvestock.packing.SearchSettings;
import curvestock.packing.atlas.Atlas;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Predicate;

/**
 * What the atlas is worth for sizes that are not in it: random arcs between its grid points, on
 * usual sheets with usual gaps, packed with and without it.
 */
public final class AtlasReport {

  private AtlasReport() {}

  /**
   * One question and its answers: pieces, and processor seconds of the relaxed start and the runs.
   */
  private record Row(
      String name,
      int patterns,
      int start,
      int quickWithout,
      int quickWith,
      int normalWithout,
      int normalWith,
      double startSeconds,
      double quickWithoutSeconds,
      double quickWithSeconds,
      boolean right) {

    /** Whether the atlas gave a start. */
    boolean isCharted() {
      return start > patterns;
    }
  }

  /**
   * @param arguments sizes to try; seed; parts of a turn, joined by commas; kinds of sheet by their
   *     number, joined by commas; how many of the sizes are also packed at normal effort
   */
  public static void main(String[] arguments) throws IOException {
    int sizes = Integer.parseInt(arguments[0]);
    SplittableRandom random = new SplittableRandom(Long.parseLong(arguments[1]));
    int[] parts = numbers(arguments[2]);
    int[] sheets = numbers(arguments[3]);
    int normal = Integer.parseInt(arguments[4]);
    List<Row> rows = new ArrayList<>();
    Report report =
        new Report(
            Settings.REPORTS.resolve("report-atlas.md"),
            "Layouts from the atlas for sizes that are not in it",
            "efforts quick and, for "
                + normal
                + " sizes, normal; seed 1, sizes by seed "
                + arguments[1]);
    while (rows.size() < sizes) {
      RandomArc size = RandomArc.next(random, parts, sheets);
      row(size, rows.size() < normal).ifPresent(rows::add);
      report.body(body(rows, arguments));
    }
    for (String line : AtlasCases.section()) {
      report.line(line);
    }
    report.finish();
  }

  private static int[] numbers(String joined) {
    return List.of(joined.split(",", -1)).stream().mapToInt(Integer::parseInt).toArray();
  }

  private static Optional<Row> row(RandomArc size, boolean normally) {
    Packer with = packer(size, Effort.QUICK, Atlas.SHIPPED);
    int bound = Bound.quick(size.piece(), size.stock(), size.cutting()).count();
    Layout patterns = with.structured(size.piece()).layout();
    if (bound == 0) {
      return Optional.empty();
    }
    double start = ProcessorTime.seconds();
    Optional<Packed> charted = with.charted(size.piece(), bound);
    double charting = ProcessorTime.seconds() - start;
    int without = -1;
    int normalWith = -1;
    Layout quick = packed(size, Effort.QUICK, Atlas.NONE, bound);
    double quickSeconds = ProcessorTime.seconds() - start - charting;
    Layout better = packed(size, Effort.QUICK, Atlas.SHIPPED, bound);
    double betterSeconds = ProcessorTime.seconds() - start - charting - quickSeconds;
    if (normally) {
      without = count(packed(size, Effort.NORMAL, Atlas.NONE, bound));
      normalWith = count(packed(size, Effort.NORMAL, Atlas.SHIPPED, bound));
    }
    return Optional.of(
        new Row(
            size.toString(),
            count(patterns),
            charted.map(packed -> count(packed.layout())).orElse(count(patterns)),
            count(quick),
            count(better),
            without,
            normalWith,
            charting,
            quickSeconds,
            betterSeconds,
            AtlasTable.isRight(better)
                && charted.map(packed -> AtlasTable.isRight(packed.layout())).orElse(true)));
  }

  private static int count(Layout layout) {
    return layout.placements().size();
  }

  private static Layout packed(RandomArc size, Effort effort, Atlas atlas, int bound) {
    return packer(size, effort, atlas).most(size.piece(), bound, Control.NONE).layout();
  }

  private static Packer packer(RandomArc size, Effort effort, Atlas atlas) {
    return new Packers(PackedStore.NONE, atlas)
        .of(size.stock(), size.cutting(), new SearchSettings(1, effort));
  }

  private static String body(List<Row> rows, String[] arguments) throws IOException {
    StringBuilder text = new StringBuilder();
    line(
        text,
        "%d charts of %d pieces, %.0f KB of text. Arguments %s: random sizes, each on a sheet and with"
            + " a gap drawn at random, margin twice the gap. Processor seconds of the one thread that"
            + " worked.",
        Atlas.SHIPPED.charts().size(),
        Atlas.SHIPPED.charts().stream().mapToInt(chart -> chart.count()).sum(),
        Files.size(AtlasTable.FILE) / 1000.0,
        String.join(" ", arguments));
    line(text, "");
    verdicts(text, rows);
    line(text, "");
    table(text, rows);
    return text.toString();
  }

  private static void verdicts(StringBuilder text, List<Row> rows) {
    List<Row> normal = rows.stream().filter(row -> row.normalWithout() >= 0).toList();
    line(text, "| question | answer |");
    line(text, "|---|---|");
    share(text, "layouts right by the independent check", rows, Row::right);
    share(text, "start alone holds more than the patterns", rows, Row::isCharted);
    share(
        text, "start alone reaches quick without", rows, row -> row.start() >= row.quickWithout());
    share(text, "start alone reaches normal without", normal, r -> r.start() >= r.normalWithout());
    share(
        text,
        "the same, where there is a start",
        normal.stream().filter(Row::isCharted).toList(),
        row -> row.start() >= row.normalWithout());
    share(
        text,
        "quick without reaches normal without",
        normal,
        row -> row.quickWithout() >= row.normalWithout());
    share(
        text,
        "quick with reaches normal without",
        normal,
        row -> row.quickWith() >= row.normalWithout());
    share(text, "quick with betters quick without", rows, r -> r.quickWith() > r.quickWithout());
    share(text, "quick with is below quick without", rows, r -> r.quickWith() < r.quickWithout());
    share(
        text,
        "normal with betters normal without",
        normal,
        r -> r.normalWith() > r.normalWithout());
    share(
        text,
        "normal with is below normal without",
        normal,
        r -> r.normalWith() < r.normalWithout());
    share(
        text,
        "quick search adds to the start",
        rows.stream().filter(Row::isCharted).toList(),
        row -> row.quickWith() > row.start());
    line(
        text,
        "| seconds: start, quick without, quick with; in all | %.1f, %.1f, %.1f |",
        rows.stream().mapToDouble(Row::startSeconds).sum(),
        rows.stream().mapToDouble(Row::quickWithoutSeconds).sum(),
        rows.stream().mapToDouble(Row::quickWithSeconds).sum());
  }

  private static void table(StringBuilder text, List<Row> rows) {
    line(
        text,
        "| size | patterns | start | quick without | with | normal without | with | start s | quick"
            + " without s | with s |");
    line(text, "|---|--:|--:|--:|--:|--:|--:|--:|--:|--:|");
    for (Row row : rows) {
      line(
          text,
          "| %s | %d | %d | %d | %d | %s | %s | %.2f | %.2f | %.2f |",
          row.name(),
          row.patterns(),
          row.start(),
          row.quickWithout(),
          row.quickWith(),
          row.normalWithout() < 0 ? "" : row.normalWithout(),
          row.normalWith() < 0 ? "" : row.normalWith(),
          row.startSeconds(),
          row.quickWithoutSeconds(),
          row.quickWithSeconds());
    }
  }

  private static void share(
      StringBuilder text, String question, List<Row> rows, Predicate<Row> which) {
    if (rows.isEmpty()) {
      return;
    }
    line(text, "| %s | %d of %d |", question, rows.stream().filter(which).count(), rows.size());
  }

  private static void line(StringBuilder text, String form, Object... values) {
    text.append(values.length == 0 ? form : String.format(Locale.ROOT, form, values)).append('\n');
  }
}
