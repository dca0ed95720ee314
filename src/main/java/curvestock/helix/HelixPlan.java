package curvestock.helix;

import curvestock.helix.build.AssemblySchedule;
import curvestock.helix.build.Bridge;
import curvestock.helix.build.HalfLaps;
import curvestock.helix.build.Joints;
import curvestock.helix.build.PieceKind;
import curvestock.helix.build.Roadbed;
import curvestock.helix.build.RoadbedMarks;
import curvestock.helix.build.RodPlan;
import curvestock.helix.build.ShoppingList;
import curvestock.helix.build.SidePlates;
import curvestock.helix.build.SmallParts;
import curvestock.helix.build.Stations;
import curvestock.helix.build.SupportTable;
import curvestock.helix.clearance.EndClearance;
import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.clearance.HeightBudget;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Climb;
import curvestock.helix.course.ClimbSolver;
import curvestock.helix.course.HeightProfile;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.standard.CurveDrag;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.helix.verdict.Verdicts;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.UnaryOperator;

/**
 * The whole helix, worked out from what the builder states: the line and its heights, the joints
 * and stations on it, and from those alone every piece, table and list, so that they agree.
 */
public final class HelixPlan {

  private final HelixSpec spec;
  private final LengthStyle style;
  private final Climb climb;
  private final CentreLine line;
  private final HeightProfile profile;
  private final Joints joints;
  private final Stations stations;
  private final List<Verdict> verdicts;
  private final AtomicReference<Optional<Parts>> parts = new AtomicReference<>(Optional.empty());
  private final AtomicReference<Optional<List<Verdict>>> advice =
      new AtomicReference<>(Optional.empty());
  private final List<HeightBudget> budgets;

  /** What is cut, set up and bought: not needed to judge the helix. */
  private record Parts(
      Roadbed roadbed, SupportTable supports, AssemblySchedule schedule, ShoppingList shopping) {}

  private HelixPlan(HelixSpec spec, LengthStyle style) {
    this.spec = spec;
    this.style = style;
    climb = new ClimbSolver(spec, style).solve();
    line = new CentreLine(spec, climb);
    profile = new HeightProfile(climb, spec.bottom(), spec.top());
    joints = new Joints(spec, climb);
    stations = new Stations(spec, climb, line, joints);
    Verdicts rules = new Verdicts(spec, climb, line, profile, joints, stations);
    verdicts = rules.all(style);
    budgets = rules.budgets();
  }

  /**
   * Works the plan out; whether it works is for {@link #verdicts} to say.
   *
   * @throws IllegalArgumentException if what is stated contradicts itself or makes no helix, or the
   *     height to keep free is unknown; the message says what would do
   */
  public static HelixPlan of(HelixSpec spec) {
    return of(spec, LengthStyle.METRIC);
  }

  /**
   * The same with the names of pieces and goods in the given style of lengths.
   *
   * @throws IllegalArgumentException as {@link #of(HelixSpec)}
   */
  public static HelixPlan of(HelixSpec spec, LengthStyle style) {
    HelixPlan plan = new HelixPlan(spec, style);
    plan.parts();
    return plan;
  }

  /**
   * The same for trying a helix out: the pieces of one that fails are worked out only if they are
   * asked for.
   *
   * @throws IllegalArgumentException as {@link #of(HelixSpec)}, but for pieces that cannot be cut
   *     or lengths that are longer than their boards only if the helix works
   */
  static HelixPlan trial(HelixSpec spec, LengthStyle style) {
    HelixPlan plan = judged(spec, style);
    return plan.works() ? plan.whole() : plan;
  }

  /** The same for its verdicts alone: pieces are worked out only if they are asked for. */
  static HelixPlan judged(HelixSpec spec, LengthStyle style) {
    return new HelixPlan(spec, style);
  }

  /**
   * This, with all its pieces.
   *
   * @throws IllegalArgumentException if they cannot be cut
   */
  HelixPlan whole() {
    parts();
    return this;
  }

  private Parts parts() {
    return parts
        .updateAndGet(known -> known.isPresent() ? known : Optional.of(workedOut()))
        .orElseThrow();
  }

  private Parts workedOut() {
    Roadbed roadbed = new Roadbed(spec, climb, line, joints, stations, style);
    SupportTable supports = new SupportTable(spec, climb, line, profile, joints, stations);
    return new Parts(
        roadbed,
        supports,
        new AssemblySchedule(spec, line, profile, roadbed),
        new ShoppingList(spec, joints, roadbed, supports, stations.bridges(), style));
  }

  public HelixSpec spec() {
    return spec;
  }

  /** Of the lengths in names of pieces and goods. */
  public LengthStyle style() {
    return style;
  }

  /** Plans of the same specification, in the same style of lengths, are the same. */
  @Override
  public boolean equals(Object other) {
    return other instanceof HelixPlan plan && plan.spec.equals(spec) && plan.style.equals(style);
  }

  @Override
  public int hashCode() {
    return spec.hashCode();
  }

  public Climb climb() {
    return climb;
  }

  /** The roadbed's centre line in plan. */
  public CentreLine line() {
    return line;
  }

  /** Height along the centre line. */
  public HeightProfile profile() {
    return profile;
  }

  public Joints joints() {
    return joints;
  }

  public Stations stations() {
    return stations;
  }

  /** Every piece of roadbed in its place, and the kinds to cut. */
  public Roadbed roadbed() {
    return parts().roadbed();
  }

  /** Whether a rod is longer than its stock. */
  public boolean rodsAreJoined() {
    return spec.supports().riser() instanceof Riser.ThreadedRods rods
        && new RodPlan(spec, rods, supports()).couplings() > 0;
  }

  /** The plates beside the joints, if that is how they are made. */
  public Optional<SidePlates> sidePlates() {
    return spec.construction() instanceof Construction.PlatesBeside beside
        ? Optional.of(new SidePlates(beside, spec.ground(), joints.all(), stations.bridges()))
        : Optional.empty();
  }

  /** What is drawn on the pieces of roadbed before they leave the sheet. */
  public RoadbedMarks marks() {
    return new RoadbedMarks(spec, line, joints, supports());
  }

  /** Where the ends of the pieces are halved in thickness. */
  public HalfLaps laps() {
    return new HalfLaps(spec, line);
  }

  public SupportTable supports() {
    return parts().supports();
  }

  public AssemblySchedule schedule() {
    return parts().schedule();
  }

  public ShoppingList shopping() {
    return parts().shopping();
  }

  /** One verdict for each rule; remedies in round figures of this plan's style. */
  public List<Verdict> verdicts() {
    return verdicts;
  }

  /** What stands out beyond the roadbed's outer edge (or its inner): ears, plates, edge strips. */
  public Length beyondEdge(boolean outer) {
    return stations.bridges().stream()
        .filter(bridge -> bridge.form() == Bridge.Form.STRIP && bridge.outer() == outer)
        .map(bridge -> bridge.cut(style).breadth())
        .reduce(spec.beyondEdges(), Length::longer);
  }

  /** The verdicts with remedies that were tried out and hold; worked out when first asked for. */
  public List<Verdict> advice() {
    return advice
        .updateAndGet(known -> known.isPresent() ? known : Optional.of(new Advice(this).verdicts()))
        .orElseThrow();
  }

  /** Whether no rule fails. */
  public boolean works() {
    return verdicts.stream().noneMatch(verdict -> verdict.state() == State.FAIL);
  }

  /** The height budget in the open, then under each thing that hangs below. */
  public List<HeightBudget> budgets() {
    return budgets;
  }

  /**
   * Height above the rails of the tallest train that passes everywhere, with the job's spare height
   * kept above it: the least free height in the open, under whatever hangs below the turns, at the
   * entry and at the exit, less the spare. Zero where nothing would pass; empty where no turn lies
   * over another, so that any train does.
   */
  public Optional<Length> tallestTrain() {
    return verdicts.stream()
        .filter(verdict -> verdict.rule() == Rule.FREE_HEIGHT)
        .map(verdict -> (Length) verdict.measured().orElseThrow())
        .min(Comparator.naturalOrder())
        .map(least -> least.minus(spec.traffic().spare()).longer(Length.ZERO));
  }

  /** The room where the approach runs under the ring or the exit over it. */
  public EndClearance clearanceAt(End end) {
    return new EndClearance(spec, climb, end);
  }

  /** Grade of each track, inner first. */
  public List<Grade> trackGrades() {
    return spec.ground().trackRadii().stream()
        .map(radius -> climb.gradeOver(spec.ground().runPerTurn(radius)))
        .toList();
  }

  /** Grade with the curve's drag of each track, inner first: an estimate. */
  public List<Grade> equivalentGrades() {
    return spec.ground().trackRadii().stream().map(this::equivalentGrade).toList();
  }

  private Grade equivalentGrade(Length radius) {
    Grade grade = climb.gradeOver(spec.ground().runPerTurn(radius));
    return Grade.ofPercent(grade.percent() + CurveDrag.percent(spec.scale(), radius));
  }

  /** Length of each track on the ring, inner first. */
  public List<Length> trackLengths() {
    return spec.ground().trackRadii().stream()
        .map(radius -> spec.ground().runPerTurn(radius).times(climb.turns()))
        .toList();
  }

  /** Everything to be cut from the roadbed's sheets, holes included. */
  public List<Demand> demands() {
    List<Demand> demands =
        new ArrayList<>(roadbed().kinds().stream().map(PieceKind::demand).toList());
    demands.addAll(new SmallParts(spec, joints, stations.bridges(), supports(), style).demands());
    return demands;
  }

  /** The same without holes, which do not matter to packing: same ids, frames and counts. */
  public List<Demand> blankDemands() {
    return demands().stream().map(HelixPlan::blank).toList();
  }

  private static Demand blank(Demand demand) {
    Piece piece = demand.piece();
    return new Demand(Piece.of(piece.id(), piece.name(), piece.shape().blank()), demand.count());
  }

  /**
   * The same helix with its rods on ears outside the roadbed's edge; empty if it does not stand on
   * rods. Ears let the roadbed stay narrow and cost room on the sheets.
   */
  public Optional<HelixPlan> withEars(Riser.Ear ear) {
    return withRods(rods -> rods.onEars(ear));
  }

  /** The same helix with its rods inside the roadbed's edge; empty if it does not stand on rods. */
  public Optional<HelixPlan> withoutEars() {
    return withRods(Riser.ThreadedRods::withoutEars);
  }

  private Optional<HelixPlan> withRods(UnaryOperator<Riser.ThreadedRods> change) {
    return spec.supports().riser() instanceof Riser.ThreadedRods rods
        ? Optional.of(of(spec.with(spec.supports().with(change.apply(rods))), style))
        : Optional.empty();
  }

  /** Plates and blocks that are cut from the roadbed's sheets. */
  public List<Demand> smallParts() {
    return new SmallParts(spec, joints, stations.bridges(), supports(), style).demands();
  }

  /**
   * Weight of one piece cut from the sheets, in kilograms: of its own thickness, and as built, with
   * the wood of its half-laps cut away.
   */
  public double weightOf(Piece piece) {
    return new Weights(this).of(piece);
  }

  /** Weight of all wood cut from the sheets, in kilograms. */
  public double woodWeight() {
    return new Weights(this).sheets();
  }

  /**
   * Weight of what holds the turns up, in kilograms: rods with their nuts and washers, or all that
   * is cut from boards: blocks, braces and battens. Zero where blocks come from the sheets, whose
   * wood is counted there.
   */
  public double riserWeight() {
    return new Weights(this).risers();
  }

  /**
   * Weight of the wood that is neither cut from the sheets nor from the boards of the blocks, in
   * kilograms: plates that are bought, cross pieces, edge strips, and battens beside rods.
   */
  public double boughtWoodWeight() {
    return new Weights(this).boughtWood();
  }
}
