package curvestock.printing;

import curvestock.drawing.Paper;
import curvestock.geometry.Box;
import curvestock.geometry.Point;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.awt.Graphics2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDFormContentStream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;

/**
 * A PDF under construction: pages of given size, what is on them in millimetres from the page's
 * lower left corner, y up. Fonts are embedded; no clock goes in. Viewers are asked to print it at
 * its own size.
 */
final class PdfBook implements AutoCloseable {

  /** PDF's own unit, 1/72 in. */
  private static final double POINTS = 72 / 25.4;

  private static final float BOTH_SIDES = 2;

  private final PDDocument document = new PDDocument();
  private final Typeface typeface;

  PdfBook(String title, SpareFonts spare) {
    PDDocumentInformation about = new PDDocumentInformation();
    about.setTitle(title);
    about.setCreator("Curvestock");
    document.setDocumentInformation(about);
    // Otherwise the document's id would be made from the time.
    document.setDocumentId(0L);
    document.getDocumentCatalog().setLanguage("en");
    // ISO 32000-1:2008, table 150: viewers then print without scaling.
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    document.getDocumentCatalog().setViewerPreferences(preferences);
    typeface = new Typeface(document, spare);
  }

  Typeface typeface() {
    return typeface;
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
      new PdfInk(stream, typeface).draw(paper.things());
    } catch (IOException e) {
      throw impossible(e);
    }
    return new Figure(form);
  }

  /** What Java2D painted, as lines, areas and text, at the given place of the last page. */
  void paintOnLastPage(int width, int height, Consumer<Graphics2D> painter, Box place) {
    PDPage page = document.getPage(document.getNumberOfPages() - 1);
    try (PDPageContentStream stream =
        new PDPageContentStream(
            document, page, PDPageContentStream.AppendMode.APPEND, true, true)) {
      PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, width, height);
      graphics.setFontTextDrawer(new ChartLetters(typeface));
      painter.accept(graphics);
      graphics.dispose();
      float factor = (float) (place.width() * POINTS / width);
      stream.transform(
          new Matrix(
              factor,
              0,
              0,
              factor,
              (float) (place.minX() * POINTS),
              (float) (place.minY() * POINTS)));
      stream.drawForm(graphics.getXFormObject());
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  /** Text of charts in the document's own fonts. */
  private static final class ChartLetters extends PdfBoxGraphics2DFontTextDrawer {
    private final Typeface typeface;

    ChartLetters(Typeface typeface) {
      this.typeface = typeface;
    }

    @Override
    protected boolean hasDynamicFontMapping() {
      return true;
    }

    @Override
    protected PDFont mapFont(Font font, IFontTextDrawerEnv env) {
      return typeface.fonts().get(0);
    }
  }

  /** Adds a page with what is on the paper. */
  void page(double width, double height, Paper paper) {
    Figure whole = figure(paper);
    try (PDPageContentStream stream = newPage(width, height)) {
      stream.drawForm(whole.form());
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
    Figure above = figure(over);
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
      stream.drawForm(above.form());
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  private PDPageContentStream newPage(double width, double height) throws IOException {
    PDPage page = new PDPage(new PDRectangle((float) (width * POINTS), (float) (height * POINTS)));
    document.addPage(page);
    PDPageContentStream stream = new PDPageContentStream(document, page);
    // Only a font named on a page itself is embedded; naming it in a figure is not enough.
    for (PDFont font : typeface.fonts()) {
      stream.setFont(font, 1);
    }
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
      typeface.close();
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  private static UncheckedIOException impossible(IOException e) {
    return new UncheckedIOException("memory never refuses to be written", e);
  }
}
