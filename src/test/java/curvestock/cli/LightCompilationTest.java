package curvestock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LightCompilationTest {

  /** The first directive that names a method holds (JEP 165). */
  @Test
  void directive_namesTheLoopsOfSearchesBeforeAllElse() {
    assertThat(LightCompilation.DIRECTIVE.indexOf("curvestock/packing/*.*"))
        .isPositive()
        .isLessThan(LightCompilation.DIRECTIVE.indexOf("\"*.*\""));
  }

  /** Names that stand for none here, so that the other tests run as ever. */
  @Test
  void direct_onThisJvm_isTaken() {
    String other = LightCompilation.DIRECTIVE.replace("\"*.*\"", "\"no/such/*.*\"");

    assertThat(LightCompilation.direct(other)).isTrue();
  }

  @Test
  void direct_whatIsNoDirective_isRefusedWithoutAFault() {
    assertThat(LightCompilation.direct("[{match: nothing")).isFalse();
  }
}
