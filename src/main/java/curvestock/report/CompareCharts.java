package curvestock.report;

import curvestock.answer.SegmentName;
import curvestock.compare.AngleScan;
import curvestock.compare.Comparison;
import curvestock.compare.SegmentOption;
import curvestock.drawing.Painting;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.CombinedDomainCategoryPlot;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.DefaultCategoryDataset;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The charts of a comparison, as SVG, in colours that a copier keeps apart as greys. */
public final class CompareCharts {

  public static final int WIDTH = 900;
  public static final int HEIGHT = 560;

  private final Comparison comparison;

  private CompareCharts(Comparison comparison) {
    this.comparison = comparison;
  }

  /**
   * Sheets, cost and joints of each choice; the recommended one dark, and across the bars of sheets
   * and cost a line at the least that is proven.
   */
  public static String choices(Comparison comparison) {
    return svg(new CompareCharts(comparison).choices());
  }

  /** The same for what prints it, {@value #WIDTH} by {@value #HEIGHT}. */
  public static Consumer<Graphics2D> choicesPainter(Comparison comparison) {
    return painter(new CompareCharts(comparison).choices());
  }

  /** Turns per sheet against the segment's angle, with the choices compared. */
  public static String angles(Comparison comparison, AngleScan scan) {
    return new CompareCharts(comparison).angles(scan);
  }

  private JFreeChart choices() {
    CategoryAxis axis =
        new CategoryAxis(
            "segment size, as a part of a turn (dark bar: best; orange line: no layout can need less)");
    axis.setCategoryMargin(0.4);
    ChartStyle.axis(axis);
    CombinedDomainCategoryPlot plot = new CombinedDomainCategoryPlot(axis);
    plot.setGap(14);
    plot.add(
        least(
            bars("sheets", SegmentOption::sheets, option -> Integer.toString(option.sheets())),
            option -> option.cost().leastSheets()));
    plot.add(
        least(
            bars(
                "sheet cost",
                option -> option.sheetCost().minorUnits() / 100.0,
                option -> brief(option.sheetCost().format(comparison.job().currency()))),
            option -> option.cost().leastPaid().minorUnits() / 100.0));
    plot.add(bars("joints", SegmentOption::joints, option -> Integer.toString(option.joints())));
    return ChartStyle.chart("Which segment size? " + comparison.job().title(), plot);
  }

  /** Without cents where there are none. */
  private static String brief(String money) {
    return money.endsWith(".00") ? money.substring(0, money.length() - 3) : money;
  }

  private CategoryPlot bars(
      String name, ToDoubleFunction<SegmentOption> figure, Function<SegmentOption, String> label) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    List<SegmentOption> options = comparison.options();
    for (SegmentOption option : options) {
      data.addValue(figure.applyAsDouble(option), name, SegmentName.tick(option.division()));
    }
    NumberAxis range = new NumberAxis(name);
    ChartStyle.axis(range);
    ChartStyle.wholeNumbers(range);
    range.setUpperMargin(0.35);
    int best = comparison.best().map(options::indexOf).orElse(-1);
    CategoryPlot plot =
        new CategoryPlot(
            data, null, range, ChartStyle.bars(best, options.stream().map(label).toList()));
    ChartStyle.plot(plot);
    return plot;
  }

  /** A line across each bar at what no layout can do better. */
  private CategoryPlot least(CategoryPlot plot, ToDoubleFunction<SegmentOption> figure) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (SegmentOption option : comparison.options()) {
      data.addValue(
          figure.applyAsDouble(option), "proven least", SegmentName.tick(option.division()));
    }
    plot.setDataset(1, data);
    plot.setRenderer(1, ChartStyle.levels());
    plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
    return plot;
  }

  private String angles(AngleScan scan) {
    XYSeries pattern = new XYSeries("quick count");
    for (AngleScan.Sample sample : scan.samples()) {
      pattern.add(sample.angle().degrees(), sample.turnsPerSheet());
    }
    XYSeries found = new XYSeries("fullest layouts found");
    XYPlot plot = new XYPlot();
    for (SegmentOption option : comparison.options()) {
      double angle = option.angle().degrees();
      if (option.fill().isPresent() && angle >= scan.samples().get(0).angle().degrees()) {
        found.add(angle, option.turnsPerSheet());
        XYTextAnnotation label =
            new XYTextAnnotation(
                SegmentName.tick(option.division()), angle, option.turnsPerSheet() + LIFT);
        label.setFont(ChartStyle.SMALL);
        label.setTextAnchor(TextAnchor.BOTTOM_CENTER);
        plot.addAnnotation(label);
      }
    }
    NumberAxis across = new NumberAxis("segment angle, degrees");
    across.setAutoRangeIncludesZero(false);
    NumberAxis up = new NumberAxis("turns per sheet");
    up.setUpperMargin(0.12);
    ChartStyle.axis(across);
    ChartStyle.axis(up);
    across.setNumberFormatOverride(ChartStyle.numbers("0"));
    up.setNumberFormatOverride(ChartStyle.numbers("0.0"));
    plot.setDomainAxis(across);
    plot.setRangeAxis(up);
    plot.setDataset(0, new XYSeriesCollection(pattern));
    plot.setDataset(1, new XYSeriesCollection(found));
    plot.setRenderer(0, line());
    plot.setRenderer(1, dots());
    ChartStyle.plot(plot);
    JFreeChart chart =
        ChartStyle.chart("Turns per sheet against segment angle, " + scan.sheet().name(), plot);
    ChartStyle.legend(chart);
    return svg(chart);
  }

  /** How far a label stands above its dot, in turns. */
  private static final double LIFT = 0.08;

  private static XYLineAndShapeRenderer line() {
    XYLineAndShapeRenderer line = new XYLineAndShapeRenderer(true, false);
    line.setSeriesPaint(0, Color.DARK_GRAY);
    line.setSeriesStroke(0, new BasicStroke(1.5f));
    return line;
  }

  private static XYLineAndShapeRenderer dots() {
    XYLineAndShapeRenderer dots = new XYLineAndShapeRenderer(false, true);
    dots.setSeriesPaint(0, Color.BLACK);
    dots.setSeriesShape(0, new Ellipse2D.Double(-4, -4, 8, 8));
    dots.setSeriesFillPaint(0, Color.WHITE);
    dots.setUseFillPaint(true);
    dots.setDrawOutlines(true);
    return dots;
  }

  private static String svg(JFreeChart chart) {
    return Painting.svg(WIDTH, HEIGHT, painter(chart));
  }

  private static Consumer<Graphics2D> painter(JFreeChart chart) {
    return graphics -> chart.draw(graphics, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
  }
}
