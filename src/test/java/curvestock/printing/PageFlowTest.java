package curvestock.printing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.drawing.PaperSize;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** How text, lists and tables run over the pages. */
class PageFlowTest {

  private static List<String> pages(Consumer<PageFlow> writer) throws IOException {
    try (PdfBook book = new PdfBook("t", SpareFonts.NONE)) {
      PageFlow.fill(book, PaperSize.A4, false, "Paper", writer);
      try (PDDocument document = Loader.loadPDF(book.bytes())) {
        return IntStream.rangeClosed(1, document.getNumberOfPages())
            .mapToObj(page -> text(document, page))
            .toList();
      }
    }
  }

  private static String text(PDDocument document, int page) {
    try {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setStartPage(page);
      stripper.setEndPage(page);
      return stripper.getText(document).replace('\u00A0', ' ');
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static List<List<String>> rows(int count) {
    return Collections.nCopies(count, List.of("34", "441.5", "438.5"));
  }

  /** Two tables under one heading: the second began a page with nothing to say whose it was. */
  @Test
  void table_thatBeginsAPage_saysWhoseItIs() throws IOException {
    List<String> pages =
        pages(
            flow -> {
              flow.heading("R4, end piece");
              flow.grid(List.of("Piece", "x", "y"), rows(45));
              flow.grid(List.of("Piece", "hole 7 x", "y"), rows(12));
            });

    assertThat(pages).hasSize(2);
    assertThat(pages.get(1)).startsWith("R4, end piece, continued");
    assertThat(pages.get(1)).contains("hole 7 x");
  }

  /** A third of the page before was left empty so that a list of a third need not part. */
  @Test
  void list_thatDoesNotFit_beginsWhereThePageHasRoom() throws IOException {
    List<String> items = IntStream.range(0, 17).mapToObj(i -> "item " + i + ".").toList();
    List<String> pages =
        pages(
            flow -> {
              IntStream.range(0, 29).forEach(i -> flow.paragraph("Before."));
              flow.paragraphs(items);
            });

    assertThat(pages.get(0)).contains("item 0.");
    assertThat(pages).hasSize(2);
  }

  @Test
  void pages_ofAFlow_areNumberedOfAll() throws IOException {
    List<String> pages =
        pages(flow -> IntStream.range(0, 120).forEach(i -> flow.paragraph("Line " + i + ".")));

    assertThat(pages).hasSizeGreaterThan(2);
    for (int i = 0; i < pages.size(); i++) {
      assertThat(pages.get(i)).contains("Paper · page " + (i + 1) + " of " + pages.size());
    }
  }
}
