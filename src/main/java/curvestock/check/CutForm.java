package curvestock.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the outlines of a drawing differ from the finished size; the drawing says so itself, and
 * {@code check} undoes it before it compares.
 *
 * @param grown by how much outlines lie outside the finished size, and holes inside it, in
 *     millimetres: half the kerf, or 0
 * @param tabs how many gaps an outline may have, where it stays joined to the sheet
 * @param tabGap the length of such a gap, in millimetres
 * @param linesWithin how far straight lines may stray from the arcs they stand for, in millimetres;
 *     0 for true arcs
 */
public record CutForm(double grown, int tabs, double tabGap, double linesWithin) {

  /** The finished size, closed, with true arcs. */
  public static final CutForm FINISHED = new CutForm(0, 0, 0, 0);

  private static final int DECIMALS = 4;

  private static final Pattern WORDS =
      Pattern.compile(
          "grown (\\d{1,4}(?:\\.\\d{1,4})?) mm, tabs (\\d{1,3}) of (\\d{1,4}(?:\\.\\d{1,4})?) mm,"
              + " lines within (\\d{1,4}(?:\\.\\d{1,4})?) mm");

  /**
   * Rounds to what is written in files.
   *
   * @throws IllegalArgumentException if a value is negative or not finite
   */
  public CutForm {
    if (!(grown >= 0 && tabs >= 0 && tabGap >= 0 && linesWithin >= 0)
        || !Double.isFinite(grown + tabGap + linesWithin)) {
      throw new IllegalArgumentException("the form of a cut must have no negative values");
    }
    grown = rounded(grown).doubleValue();
    tabGap = rounded(tabGap).doubleValue();
    linesWithin = rounded(linesWithin).doubleValue();
  }

  /**
   * As files state it, for example {@code grown 1.5875 mm, tabs 4 of 9.175 mm, lines within 0 mm}.
   */
  public String words() {
    return "grown "
        + plain(grown)
        + " mm, tabs "
        + tabs
        + " of "
        + plain(tabGap)
        + " mm, lines within "
        + plain(linesWithin)
        + " mm";
  }

  /**
   * Reads {@link #words()}; a file that says nothing is of the finished size.
   *
   * @throws CheckException if the words are none of ours
   */
  static CutForm parse(String words) throws CheckException {
    if (words.isEmpty()) {
      return FINISHED;
    }
    Matcher matcher = WORDS.matcher(words);
    if (!matcher.matches()) {
      throw new CheckException(
          "the form of the cut must read like '" + FINISHED.words() + "', but was '" + words + "'");
    }
    return new CutForm(
        Double.parseDouble(matcher.group(1)),
        Integer.parseInt(matcher.group(2)),
        Double.parseDouble(matcher.group(3)),
        Double.parseDouble(matcher.group(4)));
  }

  private static BigDecimal rounded(double value) {
    return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
  }

  private static String plain(double value) {
    return value == 0 ? "0" : rounded(value).stripTrailingZeros().toPlainString();
  }
}
