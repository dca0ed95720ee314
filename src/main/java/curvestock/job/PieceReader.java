package curvestock.job;

import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.FreeShape;
import curvestock.piece.Grain;
import curvestock.piece.Piece;
import curvestock.piece.Shape;
import curvestock.piece.Strip;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads {@code pieces:}, a list of pieces that are wanted beside or instead of a helix. */
final class PieceReader {

  private static final int MOST_KINDS = 500;
  private static final int MOST_OF_ONE = 100_000;
  private static final int LONGEST_NAME = 60;

  /** Ids that pieces of a helix have. */
  private static final Set<String> TAKEN = Set.of("S", "L");

  private final List<SheetStock> sheets;
  private final LengthStyle style;

  private PieceReader(List<SheetStock> sheets, LengthStyle style) {
    this.sheets = sheets;
    this.style = style;
  }

  /**
   * @param sheets that pieces with a thickness must find one among; empty if unreadable
   * @param style of lengths in messages, if it could be read
   */
  static Optional<List<Demand>> readAll(
      Field list, List<SheetStock> sheets, Optional<LengthStyle> style) {
    return new PieceReader(sheets, style.orElse(LengthStyle.METRIC)).readAll(list);
  }

  private Optional<List<Demand>> readAll(Field list) {
    Optional<List<Field>> fields = list.items("pieces", 1, MOST_KINDS);
    List<Demand> demands = new ArrayList<>();
    List<String> ids = ids(fields.map(List::size).orElse(0));
    List<Field> found = fields.orElse(List.of());
    for (int i = 0; i < found.size(); i++) {
      read(found.get(i), ids.get(i)).ifPresent(demands::add);
    }
    return fields.isPresent() && demands.size() == found.size()
        ? Optional.of(demands)
        : Optional.empty();
  }

  /** A, B, C ... Z, AA, AB ..., but for those of the helix. */
  static List<String> ids(int count) {
    return letters(count + TAKEN.size()).stream()
        .filter(id -> !TAKEN.contains(id))
        .limit(count)
        .toList();
  }

  /** A, B, C ... Z, AA, AB ... */
  static List<String> letters(int count) {
    List<String> letters = new ArrayList<>();
    for (int number = 1; number <= count; number++) {
      StringBuilder id = new StringBuilder();
      for (int rest = number; rest > 0; rest = (rest - 1) / 26) {
        id.insert(0, (char) ('A' + (rest - 1) % 26));
      }
      letters.add(id.toString());
    }
    return letters;
  }

  private Optional<Demand> read(Field field, String id) {
    return field
        .block("name", "count", "arc", "strip", "polygon", "grain", "thickness")
        .flatMap(block -> demand(block, id));
  }

  private Optional<Demand> demand(Block block, String id) {
    Optional<String> name =
        block.need("name", "name: splice plate").flatMap(field -> field.line(LONGEST_NAME));
    Optional<Integer> count =
        block.need("count", "count: 1").flatMap(field -> field.whole(1, MOST_OF_ONE));
    Optional<Shape> shape = block.needOneOf("arc", "strip", "polygon").flatMap(PieceReader::shape);
    Optional<Grain> grain = block.find("grain").flatMap(PieceReader::grain);
    Optional<Length> thickness = block.find("thickness").flatMap(this::thickness);
    return block.build(
        () ->
            new Demand(
                new Piece(
                    id,
                    name.orElseThrow(),
                    shape.orElseThrow(),
                    grain.orElse(Grain.FREE),
                    thickness),
                count.orElseThrow()));
  }

  private Optional<Length> thickness(Field field) {
    Optional<Length> thickness = Lengths.THICKNESS.read(field);
    if (thickness.isPresent() && !sheets.isEmpty()) {
      Thicknesses.noteIfNone(field, thickness.get(), sheets, style, "or write one of these");
    }
    return thickness;
  }

  private static Optional<Shape> shape(Field field) {
    return switch (field.key()) {
      case "arc" -> field.block("radius", "width", "angle").flatMap(PieceReader::arc);
      case "strip" -> field.block("length", "width").flatMap(PieceReader::strip);
      default -> field.block("corners").flatMap(PieceReader::polygon);
    };
  }

  private static Optional<Shape> arc(Block block) {
    Optional<Length> radius = block.need("radius", "radius: 60 in").flatMap(Field::size);
    Optional<Length> width = RoadbedWidth.read(block, radius);
    Optional<Angle> angle =
        block.need("angle", "angle: 30").flatMap(field -> field.angle(0.1, 360));
    return block.build(
        () -> new AnnularSector(radius.orElseThrow(), width.orElseThrow(), angle.orElseThrow()));
  }

  private static Optional<Shape> strip(Block block) {
    Optional<Length> length = block.need("length", "length: 6 in").flatMap(Field::size);
    Optional<Length> width = block.need("width", "width: 4 in").flatMap(Field::size);
    return block.build(() -> new Strip(length.orElseThrow(), width.orElseThrow()));
  }

  private static Optional<Shape> polygon(Block block) {
    return block
        .need("corners", "corners: [[0 in, 0 in], [6 in, 0 in], [0 in, 4 in]]")
        .flatMap(CornersReader::read)
        .flatMap(corners -> block.build(() -> FreeShape.polygon(corners)));
  }

  private static Optional<Grain> grain(Field field) {
    if (field.isText()) {
      return field.choice(Map.of("free", Grain.FREE), List.of("free"));
    }
    return field.block("direction", "within").flatMap(PieceReader::grain);
  }

  private static Optional<Grain> grain(Block block) {
    Optional<Angle> direction =
        block.need("direction", "direction: 0").flatMap(field -> field.angle(-180, 180));
    Optional<Angle> within =
        block.need("within", "within: 15").flatMap(field -> field.angle(0, 90));
    return block.build(() -> new Grain(direction.orElseThrow(), within.orElseThrow()));
  }
}
