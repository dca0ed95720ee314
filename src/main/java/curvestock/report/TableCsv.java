package curvestock.report;

import curvestock.answer.Column;
import curvestock.answer.Figures;
import curvestock.answer.Measure;
import curvestock.answer.Table;
import curvestock.units.Angle;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Mass;
import curvestock.units.Money;
import curvestock.units.Quantity;
import curvestock.units.Share;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A table as comma-separated values, as RFC 4180 has them but for line ends of one character:
 * lengths as decimals in the job's unit, bearings in degrees counter-clockwise, shares in per cent.
 * Where a figure is missing the cell is empty.
 */
public final class TableCsv {

  /** What a spreadsheet would take for a formula. */
  private static final Pattern FORMULA = Pattern.compile("[=+\\-@\\t\\r].*", Pattern.DOTALL);

  private final Figures figures;
  private final LengthStyle decimals;

  private TableCsv(Figures figures) {
    this.figures = figures;
    this.decimals = new LengthStyle(figures.style().unit(), 0);
  }

  public static String of(Table table, Figures figures) {
    return new TableCsv(figures).text(table);
  }

  private String text(Table table) {
    StringBuilder text = new StringBuilder();
    List<String> head = new ArrayList<>();
    table.columns().forEach(column -> head.add(field(title(column))));
    text.append(String.join(",", head)).append('\n');
    for (List<Quantity> row : table.rows()) {
      List<String> cells = new ArrayList<>();
      for (int c = 0; c < row.size(); c++) {
        cells.add(cell(row.get(c), table.columns().get(c).measure()));
      }
      text.append(String.join(",", cells)).append('\n');
    }
    return text.toString();
  }

  private String title(Column column) {
    String unit =
        switch (column.measure()) {
          case LENGTH, SAWN, GIVEN_LENGTH, OFFCUT, RUN -> figures.style().unit().symbol();
          case ANGLE -> "deg";
          case SHARE -> "%";
          case WEIGHT -> weightUnit();
          case MINUTES -> "min";
          case TEXT, COUNT, TURNS, MONEY -> "";
        };
    String title = column.title().toLowerCase(Locale.ROOT);
    return unit.isEmpty() ? title : title + " (" + unit + ")";
  }

  private String weightUnit() {
    return figures.isImperial() ? "lb" : "kg";
  }

  private String cell(Quantity figure, Measure measure) {
    if (figure instanceof Text text) {
      return measure.isNumber() ? "" : guarded(text.words());
    }
    if (figure instanceof Length length) {
      return decimals.number(length);
    }
    if (figure instanceof Angle angle) {
      return measure == Measure.TURNS ? figures.turns(angle) : degrees(angle);
    }
    if (figure instanceof Money money) {
      return money.plain();
    }
    if (figure instanceof Mass mass) {
      String number = Figures.decimal(figures.isImperial() ? mass.pounds() : mass.kilograms(), 3);
      return measure == Measure.WEIGHT ? number : number + " " + weightUnit();
    }
    if (figure instanceof Share share) {
      return String.format(Locale.ROOT, "%.2f", share.percent());
    }
    return Long.toString(((Count) figure).number());
  }

  private static String degrees(Angle angle) {
    String text = String.format(Locale.ROOT, "%.2f", angle.degrees());
    return text.equals("-0.00") || text.equals("360.00") ? "0.00" : text;
  }

  /**
   * Words that a spreadsheet would run are kept from it by an apostrophe, which it does not show.
   */
  private static String guarded(String text) {
    return field(FORMULA.matcher(text).matches() ? "'" + text : text);
  }

  private static String field(String text) {
    boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
