package curvestock.report;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.job.Job;
import curvestock.plan.Plan;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What is left as a text in the job file's own format: for {@code stock-file:} of the next job, or
 * to be pasted under its {@code sheets:}. Sizes are rounded down, so that no more is promised than
 * is there.
 */
public final class StockYaml {

  /** Rounding of a conversion, in hundredths of a millimetre. */
  private static final double ROUNDING = 1e-6;

  private final Job job;
  private final LengthStyle style;
  private final List<String> lines = new ArrayList<>();

  private StockYaml(Job job) {
    this.job = job;
    this.style = job.style();
  }

  /** The text; a remark alone if nothing worth keeping is left. */
  public static String of(Plan plan) {
    return new StockYaml(plan.job()).text(plan.stockAfter());
  }

  private String text(List<SheetStock> stock) {
    lines.add("# Remnants and sheets on hand after this job: " + job.title());
    lines.add(
        "# Measure them before you use them. The next job can read this file: `stock-file: remnants.yaml`,");
    lines.add("# or paste the entries under its `sheets:`.");
    if (job.invented()) {
      lines.add("# Invented data.");
    }
    if (stock.isEmpty()) {
      lines.add("# Nothing worth keeping is left.");
      lines.add("sheets: []");
    } else {
      lines.add("sheets:");
      stock.forEach(this::add);
    }
    return String.join("\n", lines) + "\n";
  }

  private void add(SheetStock sheet) {
    lines.add("  - name: " + quoted(sheet.name()));
    if (sheet.isRectangle()) {
      lines.add(
          "    size: "
              + style.formatDown(sheet.length())
              + " x "
              + style.formatDown(sheet.width()));
    } else {
      lines.add("    corners: " + corners(sheet.outline()));
    }
    lines.add("    thickness: " + style.formatGiven(sheet.thickness()));
    lines.add("    nominal-thickness: " + style.formatGiven(sheet.nominalThickness()));
    lines.add("    on-hand: true");
    if (sheet.available().orElse(1) > 1) {
      lines.add("    available: " + sheet.available().getAsInt());
    }
    boolean longerIsX = sheet.length().compareTo(sheet.width()) >= 0;
    boolean grainIsX = Math.abs(sheet.grain().degrees() % 180) < 1;
    lines.add("    grain: " + (longerIsX == grainIsX ? "along" : "across"));
    if (!sheet.defects().isEmpty()) {
      lines.add("    defects:");
      sheet.defects().forEach(defect -> lines.add("      - " + defect(defect)));
    }
  }

  private String defect(Outline defect) {
    Edge first = defect.outer().edges().get(0);
    return first instanceof Arc arc
        ? "circle: {at: " + point(arc.centre()) + ", radius: " + up(arc.radius()) + "}"
        : "corners: " + corners(defect);
  }

  private String corners(Outline outline) {
    return outline.outer().edges().stream()
        .map(edge -> point(edge.start()))
        .collect(Collectors.joining(", ", "[", "]"));
  }

  private static String point(Point point) {
    return "[" + exact(point.x()) + ", " + exact(point.y()) + "]";
  }

  private static String exact(double millimetres) {
    return LengthStyle.METRIC.format(Length.ofMillimetres(millimetres));
  }

  private static String up(double millimetres) {
    return exact(Math.ceil(millimetres * 100 - ROUNDING) / 100);
  }

  /** In double quotes, as YAML reads them back. */
  private static String quoted(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
