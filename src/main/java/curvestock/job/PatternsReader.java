package curvestock.job;

import curvestock.drawing.PaperSize;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code patterns: {paper}}: what full-size patterns are tiled on. */
final class PatternsReader {

  private static final Map<String, PaperSize> SIZES =
      Map.of(
          "A4", PaperSize.A4,
          "Letter", PaperSize.LETTER,
          "A3", PaperSize.A3,
          "Tabloid", PaperSize.TABLOID,
          "roll", PaperSize.ROLL);

  private PatternsReader() {}

  static Optional<PaperSize> read(Field field) {
    return field.block("paper").flatMap(PatternsReader::paper);
  }

  private static Optional<PaperSize> paper(Block block) {
    Optional<PaperSize> size =
        block
            .need("paper", "paper: A4")
            .flatMap(f -> f.choice(SIZES, List.of("A4", "Letter", "A3", "Tabloid", "roll")));
    return block.build(size::orElseThrow);
  }
}
