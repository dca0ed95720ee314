package curvestock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.check.CheckReport;
import curvestock.check.DrawingKind;
import curvestock.check.Expectation;
import curvestock.check.Finding;
import curvestock.check.LayoutCheck;
import curvestock.drawing.MachineDrawing;
import curvestock.dxf.SheetDxf;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.machine.MachineSheet;
import curvestock.plan.MachineSheets;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pieces that are named as loose are no fault of a drawing; all others are. */
class RequireRightTest {

  @Test
  void loosePieces_allNamed_pass() {
    assertThatCode(() -> Workshop.requireRight("a.svg", List.of(2, 12), () -> loose(2, 12)))
        .doesNotThrowAnyException();
  }

  @Test
  void loosePiece_notNamedBesideOneThatIs_isRefused() {
    assertThatThrownBy(() -> Workshop.requireRight("a.svg", List.of(12), () -> loose(2, 12)))
        .isInstanceOf(WrongLayoutException.class)
        .hasMessageContaining("piece-2 hangs")
        .hasMessageNotContaining("piece-12 hangs");
  }

  @Test
  void anyLoosePiece_noneNamed_isRefused() {
    assertThatThrownBy(() -> Workshop.requireRight("a.svg", () -> loose(1)))
        .isInstanceOf(WrongLayoutException.class)
        .hasMessageContaining("piece-1 hangs");
  }

  @Test
  void otherFault_ofANamedPiece_isRefused() {
    Finding gap = new Finding(Finding.Kind.GAP, "piece-2 is too near", List.of("piece-2"));

    assertThatThrownBy(() -> Workshop.requireRight("a.svg", List.of(2), () -> report(List.of(gap))))
        .isInstanceOf(WrongLayoutException.class)
        .hasMessageContaining("piece-2 is too near");
  }

  /** Blocks too short for a tab; strips that hang by theirs. */
  private static final String BLOCKS =
      """
      curvestock: 2
      title: Test blocks
      units: mm
      sheets:
        - {name: birch, size: 600x400, thickness: 12, price: 20}
      cutting: {kerf: 6, margin: 8}
      pieces:
        - {name: strip, count: 2, strip: {length: 300, width: 60}}
        - {name: block, count: 3, strip: {length: 14, width: 14}}
      search: {effort: quick}
      machine: {tabs: {width: 6, count: 4}, outlines: OUTLINES}
      """;

  @ParameterizedTest
  @ValueSource(strings = {"offset", "finished"})
  void realSheet_withLooseBlocks_isRefusedInEitherFormatUnlessAllAreNamed(String outlines)
      throws Exception {
    Job job = JobReader.read(BLOCKS.replace("OUTLINES", outlines), "blocks");
    Plan plan = Workshop.plan(job, PlanListener.NONE);
    MachineSheet sheet = new MachineSheets(plan).list().get(0);
    List<Integer> loose = sheet.loose();
    Expectation expected =
        Expectation.of(sheet.layout())
            .in(sheet.form())
            .with(Optional.of(new Expectation.MarkedTabs(Length.ofMillimetres(6), 4)));

    assertThat(loose).hasSize(3);
    assertThat(Workshop.result(plan, PlanListener.NONE).paths()).contains("machine.txt");
    for (String drawing : List.of(MachineDrawing.svg(sheet), SheetDxf.of(sheet))) {
      assertThatCode(
              () ->
                  Workshop.requireRight(
                      "a file", loose, () -> LayoutCheck.check(drawing, expected)))
          .doesNotThrowAnyException();
      assertThatThrownBy(
              () ->
                  Workshop.requireRight(
                      "a file", loose.subList(0, 2), () -> LayoutCheck.check(drawing, expected)))
          .hasMessageMatching("(?s).*piece[- ]" + loose.get(2) + " .*hangs on the frame by less.*")
          .hasMessageNotContaining("piece-" + loose.get(0) + " ")
          .hasMessageNotContaining("piece " + loose.get(0) + " ");
    }
  }

  private static CheckReport loose(Integer... numbers) {
    return report(
        List.of(numbers).stream()
            .map(
                number ->
                    new Finding(
                        Finding.Kind.LOOSE,
                        "piece-" + number + " hangs by less than 2 tabs",
                        List.of("piece-" + number)))
            .toList());
  }

  private static CheckReport report(List<Finding> findings) {
    return new CheckReport(
        DrawingKind.MACHINE_SVG, findings, Map.of(), Optional.empty(), Optional.empty(), 0, false);
  }
}
