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
  private final Map<String, byte[]> pictures;

  private ReportPdf(PageFlow flow, Figures figures, Map<String, byte[]> pictures) {
    this.flow = flow;
    this.figures = figures;
    this.pictures = pictures;
  }

  /**
   * The report as a PDF.
   *
   * @param pictures PNG files by the names that the parts give them; parts without one are left out
   */
  public static byte[] of(
      Heading heading, List<ReportPart> parts, Map<String, byte[]> pictures, PaperSize size) {
    String title = heading.title();
    try (PdfBook book = new PdfBook(title)) {
      PageFlow flow = new PageFlow(book, size, false, title);
      flow.title(title);
      ReportPdf pdf = new ReportPdf(flow, heading.figures(), pictures);
      parts.forEach(pdf::write);
      flow.finish();
      return book.bytes();
    }
  }

  private void write(ReportPart part) {
    if (part instanceof ReportPart.Chapter chapter) {
      flow.heading(chapter.text());
    } else if (part instanceof ReportPart.Section section) {
      flow.subheading(section.text());
    } else if (part instanceof ReportPart.Paragraph paragraph) {
      flow.paragraph(paragraph.text());
    } else if (part instanceof ReportPart.Notice notice) {
      flow.notice(notice.text());
    } else if (part instanceof ReportPart.Bullets bullets) {
      bullets.items().forEach(item -> flow.paragraph("•  " + item));
    } else if (part instanceof ReportPart.Figures shown) {
      flow.subheading(shown.table().caption());
      flow.table(shown.table(), figures);
    } else if (part instanceof ReportPart.Picture picture) {
      Optional.ofNullable(pictures.get(picture.file()))
          .ifPresent(
              png -> {
                flow.picture(png);
                flow.paragraph(picture.caption());
              });
    }
  }
}
