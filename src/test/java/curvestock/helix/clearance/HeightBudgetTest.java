package curvestock.helix.clearance;

import static curvestock.helix.SpecBuilder.inches;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.SpecBuilder;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.RoadbedStack;
import curvestock.helix.spec.Traffic;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.standard.HeightStandard;
import curvestock.helix.verdict.Feasible;
import curvestock.units.Length;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeightBudgetTest {

  private static HelixSpec spec(double plywood, double underlay, double tie, double rail) {
    return new SpecBuilder()
        .stack(new RoadbedStack(inches(plywood), inches(underlay), inches(tie), inches(rail)))
        .spec();
  }

  /** Worked examples, recomputed: needed height and items add up. */
  @ParameterizedTest
  @CsvSource({"2.78, 0.375, 0, 3.5255", "3.156, 0.469, 0, 3.9955", "3.156, 0.469, 0.25, 4.2455"})
  void riseFor_workedBudgets_isTheirSum(double need, double plywood, double plate, double rise) {
    HeightBudget budget =
        HeightBudget.inTheOpen(spec(plywood, 0.1875, 0.100, 0.083), inches(4))
            .less("splice plate", inches(plate));

    assertThat(budget.riseFor(inches(need)).inches()).isCloseTo(rise, within(1e-9));
    assertThat(budget.free().inches()).isCloseTo(4 - (rise - need), within(1e-9));
  }

  /** Worked examples: 3.9955 in at 2 % needs R 31.80 (rounded up), 4.2455 in R 33.79. */
  @ParameterizedTest
  @CsvSource({"3.9955, 31.80", "4.2455, 33.79", "3.5, 27.85"})
  void smallestRadius_at2Percent_agreesWithWorkedExamples(double rise, double radius) {
    HelixSpec spec = spec(0.5, 0.1875, 0.1, 0.083);

    assertThat(Feasible.smallestRadius(spec, inches(rise), Grade.ofPercent(2)).inches())
        .isCloseTo(radius, within(0.006));
  }

  /** R 30, trucks 8.20, length 11.71, width 1.378 in: 0.2815, 0.277 in (derived). */
  @Test
  void overhang_ofALongCar_agreesWithTheDerivedFigures() {
    Vehicle car = new Vehicle(inches(2), inches(11.71), inches(1.378), inches(8.20));
    Overhang overhang = new Overhang(car, inches(30));

    assertThat(overhang.inside().inches()).isCloseTo(0.2815, within(0.0002));
    assertThat(overhang.outside().inches()).isCloseTo(0.277, within(0.0006));
  }

  @Test
  void need_ofVehicleAndStandard_takesTheHigherAsComfortable() {
    HeightNeed need =
        HeightNeed.of(new SpecBuilder().tallest(inches(2.78), HeightStandard.NMRA_S7).spec());

    assertThat(need.least().inches()).isCloseTo(2.78, within(1e-9));
    assertThat(need.comfortable().inches()).isCloseTo(3.15625, within(1e-9));
  }

  @Test
  void need_withoutVehicleOrTable_asksForAHeight() {
    Traffic none =
        new Traffic(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Length.ZERO,
            HeightStandard.NMRA_S7,
            Length.ZERO);
    HelixSpec g = new SpecBuilder().scale("G").spec();

    assertThat(none.tallestKnown()).isEmpty();
    assertThatThrownBy(() -> HeightNeed.of(g))
        .hasMessageContaining(
            "no published height for scale G in", "give yours as `trains: {tallest: ...}`");
  }
}
