package curvestock.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Paint;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.Axis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnitSource;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.labels.StandardCategoryItemLabelGenerator;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.LevelRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.CategoryDataset;

/** How our charts look: thin lines, three colours, one generic typeface. */
final class ChartStyle {

  static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
  private static final Font LARGE = new Font(Font.SANS_SERIF, Font.BOLD, 15);
  private static final Color RULE = new Color(0xcc, 0xcc, 0xcc);
  private static final Color PALE = new Color(0xbc, 0xd0, 0xe0);
  private static final Color DARK = new Color(0x1f, 0x4e, 0x79);
  private static final Color LEAST = new Color(0xc8, 0x55, 0x00);

  private ChartStyle() {}

  static JFreeChart chart(String title, Plot plot) {
    // Else text that runs upwards becomes outlines of letters, which nobody can search or restyle.
    TextUtils.setUseDrawRotatedStringWorkaround(false);
    JFreeChart chart = new JFreeChart(title, LARGE, plot, false);
    chart.setBackgroundPaint(Color.WHITE);
    chart.setPadding(new org.jfree.chart.ui.RectangleInsets(10, 10, 10, 16));
    return chart;
  }

  static void legend(JFreeChart chart) {
    LegendTitle legend = new LegendTitle(chart.getPlot());
    legend.setPosition(RectangleEdge.BOTTOM);
    legend.setItemFont(SMALL);
    legend.setFrame(BlockBorder.NONE);
    chart.addLegend(legend);
  }

  static void axis(Axis axis) {
    axis.setLabelFont(SMALL);
    axis.setTickLabelFont(SMALL);
    axis.setAxisLinePaint(Color.BLACK);
  }

  static void wholeNumbers(NumberAxis axis) {
    axis.setStandardTickUnits(new NumberTickUnitSource(true, numbers("0")));
  }

  /** A format that no locale changes. */
  static DecimalFormat numbers(String pattern) {
    return new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Locale.ROOT));
  }

  /**
   * Bars of one series.
   *
   * @param dark index of the bar that stands out
   * @param labels what is written above each
   */
  static BarRenderer bars(int dark, List<String> labels) {
    BarRenderer renderer = new Highlighting(dark);
    renderer.setDefaultItemLabelGenerator(
        new StandardCategoryItemLabelGenerator() {
          private static final long serialVersionUID = 1L;

          @Override
          public String generateLabel(CategoryDataset data, int row, int column) {
            return labels.get(column);
          }
        });
    renderer.setBarPainter(new StandardBarPainter());
    renderer.setShadowVisible(false);
    renderer.setDrawBarOutline(true);
    renderer.setMaximumBarWidth(0.08);
    renderer.setDefaultOutlinePaint(Color.BLACK);
    renderer.setDefaultOutlineStroke(new BasicStroke(0.8f));
    renderer.setDefaultItemLabelsVisible(true);
    renderer.setDefaultItemLabelFont(SMALL);
    renderer.setDefaultPositiveItemLabelPosition(
        new ItemLabelPosition(ItemLabelAnchor.OUTSIDE12, TextAnchor.BOTTOM_CENTER));
    return renderer;
  }

  /** Lines as wide as the bars of one series. */
  static LevelRenderer levels() {
    LevelRenderer renderer = new LevelRenderer();
    renderer.setMaximumItemWidth(0.1);
    renderer.setSeriesPaint(0, LEAST);
    renderer.setSeriesStroke(0, new BasicStroke(3f));
    return renderer;
  }

  static void plot(CategoryPlot plot) {
    plot.setBackgroundPaint(Color.WHITE);
    plot.setRangeGridlinePaint(RULE);
    plot.setOutlineVisible(false);
  }

  static void plot(XYPlot plot) {
    plot.setBackgroundPaint(Color.WHITE);
    plot.setRangeGridlinePaint(RULE);
    plot.setDomainGridlinePaint(RULE);
    plot.setOutlineVisible(false);
  }

  private static final class Highlighting extends BarRenderer {
    private static final long serialVersionUID = 1L;

    private final int dark;

    Highlighting(int dark) {
      this.dark = dark;
    }

    @Override
    public Paint getItemPaint(int row, int column) {
      return column == dark ? DARK : PALE;
    }
  }
}
