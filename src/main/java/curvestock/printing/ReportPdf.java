package curvestock.printing;

import curvestock.answer.Figures;
import curvestock.answer.Heading;
import curvestock.drawing.PaperSize;
import curvestock.report.ReportPart;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A report as pages to print. */
public final class ReportPdf {

  private final PageFlow flow;
  private final Figures figures;
  private final Map<String, Illustration> pictures;

  private String chapter = "";

  private ReportPdf(PageFlow flow, Figures figures, Map<String, Illustration> pictures) {
    this.flow = flow;
    this.figures = figures;
    this.pictures = pictures;
  }

  /**
   * The report as a PDF.
   *
   * @param pictures by the names that the parts give them; parts without one are left out
   */
  public static byte[] of(
      Heading heading,
      List<ReportPart> parts,
      Map<String, Illustration> pictures,
      PaperSize size,
      SpareFonts spare) {
    String title = heading.title();
    try (PdfBook book = new PdfBook(title, spare)) {
      PageFlow.fill(
          book,
          size,
          false,
          title,
          flow -> {
            flow.title(title);
            ReportPdf pdf = new ReportPdf(flow, heading.figures(), pictures);
            for (int i = 0; i < parts.size(); i++) {
              boolean leads =
                  i + 1 < parts.size() && parts.get(i + 1) instanceof ReportPart.Figures;
              pdf.write(parts.get(i), leads);
            }
          });
      return book.bytes();
    }
  }

  /**
   * Writes a part.
   *
   * @param leads whether a table follows, from which a paragraph must not be parted
   */
  private void write(ReportPart part, boolean leads) {
    if (part instanceof ReportPart.Chapter chapter) {
      flow.heading(chapter.text());
      this.chapter = chapter.text();
    } else if (part instanceof ReportPart.Section section) {
      flow.subheading(section.text());
    } else if (part instanceof ReportPart.Paragraph paragraph && leads) {
      flow.lead(paragraph.text());
    } else if (part instanceof ReportPart.Paragraph paragraph) {
      flow.paragraph(paragraph.text());
    } else if (part instanceof ReportPart.Notice notice) {
      flow.notice(notice.text());
    } else if (part instanceof ReportPart.Bullets bullets) {
      flow.paragraphs(bullets.items().stream().map(item -> "•  " + item).toList());
    } else if (part instanceof ReportPart.Figures shown) {
      // A chapter of one table need not say its name twice.
      if (!shown.table().caption().equals(chapter)) {
        flow.subheading(shown.table().caption());
      }
      flow.table(shown.table(), figures);
    } else if (part instanceof ReportPart.Picture picture) {
      Optional.ofNullable(pictures.get(picture.file()))
          .ifPresent(drawn -> drawn.place(flow, picture.caption()));
    }
  }

  /**
   * What to tell of letters in the job's own words that no font has, if there are any.
   *
   * @param words titles and names of the job
   */
  public static Optional<String> unprintable(String words, SpareFonts spare) {
    List<String> letters = Typeface.unprintable(words, spare);
    return letters.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "No font on this machine has these letters of the job's names: "
                + String.join(" ", letters)
                + ". The PDFs print a question mark for each; report.html shows them where your"
                + " browser can. Install a font that has them (TrueType), or write the names in"
                + " letters that you have.");
  }
}
