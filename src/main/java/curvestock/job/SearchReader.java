package curvestock.job;

import curvestock.packing.Effort;
import curvestock.packing.SearchSettings;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code search: {seed, effort}}. */
final class SearchReader {

  private static final Map<String, Effort> EFFORTS =
      Map.of("quick", Effort.QUICK, "normal", Effort.NORMAL, "thorough", Effort.THOROUGH);

  private SearchReader() {}

  static Optional<SearchSettings> read(Field field) {
    return field.block("seed", "effort").flatMap(SearchReader::settings);
  }

  private static Optional<SearchSettings> settings(Block block) {
    Optional<Long> seed =
        block.find("seed").flatMap(field -> Numbers.whole(field, 0, 999_999_999_999L));
    Optional<Effort> effort =
        block
            .find("effort")
            .flatMap(field -> field.choice(EFFORTS, List.of("quick", "normal", "thorough")));
    return block.build(
        () ->
            new SearchSettings(
                seed.orElse(SearchSettings.DEFAULT.seed()),
                effort.orElse(SearchSettings.DEFAULT.effort())));
  }
}
