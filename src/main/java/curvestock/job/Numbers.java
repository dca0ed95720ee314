package curvestock.job;

import curvestock.units.Money;
import curvestock.units.Typography;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads numbers as people write them: decimal digits with a point. {@code 010} is ten; {@code
 * 1:30}, {@code 0x1F}, {@code 1_000}, {@code 1e3} and {@code NaN} are no numbers here.
 */
final class Numbers {

  /** More digits than any field takes; longer texts are refused unread. */
  private static final int LONGEST = 40;

  private static final Pattern WHOLE = Pattern.compile("-?\\d+");
  private static final Pattern DECIMAL = Pattern.compile("-?(\\d+(\\.\\d*)?|\\.\\d+)");
  private static final Pattern FRACTION =
      Pattern.compile("(?:(\\d+)(?:\\s+|\\s*-\\s*))?(\\d+)/(\\d+)");
  private static final Pattern PRICE = Pattern.compile("-?\\d{1,9}(\\.\\d{1,2})?");

  /** Sums of so many sheets as a job may take stay far below what money can hold. */
  private static final BigDecimal DEAREST = new BigDecimal(1_000_000);

  private Numbers() {}

  static Optional<Long> whole(Field field, long least, long most) {
    String rule = "a whole number from " + least + " to " + most;
    Optional<String> text = field.written(rule);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    if (matches(WHOLE, text.get())) {
      BigInteger value = new BigInteger(text.get());
      if (value.compareTo(BigInteger.valueOf(least)) >= 0
          && value.compareTo(BigInteger.valueOf(most)) <= 0) {
        return Optional.of(value.longValueExact());
      }
    }
    field.note("must be " + rule + ", but was " + Words.quoted(text.get()));
    return Optional.empty();
  }

  static Optional<Double> amount(Field field, double most) {
    String rule =
        "a number above 0 and at most "
            + BigDecimal.valueOf(most).stripTrailingZeros().toPlainString()
            + ", such as 5.25 or 5 1/4";
    Optional<String> text = field.written(rule);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    double value = number(Typography.plain(text.get()));
    if (value > 0 && value <= most) {
      return Optional.of(value);
    }
    field.note("must be " + rule + ", but was " + Words.quoted(text.get()));
    return Optional.empty();
  }

  static Optional<Money> price(Field field) {
    String rule =
        "a price such as 42 or 42.50, without a currency sign, not negative, at most "
            + DEAREST.toPlainString();
    Optional<String> text = field.written(rule);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    if (matches(PRICE, text.get())
        && !text.get().startsWith("-")
        && new BigDecimal(text.get()).compareTo(DEAREST) <= 0) {
      return Optional.of(Money.of(new BigDecimal(text.get())));
    }
    field.note(
        "must be "
            + rule
            + ", with at most two decimals, but was "
            + Words.quoted(text.get())
            + "; the sign goes to `currency:` at the top");
    return Optional.empty();
  }

  /** The value of a decimal or a fraction; not a number if it is neither. */
  private static double number(String text) {
    if (matches(DECIMAL, text)) {
      return Double.parseDouble(text);
    }
    Matcher fraction = FRACTION.matcher(text.length() > LONGEST ? "" : text);
    if (!fraction.matches()) {
      return Double.NaN;
    }
    double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
    return whole + Double.parseDouble(fraction.group(2)) / Double.parseDouble(fraction.group(3));
  }

  private static boolean matches(Pattern pattern, String text) {
    return text.length() <= LONGEST && pattern.matcher(text).matches();
  }
}
