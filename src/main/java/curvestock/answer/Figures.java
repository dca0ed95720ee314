package curvestock.answer;

import curvestock.job.Job;
import curvestock.units.Angle;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import curvestock.units.Mass;
import curvestock.units.Money;
import curvestock.units.Quantity;
import curvestock.units.Share;
import curvestock.units.Text;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/**
 * Writes figures for people, in the job's units: whoever measures in inches weighs in pounds.
 *
 * @param style of lengths
 * @param currency put before money
 */
public record Figures(LengthStyle style, String currency) {

  /** For tables that hold neither lengths nor money, such as first looks. */
  public static final Figures PLAIN = new Figures(LengthStyle.METRIC, "");

  /** In the units and the currency of a job. */
  public static Figures of(Job job) {
    return new Figures(job.style(), job.currency());
  }

  private static final int MINUTES_PER_HOUR = 60;

  /** To the pound. */
  private static final int OUNCES = 16;

  /** To the kilogram. */
  private static final int GRAMS = 1000;

  /** Bearings from here on are nothing, rounded to a tenth. */
  private static final double NEARLY_ROUND = 359.95;

  /** A cell of a table. */
  public String of(Quantity figure, Measure measure) {
    if (figure instanceof Text text) {
      return text.words();
    }
    if (figure instanceof Length length) {
      return switch (measure) {
        case GIVEN_LENGTH -> given(length);
        case SAWN -> sawn(length);
        case OFFCUT -> style.formatDown(length);
        case RUN -> run(length);
        default -> length(length);
      };
    }
    if (figure instanceof Angle angle) {
      return measure == Measure.TURNS ? turns(angle) : bearing(angle);
    }
    if (figure instanceof Money money) {
      return money(money);
    }
    if (figure instanceof Mass mass) {
      return weight(mass);
    }
    if (figure instanceof Share share) {
      return percent(share);
    }
    long number = ((Count) figure).number();
    return measure == Measure.MINUTES ? time(number) : Long.toString(number);
  }

  /** A length that was worked out. */
  public String length(Length length) {
    return style.formatMade(length);
  }

  /** A length that many parts are sawn to: fractions go down to 64ths. */
  public String sawn(Length length) {
    return style.formatSawn(length);
  }

  /** A height to leave room for, with a word that it is rounded: up to the next 1/8 in or 5 mm. */
  public String roomy(Length length) {
    Length step = isImperial() ? Length.ofInches(0.125) : Length.ofMillimetres(5);
    return "about " + sawn(length.up(step));
  }

  /** A side of what is to have room on a floor: up to the next 1/8 in or whole millimetre. */
  Length onFloor(Length side) {
    return side.up(isImperial() ? Length.ofInches(0.125) : Length.ofMillimetres(1));
  }

  /** A length that must not be exceeded. */
  public String atMost(Length length) {
    return style.formatDown(length);
  }

  /** A length that somebody measured or chose. */
  public String given(Length length) {
    return style.formatGiven(length);
  }

  /** A length that is marked with rule and pencil. */
  public String marked(Length length) {
    double step = handStep(style).millimetres();
    return style.format(
        step == 0 ? length : Length.ofMillimetres(Math.rint(length.millimetres() / step) * step));
  }

  /**
   * As fine as a rule and a pencil go: where the style has fractions, these (then zero), else 0.5
   * mm or 0.01 in.
   */
  public static Length handStep(LengthStyle style) {
    if (style.denominator() > 0) {
      return Length.ZERO;
    }
    return style.unit().isImperial() ? Length.ofInches(0.01) : Length.ofMillimetres(0.5);
  }

  /** The sides of an offcut, the longer first, never more than there is. */
  public String offcut(double width, double height) {
    return style.number(style.roundDown(Length.ofMillimetres(Math.max(width, height))))
        + " x "
        + style.formatDown(Length.ofMillimetres(Math.min(width, height)));
  }

  /** Two sides: {@code 96 x 48 in}. */
  public String sides(Length first, Length second) {
    return style.number(first) + " x " + style.format(second);
  }

  /** The same of two cells of tables; empty if there are no lengths in them. */
  String sides(Quantity first, Quantity second, Column column) {
    if (first.equals(Text.NONE)) {
      return "";
    }
    String unit = " " + style.unit().symbol();
    return of(first, column.measure()).replace(unit, "") + " x " + of(second, column.measure());
  }

  /** A long way in feet or metres, to a tenth. */
  public String run(Length length) {
    LengthUnit unit = isImperial() ? LengthUnit.FOOT : LengthUnit.METRE;
    return decimal(length.in(unit), 1) + " " + unit.symbol();
  }

  public String money(Money money) {
    return money.format(currency);
  }

  /** Pounds or kilograms; what is less than one in ounces or grams. */
  public String weight(Mass mass) {
    double value = isImperial() ? mass.pounds() : mass.kilograms();
    if (value >= 1) {
      return String.format(Locale.ROOT, "%.1f %s", value, isImperial() ? "lb" : "kg");
    }
    return isImperial()
        ? String.format(Locale.ROOT, "%.1f oz", value * OUNCES)
        : String.format(Locale.ROOT, "%.0f g", value * GRAMS);
  }

  /** Degrees to a tenth; a full turn is 0. */
  public String bearing(Angle angle) {
    return decimal(Math.abs(angle.degrees()) > NEARLY_ROUND ? 0 : angle.degrees(), 1) + "°";
  }

  /** So many turns, to a hundredth. */
  public String turns(Angle angle) {
    return decimal(angle.degrees() / Angle.FULL_TURN.degrees(), 2);
  }

  /** Per cent, to a tenth. */
  public String percent(Share share) {
    return String.format(Locale.ROOT, "%.1f %%", share.percent());
  }

  /** Hours and minutes. */
  public String time(long minutes) {
    return String.format(
        Locale.ROOT, "%d:%02d h", minutes / MINUTES_PER_HOUR, minutes % MINUTES_PER_HOUR);
  }

  public boolean isImperial() {
    return style.unit().isImperial();
  }

  /** Rounded half up, without needless zeros. */
  public static String decimal(double value, int places) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  public static String list(List<String> parts) {
    int last = parts.size() - 1;
    return last < 1
        ? String.join("", parts)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  /** Words that begin a sentence or a line. */
  public static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** {@code 1 sheet}, {@code 2 sheets}. */
  public static String count(long number, String one, String more) {
    return number + " " + (number == 1 ? one : more);
  }

  /** {@code 1 sheet}, {@code 2 sheets}: for nouns that take an s. */
  public static String count(long number, String one) {
    return count(number, one, one + "s");
  }
}
