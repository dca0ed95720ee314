package curvestock.job;

import curvestock.geometry.Box;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
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

  private SheetReader() {}

  static Optional<SheetStock> read(Field field) {
    return field
        .block(
            "name",
            "size",
            "corners",
            "thickness",
            "nominal-thickness",
            "price",
            "on-hand",
            "available",
            "grain",
            "defects")
        .flatMap(SheetReader::sheet);
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
