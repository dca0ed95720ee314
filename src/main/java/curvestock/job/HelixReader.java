package curvestock.job;

import curvestock.helix.SegmentPlan;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.Optional;

/** Reads {@code helix: {turns, radius, width, segments-per-turn | segment-angle}}. */
final class HelixReader {

  private static final double MOST_TURNS = 1000;
  private static final int MOST_SEGMENTS = 360;

  /** A quarter inch, in millimetres along the centre line. */
  private static final double SHORTEST_PIECE = 6.35;

  private HelixReader() {}

  static Optional<SegmentPlan> read(Field field) {
    return field
        .block("turns", "radius", "width", "segments-per-turn", "segment-angle")
        .flatMap(HelixReader::plan);
  }

  private static Optional<SegmentPlan> plan(Block block) {
    Optional<Double> turns =
        block.need("turns", "turns: 5 1/4").flatMap(field -> field.amount(MOST_TURNS));
    Optional<Length> radius = block.need("radius", "radius: 26 in").flatMap(Field::size);
    Optional<Length> width = RoadbedWidth.read(block, radius);
    Optional<Angle> segment =
        block.needOneOf("segments-per-turn", "segment-angle").flatMap(HelixReader::segment);
    Optional<SegmentPlan> plan =
        block.build(
            () ->
                new SegmentPlan(
                    turns.orElseThrow(),
                    radius.orElseThrow(),
                    width.orElseThrow(),
                    segment.orElseThrow()));
    return plan.filter(made -> isCuttable(made, block));
  }

  /** Turns such as 5.334 in thirds leave a sliver that is a slip of the pen, not a piece. */
  private static boolean isCuttable(SegmentPlan plan, Block block) {
    Angle rest = Angle.ofDegrees(plan.remainderDegrees());
    Length run = plan.radius().times(rest.radians());
    if (rest.degrees() == 0 || run.millimetres() >= SHORTEST_PIECE) {
      return true;
    }
    block.note(
        "the turns leave a last piece of "
            + rest
            + ", only "
            + run
            + " long, which cannot be cut; change the turns a little, or write them as a fraction"
            + " such as 5 1/3");
    return false;
  }

  private static Optional<Angle> segment(Field field) {
    if (field.key().equals("segment-angle")) {
      return field.angle(1, 360);
    }
    return field.whole(1, MOST_SEGMENTS).map(count -> Angle.ofDegrees(360.0 / count));
  }
}
