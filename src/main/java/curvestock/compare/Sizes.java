package curvestock.compare;

import curvestock.bound.Fit;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.packing.Packers;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.sheet.SheetStock;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The usual segment sizes of a job's helix side by side for somebody who watches: each at first by
 * a regular pattern, at once, then by a plan of the whole job in that size, as plans arrive.
 */
public final class Sizes {

  private final Job job;
  private final Designs designs;
  private final Packers packers;
  private final JointPrice joint;

  private Sizes(Job job, Packers packers) {
    this.job = job;
    this.designs = Designs.of(job);
    this.packers = packers;
    this.joint = JointPrice.of(designs);
  }

  /**
   * The sizes.
   *
   * @throws IllegalArgumentException if the job has no helix
   */
  public static Sizes of(Job job, Packers packers) {
    return new Sizes(job, packers);
  }

  /** As the job says. */
  public Division own() {
    return designs.own();
  }

  /** The usual sizes from the largest on, and the job's own among them or after them. */
  public List<Division> divisions() {
    List<Division> divisions = new ArrayList<>(Question.USUAL.stream().map(Division::of).toList());
    boolean usual = divisions.stream().anyMatch(this::isOwn);
    if (!usual) {
      divisions.add(own());
    }
    return divisions;
  }

  /** Whether the job is divided so, to a millionth of a degree. */
  public boolean isOwn(Division division) {
    return division.isLike(own());
  }

  /** What a joint counts for when sizes are weighed. */
  public JointPrice joint() {
    return joint;
  }

  /**
   * A size by a regular pattern.
   *
   * @throws Infeasible if the helix cannot be divided so, or a piece of it fits on no sheet
   */
  public SizeLook look(Division division) throws Infeasible {
    Design design = Options.design(designs, isOwn(division) ? own() : division);
    requireRoom(design);
    SheetStock main = designs.mainSheet();
    Layout pattern = pattern(design);
    double wood = area(design.job().demands()) + area(design.small());
    int sheets =
        pattern.placements().isEmpty() ? 0 : (int) Math.ceil(wood / pattern.pieceArea() - 1e-9);
    Money each = job.terms().tax().gross(main.price());
    return new SizeLook(design, pattern, sheets, each.times(sheets));
  }

  private Layout pattern(Design design) {
    return packers
        .of(designs.mainSheet(), job.cutting(), job.search().at(Effort.QUICK))
        .structured(design.segment())
        .layout();
  }

  /** A size with a piece that is proven to fit nowhere is no choice: its pattern would mislead. */
  private void requireRoom(Design design) throws Infeasible {
    for (Demand demand : design.bed()) {
      Piece piece = demand.piece();
      boolean nowhere =
          job.sheets().stream()
              .filter(sheet -> job.suits(piece, sheet))
              .allMatch(sheet -> Fit.isImpossible(piece, sheet, job.cutting()));
      if (nowhere) {
        throw new Infeasible(
            List.of(
                "Piece "
                    + piece.id()
                    + " does not fit on any of the sheets, whichever way it is turned."));
      }
    }
  }

  private static double area(List<Demand> demands) {
    return demands.stream().mapToDouble(each -> each.count() * each.piece().shape().area()).sum();
  }

  /**
   * A size with a plan of the whole job, small parts and all.
   *
   * @param plan of the job so divided
   * @throws Infeasible if the helix cannot be divided so
   */
  public SegmentOption planned(Division division, Plan plan) throws Infeasible {
    Design design = Options.design(designs, isOwn(division) ? own() : division);
    int small = Design.count(design.small());
    return new SegmentOption(
        design,
        plan,
        division.isMixed()
            ? Optional.empty()
            : Optional.of(SheetFill.known(plan, design.segment(), pattern(design))),
        SmallFit.planned(small, plan.layouts()),
        Options.tooLargeFor(job.rates(), design),
        WorkCost.of(job.rates(), design, joint),
        Optional.empty());
  }

  /** The best of what is known so far; nothing where nothing is. */
  public Optional<Recommendation> best(List<SizeLook> looks, List<SegmentOption> planned) {
    List<Standing> standings =
        Stream.concat(
                planned.stream().map(SegmentOption::standing),
                looks.stream().filter(look -> look.sheets() > 0).map(this::standing))
            .toList();
    return standings.isEmpty()
        ? Optional.empty()
        : Optional.of(Recommendation.among(standings, joint));
  }

  private Standing standing(SizeLook look) {
    Design design = look.design();
    WorkCost work = WorkCost.of(job.rates(), design, joint);
    return new Standing(
        look.division(),
        Options.tooLargeFor(job.rates(), design).isEmpty(),
        true,
        look.paid(),
        work.cutting(),
        look.joints(),
        look.sheets(),
        0);
  }

  /** The sizes as a comparison, once all are planned. */
  public Comparison compared(List<SegmentOption> planned, List<Refusal> refused, boolean stopped) {
    return new Comparison(
        job,
        Question.PLAIN,
        designs.mainSheet(),
        planned,
        refused,
        best(List.of(), planned),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        stopped);
  }
}
