package curvestock.fuzz;

import java.util.random.RandomGenerator;

/** Small ways to damage the text of a job file. */
public final class LineDamage {

  private LineDamage() {}

  /** What stands after the first colon of the line; nothing if there is none. */
  public static String value(String line) {
    int colon = line.indexOf(": ");
    return colon < 0 ? "" : line.substring(colon + 2);
  }

  /** The line with another value; as it was if it has none. */
  public static String withValue(String line, String value) {
    int colon = line.indexOf(": ");
    return colon < 0 ? line : line.substring(0, colon + 2) + value;
  }

  /**
   * The text with some characters replaced by any others.
   *
   * @param text not empty
   */
  public static String spoilt(String text, RandomGenerator random) {
    StringBuilder spoilt = new StringBuilder(text);
    for (int n = random.nextInt(5); n >= 0; n--) {
      char c = (char) (random.nextBoolean() ? random.nextInt(128) : random.nextInt(0x10000));
      spoilt.setCharAt(random.nextInt(spoilt.length()), c);
    }
    return spoilt.toString();
  }
}
