package curvestock.helix.build;

import static curvestock.helix.SpecBuilder.inches;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.build.RoadbedMark.Sort;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.EndPlan;
import curvestock.piece.AnnularSector;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is drawn on pieces before they leave the sheet, in their own frames. */
class RoadbedMarksTest {

  private static SpecBuilder helix() {
    return new SpecBuilder()
        .circle(26, 4.5)
        .ends(EndPlan.level(inches(24), inches(30)))
        .ascent(Ascent.ofTurnsAndClimb(2.5, inches(11)))
        .supports(SpecBuilder.blocks(12));
  }

  private static List<RoadbedMark> of(HelixPlan plan, String number, Sort sort) {
    BedPiece piece =
        plan.roadbed().pieces().stream()
            .filter(each -> each.number().equals(number))
            .findFirst()
            .orElseThrow();
    return plan.marks().on(piece).stream().filter(mark -> mark.sort() == sort).toList();
  }

  private static PieceKind kindOf(HelixPlan plan, String number) {
    return plan.roadbed().kinds().stream()
        .filter(kind -> plan.roadbed().numbersOf(kind).contains(number))
        .findFirst()
        .orElseThrow();
  }

  /** Twelve supports a turn are 30° apart; a quarter of 90° has them at −45, −15, 15 and 45°. */
  @Test
  void stations_onASegment_areTickedAtBothEdgesWhereTheySupportIt() {
    HelixPlan plan = helix().plan();
    List<RoadbedMark> stations = of(plan, "3", Sort.STATION);

    assertThat(stations.stream().map(RoadbedMark::words)).containsExactly("S7", "S8", "S9", "S10");
    for (int i = 0; i < 4; i++) {
      double degrees = -45 + 30 * i;
      List<Segment> ticks = stations.get(i).lines();
      assertThat(ticks).hasSize(2);
      for (Segment tick : ticks) {
        assertThat(Math.toDegrees(tick.start().angle())).isCloseTo(degrees, within(1e-6));
      }
      assertThat(ticks.get(0).start().norm()).isCloseTo(23.75 * 25.4 + 1, within(1e-6));
      assertThat(ticks.get(1).end().norm()).isCloseTo(28.25 * 25.4 - 1, within(1e-6));
    }
  }

  /** The shoulder lies the whole lap from the end face: 2 in along the centre line. */
  @Test
  void halfLap_takesTheUpperEndAboveAndTheLowerEndBelow() {
    HelixPlan plan = helix().plan();
    List<RoadbedMark> shoulders = of(plan, "3", Sort.SHOULDER);
    double half = Math.toDegrees(((AnnularSector) kindOf(plan, "3").blank()).sweep().radians() / 2);
    double lap = Math.toDegrees(2.0 / 26);

    assertThat(shoulders.stream().map(RoadbedMark::words))
        .containsExactly("cut away below", "cut away above");
    assertThat(Math.toDegrees(shoulders.get(0).lines().get(0).start().angle()))
        .isCloseTo(-half + lap, within(1e-6));
    assertThat(Math.toDegrees(shoulders.get(1).lines().get(0).start().angle()))
        .isCloseTo(half - lap, within(1e-6));
  }

  @Test
  void halfLap_atTheEntry_isOnlyAtTheUpperEnd() {
    assertThat(of(helix().plan(), "1", Sort.SHOULDER).stream().map(RoadbedMark::words))
        .containsExactly("cut away above");
  }

  @Test
  void lines_ofEveryPiece_lieOnItsWood() {
    for (HelixPlan plan :
        List.of(
            helix().plan(),
            helix().construction(SpecBuilder.plate(5, 0.5, 0.25)).segment(50).plan())) {
      for (BedPiece piece : plan.roadbed().pieces()) {
        Outline outline = kindOf(plan, piece.number()).blank().outline();
        for (RoadbedMark mark : plan.marks().on(piece)) {
          for (Segment line : mark.lines()) {
            assertThat(isOn(outline, line.start())).as(mark.toString()).isTrue();
            assertThat(isOn(outline, line.end())).as(mark.toString()).isTrue();
          }
        }
      }
    }
  }

  /** A support at a joint has its line at the end of the wood, where sums round to either side. */
  private static boolean isOn(Outline outline, Point point) {
    return outline.contains(point)
        || outline.outer().edges().stream().anyMatch(edge -> edge.distanceTo(point) < 1e-6);
  }

  /** Both pieces at a joint get their row of the plate's screws, where the plate's holes are. */
  @Test
  void screws_ofBothPiecesAtAJoint_areThoseOfThePlate() {
    HelixPlan plan = helix().construction(SpecBuilder.plate(5, 0.5, 0.25)).plan();
    SplicePlates plates =
        new SplicePlates(
            (curvestock.helix.spec.Construction.ButtWithPlate) plan.spec().construction(),
            plan.spec().ground(),
            1);
    Joint joint = plan.joints().all().get(2);
    List<Point> holes =
        plates.screwPositions().stream().map(plates.pose(plan.line(), joint)::apply).toList();

    List<Point> marked =
        java.util.stream.Stream.of(-1, 1)
            .flatMap(into -> plan.marks().screwsOf(plates, joint, into).stream())
            .toList();
    assertThat(marked).hasSize(4).containsExactlyInAnyOrderElementsOf(holes);
    assertThat(of(plan, "3", Sort.SCREW)).hasSize(4);
    assertThat(of(plan, "1", Sort.SCREW)).hasSize(2);
  }

  /** The hole itself shows where a rod goes: only its station's name is written. */
  @Test
  void rods_needNoTicks() {
    HelixPlan plan = helix().supports(SpecBuilder.rods(8, Optional.empty())).plan();

    assertThat(of(plan, "2", Sort.STATION))
        .isNotEmpty()
        .allMatch(mark -> mark.lines().isEmpty() && mark.words().startsWith("S"));
  }
}
