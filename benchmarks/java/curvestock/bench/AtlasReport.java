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
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.ToIntFunction;

/**
 * What the atlas is worth for sizes that are not in it: random arcs between its grid points, on
 * usual sheets with usual gaps, packed with and without it.
 */
public final class AtlasReport {

  /** Length, width in mm. */
  private static final double[][] SHEETS = {
    {2438.4, 1219.2}, {2440, 1220}, {2500, 1250}, {1219.2, 1219.2}, {1525, 1525}, {1524, 1524}
  };

  private static final double[] GAPS = {3.175, 6.35, 3, 6};

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
      boolean right) {}

  private record Size(int parts, double radius, double width, double[] sheet, double gap) {
    static Size next(SplittableRandom random, int[] parts, double[][] sheets) {
      int n = parts[random.nextInt(parts.length)];
      double radius = 240 * StrictMath.pow(4, random.nextDouble());
      double width = radius * random.nextDouble(0.1, 0.22);
      return new Size(
          n,
          Math.rint(radius),
          Math.rint(width),
          sheets[random.nextInt(sheets.length)],
          GAPS[random.nextInt(GAPS.length)]);
    }

    Piece piece() {
      return Piece.of(
          "A",
          "segment",
          new AnnularSector(
              Length.ofMillimetres(radius),
              Length.ofMillimetres(width),
              Angle.ofDegrees(360.0 / parts)));
    }

    SheetStock stock() {
      return SheetStock.rectangle(
          "sheet",
          Length.ofMillimetres(sheet[0]),
          Length.ofMillimetres(sheet[1]),
          Length.ofMillimetres(12),
          Money.ZERO);
    }

    Cutting cutting() {
      return Cutting.leaving(Length.ofMillimetres(gap), Length.ZERO, Length.ofMillimetres(2 * gap));
    }

    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "1/%d, radius %.0f, width %.0f, gap %.1f, sheet %.0f × %.0f",
          parts,
          radius,
          width,
          gap,
          sheet[0],
          sheet[1]);
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
    int[] which = numbers(arguments[3]);
    int normal = Integer.parseInt(arguments[4]);
    double[][] sheets = new double[which.length][];
    for (int k = 0; k < which.length; k++) {
      sheets[k] = SHEETS[which[k]];
    }
    List<Row> rows = new ArrayList<>();
    for (int k = 0; rows.size() < sizes; k++) {
      Size size = Size.next(random, parts, sheets);
      row(size, rows.size() < normal).ifPresent(rows::add);
      Files.writeString(Settings.REPORTS.resolve("report-atlas.md"), report(rows, arguments));
    }
  }

  private static int[] numbers(String joined) {
    return List.of(joined.split(",", -1)).stream().mapToInt(Integer::parseInt).toArray();
  }

  private static Optional<Row> row(Size size, boolean normally) {
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
            AtlasBuild.isRight(better)
                && charted.map(packed -> AtlasBuild.isRight(packed.layout())).orElse(true)));
  }

  private static int count(Layout layout) {
    return layout.placements().size();
  }

  private static Layout packed(Size size, Effort effort, Atlas atlas, int bound) {
    return packer(size, effort, atlas).most(size.piece(), bound, Control.NONE).layout();
  }

  private static Packer packer(Size size, Effort effort, Atlas atlas) {
    return new Packers(PackedStore.NONE, atlas)
        .of(size.stock(), size.cutting(), new SearchSettings(1, effort));
  }

  private static String report(List<Row> rows, String[] arguments) throws IOException {
    StringBuilder text = new StringBuilder();
    List<Row> normal = rows.stream().filter(row -> row.normalWithout() >= 0).toList();
    ToIntFunction<Row> best =
        row -> Math.max(row.quickWithout(), Math.max(row.normalWithout(), row.normalWith()));
    line(text, "# Layouts from the atlas for sizes that are not in it");
    line(text, "");
    line(
        text,
        "%d charts of %d pieces, %.0f KB of text. Arguments %s: random sizes, each on a sheet and with"
            + " a gap drawn at random, margin twice the gap. Processor seconds of the one thread that"
            + " worked.",
        Atlas.SHIPPED.charts().size(),
        Atlas.SHIPPED.charts().stream().mapToInt(chart -> chart.count()).sum(),
        Files.size(AtlasBuild.TABLE) / 1000.0,
        String.join(" ", arguments));
    line(text, "");
    line(text, "| question | answer |");
    line(text, "|---|---|");
    line(text, "| layouts right by the independent check | %s |", share(rows, Row::right));
    line(
        text,
        "| start alone holds more than the patterns | %s |",
        share(rows, row -> row.start() > row.patterns()));
    line(
        text,
        "| start alone reaches quick effort without atlas | %s |",
        share(rows, row -> row.start() >= row.quickWithout()));
    line(
        text,
        "| start alone reaches normal effort without atlas | %s |",
        share(normal, row -> row.start() >= row.normalWithout()));
    line(
        text,
        "| quick without atlas reaches normal without | %s |",
        share(normal, row -> row.quickWithout() >= row.normalWithout()));
    line(
        text,
        "| quick with atlas reaches normal without | %s |",
        share(normal, row -> row.quickWith() >= row.normalWithout()));
    line(
        text,
        "| quick with atlas reaches the best of all | %s |",
        share(rows, row -> row.quickWith() >= best.applyAsInt(row)));
    line(
        text,
        "| quick with atlas betters quick without | %s |",
        share(rows, row -> row.quickWith() > row.quickWithout()));
    line(
        text,
        "| quick with atlas falls below quick without | %s |",
        share(rows, row -> row.quickWith() < row.quickWithout()));
    line(
        text,
        "| normal with atlas betters normal without | %s |",
        share(normal, row -> row.normalWith() > row.normalWithout()));
    line(
        text,
        "| normal with atlas falls below normal without | %s |",
        share(normal, row -> row.normalWith() < row.normalWithout()));
    line(
        text,
        "| quick search adds to the start | %s |",
        share(rows, row -> row.start() > row.patterns() && row.quickWith() > row.start()));
    line(
        text,
        "| seconds: start, quick without, quick with; in all | %.1f, %.1f, %.1f |",
        rows.stream().mapToDouble(Row::startSeconds).sum(),
        rows.stream().mapToDouble(Row::quickWithoutSeconds).sum(),
        rows.stream().mapToDouble(Row::quickWithSeconds).sum());
    line(text, "");
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
    return text.toString();
  }

  private static String share(List<Row> rows, java.util.function.Predicate<Row> which) {
    return rows.stream().filter(which).count() + " of " + rows.size();
  }

  private static void line(StringBuilder text, String form, Object... values) {
    text.append(values.length == 0 ? form : String.format(Locale.ROOT, form, values)).append('\n');
  }
}
