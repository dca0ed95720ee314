package curvestock.job;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.PieceKind;
import curvestock.helix.build.SupportRow;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.Riser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** With an easement the entry reaches into the ring: no support of the turn above stands in it. */
class EasedEntryTest {

  private static final String HELIX =
      """
      curvestock: 2
      title: Eased entry (invented)
      invented: true
      units: in
      sheets:
        - {name: plywood, size: 4x8 ft, thickness: 0.469, price: 47.00}
      cutting: {kerf: 1/8, margin: 3/8}
      helix:
        scale: HO
        inner-track: 28
        tracks: 2
        track-spacing: 2 1/4
        side-margin: 1 7/8
        turns: 3 1/2
        climb: 15 3/4
        segment-angle: 60
        joint: {half-lap: 2 1/2}
        heights: {underlay: 3/16, ties: 0.07, rail: 0.1}
        bottom: {vertical-curve: 30, climb-lead: 32, lead-in: 32, easement: %s}
        top: {vertical-curve: 30, climb-lead: 32, lead-in: 32, easement: 18}
        supports:
          per-turn: 14
          foot-height: 3
          blocks: {width: 3/4, along: 1 1/2, board: {name: "1x2 pine, 8 ft", length: 96, price: 3.10}}
        trains:
          tallest: 2.7
          longest: {height: 2.4, length: 11, width: 1 3/8, truck-centres: 7 3/4}
      """;

  /** Outlines laid over each other: blocks of the first turn's second half and the first piece. */
  @ParameterizedTest
  @ValueSource(ints = {6, 12, 18, 24})
  void block_onTheBase_standsBesideTheFirstPiece(int easement) throws Exception {
    HelixPlan plan =
        JobReader.read(HELIX.formatted(easement), "eased.yaml").structure().orElseThrow().plan();
    Riser.WoodBlocks wood = (Riser.WoodBlocks) plan.spec().supports().riser();
    BedPiece first = plan.roadbed().pieces().get(0);
    Outline bed = kind(plan, first).at(first.pose());

    int seen = 0;
    for (SupportRow row : plan.supports().of(SupportRow.Part.RING)) {
      boolean beside = row.at() > plan.climb().runPerTurn().millimetres() / 2;
      if (!row.standsOnBase() || !beside) {
        continue;
      }
      double offset = plan.spec().ground().width().minus(wood.width()).times(0.5).millimetres();
      for (double outwards : row.edges().outwards(offset)) {
        assertThat(Clearance.between(block(plan, wood, row, outwards), bed))
            .as(row.station().name() + " of " + outwards)
            .isPositive();
        seen++;
      }
    }
    assertThat(seen).isGreaterThan(5);
  }

  private static PieceKind kind(HelixPlan plan, BedPiece piece) {
    return plan.roadbed().kinds().stream()
        .filter(kind -> kind.id().equals(piece.kindId()))
        .findFirst()
        .orElseThrow();
  }

  private static Outline block(
      HelixPlan plan, Riser.WoodBlocks wood, SupportRow row, double outwards) {
    Waypoint here = plan.line().at(row.at());
    Point middle = here.toLeft(-plan.line().inwards() * outwards);
    double along = wood.along().millimetres();
    double across = wood.width().millimetres();
    Point corner =
        middle
            .minus(Point.polar(along / 2, here.heading()))
            .minus(Point.polar(across / 2, here.heading() + Math.PI / 2));
    return Outline.rectangle(along, across).at(new Pose(corner.x(), corner.y(), here.heading()));
  }
}
