package curvestock.compare;

import curvestock.helix.spec.Riser;
import curvestock.helix.spec.SegmentRun;
import curvestock.job.Job;
import curvestock.packing.Effort;
import curvestock.packing.Packers;
import curvestock.plan.Infeasible;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Compares segment angles: first lattices, then a quick plan of the whole job for each angle, then
 * the job's own effort where one sheet less is near, then mixed plans, then how far the answer
 * holds.
 *
 * <p>The same for the same job and question, whatever the machine, unless the listener stops it.
 */
public final class Comparer {

  /** Options that are planned again with the job's own effort. */
  private static final int DEEPENED = 2;

  /** Mixed plans that are planned. */
  private static final int MIXED = 2;

  /** Angles of the scan nearer than this to one that is compared already are not added. */
  private static final double SAME_DEGREES = 0.5;

  private static final Comparator<SegmentOption> BY_SHEETS =
      Comparator.comparing(SegmentOption::sheetCost).thenComparingInt(SegmentOption::sheets);

  private final Designs designs;
  private final Job job;
  private final Question question;
  private final Packers packers;
  private final Stages listener;
  private final SheetStock main;
  private final JointPrice joint;
  private final Options maker;
  private final Optional<OwnPlan> ownPlan;
  private final List<SizeLook> looks = new ArrayList<>();
  private final List<SegmentOption> options = new ArrayList<>();
  private final List<Refusal> refused = new ArrayList<>();

  /**
   * @throws IllegalArgumentException if the job has no helix
   */
  public Comparer(Job job, Question question, CompareListener listener) {
    this(job, question, listener, Packers.FORGETFUL);
  }

  /** A comparer that may find packings in a store. */
  public Comparer(Job job, Question question, CompareListener listener, Packers packers) {
    this(job, question, listener, packers, Optional.empty());
  }

  /**
   * The same beside a plan of the job.
   *
   * @param ownPlan the plan that the row of the job's own size shows; empty: that size is planned
   *     as quickly as the others
   */
  public Comparer(
      Job job,
      Question question,
      CompareListener listener,
      Packers packers,
      Optional<OwnPlan> ownPlan) {
    this.ownPlan = ownPlan;
    this.designs = Designs.of(job);
    this.job = job;
    this.question = question;
    this.packers = packers;
    this.listener = new Stages(listener, stages());
    this.main = designs.mainSheet();
    this.joint = JointPrice.of(designs);
    this.maker = new Options(designs, packers, this.listener);
  }

  private Set<Stages.Stage> stages() {
    Set<Stages.Stage> stages = EnumSet.allOf(Stages.Stage.class);
    if (!question.scan()) {
      stages.remove(Stages.Stage.SCAN);
    }
    if (!question.changes()) {
      stages.remove(Stages.Stage.CHANGES);
    }
    if (job.search().effort() == Effort.QUICK) {
      stages.remove(Stages.Stage.DEEPER);
    }
    boolean rods =
        job.structure()
            .filter(order -> order.plan().spec().supports().riser() instanceof Riser.ThreadedRods)
            .isPresent();
    if (!rods) {
      stages.remove(Stages.Stage.EARS);
    }
    return stages;
  }

  /**
   * The comparison; when stopped, of what was planned until then.
   *
   * @throws Infeasible if none of the angles can be cut from the sheets on offer
   */
  public Comparison compare() throws Infeasible {
    firstLook();
    Optional<AngleScan> scan = scan();
    plan(divisions(scan));
    requireAny();
    deepen();
    mix();
    Recommendation recommendation = recommendation();
    listener.choices(choices(recommendation, scan));
    SegmentOption best = option(recommendation.best());
    return new Comparison(
        job,
        question,
        main,
        options,
        refused,
        Optional.of(recommendation),
        sensitivity(best),
        oneMoreTurn(best),
        alone(best),
        ears(best),
        reach(),
        scan,
        listener.stopped());
  }

  /** The choices and the recommendation alone, without how far they hold. */
  Comparison compareBriefly() throws Infeasible {
    plan(asked());
    requireAny();
    return choices(recommendation(), Optional.empty());
  }

  private Comparison choices(Recommendation recommendation, Optional<AngleScan> scan) {
    return new Comparison(
        job,
        question,
        main,
        options,
        refused,
        Optional.of(recommendation),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        scan,
        listener.stopped());
  }

  private void requireAny() throws Infeasible {
    if (options.isEmpty()) {
      throw new Infeasible(
          refused.stream().map(refusal -> refusal.angle() + ": " + refusal.reason()).toList());
    }
  }

  /**
   * The best choice that still is the best if its sheets come as small as they may. Such sheets
   * never cost a choice less, so only one that leads needs to be tried.
   */
  private Recommendation recommendation() {
    SmallestSheets smallest = new SmallestSheets(designs, packers, listener);
    while (true) {
      Recommendation found =
          Recommendation.among(options.stream().map(SegmentOption::standing).toList(), joint);
      SegmentOption best = option(found.best());
      SegmentOption tried =
          best.onShort().isPresent() || listener.stopped() ? best : smallest.tried(best);
      if (tried.equals(best) || listener.stopped()) {
        return found;
      }
      options.set(options.indexOf(best), tried);
    }
  }

  private SegmentOption option(Division division) {
    return options.stream()
        .filter(option -> option.division().equals(division))
        .findFirst()
        .orElseThrow();
  }

  private void firstLook() {
    listener.stage(Stages.Stage.PATTERNS, "counting roughly how many sheets each size needs");
    Sizes sizes = Sizes.of(job, packers);
    for (Division division : asked()) {
      try {
        looks.add(sizes.look(division));
      } catch (Infeasible impossible) {
        // Said again, with the reason, when it is planned.
      }
    }
    listener.firstLook(List.copyOf(looks));
  }

  private Optional<AngleScan> scan() {
    if (!question.scan() || listener.stopped()) {
      return Optional.empty();
    }
    listener.stage(Stages.Stage.SCAN, "scanning all angles");
    return new AngleSweep(designs, joint, packers, listener).scan();
  }

  private List<Division> asked() {
    List<Angle> angles =
        new ArrayList<>(question.angles().isEmpty() ? Question.USUAL : question.angles());
    Division own = designs.own();
    if (question.angles().isEmpty() && !own.isMixed()) {
      addUnlessNear(angles, own.segment());
    }
    List<Division> divisions = new ArrayList<>(angles.stream().map(Division::of).toList());
    if (question.angles().isEmpty() && own.isMixed()) {
      divisions.add(own);
    }
    return divisions;
  }

  /** The divisions asked for, then the best of the scan where they are others. */
  private List<Division> divisions(Optional<AngleScan> scan) {
    List<Division> divisions = new ArrayList<>(asked());
    List<Angle> known = new ArrayList<>(divisions.stream().map(Division::largest).toList());
    int before = known.size();
    scan.ifPresent(
        found -> {
          if (!isMatched(found.bestForJob())) {
            addUnlessNear(known, found.bestForJob().sample().angle());
          }
          addUnlessNear(known, found.bestForSheet().angle());
        });
    known.subList(before, known.size()).forEach(angle -> divisions.add(Division.of(angle)));
    return divisions;
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

  /** One division planned, or refused. */
  private record Outcome(Optional<SegmentOption> option, Optional<Refusal> refusal) {}

  /** All divisions, as many at a time as there are cores; by lattices alone once stopped. */
  private void plan(List<Division> divisions) {
    listener.stage(
        Stages.Stage.PLANS,
        divisions.size() == 1
            ? "planning 1 segment size"
            : "planning " + divisions.size() + " segment sizes");
    AtomicInteger done = new AtomicInteger();
    // Libraries look for their parts by it, and the pool's threads have another.
    ClassLoader loader = Thread.currentThread().getContextClassLoader();
    List<Outcome> outcomes =
        IntStream.range(0, divisions.size())
            .parallel()
            .mapToObj(
                i -> {
                  Thread.currentThread().setContextClassLoader(loader);
                  String place = (i + 1) + " of " + divisions.size();
                  Outcome outcome = outcome(divisions.get(i), place);
                  listener.part(done.incrementAndGet(), divisions.size());
                  return outcome;
                })
            .toList();
    outcomes.forEach(
        outcome -> {
          outcome.option().ifPresent(options::add);
          outcome.refusal().ifPresent(refused::add);
        });
  }

  private Outcome outcome(Division division, String place) {
    try {
      String name = "segments of " + division.largest() + " (" + place + ")";
      SegmentOption option =
          ownPlan.isPresent() && division.isLike(designs.own())
              ? maker.own(ownPlan.get().plan(new Named(name, listener)))
              : maker.option(division, name, Effort.QUICK);
      return new Outcome(Optional.of(option), Optional.empty());
    } catch (Infeasible e) {
      return new Outcome(
          Optional.empty(), Optional.of(new Refusal(division.largest(), e.getMessage())));
    }
  }

  private void deepen() throws Infeasible {
    Effort effort = job.search().effort();
    if (effort == Effort.QUICK || listener.stopped()) {
      return;
    }
    listener.stage(Stages.Stage.DEEPER, "searching longer where one sheet fewer is near");
    List<SegmentOption> plain =
        options.stream()
            .filter(option -> !option.division().isMixed())
            .filter(option -> option.effort() != effort)
            .toList();
    for (SegmentOption option : Deepening.worthwhile(plain, joint.each(), DEEPENED)) {
      if (!listener.stopped()) {
        String name = "segments of " + option.angle() + ", longer";
        SegmentOption better = maker.option(option.division(), name, effort);
        // Stopped half-way it may be the worse of the two.
        boolean kept = listener.stopped() && BY_SHEETS.compare(better, option) >= 0;
        options.set(options.indexOf(option), kept ? option : better);
      }
    }
  }

  /** Adds the mixed plans that really do with fewer sheets than the plain ones they stand for. */
  private void mix() {
    if (!question.mixed() || listener.stopped()) {
      return;
    }
    listener.stage(Stages.Stage.MIXED, "mixing large and small segments");
    List<Mixing.Candidate> candidates =
        new Mixing(designs, packers, listener).candidates(options, joint);
    for (Mixing.Candidate candidate : candidates.subList(0, Math.min(MIXED, candidates.size()))) {
      SegmentRun lower = candidate.division().lower().orElseThrow();
      String name = lower.count() + " segments of " + lower.segment() + ", the rest smaller";
      try {
        SegmentOption option = maker.option(candidate.division(), name, Effort.QUICK);
        if (!option.plan().stopped() && option.sheets() < candidate.plain().sheets()) {
          options.add(option);
        }
      } catch (Infeasible e) {
        // Then there is no such row.
      }
    }
  }

  private Optional<Sensitivity> sensitivity(SegmentOption best) {
    if (!question.changes() || listener.stopped() || best.perSheet() == 0) {
      return Optional.empty();
    }
    listener.stage(
        Stages.Stage.CHANGES,
        "segments of "
            + best.angle()
            + ": trying a slightly wider or narrower roadbed, kerf or radius");
    Sensitivity found = new Steps(designs, best, packers, listener).find();
    return listener.stopped() ? Optional.empty() : Optional.of(found);
  }

  private Optional<MoreTurn> oneMoreTurn(SegmentOption best) {
    if (listener.stopped()) {
      return Optional.empty();
    }
    listener.stage(Stages.Stage.MORE, "planning one more turn");
    try {
      SegmentOption longer =
          new Options(designs.longerBy(1), packers, listener)
              .option(best.division(), "one more turn", Effort.QUICK);
      return listener.stopped()
          ? Optional.empty()
          : Optional.of(
              new MoreTurn(
                  longer.sheets() - best.sheets(),
                  longer.sheetCost().minus(best.sheetCost()),
                  longer.joints() - best.joints(),
                  all(longer).minus(all(best))));
    } catch (Infeasible | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private Optional<LonePiece> alone(SegmentOption best) {
    if (listener.stopped()) {
      return Optional.empty();
    }
    listener.stage(Stages.Stage.MORE, "trying to do without the sheet that holds only one piece");
    return LonePiece.of(designs, best, packers, listener);
  }

  /** As the recommendation weighs it. */
  private curvestock.units.Money all(SegmentOption option) {
    return option.standing().total(joint.each());
  }

  private Optional<Ears> ears(SegmentOption best) {
    Optional<Designs> without = Optional.empty();
    Optional<Designs> with = Optional.empty();
    try {
      without = designs.withEars(false);
      with = designs.withEars(true);
    } catch (IllegalArgumentException impossible) {
      return Optional.empty();
    }
    if (without.isEmpty() || with.isEmpty() || listener.stopped()) {
      return Optional.empty();
    }
    boolean inJob = with.get() == designs;
    listener.stage(Stages.Stage.EARS, inJob ? "the same without ears" : "the same with ears");
    try {
      SegmentOption other =
          new Options(inJob ? without.get() : with.get(), packers, listener)
              .option(best.division(), "ears", Effort.QUICK);
      SegmentOption eared = inJob ? best : other;
      SegmentOption plain = inJob ? other : best;
      return listener.stopped()
          ? Optional.empty()
          : Optional.of(
              new Ears(
                  inJob,
                  eared.sheets(),
                  plain.sheets(),
                  eared.sheetCost().minus(plain.sheetCost())));
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
        .filter(option -> option.perSheet() > 0)
        .map(
            option ->
                new Reach(
                    option.division(),
                    sheets * option.perSheet(),
                    maker.onRemnants(option),
                    designs.layers()))
        .sorted(
            Comparator.comparingDouble(Reach::turns)
                .reversed()
                .thenComparing(reach -> reach.division().segment(), Comparator.reverseOrder()))
        .toList();
  }
}
