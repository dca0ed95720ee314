package curvestock.answer;

import curvestock.units.Quantity;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Figures in rows, before anybody has chosen units, rounding or a medium for them.
 *
 * @param key its name in data
 * @param caption what it shows, for people
 * @param columns from left to right
 * @param rows each with a cell for every column; a {@link Text} may stand in any column, where
 *     there is no figure
 */
public record Table(String key, String caption, List<Column> columns, List<List<Quantity>> rows) {

  /**
   * @throws IllegalArgumentException if a row has more or fewer cells than there are columns
   */
  public Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<Quantity> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            "a row of %s must have %s cells, but had %s"
                .formatted(key, columns.size(), row.size()));
      }
    }
  }

  public boolean isEmpty() {
    return rows.isEmpty();
  }

  /** The figure in a row (from 0) of the column with the key. */
  public Quantity at(int row, String column) {
    return rows.get(row).get(index(column));
  }

  /** The same as it is printed. */
  public String words(int row, String column, Figures figures) {
    return figures.of(at(row, column), columns.get(index(column)).measure());
  }

  private int index(String column) {
    for (int c = 0; c < columns.size(); c++) {
      if (columns.get(c).key().equals(column)) {
        return c;
      }
    }
    throw new IllegalArgumentException("%s has no column %s".formatted(key, column));
  }

  /** The columns with these keys alone, in this order. */
  public Table only(String... keys) {
    int[] kept = Arrays.stream(keys).mapToInt(this::index).toArray();
    return new Table(
        key,
        caption,
        Arrays.stream(kept).mapToObj(columns::get).toList(),
        rows.stream().map(row -> Arrays.stream(kept).mapToObj(row::get).toList()).toList());
  }

  /** Two columns of lengths as one, {@code 48 x 21 7/8 in}; the same if there are none such. */
  public Table sides(String first, String second, String title, Figures figures) {
    if (columns.stream().noneMatch(column -> column.key().equals(first))) {
      return this;
    }
    int one = index(first);
    int two = index(second);
    List<Column> fewer = new ArrayList<>(columns);
    fewer.set(one, new Column(first, title, Measure.TEXT));
    fewer.remove(two);
    List<List<Quantity>> cells = new ArrayList<>();
    for (List<Quantity> row : rows) {
      List<Quantity> less = new ArrayList<>(row);
      less.set(one, new Text(figures.sides(row.get(one), row.get(two), columns.get(one))));
      less.remove(two);
      cells.add(less);
    }
    return new Table(key, caption, fewer, cells);
  }

  /** The rows in whose column a text stands, in order. */
  public Table where(String column, String text) {
    int c = index(column);
    return new Table(
        key,
        caption,
        columns,
        rows.stream().filter(row -> row.get(c).equals(new Text(text))).toList());
  }

  /** The first rows, at most so many. */
  public Table first(int most) {
    return new Table(key, caption, columns, rows.subList(0, Math.min(most, rows.size())));
  }

  /** One more column at the right, with the same cell in every row. */
  public Table with(Column column, Quantity cell) {
    List<Column> more = new ArrayList<>(columns);
    more.add(column);
    return new Table(
        key,
        caption,
        more,
        rows.stream()
            .map(
                row -> {
                  List<Quantity> cells = new ArrayList<>(row);
                  cells.add(cell);
                  return cells;
                })
            .toList());
  }

  /** The same under another caption. */
  public Table captioned(String other) {
    return new Table(key, other, columns, rows);
  }

  /** A row for each of the things, in their order. */
  @SafeVarargs
  @SuppressWarnings("varargs") // read only
  static <R> Table of(String key, String caption, List<R> things, Field<R>... fields) {
    return of(key, caption, things, List.of(fields));
  }

  /** The same. */
  static <R> Table of(String key, String caption, List<R> things, List<Field<R>> fields) {
    return new Table(
        key,
        caption,
        fields.stream().map(Field::column).toList(),
        things.stream().map(thing -> row(fields, thing)).toList());
  }

  private static <R> List<Quantity> row(List<Field<R>> fields, R thing) {
    return fields.stream().map(field -> field.figure().apply(thing)).toList();
  }
}
