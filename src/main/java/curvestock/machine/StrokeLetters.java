package curvestock.machine;

import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Single-stroke capitals, digits and a few signs for engraving, of our own plain design: straight
 * strokes between the points of a grid 4 wide and 6 high, corners bevelled, the nought crossed so
 * that it is no O.
 */
final class StrokeLetters {

  /** Height of a letter in grid steps. */
  static final double HEIGHT = 6;

  /** From the left of one letter to the left of the next. */
  static final double ADVANCE = 6;

  private static final double WIDTH = 4;

  private static final String UNKNOWN = "05 16 36 45 44 23 22|21 20";

  /** Strokes set off by bars; each a chain of grid points, x and y a digit each. */
  private static final Map<Character, String> STROKES =
      Map.ofEntries(
          Map.entry('0', "10 30 41 45 36 16 05 01 10|12 34"),
          Map.entry('1', "15 26 20|10 20 30"),
          Map.entry('2', "05 16 36 45 44 00 40"),
          Map.entry('3', "05 16 36 45 44 33 42 41 30 10 01|13 33"),
          Map.entry('4', "30 36 02 42"),
          Map.entry('5', "46 06 03 33 42 41 30 10 01"),
          Map.entry('6', "45 36 16 05 01 10 30 41 42 33 03"),
          Map.entry('7', "06 46 10"),
          Map.entry('8', "33 13 04 05 16 36 45 44 33 42 41 30 10 01 02 13"),
          Map.entry('9', "01 10 30 41 45 36 16 05 04 13 43"),
          Map.entry('A', "00 04 26 44 40|02 42"),
          Map.entry('B', "33 42 41 30 00 06 36 45 44 33 03"),
          Map.entry('C', "45 36 16 05 01 10 30 41"),
          Map.entry('D', "00 06 26 44 42 20 00"),
          Map.entry('E', "46 06 00 40|03 33"),
          Map.entry('F', "46 06 00|03 33"),
          Map.entry('G', "45 36 16 05 01 10 30 41 43 23"),
          Map.entry('H', "00 06|03 43|40 46"),
          Map.entry('I', "10 30|20 26|16 36"),
          Map.entry('J', "46 41 30 10 01"),
          Map.entry('K', "00 06|46 02|13 40"),
          Map.entry('L', "06 00 40"),
          Map.entry('M', "00 06 23 46 40"),
          Map.entry('N', "00 06 40 46"),
          Map.entry('O', "10 30 41 45 36 16 05 01 10"),
          Map.entry('P', "00 06 36 45 44 33 03"),
          Map.entry('Q', "10 30 41 45 36 16 05 01 10|22 40"),
          Map.entry('R', "00 06 36 45 44 33 03|23 40"),
          Map.entry('S', "45 36 16 05 04 13 33 42 41 30 10 01"),
          Map.entry('T', "06 46|26 20"),
          Map.entry('U', "06 01 10 30 41 46"),
          Map.entry('V', "06 20 46"),
          Map.entry('W', "06 10 24 30 46"),
          Map.entry('X', "00 46|06 40"),
          Map.entry('Y', "06 23 46|23 20"),
          Map.entry('Z', "06 46 00 40"),
          Map.entry('-', "13 33"),
          Map.entry('+', "13 33|22 24"),
          Map.entry('/', "00 46"),
          Map.entry('.', "10 20 21 11 10"),
          Map.entry(',', "21 10"),
          Map.entry(':', "11 21 22 12 11|14 24 25 15 14"),
          Map.entry('(', "36 25 21 30"),
          Map.entry(')', "16 25 21 10"),
          Map.entry('°', "14 24 25 15 14"),
          Map.entry('×', "12 34|14 32"),
          Map.entry('?', UNKNOWN));

  private StrokeLetters() {}

  /** Width of the words in grid steps, without the space after the last letter. */
  static double width(String words) {
    int letters = words.codePointCount(0, words.length());
    return Math.max(0, letters * ADVANCE - (ADVANCE - WIDTH));
  }

  /**
   * The strokes of the words, standing on y = 0 from x = 0, one unit a grid step. Small letters are
   * written as capitals, signs without a form as question marks, blanks as nothing.
   */
  static List<List<Edge>> of(String words) {
    List<List<Edge>> strokes = new ArrayList<>();
    int[] letters = words.toUpperCase(Locale.ROOT).codePoints().toArray();
    for (int i = 0; i < letters.length; i++) {
      if (Character.isWhitespace(letters[i])) {
        continue;
      }
      String form = STROKES.getOrDefault((char) letters[i], UNKNOWN);
      for (String stroke : form.split("\\|", -1)) {
        strokes.add(chain(stroke, i * ADVANCE));
      }
    }
    return strokes;
  }

  private static List<Edge> chain(String stroke, double left) {
    String[] points = stroke.split(" ", -1);
    List<Edge> edges = new ArrayList<>();
    for (int i = 1; i < points.length; i++) {
      edges.add(new Segment(point(points[i - 1], left), point(points[i], left)));
    }
    return edges;
  }

  private static Point point(String digits, double left) {
    return new Point(left + (digits.charAt(0) - '0'), digits.charAt(1) - '0');
  }
}
