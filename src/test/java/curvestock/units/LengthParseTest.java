package curvestock.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthParseTest {

  /**
   * Inch and foot are exact by the international yard and pound agreement of 1959: 1 in = 25.4 mm.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "27.5 in | 698.5",
        "27 1/2 in | 698.5",
        "27-1/2\" | 698.5",
        "27 - 1/2 in | 698.5",
        "27½ in | 698.5",
        "27 ½\" | 698.5",
        "⅜ in | 9.525",
        "2 ft 3 1/2 in | 698.5",
        "2' 3 1/2\" | 698.5",
        "2'3½″ | 698.5",
        "2′ 4″ | 711.2",
        "2 ft. 4 in. | 711.2",
        "2 feet 4 inches | 711.2",
        "2ft-4in | 711.2",
        "1 foot | 304.8",
        "1.5 ft | 457.2",
        "8 ft | 2438.4",
        "8' | 2438.4",
        "1 3/16\" | 30.1625",
        "30.5mm | 30.5",
        "700 mm | 700",
        "700 MM | 700",
        "70 cm | 700",
        "1.22 m | 1220",
        "1.22 metres | 1220",
        "12 millimetres | 12",
        ".5 in | 12.7",
        "5. in | 127",
        "010 mm | 10",
        "0 mm | 0",
        "-3 mm | -3",
        "- 1/2 in | -12.7",
        "5/4 in | 31.75",
        "1\u00a01/2 in | 38.1",
      })
  void parse_ofEveryWrittenForm_givesMillimetres(String text, double millimetres) {
    assertThat(Length.parse(text).millimetres()).isCloseTo(millimetres, within(1e-9));
  }

  /** Spellings that American and typographic keyboards give. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "12 millimeters | 12",
        "12 centimeters | 120",
        "1 meter | 1000",
        "27 1⁄2 in | 698.5",
        "27 1/2” | 698.5",
        "2’ 4” | 711.2",
        "27 1/2'' | 698.5",
        "2' 4'' | 711.2",
        "1\u20091/2 in | 38.1",
        "\u22123 mm | -3",
        "⅓ in | 8.466666666667",
      })
  void parse_ofOtherSpellings_givesMillimetres(String text, double millimetres) {
    assertThat(Length.parse(text).millimetres()).isCloseTo(millimetres, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "\t",
        "28",
        "27 1/2",
        "in",
        "NaN in",
        "Infinity mm",
        "-Infinity mm",
        "1e999 mm",
        "1e3 mm",
        "0x1F mm",
        "1_000 mm",
        "1,220 mm",
        "1.220,5 mm",
        "27 1/0 in",
        "27 1/ in",
        "1/2/3 in",
        "1 2 in",
        "1..2 in",
        "--3 in",
        "3 -in",
        "3 in 2 ft",
        "2 ft 3",
        "2 ft 3 mm",
        "3 yards",
        "3 km",
        "3 inn",
        "٣ in",
        "３ in",
        "¹ in",
        "Ⅻ in",
        "½½ in",
        "1 1/2 1/2 in",
        "1 in; drop",
        "1 in\n2 in",
        "null",
        "10000001 mm",
        "99999999999999999999999999999999 m",
        "1 in\u0000",
      })
  void parse_ofAnythingElse_isRefusedAndSaysWhatIsAccepted(String text) {
    assertThatThrownBy(() -> Length.parse(text))
        .isInstanceOf(LengthFormatException.class)
        .hasMessageContaining("is not a length")
        .hasMessageContaining("\"27 1/2 in\"");
  }

  @Test
  void parse_ofHugeText_isRefusedQuicklyAndShortened() {
    String text = "1".repeat(1_000_000) + " in";

    assertThatThrownBy(() -> Length.parse(text))
        .isInstanceOf(LengthFormatException.class)
        .message()
        .hasSizeLessThan(300);
  }

  @Test
  void parse_withComma_saysToUseAPoint() {
    assertThatThrownBy(() -> Length.parse("27,5 in")).hasMessageContaining("a point, not a comma");
  }

  @Test
  void parse_withoutUnit_saysTheUnitIsMissing() {
    assertThatThrownBy(() -> Length.parse("28")).hasMessageContaining("the unit is missing");
  }

  @ParameterizedTest
  @CsvSource({
    "28, INCH, 711.2",
    "27 1/2, INCH, 698.5",
    "27-1/2, INCH, 698.5",
    "8, FOOT, 2438.4",
    "700, MILLIMETRE, 700",
    "70, CENTIMETRE, 700",
    "1.22, METRE, 1220",
    "70 cm, INCH, 700",
  })
  void parse_withUnitOfBareNumbers_usesItOnlyForThose(
      String text, LengthUnit unit, double millimetres) {
    assertThat(Length.parse(text, unit).millimetres()).isCloseTo(millimetres, within(1e-9));
  }

  @Test
  void parse_inAnyLocale_isTheSame() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertThat(Length.parse("3 IN").millimetres()).isCloseTo(76.2, within(1e-9));
      assertThat(Length.parse("3 INCHES").millimetres()).isCloseTo(76.2, within(1e-9));
      assertThat(LengthStyle.METRIC.format(Length.ofMillimetres(1.5))).isEqualTo("1.5 mm");
    } finally {
      Locale.setDefault(before);
    }
  }
}
