package curvestock.job;

import curvestock.geometry.Outline;
import curvestock.units.Length;
import curvestock.units.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads {@code rates:}: what cutting and joining cost; every key may be left out. */
final class RatesReader {

  private static final double MOST_MINUTES = 1000;

  private static final SortedMap<String, String> OPENINGS =
      new TreeMap<>(Map.of("router-bed", "the router's bed", "car", "the car", "door", "the door"));

  private RatesReader() {}

  static Optional<Rates> read(Field field) {
    return field
        .block(
            "feed-per-minute",
            "marking-per-minute",
            "lifting-per-minute",
            "machine-per-hour",
            "own-time-per-hour",
            "minutes-per-joint",
            "parts-per-joint",
            "offcuts-worth",
            "largest-piece")
        .flatMap(RatesReader::rates);
  }

  private static Optional<Rates> rates(Block block) {
    Optional<Length> feed = block.find("feed-per-minute").flatMap(Field::size);
    Optional<Length> marking = block.find("marking-per-minute").flatMap(Field::size);
    Optional<Length> lifting = block.find("lifting-per-minute").flatMap(Field::size);
    Optional<Money> machine = block.find("machine-per-hour").flatMap(Field::price);
    Optional<Money> own = block.find("own-time-per-hour").flatMap(Field::price);
    Optional<Double> minutes =
        block.find("minutes-per-joint").flatMap(field -> field.amount(MOST_MINUTES));
    Optional<Money> parts = block.find("parts-per-joint").flatMap(Field::price);
    Optional<BigDecimal> worth = block.find("offcuts-worth").flatMap(TermsReader::share);
    List<Rates.Opening> openings =
        block.find("largest-piece").map(RatesReader::openings).orElse(List.of());
    return block.build(
        () ->
            new Rates(
                feed,
                marking,
                lifting,
                machine.orElse(Money.ZERO),
                own.orElse(Money.ZERO),
                minutes.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                parts.orElse(Money.ZERO),
                worth.map(share -> share.doubleValue() / 100).orElse(0.0),
                openings));
  }

  /** One size, or one for each of the things that a piece must pass. */
  private static List<Rates.Opening> openings(Field field) {
    if (field.isText()) {
      return opening(field, "the stated").stream().toList();
    }
    List<Rates.Opening> openings = new ArrayList<>();
    Optional<Block> block = field.block(OPENINGS.keySet().toArray(String[]::new));
    OPENINGS.forEach(
        (key, name) ->
            block
                .flatMap(given -> given.find(key))
                .flatMap(size -> opening(size, name))
                .ifPresent(openings::add));
    return openings;
  }

  private static Optional<Rates.Opening> opening(Field size, String name) {
    return SheetSize.read(size)
        .map(Outline::box)
        .map(
            box ->
                new Rates.Opening(
                    name, Length.ofMillimetres(box.width()), Length.ofMillimetres(box.height())));
  }
}
