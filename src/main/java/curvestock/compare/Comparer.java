package curvestock.compare;

import curvestock.bound.Bound;
import curvestock.bound.Fit;
import curvestock.helix.SegmentPlan;
import curvestock.job.Job;
import curvestock.job.Rates;
import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.packing.Packer;
import curvestock.packing.SearchSettings;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.plan.Capacity;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.Planner;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Compares segment angles: first regular patterns, then a quick plan of the whole job for each
 * angle, then the job's own effort where one sheet less is near, then how far the answer holds.
 *
 * <p>The same for the same job and question, whatever the machine, unless the listener stops it.
 */
public final class Comparer {

  /** Options that are planned again with the job's own effort. */
  private static final int DEEPENED = 2;

  /** Angles of the scan nearer than this to one that is compared already are not added. */
  private static final double SAME_DEGREES = 0.5;

  private static final Cutting NO_CUT = new Cutting(Length.ZERO, Length.ZERO, Length.ZERO);

  private final Job job;
  private final Question question;
  private final CompareListener listener;
  private final Segments segments;
  private final SheetStock main;
  private final JointPrice joint;
  private final List<FirstLook> looks = new ArrayList<>();
  private final List<SegmentOption> options = new ArrayList<>();
  private final List<Refusal> refused = new ArrayList<>();

  /**
   * @throws IllegalArgumentException if the job has no helix
   */
  public Comparer(Job job, Question question, CompareListener listener) {
    this.job = job;
    this.question = question;
    this.listener = listener;
    this.segments = new Segments(job);
    this.main = segments.mainSheet();
    this.joint = JointPrice.of(job.rates(), main);
  }

  /**
   * The comparison; when stopped, of what was planned until then.
   *
   * @throws Infeasible if none of the angles can be cut from the sheets on offer
   */
  public Comparison compare() throws Infeasible {
    firstLook();
    Optional<AngleScan> scan = scan();
    List<Angle> angles = angles(scan);
    for (int i = 0; i < angles.size() && !(listener.stopped() && !options.isEmpty()); i++) {
      plan(angles.get(i), (i + 1) + " of " + angles.size());
    }
    if (options.isEmpty()) {
      throw new Infeasible(
          refused.stream().map(refusal -> refusal.angle() + ": " + refusal.reason()).toList());
    }
    deepen();
    Recommendation recommendation =
        Recommendation.among(options.stream().map(SegmentOption::standing).toList(), joint);
    SegmentOption best =
        options.stream()
            .filter(option -> option.angle().equals(recommendation.best()))
            .findFirst()
            .orElseThrow();
    return new Comparison(
        job,
        question,
        main,
        options,
        refused,
        Optional.of(recommendation),
        sensitivity(best),
        oneMoreTurn(best),
        reach(),
        scan,
        listener.stopped());
  }

  private void firstLook() {
    listener.step("counting by regular patterns");
    for (Angle angle : asked()) {
      Layout layout = packer(Effort.QUICK).structured(segments.piece(angle)).layout();
      looks.add(new FirstLook(angle, pieces(segments.plan(angle)), layout.placements().size()));
    }
    listener.firstLook(List.copyOf(looks));
  }

  private Optional<AngleScan> scan() {
    if (!question.scan() || listener.stopped()) {
      return Optional.empty();
    }
    listener.step("scanning all angles");
    return new AngleSweep(job, joint, listener).scan();
  }

  private List<Angle> asked() {
    if (!question.angles().isEmpty()) {
      return question.angles();
    }
    List<Angle> usual = new ArrayList<>(Question.USUAL);
    addUnlessNear(usual, segments.own());
    return usual;
  }

  /** The angles asked for, then the best of the scan where they are others. */
  private List<Angle> angles(Optional<AngleScan> scan) {
    List<Angle> angles = new ArrayList<>(asked());
    scan.ifPresent(
        found -> {
          if (!isMatched(found.bestForJob())) {
            addUnlessNear(angles, found.bestForJob().sample().angle());
          }
          addUnlessNear(angles, found.bestForSheet().angle());
        });
    return angles;
  }

  /** Whether an angle asked for takes as few pieces and sheets. */
  private boolean isMatched(AngleScan.ForJob best) {
    return looks.stream()
        .anyMatch(
            look ->
                look.pieces() <= best.pieces()
                    && look.pieces() <= (long) look.perSheet() * best.sheets());
  }

  private static void addUnlessNear(List<Angle> angles, Angle more) {
    boolean near =
        angles.stream()
            .anyMatch(angle -> Math.abs(angle.degrees() - more.degrees()) < SAME_DEGREES);
    if (!near) {
      angles.add(more);
    }
  }

  private void plan(Angle angle, String place) {
    SegmentPlan plan = segments.plan(angle);
    try {
      options.add(option(plan, place, Effort.QUICK));
    } catch (Infeasible e) {
      refused.add(new Refusal(angle, e.getMessage()));
    }
  }

  private SegmentOption option(SegmentPlan plan, String place, Effort effort) throws Infeasible {
    String name = "segments of " + plan.segment() + " (" + place + ")";
    Plan planned = planned(plan, name, effort);
    Rates rates = job.rates();
    boolean carried = rates.largestPiece().map(opening -> passes(plan, opening)).orElse(true);
    SegmentOption unpriced =
        new SegmentOption(
            plan, planned, fill(planned, plan), carried, WorkCost.of(rates, Length.ZERO));
    return new SegmentOption(
        plan, planned, unpriced.fill(), carried, WorkCost.of(rates, unpriced.cutLength()));
  }

  private Plan planned(SegmentPlan plan, String name, Effort effort) throws Infeasible {
    Job changed = segments.job(plan).with(new SearchSettings(job.search().seed(), effort));
    return new Planner(changed, new Named(name, listener)).plan();
  }

  /** The fullest layout of the segment on the main sheet, though fewer may be wanted. */
  private SheetFill fill(Plan planned, SegmentPlan plan) {
    Piece piece = segments.piece(plan.segment());
    Packer packer = packer(Effort.QUICK);
    Layout pattern = packer.structured(piece).layout();
    int byPattern = pattern.placements().size();
    Optional<Capacity> capacity =
        planned.capacities().stream()
            .filter(c -> c.piece().equals(piece) && c.sheet().equals(main))
            .findFirst();
    Bound bound =
        capacity.map(Capacity::bound).orElseGet(() -> Bound.quick(piece, main, job.cutting()));
    if (capacity.isEmpty() || capacity.get().isEnough()) {
      // The plan looked no further than what is wanted.
      Layout most = packer.most(piece, bound.count(), listener::stopped).layout();
      return new SheetFill(most, byPattern, bound);
    }
    Layout fullest =
        planned.purchase().problem().layouts().stream()
            .filter(layout -> layout.sheet().equals(main))
            .filter(layout -> layout.count(piece) == layout.placements().size())
            .max(Comparator.comparingInt(layout -> layout.count(piece)))
            .orElse(pattern);
    return new SheetFill(
        fullest.placements().size() > byPattern ? fullest : pattern, byPattern, bound);
  }

  private static boolean passes(SegmentPlan plan, Rates.Opening opening) {
    SheetStock frame =
        SheetStock.rectangle(
            "opening", opening.length(), opening.width(), Length.ofMillimetres(1), Money.ZERO);
    return plan.demands().stream()
        .noneMatch(demand -> Fit.isImpossible(demand.piece(), frame, NO_CUT));
  }

  private void deepen() throws Infeasible {
    Effort effort = job.search().effort();
    if (effort == Effort.QUICK || listener.stopped()) {
      return;
    }
    List<SegmentOption> worthwhile = Deepening.worthwhile(options, joint.each(), DEEPENED);
    for (SegmentOption option : worthwhile) {
      if (!listener.stopped()) {
        SegmentOption better = option(option.segments(), "one sheet less is near", effort);
        // Stopped half-way it may be the worse of the two.
        boolean worse = better.sheetCost().compareTo(option.sheetCost()) > 0;
        options.set(options.indexOf(option), worse ? option : better);
      }
    }
  }

  private Optional<Sensitivity> sensitivity(SegmentOption best) {
    if (listener.stopped() || best.perSheet() == 0) {
      return Optional.empty();
    }
    listener.step("how far " + best.angle() + " holds: trying changes");
    Sensitivity found = new Steps(job, best, main, listener).find();
    return listener.stopped() ? Optional.empty() : Optional.of(found);
  }

  private Optional<Money> oneMoreTurn(SegmentOption best) {
    if (listener.stopped()) {
      return Optional.empty();
    }
    SegmentPlan longer = segments.plan(best.angle(), segments.turns() + 1);
    try {
      Plan plan = planned(longer, "one more turn", Effort.QUICK);
      return listener.stopped()
          ? Optional.empty()
          : Optional.of(plan.purchase().sheetCost().minus(best.sheetCost()));
    } catch (Infeasible e) {
      return Optional.empty();
    }
  }

  private List<Reach> reach() {
    if (question.sheetsOnHand().isEmpty()) {
      return List.of();
    }
    int sheets = question.sheetsOnHand().getAsInt();
    return options.stream()
        .map(option -> new Reach(option.angle(), sheets * option.perSheet()))
        .sorted(
            Comparator.comparingDouble(Reach::turns)
                .reversed()
                .thenComparing(Reach::angle, Comparator.reverseOrder()))
        .toList();
  }

  private Packer packer(Effort effort) {
    return new Packer(main, job.cutting(), new SearchSettings(job.search().seed(), effort));
  }

  private static int pieces(SegmentPlan plan) {
    return plan.demands().stream().mapToInt(Demand::count).sum();
  }
}
