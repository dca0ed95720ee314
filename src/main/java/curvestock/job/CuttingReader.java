package curvestock.job;

import curvestock.sheet.Cutting;
import curvestock.units.Length;
import java.util.Optional;

/** Reads {@code cutting: {kerf, extra, margin}}. */
final class CuttingReader {

  private CuttingReader() {}

  static Optional<Cutting> read(Field field) {
    return field.block("kerf", "extra", "margin").flatMap(CuttingReader::cutting);
  }

  private static Optional<Cutting> cutting(Block block) {
    Optional<Length> kerf = block.need("kerf", "kerf: 1/8 in").flatMap(Lengths.KERF::read);
    Optional<Length> extra = block.find("extra").flatMap(Lengths.GAP::read);
    Optional<Length> margin = block.find("margin").flatMap(Lengths.GAP::read);
    return block.build(
        () ->
            new Cutting(kerf.orElseThrow(), extra.orElse(Length.ZERO), margin.orElse(Length.ZERO)));
  }
}
