package curvestock.job;

import curvestock.geometry.Box;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads {@code rates:}: what cutting and joining cost; every key may be left out. */
final class RatesReader {

  private static final double MOST_MINUTES = 1000;

  private RatesReader() {}

  static Optional<Rates> read(Field field) {
    return field
        .block(
            "feed-per-minute",
            "machine-per-hour",
            "own-time-per-hour",
            "minutes-per-joint",
            "parts-per-joint",
            "largest-piece")
        .flatMap(RatesReader::rates);
  }

  private static Optional<Rates> rates(Block block) {
    Optional<Length> feed = block.find("feed-per-minute").flatMap(Field::size);
    Optional<Money> machine = block.find("machine-per-hour").flatMap(Field::price);
    Optional<Money> own = block.find("own-time-per-hour").flatMap(Field::price);
    Optional<Double> minutes =
        block.find("minutes-per-joint").flatMap(field -> field.amount(MOST_MINUTES));
    Optional<Money> parts = block.find("parts-per-joint").flatMap(Field::price);
    Optional<Rates.Opening> opening =
        block.find("largest-piece").flatMap(SheetSize::read).map(outline -> opening(outline.box()));
    return block.build(
        () ->
            new Rates(
                feed,
                machine.orElse(Money.ZERO),
                own.orElse(Money.ZERO),
                minutes.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                parts.orElse(Money.ZERO),
                opening));
  }

  private static Rates.Opening opening(Box box) {
    return new Rates.Opening(Length.ofMillimetres(box.width()), Length.ofMillimetres(box.height()));
  }
}
