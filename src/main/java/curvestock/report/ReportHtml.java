package curvestock.report;

import curvestock.answer.Column;
import curvestock.answer.Figures;
import curvestock.answer.Heading;
import curvestock.answer.Table;
import curvestock.units.Quantity;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A report as one HTML file that needs nothing else: its style and pictures are inside, no scripts,
 * nothing is loaded. Readable without colours, on narrow screens, by a screen reader, and printed.
 */
public final class ReportHtml {

  private static final String STYLE =
      """
      body{font:16px/1.45 system-ui,"Liberation Sans",Arial,sans-serif;color:#000;background:#fff;
        max-width:72em;margin:0 auto;padding:1em}
      h1{font-size:1.8em;margin:.3em 0}
      h2{font-size:1.35em;border-top:2px solid #000;padding-top:.5em;margin-top:1.6em}
      h3{font-size:1.1em;margin:1.2em 0 .3em}
      nav ul{columns:3 14em;padding-left:1.2em}
      a{color:#003e7e}
      figure{margin:1em 0}
      figure img{width:100%;height:auto;border:1px solid #555;background:#fff}
      figcaption{margin-top:.3em}
      .wide{overflow-x:auto}
      table{border-collapse:collapse;margin:.8em 0;width:100%}
      caption{text-align:left;font-weight:bold;padding:.3em 0}
      th,td{border:1px solid #555;padding:.25em .5em;text-align:left;vertical-align:top}
      th{background:#e8e8e8}
      .n{text-align:right}
      td.n{white-space:nowrap}
      .notice{border:2px solid #000;border-left-width:.6em;padding:.4em .8em;margin:.8em 0}
      @media print{
        body{font-size:10.5pt;max-width:none;padding:0}
        nav{display:none}
        a{color:#000;text-decoration:none}
        h2,h3,caption,thead{break-after:avoid}
        figure,tr,.notice{break-inside:avoid}
        figure img{max-height:23cm;object-fit:contain}
        thead{display:table-header-group}
        .wide{overflow:visible}
        table{font-size:9pt}
      }
      """;

  private final Figures figures;
  private final Map<String, String> pictures;
  private final StringBuilder out = new StringBuilder();

  private ReportHtml(Figures figures, Map<String, String> pictures) {
    this.figures = figures;
    this.pictures = Map.copyOf(pictures);
  }

  /**
   * The report as a file.
   *
   * @param pictures data URIs by the names that the parts give them; parts without one are left out
   */
  public static String of(Heading heading, List<ReportPart> parts, Map<String, String> pictures) {
    ReportHtml html = new ReportHtml(heading.figures(), pictures);
    html.write(heading.title(), parts);
    return html.out.toString();
  }

  private void write(String title, List<ReportPart> parts) {
    line("<!DOCTYPE html>");
    line("<html lang=\"en\"><head><meta charset=\"utf-8\"/>");
    line("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>");
    line("<title>" + escaped(title) + "</title>");
    line("<style>\n" + STYLE + "</style></head>");
    line("<body><header><h1>" + escaped(title) + "</h1></header>");
    contents(parts);
    line("<main>");
    int chapter = 0;
    boolean open = false;
    for (ReportPart part : parts) {
      if (part instanceof ReportPart.Chapter heading) {
        line(open ? "</section>" : "");
        chapter++;
        open = true;
        String id = "chapter-" + chapter;
        line("<section aria-labelledby=\"" + id + "\">");
        line("<h2 id=\"" + id + "\">" + escaped(heading.text()) + "</h2>");
      } else {
        write(part);
      }
    }
    line((open ? "</section>" : "") + "</main></body></html>");
  }

  private void contents(List<ReportPart> parts) {
    line("<nav aria-label=\"Contents\"><ul>");
    int chapter = 0;
    for (ReportPart part : parts) {
      if (part instanceof ReportPart.Chapter heading) {
        chapter++;
        line("<li><a href=\"#chapter-" + chapter + "\">" + escaped(heading.text()) + "</a></li>");
      }
    }
    line("</ul></nav>");
  }

  private void write(ReportPart part) {
    if (part instanceof ReportPart.Section section) {
      line("<h3>" + escaped(section.text()) + "</h3>");
    } else if (part instanceof ReportPart.Paragraph paragraph) {
      line("<p>" + escaped(paragraph.text()) + "</p>");
    } else if (part instanceof ReportPart.Notice notice) {
      line("<p class=\"notice\">" + escaped(notice.text()) + "</p>");
    } else if (part instanceof ReportPart.Bullets bullets) {
      line("<ul>");
      bullets.items().forEach(item -> line("<li>" + escaped(item) + "</li>"));
      line("</ul>");
    } else if (part instanceof ReportPart.Figures shown) {
      write(shown.table());
    } else if (part instanceof ReportPart.Picture picture) {
      Optional.ofNullable(pictures.get(picture.file())).ifPresent(uri -> write(picture, uri));
    }
  }

  private void write(ReportPart.Picture picture, String uri) {
    line("<figure><img alt=\"" + escaped(picture.alternative()) + "\" src=\"" + uri + "\"/>");
    line("<figcaption>" + escaped(picture.caption()) + "</figcaption></figure>");
  }

  private void write(Table table) {
    line("<div class=\"wide\"><table><caption>" + escaped(table.caption()) + "</caption>");
    out.append("<thead><tr>");
    for (Column column : table.columns()) {
      out.append("<th scope=\"col\"" + kind(column) + ">" + escaped(column.title()) + "</th>");
    }
    line("</tr></thead><tbody>");
    for (List<Quantity> row : table.rows()) {
      out.append("<tr>");
      for (int c = 0; c < row.size(); c++) {
        Column column = table.columns().get(c);
        String text = figures.of(row.get(c), column.measure());
        out.append("<td" + kind(column) + ">" + escaped(text) + "</td>");
      }
      line("</tr>");
    }
    line("</tbody></table></div>");
  }

  private static String kind(Column column) {
    return column.measure().isNumber() ? " class=\"n\"" : "";
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
