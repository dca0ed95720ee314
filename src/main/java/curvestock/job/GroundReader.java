package curvestock.job;

import curvestock.helix.spec.Direction;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.standard.Scale;
import curvestock.helix.standard.Sourced;
import curvestock.helix.standard.TrackSpacing;
import curvestock.helix.standard.TrackSpacing.EquipmentClass;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads where the tracks and the roadbed of a helix run, seen from above. */
final class GroundReader {

  private static final Map<String, Direction> DIRECTIONS =
      Map.of("counter-clockwise", Direction.COUNTER_CLOCKWISE, "clockwise", Direction.CLOCKWISE);

  private final Assumed assumed;

  GroundReader(Assumed assumed) {
    this.assumed = assumed;
  }

  Optional<GroundPlan> read(Block helix, Optional<Scale> scale) {
    Optional<Field> radius = helix.needOneOf("radius", "inner-track");
    Optional<Length> stated = radius.flatMap(Field::size);
    Optional<Length> spacing = spacing(helix, scale, stated);
    Optional<Field> across = helix.needOneOf("width", "side-margin");
    Optional<Length> wide = across.flatMap(Field::size);
    Length straight = helix.find("straight").flatMap(Lengths.DISTANCE::read).orElse(Length.ZERO);
    Optional<Block> block = Optional.of(helix);
    Direction direction =
        assumed.value(
            block,
            "direction",
            field -> field.choice(DIRECTIONS, List.of("counter-clockwise", "clockwise")),
            "direction",
            Direction.COUNTER_CLOCKWISE,
            "counter-clockwise",
            "seen from above, climbing");
    Angle entry =
        assumed.value(
            block,
            "entry",
            field -> field.angle(-360, 360),
            "entry",
            Angle.ofDegrees(0),
            "0°",
            "3 o'clock on the plan, where angles are counted from");
    if (radius.isPresent() && across.isPresent()) {
      requireMiddle(radius.get(), across.get(), stated, wide);
    }
    return helix.build(
        () -> {
          boolean byWidth = across.orElseThrow().key().equals("width");
          Length margin =
              byWidth ? GroundPlan.marginOfWidth(wide.orElseThrow(), spacing) : wide.orElseThrow();
          boolean byBed = radius.orElseThrow().key().equals("radius");
          Length half = spacing.orElse(Length.ZERO).times(0.5);
          Length inner = byBed ? stated.orElseThrow().minus(half) : stated.orElseThrow();
          return new GroundPlan(inner, spacing, margin, straight, direction, entry);
        });
  }

  /** Said in the words of the file: radius and width, not the figures that follow from them. */
  private static void requireMiddle(
      Field radius, Field width, Optional<Length> stated, Optional<Length> wide) {
    if (!radius.key().equals("radius") || !width.key().equals("width")) {
      return;
    }
    if (stated.isPresent()
        && wide.isPresent()
        && wide.get().compareTo(stated.get().times(2)) >= 0) {
      radius.note(
          unquoted(radius)
              + " is smaller than half the roadbed's width ("
              + unquoted(width)
              + "); make the radius larger or the roadbed narrower");
    }
  }

  private static String unquoted(Field field) {
    return field.shown().replace("\"", "");
  }

  /** Distance to a second track: stated, from the published tables, or none. */
  private Optional<Length> spacing(Block helix, Optional<Scale> scale, Optional<Length> radius) {
    int tracks = helix.find("tracks").flatMap(field -> field.whole(1, 2)).orElse(1);
    Optional<Field> given = helix.find("track-spacing");
    if (given.isPresent()) {
      if (helix.find("tracks").isPresent() && tracks == 1) {
        given.get().note("is the distance of two tracks, but `tracks:` is 1; leave one out");
      }
      return given.get().size();
    }
    if (tracks == 1 || scale.isEmpty() || radius.isEmpty()) {
      return Optional.empty();
    }
    Optional<Sourced<Length>> published =
        TrackSpacing.nem112(scale.get(), radius.get())
            .or(() -> TrackSpacing.nmraS8(scale.get(), radius.get(), EquipmentClass.I));
    if (published.isEmpty()) {
      helix.note(
          "no published table gives the distance of two tracks of scale "
              + scale.get().name()
              + " at this radius; write `track-spacing: 2 1/4 in`");
      return Optional.empty();
    }
    assumed.note(
        "track-spacing",
        assumed.shown(published.get().value()),
        published.get().citation() + "; figure for this radius");
    return Optional.of(published.get().value());
  }
}
