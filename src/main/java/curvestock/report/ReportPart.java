package curvestock.report;

import curvestock.answer.Table;
import java.util.List;

/** A part of a paper, before it is known whether it is read on a terminal, a screen or in print. */
public sealed interface ReportPart {

  /** Begins a chapter. */
  record Chapter(String text) implements ReportPart {}

  /** Begins a section of a chapter. */
  record Section(String text) implements ReportPart {}

  record Paragraph(String text) implements ReportPart {}

  /** Something that must not be missed. */
  record Notice(String text) implements ReportPart {}

  record Bullets(List<String> items) implements ReportPart {
    public Bullets {
      items = List.copyOf(items);
    }
  }

  /** Figures; a table without rows is left out. */
  record Figures(Table table) implements ReportPart {}

  /**
   * A picture.
   *
   * @param file path in the result folder, without its ending
   * @param alternative what it shows, for those who cannot see it
   * @param caption printed below
   */
  record Picture(String file, String alternative, String caption) implements ReportPart {}
}
