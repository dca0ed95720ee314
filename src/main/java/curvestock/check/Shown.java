package curvestock.check;

import curvestock.geometry.Point;
import java.util.Locale;

/**
 * Messages quote what a drawing holds, and a drawing may come from anyone: so each becomes one line
 * of bounded length, without characters that steer a terminal or turn the direction of reading.
 */
final class Shown {

  private static final int LONGEST = 1_000;

  private Shown() {}

  static String line(String message) {
    StringBuilder line = new StringBuilder();
    message
        .codePoints()
        .limit(LONGEST)
        .forEach(
            c -> {
              if (Character.isISOControl(c) || turnsReading(c)) {
                line.append(String.format(Locale.ROOT, "\\u%04X", c));
              } else {
                line.appendCodePoint(c);
              }
            });
    return message.length() > LONGEST ? line + "..." : line.toString();
  }

  /** A point of the sheet, such as {@code (12.5, 300.0) mm}. */
  static String place(Point at) {
    return String.format(Locale.ROOT, "(%.1f, %.1f) mm", at.x(), at.y());
  }

  private static boolean turnsReading(int c) {
    return (c >= 0x2028 && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
  }
}
