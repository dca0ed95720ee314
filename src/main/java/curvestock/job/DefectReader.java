package curvestock.job;

import curvestock.geometry.Box;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import java.util.List;
import java.util.Optional;

/** Reads {@code defects:} of a sheet: knots as circles, other bad places as polygons. */
final class DefectReader {

  private static final int MOST = 100;

  private DefectReader() {}

  /**
   * @param wood the sheet's outline in the frame in which the defects are given, if it could be
   *     read; a defect that lies off it is noted
   */
  static Optional<List<Outline>> readAll(Field list, Optional<Outline> wood) {
    return list.each("defects", 1, MOST, field -> read(field, wood));
  }

  private static Optional<Outline> read(Field field, Optional<Outline> wood) {
    Optional<Outline> defect =
        field
            .block("circle", "corners")
            .flatMap(block -> block.needOneOf("circle", "corners"))
            .flatMap(DefectReader::outline);
    boolean off =
        defect.isPresent() && wood.isPresent() && apart(defect.get().box(), wood.get().box());
    if (off) {
      field.note(
          "lies outside the sheet; measure from the same corner as the sheet, its longer side along x");
      return Optional.empty();
    }
    return defect;
  }

  private static Optional<Outline> outline(Field field) {
    return field.key().equals("circle")
        ? field.block("at", "radius").flatMap(DefectReader::circle)
        : CornersReader.read(field).map(SheetStock::polygonOutline);
  }

  private static Optional<Outline> circle(Block block) {
    Optional<Point> at = block.need("at", "at: [12 in, 3 in]").flatMap(Field::point);
    Optional<Length> radius = block.need("radius", "radius: 1 in").flatMap(Field::size);
    return block.build(
        () -> Outline.of(Loop.circle(at.orElseThrow(), radius.orElseThrow().millimetres())));
  }

  private static boolean apart(Box a, Box b) {
    return a.maxX() <= b.minX()
        || b.maxX() <= a.minX()
        || a.maxY() <= b.minY()
        || b.maxY() <= a.minY();
  }
}
