package curvestock.helix.build;

import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.build.SupportRow.Part;
import curvestock.helix.spec.Adjustments;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.SplicePlate;
import curvestock.helix.spec.StockBoard;
import curvestock.helix.spec.SupportPlan;
import curvestock.helix.standard.HeightStandard;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Heights of blocks that a splice plate lies on, added up by hand. */
class PlatesOnSupportsTest {

  private static final double PLY = 0.483 * 25.4;

  private static SupportPlan supports(double first, double cross, Optional<Length> at) {
    Riser blocks =
        new Riser.WoodBlocks(
            mm(30),
            mm(45),
            mm(cross),
            mm(3),
            Optional.of(new StockBoard("30 x 45", mm(2400), Optional.empty())),
            false);
    return new SupportPlan(
        blocks, 24, at.map(any -> mm(first)), mm(100), SupportPlan.USUAL_BULGE_SHARE);
  }

  private static HelixPlan plan(double inset, SupportPlan supports) {
    return new SpecBuilder()
        .ground(GroundPlan.circle(mm(800), mm(140)))
        .segment(30)
        .ascent(Ascent.ofTurnsAndRise(3.25, mm(140)))
        .construction(SpecBuilder.plate(4, inset, 0.5))
        .supports(supports)
        .plan();
  }

  private static BlockPlan blocks(HelixPlan plan) {
    return plan.supports().blocks().orElseThrow();
  }

  /** Where the turn and the one below climb steadily. */
  private static List<SupportRow> second(HelixPlan plan) {
    return plan.supports().ofTurn(2).stream().filter(row -> row.at() > 6000).toList();
  }

  private static SupportRow joint(List<SupportRow> rows) {
    return rows.stream().filter(PlatesOnSupportsTest::isJoint).findFirst().orElseThrow();
  }

  private static boolean isJoint(SupportRow row) {
    return Integer.parseInt(row.station().name().substring(1)) % 2 == 1;
  }

  /**
   * 12 pieces and 24 supports a turn: every other one carries a joint. Between turns by hand: 140
   * mm less the plywood, less 12.7 mm of plate at a joint, whose 127 mm leave 13 mm of each edge.
   */
  @Test
  void plateOnBlocks_atJoints_takesItsThickness() {
    HelixPlan plan = plan(0.5, supports(0, 0, Optional.empty()));
    BlockPlan blocks = blocks(plan);

    for (SupportRow row : second(plan)) {
      double height = blocks.blockUnder(row).orElseThrow().height().millimetres();
      assertThat(height).isCloseTo(140 - PLY - (isJoint(row) ? 12.7 : 0), within(1e-6));
    }
    assertThat(plan.supports().partlyUnderPlates()).isEmpty();
  }

  /** A cross piece carries the plate over its whole width, however narrow the plate is. */
  @Test
  void crossPiece_betweenPlateAndBlocks_takesItsThicknessToo() {
    HelixPlan plan = plan(3, supports(0, 15, Optional.empty()));
    BlockPlan blocks = blocks(plan);

    assertThat(second(plan))
        .extracting(row -> blocks.blockUnder(row).orElseThrow().height().millimetres())
        .allSatisfy(height -> assertThat(height).isBetween(140 - PLY - 27.71, 140 - PLY - 14.99));
    assertThat(blocks.heightUnder(joint(second(plan))).millimetres())
        .isCloseTo(140 - PLY - 12.7 - 15, within(1e-6));
  }

  /** A plate 3 in narrower than the roadbed lies between blocks of 30 mm at its edges. */
  @Test
  void narrowPlate_betweenTheBlocks_takesNothing() {
    HelixPlan plan = plan(3, supports(0, 0, Optional.empty()));

    assertThat(plan.supports().rows())
        .allSatisfy(row -> assertThat(row.plate()).isEqualTo(Length.ZERO));
  }

  /** 4 in reach 50.8 mm from the joint: a block of 45 mm at 40 mm from it is covered partly. */
  @Test
  void plate_thatEndsOverABlock_isTold() {
    HelixPlan plan = plan(0.5, supports(40, 0, Optional.of(Length.ZERO)));

    assertThat(plan.supports().partlyUnderPlates()).isNotEmpty();
  }

  /** One block at one edge carries no cross piece, which would hang in the air beyond it. */
  @Test
  void crossPiece_overOneBlockAlone_isLeftOut() {
    HelixPlan plan =
        new SpecBuilder()
            .ground(GroundPlan.circle(mm(800), mm(140)))
            .ascent(Ascent.ofTurnsAndRise(3.25, mm(140)))
            .supports(
                supports(0, 15, Optional.empty())
                    .with(new Adjustments(List.of("S5 outer"), Map.of())))
            .plan();
    BlockPlan blocks = blocks(plan);
    List<SupportRow> single =
        plan.supports().of(Part.RING).stream()
            .filter(row -> row.edges() == Edges.INNER || row.edges() == Edges.OUTER)
            .toList();

    assertThat(single).isNotEmpty();
    assertThat(single).allSatisfy(row -> assertThat(blocks.heightUnder(row)).isEqualTo(row.gap()));
    assertThat(blocks.crossPieces())
        .isEqualTo(
            (int)
                plan.supports().rows().stream()
                    .filter(row -> row.edges() == Edges.BOTH || row.edges() == Edges.MIDDLE)
                    .count());
  }

  /**
   * 12 pieces and 24 rods a turn of 800 mm radius: rods stand 104.7 mm from the joints, plates
   * reach 127 mm. The rods are 12 mm from the edges, their washers 16 mm wide, the nuts below them.
   */
  private static HelixPlan onRods(double inset) {
    return new SpecBuilder()
        .ground(GroundPlan.circle(mm(800), mm(140)))
        .segment(30)
        .ascent(Ascent.ofTurnsAndRise(3.25, mm(140)))
        .construction(
            new Construction.ButtWithPlate(
                new SplicePlate(
                    SplicePlate.Form.CURVED,
                    mm(254),
                    Length.ofInches(inset),
                    mm(12.7),
                    2,
                    mm(4),
                    true)))
        .supports(SpecBuilder.rods(24, Optional.empty()))
        .plan();
  }

  private static RodPlan rods(HelixPlan plan) {
    return new RodPlan(
        plan.spec(), (Riser.ThreadedRods) plan.spec().supports().riser(), plan.supports());
  }

  private static Verdict rodsInPlates(HelixPlan plan) {
    return plan.verdicts().stream()
        .filter(verdict -> verdict.rule() == Rule.RODS_IN_PLATES)
        .findFirst()
        .orElseThrow();
  }

  /** Plates bare of 1.3 mm at the edges lie under the whole washer: 12.7 mm between it and bed. */
  @Test
  void lowerNut_underAWidePlate_isLowerByItsThickness() {
    HelixPlan wide = onRods(0.1);
    HelixPlan narrow = onRods(3);
    List<SupportRow> over =
        wide.supports().ofTurn(2).stream().filter(row -> row.plate().millimetres() > 0).toList();

    assertThat(over).isNotEmpty();
    for (SupportRow row : over) {
      SupportRow same =
          narrow.supports().rows().stream()
              .filter(each -> each.at() == row.at())
              .findFirst()
              .orElseThrow();
      assertThat(rods(narrow).lowerNut(same).minus(rods(wide).lowerNut(row)).millimetres())
          .isCloseTo(12.7, within(1e-6));
    }
    assertThat(rodsInPlates(wide).state()).isEqualTo(Verdict.State.OK);
    assertThat(rodsInPlates(narrow).state()).isEqualTo(Verdict.State.OK);
  }

  /** Bare of 6.35 mm: a washer from 4 to 20 mm lies on wood of two heights. */
  @Test
  void washer_halfOnAPlate_isMarginal() {
    assertThat(rodsInPlates(onRods(0.5)).state()).isEqualTo(Verdict.State.MARGINAL);
  }

  /** Of blocks 30 mm broad a plate bare of 12.7 mm covers 17.3: packing goes beside it. */
  @Test
  void plate_overHalfABlock_isTold() {
    assertThat(plan(1, supports(0, 0, Optional.empty())).supports().partlyUnderPlates())
        .isNotEmpty();
  }

  /**
   * The plan leaves S24 out beside the entry. Plates reach 101.6 mm from the joints at S23 and S1,
   * a batten between the two would begin 24.5 mm from them: it could not lie flat.
   */
  @Test
  void batten_whereAPlateReachesInFromASupport_isAStrip() {
    EndPlan end = EndPlan.level(mm(1200), mm(1200)).withClimbLead(mm(1200));
    HelixPlan plan =
        new SpecBuilder()
            .scale("1")
            .tallest(mm(150), HeightStandard.NMRA_S7)
            .ground(GroundPlan.circle(mm(1500), mm(200)))
            .segment(30)
            .ascent(Ascent.ofTurnsAndRise(2.25, mm(280)))
            .ends(end)
            .construction(SpecBuilder.plate(8, 0.75, 0.5))
            .supports(supports(0, 0, Optional.empty()))
            .plan();

    assertThat(plan.stations().bridges())
        .isNotEmpty()
        .allSatisfy(bridge -> assertThat(bridge.form()).isEqualTo(Bridge.Form.STRIP));
  }
}
