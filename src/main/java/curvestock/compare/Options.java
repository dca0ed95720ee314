package curvestock.compare;

import curvestock.bound.Bound;
import curvestock.bound.Fit;
import curvestock.job.Job;
import curvestock.job.Rates;
import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.packing.Packer;
import curvestock.packing.Packers;
import curvestock.packing.SearchSettings;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.plan.Planner;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.List;
import java.util.Optional;

/** Makes the options: each a division of the helix with a whole plan behind it. */
final class Options {

  private static final Cutting NO_CUT = Cutting.leaving(Length.ZERO, Length.ZERO, Length.ZERO);

  private final Designs designs;
  private final Job job;
  private final SheetStock main;
  private final Packers packers;
  private final PlanListener listener;

  Options(Designs designs, Packers packers, PlanListener listener) {
    this.designs = designs;
    this.job = designs.job();
    this.main = designs.mainSheet();
    this.packers = packers;
    this.listener = listener;
  }

  /**
   * The option.
   *
   * @param name what to call it while it is planned
   * @throws Infeasible if it cannot be cut, or the helix cannot be divided so
   */
  SegmentOption option(Division division, String name, Effort effort) throws Infeasible {
    Design design = design(designs, division);
    Plan planned = planned(design, name, effort);
    Optional<SheetFill> fill =
        division.isMixed() ? Optional.empty() : Optional.of(fill(planned, design.segment()));
    SmallFit small = new Nesting(packers, main).fit(planned, design.small());
    return option(design, planned, fill, small);
  }

  /** The option of the size that the job itself cuts, from the plan that is printed. */
  SegmentOption own(Plan plan) throws Infeasible {
    Design design = design(designs, designs.own());
    Optional<SheetFill> fill =
        design.division().isMixed() ? Optional.empty() : Optional.of(ownFill(plan, design));
    // Parts that nobody listed are in no plan.
    SmallFit small =
        design.parts().assumed()
            ? new Nesting(packers, main).fit(plan, design.small())
            : SmallFit.planned(Design.count(design.small()), plan.layouts());
    return option(design, plan, fill, small);
  }

  private SegmentOption option(Design design, Plan plan, Optional<SheetFill> fill, SmallFit small) {
    return new SegmentOption(
        design,
        plan,
        fill,
        small,
        tooLargeFor(job.rates(), design),
        WorkCost.of(job.rates(), design, JointPrice.of(designs)),
        Optional.empty());
  }

  /** What the plan found; where it needed no fuller sheet, as for any other size. */
  private SheetFill ownFill(Plan plan, Design design) {
    Piece segment = design.segment();
    SheetFill known = known(plan, segment);
    int wanted =
        design.bed().stream()
            .filter(demand -> demand.piece().equals(segment))
            .mapToInt(Demand::count)
            .sum();
    return known.count() < wanted ? known : fill(plan, segment);
  }

  static Design design(Designs designs, Division division) throws Infeasible {
    try {
      return designs.in(division);
    } catch (IllegalArgumentException e) {
      throw new Infeasible(List.of(e.getMessage()));
    }
  }

  private Plan planned(Design design, String name, Effort effort) throws Infeasible {
    Job changed = design.job().with(job.search().at(effort));
    return new Planner(changed, new Named(name, listener), packers).planRoughly();
  }

  /** The fullest layout of the segment on the main sheet, though fewer may be wanted. */
  private SheetFill fill(Plan plan, Piece segment) {
    SheetFill known = known(plan, segment);
    // A plan looks only for what a cheaper purchase needs: this is a question of its own.
    Layout most = quick().most(segment, known.bound().count(), listener.silent()).layout();
    return known.count() > most.placements().size()
        ? known
        : new SheetFill(most, known.byPattern(), known.bound());
  }

  private SheetFill known(Plan plan, Piece segment) {
    return SheetFill.known(plan, segment, quick().structured(segment).layout());
  }

  private Packer quick() {
    return packers.of(main, job.cutting(), job.search().at(Effort.QUICK));
  }

  /** What the largest piece does not pass, of what the user states. */
  static List<Rates.Opening> tooLargeFor(Rates rates, Design design) {
    return rates.openings().stream().filter(opening -> !passes(design, opening)).toList();
  }

  private static boolean passes(Design design, Rates.Opening opening) {
    return design.bed().stream().map(Demand::piece).allMatch(piece -> passes(piece, opening));
  }

  static boolean passes(Piece piece, Rates.Opening opening) {
    SheetStock frame =
        SheetStock.rectangle(
            "opening", opening.length(), opening.width(), Length.ofMillimetres(1), Money.ZERO);
    return !Fit.isImpossible(piece, frame, NO_CUT);
  }

  /** Segments of the division's angle on what is on hand besides the main sheet. */
  int onRemnants(SegmentOption option) {
    SearchSettings quick = job.search().at(Effort.QUICK);
    int pieces = 0;
    for (SheetStock sheet : onHand()) {
      Bound bound = Bound.quick(option.segment(), sheet, job.cutting());
      int most =
          packers
              .of(sheet, job.cutting(), quick)
              .most(option.segment(), bound.count(), listener.silent())
              .layout()
              .placements()
              .size();
      pieces += most * sheet.available().orElse(0);
    }
    return pieces;
  }

  /** Sheets and remnants that are paid for, the main sheet left out. */
  List<SheetStock> onHand() {
    return job.sheets().stream()
        .filter(sheet -> !sheet.equals(main))
        .filter(sheet -> sheet.available().isPresent() && sheet.price().equals(Money.ZERO))
        .toList();
  }
}
