package curvestock.compare;

import curvestock.bound.Bound;
import curvestock.geometry.Box;
import curvestock.layout.Layout;
import curvestock.piece.Piece;
import curvestock.plan.Capacity;
import curvestock.plan.Plan;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The fullest layout found of one segment on the main sheet, and how many no layout can exceed.
 *
 * @param byPattern how many a regular pattern alone holds
 */
public record SheetFill(Layout layout, int byPattern, Bound bound) {

  /**
   * Without a search: the pattern, or the fullest layout that a plan came upon, with nothing but
   * the segments left on it.
   *
   * @param pattern of the segment on the main sheet
   */
  static SheetFill known(Plan plan, Piece segment, Layout pattern) {
    SheetStock main = pattern.sheet();
    Layout fullest =
        Stream.of(List.of(pattern), plan.purchase().instance().layouts(), plan.layouts())
            .flatMap(List::stream)
            .filter(layout -> layout.sheet().equals(main))
            .map(layout -> only(segment, layout))
            .max(Comparator.comparingInt(layout -> layout.placements().size()))
            .orElseThrow();
    Bound bound =
        plan.capacities().stream()
            .filter(each -> each.sheet().equals(main) && alike(each.piece(), segment))
            .findFirst()
            .map(Capacity::bound)
            .orElseGet(() -> Bound.quick(segment, main, pattern.cutting()));
    return new SheetFill(fullest, pattern.placements().size(), bound);
  }

  private static Layout only(Piece segment, Layout layout) {
    return new Layout(
        layout.sheet(),
        layout.cutting(),
        layout.placements().stream().filter(each -> alike(each.piece(), segment)).toList());
  }

  /** Plans may lay pieces with their holes, which packing does not look at. */
  private static boolean alike(Piece piece, Piece segment) {
    return piece.shape().blank().equals(segment.shape().blank());
  }

  public int count() {
    return layout.placements().size();
  }

  /** Whether a regular pattern is as good as anything found. */
  public boolean isPattern() {
    return byPattern == count();
  }

  /** By how much shorter the sheet could be cut and still hold this very layout. */
  public Length spareAlong() {
    Box box = layout.extent();
    return spare(layout.sheet().length(), box.width());
  }

  /** By how much narrower the sheet could be cut and still hold this very layout. */
  public Length spareAcross() {
    Box box = layout.extent();
    return spare(layout.sheet().width(), box.height());
  }

  private Length spare(Length side, double extent) {
    double usable = side.millimetres() - 2 * layout.cutting().margin().millimetres();
    return Length.ofMillimetres(Math.max(0, usable - extent));
  }
}
