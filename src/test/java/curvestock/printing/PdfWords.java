package curvestock.printing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** The letters of a PDF with their places, in millimetres from the page's lower left corner. */
final class PdfWords extends PDFTextStripper {

  /**
   * Letters written in one go.
   *
   * @param size of the font in points, as it is on the page
   */
  record Word(int page, String text, double left, double right, double low, double size) {}

  private static final double MM = 25.4 / 72;

  private final List<Word> words = new ArrayList<>();

  private PdfWords() {}

  static List<Word> of(byte[] pdf) {
    PdfWords words = new PdfWords();
    try (PDDocument document = Loader.loadPDF(pdf);
        Writer nowhere =
            new OutputStreamWriter(new ByteArrayOutputStream(), StandardCharsets.UTF_8)) {
      words.writeText(document, nowhere);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return words.words;
  }

  @Override
  protected void writeString(String text, List<TextPosition> letters) {
    TextPosition first = letters.get(0);
    TextPosition last = letters.get(letters.size() - 1);
    double smallest = letters.stream().mapToDouble(PdfWords::points).min().orElseThrow();
    double low = (first.getPageHeight() - first.getYDirAdj()) * MM;
    words.add(
        new Word(
            getCurrentPageNo(),
            text,
            first.getXDirAdj() * MM,
            (last.getXDirAdj() + last.getWidthDirAdj()) * MM,
            low,
            smallest));
  }

  private static double points(TextPosition letter) {
    return letter.getYScale();
  }
}
