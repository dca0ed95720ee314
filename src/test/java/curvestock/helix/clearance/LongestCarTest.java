package curvestock.helix.clearance;

import static curvestock.helix.SpecBuilder.inches;
import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.SpecBuilder;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.standard.CurveWidening.VehicleGroup;
import curvestock.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LongestCarTest {

  /**
   * Derived by hand: at R 30 in a car of 11.71 in with trucks 8.20 in apart, 1.378 in wide, reaches
   * 0.2815 in more inside. So on roadbed with blocks of 3/4 in that leaves 0.689 + 0.2815 in beside
   * the track it is the longest, whatever car of its proportions the job states.
   */
  @ParameterizedTest
  @CsvSource({"11.71, 8.20", "5.855, 4.10", "14.05, 9.8386"})
  void carLikeTheStatedOne_fillsTheRoomBesideTheSupports(double length, double trucks) {
    double width = 2 * (0.689 + 0.2815 + 0.75);
    Vehicle stated = new Vehicle(inches(3), inches(length), inches(1.378), inches(trucks));

    Length longest =
        LongestCar.like(new SpecBuilder().circle(30, width).longest(stated, Length.ZERO).spec())
            .orElseThrow();

    assertThat(longest.inches()).isCloseTo(11.71, within(0.005));
  }

  /**
   * NEM 102 (half of the clear width in H0: 24 mm) and NEM 103 (2016; read): at R 600 4, 6 and 9 mm
   * more on each side for bodies up to 20, 24.2 and 27.2 m.
   */
  @ParameterizedTest
  @CsvSource({"28.1, A", "29.9, A", "30.1, B", "33.1, C", "27.9, "})
  void withoutACar_theStandardsGroupThatHasRoom(double room, VehicleGroup group) {
    double width = 2 * (room / 25.4 + 0.75);

    assertThat(LongestCar.group(new SpecBuilder().circle(600 / 25.4, width).spec()).orElse(null))
        .isEqualTo(group);
  }

  @Test
  void groups_areAsLongAsTheStandardSays() {
    assertThat(VehicleGroup.A.longestBody()).isEqualTo(mm(20_000));
    assertThat(VehicleGroup.B.longestBody()).isEqualTo(mm(24_200));
    assertThat(VehicleGroup.C.longestBody()).isEqualTo(mm(27_200));
  }
}
