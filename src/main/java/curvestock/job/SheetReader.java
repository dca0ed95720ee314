package curvestock.job;

import curvestock.geometry.Box;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.purchase.PriceBreak;
import curvestock.purchase.Product;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Reads one entry of {@code sheets:}. A sheet given by its size lies with its longer side along x;
 * a remnant given by its corners keeps its direction and is moved so that its lower left is at the
 * origin, its defects with it.
 */
final class SheetReader {

  private static final int LONGEST_NAME = 60;
  private static final int MOST_AVAILABLE = 100_000;
  private static final int MOST_BREAKS = 20;

  private static final List<String> SELLERS_TERMS =
      List.of("price-breaks", "minimum-buy", "half-sheet", "quarter-sheet");

  /** What sawing a sheet in halves takes from it; common practice, no source. */
  private static final Length SAW = Length.ofInches(0.125);

  private SheetReader() {}

  /**
   * One entry.
   *
   * @param stocks the sheet, and its half and quarter if they are sold
   * @param terms of the sheet itself
   */
  record Offer(List<SheetStock> stocks, SheetTerms terms) {
    SheetStock sheet() {
      return stocks.get(0);
    }
  }

  static Optional<Offer> read(Field field) {
    return field
        .block(
            "name",
            "size",
            "corners",
            "thickness",
            "nominal-thickness",
            "price",
            "price-breaks",
            "minimum-buy",
            "half-sheet",
            "quarter-sheet",
            "tolerance",
            "on-hand",
            "available",
            "grain",
            "defects")
        .flatMap(SheetReader::offer);
  }

  private static Optional<Offer> offer(Block block) {
    Optional<SheetStock> sheet = sheet(block);
    boolean onHand = block.find("on-hand").map(Field::isTrue).orElse(false);
    Optional<List<PriceBreak>> breaks =
        block
            .find("price-breaks")
            .flatMap(field -> field.each("price breaks", 1, MOST_BREAKS, SheetReader::priceBreak));
    Optional<Integer> minimum =
        block.find("minimum-buy").flatMap(field -> field.whole(1, MOST_AVAILABLE));
    Optional<Money> half = block.find("half-sheet").flatMap(Field::price);
    Optional<Money> quarter = block.find("quarter-sheet").flatMap(Field::price);
    Optional<Length> tolerance = block.find("tolerance").flatMap(Lengths.KERF::read);
    requireSoldWhole(block, onHand);
    return block.build(
        () -> {
          SheetStock whole = sheet.orElseThrow();
          SheetTerms terms =
              new SheetTerms(minimum.orElse(1), breaks.orElse(List.of()), onHand, tolerance);
          // Refuses terms that do not fit together.
          new Product(whole, terms.minimumBuy(), terms.breaks());
          List<SheetStock> stocks = new ArrayList<>(List.of(whole));
          half.ifPresent(price -> stocks.add(part(whole, "half", 1, price)));
          quarter.ifPresent(price -> stocks.add(part(whole, "quarter", 2, price)));
          return new Offer(stocks, terms);
        });
  }

  private static Optional<PriceBreak> priceBreak(Field field) {
    return field
        .block("from", "price")
        .flatMap(
            block -> {
              Optional<Integer> from =
                  block.need("from", "from: 5").flatMap(f -> f.whole(2, MOST_AVAILABLE));
              Optional<Money> price = block.need("price", "price: 45.00").flatMap(Field::price);
              return block.build(() -> new PriceBreak(from.orElseThrow(), price.orElseThrow()));
            });
  }

  /** Terms of a seller make no sense for wood that is at home, nor halves of an odd shape. */
  private static void requireSoldWhole(Block block, boolean onHand) {
    for (String key : SELLERS_TERMS) {
      Optional<Field> field = block.find(key);
      if (onHand) {
        field.ifPresent(
            given -> given.note("is a seller's term and has no meaning for a sheet on hand"));
      }
    }
    for (String key : List.of("half-sheet", "quarter-sheet")) {
      if (block.find("corners").isPresent() || block.find("defects").isPresent()) {
        block
            .find(key)
            .ifPresent(
                given ->
                    given.note(
                        "is for a sheet given by its size, without defects; list the part as a"
                            + " sheet of its own"));
      }
    }
  }

  /** A half is sawn across the longer side, a quarter is a half sawn once more along. */
  private static SheetStock part(SheetStock whole, String name, int cuts, Money price) {
    Length length = whole.length().minus(SAW).times(0.5);
    Length width = cuts == 1 ? whole.width() : whole.width().minus(SAW).times(0.5);
    return whole.part(whole.name() + ", " + name, length, width, price);
  }

  private static Optional<SheetStock> sheet(Block block) {
    Optional<String> name =
        block.need("name", "name: birch plywood").flatMap(field -> field.line(LONGEST_NAME));
    Optional<Field> form = block.needOneOf("size", "corners");
    Optional<Outline> given = form.flatMap(SheetReader::outline);
    Optional<Length> thickness =
        block.need("thickness", "thickness: 1/2 in").flatMap(Lengths.THICKNESS::read);
    Optional<Length> nominal = block.find("nominal-thickness").flatMap(Lengths.THICKNESS::read);
    boolean onHand = block.find("on-hand").flatMap(Field::flag).orElse(false);
    Optional<Money> price = price(block, onHand);
    Optional<Integer> available =
        block.find("available").flatMap(field -> field.whole(0, MOST_AVAILABLE));
    Optional<Boolean> along =
        block
            .find("grain")
            .flatMap(
                field ->
                    field.choice(
                        Map.of("along", true, "across", false), List.of("along", "across")));
    Optional<List<Outline>> defects =
        block.find("defects").flatMap(field -> DefectReader.readAll(field, given));
    boolean single = onHand || form.map(field -> field.key().equals("corners")).orElse(false);
    return block.build(
        () -> {
          Outline wood = given.orElseThrow();
          Pose home = new Pose(-wood.box().minX(), -wood.box().minY(), 0);
          return new SheetStock(
              name.orElseThrow(),
              wood.at(home),
              defects.orElse(List.of()).stream().map(defect -> defect.at(home)).toList(),
              thickness.orElseThrow(),
              nominal.orElse(thickness.orElseThrow()),
              price.orElseThrow(),
              available
                  .map(OptionalInt::of)
                  .orElse(single ? OptionalInt.of(1) : OptionalInt.empty()),
              grain(wood.box(), along.orElse(true)));
        });
  }

  private static Optional<Outline> outline(Field field) {
    return field.key().equals("size")
        ? SheetSize.read(field)
        : CornersReader.read(field).map(SheetStock::polygonOutline);
  }

  private static Optional<Money> price(Block block, boolean onHand) {
    Optional<Field> field =
        onHand
            ? block.find("price")
            : block.need("price", "price: 50.00` for what is bought, or `on-hand: true");
    return field.isEmpty() && onHand ? Optional.of(Money.ZERO) : field.flatMap(Field::price);
  }

  /** The direction of the longer side, or across it; a square's is x. */
  private static Angle grain(Box box, boolean along) {
    boolean longerIsX = box.width() >= box.height();
    return Angle.ofDegrees(longerIsX == along ? 0 : 90);
  }
}
