package curvestock.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Comma-separated values as RFC 4180 has them, but for line ends of one character. */
final class Csv {

  private final List<List<String>> rows = new ArrayList<>();

  Csv(String... header) {
    rows.add(List.of(header));
  }

  void add(String... values) {
    rows.add(List.of(values));
  }

  @Override
  public String toString() {
    return rows.stream()
        .map(row -> row.stream().map(Csv::field).collect(Collectors.joining(",")) + "\n")
        .collect(Collectors.joining());
  }

  private static String field(String text) {
    boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
