package curvestock.plan;

import curvestock.geometry.Box;
import curvestock.geometry.Point;
import curvestock.layout.Layout;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Optional;

/**
 * The clean rectangle that one straight cut beyond the last piece leaves of a sheet: over its full
 * width beside all pieces, or over its full length above them, whichever is larger.
 *
 * @param where in the sheet's frame, clear of the cut; millimetres
 */
public record Remnant(SheetStock sheet, Box where) {

  /** Narrower strips than 4 in are not worth a place in the rack; common practice, no source. */
  public static final Length KEEP = Length.ofInches(4);

  /**
   * The remnant of a layout; empty if the sheet is no rectangle, or what is left is narrower than
   * {@link #KEEP} or holds a defect.
   */
  public static Optional<Remnant> of(Layout layout) {
    SheetStock sheet = layout.sheet();
    if (!sheet.isRectangle()) {
      return Optional.empty();
    }
    Box wood = sheet.outline().box();
    Point reach = layout.reach();
    double gap = layout.cutting().spacing().millimetres();
    Box beside =
        new Box(Math.min(reach.x() + gap, wood.maxX()), wood.minY(), wood.maxX(), wood.maxY());
    Box above =
        new Box(wood.minX(), Math.min(reach.y() + gap, wood.maxY()), wood.maxX(), wood.maxY());
    Box larger = area(beside) >= area(above) ? beside : above;
    boolean kept = Math.min(larger.width(), larger.height()) >= KEEP.millimetres();
    boolean sound = sheet.defects().stream().noneMatch(defect -> defect.box().overlaps(larger));
    return kept && sound ? Optional.of(new Remnant(sheet, larger)) : Optional.empty();
  }

  private static double area(Box box) {
    return box.width() * box.height();
  }

  /** Square millimetres. */
  public double area() {
    return area(where);
  }

  /** The remnant as a sheet on hand. */
  public SheetStock stock(String name) {
    return sheet.part(
        name,
        Length.ofMillimetres(where.width()),
        Length.ofMillimetres(where.height()),
        Money.ZERO);
  }
}
