package curvestock.job;

import curvestock.sheet.Cutting;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.Optional;

/**
 * Reads {@code cutting: {kerf, extra, margin}}.
 *
 * <p>In format 1 pieces lay kerf + extra apart, which leaves extra − kerf of wood, or none, where
 * each is cut by itself. Such a job keeps its gap, and its owner is told what to write.
 */
final class CuttingReader {

  private final boolean isFirstFormat;
  private Optional<String> translated = Optional.empty();

  CuttingReader(boolean isFirstFormat) {
    this.isFirstFormat = isFirstFormat;
  }

  Optional<Cutting> read(Field field) {
    return field.block("kerf", "extra", "margin").flatMap(block -> cutting(block, field));
  }

  /** How {@code extra:} of format 1 was read; empty in format 2, or if there is none. */
  Optional<String> translated() {
    return translated;
  }

  private Optional<Cutting> cutting(Block block, Field field) {
    Optional<Length> kerf = block.need("kerf", "kerf: 1/8 in").flatMap(Lengths.KERF::read);
    Length extra = block.find("extra").flatMap(Lengths.GAP::read).orElse(Length.ZERO);
    Length margin = block.find("margin").flatMap(Lengths.GAP::read).orElse(Length.ZERO);
    Optional<Cutting> cutting =
        block.build(
            () ->
                isFirstFormat
                    ? new Cutting(kerf.orElseThrow(), kerf.get().plus(extra), margin)
                    : Cutting.leaving(kerf.orElseThrow(), extra, margin));
    if (isFirstFormat && !extra.equals(Length.ZERO)) {
      translated = cutting.map(way -> told(way, extra, field.reading().style()));
    }
    return cutting;
  }

  private static String told(Cutting way, Length extra, LengthStyle style) {
    boolean leavesWood = way.standing().compareTo(Length.ZERO) > 0;
    return "This job is of format 1, where `extra: "
        + style.formatGiven(extra)
        + "` was added to the kerf: pieces still lie "
        + style.formatGiven(way.spacing())
        + " apart, which leaves "
        + (leavesWood ? style.formatGiven(way.standing()) : "no wood")
        + " between two cuts. Write `curvestock: 2`, where `extra:` is that wood"
        + (leavesWood
            ? ", and `extra: " + style.formatGiven(way.standing()) + "` for the same gap."
            : "; `extra: 0` lets neighbours share a cut.");
  }
}
