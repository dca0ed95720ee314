package curvestock.bench;

import curvestock.bound.Bound;
import curvestock.check.CheckException;
import curvestock.check.Expectation;
import curvestock.check.LayoutCheck;
import curvestock.drawing.SheetDrawing;
import curvestock.layout.Layout;
import curvestock.packing.Control;
import curvestock.packing.Effort;
import curvestock.packing.Packed;
import curvestock.packing.PackedStore;
import curvestock.packing.Packer;
import curvestock.packing.Packers;
import curvestock.packing.SearchSettings;
import curvestock.packing.atlas.Atlas;
import curvestock.packing.atlas.Chart;
import curvestock.packing.atlas.Proportions;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Makes the atlas of layouts, or goes on making it: each point of a grid is searched for more
 * pieces than the regular patterns and the atlas so far give; what is found is shrunk onto the
 * smallest sheet that it was found to fit and kept there as a chart, in place of every chart that
 * it makes needless.
 *
 * <p>A point once searched with some budget is searched again only with a greater one.
 */
public final class AtlasBuild {

  static final Path TABLE =
      Path.of("src", "main", "resources", "curvestock", "packing", "atlas", "layouts.txt");

  private static final Path DONE = Settings.DATA.resolve("atlas-points.csv");

  private static final double[] SHRINKING = {0.99, 0.996, 0.9985};

  /** A chart is kept for pieces smaller by this than what was found: its places are rounded. */
  private static final double ROUNDING = 0.9995;

  /** Widths within this share of each other make charts rivals. */
  private static final double SAME = 0.002;

  private final long budget;
  private final SearchSettings settings;
  private final Map<String, Long> done = new HashMap<>();
  private final List<String> header = new ArrayList<>();
  private final List<Chart> charts = new ArrayList<>();

  private AtlasBuild(long budget, long seed) throws IOException {
    this.budget = budget;
    this.settings = new SearchSettings(seed, Effort.QUICK);
    List<String> table = Files.readAllLines(TABLE);
    table.stream().filter(line -> line.startsWith("#")).forEach(header::add);
    charts.addAll(Atlas.charts(table));
    if (Files.exists(DONE)) {
      for (String line : Files.readAllLines(DONE)) {
        if (!line.startsWith("#")) {
          String[] cells = line.split(",", -1);
          done.put(cells[0], Long.parseLong(cells[1]));
        }
      }
    }
  }

  /**
   * @param arguments pairs of pieces to test at each point; seed; pattern of the points' names;
   *     most processor seconds
   */
  public static void main(String[] arguments) throws IOException {
    AtlasBuild build = new AtlasBuild(Long.parseLong(arguments[0]), Long.parseLong(arguments[1]));
    Pattern only = Pattern.compile(arguments[2]);
    double seconds = Double.parseDouble(arguments[3]);
    double start = ProcessorTime.seconds();
    for (AtlasPoint point : AtlasPoint.grid()) {
      if (ProcessorTime.seconds() - start > seconds) {
        break;
      }
      if (only.matcher(point.toString()).find()
          && build.done.getOrDefault(point.toString(), 0L) < build.budget) {
        build.search(point);
      }
    }
  }

  private void search(AtlasPoint point) throws IOException {
    Piece piece = point.piece();
    SheetStock sheet = point.sheet(1);
    Packer packer = packer(sheet, Atlas.of("so far", charts));
    int bound = Bound.quick(piece, sheet, AtlasPoint.CUTTING).count();
    int regular = packer.structured(piece).layout().placements().size();
    Packed best = packer.most(piece, bound, Control.NONE);
    boolean more = best.layout().placements().size() < bound;
    while (more) {
      Optional<Packed> found = packer.oneMore(piece, best, budget, Control.NONE);
      more = found.isPresent() && found.get().layout().placements().size() < bound;
      best = found.orElse(best);
    }
    int count = best.layout().placements().size();
    boolean kept = count > regular && keep(point, piece, best.layout());
    System.out.printf(
        "%s: patterns %d, found %d%s, %d charts, %.0f s%n",
        point, regular, count, kept ? ", kept" : "", charts.size(), ProcessorTime.seconds());
    done.put(point.toString(), budget);
    save();
  }

  /** Shrinks the sheet under the layout and keeps the chart, unless another says as much. */
  private boolean keep(AtlasPoint point, Piece piece, Layout found) {
    Chart here = packer(found.sheet(), Atlas.NONE).chart(found).orElseThrow();
    if (charts.stream().anyMatch(chart -> contains(chart, here))) {
      return false;
    }
    double factor = 1;
    Layout smallest = found;
    for (double step : SHRINKING) {
      Optional<Layout> next = Optional.of(smallest);
      while (next.isPresent()) {
        smallest = next.get();
        next = smaller(point, smallest, factor * step);
        factor = next.isPresent() ? factor * step : factor;
      }
    }
    Packer packer = packer(smallest.sheet(), Atlas.NONE);
    int count = smallest.placements().size();
    Chart chart = rounded(packer.chart(smallest).orElseThrow(), smallest);
    if (charts.stream().anyMatch(other -> contains(other, chart))
        || packer.structured(piece).layout().placements().size() >= count
        || !stands(chart, point, piece, factor / ROUNDING)) {
      return false;
    }
    charts.removeIf(other -> contains(chart, other));
    charts.add(chart);
    return true;
  }

  private Optional<Layout> smaller(AtlasPoint point, Layout layout, double factor) {
    Packer packer = packer(point.sheet(factor), Atlas.NONE);
    return packer.pushed(layout).or(() -> packer.shrunk(layout, budget / 8, Control.NONE));
  }

  private Packer packer(SheetStock sheet, Atlas atlas) {
    return new Packers(PackedStore.NONE, atlas).of(sheet, AtlasPoint.CUTTING, settings);
  }

  private static Chart rounded(Chart chart, Layout layout) {
    Proportions of = chart.proportions();
    return Chart.of(
        new Proportions(of.sweep(), of.outer() * ROUNDING, of.width() * ROUNDING, of.aspect()),
        chart.places());
  }

  /** Whether the chart, read back, gives a layout that the independent check finds right. */
  private boolean stands(Chart chart, AtlasPoint point, Piece piece, double factor) {
    Atlas alone = Atlas.of("alone", List.of(chart));
    return packer(point.sheet(factor), alone)
        .charted(piece, chart.count())
        .filter(packed -> packed.layout().placements().size() == chart.count())
        .filter(packed -> isRight(packed.layout()))
        .isPresent();
  }

  static boolean isRight(Layout layout) {
    try {
      return LayoutCheck.check(SheetDrawing.clean(layout), Expectation.of(layout))
          .findings()
          .isEmpty();
    } catch (CheckException e) {
      return false;
    }
  }

  /**
   * Whether the pieces of one chart hold those of the other, on no more sheet and at least as many
   * of them: then the other tells nothing more.
   */
  private static boolean contains(Chart chart, Chart other) {
    Proportions big = chart.proportions();
    Proportions small = other.proportions();
    return chart.count() >= other.count()
        && Math.abs(big.aspect() / small.aspect() - 1) < SAME
        && small.sweep() <= big.sweep() * (1 + SAME)
        && small.outer() <= big.outer()
        && small.outer() - small.width() >= (big.outer() - big.width()) * (1 - SAME);
  }

  private void save() throws IOException {
    List<String> table = new ArrayList<>(header);
    table.addAll(Atlas.table(charts));
    Files.write(TABLE, table);
    List<String> lines = new ArrayList<>();
    lines.add("# Points of the atlas that were searched, and with what budget: see AtlasBuild.");
    AtlasPoint.grid().stream()
        .filter(point -> done.containsKey(point.toString()))
        .forEach(point -> lines.add(point + "," + done.get(point.toString())));
    Files.write(DONE, lines);
  }
}
