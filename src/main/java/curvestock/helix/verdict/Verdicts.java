package curvestock.helix.verdict;

import curvestock.helix.build.Joint;
import curvestock.helix.build.Joints;
import curvestock.helix.build.Stations;
import curvestock.helix.clearance.EndClearance;
import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.clearance.HeightBudget;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Climb;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;

/** All rules, in the order in which a builder would ask. */
public final class Verdicts {

  private final HelixSpec spec;
  private final Climb climb;
  private final CentreLine line;
  private final Joints joints;
  private final Stations stations;

  public Verdicts(HelixSpec spec, Climb climb, CentreLine line, Joints joints, Stations stations) {
    this.spec = spec;
    this.climb = climb;
    this.line = line;
    this.joints = joints;
    this.stations = stations;
  }

  /** One verdict for each rule that applies, lengths in the given style. */
  public List<Verdict> all(LengthStyle style) {
    Wording wording = new Wording(style);
    List<Verdict> verdicts = new ArrayList<>();
    verdicts.addAll(new GradeRule(spec, climb, wording).verdicts());
    verdicts.addAll(new HeightRule(spec, climb, wording).verdicts(budgets(), places()));
    for (End end : End.values()) {
      EndClearance clearance = new EndClearance(spec, climb, end);
      verdicts.addAll(
          new EndRule(spec, wording).verdicts(end, clearance, hangingAt(end, clearance)));
    }
    verdicts.addAll(new RadiusRule(spec, wording).verdicts());
    verdicts.addAll(new BesideRule(spec, wording).verdicts());
    verdicts.addAll(new PassageRule(spec, climb, wording).verdicts());
    verdicts.addAll(new CurveRule(spec, climb, wording).verdicts());
    verdicts.addAll(new SupportRule(spec, climb, joints, stations, wording).verdicts());
    verdicts.add(new ApproachRule(spec, line, stations).verdict());
    return verdicts;
  }

  /** Where a train may pass between turns: in the open, and under whatever hangs below. */
  public List<HeightBudget> budgets() {
    HeightBudget open = HeightBudget.inTheOpen(spec, climb.risePerTurn());
    List<HeightBudget> budgets = new ArrayList<>(List.of(open));
    Length joint = spec.construction().hangsBelow();
    Length cross = spec.supports().riser().crossPiece();
    if (joint.millimetres() > 0) {
      budgets.add(open.less("splice plate", joint));
    }
    if (cross.millimetres() > 0) {
      budgets.add(open.less("cross piece", cross));
    }
    if (platesLieOnCrossPieces()) {
      budgets.add(open.less("splice plate", joint).less("cross piece", cross));
    }
    return budgets;
  }

  /** What the budgets are called, in the same order. */
  public List<String> places() {
    List<String> places = new ArrayList<>(List.of("in the open"));
    boolean joint = spec.construction().hangsBelow().millimetres() > 0;
    boolean cross = spec.supports().riser().crossPiece().millimetres() > 0;
    if (joint) {
      places.add("under a splice plate");
    }
    if (cross) {
      places.add("under a riser's cross piece");
    }
    if (platesLieOnCrossPieces()) {
      places.add("under a splice plate on a cross piece");
    }
    return places;
  }

  private boolean platesLieOnCrossPieces() {
    return spec.construction() instanceof Construction.ButtWithPlate butt
        && spec.supports().riser() instanceof Riser.WoodBlocks blocks
        && blocks.crossPiece().millimetres() > 0
        && !stations
            .jointsOnStations(joints, butt.plate().length().plus(blocks.along()).millimetres() / 2)
            .isEmpty();
  }

  /** What hangs below the upper roadbed where approach and ring overlap. */
  private Length hangingAt(End end, EndClearance clearance) {
    double overlap = clearance.overlapLength().millimetres();
    if (end == End.TOP) {
      // The exit's own lead is the upper roadbed here: one piece as far as it reaches.
      boolean onePiece = spec.top().leadIn().millimetres() >= overlap;
      return onePiece ? Length.ZERO : spec.construction().hangsBelow();
    }
    double run = climb.runPerTurn().millimetres();
    boolean joint =
        joints.all().stream().map(Joint::at).anyMatch(at -> at >= run - overlap && at <= run);
    boolean station =
        stations.all().stream()
            .flatMap(each -> each.places().stream())
            .anyMatch(at -> at >= run - overlap && at <= run);
    Length hanging = joint ? spec.construction().hangsBelow() : Length.ZERO;
    return station ? hanging.plus(spec.supports().riser().crossPiece()) : hanging;
  }
}
