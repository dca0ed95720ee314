package curvestock.helix.standard;

import curvestock.units.Length;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A published table in this package's resources: {@code #} lines name the source, then a header,
 * then rows without quoting. Every table ends with the columns {@code source} and {@code
 * certainty}.
 */
final class CsvTable {

  private final List<String> header;
  private final List<Row> rows;

  private CsvTable(List<String> header, List<List<String>> cells) {
    this.header = header;
    this.rows = cells.stream().map(Row::new).toList();
  }

  /** Reads the table; a missing or uneven table is a defect of the program. */
  static CsvTable read(String name) {
    try (InputStream in = CsvTable.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("table " + name + " is missing from the program");
      }
      BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      List<List<String>> lines =
          reader
              .lines()
              .filter(line -> !line.startsWith("#") && !line.isBlank())
              .map(line -> List.of(line.split(",", -1)))
              .toList();
      return new CsvTable(lines.get(0), new ArrayList<>(lines.subList(1, lines.size())));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  List<Row> rows() {
    return rows;
  }

  /** One line of the table. */
  final class Row {
    private final List<String> cells;

    Row(List<String> cells) {
      if (cells.size() != header.size()) {
        throw new IllegalStateException("uneven table row " + cells);
      }
      this.cells = cells;
    }

    String text(String column) {
      return cells.get(header.indexOf(column));
    }

    boolean is(String column, String value) {
      return text(column).equals(value);
    }

    double number(String column) {
      return Double.parseDouble(text(column));
    }

    Length length(String column) {
      return Length.parse(text(column));
    }

    /** The value with this row's source and certainty. */
    <T> Sourced<T> sourced(T value) {
      return new Sourced<>(value, text("source"), Certainty.ofTag(text("certainty")));
    }
  }
}
