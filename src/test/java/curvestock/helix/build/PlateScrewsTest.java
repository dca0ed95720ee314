package curvestock.helix.build;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.helix.spec.SplicePlate;
import curvestock.units.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Screws up through a splice plate are named as a shop sells them. */
class PlateScrewsTest {

  /** Thread diameters of wood screws by number: 0.060 in and 0.013 in a number, from memory. */
  @ParameterizedTest
  @CsvSource({
    // A No. 8 (0.164 in) does not pass a hole of 5/32 in; 3/4 in stays inside 15/16 in of wood.
    "0.46875, 0.46875, 0.15625, true, No. 6 × 3/4 in",
    "0.5, 0.25, 0.1875, true, No. 8 × 5/8 in",
    "0.75, 0.75, 0.1875, true, No. 8 × 1 1/4 in",
    "12, 12, 4, false, 3.5 × 20 mm",
    "18, 18, 4.5, false, 4 × 30 mm",
  })
  void plate_holeAndThicknesses_nameTheThickestThatPassesAndTheLongestThatStaysInside(
      double plywood, double plate, double hole, boolean inches, String name) {
    Length whole = length(plywood, inches).plus(length(plate, inches));
    BlockScrews screw =
        BlockScrews.plate(plateOf(plate, hole, inches), length(plywood, inches), inches)
            .orElseThrow();

    assertThat(screw.name()).isEqualTo(name);
    assertThat(screw.length().plus(BlockScrews.SKIN).compareTo(whole)).isNegative();
  }

  @ParameterizedTest
  @CsvSource({"4, 4, 4", "9, 9, 4", "12, 40, 4", "12, 12, 2"})
  void plate_noScrewWouldHoldOrPass_namesNone(double plywood, double plate, double hole) {
    assertThat(BlockScrews.plate(plateOf(plate, hole, false), Length.ofMillimetres(plywood), false))
        .isEmpty();
  }

  private static SplicePlate plateOf(double thick, double hole, boolean inches) {
    return new SplicePlate(
        SplicePlate.Form.RECTANGLE,
        Length.ofMillimetres(125),
        Length.ofMillimetres(10),
        length(thick, inches),
        3,
        length(hole, inches),
        true);
  }

  private static Length length(double value, boolean inches) {
    return inches ? Length.ofInches(value) : Length.ofMillimetres(value);
  }
}
