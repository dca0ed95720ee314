package curvestock.job;

import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads {@code print: {unit, fraction}}: how lengths are printed. */
final class PrintReader {

  private static final Map<String, LengthUnit> UNITS =
      EnumSet.allOf(LengthUnit.class).stream()
          .collect(Collectors.toUnmodifiableMap(LengthUnit::symbol, Function.identity()));

  private PrintReader() {}

  /** One of the units whose symbols are listed. */
  static Optional<LengthUnit> unit(Field field, List<String> symbols) {
    Map<String, LengthUnit> allowed =
        symbols.stream().collect(Collectors.toUnmodifiableMap(Function.identity(), UNITS::get));
    return field.choice(allowed, symbols);
  }

  /**
   * @param jobUnit the unit of bare numbers, which decides if there is no {@code print:} block
   */
  static Optional<LengthStyle> read(Optional<Field> print, Optional<LengthUnit> jobUnit) {
    if (print.isEmpty()) {
      boolean inches = jobUnit.map(LengthUnit::isImperial).orElse(false);
      return Optional.of(inches ? LengthStyle.INCH_FRACTIONS : LengthStyle.METRIC);
    }
    return print.get().block("unit", "fraction").flatMap(PrintReader::style);
  }

  private static Optional<LengthStyle> style(Block block) {
    Optional<LengthUnit> unit =
        block.need("unit", "unit: in").flatMap(field -> unit(field, List.of("in", "mm", "cm")));
    Optional<Integer> fraction = block.find("fraction").flatMap(field -> field.whole(0, 64));
    return block.build(
        () -> {
          LengthUnit chosen = unit.orElseThrow();
          int usual = chosen == LengthUnit.INCH ? LengthStyle.INCH_FRACTIONS.denominator() : 0;
          return new LengthStyle(chosen, fraction.orElse(usual));
        });
  }
}
