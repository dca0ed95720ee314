package curvestock.units;

import java.util.List;
import java.util.Map;

/** Signs that keyboards, phones and word processors put in place of plain ones. */
public final class Typography {

  /** In this order. */
  private static final List<Map.Entry<String, String>> SIGNS =
      List.of(
          Map.entry("½", " 1/2"),
          Map.entry("¼", " 1/4"),
          Map.entry("¾", " 3/4"),
          Map.entry("⅛", " 1/8"),
          Map.entry("⅜", " 3/8"),
          Map.entry("⅝", " 5/8"),
          Map.entry("⅞", " 7/8"),
          Map.entry("⅓", " 1/3"),
          Map.entry("⅔", " 2/3"),
          Map.entry("\u2044", "/"), // fraction slash
          Map.entry("′", "'"),
          Map.entry("’", "'"),
          Map.entry("″", "\""),
          Map.entry("”", "\""),
          Map.entry("''", "\""),
          Map.entry("\u2212", "-"), // minus sign
          Map.entry("\u00a0", " "), // no-break, thin and narrow spaces
          Map.entry("\u2009", " "),
          Map.entry("\u202f", " "));

  private Typography() {}

  /** The text in plain signs, without space at its ends: {@code 5¼} becomes {@code 5 1/4}. */
  public static String plain(String text) {
    String plain = text;
    for (Map.Entry<String, String> entry : SIGNS) {
      plain = plain.replace(entry.getKey(), entry.getValue());
    }
    return plain.strip();
  }
}
