package curvestock.printing;

import curvestock.drawing.Legible;
import curvestock.drawing.TextWidth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How a table is set: columns as wide as what they hold if all fit, otherwise those of text are
 * wrapped, each as wide as it takes for few lines.
 */
final class PageTable {

  /** A cell that prints an empty box to tick. */
  static final String TICK_BOX = "\u2610";

  /** Between columns, in millimetres. */
  static final double GAP = 3.6;

  private static final double LARGEST = 3.3;
  private static final double SMALLEST_WRAPPED = 2.7;
  private static final double LINE = 1.25;

  /** Enough for two or three words, in units of the font's size. */
  private static final double FEW_WORDS = 13;

  /**
   * A row as it is written.
   *
   * @param lines of each cell
   * @param high with the air below it, in millimetres
   */
  record Row(List<List<String>> lines, double high, boolean bold) {}

  private final Typeface face;
  private final Row head;
  private final List<Row> rows;
  private final boolean[] numeric;
  private final double[] ems;
  private final double size;
  private final double air;

  /**
   * Sets a table.
   *
   * @param numbers which columns are flush right, and never wrapped
   * @param width of the text in millimetres
   * @param air what is left of the usual air between rows
   */
  PageTable(
      Typeface face,
      List<String> head,
      List<Boolean> numbers,
      List<List<String>> rows,
      double width,
      double air) {
    this.air = air;
    this.face = face;
    int count = head.size();
    numeric = new boolean[count];
    double[] least = new double[count];
    double[] natural = new double[count];
    double[] weight = new double[count];
    boolean wraps = false;
    for (int c = 0; c < count; c++) {
      numeric[c] = numbers.get(c);
      wraps |= c > 0 && !numeric[c];
      least[c] = widestWord(head.get(c), true);
      natural[c] = least[c];
      for (List<String> row : rows) {
        double whole = face.ems(row.get(c), false);
        natural[c] = Math.max(natural[c], whole);
        least[c] = Math.max(least[c], numeric[c] ? whole : widestWord(row.get(c), false));
        weight[c] += whole;
      }
      // Short words are not broken, and no text is set in a column of single words.
      least[c] = Math.max(least[c], Math.min(natural[c], natural[c] < 9 ? 9 : FEW_WORDS));
    }
    double room = width - GAP * count;
    double smallest = wraps ? SMALLEST_WRAPPED : Legible.SMALLEST;
    size = Math.max(smallest, Math.min(LARGEST, room / Arrays.stream(natural).sum()));
    ems = widerForHeads(shared(least, natural, weight, room / size), head, room / size);
    this.head = row(head, true);
    this.rows = rows.stream().map(row -> row(row, false)).toList();
  }

  /** Heads are written in one line where there is room for all. */
  private double[] widerForHeads(double[] widths, List<String> head, double room) {
    double[] wide = widths.clone();
    for (int c = 0; c < wide.length; c++) {
      wide[c] = Math.max(wide[c], face.ems(head.get(c), true));
    }
    return Arrays.stream(wide).sum() <= room ? wide : widths;
  }

  private Row row(List<String> cells, boolean bold) {
    List<List<String>> lines = new ArrayList<>();
    int most = 1;
    for (int c = 0; c < cells.size(); c++) {
      lines.add(TextWidth.wrap(cells.get(c), ems[c] + 1e-6, text -> face.ems(text, bold)));
      most = Math.max(most, lines.get(c).size());
    }
    return new Row(lines, (most * LINE + 0.4 * air) * size, bold);
  }

  private double widestWord(String text, boolean bold) {
    return Arrays.stream(text.split(" ", -1))
        .mapToDouble(word -> face.ems(word, bold))
        .max()
        .orElse(0);
  }

  /**
   * Widths between the least and the natural ones that fill the room. What a column takes beyond
   * the least grows with the root of all that stands in it: for texts of like length that makes the
   * fewest lines in all.
   */
  private static double[] shared(double[] least, double[] natural, double[] weight, double room) {
    double low = 0;
    double high = 1e4;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (Arrays.stream(widths(least, natural, weight, middle)).sum() > room) {
        high = middle;
      } else {
        low = middle;
      }
    }
    double[] widths = widths(least, natural, weight, low);
    double over = Arrays.stream(widths).sum() / room;
    // Words that are too long even so are cut up.
    return over <= 1 ? widths : Arrays.stream(widths).map(width -> width / over).toArray();
  }

  private static double[] widths(double[] least, double[] natural, double[] weight, double factor) {
    double[] widths = new double[least.length];
    for (int c = 0; c < widths.length; c++) {
      widths[c] = Math.max(least[c], Math.min(natural[c], factor * Math.sqrt(weight[c])));
    }
    return widths;
  }

  double size() {
    return size;
  }

  boolean isNumber(int column) {
    return numeric[column];
  }

  /** In millimetres, without the gap. */
  double width(int column) {
    return ems[column] * size;
  }

  double leading() {
    return LINE * size;
  }

  Row head() {
    return head;
  }

  List<Row> rows() {
    return rows;
  }

  /** With its head. */
  double high() {
    return head.high() + rows.stream().mapToDouble(Row::high).sum();
  }

  /** Copies of long tables' cells, numbers kept with their units. */
  static List<String> unbroken(List<String> cells, List<Boolean> numbers) {
    List<String> kept = new ArrayList<>();
    for (int c = 0; c < cells.size(); c++) {
      kept.add(numbers.get(c) ? cells.get(c).replace(' ', '\u00A0') : cells.get(c));
    }
    return kept;
  }
}
