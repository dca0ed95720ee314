package curvestock.report;

import curvestock.answer.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Collects the parts of a paper in order. */
final class Parts {

  private final List<ReportPart> parts = new ArrayList<>();

  Parts chapter(String text) {
    parts.add(new ReportPart.Chapter(text));
    return this;
  }

  Parts section(String text) {
    parts.add(new ReportPart.Section(text));
    return this;
  }

  Parts say(String text) {
    if (!text.isEmpty()) {
      parts.add(new ReportPart.Paragraph(text));
    }
    return this;
  }

  Parts say(Optional<String> text) {
    return say(text.orElse(""));
  }

  Parts say(List<String> sentences) {
    sentences.forEach(this::say);
    return this;
  }

  Parts notice(String text) {
    parts.add(new ReportPart.Notice(text));
    return this;
  }

  Parts bullets(List<String> items) {
    if (!items.isEmpty()) {
      parts.add(new ReportPart.Bullets(items));
    }
    return this;
  }

  Parts table(Table table) {
    if (!table.isEmpty()) {
      parts.add(new ReportPart.Figures(table));
    }
    return this;
  }

  Parts tables(List<Table> tables) {
    tables.forEach(this::table);
    return this;
  }

  Parts picture(String file, String alternative, String caption) {
    parts.add(new ReportPart.Picture(file, alternative, caption));
    return this;
  }

  List<ReportPart> done() {
    return List.copyOf(parts);
  }
}
