package curvestock.compare;

import curvestock.bound.Bound;
import curvestock.geometry.Box;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.units.Length;

/**
 * The fullest layout found of one segment on the main sheet, and how many no layout can exceed.
 *
 * @param byPattern how many a regular pattern alone holds
 */
public record SheetFill(Layout layout, int byPattern, Bound bound) {

  public int count() {
    return layout.placements().size();
  }

  /** Whether a regular pattern is as good as anything found. */
  public boolean isPattern() {
    return byPattern == count();
  }

  /** By how much shorter the sheet could be cut and still hold this very layout. */
  public Length spareAlong() {
    Box box = box();
    return spare(layout.sheet().length(), box.width());
  }

  /** By how much narrower the sheet could be cut and still hold this very layout. */
  public Length spareAcross() {
    Box box = box();
    return spare(layout.sheet().width(), box.height());
  }

  private Length spare(Length side, double extent) {
    double usable = side.millimetres() - 2 * layout.cutting().margin().millimetres();
    return Length.ofMillimetres(Math.max(0, usable - extent));
  }

  private Box box() {
    double minX = Double.POSITIVE_INFINITY;
    double minY = Double.POSITIVE_INFINITY;
    double maxX = Double.NEGATIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    for (Placement placement : layout.placements()) {
      Box box = placement.outline().box();
      minX = Math.min(minX, box.minX());
      minY = Math.min(minY, box.minY());
      maxX = Math.max(maxX, box.maxX());
      maxY = Math.max(maxY, box.maxY());
    }
    return new Box(minX, minY, maxX, maxY);
  }
}
