package curvestock.helix.verdict;

import curvestock.helix.build.HoleRule;
import curvestock.helix.build.Joints;
import curvestock.helix.build.SplicePlates;
import curvestock.helix.build.Stations;
import curvestock.helix.build.SupportBulge;
import curvestock.helix.course.Climb;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.standard.Sourced;
import curvestock.helix.standard.SupportSpacing;
import curvestock.helix.verdict.Verdict.Result;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Supports, holes, joints and plates against each other. */
final class SupportRule {

  /** Wood to leave between a hole and the end of a piece: our own choice, 3/8 in. */
  private static final Length WOOD_AT_HOLE = Length.ofInches(0.375);

  /** A span half as long again as the widest in use is past arguing about. */
  private static final double TOO_WIDE = 1.5;

  private final HelixSpec spec;
  private final Climb climb;
  private final Joints joints;
  private final Stations stations;
  private final Wording wording;

  SupportRule(HelixSpec spec, Climb climb, Joints joints, Stations stations, Wording wording) {
    this.spec = spec;
    this.climb = climb;
    this.joints = joints;
    this.stations = stations;
    this.wording = wording;
  }

  List<Verdict> verdicts() {
    List<Verdict> verdicts = new ArrayList<>();
    verdicts.add(spacing());
    verdicts.add(bulge());
    if (spec.supports().riser() instanceof Riser.ThreadedRods rods) {
      verdicts.add(holes(rods));
      patterns().ifPresent(verdicts::add);
    } else {
      verdicts.add(onRisers());
    }
    verdicts.add(stagger());
    if (spec.construction() instanceof Construction.ButtWithPlate butt) {
      verdicts.add(plate(new SplicePlates(butt, spec.ground(), joints.all().size())));
    }
    return verdicts;
  }

  private Verdict spacing() {
    Sourced<SupportSpacing.Range> range = SupportSpacing.forThickness(spec.plywood());
    Length widest = range.value().widest();
    String finding =
        wording.length(stations.spacing())
            + " apart (plywood of this thickness wants "
            + wording.length(range.value().careful())
            + " to "
            + wording.length(widest)
            + ", common practice)";
    if (stations.spacing().compareTo(widest) <= 0) {
      return Verdict.ok("support spacing", finding);
    }
    int wanted = (int) Math.ceil(climb.runPerTurn().millimetres() / widest.millimetres() - 1e-9);
    Result result =
        stations.spacing().compareTo(widest.times(TOO_WIDE)) > 0 ? Result.FAILS : Result.TIGHT;
    return new Verdict(
        "support spacing", result, finding, "take at least " + wanted + " supports a turn");
  }

  private Verdict bulge() {
    SupportBulge bulge = SupportBulge.of(spec.ground(), spec.supports());
    return Verdict.ok(
        "support edges",
        "between supports the centre line bulges "
            + wording.length(bulge.bulge())
            + ": "
            + (bulge.needsBothEdges()
                ? "hold both edges at every station"
                : "one support in the middle will do on the first turn"));
  }

  private Verdict holes(Riser.ThreadedRods rods) {
    HoleRule rule = new HoleRule(spec, climb);
    Length diameter = rule.diameter(rods);
    double away = stations.leastDistanceToAvoid(joints);
    Length wanted = diameter.times(0.5).plus(WOOD_AT_HOLE);
    String finding =
        "holes of "
            + wording.length(diameter)
            + " (slope's share "
            + wording.length(rule.slop())
            + "), nearest joint or end "
            + wording.length(Length.ofMillimetres(away))
            + " away";
    return away >= wanted.millimetres()
        ? Verdict.ok("rod holes", finding)
        : new Verdict(
            "rod holes",
            Result.FAILS,
            finding,
            "holes must keep "
                + wording.length(wanted)
                + " from joints and ends: let the plan place the first support, make the supports a multiple"
                + " of the pieces per turn, or take another segment angle");
  }

  /** Rods that are no multiple of the pieces of a turn give pieces of several hole patterns. */
  private Optional<Verdict> patterns() {
    double pieces = 360 / spec.segmentation().segment().degrees();
    int whole = (int) Math.rint(pieces);
    int perTurn = spec.supports().perTurn();
    if (Math.abs(pieces - whole) > 1e-6 || perTurn % whole == 0) {
      return Optional.empty();
    }
    int below = perTurn / whole * whole;
    return Optional.of(
        new Verdict(
            "hole patterns",
            Result.TIGHT,
            perTurn + " supports a turn on " + whole + " pieces: pieces differ by their holes",
            "take "
                + (below >= 3 ? below + " or " : "")
                + (below + whole)
                + " supports a turn, and whole pieces are all alike"));
  }

  private Verdict onRisers() {
    int all = joints.all().size();
    int on = stations.jointsOnStations(joints, 1).size();
    return Verdict.ok(
        "joints on risers",
        on
            + " of "
            + all
            + " joints stand on a riser"
            + (on < all ? " (all do where supports are a multiple of the pieces per turn)" : ""));
  }

  private Verdict stagger() {
    double stagger = joints.stagger();
    String finding =
        Double.isInfinite(stagger)
            ? "no joint lies over another"
            : stagger == 0
                ? "joints of one layer stand in line from turn to turn"
                : "joints of one layer move on by at least "
                    + wording.length(Length.ofMillimetres(stagger))
                    + " from turn to turn";
    return Verdict.ok("joint stagger", finding);
  }

  private Verdict plate(SplicePlates plates) {
    String finding =
        wording.length(plates.width())
            + " wide, the roadbed takes "
            + wording.length(plates.widestThatFits());
    return plates.fits()
        ? Verdict.ok("splice plate", finding)
        : new Verdict(
            "splice plate",
            Result.FAILS,
            finding,
            "make it that narrow, shorter, or curved with the roadbed");
  }
}
