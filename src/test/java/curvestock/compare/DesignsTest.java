package curvestock.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.spec.SegmentRun;
import curvestock.job.HelixJob;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.units.Angle;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a helix comes to in any division, nothing packed. */
class DesignsTest {

  private static final Angle QUARTER = Angle.ofDegrees(90);
  private static final Angle SIXTH = Angle.ofDegrees(60);

  private static Designs helix(String find, String put) {
    return Designs.of(JobReader.read(HelixJob.with(find, put), "helix.yaml"));
  }

  @Test
  void helix_inQuarters_hasItsLeadsPlatesAndScrews() {
    Design design = Designs.of(HelixJob.read()).in(Division.of(QUARTER));

    // 2 1/4 turns are nine quarters; the ends carry their leads, so there are three kinds.
    assertThat(design.pieces()).isEqualTo(9);
    assertThat(design.bed()).hasSize(3);
    assertThat(design.parts().joints()).isEqualTo(8);
    assertThat(design.parts().plates()).isEqualTo(8);
    assertThat(design.parts().screws()).isEqualTo(8 * 4);
    assertThat(design.parts().assumed()).isFalse();
    assertThat(design.small()).extracting(Demand::count).containsExactly(8);
    assertThat(design.fall()).isEqualTo(new JointFall(JointLine.IN_LINE, 0));
    assertThat(design.job().demands()).isEqualTo(design.bed());
    assertThat(((AnnularSector) design.segment().shape()).sweep().degrees())
        .isCloseTo(90, within(1e-9));
  }

  @Test
  void helix_withHalfLaps_hasLongerSegments() {
    Designs lapped =
        helix("{plate: {length: 60, inset: 12, screws-each-side: 2}}", "{half-lap: 40}");
    AnnularSector segment = (AnnularSector) lapped.in(Division.of(QUARTER)).segment().shape();

    // Half of the lap at each end: 40 mm on a radius of 330 mm.
    assertThat(segment.sweep().degrees()).isCloseTo(90 + Math.toDegrees(40.0 / 330), within(1e-9));
    assertThat(lapped.in(Division.of(QUARTER)).small()).isEmpty();
  }

  @Test
  void helix_ofTwoLayers_hasTwiceThePieces_andHalfOnesAtTheEnds() {
    Designs layered = helix("{plate: {length: 60, inset: 12, screws-each-side: 2}}", "two-layers");
    Design design = layered.in(Division.of(QUARTER));

    assertThat(layered.layers()).isEqualTo(2);
    assertThat(design.pieces()).isEqualTo(9 + 10);
    assertThat(design.parts().joints()).isEqualTo(8 + 9);
    assertThat(design.parts().glueGrams()).isPositive();
  }

  @Test
  void helix_mixed_isQuartersBelowAndSixthsAbove() {
    Design design = Designs.of(HelixJob.read()).in(Division.mixed(6, QUARTER, SIXTH));

    // 810° = 6 x 90° + 4 x 60° + 30°.
    assertThat(design.pieces()).isEqualTo(6 + 5);
    assertThat(design.division().largest()).isEqualTo(QUARTER);
    assertThat(design.fall().line()).isEqualTo(JointLine.PARTLY_IN_LINE);
  }

  @Test
  void ring_mixed_addsUpToTheTurns() {
    Designs ring = Designs.of(TestJobs.small());
    Design design = ring.in(Division.mixed(5, QUARTER, SIXTH));
    double degrees =
        design.bed().stream()
            .mapToDouble(
                demand ->
                    demand.count() * ((AnnularSector) demand.piece().shape()).sweep().degrees())
            .sum();

    assertThat(degrees).isCloseTo(2.5 * 360, within(1e-9));
    assertThat(design.pieces()).isEqualTo(5 + 8);
    assertThat(design.segment().name()).isEqualTo("segment of 60°");
    assertThatThrownBy(() -> ring.in(Division.mixed(10, QUARTER, SIXTH)))
        .hasMessageContaining("must leave some of the turns");
  }

  @Test
  void ears_canBePutOnAndTakenOff_whereThereAreRods() {
    Designs plain = Designs.of(HelixJob.read());
    Designs eared = plain.withEars(true).orElseThrow();

    assertThat(plain.withEars(false)).contains(plain);
    assertThat(eared.in(Division.of(QUARTER)).segment().shape().area())
        .isGreaterThan(plain.in(Division.of(QUARTER)).segment().shape().area());
    assertThat(Designs.of(TestJobs.small()).withEars(true)).isEmpty();
  }

  @Test
  void helix_longerByATurn_hasATurnMoreOfPieces() {
    Designs helix = Designs.of(HelixJob.read());

    assertThat(helix.longerBy(1).turns()).isCloseTo(3.25, within(1e-9));
    assertThat(helix.longerBy(1).in(Division.of(QUARTER)).pieces()).isEqualTo(9 + 4);
  }

  @Test
  void jobFile_withLowerSegments_isRead_forRingAndHelix() {
    Job ring =
        TestJobs.small(
            "segments-per-turn: 4}", "segment-angle: 60, lower-segments: {count: 5, angle: 90}}");
    Job helix =
        JobReader.read(
            HelixJob.with(
                "segments-per-turn: 6",
                "segment-angle: 60\n  lower-segments: {count: 6, angle: 90}"),
            "helix.yaml");

    assertThat(ring.demands()).extracting(Demand::count).containsExactly(5, 7, 1);
    assertThat(Designs.of(ring).own().lower()).contains(new SegmentRun(5, QUARTER));
    assertThat(helix.structure().orElseThrow().plan().joints().all()).hasSize(10);
    assertThat(Designs.of(helix).own()).isEqualTo(Division.mixed(6, QUARTER, SIXTH));
    assertThatThrownBy(
            () ->
                TestJobs.small(
                    "segments-per-turn: 4}",
                    "segment-angle: 60, lower-segments: {count: 0, angle: 90}}"))
        .hasMessageContaining("count");
  }

  @Test
  void smallParts_thatFindNoRoom_takeSheetsOfTheirOwn() throws Exception {
    Job job = TestJobs.small();
    SegmentOption option =
        new Options(Designs.of(job), curvestock.packing.Packers.FORGETFUL, CompareListener.NONE)
            .option(Division.of(Angle.ofDegrees(45)), "45", curvestock.packing.Effort.QUICK);

    assertThat(option.small().wanted()).isEqualTo(option.joints());
    assertThat(option.small().nested()).isBetween(1, option.small().wanted());
    assertThat(option.small().complete()).isTrue();
    assertThat(option.sheets())
        .isEqualTo(option.plan().purchase().sheets() + option.small().extraSheets());
    assertThat(List.of(option.areaYield())).allSatisfy(y -> assertThat(y).isBetween(0.1, 1.0));
  }
}
