package curvestock.report;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.answer.Column;
import curvestock.answer.Figures;
import curvestock.answer.Measure;
import curvestock.answer.Table;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Mass;
import curvestock.units.Money;
import curvestock.units.Quantity;
import curvestock.units.Share;
import curvestock.units.Text;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TableCsvTest {

  private static final Figures INCHES = new Figures(LengthStyle.INCH_FRACTIONS, "$");
  private static final Figures METRIC = new Figures(LengthStyle.METRIC, "EUR");

  private static Table one(Measure measure, Quantity cell) {
    return new Table(
        "t", "T", List.of(new Column("what", "What", measure)), List.of(List.of(cell)));
  }

  private static String cell(Measure measure, Quantity cell, Figures figures) {
    return TableCsv.of(one(measure, cell), figures).lines().skip(1).findFirst().orElseThrow();
  }

  /** What spreadsheets take for a formula: OWASP, CSV Injection (community page). */
  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\tx"})
  void words_thatASpreadsheetWouldRun_areKeptFromIt(String words) {
    assertThat(cell(Measure.TEXT, new Text(words), INCHES)).startsWith("'" + words.charAt(0));
  }

  @Test
  void figures_ofEveryKind_areInTheJobsUnits() {
    assertThat(cell(Measure.LENGTH, Length.ofInches(27.5), INCHES)).isEqualTo("27.5");
    assertThat(cell(Measure.LENGTH, Length.ofInches(-1), INCHES)).isEqualTo("-1");
    assertThat(cell(Measure.LENGTH, Length.ofInches(1), METRIC)).isEqualTo("25.4");
    assertThat(cell(Measure.WEIGHT, new Mass(0.45359237), INCHES)).isEqualTo("1");
    assertThat(cell(Measure.WEIGHT, new Mass(0.5), METRIC)).isEqualTo("0.5");
    assertThat(cell(Measure.SHARE, new Share(0.0248), METRIC)).isEqualTo("2.48");
    assertThat(cell(Measure.MONEY, new Money(6208), INCHES)).isEqualTo("62.08");
    assertThat(cell(Measure.MONEY, new Text("on hand"), INCHES)).isEmpty();
    assertThat(TableCsv.of(one(Measure.WEIGHT, Mass.ZERO), INCHES)).startsWith("what (lb)\n");
  }

  @Test
  void words_withCommasAndQuotes_areQuoted() {
    assertThat(cell(Measure.TEXT, new Text("a, \"b\""), INCHES)).isEqualTo("\"a, \"\"b\"\"\"");
  }
}
