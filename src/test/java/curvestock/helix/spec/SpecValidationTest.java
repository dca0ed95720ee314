package curvestock.helix.spec;

import static curvestock.helix.SpecBuilder.inches;
import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.helix.SpecBuilder;
import curvestock.helix.standard.RodThread;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every message says what must be, and what was. */
class SpecValidationTest {

  static Stream<Arguments> mistakes() {
    return Stream.of(
        mistake(
            () -> GroundPlan.circle(mm(100), mm(220)),
            "side margin must be less than the inner track's radius (100 mm (3.937 in)), but was 110 mm (4.331 in)"),
        mistake(
            () -> GroundPlan.marginOfWidth(mm(50), Optional.of(mm(60))),
            "roadbed width must be more than the track spacing (60 mm (2.362 in)), but was 50 mm (1.969 in)"),
        mistake(
            () ->
                new Ascent(
                    OptionalDouble.empty(),
                    Optional.empty(),
                    Optional.of(mm(90)),
                    Optional.of(Grade.ofPercent(2)),
                    Optional.empty()),
            "the climb must be stated by two of: turns, climb, and rise per turn or steepest grade"),
        mistake(
            () -> Ascent.ofTurnsAndRise(101, mm(90)),
            "turns must be above 0 and at most 100, but was 101.0"),
        mistake(
            () -> Ascent.ofClimbAndSteepest(mm(500), Grade.LEVEL),
            "steepest grade must be above 0 %, but was 0 %"),
        mistake(
            () -> EndPlan.level(mm(300), mm(100)).withEasement(mm(300)),
            "lead-in must be at least half the easement (150 mm (5.906 in)), so that the easement is cut in"
                + " one with its piece, but was 100 mm (3.937 in)"),
        mistake(
            () -> Segmentation.of(Angle.ofDegrees(310)),
            "segment angle must be 5° to 300°, but was 310°"),
        mistake(
            () -> new Segmentation(Angle.ofDegrees(60), Optional.of(Angle.ofDegrees(61))),
            "starter angle must be at most the segment angle (60°), but was 61°"),
        mistake(
            () -> new RoadbedStack(Length.ZERO, mm(3), mm(2), mm(2)),
            "plywood thickness must be above zero, but was 0 mm (0 in)"),
        mistake(
            () -> new Vehicle(mm(50), mm(200), mm(30), mm(201)),
            "truck centres must be at most the vehicle's length (200 mm (7.874 in)), but was 201 mm (7.913 in)"),
        mistake(
            () -> RodThread.named("M7"),
            "thread must be one of [1/4-20, 5/16-18, 3/8-16, M6, M8, M10], but was M7"),
        mistake(() -> SpecBuilder.blocks(2), "supports per turn must be 3 to 200, but was 2"),
        mistake(
            () -> oval().segment(70).spec(),
            "on an oval the segment angle must divide 180° and there can be no starter, but was"
                + " 70°"),
        mistake(
            () ->
                oval()
                    .segment(60)
                    .ends(EndPlan.level(mm(300), mm(300)).withEasement(mm(300)))
                    .spec(),
            "easements are planned for circles only: an oval's own straights would need them too"));
  }

  private static SpecBuilder oval() {
    return new SpecBuilder()
        .ground(
            SpecBuilder.twoTracks(mm(500), mm(60), mm(50), mm(400), Direction.COUNTER_CLOCKWISE));
  }

  private static Arguments mistake(Runnable mistake, String message) {
    return Arguments.of(message, mistake);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("mistakes")
  void mistake_anyRecord_isRefusedWithRuleAndValue(String message, Runnable mistake) {
    assertThatThrownBy(mistake::run)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  @Test
  void rods_outsideTheWoodWithoutEars_areRefused() {
    assertThatThrownBy(
            () ->
                new Riser.ThreadedRods(
                    RodThread.named("M8"),
                    mm(-12),
                    mm(0.3),
                    mm(16),
                    mm(20),
                    Optional.empty(),
                    mm(2),
                    new StockBoard("rod", mm(1000), Optional.empty())))
        .hasMessageContaining("rod inset must keep the rod inside the wood");
  }

  @Test
  void tallestKnown_ofVehicleAndHeight_isTheHigher() {
    Vehicle car = new Vehicle(inches(2.5), inches(10), inches(1.3), inches(7));
    SpecBuilder builder = new SpecBuilder().longest(car, Length.ZERO);

    assertThat(builder.spec().traffic().tallestKnown()).contains(inches(2.5));
  }
}
