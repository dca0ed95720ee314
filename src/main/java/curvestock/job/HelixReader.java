package curvestock.job;

import curvestock.helix.SegmentPlan;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.Optional;

/** Reads {@code helix: {turns, radius, width, segments-per-turn | segment-angle}}. */
final class HelixReader {

  private static final double MOST_TURNS = 1000;
  private static final int MOST_SEGMENTS = 360;

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
    Optional<Length> width = block.need("width", "width: 4 1/2 in").flatMap(Field::size);
    Optional<Angle> segment =
        block.needOneOf("segments-per-turn", "segment-angle").flatMap(HelixReader::segment);
    return block.build(
        () ->
            new SegmentPlan(
                turns.orElseThrow(),
                radius.orElseThrow(),
                width.orElseThrow(),
                segment.orElseThrow()));
  }

  private static Optional<Angle> segment(Field field) {
    if (field.key().equals("segment-angle")) {
      return field.angle(1, 360);
    }
    return field.whole(1, MOST_SEGMENTS).map(count -> Angle.ofDegrees(360.0 / count));
  }
}
