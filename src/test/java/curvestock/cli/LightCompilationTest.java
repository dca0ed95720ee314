package curvestock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.packing.Effort;
import org.junit.jupiter.api.Test;

class LightCompilationTest {

  @Test
  void directive_quick_leavesTheOptimisingCompilerOutOfAll() {
    assertThat(LightCompilation.directive(Effort.QUICK))
        .isEqualTo("[{match: [\"*.*\"], c2: {Exclude: true}}]");
  }

  /** The first directive that names a method holds (JEP 165). */
  @Test
  void directive_searchThatMayLast_optimisesItsLoopsFirst() {
    String normal = LightCompilation.directive(Effort.NORMAL);

    assertThat(normal.indexOf("curvestock/packing/*.*"))
        .isPositive()
        .isLessThan(normal.indexOf("\"*.*\""));
    assertThat(LightCompilation.directive(Effort.THOROUGH)).isEqualTo(normal);
  }

  /** Names that stand for none here, so that the other tests run as ever. */
  @Test
  void direct_onThisJvm_isTaken() {
    String other = LightCompilation.directive(Effort.NORMAL).replace("\"*.*\"", "\"no/such/*.*\"");

    assertThat(LightCompilation.direct(other)).isTrue();
  }

  @Test
  void direct_whatIsNoDirective_isRefusedWithoutAFault() {
    assertThat(LightCompilation.direct("[{match: nothing")).isFalse();
  }
}
