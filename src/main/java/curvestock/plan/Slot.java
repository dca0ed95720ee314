package curvestock.plan;

import curvestock.bound.Bound;
import curvestock.bound.InflatedArea;
import curvestock.packing.Packed;
import curvestock.packing.Packer;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;

/** One piece on one kind of panel: what was found, what is proven, and what is plausible. */
final class Slot {

  /** Sheets of which the area alone allows more pieces than this hold too many for other proofs. */
  private static final int MOST_PROVEN = 16;

  /**
   * Share of a sheet that curved pieces of several shapes fill at best, the gaps counted as theirs:
   * those of different radii nest in each other and may lie closer than any of them alone. A rule
   * of thumb: common practice, no source, and not proven.
   */
  static final double FULLEST_MIX = 0.85;

  final Demand demand;
  final SheetStock sheet;
  final Packer packer;
  private final Cutting cutting;
  private Bound bound;
  private Packed best;
  private final double leastWood;
  private boolean exhausted;

  Slot(Demand demand, SheetStock sheet, Cutting cutting, Packer packer) {
    this.demand = demand;
    this.sheet = sheet;
    this.cutting = cutting;
    this.packer = packer;
    this.bound = Bound.quick(demand.piece(), sheet, cutting);
    this.best = packer.atOnce(demand.piece(), wanted());
    this.leastWood = leastWood();
  }

  Piece piece() {
    return demand.piece();
  }

  Bound bound() {
    return bound;
  }

  Packed best() {
    return best;
  }

  int found() {
    return best.layout().placements().size();
  }

  /** No more than this need be looked for. */
  int wanted() {
    return Math.min(bound.count(), demand.count());
  }

  Capacity capacity() {
    return new Capacity(piece(), sheet, found(), wanted(), bound, best.how(), exhausted);
  }

  /** A fuller layout, if it is one. */
  boolean offer(Packed packed) {
    boolean fuller = packed.layout().placements().size() > found();
    best = fuller ? packed : best;
    return fuller;
  }

  /** From now on what was found counts as the most there is. */
  void exhaust() {
    exhausted = true;
  }

  boolean isExhausted() {
    return exhausted;
  }

  /** Whether a sharper proof may be tried: by cases, for few sectors of which some were laid. */
  boolean isProvable() {
    return bound.count() >= 2
        && bound.count() <= MOST_PROVEN
        && bound.count() > found()
        && piece().shape().blank() instanceof AnnularSector;
  }

  void prove(Bound sharper) {
    bound = bound.or(sharper);
  }

  /**
   * How many the sheet could hold if its whole area took the densest lattice known for them; no
   * proof. What was found if a search has ended.
   */
  int plausible() {
    if (exhausted) {
      return found();
    }
    double sheetArea = InflatedArea.ofSheet(sheet, cutting);
    return Math.max(found(), (int) Math.min(bound.count(), Math.floor(sheetArea / leastWood)));
  }

  /** Wood that one takes at least, in the densest lattice known. */
  private double leastWood() {
    double own = InflatedArea.ofPiece(piece(), cutting);
    if (bound.count() == 0 || isConvex()) {
      return own;
    }
    boolean sector = piece().shape().blank() instanceof AnnularSector;
    return sector ? packer.leastWood(piece()) : own / FULLEST_MIX;
  }

  /** Whether it could fill a sheet, or lie in the hollows of others. */
  boolean isConvex() {
    return InflatedArea.isConvex(piece());
  }

  /** Share of its wood that the densest lattice of it alone uses, the gaps counted as used. */
  double density() {
    return InflatedArea.ofPiece(piece(), cutting) / leastWood;
  }

  /** Wood that one takes among others; next to none if it may lie in the hollows of others. */
  double woodAmongOthers(double densest) {
    double own = InflatedArea.ofPiece(piece(), cutting);
    return isConvex() ? own * 1e-6 : own / densest;
  }
}
