package curvestock.helix;

import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.PieceKind;
import curvestock.helix.build.ScheduleRow;
import curvestock.helix.build.Station;
import curvestock.helix.build.SupportRow;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.GroundPlan;
import curvestock.units.Angle;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for any helix, tried on seeded random ones: circles and ovals, all joints. */
class HelixPropertyTest {

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 30);
  }

  private static HelixPlan random(long seed) {
    Random random = new Random(seed);
    boolean oval = random.nextInt(3) == 0;
    double segment = List.of(30.0, 45.0, 60.0, 90.0).get(random.nextInt(4));
    GroundPlan ground =
        new GroundPlan(
            mm(400 + random.nextInt(500)),
            random.nextBoolean() ? Optional.of(mm(50 + random.nextInt(20))) : Optional.empty(),
            mm(40 + random.nextInt(30)),
            mm(oval ? 200 + random.nextInt(600) : 0),
            random.nextBoolean() ? Direction.CLOCKWISE : Direction.COUNTER_CLOCKWISE,
            Angle.ofDegrees(random.nextInt(360)));
    double turns = oval ? 1 + random.nextInt(6) / 2.0 : 1 + random.nextInt(400) / 100.0;
    double lead = 150 + random.nextInt(700);
    EndPlan ends = EndPlan.level(mm(200 + random.nextInt(300)), mm(lead));
    if (!oval && random.nextBoolean()) {
      ends = ends.withEasement(mm(Math.min(2 * lead, 100 + random.nextInt(250))));
    }
    Construction construction =
        switch (random.nextInt(4)) {
          case 0 -> new Construction.TwoLayers();
          case 1 -> new Construction.HalfLap(mm(20 + random.nextInt(40)));
          case 2 -> SpecBuilder.plate(4, 0.5, 0.2);
          default -> new Construction.PlatesBeside(mm(100), mm(20), mm(6), true);
        };
    return new SpecBuilder()
        .ground(ground)
        .segment(segment)
        .construction(construction)
        .ends(ends)
        .supports(
            random.nextBoolean() ? SpecBuilder.blocks(12) : SpecBuilder.rods(12, Optional.empty()))
        .ascent(Ascent.ofTurnsAndRise(turns, mm(80 + random.nextInt(40))))
        .plan();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void heights_neverFall_andRisesAddUpToTheClimb(long seed) {
    HelixPlan plan = random(seed);
    double step = (plan.profile().head() - plan.profile().foot()) / 5000;
    double sum = 0;
    for (int i = 0; i < 5000; i++) {
      double at = plan.profile().foot() + i * step;
      double rise = plan.profile().heightAt(at + step) - plan.profile().heightAt(at);
      assertThat(rise).isGreaterThan(-1e-9);
      sum += rise;
    }
    assertThat(sum).isCloseTo(plan.climb().climb().millimetres(), within(1e-6));
    for (int i = 1; i < plan.supports().rows().size(); i++) {
      assertThat(plan.supports().rows().get(i).underside())
          .isGreaterThanOrEqualTo(plan.supports().rows().get(i - 1).underside());
    }
  }

  /** Each layer's pieces follow on each other over the whole ring, joint by joint. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void pieces_coverEachTurnOnce(long seed) {
    HelixPlan plan = random(seed);
    for (int layer = 1; layer <= plan.joints().layers(); layer++) {
      double covered = 0;
      for (BedPiece piece : plan.roadbed().pieces()) {
        if (piece.layer() == layer) {
          assertThat(piece.from()).isCloseTo(covered, within(1e-9));
          piece.lower().ifPresent(joint -> assertThat(joint.at()).isEqualTo(piece.from()));
          covered = piece.to();
        }
      }
      assertThat(covered).isCloseTo(plan.climb().ringLength(), within(1e-9));
    }
  }

  /** What is cut, laid where it belongs, holds the line from joint to joint and no more. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void cutOutlines_laidInPlace_agreeWithTheSchedule(long seed) {
    HelixPlan plan = random(seed);
    Map<String, PieceKind> kinds =
        plan.roadbed().kinds().stream()
            .collect(Collectors.toMap(PieceKind::id, Function.identity()));
    for (ScheduleRow row : plan.schedule().rows()) {
      BedPiece piece = row.piece();
      Outline laid = kinds.get(piece.kindId()).at(piece.pose());
      double[] inside = {
        piece.cutFrom() + 0.5, piece.from() + 1, piece.to() - 1, piece.cutTo() - 0.5
      };
      for (double at : inside) {
        assertThat(laid.contains(plan.line().at(at).point())).isTrue();
      }
      for (double at : new double[] {piece.cutFrom() - 0.5, piece.cutTo() + 0.5}) {
        Point point = plan.line().at(at).point();
        assertThat(laid.contains(point)).isFalse();
      }
      assertThat(row.undersideTo()).isGreaterThan(row.undersideFrom());
    }
  }

  /** Leads too: no support hangs in the air, none stands beyond the wood. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void supports_standUnderTheWood_ontoWhatIsBelow(long seed) {
    HelixPlan plan = random(seed);
    double enters = -plan.spec().bottom().leadIn().millimetres();
    double leaves = plan.climb().ringLength() + plan.spec().top().leadIn().millimetres();
    for (Station station : plan.stations().all()) {
      double top = 0;
      for (SupportRow row : plan.supports().rows()) {
        if (row.station().equals(station)) {
          assertThat(row.at()).isBetween(enters, leaves);
          assertThat(row.underside().minus(row.gap()).millimetres()).isCloseTo(top, within(1e-6));
          top = row.underside().plus(plan.spec().plywood()).millimetres();
        }
      }
    }
    assertThat(plan.stations().all()).extracting(Station::name).doesNotHaveDuplicates();
  }
}
