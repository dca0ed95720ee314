package curvestock.compare;

import curvestock.helix.SegmentPlan;
import curvestock.helix.standard.WoodDensity;
import curvestock.packing.Effort;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.plan.Plan;
import curvestock.purchase.CostBound;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;

/**
 * One choice of segment angle with a whole plan behind it. The pieces counted are those of the
 * helix; sheets and their cost are those of the whole job.
 *
 * @param segments the helix in these segments
 * @param plan the whole job in these segments
 * @param fill the fullest layout found of the segment on the main sheet
 * @param carried whether the largest piece passes the opening that the user states; true without
 * @param work cost of cutting and joining at the user's rates
 */
public record SegmentOption(
    SegmentPlan segments, Plan plan, SheetFill fill, boolean carried, WorkCost work) {

  private static final double CUBIC_MM_PER_CUBIC_M = 1e9;

  public Angle angle() {
    return segments.segment();
  }

  /** Pieces of the helix, the shorter last one too. */
  public int pieces() {
    return segments.demands().stream().mapToInt(Demand::count).sum();
  }

  public int perSheet() {
    return fill.count();
  }

  public double turnsPerSheet() {
    return perSheet() * angle().degrees() / 360;
  }

  public int sheets() {
    return plan.purchase().sheets();
  }

  public Money sheetCost() {
    return plan.purchase().sheetCost();
  }

  /** What no purchase for these segments can go below, whatever its layouts. */
  public CostBound bound() {
    return plan.purchase().bound();
  }

  /** Joints between the pieces of the helix, laid end to end; those to the tracks outside not. */
  public int joints() {
    return pieces() - 1;
  }

  /** One under each joint, in one layer of plywood. */
  public int splicePlates() {
    return joints();
  }

  public double jointsPerTurn() {
    return 360 / angle().degrees();
  }

  public JointLine jointLine() {
    return JointLine.of(angle());
  }

  /** Length of all edges to be cut; no cut is counted as shared. */
  public Length cutLength() {
    return Length.ofMillimetres(
        segments.demands().stream()
            .mapToDouble(demand -> demand.count() * demand.piece().shape().outline().perimeter())
            .sum());
  }

  /** Weight of the roadbed in kilograms, as birch plywood of the measured thickness (assumed). */
  public double weight() {
    Length thickness = plan.job().sheets().get(0).thickness();
    double area =
        segments.demands().stream()
            .mapToDouble(demand -> demand.count() * demand.piece().shape().area())
            .sum();
    double density = WoodDensity.of(WoodDensity.Wood.BIRCH, thickness).value();
    return area * thickness.millimetres() * density / CUBIC_MM_PER_CUBIC_M;
  }

  /** Largest piece, across its ends. */
  public Length chord() {
    return Length.ofMillimetres(sector().outline().box().height());
  }

  /** Largest piece, from the line through its ends to the top of its outer edge. */
  public Length depth() {
    return Length.ofMillimetres(sector().outline().box().width());
  }

  /** How hard layouts were looked for. */
  public Effort effort() {
    return plan.job().search().effort();
  }

  /** Sheets, cutting and joints together. */
  public Money total() {
    return sheetCost().plus(work.cutting()).plus(work.eachJoint().times(joints()));
  }

  /** What the recommendation weighs. */
  Standing standing() {
    return new Standing(angle(), carried, sheetCost().plus(work.cutting()), joints(), sheets());
  }

  private AnnularSector sector() {
    Angle largest = segments.wholeSegments() > 0 ? angle() : lastPiece();
    return new AnnularSector(segments.radius(), segments.width(), largest);
  }

  private Angle lastPiece() {
    return Angle.ofDegrees(segments.remainderDegrees());
  }
}
