package curvestock.helix.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.standard.CurveWidening.VehicleGroup;
import curvestock.helix.standard.TrackSpacing.EquipmentClass;
import curvestock.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class PublishedTablesTest {

  /** NMRA S-8, O scale, read. */
  @ParameterizedTest
  @CsvSource({"II, 96, 3.375", "I, 72, 3.75", "IA, 58, 4.5625", "IA, 100, 4.0625"})
  void nmraS8_oScale_isTheTable(EquipmentClass equipment, double radius, double spacing) {
    assertThat(
            TrackSpacing.nmraS8(Scale.named("O"), Length.ofInches(radius), equipment)
                .orElseThrow()
                .value()
                .inches())
        .isCloseTo(spacing, within(1e-9));
  }

  /** O scale by 48/87.0857 (derived, not a quotation). */
  @ParameterizedTest
  @CsvSource({
    "II, 53, 1.86", "I, 53, 2.00", "IA, 53, 2.24", "II, 39.8, 1.93", "I, 39.8, 2.07",
    "IA, 39.8, 2.38", "II, 32.1, 2.00", "I, 32.1, 2.14", "IA, 32.1, 2.51", "II, 26.6, 2.07",
    "I, 26.6, 2.20"
  })
  void nmraS8_ho_isTheOTableToScale(EquipmentClass equipment, double radius, double spacing) {
    Sourced<Length> figure =
        TrackSpacing.nmraS8(Scale.named("HO"), Length.ofInches(radius), equipment).orElseThrow();

    assertThat(figure.value().inches()).isCloseTo(spacing, within(0.007));
    assertThat(figure.certainty()).isEqualTo(Certainty.DERIVED);
  }

  /** NMRA S-8 has no figure for the largest equipment at R 48 in. */
  @Test
  void nmraS8_largestEquipmentOnSmallestCurve_hasNoFigure() {
    assertThat(TrackSpacing.nmraS8(Scale.named("O"), Length.ofInches(48), EquipmentClass.IA))
        .isEmpty();
  }

  /** NEM 112, H0, second hand; between rows the wider figure. */
  @ParameterizedTest
  @CsvSource({"400, 64", "550, 59", "600, 55", "1000, 47", "2000, 46"})
  void nem112_h0_isTheTable(double radius, double spacing) {
    Sourced<Length> figure =
        TrackSpacing.nem112(Scale.named("H0"), Length.ofMillimetres(radius)).orElseThrow();

    assertThat(figure.value().millimetres()).isEqualTo(spacing);
    assertThat(figure.citation()).isEqualTo("NEM 112, as quoted elsewhere");
  }

  /** NEM 103 (2016), read. */
  @ParameterizedTest
  @CsvSource({"H0, C, 700, 7", "H0, B, 500, 8", "N, C, 350, 4", "H0, A, 1000, 2"})
  void nem103_widening_isTheTable(String scale, VehicleGroup group, double radius, double each) {
    assertThat(
            CurveWidening.eachSide(Scale.named(scale), Length.ofMillimetres(radius), group)
                .orElseThrow()
                .value()
                .millimetres())
        .isEqualTo(each);
  }

  /** NEM 111 (2016), second hand: 30 gauges for long vehicles, 45 on a main line. */
  @Test
  void nem111_h0_isInGauges() {
    Scale scale = Scale.named("H0");

    assertThat(
            SmallestRadius.nem111(scale, SmallestRadius.Use.PERMITTED, VehicleGroup.C)
                .value()
                .millimetres())
        .isCloseTo(495, within(1e-9));
    assertThat(
            SmallestRadius.nem111(scale, SmallestRadius.Use.MAIN, VehicleGroup.C)
                .value()
                .millimetres())
        .isCloseTo(742.5, within(1e-9));
  }

  /** NEM 102 (2017), read. */
  @ParameterizedTest
  @CsvSource({"Z, 24, 27", "N, 33, 37", "TT, 43, 48", "H0, 59, 65", "S, 78, 87", "0, 109, 120"})
  void nem102_heights_areTheTable(String scale, double noWire, double wire) {
    assertThat(height(HeightStandard.NEM_102, scale)).isEqualTo(noWire);
    assertThat(height(HeightStandard.NEM_102_WIRE, scale)).isEqualTo(wire);
  }

  private static double height(HeightStandard standard, String scale) {
    return standard.heights(Scale.named(scale)).orElseThrow().value().least().millimetres();
  }

  /** NEM 113 (2016), read; it rounds to 5 mm. */
  @ParameterizedTest
  @CsvFileSource(resources = "/curvestock/helix/easement-lengths.csv", numLinesToSkip = 1)
  void nem113_h0_givesThePrintedLengths(double radius, double printed) {
    Length shift = EasementLength.shift(Scale.named("H0")).orElseThrow().value();

    assertThat(EasementLength.of(shift, Length.ofMillimetres(radius)).millimetres())
        .isCloseTo(printed, within(2.6));
  }

  /** NEM 113 (2016): none needed beyond 60 gauges. */
  @Test
  void nem113_beyond60Gauges_asksForNone() {
    Scale scale = Scale.named("H0");

    assertThat(EasementLength.isAskedFor(scale, Length.ofMillimetres(980))).isTrue();
    assertThat(EasementLength.isAskedFor(scale, Length.ofMillimetres(1000))).isFalse();
  }

  /**
   * Half-inch and three-quarter-inch plywood: common practice, no source. 0.438 in is the thinnest
   * that PS 1-19 lets pass as 15/32, sold as 1/2; 10 mm and 3/8 lie between two rows, by hand in
   * proportion and down to the next quarter of an inch.
   */
  @ParameterizedTest
  @CsvSource({
    "0.5, 12, 16",
    "0.469, 12, 16",
    "0.438, 12, 16",
    "0.4567, 12, 16",
    "0.75, 16, 18",
    "0.703, 16, 18",
    "1, 16, 18",
    "0.24, 6, 8",
    "0.157, 6, 8",
    "0.375, 9, 12",
    "0.3937, 9.25, 12.5",
    "0.625, 14, 17"
  })
  void supportSpacing_usualPlywood_isCommonPractice(double thickness, double from, double to) {
    Sourced<SupportSpacing.Range> range = SupportSpacing.forThickness(Length.ofInches(thickness));

    assertThat(range.value().careful().inches()).isCloseTo(from, within(1e-9));
    assertThat(range.value().widest().inches()).isCloseTo(to, within(1e-9));
    assertThat(range.certainty()).isEqualTo(Certainty.PRACTICE);
  }
}
