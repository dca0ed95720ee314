package curvestock.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * How wide text comes out in a sans-serif face, guessed on the wide side: which face a viewer has
 * is not known, so nothing may depend on more than 'at most about this wide'.
 */
public final class TextWidth {

  private static final double BOLD = 1.12;
  private static final Pattern BLANKS = Pattern.compile("\\s+");

  private TextWidth() {}

  /** Width in units of the font size. */
  public static double ems(String text) {
    return text.codePoints().mapToDouble(TextWidth::em).sum();
  }

  public static double boldEms(String text) {
    return ems(text) * BOLD;
  }

  private static double em(int c) {
    if ("iljI.,:;'|! ".indexOf(c) >= 0) {
      return 0.36;
    }
    if ("mwMW@%".indexOf(c) >= 0) {
      return 1.0;
    }
    // East Asian and other full-width signs take a whole square.
    return c > 0x2E80 ? 1.05 : Character.isUpperCase(c) ? 0.72 : 0.64;
  }

  /** A blank within a length, which no line may break: {@code 1 15/16 in}. */
  private static final Pattern WITHIN =
      Pattern.compile("(?<=\\d) (?=\\d+/\\d)|(?<=\\d) (?=(?:in|ft|mm|cm|m|lb|kg|%)\\b|%)");

  private static final char KEPT = '\u00a0';

  /** The words of a text between which lines may break. */
  public static List<String> words(String text) {
    String kept = WITHIN.matcher(text).replaceAll(String.valueOf(KEPT));
    return Stream.of(kept.split(" ", -1)).map(word -> word.replace(KEPT, ' ')).toList();
  }

  /** Breaks text at blanks so that no line is wider; a longer word stands alone or is cut up. */
  public static List<String> wrap(String text, double ems) {
    return wrap(text, ems, TextWidth::ems);
  }

  /**
   * The same in a face whose widths are known.
   *
   * @param measure of a text, in the unit of {@code ems}
   */
  public static List<String> wrap(String text, double ems, ToDoubleFunction<String> measure) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words(BLANKS.matcher(text.trim()).replaceAll(" "))) {
      if (line.length() > 0 && measure.applyAsDouble(line + " " + word) > ems) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
      while (measure.applyAsDouble(line.toString()) > ems && line.length() > 1) {
        int fits = fitting(line.toString(), ems, measure);
        lines.add(line.substring(0, fits));
        line.delete(0, fits);
      }
    }
    lines.add(line.toString());
    return lines;
  }

  private static int fitting(String word, double ems, ToDoubleFunction<String> measure) {
    int end = word.length();
    while (end > 1 && measure.applyAsDouble(word.substring(0, end)) > ems) {
      end = word.offsetByCodePoints(end, -1);
    }
    return Math.max(end, word.offsetByCodePoints(0, 1));
  }
}
