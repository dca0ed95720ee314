package curvestock.printing;

import curvestock.drawing.Paper;
import curvestock.geometry.Box;
import curvestock.geometry.Point;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDFormContentStream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

/**
 * A PDF under construction: pages of given size, what is on them in millimetres from the page's
 * lower left corner, y up. Its font is embedded (Liberation Sans, SIL Open Font License, as PDFBox
 * carries it); no clock goes in.
 */
final class PdfBook implements AutoCloseable {

  /** PDF's own unit, 1/72 in. */
  private static final double POINTS = 72 / 25.4;

  private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
  private static final float BOTH_SIDES = 2;

  private final PDDocument document = new PDDocument();
  private final TrueTypeFont letters;
  private final PDFont font;

  PdfBook(String title) {
    PDDocumentInformation about = new PDDocumentInformation();
    about.setTitle(title);
    about.setCreator("Curvestock");
    document.setDocumentInformation(about);
    // Otherwise the document's id would be made from the time.
    document.setDocumentId(0L);
    document.getDocumentCatalog().setLanguage("en");
    try (InputStream stream = PDDocument.class.getResourceAsStream(FONT)) {
      letters = new TTFParser().parse(new RandomAccessReadBuffer(stream));
      // Ligatures would be sought in each text, which takes longer than all the rest.
      letters.setEnableGsub(false);
      font = PDType0Font.load(document, letters, true);
    } catch (IOException e) {
      throw new UncheckedIOException("the font inside the program cannot be read", e);
    }
  }

  /** A drawing that is kept once and shown on several pages. */
  record Figure(PDFormXObject form) {}

  Figure figure(Paper paper) {
    PDFormXObject form = new PDFormXObject(document);
    form.setResources(new PDResources());
    // Room for the pens at the edge.
    float border = BOTH_SIDES;
    form.setBBox(
        new PDRectangle(
            (float) paper.minX() - border,
            (float) paper.minY() - border,
            (float) (paper.maxX() - paper.minX()) + 2 * border,
            (float) (paper.maxY() - paper.minY()) + 2 * border));
    try (PDFormContentStream stream = new PDFormContentStream(form)) {
      new PdfInk(stream, font).draw(paper.things());
    } catch (IOException e) {
      throw impossible(e);
    }
    return new Figure(form);
  }

  /** A picture of dots. */
  record Image(PDImageXObject dots) {
    /** Height over width. */
    double aspect() {
      return (double) dots.getHeight() / dots.getWidth();
    }
  }

  /**
   * Takes a PNG file's dots in.
   *
   * @throws IllegalArgumentException if it is none
   */
  Image image(byte[] png) {
    try {
      return new Image(PDImageXObject.createFromByteArray(document, png, "picture"));
    } catch (IOException e) {
      throw new IllegalArgumentException("the picture cannot be read: " + e.getMessage(), e);
    }
  }

  void drawOnLastPage(Image image, Box place) {
    PDPage page = document.getPage(document.getNumberOfPages() - 1);
    try (PDPageContentStream stream =
        new PDPageContentStream(
            document, page, PDPageContentStream.AppendMode.APPEND, true, true)) {
      stream.drawImage(
          image.dots(),
          (float) (place.minX() * POINTS),
          (float) (place.minY() * POINTS),
          (float) (place.width() * POINTS),
          (float) (place.height() * POINTS));
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  /** Adds a page with what is on the paper. */
  void page(double width, double height, Paper paper) {
    try (PDPageContentStream stream = newPage(width, height)) {
      stream.drawForm(figure(paper).form());
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  /**
   * Adds a page that shows part of a figure.
   *
   * @param window where on the page the figure shows
   * @param origin where on the page the figure's origin lies
   * @param over what else is on the page
   */
  void page(double width, double height, Figure figure, Box window, Point origin, Paper over) {
    try (PDPageContentStream stream = newPage(width, height)) {
      stream.saveGraphicsState();
      stream.addRect(
          (float) window.minX(),
          (float) window.minY(),
          (float) window.width(),
          (float) window.height());
      stream.clip();
      stream.transform(Matrix.getTranslateInstance((float) origin.x(), (float) origin.y()));
      stream.drawForm(figure.form());
      stream.restoreGraphicsState();
      stream.drawForm(figure(over).form());
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  private PDPageContentStream newPage(double width, double height) throws IOException {
    PDPage page = new PDPage(new PDRectangle((float) (width * POINTS), (float) (height * POINTS)));
    document.addPage(page);
    PDPageContentStream stream = new PDPageContentStream(document, page);
    // Only a font named on a page itself is embedded; naming it in a figure is not enough.
    stream.setFont(font, 1);
    stream.transform(Matrix.getScaleInstance((float) POINTS, (float) POINTS));
    return stream;
  }

  int pages() {
    return document.getNumberOfPages();
  }

  /** The whole book. */
  byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      document.save(bytes);
    } catch (IOException e) {
      throw impossible(e);
    }
    return bytes.toByteArray();
  }

  @Override
  public void close() {
    try {
      document.close();
      letters.close();
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  private static UncheckedIOException impossible(IOException e) {
    return new UncheckedIOException("memory never refuses to be written", e);
  }
}
