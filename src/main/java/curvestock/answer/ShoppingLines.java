package curvestock.answer;

import curvestock.helix.build.ShoppingItem;
import curvestock.units.Count;
import curvestock.units.Mass;
import curvestock.units.Money;
import curvestock.units.Quantity;
import curvestock.units.Text;
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

  Table table() {
    Table.Rows rows =
        new Table.Rows("shopping", "What to buy")
            .text("item", "Item")
            .count("quantity", "Quantity")
            .text("unit", "Unit")
            .money("price", "Price")
            .text("note", "Note");
    buying.ifPresent(sheets -> sheets(rows, sheets));
    for (ShoppingItem item : items) {
      boolean weighed = item.unit().equals("g");
      rows.add(
          new Text(item.name()),
          weighed ? new Mass(item.quantity() / GRAMS) : new Count(item.quantity()),
          new Text(weighed ? "" : item.quantity() == 1 ? "piece" : item.unit()),
          price(item),
          new Text(item.note()));
    }
    return rows.done();
  }

  private static Quantity price(ShoppingItem item) {
    return item.price().isPresent() ? item.price().get() : new Text("no price given");
  }

  private static void sheets(Table.Rows rows, Buying sheets) {
    Table lines = sheets.purchase();
    for (int i = 0; i < lines.rows().size(); i++) {
      Count bought = (Count) lines.at(i, "bought");
      rows.add(
          lines.at(i, "sheet"),
          bought,
          new Text(bought.number() == 1 ? "sheet" : "sheets"),
          lines.at(i, "cost"),
          new Text(sheets.rough() ? "quick layout; `plan` may need fewer" : ""));
    }
    Money tax = sheets.cost().onTop();
    if (!tax.equals(Money.ZERO)) {
      rows.add(
          new Text("tax on sheets, " + sheets.cost().tax()), Text.NONE, Text.NONE, tax, Text.NONE);
    }
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
