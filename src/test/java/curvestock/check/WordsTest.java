package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.drawing.SampleLayouts;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a drawing says of itself, what is expected of it, and how faults are told. */
class WordsTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "grown 0 mm, tabs 0 of 0 mm, lines within 0 mm",
        "grown 1.5875 mm, tabs 4 of 9.175 mm, lines within 0 mm",
        "grown 10 mm, tabs 100 of 20 mm, lines within 0.05 mm"
      })
  void form_wordsReadBack_areTheSame(String words) throws Exception {
    assertThat(CutForm.parse(words).words()).isEqualTo(words);
  }

  @Test
  void form_ofADrawingThatSaysNothing_isTheFinishedSize() throws Exception {
    assertThat(CutForm.parse("")).isEqualTo(CutForm.FINISHED);
    assertThat(new CutForm(1.58754, 1, 0.00005, 0.00004))
        .isEqualTo(new CutForm(1.5875, 1, 1e-4, 0));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "grown",
        "grown -1 mm, tabs 0 of 0 mm, lines within 0 mm",
        "grown 12345 mm, tabs 0 of 0 mm, lines within 0 mm",
        "grown 1 mm, tabs 0 of 0 mm, lines within 0 mm and more"
      })
  void form_inOtherWords_isRefused(String words) {
    assertThatThrownBy(() -> CutForm.parse(words))
        .isInstanceOf(CheckException.class)
        .hasMessageContaining("but was '" + words + "'");
  }

  @ParameterizedTest
  @CsvSource({
    "-1, 0, 0, 0",
    "0, -1, 0, 0",
    "0, 0, -1, 0",
    "0, 0, 0, -1",
    "NaN, 0, 0, 0",
    "0, 0, Infinity, 0",
    "Infinity, 0, 0, 0"
  })
  void form_withImpossibleValues_isRefused(double grown, int tabs, double gap, double within) {
    assertThatThrownBy(() -> new CutForm(grown, tabs, gap, within))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the form of a cut must have no negative values");
  }

  private static List<Finding> scale(String width, String height, String viewBox) {
    Findings findings = new Findings();
    DrawingScale.judge(width, height, viewBox, findings);
    return findings.list();
  }

  @ParameterizedTest
  @CsvSource({
    "100mm, 50mm, 0 0 100 50, true",
    "100.000mm, 50mm, -5 -5 100 50.00001, true",
    "100mm, 50mm, 0 0 100.001 50, false",
    "100mm, 50mm, 0 0 100 50.001, false",
    "100mm, 50mm, 0 0 99.999 50, false",
    "0mm, 50mm, 0 0 0 50, false",
    "100mm, 50mm, 0 0 1.2.3 50, false",
    "100, 50mm, 0 0 100 50, false",
    "100mm, 50cm, 0 0 100 50, false",
    "10cm, 50mm, 0 0 100 50, true",
    "96in, 48in, 0 0 2438.4 1219.2, true",
    "96in, 48in, 0 0 2438.5 1219.2, false",
    "96px, 48px, 0 0 96 48, false",
    "100mm, 50mm, '0,0,100,50', true",
    "100mm, 50mm, 0 0 100, false"
  })
  void scale_isOneToOne_onlyIfAllAgree(String width, String height, String box, boolean right) {
    List<Finding> found = scale(width, height, box);

    assertThat(found.isEmpty()).isEqualTo(right);
    assertThat(found)
        .allSatisfy(
            f -> {
              assertThat(f.kind()).isEqualTo(Finding.Kind.SCALE);
              assertThat(f.message()).contains(width, height, box);
            });
  }

  @Test
  void scale_faults_areToldApart() {
    assertThat(scale("100", "50mm", "0 0 100 50").get(0).message())
        .isEqualTo(
            "width and height must be in mm, cm or in and the viewBox four numbers, but were '100', '50mm'"
                + " and '0 0 100 50'");
    assertThat(scale("100mm", "50mm", "0 0 90 50").get(0).message())
        .isEqualTo(
            "one user unit must be one millimetre, but the width is 100mm, the height 50mm and the"
                + " viewBox 0 0 90 50");
  }

  @Test
  void findings_moreThanAPersonReads_endWithAWord() {
    Findings findings = new Findings();
    for (int i = 0; i < 99; i++) {
      findings.add(Finding.Kind.GAP, "gap " + i, "a");
    }
    assertThat(findings.isFull()).isFalse();
    findings.addAll(
        List.of(
            Finding.of(Finding.Kind.GAP, "gap 99", "b", "c"),
            Finding.of(Finding.Kind.GAP, "gap 100")));

    assertThat(findings.isFull()).isTrue();
    assertThat(findings.list()).hasSize(101);
    assertThat(findings.list().get(99).paths()).containsExactly("b", "c");
    assertThat(findings.list().get(100).kind()).isEqualTo(Finding.Kind.MORE);
    assertThat(findings.list().get(100).message())
        .isEqualTo("more than 100 faults were found; the rest is not listed");
  }

  @Test
  void shown_controlsAndTurners_areSpelledOut() {
    assertThat(Shown.line("a\u001b[31m\nb\u202dc\u2066d\u2069e\u2028f"))
        .isEqualTo("a\\u001B[31m\\u000Ab\\u202Dc\\u2066d\\u2069e\\u2028f");
    assertThat(Shown.line("\u2027\u202f\u2065\u206a")).isEqualTo("\u2027\u202f\u2065\u206a");
    assertThat(Shown.line("x".repeat(1000))).isEqualTo("x".repeat(1000));
    assertThat(Shown.line("x".repeat(1001))).isEqualTo("x".repeat(1000) + "...");
  }

  @Test
  void report_countsAllPieces() {
    CheckReport report =
        new CheckReport(
            DrawingKind.DXF,
            List.of(),
            Map.of("b", 3, "a", 4),
            Optional.empty(),
            Optional.empty(),
            0,
            false);

    assertThat(report.pieces()).isEqualTo(7);
    assertThat(report.passed()).isTrue();
    assertThat(report.counts().keySet()).containsExactly("a", "b");
  }

  @Test
  void expectation_twoPiecesOfOneId_isRefused() {
    assertThatThrownBy(
            () ->
                Expectation.anyOf(
                    SampleLayouts.SHEET,
                    SampleLayouts.CUTTING,
                    List.of(SampleLayouts.BLOCK, SampleLayouts.BLOCK)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("pieces must have different ids");
  }
}
