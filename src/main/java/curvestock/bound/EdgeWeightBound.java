package curvestock.bound;

import curvestock.geometry.Box;
import curvestock.piece.AnnularSector;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The bound by edge waste for one sector: as by area, but wood that sectors cannot fill, along the
 * sheet's edges and in its corners, is given less weight than the rest.
 *
 * <p><b>Claim.</b> Let w(x, y) = f(x) + g(y) with f, g ≥ 0 be a weight for every square millimetre
 * of the sheet, of which every placement of the widened piece covers at least m. Then no layout
 * holds more than w(sheet) / m: widened pieces share no wood, so their weights add up to no more
 * than the sheet's.
 *
 * <p><b>Why f + g.</b> What a placement (x, y, t) covers is F(x, t) + G(y, t), F the integral of f
 * over the piece, G that of g. So for each direction t the least over all places is the least F
 * plus the least G, each over one line of places: two small searches in place of one over x, y and
 * t. The sheet's mirror images leave directions from 0 to 90° to be looked at, if f and g are
 * mirrored too.
 *
 * <p><b>Every direction, every place.</b> Directions are split into cells. Turning about the centre
 * of its arcs slides a sector along itself, so in every direction of a cell it covers the core, the
 * sector shortened at both ends by half the cell ({@link SectorProfile}), and its centre keeps at
 * least the core's distance from the edges. Along a side, F is worked out at small steps by closed
 * forms and bounded between them by its slopes ({@link AxisProfile#least}).
 *
 * <p>The weights come from a linear program ({@link CoveringProgram}) that looks at some
 * directions; whatever the weights, the bound is right, since m is then worked out over all cells,
 * and lowered by far more than rounding can matter. Rings count as discs: two rings of one size
 * without a common point lie wholly outside each other.
 *
 * <p>The weighing is linear-programming duality, the standard way to prove a packing; the split
 * into two sides is our own. Sheets that are not rectangles count as their bounding rectangle,
 * defects as wood: that can only raise the bound.
 */
final class EdgeWeightBound {

  /** The long side has at most twice as many bins as the short one. */
  private static final int LONG = 2;

  /** Cells that the linear program looks at, and how often it is shown the worst of them. */
  private static final int LOOKED_AT = 60;

  private static final int PASSES = 40;

  private static final int ROUNDS = 6;

  /** What a row may miss while the weights are bettered. */
  private static final double SHORT = 3e-4;

  /** Far more than double precision loses of an area. */
  private static final double ROUNDING = 1e-7;

  private final AnnularSector sector;
  private final double gap;
  private final double[] size = new double[2];
  private final int[] bins = new int[2];

  /** Areas are counted in this one: about the piece's. */
  private final double unit;

  private final int directions;
  private final AxisProfile[][] cells;
  private final CoveringProgram program;
  private final double[] costs;

  /** How closely is looked, at what price. */
  enum Grain {
    /** Some tenths of a second. */
    COARSE(18, 250),
    /** Some seconds. */
    FINE(22, 800);

    /** Along half the short side of the sheet. */
    private final int bins;

    /**
     * One part in so many of a quarter turn may be lost by the splitting of directions; time and
     * memory grow with it.
     */
    private final int loss;

    Grain(int bins, int loss) {
      this.bins = bins;
      this.loss = loss;
    }
  }

  EdgeWeightBound(AnnularSector sector, SheetStock sheet, Cutting cutting, Grain grain) {
    this.sector = sector;
    gap = cutting.spacing().millimetres() / 2;
    double around = 2 * (gap - cutting.margin().millimetres());
    size[0] = sheet.length().millimetres() + around;
    size[1] = sheet.width().millimetres() + around;
    for (int side = 0; side < 2; side++) {
      double share = size[side] / Math.min(size[0], size[1]);
      bins[side] = 2 * (int) Math.round(grain.bins * Math.min(LONG, share));
    }
    costs = new double[(bins[0] + bins[1]) / 2];
    for (int b = 0; b < costs.length; b++) {
      costs[b] = 2 * size[0] * size[1] / bins[b < bins[0] / 2 ? 0 : 1];
    }
    program = new CoveringProgram(costs);
    unit = sector.area();
    double half = sector.sweep().radians() / 2;
    directions =
        sector.isRing()
            ? 1
            : (int) Math.min(2 * grain.loss, Math.ceil(Math.PI / 4 / half * grain.loss));
    cells = new AxisProfile[directions][];
  }

  /**
   * At most so many pieces lie on the sheet; infinite if less than the known bound is not proven.
   * Slivers, of a sweep of a few cells of directions, are not looked at.
   *
   * @param known a bound that is known: if this method cannot better it, it soon gives up
   */
  double most(int known) {
    if (!sector.isRing() && sector.sweep().radians() / 2 < Math.PI / directions) {
      return Double.POSITIVE_INFINITY;
    }
    List<AxisProfile[]> looked = new ArrayList<>();
    for (int k = 0; k < directions; k += Math.max(1, directions / LOOKED_AT)) {
      look(k, looked);
    }
    double best = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      better(looked);
      double below = Math.min(known, Math.floor(best));
      // What the program thinks possible is no proof, but more is not to be had.
      if (Math.floor(total(program.weights())) >= below) {
        break;
      }
      best = Math.min(best, checked(program.weights(), below, looked));
    }
    return best;
  }

  private void look(int k, List<AxisProfile[]> looked) {
    AxisProfile[] cell = cell(k);
    if (cell.length > 0) {
      looked.add(cell);
    }
  }

  /** What is covered along either side; nothing if the piece does not fit in these directions. */
  private AxisProfile[] cell(int k) {
    if (cells[k] == null) {
      cells[k] = sector.isRing() ? disc() : arc(k);
    }
    return cells[k];
  }

  private AxisProfile[] disc() {
    double radius = sector.outerRadius().millimetres();
    Box box = ThickArc.coreBox(sector, 0, 0);
    return profiles(SectorProfile.disc(radius + gap), box, radius + gap);
  }

  private AxisProfile[] arc(int k) {
    double range = Math.PI / 4 / directions;
    double direction = (2 * k + 1) * range;
    double safe = range * (1 + ROUNDING);
    double[] radii = {sector.innerRadius().millimetres(), sector.outerRadius().millimetres()};
    double half = sector.sweep().radians() / 2;
    return profiles(
        SectorProfile.widened(radii, gap, half, direction, safe),
        ThickArc.coreBox(sector, direction, safe),
        radii[1] + gap);
  }

  private AxisProfile[] profiles(SectorProfile alongX, Box core, double reach) {
    double slack = ThickArc.ROUNDING;
    double[] x = {gap - core.minX() - slack, size[0] - gap - core.maxX() + slack};
    double[] y = {gap - core.minY() - slack, size[1] - gap - core.maxY() + slack};
    if (x[0] > x[1] || y[0] > y[1]) {
      return new AxisProfile[0];
    }
    return new AxisProfile[] {
      new AxisProfile(alongX, reach, size[0], bins[0], x),
      new AxisProfile(alongX.mirrored(), reach, size[1], bins[1], y)
    };
  }

  private double total(double[] weights) {
    double total = 0;
    for (int b = 0; b < weights.length; b++) {
      total += costs[b] / unit * Math.max(0, weights[b]);
    }
    return total;
  }

  /** Betters the weights until every cell looked at covers nearly 1, or the passes are spent. */
  private void better(List<AxisProfile[]> looked) {
    int half = bins[0] / 2;
    for (int pass = 0; pass < PASSES; pass++) {
      double[] weights = program.weights();
      List<double[]> rows = new ArrayList<>();
      for (AxisProfile[] cell : looked) {
        int x = cell[0].worst(weights, 0);
        int y = cell[1].worst(weights, half);
        double covered = cell[0].covered(x, weights, 0) + cell[1].covered(y, weights, half);
        if (covered / unit < 1 - SHORT) {
          double[] row = new double[weights.length];
          cell[0].row(x, 1 / unit, row, 0);
          cell[1].row(y, 1 / unit, row, half);
          rows.add(row);
        }
      }
      if (rows.isEmpty() || !program.cover(rows)) {
        return;
      }
    }
  }

  /**
   * The bound by these weights over all cells, or infinity if it is not below the one wanted; the
   * worst cell that was seen will be looked at from now on.
   */
  private double checked(double[] found, double below, List<AxisProfile[]> looked) {
    double[] weights = found.clone();
    Arrays.setAll(weights, b -> Math.max(0, found[b]));
    double total = total(weights) * (1 + ROUNDING);
    double least = Double.POSITIVE_INFINITY;
    AxisProfile[] worst = null;
    for (int k = 0; k < directions; k++) {
      AxisProfile[] cell = cell(k);
      if (cell.length > 0) {
        double covered = cell[0].least(weights, 0) + cell[1].least(weights, bins[0] / 2);
        double sure = (covered / unit - ROUNDING) * (1 - ROUNDING);
        if (sure < least) {
          least = sure;
          worst = cell;
        }
        if (least <= 0 || total / least >= below) {
          looked.add(worst);
          return Double.POSITIVE_INFINITY;
        }
      }
    }
    looked.add(worst);
    return total / least;
  }
}
