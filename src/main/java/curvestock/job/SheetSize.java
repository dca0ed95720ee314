package curvestock.job;

import curvestock.geometry.Outline;
import curvestock.units.Length;
import curvestock.units.LengthUnit;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the size of a rectangular sheet as it is sold: {@code 4x8 ft}, {@code 1220 x 2440 mm},
 * {@code 48 in x 96 in}. A first number without a unit has the unit of the second.
 */
final class SheetSize {

  private static final Pattern TWO_SIDES = Pattern.compile("([^x×]+)[x×]([^x×]+)");
  private static final Pattern LAST_UNIT = Pattern.compile("[a-z'\"′″.]+$");
  private static final String FORMS =
      "two lengths such as \"4x8 ft\", \"1220x2440 mm\" or \"48 in x 96 in\"";

  private static final Pattern FEET = Pattern.compile("\\s*\\d{1,2}\\s*[xX×]\\s*\\d{1,2}\\s*");

  private SheetSize() {}

  /** The rectangle, its longer side along x. */
  static Optional<Outline> read(Field field) {
    Optional<String> text = field.written(FORMS);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    boolean tooLong = text.get().length() > 80;
    Matcher sides = TWO_SIDES.matcher(tooLong ? "" : text.get().toLowerCase(Locale.ROOT));
    if (!sides.matches()) {
      field.note("must be " + FORMS + ", but was " + Words.quoted(text.get()));
      return Optional.empty();
    }
    String first = sides.group(1).strip();
    String second = sides.group(2).strip();
    Optional<LengthUnit> unit = field.reading().unit();
    Optional<Length> b = Lengths.SIZE.read(field, second, unit);
    Optional<Length> a = b.isEmpty() ? b : Lengths.SIZE.read(field, withUnit(first, second), unit);
    if (a.isEmpty() || b.isEmpty()) {
      return Optional.empty();
    }
    if (looksLikeFeet(unit, text.get())) {
      field.note(
          Words.quoted(text.get())
              + " is smaller than a hand in the job's units; did you mean feet? Then write "
              + Words.quoted(text.get() + " ft"));
      return Optional.empty();
    }
    double p = a.get().millimetres();
    double q = b.get().millimetres();
    return Optional.of(Outline.rectangle(Math.max(p, q), Math.min(p, q)));
  }

  /**
   * Small whole numbers such as 4 x 8 without a unit, in a job that thinks in millimetres or
   * centimetres; in inches that may well be an offcut.
   */
  private static boolean looksLikeFeet(Optional<LengthUnit> unit, String text) {
    return unit.filter(one -> !one.isImperial()).isPresent() && FEET.matcher(text).matches();
  }

  /** The first side, with the second's unit if it has none of its own. */
  private static String withUnit(String first, String second) {
    Matcher unit = LAST_UNIT.matcher(second);
    return Lengths.lacksUnit(first) && unit.find() ? first + " " + unit.group() : first;
  }
}
