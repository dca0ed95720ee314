package curvestock.job;

import curvestock.helix.Assumption;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Fills in what a helix block leaves open, and remembers what it filled in, to be printed. */
final class Assumed {

  /** For figures of the trade for which nobody can name a source. */
  static final String PRACTICE = "rule of thumb";

  private static final Pattern DENSITIES = Pattern.compile("(\\d+) to (\\d+)");

  /** Pounds in a cubic foot of what weighs a kilogram in a cubic metre: 0.3048³ / 0.45359237. */
  private static final double FEET_POUNDS = 0.062427961;

  private final LengthStyle style;
  private final boolean imperial;
  private final List<Assumption> all = new ArrayList<>();

  /**
   * @param style how what is assumed is printed
   * @param imperial whether the job's own numbers are inches, whatever is printed
   */
  Assumed(LengthStyle style, boolean imperial) {
    this.style = style;
    this.imperial = imperial;
  }

  List<Assumption> all() {
    return List.copyOf(all);
  }

  /** The block's length, or the usual one. */
  Length length(
      Optional<Block> block, String key, Lengths rule, String name, Length usual, String reason) {
    return value(block, key, rule::read, name, usual, style.formatGiven(usual), reason);
  }

  /**
   * What the block says, or the usual. If what it says is wrong, that is noted already and the
   * usual value only lets reading go on.
   *
   * @param name path of the key within the helix block
   */
  <T> T value(
      Optional<Block> block,
      String key,
      Function<Field, Optional<T>> reader,
      String name,
      T usual,
      String shown,
      String reason) {
    Optional<Field> field = block.flatMap(given -> given.find(key));
    if (field.isEmpty()) {
      note(name, shown, reason);
      return usual;
    }
    return reader.apply(field.get()).orElse(usual);
  }

  void note(String name, String value, String reason) {
    all.add(new Assumption(name, value, reason));
  }

  String shown(Length length) {
    return style.formatGiven(length);
  }

  /** Kilograms in a cubic metre, as the job weighs. */
  String shownDensity(double density) {
    return style.unit().isImperial()
        ? String.format(Locale.ROOT, "%.1f lb/ft³", density * FEET_POUNDS)
        : Math.round(density) + " kg/m³";
  }

  /** The words of a source, with each range of densities in them as the job weighs. */
  String withDensities(String words) {
    return DENSITIES
        .matcher(words)
        .replaceAll(
            range ->
                shownDensity(Double.parseDouble(range.group(1)))
                    + " to "
                    + shownDensity(Double.parseDouble(range.group(2))));
  }

  /** Whether the job thinks in inches: what is assumed must not change with what is printed. */
  boolean imperial() {
    return imperial;
  }
}
