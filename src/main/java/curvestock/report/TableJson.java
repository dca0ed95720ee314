package curvestock.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.answer.Column;
import curvestock.answer.Figures;
import curvestock.answer.Table;
import curvestock.units.Angle;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.Mass;
import curvestock.units.Money;
import curvestock.units.Quantity;
import curvestock.units.Share;
import curvestock.units.Text;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Figures as data: lengths in millimetres, angles in degrees counter-clockwise, shares in per cent,
 * weights in kilograms, money in minor units. Where a figure is missing its field is.
 */
public final class TableJson {

  /** What every file says of its numbers. */
  static final String UNITS =
      "mm, degrees counter-clockwise, per cent, kg, money in minor units with tax where it is paid";

  static final ObjectMapper MAPPER = new ObjectMapper();

  /** A millionth of a millimetre, or of a degree (0.00002 mm at the rim of 1 m). */
  private static final int PLACES = 6;

  private TableJson() {}

  /** The file's text. */
  static String written(ObjectNode root) {
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter()
            .withObjectIndenter(new DefaultIndenter("  ", "\n"))
            .withArrayIndenter(new DefaultIndenter("  ", "\n"));
    try {
      return MAPPER.writer(printer).writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values can always be written", e);
    }
  }

  /** Adds the rows, each an object, under the table's key. */
  static void add(ObjectNode root, Table table) {
    ArrayNode rows = root.putArray(table.key());
    for (int i = 0; i < table.rows().size(); i++) {
      row(rows.addObject(), table, i);
    }
  }

  private static void row(ObjectNode node, Table table, int number) {
    List<Quantity> row = table.rows().get(number);
    for (int c = 0; c < row.size(); c++) {
      Column column = table.columns().get(c);
      boolean missing = row.get(c) instanceof Text && column.measure().isNumber();
      if (!missing && !row.get(c).equals(Text.NONE)) {
        node.set(column.key(), value(row.get(c)));
      }
    }
  }

  private static JsonNode value(Quantity figure) {
    if (figure instanceof Text text) {
      return MAPPER.getNodeFactory().textNode(text.words());
    }
    if (figure instanceof Money money) {
      return MAPPER.getNodeFactory().numberNode(money.minorUnits());
    }
    if (figure instanceof Count count) {
      return MAPPER.getNodeFactory().numberNode(count.number());
    }
    return MAPPER.getNodeFactory().numberNode(decimal(plain(figure)));
  }

  private static double plain(Quantity figure) {
    if (figure instanceof Length length) {
      return length.millimetres();
    }
    if (figure instanceof Angle angle) {
      return angle.degrees();
    }
    return figure instanceof Mass mass ? mass.kilograms() : ((Share) figure).percent();
  }

  /** Without needless zeros. */
  static BigDecimal decimal(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.setScale(Math.max(0, rounded.scale()));
  }

  /**
   * The table for somebody who shows it: its columns, and rows of cells with the figure and how it
   * is written.
   */
  public static ObjectNode shown(Table table, Figures figures) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("caption", table.caption());
    ArrayNode columns = root.putArray("columns");
    for (Column column : table.columns()) {
      columns
          .addObject()
          .put("key", column.key())
          .put("title", column.title())
          .put("number", column.measure().isNumber());
    }
    ArrayNode rows = root.putArray("rows");
    for (int i = 0; i < table.rows().size(); i++) {
      ObjectNode row = rows.addObject();
      row(row.putObject("figures"), table, i);
      ObjectNode words = row.putObject("words");
      for (int c = 0; c < table.columns().size(); c++) {
        Column column = table.columns().get(c);
        words.put(column.key(), figures.of(table.rows().get(i).get(c), column.measure()));
      }
    }
    return root;
  }
}
