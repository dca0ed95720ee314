package curvestock.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.units.Angle;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures are our own; swings are worked out by hand beside them. */
class RecommendationTest {

  /**
   * Choices as {@code angle:money:joints:sheets:offcuts}, money in whole units, offcuts left out if
   * there are none; {@code !} if too big, {@code ?} if small sheets would not do.
   */
  private static List<Standing> choices(String text) {
    List<Standing> choices = new ArrayList<>();
    for (String choice : text.split(" ", -1)) {
      boolean carried = !choice.endsWith("!");
      String[] parts = choice.replaceAll("[!?]", "").split(":", -1);
      choices.add(
          new Standing(
              Division.of(Angle.ofDegrees(Double.parseDouble(parts[0]))),
              carried,
              !choice.endsWith("?"),
              new Money(100 * Long.parseLong(parts[1])),
              Money.ZERO,
              Integer.parseInt(parts[2]),
              Integer.parseInt(parts[3]),
              parts.length > 4 ? Double.parseDouble(parts[4]) : 0));
    }
    return choices;
  }

  private static Recommendation among(String text, long eachJoint) {
    return Recommendation.among(
        choices(text), new JointPrice(new Money(eachJoint), Money.ZERO, false));
  }

  @ParameterizedTest
  @CsvSource({
    // choices, price of a joint in cents, best angle, reason
    "180:204:10:3 120:136:15:2 90:136:20:2, 0, 120, FEWEST_JOINTS",
    "180:204:10:3 120:136:15:2 90:136:20:2, 340, 120, CHEAPEST",
    "180:204:10:3 120:136:15:2 90:136:20:2, 2000, 180, CHEAPEST",
    "33.3:68:56:1 120:136:15:2, 100, 33.3, CHEAPEST",
    "33.3:68:56:1 120:136:15:2, 340, 120, CHEAPEST",
    "90:136:20:2 91:136:20:3, 100, 90, FEWEST_SHEETS",
    "90:136:20:2 91:136:20:2, 100, 91, LARGEST_PIECES",
    "90:136:20:2:500 91:136:20:2:400, 100, 90, LARGEST_OFFCUTS",
    "90:136:20:2:500 91:136:20:3:900, 100, 90, FEWEST_SHEETS",
    "180:136:10:2? 90:136:20:2, 100, 90, ONLY_CHOICE",
    "180:136:10:2? 90:204:20:3?, 100, 180, CHEAPEST",
    "90:136:20:2, 100, 90, ONLY_CHOICE",
    "120:136:15:2! 90:204:20:3, 100, 90, ONLY_CHOICE",
    "120:136:15:2! 90:204:20:3!, 0, 120, NOT_CARRIED"
  })
  void among_choices_takesTheBestAndSaysWhy(
      String choices, long eachJoint, double best, Recommendation.Reason reason) {
    Recommendation found = among(choices, eachJoint);

    assertThat(found.best()).isEqualTo(Division.of(Angle.ofDegrees(best)));
    assertThat(found.reason()).isEqualTo(reason);
  }

  @Test
  void dearerJoints_nameTheFirstToOvertake() {
    // Against thirds: halves cost 68 more for 5 joints less, 13.60 each; rings 300 for 11, 27.28.
    Recommendation found = among("360:436:4:5 180:204:10:3 120:136:15:2 90:136:20:2", 0);

    assertThat(found.dearerJoints())
        .contains(new Recommendation.Swing(Division.of(Angle.ofDegrees(180)), new Money(1360)));
  }

  @Test
  void cheaperJoints_nameTheFirstToOvertake_roundedDown() {
    // 68 less for 41 joints more: 1.658 each.
    Recommendation found = among("33.3:68:56:1 120:136:15:2", 340);

    assertThat(found.cheaperJoints())
        .contains(new Recommendation.Swing(Division.of(Angle.ofDegrees(33.3)), new Money(165)));
    assertThat(found.dearerJoints()).isEqualTo(Optional.empty());
  }

  @ParameterizedTest
  @CsvSource({"33.3:68:56:1 120:136:15:2 180:204:10:3, 340", "180:199:7:3 72:68:26:2, 1"})
  void swings_whenJointsReallyCostThat_changeTheBest(String choices, long eachJoint) {
    Recommendation found = among(choices, eachJoint);

    assertThat(found.dearerJoints()).isPresent();
    found
        .dearerJoints()
        .ifPresent(
            swing ->
                assertThat(among(choices, swing.eachJoint().minorUnits() + 1).best())
                    .isEqualTo(swing.division()));
    found
        .cheaperJoints()
        .ifPresent(
            swing ->
                assertThat(among(choices, swing.eachJoint().minorUnits() - 1).best())
                    .isEqualTo(swing.division()));
  }

  @Test
  void swings_leaveOutWhatCannotBeCarried() {
    assertThat(among("180:204:10:3! 120:136:15:2", 0).dearerJoints()).isEmpty();
  }

  @Test
  void dearerSheets_nameThePriceAtWhichFewerSheetsWin() {
    // Thirds: 136 + 15 joints of 3.40 = 51. In 33.3°: 68 + 56 joints = 190.40. Even where
    // 68 f = 139.40: f = 2.05.
    Recommendation found = among("33.3:68:56:1 120:136:15:2", 340);

    assertThat(found.dearerSheets().orElseThrow().division())
        .isEqualTo(Division.of(Angle.ofDegrees(33.3)));
    assertThat(found.dearerSheets().orElseThrow().factor()).isCloseTo(2.05, within(1e-12));
    assertThat(found.cheaperSheets()).isEmpty();
  }

  @Test
  void cheaperSheets_nameThePriceAtWhichFewerJointsWin() {
    // Halves: 204 + 34 against 136 + 51: even where 68 f = 17.
    Recommendation found = among("180:204:10:3 120:136:15:2", 340);

    assertThat(found.cheaperSheets().orElseThrow().factor()).isCloseTo(0.25, within(1e-12));
  }
}
