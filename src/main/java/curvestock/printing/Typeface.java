package curvestock.printing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The fonts of a document: the one inside the program (Liberation Sans, SIL Open Font License, as
 * PDFBox carries it: Latin, Greek, Cyrillic, Hebrew), and for letters that it lacks those of the
 * machine. A letter that no font has is printed as a question mark; {@link #unprintable} names it.
 */
final class Typeface {

  /** A text's part in one font. */
  record Run(PDFont font, String text) {}

  /**
   * How a letter is printed.
   *
   * @param font by number
   * @param width in thousandths of the font's size
   */
  private record Letter(int font, String sign, double width) {}

  private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
  private static final String REPLACEMENT = "?";

  /** What bold text is wider by, drawn with a pen round each letter. */
  static final double BOLD_STROKE = 0.035;

  private final PDDocument document;
  private final SpareFonts spare;
  private final List<TrueTypeFont> opened = new ArrayList<>();
  private final List<PDFont> fonts = new ArrayList<>();
  private final Map<Integer, Letter> letters = new HashMap<>();
  private final SortedSet<Integer> missing = new TreeSet<>();

  Typeface(PDDocument document, SpareFonts spare) {
    this.document = document;
    this.spare = spare;
    try (InputStream stream = PDDocument.class.getResourceAsStream(FONT)) {
      add(new RandomAccessReadBuffer(stream));
    } catch (IOException e) {
      throw new UncheckedIOException("the font inside the program cannot be read", e);
    }
  }

  private void add(RandomAccessReadBuffer bytes) throws IOException {
    TrueTypeFont letters = new TTFParser().parse(bytes);
    opened.add(letters);
    // Ligatures would be sought in each text, which takes longer than all the rest.
    letters.setEnableGsub(false);
    fonts.add(PDType0Font.load(document, letters, true));
  }

  /** The letters of the text that no font has, in the order of their codes. */
  static List<String> unprintable(String text, SpareFonts spare) {
    try (PDDocument document = new PDDocument()) {
      Typeface face = new Typeface(document, spare);
      face.runs(text);
      face.close();
      return face.missing.stream().map(Character::toString).toList();
    } catch (IOException e) {
      throw new UncheckedIOException("memory never refuses to be written", e);
    }
  }

  /** The fonts in use, the built-in one first. */
  List<PDFont> fonts() {
    return List.copyOf(fonts);
  }

  /** Width in units of the font's size. */
  double ems(String text, boolean bold) {
    double width = text.codePoints().mapToDouble(letter -> letter(letter).width()).sum() / 1000;
    return bold ? width + BOLD_STROKE : width;
  }

  /** The text in the fonts that have its letters. */
  List<Run> runs(String text) {
    List<Run> runs = new ArrayList<>();
    StringBuilder same = new StringBuilder();
    int before = 0;
    for (int each : text.codePoints().toArray()) {
      Letter letter = letter(each);
      if (letter.font() != before && same.length() > 0) {
        runs.add(new Run(fonts.get(before), same.toString()));
        same.setLength(0);
      }
      before = letter.font();
      same.append(letter.sign());
    }
    if (same.length() > 0) {
      runs.add(new Run(fonts.get(before), same.toString()));
    }
    return runs;
  }

  private Letter letter(int letter) {
    Letter known = letters.get(letter);
    if (known == null) {
      known = sought(letter);
      letters.put(letter, known);
    }
    return known;
  }

  private Letter sought(int letter) {
    String sign = Character.isISOControl(letter) ? " " : Character.toString(letter);
    int font = fontOf(sign, letter);
    if (font < 0) {
      missing.add(letter);
      sign = REPLACEMENT;
      font = 0;
    }
    try {
      return new Letter(font, sign, fonts.get(font).getStringWidth(sign));
    } catch (IOException e) {
      throw new UncheckedIOException("the font inside the program cannot be read", e);
    }
  }

  private int fontOf(String sign, int letter) {
    for (int i = 0; i < fonts.size(); i++) {
      if (has(fonts.get(i), sign)) {
        return i;
      }
    }
    Optional<byte[]> found = spare.files().filter(file -> has(file, letter)).findFirst();
    if (found.isEmpty()) {
      return -1;
    }
    try {
      add(new RandomAccessReadBuffer(found.get()));
    } catch (IOException | IllegalArgumentException e) {
      // One that cannot be embedded is as good as none.
      return -1;
    }
    return has(fonts.get(fonts.size() - 1), sign) ? fonts.size() - 1 : -1;
  }

  /** Only TrueType outlines can be embedded in part. */
  private static boolean has(byte[] file, int letter) {
    try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file))) {
      return font.getGlyph() != null && font.getUnicodeCmapLookup().getGlyphId(letter) != 0;
    } catch (IOException | IllegalArgumentException e) {
      // A font that cannot be read is as good as none.
      return false;
    }
  }

  private static boolean has(PDFont font, String sign) {
    try {
      font.encode(sign);
      return true;
    } catch (IllegalArgumentException | IOException e) {
      return false;
    }
  }

  void close() throws IOException {
    for (TrueTypeFont font : opened) {
      font.close();
    }
  }
}
