package curvestock.helix.build;

import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;

import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.SupportPlan;
import curvestock.helix.verdict.Rule;
import curvestock.units.Count;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which pieces meet on a support: the same in tables, drawings and the check. */
class JointsOnSupportsTest {

  private static SpecBuilder ring(double radius) {
    return new SpecBuilder()
        .ground(GroundPlan.circle(mm(radius), mm(140)))
        .segment(30)
        .ascent(Ascent.ofTurnsAndRise(2.25, mm(110)));
  }

  private static HelixPlan withFirstAt(double first, Construction construction) {
    SupportPlan supports = SpecBuilder.blocks(12);
    return ring(700)
        .construction(construction)
        .supports(
            new SupportPlan(
                supports.riser(),
                supports.perTurn(),
                Optional.of(mm(first)),
                supports.footHeight(),
                supports.bulgeShare()))
        .plan();
  }

  private static List<String> stations(HelixPlan plan, int piece) {
    return plan.roadbed().pieces().get(piece).stations().stream()
        .map(place -> place.station().name() + " " + Math.round(place.at()))
        .toList();
  }

  private static long sharing(HelixPlan plan) {
    int joints = plan.joints().all().size();
    long count = 0;
    for (int i = 0; i < joints; i++) {
      List<String> upper = stations(plan, i + 1);
      count += stations(plan, i).stream().anyMatch(upper::contains) ? 1 : 0;
    }
    return count;
  }

  private static long told(HelixPlan plan) {
    return plan.verdicts().stream()
        .filter(verdict -> verdict.rule() == Rule.JOINTS_ON_RISERS)
        .mapToLong(verdict -> ((Count) verdict.measured().orElseThrow()).number())
        .findFirst()
        .orElseThrow();
  }

  /** Both pieces end in the middle of the block, whatever a sum of steps rounds to. */
  @ParameterizedTest
  @ValueSource(doubles = {633, 700, 777, 1011, 1234, 1500, 1717})
  void buttJoints_blocksUnderAll_bothPiecesRestThere(double radius) {
    HelixPlan plan =
        ring(radius)
            .construction(SpecBuilder.plate(3, 0.5, 0.25))
            .supports(SpecBuilder.blocks(24))
            .plan();

    assertThat(told(plan)).isEqualTo(plan.joints().all().size());
    assertThat(sharing(plan)).isEqualTo(plan.joints().all().size());
  }

  /** Blocks of 1 1/2 in reach 19.05 mm: 15 mm from the middle to a joint they do, 25 mm not. */
  @Test
  void joint_offTheMiddleOfABlock_restsOnItAsFarAsTheBlockReaches() {
    for (Construction joint :
        List.of(SpecBuilder.plate(3, 0.5, 0.25), new Construction.HalfLap(mm(60)))) {
      HelixPlan near = withFirstAt(15, joint);
      int all = near.joints().all().size();

      assertThat(told(near)).isEqualTo(all);
      assertThat(sharing(near)).isEqualTo(all);
      assertThat(told(withFirstAt(25, joint))).isZero();
    }
    assertThat(sharing(withFirstAt(25, SpecBuilder.plate(3, 0.5, 0.25)))).isZero();
  }

  /** A mark beyond the wood would be cut into the neighbour on the sheet. */
  @Test
  void marks_ofABlockBeyondTheJoint_stayOnThePiece() {
    HelixPlan plan = withFirstAt(15, SpecBuilder.plate(3, 0.5, 0.25));
    BedPiece piece = plan.roadbed().pieces().get(3);

    assertThat(piece.stations()).hasSize(2);
    assertThat(plan.marks().on(piece))
        .filteredOn(mark -> mark.sort() == RoadbedMark.Sort.STATION)
        .hasSize(1);
  }
}
