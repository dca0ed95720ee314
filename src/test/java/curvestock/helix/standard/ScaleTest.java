package curvestock.helix.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/curvestock/helix/heights-by-prototype-feet.csv", numLinesToSkip = 1)
  void prototypeFeet_17And23_areTheDerivedHeights(String name, double least, double greatest) {
    HeightStandard.Range range =
        HeightStandard.PROTOTYPE_FEET.heights(Scale.named(name)).orElseThrow().value();

    assertThat(range.least().inches()).isCloseTo(least, within(0.0006));
    assertThat(range.greatest().inches()).isCloseTo(greatest, within(0.0006));
  }

  /** NMRA S-7 (second hand) is 17 to 23 feet to scale, rounded to 1/32 in; but not in Z. */
  @ParameterizedTest
  @CsvSource({"N", "TT", "HO", "S", "O"})
  void nmraS7_mostScales_are17To23FeetTo32nds(String name) {
    Scale scale = Scale.named(name);
    HeightStandard.Range table = HeightStandard.NMRA_S7.heights(scale).orElseThrow().value();
    HeightStandard.Range feet = HeightStandard.PROTOTYPE_FEET.heights(scale).orElseThrow().value();

    assertThat(table.least().inches()).isCloseTo(feet.least().inches(), within(1.0 / 32));
    assertThat(table.greatest().inches()).isCloseTo(feet.greatest().inches(), within(1.0 / 32));
  }

  /** 3.5 mm to the foot (NMRA S-1.2). */
  @Test
  void ho_oneFoot_is3Point5Millimetres() {
    assertThat(Scale.named("HO").ofPrototypeFeet(1).millimetres()).isCloseTo(3.5, within(1e-5));
  }

  @Test
  void named_unknownScale_listsTheKnownOnes() {
    assertThatThrownBy(() -> Scale.named("QQ"))
        .hasMessage("scale must be one of Z, N, TT, HO, H0, OO, S, O, 0, 1, IIm, G, but was QQ");
  }

  @Test
  void published_everyFigure_isPrintableAndCited() {
    assertThat(Scale.published())
        .hasSizeGreaterThan(10)
        .allMatch(scale -> scale.certainty().isPrintable())
        .allMatch(
            scale ->
                scale.citation().endsWith(", as quoted elsewhere")
                    || scale.citation().equals("4 mm to the foot"));
  }
}
