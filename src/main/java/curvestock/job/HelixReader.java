package curvestock.job;

import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.SegmentPlan;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.SegmentRun;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads {@code helix:}. With {@code turns, radius, width, segments-per-turn | segment-angle} alone
 * it is a plain ring of segments; with any other key a whole helix, see {@link StructureReader}.
 */
final class HelixReader {

  private static final String LOWER = "lower-segments";

  private static final List<String> PLAIN =
      List.of("turns", "radius", "width", "segments-per-turn", "segment-angle", LOWER);

  private static final double MOST_TURNS = 1000;
  private static final int MOST_SEGMENTS = 360;
  private static final int MOST_LOWER = 10_000;

  /** A quarter inch, in millimetres along the centre line. */
  private static final double SHORTEST_PIECE = 6.35;

  private HelixReader() {}

  /**
   * What a helix block asks for.
   *
   * @param ring the plain ring; of a whole helix its turns as a ring, empty for an oval
   * @param structure the whole helix, if it is asked for
   */
  record Asked(Optional<SegmentPlan> ring, Optional<HelixOrder> structure) {}

  /**
   * Reads the block.
   *
   * @param sheets the job's sheets, whose thickness the heights depend on; empty if unreadable
   * @param cutting empty if unreadable
   * @param style of what is printed
   * @param rounding of what is assumed, by the units of the job's own numbers
   */
  static Optional<Asked> read(
      Field field,
      List<SheetStock> sheets,
      Optional<Cutting> cutting,
      LengthStyle style,
      LengthStyle rounding) {
    List<String> keys = new ArrayList<>(PLAIN);
    keys.addAll(StructureReader.KEYS);
    return field
        .block(keys.toArray(String[]::new))
        .flatMap(
            block ->
                StructureReader.KEYS.stream().anyMatch(key -> block.find(key).isPresent())
                    ? whole(block, sheets, cutting, style, rounding)
                    : plan(block).map(ring -> new Asked(Optional.of(ring), Optional.empty())));
  }

  private static Optional<Asked> whole(
      Block block,
      List<SheetStock> sheets,
      Optional<Cutting> cutting,
      LengthStyle style,
      LengthStyle rounding) {
    // Where sheets or cutting are wrong, that is noted already; any figure lets reading go on.
    Length plywood =
        sheets.stream().findFirst().map(SheetStock::thickness).orElse(Length.ofInches(0.5));
    Length kerf = cutting.map(Cutting::kerf).orElse(Length.ZERO);
    return new StructureReader(block, plywood, sheets, kerf, style, rounding)
        .read()
        .map(order -> new Asked(ring(order.plan()), Optional.of(order)));
  }

  private static Optional<SegmentPlan> ring(HelixPlan plan) {
    GroundPlan ground = plan.spec().ground();
    return ground.isOval()
        ? Optional.empty()
        : Optional.of(
            new SegmentPlan(
                plan.climb().turns(),
                ground.bedRadius(),
                ground.width(),
                plan.spec().segmentation().segment(),
                plan.spec().segmentation().lower()));
  }

  private static Optional<SegmentPlan> plan(Block block) {
    Optional<Double> turns =
        block.need("turns", "turns: 5 1/4").flatMap(field -> field.amount(MOST_TURNS));
    Optional<Length> radius = block.need("radius", "radius: 26 in").flatMap(Field::size);
    Optional<Length> width = RoadbedWidth.read(block, radius);
    Optional<Angle> segment =
        block.needOneOf("segments-per-turn", "segment-angle").flatMap(HelixReader::segment);
    Optional<SegmentRun> lower = lower(block);
    Optional<SegmentPlan> plan =
        block.build(
            () ->
                new SegmentPlan(
                    turns.orElseThrow(),
                    radius.orElseThrow(),
                    width.orElseThrow(),
                    segment.orElseThrow(),
                    lower));
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

  /** Pieces of another angle below the segments, if any are given. */
  static Optional<SegmentRun> lower(Block helix) {
    return helix
        .find(LOWER)
        .flatMap(field -> field.block("count", "angle"))
        .flatMap(
            block -> {
              Optional<Integer> count =
                  block.need("count", "count: 12").flatMap(field -> field.whole(1, MOST_LOWER));
              Optional<Angle> angle =
                  block.need("angle", "angle: 90").flatMap(field -> field.angle(1, 360));
              return block.build(() -> new SegmentRun(count.orElseThrow(), angle.orElseThrow()));
            });
  }

  static Optional<Angle> segment(Field field) {
    if (field.key().equals("segment-angle")) {
      return field.angle(1, 360);
    }
    return field.whole(1, MOST_SEGMENTS).map(count -> Angle.ofDegrees(360.0 / count));
  }
}
