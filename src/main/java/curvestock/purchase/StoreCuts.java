package curvestock.purchase;

import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/**
 * Straight cuts that the store makes, so that a sheet can be carried: priced by the cut, and only
 * as exact as such a saw is.
 *
 * <p>A panel is planned at the least size it may turn out. The saw is set to that size and the
 * tolerance more, so a panel is up to two tolerances larger than planned; what is left for the last
 * one allows for that. Panels must be carried at their largest.
 *
 * @param price of one cut
 * @param kerf width of the store's saw cut
 * @param tolerance how far a panel may be off, either way
 * @param carryLength the largest panel that can be carried: one side, and so the other
 */
public record StoreCuts(
    Money price, Length kerf, Length tolerance, Length carryLength, Length carryWidth) {

  /** More panels in a row than this are no way to buy a sheet. */
  private static final int MOST = 6;

  /** 48 in and 4 ft are the same length, but for rounding; in millimetres. */
  private static final double ROUNDING = 1e-6;

  /**
   * @throws IllegalArgumentException if a price or length is negative, or a side to carry is zero
   */
  public StoreCuts {
    if (price.minorUnits() < 0) {
      throw new IllegalArgumentException(
          "price of a cut must not be negative, but was " + price.plain());
    }
    kerf.requireNotNegative("kerf of the store's saw");
    tolerance.requireNotNegative("tolerance of the store's cuts");
    carryLength.requirePositive("largest panel to carry");
    carryWidth.requirePositive("largest panel to carry");
  }

  /** The same cuts for panels that must also fit a rectangle of these sides, either way round. */
  public StoreCuts within(Length longer, Length shorter) {
    boolean turned = carryLength.compareTo(carryWidth) < 0;
    Length length = turned ? carryWidth : carryLength;
    Length width = turned ? carryLength : carryWidth;
    return new StoreCuts(
        price,
        kerf,
        tolerance,
        length.compareTo(longer) < 0 ? length : longer,
        width.compareTo(shorter) < 0 ? width : shorter);
  }

  /** Whether a rectangle can be carried, turned as it may be. */
  public boolean canCarry(Length a, Length b) {
    return fits(a, b) || fits(b, a);
  }

  private boolean fits(Length a, Length b) {
    return isWithin(a, carryLength) && isWithin(b, carryWidth);
  }

  private static boolean isWithin(Length side, Length limit) {
    return side.minus(limit).millimetres() <= ROUNDING;
  }

  /**
   * The ways in which a rectangular sheet can be brought home: whole if it can be carried, else cut
   * across, along, or both, into equal panels or a largest one and the rest; the few that waste
   * least. Empty if at most {@value #MOST} panels each way are still too large.
   */
  public List<Breakdown> breakdowns(SheetStock sheet) {
    if (canCarry(sheet.length(), sheet.width())) {
      return List.of(Breakdown.whole(sheet));
    }
    Ripping ripping = new Ripping(sheet);
    int across = least(n -> ripping.carriesEqual(n, 1));
    int along = least(n -> ripping.carriesEqual(1, n));
    // Many small panels where few large ones would do only waste wood.
    if (across <= Math.min(MOST, along + 1)) {
      ripping.addEqual(across, 1);
    }
    if (along <= Math.min(MOST, across + 1)) {
      ripping.addEqual(1, along);
    }
    if (across == 2) {
      ripping.addLargestAndRest(true);
    }
    if (along == 2) {
      ripping.addLargestAndRest(false);
    }
    if (ripping.ways.isEmpty()) {
      ripping.addGrid();
    }
    return List.copyOf(ripping.ways);
  }

  private static int least(IntFunction<Boolean> carries) {
    int n = 1;
    while (n <= MOST && !carries.apply(n)) {
      n++;
    }
    return n;
  }

  /** Collects the ways to rip one sheet. */
  private final class Ripping {

    private final SheetStock sheet;
    private final List<Breakdown> ways = new ArrayList<>();
    private char letter = 'A';

    Ripping(SheetStock sheet) {
      this.sheet = sheet;
    }

    /** Least size of each of {@code n} equal panels in a row. */
    private Length equal(Length side, int n) {
      Length lost = kerf.plus(tolerance.times(2)).times(n - 1.0);
      return side.minus(lost).times(1.0 / n);
    }

    private Length largest(Length planned, int n) {
      return n == 1 ? planned : planned.plus(tolerance.times(2));
    }

    boolean carriesEqual(int across, int along) {
      Length x = equal(sheet.length(), across);
      Length y = equal(sheet.width(), along);
      return x.compareTo(Length.ZERO) > 0
          && y.compareTo(Length.ZERO) > 0
          && canCarry(largest(x, across), largest(y, along));
    }

    void addEqual(int across, int along) {
      Panel panel =
          panel(equal(sheet.length(), across), equal(sheet.width(), along), across * along);
      add(List.of(panel));
    }

    void addGrid() {
      int best = Integer.MAX_VALUE;
      int[] grid = {0, 0};
      for (int across = 2; across <= MOST; across++) {
        for (int along = 2; along <= MOST; along++) {
          if (across * along < best && carriesEqual(across, along)) {
            best = across * along;
            grid = new int[] {across, along};
          }
        }
      }
      if (grid[0] > 0) {
        addEqual(grid[0], grid[1]);
      }
    }

    /** The largest panel that can be carried, and what is left of the sheet. */
    void addLargestAndRest(boolean across) {
      Length side = across ? sheet.length() : sheet.width();
      Length other = across ? sheet.width() : sheet.length();
      Length most = Length.ZERO;
      if (isWithin(other, carryWidth)) {
        most = carryLength;
      }
      if (isWithin(other, carryLength) && carryWidth.compareTo(most) > 0) {
        most = carryWidth;
      }
      Length large = most.minus(tolerance.times(2));
      Length rest = side.minus(large).minus(kerf).minus(tolerance.times(2));
      boolean unequal = large.minus(rest).compareTo(kerf.plus(tolerance)) > 0;
      if (rest.compareTo(Length.ZERO) > 0 && unequal) {
        add(
            across
                ? List.of(panel(large, other, 1), panel(rest, other, 1))
                : List.of(panel(other, large, 1), panel(other, rest, 1)));
      }
    }

    private Panel panel(Length x, Length y, int perSheet) {
      return new Panel(
          sheet.part(sheet.name() + ", panel " + letter++, x, y, Money.ZERO), perSheet);
    }

    private void add(List<Panel> panels) {
      int count = panels.stream().mapToInt(Panel::perSheet).sum();
      ways.add(new Breakdown(panels, count - 1, price.times(count - 1L)));
    }
  }
}
