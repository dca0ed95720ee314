package curvestock.answer;

import curvestock.helix.build.ShoppingItem;
import curvestock.units.Count;
import curvestock.units.Mass;
import curvestock.units.Money;
import curvestock.units.Quantity;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Everything to buy in one table, and what it comes to. */
final class ShoppingLines {

  private static final double GRAMS = 1000;

  private final List<ShoppingItem> items;
  private final Optional<Buying> buying;

  ShoppingLines(List<ShoppingItem> items, Optional<Buying> buying) {
    this.items = items;
    this.buying = buying;
  }

  /** One line, sheets and hardware alike. */
  private record Line(Text item, Quantity quantity, String unit, Quantity price, Text note) {}

  Table table() {
    List<Line> lines = new ArrayList<>();
    buying.ifPresent(sheets -> lines.addAll(lines(sheets)));
    items.forEach(item -> lines.add(line(item)));
    return Table.of(
        "shopping",
        "Shopping list",
        lines,
        Field.of("item", "Item", Measure.TEXT, Line::item),
        Field.of("quantity", "Quantity", Measure.COUNT, Line::quantity),
        Field.text("unit", "Unit", Line::unit),
        Field.of("price", "Price", Measure.MONEY, Line::price),
        Field.of("note", "Note", Measure.TEXT, Line::note));
  }

  private static Line line(ShoppingItem item) {
    boolean weighed = item.unit().equals("g");
    return new Line(
        new Text(item.name()),
        weighed ? new Mass(item.quantity() / GRAMS) : new Count(item.quantity()),
        weighed ? "" : item.unit(),
        item.price().isPresent() ? item.price().get() : new Text("no price given"),
        new Text(item.note()));
  }

  private static List<Line> lines(Buying sheets) {
    String rough =
        sheets.rough()
            ? "quick layout; run `curvestock plan` before you buy: it may need fewer"
            : "";
    List<Line> lines = new ArrayList<>();
    Table bought = sheets.purchase();
    for (int i = 0; i < bought.rows().size(); i++) {
      Count count = (Count) bought.at(i, "bought");
      lines.add(
          new Line(
              (Text) bought.at(i, "sheet"),
              count,
              count.number() == 1 ? "sheet" : "sheets",
              bought.at(i, "cost"),
              new Text(rough)));
    }
    Money tax = sheets.cost().onTop();
    if (!tax.equals(Money.ZERO)) {
      Text item = new Text("tax on sheets, " + sheets.cost().tax());
      lines.add(new Line(item, Text.NONE, "", tax, Text.NONE));
    }
    return lines;
  }

  /** All that has a price, the sheets with their tax. */
  Money priced() {
    Money sheets = buying.map(found -> found.cost().paid()).orElse(Money.ZERO);
    return items.stream().flatMap(item -> item.price().stream()).reduce(sheets, Money::plus);
  }

  int unpriced() {
    return (int) items.stream().filter(item -> item.price().isEmpty()).count();
  }
}
