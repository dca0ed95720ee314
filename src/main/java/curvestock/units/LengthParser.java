package curvestock.units;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads lengths written with metric units, or in feet and inches with decimals or fractions. */
final class LengthParser {

  /** Longer texts are refused unread: no length needs them, and patterns stay cheap. */
  private static final int LONGEST_TEXT = 64;

  /** About the distance from here to the next town; anything above is a slip of the pen. */
  private static final double LARGEST_MILLIMETRES = 1e7;

  private static final String DECIMAL = "(?:\\d+(?:\\.\\d*)?|\\.\\d+)";
  private static final String AMOUNT =
      "(?:\\d+(?:\\s+|\\s*-\\s*)\\d+/\\d+|\\d+/\\d+|" + DECIMAL + ")";
  private static final String FOOT = "(?:feet|foot|ft\\.?|')";
  private static final String INCH = "(?:inches|inch|in\\.?|\")";
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile("(" + DECIMAL + ")\\s*" + FOOT + "\\s*-?\\s*(" + AMOUNT + ")\\s*" + INCH);
  private static final Pattern ONE_UNIT =
      Pattern.compile(
          "("
              + AMOUNT
              + ")\\s*("
              + FOOT
              + "|"
              + INCH
              + "|mm|millimet(?:re|er)s?|cm|centimet(?:re|er)s?|m|met(?:re|er)s?)");
  private static final Pattern NO_UNIT = Pattern.compile(AMOUNT);

  private LengthParser() {}

  static Length parse(String text, Optional<LengthUnit> unitOfBareNumbers) {
    if (text.length() > LONGEST_TEXT) {
      throw new LengthFormatException(text, "too long");
    }
    String plain = Typography.plain(text).toLowerCase(Locale.ROOT);
    if (plain.isEmpty()) {
      throw new LengthFormatException(text, "it is empty");
    }
    boolean negative = plain.startsWith("-");
    double millimetres =
        unsigned(text, negative ? plain.substring(1).strip() : plain, unitOfBareNumbers);
    if (millimetres > LARGEST_MILLIMETRES) {
      throw new LengthFormatException(text, "more than 10 km");
    }
    return Length.ofMillimetres(negative && millimetres != 0 ? -millimetres : millimetres);
  }

  private static double unsigned(
      String text, String plain, Optional<LengthUnit> unitOfBareNumbers) {
    Matcher both = FEET_AND_INCHES.matcher(plain);
    if (both.matches()) {
      return amount(text, both.group(1)) * LengthUnit.FOOT.millimetres()
          + amount(text, both.group(2)) * LengthUnit.INCH.millimetres();
    }
    Matcher one = ONE_UNIT.matcher(plain);
    if (one.matches()) {
      return amount(text, one.group(1)) * unit(one.group(2)).millimetres();
    }
    if (NO_UNIT.matcher(plain).matches()) {
      LengthUnit unit =
          unitOfBareNumbers.orElseThrow(
              () -> new LengthFormatException(text, "the unit is missing"));
      return amount(text, plain) * unit.millimetres();
    }
    throw new LengthFormatException(
        text,
        plain.indexOf(',') >= 0 ? "use a point, not a comma, for decimals" : "not understood");
  }

  private static LengthUnit unit(String symbol) {
    return switch (symbol.charAt(0)) {
      case 'f', '\'' -> LengthUnit.FOOT;
      case 'i', '"' -> LengthUnit.INCH;
      case 'c' -> LengthUnit.CENTIMETRE;
      default ->
          symbol.startsWith("mm") || symbol.startsWith("mil")
              ? LengthUnit.MILLIMETRE
              : LengthUnit.METRE;
    };
  }

  private static double amount(String text, String amount) {
    int slash = amount.indexOf('/');
    if (slash < 0) {
      return Double.parseDouble(amount);
    }
    String[] parts = amount.substring(0, slash).strip().split("[\\s-]+", -1);
    double denominator = Double.parseDouble(amount.substring(slash + 1).strip());
    if (denominator == 0) {
      throw new LengthFormatException(text, "a fraction over zero");
    }
    double fraction = Double.parseDouble(parts[parts.length - 1]) / denominator;
    return parts.length == 1 ? fraction : Double.parseDouble(parts[0]) + fraction;
  }
}
