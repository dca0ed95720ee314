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
import java.util.stream.IntStream;

/**
 * Finds how small a sheet the engine can still lay a set of pieces on: the sheet shrinks by a share
 * while the search succeeds, and by half that share after a failure, down to a last share.
 */
final class Shrinking {

  private static final double FIRST_SHARE = 0.04;
  private static final double LAST_SHARE = 0.0002;
  private static final int SEEDS = 3;

  /** So little gap that it does not count, and enough for the exact clearance to judge by. */
  private static final Cutting ALL_BUT_TOUCHING =
      Cutting.leaving(Length.ofMillimetres(0.02), Length.ZERO, Length.ZERO);

  /**
   * What was reached.
   *
   * @param size of the smallest sheet, as the caller counts sizes
   * @param wrong how many layouts the search took for solved and the second judgement did not
   * @param seconds of processor time, of one thread
   */
  record Reached(double size, int wrong, double seconds) {}

  private final List<FixedSet> sets;
  private final DoubleFunction<SheetStock> sheet;
  private final long budget;
  private int wrong;

  /**
   * @param sheet the sheet of a given size
   * @param budget pair tests for each size
   */
  Shrinking(List<Piece> pieces, DoubleFunction<SheetStock> sheet, long budget, long seed) {
    this.sets = IntStream.range(0, SEEDS).mapToObj(k -> new FixedSet(pieces, seed + k)).toList();
    this.sheet = sheet;
    this.budget = budget;
  }

  Reached from(double start) {
    double begun = ProcessorTime.seconds();
    double size = start;
    Optional<Layout> best = Optional.empty();
    while (best.isEmpty()) {
      best = lay(size, List.of());
      size = best.isEmpty() ? size * 1.05 : size;
    }
    for (double share = FIRST_SHARE; share > LAST_SHARE; ) {
      double next = size * (1 - share);
      List<Layout> near = List.of(squeezed(best.get(), next / size), best.get());
      Optional<Layout> smaller = lay(next, near);
      if (smaller.isPresent()) {
        best = smaller;
        size = next;
      } else {
        share /= 2;
      }
    }
    return new Reached(size, wrong, ProcessorTime.seconds() - begun);
  }

  /** The first layout of a few seeds that also passes the second judgement. */
  private Optional<Layout> lay(double size, List<Layout> near) {
    for (FixedSet set : sets) {
      Optional<Layout> found = set.layOn(sheet.apply(size), ALL_BUT_TOUCHING, near, budget);
      Optional<String> fault = found.flatMap(LayoutJudge::fault);
      if (found.isPresent() && fault.isEmpty()) {
        return found;
      }
      if (fault.isPresent()) {
        wrong++;
        System.err.println("thrown out: " + fault.get());
      }
    }
    return Optional.empty();
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
