package curvestock.helix;

import static curvestock.helix.SpecBuilder.inches;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Vehicle;
import curvestock.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures by hand, from the rise and what takes its share of it. */
class TallestTrainTest {

  /** So far outside the ring that the ends cost nothing. */
  private static final EndPlan FAR_OUT =
      EndPlan.level(inches(24), inches(12)).withClimbLead(inches(48));

  /** 4 - 0.483 - 0.1875 - 0.075 - 0.1 = 3.1545 in; a plate and the spare come off that. */
  @ParameterizedTest
  @CsvSource({"0,0,3.1545", "0,0.25,2.9045", "0.25,0,2.9045", "0.25,0.125,2.7795"})
  void tallestTrain_isTheRiseLessAllThatTakesItsShare(double plate, double spare, double tallest) {
    SpecBuilder builder =
        new SpecBuilder().ends(FAR_OUT).longest(vehicle(inches(2)), inches(spare));
    HelixPlan plan =
        (plate > 0 ? builder.construction(SpecBuilder.plate(4, 1, plate)) : builder).plan();

    assertThat(plan.tallestTrain().orElseThrow().inches()).isCloseTo(tallest, within(1e-9));
  }

  /**
   * Whole vertical curves of 24 in on the ring: by plane geometry, the rail of the tangent against
   * the wood above it over a train 24 mm wide either side (half the clear width of NEM 102, as
   * quoted elsewhere), 2.566 in are free at the ends, where 3.1545 in are between turns. Measured
   * along the tangent instead of the ring it is up to 0.03 in less.
   */
  @Test
  void tallestTrain_isThatOfTheTightestPlace() {
    assertThat(new SpecBuilder().plan().tallestTrain().orElseThrow().inches())
        .isBetween(2.536, 2.5665);
  }

  @Test
  void tallestTrain_turnsLieOverNone_isEmpty() {
    HelixPlan plan = new SpecBuilder().ascent(Ascent.ofTurnsAndRise(0.5, inches(4))).plan();

    assertThat(plan.tallestTrain()).isEmpty();
  }

  @Test
  void tallestTrain_turnsTooClose_isZero() {
    HelixPlan plan = new SpecBuilder().ascent(Ascent.ofTurnsAndRise(3, inches(0.7))).plan();

    assertThat(plan.tallestTrain()).hasValue(Length.ZERO);
  }

  /** One that is just so tall passes the rule on clearance; one a hair taller does not. */
  @ParameterizedTest
  @CsvSource({"-0.01,true", "0.01,false"})
  void tallestTrain_isWhereTheRuleTurns(double taller, boolean passes) {
    Length spare = inches(0.125);
    SpecBuilder builder = new SpecBuilder().ends(FAR_OUT).longest(vehicle(inches(2)), spare);
    Length tallest = builder.plan().tallestTrain().orElseThrow();

    HelixPlan other = builder.longest(vehicle(tallest.plus(inches(taller))), spare).plan();

    assertThat(other.works()).isEqualTo(passes);
  }

  private static Vehicle vehicle(Length height) {
    return new Vehicle(height, inches(9), inches(1.25), inches(6));
  }
}
