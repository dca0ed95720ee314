package curvestock.drawing;

import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.Locale;

/**
 * A size of paper. A4 and A3 as in ISO 216, Letter and Tabloid as in ANSI/ASME Y14.1 (A and B),
 * both from memory; a roll has the width of 24 in, the narrow one of plan printers (common
 * practice, no source), and is cut to the length needed.
 */
public enum PaperSize {
  A4(210, 297),
  LETTER(8.5 * 25.4, 11 * 25.4),
  A3(297, 420),
  TABLOID(11 * 25.4, 17 * 25.4),
  ROLL(24 * 25.4, 5000);

  private final double width;
  private final double height;

  PaperSize(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** What lies in most printers where lengths are printed in that style. */
  public static PaperSize usual(LengthStyle style) {
    return style.unit().isImperial() ? LETTER : A4;
  }

  /** The short side. */
  public Length width() {
    return Length.ofMillimetres(width);
  }

  /** The long side; of a roll the most that is printed in one piece. */
  public Length height() {
    return Length.ofMillimetres(height);
  }

  public boolean isRoll() {
    return this == ROLL;
  }

  /** As people write it. */
  public String title() {
    return switch (this) {
      case A4, A3 -> name();
      case ROLL -> "a roll of 24 in (610 mm)";
      case LETTER, TABLOID -> name().charAt(0) + name().substring(1).toLowerCase(Locale.ROOT);
    };
  }
}
