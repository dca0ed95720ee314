package curvestock.helix.build;

import static curvestock.helix.SpecBuilder.inches;
import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.clearance.EndClearance;
import curvestock.helix.spec.Adjustments;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.RoadbedStack;
import curvestock.helix.spec.SupportPlan;
import curvestock.helix.standard.HeightStandard;
import curvestock.helix.verdict.Fact;
import curvestock.helix.verdict.Place;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import curvestock.units.Text;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** No support stands in the way of the trains that come in, nor through the wood of the lead-in. */
class ApproachSupportsTest {

  private static SpecBuilder twinTrackN() {
    return new SpecBuilder()
        .scale("N")
        .ground(
            SpecBuilder.twoTracks(
                mm(400), mm(33), mm(36), Length.ZERO, Direction.COUNTER_CLOCKWISE))
        .stack(new RoadbedStack(mm(6.2), mm(2.5), mm(1.6), mm(1.4)))
        .construction(new Construction.TwoLayers())
        .ends(EndPlan.level(mm(330), mm(165)))
        .ascent(Ascent.ofTurnsAndRise(8.5, mm(65)))
        .tallest(mm(30), HeightStandard.NEM_102)
        .supports(SpecBuilder.rods(20, Optional.empty()));
  }

  /**
   * Circle geometry by hand: the straight approach lies along x = 400 and x = 433 below the entry.
   * A rod of the lowest turn at the angle t before it stands at x = r cos t, y = -r sin t; it keeps
   * 13.5 mm (half of NEM 102's clear width for N, second hand) and half a washer of 8 mm from both.
   */
  @ParameterizedTest
  @CsvSource({"12", "16", "20", "24"})
  void rods_ofTwinTrackN_stayClearOfTheTracks(int perTurn) {
    HelixPlan plan = twinTrackN().supports(SpecBuilder.rods(perTurn, Optional.empty())).plan();

    int near = 0;
    for (SupportRow row : plan.supports().rows()) {
      if (!row.standsOnBase() || row.at() <= 0 || row.part() != SupportRow.Part.RING) {
        continue;
      }
      double angle = row.at() / 416.5;
      for (double radius : new double[] {416.5 + 52.5 - 12, 416.5 - 52.5 + 12}) {
        boolean outer = radius > 416.5;
        if (outer ? !row.edges().atOuter() : !row.edges().atInner()) {
          continue;
        }
        double x = radius * Math.cos(angle);
        double y = radius * Math.sin(angle);
        if (y < 0 && y > -469) {
          near++;
          assertThat(Math.abs(x - 400)).as(row.station().name()).isGreaterThan(21.5);
          assertThat(Math.abs(x - 433)).as(row.station().name()).isGreaterThan(21.5);
          boolean inWood = x > 416.5 - 60.5 && x < 416.5 + 60.5 && y > -165 - 8;
          assertThat(inWood).as("%s through the lead-in", row.station().name()).isFalse();
        }
      }
    }
    assertThat(near).isPositive();
    assertThat(verdict(plan).state()).isEqualTo(State.OK);
  }

  /**
   * A washer is round. By hand: a rod 457 mm from the middle, t before the entry, stands 457 cos t
   * from it; the track at 433 mm keeps 13.5 mm, and the washer takes 8 mm whichever way it is
   * turned, 21.5 mm together. Seen as a square it would take up to 8.7 mm at these angles.
   */
  @ParameterizedTest
  @CsvSource({"455.0, NONE", "454.6, NONE", "454.4, TRACK", "450.0, TRACK"})
  void washer_besideTheApproach_takesItsRadiusOnly(double x, EntryWay.Hit expected) {
    HelixPlan plan = twinTrackN().ends(EndPlan.level(mm(330), Length.ZERO)).plan();
    double before = Math.acos(x / 457) * 416.5;

    EntryWay way = new EntryWay(plan.spec(), plan.line());

    assertThat(way.hit(2 * Math.PI * 416.5 - before, way.offset())).isEqualTo(expected);
  }

  @Test
  void supportsLeftOut_haveNoHolesNorRods() {
    HelixPlan plan = twinTrackN().plan();

    assertThat(plan.stations().leftOut()).isNotEmpty();
    int held = plan.stations().all().stream().mapToInt(station -> station.edges().supports()).sum();
    RodPlan rods =
        new RodPlan(
            plan.spec(),
            (curvestock.helix.spec.Riser.ThreadedRods) plan.spec().supports().riser(),
            plan.supports());
    assertThat(rods.count()).isEqualTo(held);
    long holes =
        plan.roadbed().kinds().stream()
            .mapToLong(kind -> (long) kind.count() * kind.holes().size())
            .sum();
    long through = plan.supports().rows().stream().mapToLong(row -> row.edges().supports()).sum();
    assertThat(holes).isEqualTo(2 * through);
  }

  private static Bridge outerBridge(HelixPlan plan) {
    return plan.stations().bridges().stream().filter(Bridge::outer).findFirst().orElseThrow();
  }

  /**
   * A gap wider than the plywood spans is bridged. By hand: 54° from S18 to S1; the ends of a 30 mm
   * batten lie 52.5 - 15 mm outwards of 416.5 mm, so it is 2 x 454 x sin 27° = 412.2 mm long, less
   * 8 mm of washer and 2 mm at each end. Half the roadbed alone, 52.5 x 6.2 mm, spans 203.2 mm; for
   * 392.5 mm it would have to be 12.0 mm thick, 7514 mm⁴. With a batten 7 mm deep it has 7460 mm⁴,
   * with 8 mm 9286.
   */
  @Test
  void gapTooWide_isBridgedByABatten() {
    HelixPlan plan = twinTrackN().construction(new Construction.HalfLap(mm(40))).plan();

    Bridge bridge = outerBridge(plan);

    assertThat(bridge.form()).isEqualTo(Bridge.Form.BATTEN);
    assertThat(bridge.between()).isEqualTo("S18 and S1");
    assertThat(bridge.length().millimetres()).isCloseTo(392.2, within(0.1));
    assertThat(bridge.depth().millimetres()).isEqualTo(8);
    assertThat(plan.shopping().items()).anyMatch(item -> item.name().startsWith("wooden battens "));
    assertThat(plan.works()).isTrue();
  }

  /**
   * What hangs below is counted where it hangs. By hand: 65 mm a turn less 11.7 mm of wood and
   * track and 8 mm of batten are 45.3 mm, less up to 1.0 mm where the track below still lies on the
   * vertical curve (330 x 2.48 / 800).
   */
  @Test
  void batten_isCountedInTheHeightBelowIt() {
    HelixPlan plan = twinTrackN().construction(new Construction.HalfLap(mm(40))).plan();
    Bridge bridge = outerBridge(plan);

    Verdict below =
        plan.verdicts().stream()
            .filter(verdict -> verdict.place().equals(Optional.of(Place.UNDER_BATTEN)))
            .findFirst()
            .orElseThrow();
    Verdict entry =
        plan.verdicts().stream()
            .filter(verdict -> verdict.rule() == Rule.FREE_HEIGHT)
            .filter(verdict -> verdict.place().equals(Optional.of(Place.ENTRY)))
            .findFirst()
            .orElseThrow();

    assertThat(((Length) below.measured().orElseThrow()).millimetres()).isBetween(44.2, 45.31);
    assertThat(entry.measured())
        .hasValue(plan.clearanceAt(EndClearance.End.BOTTOM).free(bridge.depth()));
  }

  /** By hand: 50 - 11.7 - 8 = 30.3 mm would be left, less than the 33 mm of NEM 102 for N. */
  @Test
  void battenThatTakesTooMuchHeight_givesWayToAStripOnEdge() {
    HelixPlan plan =
        twinTrackN()
            .construction(new Construction.HalfLap(mm(40)))
            .ascent(Ascent.ofTurnsAndRise(8.5, mm(50)))
            .plan();

    assertThat(plan.stations().bridges())
        .isNotEmpty()
        .allMatch(bridge -> bridge.form() == Bridge.Form.STRIP)
        .allMatch(bridge -> bridge.hangsBelow().equals(Length.ZERO));
    // Round the edge, not along the centre line: 54° at 469 mm.
    assertThat(outerBridge(plan).length().minus(Bridge.OVERLAP.times(2)).millimetres())
        .isCloseTo(Math.toRadians(54) * 469, within(0.2));
  }

  /** Where one turn only stands on blocks, one in the middle would leave the bridge's end bare. */
  @Test
  void bridge_overASingleTurn_endsOnBlocksUnderItsEdge() {
    HelixPlan plan =
        twinTrackN()
            .construction(new Construction.HalfLap(mm(40)))
            .ascent(Ascent.ofTurnsAndRise(1.5, mm(90)))
            .supports(SpecBuilder.blocks(20))
            .plan();

    assertThat(plan.supports().rows()).anyMatch(row -> row.edges() == Edges.MIDDLE);
    assertThat(plan.stations().bridges()).isNotEmpty();
    for (Bridge bridge : plan.stations().bridges()) {
      assertThat(plan.supports().rows())
          .filteredOn(row -> row.at() == bridge.from() || row.at() == bridge.to())
          .isNotEmpty()
          .allMatch(row -> bridge.outer() ? row.edges().atOuter() : row.edges().atInner());
    }
  }

  /** Battens are sawn from the boards of the blocks, laid flat, one for each turn. */
  @Test
  void battensOfBlocks_areOnTheCuttingList() {
    HelixPlan plan =
        twinTrackN()
            .construction(new Construction.HalfLap(mm(40)))
            .ascent(Ascent.ofTurnsAndRise(8.5, mm(90)))
            .supports(SpecBuilder.blocks(20))
            .plan();
    Bridge bridge = outerBridge(plan);

    long sawn =
        plan.shopping().riserCutting().orElseThrow().boards().stream()
            .flatMap(board -> board.cuts().stream())
            .filter(cut -> cut.part().equals("batten over " + bridge.over()))
            .filter(cut -> cut.length().equals(bridge.length()))
            .count();

    assertThat(bridge.form()).isEqualTo(Bridge.Form.BATTEN);
    assertThat(sawn).isEqualTo(bridge.count());
    assertThat(plan.shopping().items())
        .noneMatch(item -> item.name().startsWith("wooden battens "));
  }

  /**
   * As the builder says: at his own risk, and judged. By hand: 100 mm before the entry of 416.5 mm
   * radius is 13.76°, so the outer rod stands at x = 457 cos 13.76° = 443.9 mm, 10.9 mm from the
   * track at 433 mm. It cannot be left out: from one neighbour to the other are 1308 mm, more than
   * four spans of this plywood.
   */
  @Test
  void supportForcedIntoTheApproach_fails() {
    SupportPlan rods = SpecBuilder.rods(4, Optional.empty());
    HelixPlan plan =
        twinTrackN()
            .supports(rods.startingAt(Optional.of(mm(2 * Math.PI * 416.5 / 4 - 100))))
            .plan();

    Verdict verdict = verdict(plan);

    assertThat(verdict.state()).isEqualTo(State.FAIL);
    assertThat(verdict.facts().get(Fact.BLOCKING)).isEqualTo(new Text("S4"));
    assertThat(plan.stations().bridges()).isEmpty();
    assertThat(plan.works()).isFalse();
  }

  /**
   * What the builder moves is not taken away again: 20 rods from 40 mm on, the 20th from 90.85 mm
   * before the entry to 110.85 mm, where it is 457 cos 15.25° - 433 = 7.9 mm from a track.
   */
  @Test
  void supportMovedWithinTheApproach_staysAndFails() {
    SupportPlan rods = SpecBuilder.rods(20, Optional.empty()).startingAt(Optional.of(mm(40)));
    HelixPlan unmoved = twinTrackN().supports(rods).plan();
    HelixPlan moved =
        twinTrackN().supports(rods.with(new Adjustments(List.of(), Map.of("S20", mm(-20))))).plan();

    assertThat(unmoved.stations().leftOut()).contains("S20");
    assertThat(station(moved, "S20").edges()).isEqualTo(Edges.BOTH);
    assertThat(verdict(moved).state()).isEqualTo(State.FAIL);
    assertThat(((Text) verdict(moved).facts().get(Fact.BLOCKING)).words()).contains("S20");
  }

  @Test
  void supportsOfTheBuilder_areMovedAndLeftOut() {
    SupportPlan blocks = SpecBuilder.blocks(8);
    HelixPlan before = new SpecBuilder().supports(blocks).plan();
    HelixPlan after =
        new SpecBuilder()
            .supports(
                blocks.with(new Adjustments(List.of("S3 outer", "S5"), Map.of("S4", inches(1)))))
            .plan();

    assertThat(station(after, "S3").edges()).isEqualTo(Edges.INNER);
    assertThat(after.stations().ring()).noneMatch(station -> station.name().equals("S5"));
    assertThat(station(after, "S4").lowest() - station(before, "S4").lowest())
        .isCloseTo(25.4, within(1e-9));
    assertThat(after.supports().rows()).hasSizeLessThan(before.supports().rows().size());
  }

  /** The first support of the ring stands under the roadbed that the approach leads on to. */
  @Test
  void firstSupportOfTheRing_isNeverLeftOut() {
    for (double first = 1; first < 80; first += 8) {
      SupportPlan blocks = SpecBuilder.blocks(12).startingAt(Optional.of(mm(first)));
      HelixPlan plan = new SpecBuilder().supports(blocks).plan();

      assertThat(station(plan, "S1").edges()).isEqualTo(Edges.BOTH);
    }
  }

  @Test
  void supportUnknown_isRefusedByName() {
    SupportPlan blocks = SpecBuilder.blocks(8);

    assertThatThrownBy(
            () ->
                new SpecBuilder()
                    .supports(blocks.with(new Adjustments(List.of("S40"), Map.of())))
                    .plan())
        .hasMessageContaining("support S40 must be one of", "S1, S2");
  }

  private static Station station(HelixPlan plan, String name) {
    return plan.stations().ring().stream()
        .filter(station -> station.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Verdict verdict(HelixPlan plan) {
    return plan.verdicts().stream()
        .filter(verdict -> verdict.rule() == Rule.APPROACH_SUPPORTS)
        .findFirst()
        .orElseThrow();
  }
}
