package curvestock.compare;

import curvestock.helix.spec.SegmentRun;
import curvestock.job.Rates;
import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.plan.Plan;
import curvestock.plan.Remnant;
import curvestock.purchase.Cost;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One choice of segments with a whole plan behind it. The pieces counted are those of the helix;
 * sheets and their cost are those of the whole job.
 *
 * @param design the helix so divided
 * @param plan the whole job so divided, but for the small parts
 * @param fill the fullest layout found of the segment on the main sheet; none for a mixed plan
 * @param small how the small parts lie in what is left over
 * @param tooLargeFor what the largest piece does not pass, of what the user states
 * @param work cost of cutting and joining at the user's rates
 * @param onShort what it takes if its sheets come as small as they may; empty where that was not
 *     tried
 */
public record SegmentOption(
    Design design,
    Plan plan,
    Optional<SheetFill> fill,
    SmallFit small,
    List<Rates.Opening> tooLargeFor,
    WorkCost work,
    Optional<ShortSheets> onShort) {

  public SegmentOption {
    tooLargeFor = List.copyOf(tooLargeFor);
  }

  SegmentOption with(ShortSheets found) {
    return new SegmentOption(design, plan, fill, small, tooLargeFor, work, Optional.of(found));
  }

  /** Whether it was found to do with as many sheets if these come as small as they may. */
  public boolean needsFullSheets() {
    return onShort.filter(found -> found.sheets() > sheets()).isPresent();
  }

  /** What is kept for the next job of the sheets that are bought; at least, packed roughly. */
  public List<Remnant> offcuts() {
    return small.layouts().stream()
        .filter(layout -> layout.sheet().price().compareTo(Money.ZERO) > 0)
        .flatMap(layout -> Remnant.of(layout).stream())
        .sorted(Comparator.comparingDouble(Remnant::area).reversed())
        .toList();
  }

  /** What they are worth at the user's rates: a share of what as much of their sheet costs. */
  public Money offcutsWorth() {
    double worth =
        offcuts().stream()
            .mapToDouble(
                each -> each.sheet().price().minorUnits() * each.area() / each.sheet().area())
            .sum();
    return new Money(Math.round(worth * plan.job().rates().offcutsWorth()));
  }

  public Division division() {
    return design.division();
  }

  /** The angle of its pieces, of a mixed plan that of the larger ones. */
  public Angle angle() {
    return division().largest();
  }

  /** Pieces of the helix in all layers, the shorter last one too. */
  public int pieces() {
    return design.pieces();
  }

  /** Pieces of the helix that are cut, with their spares: as many as a plan of them counts. */
  public int cut() {
    return design.cut();
  }

  /** The whole segment that is counted per sheet. */
  public Piece segment() {
    return design.segment();
  }

  /** Segments on a sheet; 0 for a mixed plan. */
  public int perSheet() {
    return fill.map(SheetFill::count).orElse(0);
  }

  /** Of one layer. */
  public double turnsPerSheet() {
    return perSheet() * angle().degrees() / 360;
  }

  /** Sheets that are cut, those for small parts that found no room elsewhere too. */
  public int sheets() {
    return plan.purchase().sheets() + small.extraSheets();
  }

  /** What all sheets cost, those for small parts too, and what no layouts can go below. */
  public Cost cost() {
    return plan.cost().plus(small.extraCost());
  }

  /** Sheets bought for joint parts that nobody listed: a plan of the job has none of them. */
  public int assumedSheets() {
    return parts().assumed() ? small.extraSheets() : 0;
  }

  /** What is paid for them. */
  public Money assumedCost() {
    return parts().assumed() ? sheetCost().minus(plan.cost().paid()) : Money.ZERO;
  }

  /** What is paid for all sheets. */
  public Money sheetCost() {
    return cost().paid();
  }

  /** Joints between the pieces of the helix; those to the tracks outside not. */
  public int joints() {
    return design.parts().joints();
  }

  public JointParts parts() {
    return design.parts();
  }

  public JointFall fall() {
    return design.fall();
  }

  public double jointsPerTurn() {
    return 360 / angle().degrees();
  }

  /** Whether every piece passes what the user states. */
  public boolean carried() {
    return tooLargeFor.isEmpty();
  }

  /** Length of all edges to be cut, holes and small parts too; no cut is counted as shared. */
  public Length cutLength() {
    return Length.ofMillimetres(design.cutMillimetres());
  }

  /** Weight of the helix's wood in kilograms. */
  public double weight() {
    return design.kilograms();
  }

  /** The rectangle of the piece that takes most room; of a plain segment across its ends. */
  public EnclosingRectangle largest() {
    return design.largest();
  }

  /** Whether that piece is an end piece with its straight lead in one. */
  public boolean isLargestWithLead() {
    return design.isLargestWithLead();
  }

  /** The rectangle of a whole segment without any lead, across its ends. */
  public EnclosingRectangle whole() {
    return EnclosingRectangle.of(segment());
  }

  /** Whether only end pieces with their leads do not pass it: segments without a lead do. */
  public boolean isForLeadAlone(Rates.Opening opening) {
    return tooLargeFor.contains(opening) && Options.passes(segment(), opening);
  }

  /** Longer side of the largest piece's rectangle; of a plain segment across its ends. */
  public Length chord() {
    return largest().length();
  }

  /** Shorter side of the largest piece's rectangle. */
  public Length depth() {
    return largest().width();
  }

  /** Share of the sheets' area that becomes pieces, 0 to 1. */
  public double areaYield() {
    double pieces = plan.layouts().stream().mapToDouble(Layout::pieceArea).sum();
    double sheets = plan.layouts().stream().mapToDouble(layout -> layout.sheet().area()).sum();
    return (pieces + small.area()) / (sheets + small.extraArea());
  }

  /** How hard layouts were looked for. */
  public Effort effort() {
    return plan.job().search().effort();
  }

  /** Sheets, cutting and joints together, less what offcuts are worth. */
  public Money total() {
    return sheetCost()
        .plus(work.cutting())
        .plus(work.eachJoint().times(joints()))
        .minus(offcutsWorth());
  }

  /** What the recommendation weighs. */
  Standing standing() {
    Money other = work.cutting().minus(offcutsWorth());
    return new Standing(
        division(),
        carried(),
        onShort.filter(found -> found.sheets() == ShortSheets.NONE).isEmpty(),
        onShort.map(ShortSheets::cost).orElse(sheetCost()),
        other,
        joints(),
        onShort.map(ShortSheets::sheets).orElse(sheets()),
        offcuts().stream().mapToDouble(Remnant::area).sum());
  }

  /** Whole pieces of the angle that is counted per sheet. */
  int wholeSegments() {
    return design.bed().stream()
        .filter(demand -> demand.piece().equals(segment()))
        .mapToInt(Demand::count)
        .sum();
  }

  /** How many pieces of each angle, from the bottom up, of a mixed plan. */
  public List<SegmentRun> runs() {
    int lower = division().lower().map(SegmentRun::count).orElse(0);
    int upper = pieces() - lower;
    return division()
        .lower()
        .map(run -> List.of(run, new SegmentRun(upper, division().segment())))
        .orElse(List.of(new SegmentRun(upper, division().segment())));
  }
}
