package curvestock.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void lengthAndAngle_ofNoFiniteNumber_areRefused(double value) {
    assertThatThrownBy(() -> new Length(value)).hasMessageContaining("finite");
    assertThatThrownBy(() -> Length.ofInches(value)).hasMessageContaining("finite");
    assertThatThrownBy(() -> new Angle(value)).hasMessageContaining("finite");
  }

  @Test
  void length_beyondTheNumbers_isRefusedRatherThanInfinite() {
    Length huge = Length.ofMillimetres(Double.MAX_VALUE);

    assertThatThrownBy(() -> huge.plus(huge)).hasMessageContaining("finite");
    assertThatThrownBy(() -> huge.times(2)).hasMessageContaining("finite");
    assertThatThrownBy(() -> Length.ofInches(Double.MAX_VALUE)).hasMessageContaining("finite");
  }

  @Test
  void requirePositive_ofZero_namesTheThingAndTheValue() {
    assertThatThrownBy(() -> Length.ZERO.requirePositive("width"))
        .hasMessage("width must be above zero, but was 0 mm (0 in)");
    assertThatThrownBy(() -> Length.ofMillimetres(-2.5).requireNotNegative("kerf"))
        .hasMessage("kerf must not be negative, but was -2.5 mm (-0.098 in)");
    assertThat(Length.ZERO.requireNotNegative("kerf")).isEqualTo(Length.ZERO);
  }

  @Test
  void length_arithmetic_isThatOfMillimetres() {
    Length inch = Length.ofInches(1);

    assertThat(inch.plus(inch).millimetres()).isEqualTo(50.8);
    assertThat(inch.minus(inch)).isEqualTo(Length.ZERO);
    assertThat(inch.times(12).in(LengthUnit.FOOT)).isCloseTo(1, within(1e-15));
    assertThat(inch).isLessThan(Length.ofMillimetres(26));
  }

  @ParameterizedTest
  @CsvSource({
    "90, 90",
    "22.5, 22.5",
    "90 deg, 90",
    "90°, 90",
    "90 °, 90",
    "60 Degrees, 60",
    "1 degree, 1",
    "-45, -45",
    ".5, 0.5",
    "010, 10",
    "' 30 ', 30",
  })
  void angle_ofEveryWrittenForm_isInDegrees(String text, double degrees) {
    assertThat(Angle.parse(text).degrees()).isEqualTo(degrees);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "°",
        "NaN",
        "1e3",
        "90 rad",
        "1:30",
        "quarter",
        "90,5",
        "٩٠",
        "90 degs",
        "--5",
        "1 2",
        "999999999999999999999999999999999999999999999999",
      })
  void angle_ofAnythingElse_isRefused(String text) {
    assertThatThrownBy(() -> Angle.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("is not an angle; write degrees");
  }

  @ParameterizedTest
  @CsvSource({
    "90, 90°",
    "22.5, 22.5°",
    "51.42857142857143, 51.429°",
    "0, 0°",
    "-0.0001, 0°",
    "100, 100°",
    "-45, -45°",
  })
  void angle_asText_hasAtMostThreeDecimals(double degrees, String expected) {
    assertThat(Angle.ofDegrees(degrees)).hasToString(expected);
  }

  @Test
  void angle_inRadians_isExactForTheUsualFractions() {
    assertThat(Angle.ofDegrees(180).radians()).isEqualTo(Math.PI);
    assertThat(Angle.ofRadians(Math.PI / 2).degrees()).isEqualTo(90);
    assertThat(Angle.FULL_TURN).isGreaterThan(Angle.ofDegrees(359));
  }

  @ParameterizedTest
  @CsvSource({"42, 4200", "42.5, 4250", "42.505, 4251", "0.004, 0", "-1.005, -101", "1e3, 100000"})
  void money_ofDecimal_roundsHalfUpToMinorUnits(BigDecimal amount, long minorUnits) {
    assertThat(Money.of(amount).minorUnits()).isEqualTo(minorUnits);
  }

  @ParameterizedTest
  @CsvSource({
    "18600, $, $186.00",
    "18600, EUR, EUR 186.00",
    "5, €, €0.05",
    "0, '', 0.00",
    "123456789, kr, kr 1234567.89",
    "-5, $, -$0.05",
    "-5, EUR, -EUR 0.05",
    "100, Fr., Fr. 1.00",
    "18600, US$, US$186.00",
  })
  void money_withCurrency_isPrinted(long minorUnits, String currency, String expected) {
    assertThat(new Money(minorUnits).format(currency)).isEqualTo(expected);
  }

  @Test
  void money_thatOverflows_isRefused() {
    Money most = new Money(Long.MAX_VALUE);

    assertThatThrownBy(() -> most.plus(new Money(1))).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> most.times(2)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> Money.of(new BigDecimal("1e40")))
        .isInstanceOf(ArithmeticException.class);
    assertThat(new Money(250).times(3).minus(new Money(50)).plain()).isEqualTo("7.00");
  }
}
