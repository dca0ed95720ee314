package curvestock.bench;

import curvestock.check.CheckException;
import curvestock.check.Expectation;
import curvestock.check.LayoutCheck;
import curvestock.drawing.SheetDrawing;
import curvestock.layout.Layout;
import curvestock.packing.Control;
import curvestock.packing.PackedStore;
import curvestock.packing.Packer;
import curvestock.packing.Packers;
import curvestock.packing.SearchSettings;
import curvestock.packing.atlas.Atlas;
import curvestock.packing.atlas.Chart;
import curvestock.packing.atlas.Proportions;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The atlas while it is made: takes layouts, shrinks them onto the smallest sheet that they are
 * found to fit, and keeps them as charts in place of every chart that they make needless.
 */
final class AtlasTable {

  static final Path FILE =
      Path.of("src", "main", "resources", "curvestock", "packing", "atlas", "layouts.txt");

  private static final double[] SHRINKING = {0.99, 0.996, 0.9985};

  /** A chart is kept for pieces smaller by this than what was found: its places are rounded. */
  private static final double ROUNDING = 0.9995;

  /** Widths within this share of each other make charts rivals. */
  private static final double SAME = 0.002;

  private final SearchSettings settings;
  private final long budget;
  private final List<String> header = new ArrayList<>();
  private final List<Chart> charts = new ArrayList<>();

  /**
   * The table as it lies in the sources.
   *
   * @param budget pairs of pieces that each step of shrinking may test
   */
  AtlasTable(SearchSettings settings, long budget) throws IOException {
    this.settings = settings;
    this.budget = budget;
    List<String> table = Files.readAllLines(FILE);
    table.stream().filter(line -> line.startsWith("#")).forEach(header::add);
    charts.addAll(Atlas.charts(table));
  }

  int size() {
    return charts.size();
  }

  /** What it holds by now. */
  Atlas atlas() {
    return Atlas.of("so far", charts);
  }

  void save() throws IOException {
    List<String> table = new ArrayList<>(header);
    table.addAll(Atlas.table(charts));
    Files.write(FILE, table);
  }

  /**
   * Shrinks the sheet under a layout of one kind of arc and keeps the chart; not if another says as
   * much, if the regular patterns do, or if what is read back is not right.
   *
   * @return whether it was kept
   */
  boolean keep(Piece piece, Layout found) {
    Optional<Chart> here = packer(found, 1, Atlas.NONE).chart(found);
    if (here.isEmpty() || charts.stream().anyMatch(chart -> contains(chart, here.get()))) {
      return false;
    }
    double factor = 1;
    Layout smallest = found;
    for (double step : SHRINKING) {
      Optional<Layout> next = Optional.of(smallest);
      while (next.isPresent()) {
        smallest = next.get();
        next = smaller(found, smallest, factor * step);
        factor = next.isPresent() ? factor * step : factor;
      }
    }
    Packer packer = packer(smallest, 1, Atlas.NONE);
    int count = smallest.placements().size();
    Chart chart = rounded(packer.chart(smallest).orElseThrow());
    if (charts.stream().anyMatch(other -> contains(other, chart))
        || packer.structured(piece).layout().placements().size() >= count
        || !stands(chart, piece, found, factor / ROUNDING)) {
      return false;
    }
    charts.removeIf(other -> contains(chart, other));
    charts.add(chart);
    return true;
  }

  private Optional<Layout> smaller(Layout found, Layout smallest, double factor) {
    Packer packer = packer(found, factor, Atlas.NONE);
    return packer.pushed(smallest).or(() -> packer.shrunk(smallest, budget, Control.NONE));
  }

  /** A packer for the layout's sheet, shortened both ways by a factor, cut its way. */
  private Packer packer(Layout layout, double factor, Atlas atlas) {
    SheetStock sheet = layout.sheet();
    Cutting cutting = layout.cutting();
    SheetStock smaller =
        SheetStock.rectangle(
            sheet.name(),
            Length.ofMillimetres(sheet.length().millimetres() * factor),
            Length.ofMillimetres(sheet.width().millimetres() * factor),
            sheet.thickness(),
            sheet.price());
    return new Packers(PackedStore.NONE, atlas).of(smaller, cutting, settings);
  }

  private static Chart rounded(Chart chart) {
    Proportions of = chart.proportions();
    return Chart.of(
        new Proportions(of.sweep(), of.outer() * ROUNDING, of.width() * ROUNDING, of.aspect()),
        chart.places());
  }

  /** Whether the chart, read back, gives a layout that the independent check finds right. */
  private boolean stands(Chart chart, Piece piece, Layout found, double factor) {
    Atlas alone = Atlas.of("alone", List.of(chart));
    return packer(found, factor, alone)
        .charted(piece, chart.count())
        .filter(packed -> packed.layout().placements().size() == chart.count())
        .filter(packed -> isRight(packed.layout()))
        .isPresent();
  }

  /** By the independent check of the drawing. */
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
}
