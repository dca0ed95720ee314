package curvestock.app;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.check.CheckReport;
import curvestock.check.DrawingKind;
import curvestock.check.Finding;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

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
