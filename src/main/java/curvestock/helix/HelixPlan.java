package curvestock.helix;

import curvestock.helix.build.AssemblySchedule;
import curvestock.helix.build.Joints;
import curvestock.helix.build.PieceKind;
import curvestock.helix.build.Roadbed;
import curvestock.helix.build.ShoppingList;
import curvestock.helix.build.SmallParts;
import curvestock.helix.build.Stations;
import curvestock.helix.build.SupportTable;
import curvestock.helix.build.Weight;
import curvestock.helix.clearance.EndClearance;
import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.clearance.HeightBudget;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Climb;
import curvestock.helix.course.ClimbSolver;
import curvestock.helix.course.HeightProfile;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.standard.CurveDrag;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdicts;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;

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
  private final Roadbed roadbed;
  private final SupportTable supports;
  private final AssemblySchedule schedule;
  private final ShoppingList shopping;
  private final Verdicts verdicts;

  private HelixPlan(HelixSpec spec, LengthStyle style) {
    this.spec = spec;
    this.style = style;
    climb = new ClimbSolver(spec).solve();
    line = new CentreLine(spec, climb);
    profile = new HeightProfile(climb, spec.bottom(), spec.top());
    joints = new Joints(spec, climb);
    stations = new Stations(spec.supports(), climb, joints);
    roadbed = new Roadbed(spec, climb, line, joints, stations, style);
    supports = new SupportTable(spec, climb, line, profile, stations);
    schedule = new AssemblySchedule(spec, line, profile, roadbed);
    shopping = new ShoppingList(spec, joints, roadbed, supports, style);
    verdicts = new Verdicts(spec, climb, line, profile, joints, stations);
  }

  /**
   * Works the plan out; whether it works is for {@link #verdicts} to say.
   *
   * @throws IllegalArgumentException if what is stated contradicts itself or makes no helix; the
   *     message says what would
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
    return new HelixPlan(spec, style);
  }

  public HelixSpec spec() {
    return spec;
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
    return roadbed;
  }

  public SupportTable supports() {
    return supports;
  }

  public AssemblySchedule schedule() {
    return schedule;
  }

  public ShoppingList shopping() {
    return shopping;
  }

  /** One verdict for each rule, lengths in the given style. */
  public List<Verdict> verdicts(LengthStyle style) {
    return verdicts.all(style);
  }

  /** The height budget in the open, then under each thing that hangs below. */
  public List<HeightBudget> budgets() {
    return verdicts.budgets();
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
    return demands(roadbed.kinds().stream().map(PieceKind::demand).toList());
  }

  /** The same without holes, which do not matter to packing: same ids, frames and counts. */
  public List<Demand> blankDemands() {
    return demands(roadbed.kinds().stream().map(PieceKind::blankDemand).toList());
  }

  private List<Demand> demands(List<Demand> roadbedPieces) {
    List<Demand> demands = new ArrayList<>(roadbedPieces);
    demands.addAll(smallParts());
    return demands;
  }

  /** Plates and blocks that are cut from the roadbed's sheets. */
  public List<Demand> smallParts() {
    return new SmallParts(spec, joints, supports, style).demands();
  }

  /** Weight of one piece cut from the roadbed's sheets, in kilograms. */
  public double weightOf(Piece piece) {
    return new Weight(spec.woodDensity()).ofWood(piece.shape().area(), spec.stack().plywood());
  }

  /** Weight of all wood cut from the roadbed's sheets, in kilograms. */
  public double woodWeight() {
    return demands().stream()
        .mapToDouble(demand -> weightOf(demand.piece()) * demand.count())
        .sum();
  }
}
