package curvestock.job;

import curvestock.units.Length;
import java.util.Optional;

/** Reads the {@code width:} of curved roadbed, which its {@code radius:} limits. */
final class RoadbedWidth {

  private RoadbedWidth() {}

  /**
   * @param radius centre-line radius, if it could be read
   */
  static Optional<Length> read(Block block, Optional<Length> radius) {
    Optional<Field> field = block.need("width", "width: 4 1/2 in");
    Optional<Length> width = field.flatMap(Field::size);
    boolean tooWide =
        width.isPresent() && radius.isPresent() && width.get().compareTo(radius.get().times(2)) > 0;
    if (tooWide) {
      String limit = block.find("radius").map(Field::shown).orElse("");
      Field wide = field.orElseThrow();
      wide.note(
          "must be at most twice the radius, which is " + limit + ", but was " + wide.shown());
    }
    return width;
  }
}
