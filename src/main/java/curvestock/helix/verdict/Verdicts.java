package curvestock.helix.verdict;

import curvestock.helix.build.Bridge;
import curvestock.helix.build.Bridging;
import curvestock.helix.build.Joint;
import curvestock.helix.build.Joints;
import curvestock.helix.build.Stations;
import curvestock.helix.build.SupportTable;
import curvestock.helix.clearance.EndClearance;
import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.clearance.HeightBudget;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Climb;
import curvestock.helix.course.HeightProfile;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** All rules, in the order in which a builder would ask. */
public final class Verdicts {

  private static final double ROUNDING = 1e-6;

  /** Less than this is not worth a line of its own. */
  private static final double NOTICEABLE = 0.05;

  private final HelixSpec spec;
  private final Climb climb;
  private final CentreLine line;
  private final HeightProfile profile;
  private final Joints joints;
  private final Stations stations;

  public Verdicts(
      HelixSpec spec,
      Climb climb,
      CentreLine line,
      HeightProfile profile,
      Joints joints,
      Stations stations) {
    this.spec = spec;
    this.climb = climb;
    this.line = line;
    this.profile = profile;
    this.joints = joints;
    this.stations = stations;
  }

  /** One verdict for each rule that applies; remedies in round figures of the given style. */
  public List<Verdict> all(LengthStyle style) {
    List<Verdict> verdicts = new ArrayList<>();
    verdicts.addAll(new GradeRule(spec, climb, style).verdicts());
    verdicts.addAll(new HeightRule(spec, climb, style).verdicts(obstacles(), lessNearEnds()));
    for (End end : End.values()) {
      EndClearance clearance = new EndClearance(spec, climb, end);
      verdicts.addAll(new EndRule(spec, style).verdicts(end, clearance, hangingAt(end, clearance)));
    }
    verdicts.addAll(new RadiusRule(spec, style).verdicts());
    verdicts.addAll(new BesideRule(spec, style).verdicts());
    verdicts.addAll(new PassageRule(spec, climb, style).verdicts());
    verdicts.addAll(new CurveRule(spec, climb, style).verdicts());
    verdicts.addAll(new SupportRule(spec, climb, line, joints, stations, style).verdicts());
    verdicts.addAll(new LeadRule(spec, climb, stations).verdicts());
    SupportTable supports = new SupportTable(spec, climb, line, profile, joints, stations);
    RodPlateRule.verdict(spec, supports).ifPresent(verdicts::add);
    verdicts.add(new ApproachRule(spec, climb, line, stations, supports).verdict());
    return List.copyOf(verdicts);
  }

  /** Where a train may pass between turns: in the open, and under whatever hangs below. */
  public List<HeightBudget> budgets() {
    return obstacles().stream().map(Obstacle::budget).toList();
  }

  private List<Obstacle> obstacles() {
    HeightBudget open = HeightBudget.inTheOpen(spec, climb.risePerTurn());
    List<Obstacle> obstacles = new ArrayList<>(List.of(new Obstacle(Place.OPEN, open)));
    Length joint = spec.construction().hangsBelow();
    Length cross = spec.supports().riser().crossPiece();
    if (joint.millimetres() > 0) {
      obstacles.add(new Obstacle(Place.UNDER_PLATE, open.less("splice plate", joint)));
      leastOverJoints()
          .map(lap -> HeightBudget.inTheOpen(spec, lap).less("splice plate", joint))
          .ifPresent(budget -> obstacles.add(new Obstacle(Place.UNDER_PLATE_NEAR_END, budget)));
    }
    stations.bridges().stream()
        .filter(bridge -> bridge.count() > 1 && bridge.hangsBelow().millimetres() > 0)
        .map(this::under)
        .min(Comparator.comparing(HeightBudget::free))
        .ifPresent(budget -> obstacles.add(new Obstacle(Place.UNDER_BATTEN, budget)));
    if (cross.millimetres() > 0) {
      obstacles.add(new Obstacle(Place.UNDER_CROSS_PIECE, open.less("cross piece", cross)));
    }
    if (platesLieOnCrossPieces()) {
      obstacles.add(
          new Obstacle(
              Place.UNDER_PLATE_ON_CROSS_PIECE,
              open.less("splice plate", joint).less("cross piece", cross)));
    }
    return obstacles;
  }

  /** Only where it hangs does a batten take height. */
  private HeightBudget under(Bridge bridge) {
    return HeightBudget.inTheOpen(spec, Bridging.leastClimb(bridge, profile, climb))
        .less("batten over " + bridge.over(), bridge.hangsBelow());
  }

  /** Least climb from the turn below to a joint above it, where a vertical curve makes it less. */
  private Optional<Length> leastOverJoints() {
    double run = climb.runPerTurn().millimetres();
    return lessThanARise(
        joints.all().stream().mapToDouble(Joint::at).filter(at -> at >= run - ROUNDING));
  }

  /**
   * How much less than elsewhere the turns leave between them where a vertical curve runs into the
   * ring: it costs most at the first place with a turn below and at the last.
   */
  private Optional<Length> lessNearEnds() {
    return lessThanARise(DoubleStream.of(climb.runPerTurn().millimetres(), climb.ringLength()))
        .map(climb.risePerTurn()::minus);
  }

  private Optional<Length> lessThanARise(DoubleStream places) {
    double run = climb.runPerTurn().millimetres();
    double least =
        places
            .map(at -> profile.heightAt(at) - profile.heightAt(at - run))
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    return least < climb.risePerTurn().millimetres() - NOTICEABLE
        ? Optional.of(Length.ofMillimetres(least))
        : Optional.empty();
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
        joints.all().stream()
            .map(Joint::at)
            .anyMatch(at -> at >= run - overlap && at <= run + ROUNDING);
    boolean station =
        stations.ring().stream()
            .flatMap(each -> each.places().stream())
            .anyMatch(at -> at >= run - overlap && at <= run + ROUNDING);
    Length hanging = joint ? spec.construction().hangsBelow() : Length.ZERO;
    Length below = station ? hanging.plus(spec.supports().riser().crossPiece()) : hanging;
    return stations.bridges().stream()
        .filter(bridge -> bridge.covers(run - overlap, run))
        .map(Bridge::hangsBelow)
        .reduce(below, Length::longer);
  }
}
