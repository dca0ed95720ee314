package curvestock.bench;

import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.packing.FixedSet;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Finds how small a sheet the engine can still lay a set of pieces on: the sheet shrinks by a share
 * while the search succeeds, and by half that share after a failure, down to a last share.
 */
final class Shrinking {

  private static final double FIRST_SHARE = 0.04;
  private static final double LAST_SHARE = 0.001;
  static final Cutting TOUCHING = new Cutting(Length.ZERO, Length.ZERO, Length.ZERO);

  /** What was reached: the size, the layout at it, and seconds spent. */
  record Reached(double size, Layout layout, double seconds) {}

  private final FixedSet set;
  private final DoubleFunction<SheetStock> sheet;
  private final long budget;

  /**
   * @param sheet the sheet of a given size
   * @param budget pair tests for each size
   */
  Shrinking(List<Piece> pieces, DoubleFunction<SheetStock> sheet, long budget, long seed) {
    this.set = new FixedSet(pieces, seed);
    this.sheet = sheet;
    this.budget = budget;
  }

  Reached from(double start) {
    long begun = System.nanoTime();
    double size = start;
    Optional<Layout> best = Optional.empty();
    while (best.isEmpty()) {
      best = set.layOn(sheet.apply(size), TOUCHING, List.of(), budget);
      size = best.isEmpty() ? size * 1.05 : size;
    }
    for (double share = FIRST_SHARE; share > LAST_SHARE; ) {
      double next = size * (1 - share);
      List<Layout> near = List.of(squeezed(best.get(), next / size), best.get());
      Optional<Layout> smaller = set.layOn(sheet.apply(next), TOUCHING, near, budget);
      if (smaller.isPresent()) {
        best = smaller;
        size = next;
      } else {
        share /= 2;
      }
    }
    return new Reached(size, best.get(), (System.nanoTime() - begun) / 1e9);
  }

  private static Layout squeezed(Layout layout, double share) {
    List<Placement> placements = new ArrayList<>();
    for (Placement p : layout.placements()) {
      Pose pose = new Pose(p.pose().x() * share, p.pose().y(), p.pose().rotation());
      placements.add(new Placement(p.piece(), pose));
    }
    return new Layout(layout.sheet(), layout.cutting(), placements);
  }

  static SheetStock sheet(double length, double width) {
    return SheetStock.rectangle(
        "board",
        Length.ofMillimetres(length),
        Length.ofMillimetres(width),
        Length.ofMillimetres(1),
        Money.ZERO);
  }
}
