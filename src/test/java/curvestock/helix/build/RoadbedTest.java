package curvestock.helix.build;

import static curvestock.helix.SpecBuilder.inches;
import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.Riser.Ear;
import curvestock.piece.AnnularSector;
import curvestock.piece.Strip;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class RoadbedTest {

  private static final EndPlan SQUARE_ENDS = EndPlan.level(inches(24), Length.ZERO);

  static Stream<Long> seeds() {
    return Stream.iterate(1L, seed -> seed + 1).limit(40);
  }

  /** A random helix: circle or oval, either hand, any construction, blocks or rods. */
  static HelixPlan randomHelix(long seed) {
    Random random = new Random(seed);
    boolean oval = random.nextInt(3) == 0;
    double width = 60 + random.nextInt(80);
    GroundPlan ground =
        new GroundPlan(
            mm(400 + random.nextInt(600)),
            random.nextBoolean() ? Optional.empty() : Optional.of(mm(60)),
            mm(width / 2),
            mm(oval ? 200 + random.nextInt(600) : 0),
            random.nextBoolean() ? Direction.CLOCKWISE : Direction.COUNTER_CLOCKWISE,
            Angle.ofDegrees(random.nextInt(360)));
    List<Construction> constructions =
        List.of(
            new Construction.TwoLayers(),
            new Construction.HalfLap(mm(40)),
            SpecBuilder.plate(4, 0.5, 0.25));
    List<Integer> ovalSegments = List.of(45, 60, 90);
    return new SpecBuilder()
        .ground(ground)
        .segment(oval ? ovalSegments.get(random.nextInt(3)) : 40 + random.nextInt(90))
        .construction(constructions.get(random.nextInt(3)))
        .ends(EndPlan.level(mm(300), mm(random.nextInt(2) * 250)))
        .supports(
            random.nextBoolean() ? SpecBuilder.blocks(12) : SpecBuilder.rods(8, Optional.empty()))
        .ascent(
            Ascent.ofTurnsAndRise(
                oval ? 1 + random.nextInt(6) / 2.0 : 1 + random.nextInt(20) / 4.0, mm(95)))
        .plan();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void pieces_ofEachLayer_coverTheRingOnce(long seed) {
    HelixPlan plan = randomHelix(seed);
    for (int layer = 1; layer <= plan.joints().layers(); layer++) {
      int number = layer;
      List<BedPiece> pieces =
          plan.roadbed().pieces().stream().filter(piece -> piece.layer() == number).toList();
      double at = 0;
      for (BedPiece piece : pieces) {
        assertThat(piece.from()).isCloseTo(at, within(1e-9));
        assertThat(piece.to()).isGreaterThan(piece.from());
        at = piece.to();
      }
      assertThat(at).isCloseTo(plan.climb().ringLength(), within(1e-6));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void kinds_counted_areThePiecesOfTheSchedule(long seed) {
    HelixPlan plan = randomHelix(seed);

    for (PieceKind kind : plan.roadbed().kinds()) {
      assertThat(
              plan.schedule().rows().stream().filter(row -> row.piece().kindId().equals(kind.id())))
          .hasSize(kind.count());
    }
    assertThat(plan.schedule().rows()).hasSameSizeAs(plan.roadbed().pieces());
  }

  /** Area of roadbed of even width is length × width; laps and leads included. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void area_ofEveryPiece_isLengthTimesWidth(long seed) {
    HelixPlan plan = randomHelix(seed);
    double width = plan.spec().ground().width().millimetres();

    for (BedPiece piece : plan.roadbed().pieces()) {
      double length = piece.cutTo() - piece.cutFrom();
      assertThat(kind(plan, piece).blank().area())
          .isCloseTo(length * width, within(1e-6 * length * width));
    }
  }

  /** A piece laid at its pose has its ends and middle where the line has them. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void pose_ofEveryPiece_layItOnTheLine(long seed) {
    HelixPlan plan = randomHelix(seed);
    double half = plan.spec().ground().width().millimetres() / 2;

    for (BedPiece piece : plan.roadbed().pieces()) {
      Outline inPlace = kind(plan, piece).at(piece.pose());
      for (double share : new double[] {0.02, 0.5, 0.98}) {
        double s = piece.cutFrom() + share * (piece.cutTo() - piece.cutFrom());
        Waypoint here = plan.line().at(s);
        assertThat(inPlace.contains(here.point())).isTrue();
        assertThat(inPlace.contains(here.toLeft(half - 0.01))).isTrue();
        assertThat(inPlace.contains(here.toLeft(half + 0.01))).isFalse();
        assertThat(inPlace.contains(here.toLeft(-half - 0.01))).isFalse();
      }
      assertThat(inPlace.contains(plan.line().at(piece.cutFrom() - 0.01).point())).isFalse();
      assertThat(inPlace.contains(plan.line().at(piece.cutTo() + 0.01).point())).isFalse();
    }
  }

  /** The same bearings every lap: the holes of all turns lie in line, wherever the pieces end. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void holes_ofAllTurns_lieInLineOnTheStations(long seed) {
    HelixPlan plan = randomHelix(seed);
    double run = plan.climb().runPerTurn().millimetres();

    for (BedPiece piece : plan.roadbed().pieces()) {
      PieceKind kind = kind(plan, piece);
      for (int i = 0; i < kind.holes().size(); i++) {
        double at = piece.stations().get(i / 2).at();
        double first = piece.stations().get(i / 2).station().places().get(0);
        Point hole = piece.pose().apply(kind.holes().get(i).centre());
        double turns = (at - first) / run;
        assertThat(turns).isCloseTo(Math.rint(turns), within(1e-9));
        double inset = 12;
        double side = plan.spec().ground().width().millimetres() / 2 - inset;
        double signed = i % 2 == 0 ? side : -side;
        Point wanted = plan.line().at(first).toLeft(signed * plan.line().inwards());
        assertThat(hole.distance(wanted)).isLessThan(1e-6);
      }
    }
  }

  private static PieceKind kind(HelixPlan plan, BedPiece piece) {
    return plan.roadbed().kinds().stream()
        .filter(kind -> kind.id().equals(piece.kindId()))
        .findFirst()
        .orElseThrow();
  }

  /** Invented scenario, by hand: quarters at R 28 in with laps of 2 in sweep 94.093°. */
  @Test
  void halfLap_quarters_sweepTheLapMore() {
    HelixPlan plan = new SpecBuilder().ends(SQUARE_ENDS).plan();

    assertThat(plan.roadbed().pieces()).hasSize(24);
    assertThat(plan.roadbed().kinds()).hasSize(2);
    PieceKind middle = plan.roadbed().kinds().get(1);
    assertThat(middle.count()).isEqualTo(22);
    assertThat(((AnnularSector) middle.blank()).sweep().degrees()).isCloseTo(94.093, within(5e-4));
    assertThat(((AnnularSector) middle.blank()).chord().inches()).isCloseTo(45.012, within(5e-4));
  }

  /**
   * Invented scenario, by hand: 8 turns of eighths in two layers are 127 whole and 2 half pieces.
   */
  @Test
  void twoLayers_eightTurnsOfEighths_are127WholeAnd2Halves() {
    HelixPlan plan =
        new SpecBuilder()
            .segment(45)
            .construction(new Construction.TwoLayers())
            .ends(SQUARE_ENDS)
            .ascent(Ascent.ofTurnsAndRise(8, inches(3.75)))
            .plan();

    assertThat(plan.roadbed().kinds())
        .extracting(PieceKind::name, PieceKind::count)
        .containsExactly(Tuple.tuple("segment of 45°", 127), Tuple.tuple("segment of 22.5°", 2));
  }

  /** Invented scenario, by hand: 4.5 turns are 18 quarter arcs and 9 straights. */
  @Test
  void oval_fourAndAHalfTurnsOfQuarters_are18ArcsAnd9Straights() {
    GroundPlan ground =
        SpecBuilder.twoTracks(mm(500), mm(61), mm(40), mm(600), Direction.COUNTER_CLOCKWISE);
    HelixPlan plan =
        new SpecBuilder()
            .ground(ground)
            .construction(new Construction.HalfLap(mm(50)))
            .ends(SQUARE_ENDS)
            .ascent(Ascent.ofTurnsAndRise(4.5, mm(90)))
            .plan();

    assertThat(plan.roadbed().pieces()).hasSize(27);
    assertThat(ground.width().millimetres()).isCloseTo(141, within(1e-9));
  }

  @Test
  void ovalWithPlainButts_straights_areStrips() {
    GroundPlan ground =
        SpecBuilder.twoTracks(mm(500), mm(61), mm(40), mm(600), Direction.COUNTER_CLOCKWISE);
    HelixPlan plan =
        new SpecBuilder()
            .ground(ground)
            .construction(SpecBuilder.plate(4, 0.5, 0.25))
            .ends(SQUARE_ENDS)
            .ascent(Ascent.ofTurnsAndRise(4.5, mm(90)))
            .plan();

    assertThat(plan.roadbed().kinds()).extracting(PieceKind::count).containsExactly(18, 9);
    Strip straight = (Strip) plan.roadbed().kinds().get(1).blank();
    assertThat(straight.length().millimetres()).isCloseTo(600, within(1e-9));
    assertThat(straight.width().millimetres()).isCloseTo(141, within(1e-9));
  }

  /** First and last piece carry their straight, so that no joint falls where the climb starts. */
  @ParameterizedTest
  @EnumSource(Direction.class)
  void leadIn_firstAndLastPiece_areArcAndStraightInOne(Direction direction) {
    GroundPlan ground =
        new GroundPlan(
            inches(28),
            Optional.empty(),
            inches(2.75),
            Length.ZERO,
            direction,
            Angle.ofDegrees(77));
    HelixPlan plan =
        new SpecBuilder().ground(ground).construction(SpecBuilder.plate(4, 0.5, 0.25)).plan();
    PieceKind first = plan.roadbed().kinds().get(0);
    double arc = Math.PI / 2 * 28 * 25.4;

    assertThat(first.count()).isEqualTo(1);
    assertThat(first.blank().area()).isCloseTo((arc + 12 * 25.4) * 5.5 * 25.4, within(1e-3));
    assertThat(first.blank().outline().edges()).hasSize(6);
    assertThat(plan.joints().all()).noneMatch(joint -> joint.at() < arc - 1e-6);
  }

  /** Hole = rod + fit + grade × plywood (derived): 2 % of 12 mm is 0.24 mm. */
  @Test
  void hole_diameter_addsTheSlopesShare() {
    HelixPlan plan = new SpecBuilder().supports(SpecBuilder.rods(8, Optional.empty())).plan();
    double slope = 4 / (2 * Math.PI * 28) * 0.483 * 25.4;

    assertThat(plan.roadbed().kinds().get(1).holes())
        .isNotEmpty()
        .allSatisfy(
            hole -> assertThat(hole.diameter().millimetres()).isCloseTo(8.3 + slope, within(1e-9)));
  }

  /** By hand: with half-piece stagger and two rods a piece, at 1/4 and 3/4 of it. */
  @Test
  void rods_twoForEachStaggeredPiece_standAtItsQuarters() {
    HelixPlan plan =
        new SpecBuilder()
            .segment(45)
            .construction(new Construction.TwoLayers())
            .ends(SQUARE_ENDS)
            .supports(SpecBuilder.rods(16, Optional.empty()))
            .plan();
    double piece = 28 * 25.4 * Math.PI / 4;

    BedPiece second = plan.roadbed().pieces().get(1);
    assertThat(second.stations()).hasSize(2);
    assertThat(second.stations().get(0).at() - second.from()).isCloseTo(piece / 4, within(1e-6));
    assertThat(second.stations().get(1).at() - second.from())
        .isCloseTo(3 * piece / 4, within(1e-6));
    assertThat(plan.roadbed().kinds()).hasSize(2);
  }

  @Test
  void ears_onBothEdges_addTheirAreaAndHoldTheHoles() {
    Ear ear = new Ear(mm(40), mm(30));
    SpecBuilder builder = new SpecBuilder().construction(SpecBuilder.plate(4, 0.5, 0.25));
    HelixPlan plain = builder.plan();
    HelixPlan eared = builder.supports(SpecBuilder.rods(8, Optional.of(ear))).plan();
    PieceKind kind = eared.roadbed().kinds().get(1);
    double added = kind.blank().area() - plain.roadbed().kinds().get(1).blank().area();

    // Two stations a piece, four ears: each 40 × 30 less or more the sliver under its straight
    // foot.
    assertThat(added).isCloseTo(4 * 40 * 30, within(4 * 12.0));
    assertThat(kind.holes()).hasSize(4);
    for (Hole hole : kind.holes()) {
      Outline disc = Outline.of(hole.rim().reversed());
      assertThat(Clearance.within(disc, kind.blank().outline())).isGreaterThan(5);
    }
  }

  /** An ear may lie anywhere on a lead with its easement, on either hand. */
  @ParameterizedTest
  @EnumSource(Direction.class)
  void ears_onAnEasement_keepTheirHoles(Direction direction) {
    GroundPlan ground =
        new GroundPlan(
            mm(700), Optional.of(mm(60)), mm(60), Length.ZERO, direction, Angle.ofDegrees(30));
    HelixPlan plan =
        new SpecBuilder()
            .ground(ground)
            .segment(60)
            .construction(SpecBuilder.plate(5, 0.5, 0.25))
            .ends(EndPlan.level(mm(500), mm(400)).withEasement(mm(450)))
            .supports(SpecBuilder.rods(12, Optional.of(new Ear(mm(50), mm(40)))))
            .ascent(Ascent.ofTurnsAndRise(2.25, mm(95)))
            .plan();

    PieceKind first = plan.roadbed().kinds().get(0);
    assertThat(first.name()).isEqualTo("end piece with its easement, with ears");
    for (PieceKind kind : plan.roadbed().kinds()) {
      for (Hole hole : kind.holes()) {
        Outline disc = Outline.of(hole.rim().reversed());
        assertThat(Clearance.within(disc, kind.blank().outline())).isGreaterThan(5);
      }
    }
  }

  @Test
  void ears_overTheEndOfAPiece_areRefused() {
    Ear ear = new Ear(mm(400), mm(30));

    assertThatThrownBy(
            () ->
                new SpecBuilder()
                    .segment(30)
                    .supports(SpecBuilder.rods(12, Optional.of(ear)))
                    .plan())
        .hasMessageMatching("an ear must lie within its piece, but at -?\\d+ mm from .*");
  }

  @Test
  void drilledDemand_andBlank_haveTheSameIdsAndCounts() {
    HelixPlan plan = new SpecBuilder().supports(SpecBuilder.rods(8, Optional.empty())).plan();

    assertThat(plan.demands()).hasSameSizeAs(plan.blankDemands());
    for (int i = 0; i < plan.demands().size(); i++) {
      assertThat(plan.demands().get(i).piece().id())
          .isEqualTo(plan.blankDemands().get(i).piece().id());
      assertThat(plan.demands().get(i).count()).isEqualTo(plan.blankDemands().get(i).count());
    }
    PieceKind kind = plan.roadbed().kinds().get(1);
    double holes =
        kind.holes().size()
            * Math.PI
            * Math.pow(kind.holes().get(0).diameter().millimetres() / 2, 2);
    assertThat(kind.demand().piece().shape().area())
        .isCloseTo(kind.blank().area() - holes, within(1e-6));
  }
}
