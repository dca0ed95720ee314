package curvestock.helix.verdict;

import curvestock.helix.build.HoleRule;
import curvestock.helix.build.Joints;
import curvestock.helix.build.SplicePlates;
import curvestock.helix.build.Stations;
import curvestock.helix.build.SupportBulge;
import curvestock.helix.course.CentreLine;
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

  /** A thousandth of a millimetre is rounding. */
  private static final double TOUCHING = 1e-3;

  /** Wood to leave beside a screw's hole: our own choice. */
  private static final Length WOOD_AT_SCREW = Length.ofMillimetres(6);

  /** A span half as long again as the widest in use is past arguing about. */
  private static final double TOO_WIDE = 1.5;

  private final HelixSpec spec;
  private final Climb climb;
  private final CentreLine line;
  private final Joints joints;
  private final Stations stations;
  private final Wording wording;

  SupportRule(
      HelixSpec spec,
      Climb climb,
      CentreLine line,
      Joints joints,
      Stations stations,
      Wording wording) {
    this.line = line;
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
    earsBesidePlates().ifPresent(verdicts::add);
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
            + (bulge.needsBothEdges() || spec.supports().riser() instanceof Riser.ThreadedRods
                ? "hold both edges at every station"
                : "one support in the middle will do where no turn stands above, two at the edges"
                    + " elsewhere"));
  }

  private Verdict holes(Riser.ThreadedRods rods) {
    HoleRule rule = new HoleRule(spec, climb);
    Length diameter = rule.diameter(rods);
    double away = stations.leastDistanceToAvoid(joints);
    Length wanted = diameter.times(0.5).plus(HoleRule.WOOD_AT_END);
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

  /** An ear cannot be where a plate lies against the edge. */
  private Optional<Verdict> earsBesidePlates() {
    if (!(spec.construction() instanceof Construction.PlatesBeside beside)
        || !(spec.supports().riser() instanceof Riser.ThreadedRods rods)
        || rods.ear().isEmpty()) {
      return Optional.empty();
    }
    Length wanted = beside.length().plus(rods.ear().get().width()).times(0.5);
    double nearest =
        joints.all().stream()
            .mapToDouble(joint -> stations.distanceToStation(joint.at()))
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    String finding =
        "ears and side plates need "
            + wording.length(wanted)
            + " from joint to rod, the nearest are "
            + wording.length(Length.ofMillimetres(nearest))
            + " apart";
    return Optional.of(
        nearest >= wanted.millimetres()
            ? Verdict.ok("ears beside plates", finding)
            : new Verdict(
                "ears beside plates",
                Result.FAILS,
                finding,
                "take shorter plates, narrower ears, or supports further from the joints"));
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
    Length wood = plates.woodBetweenScrews();
    String finding =
        wording.length(plates.width())
            + " wide, the roadbed takes "
            + wording.length(plates.widestThatFits())
            + "; "
            + wording.length(wood)
            + " of wood beside each screw hole";
    double room =
        joints.all().stream()
            .mapToDouble(joint -> plates.roomAt(line, joint))
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    if (room < -TOUCHING) {
      return new Verdict(
          "splice plate",
          Result.FAILS,
          finding + "; it stands out by " + wording.length(Length.ofMillimetres(-room)),
          "make it that narrow, shorter, or (on a circle) curved with the roadbed");
    }
    return wood.compareTo(WOOD_AT_SCREW) >= 0
        ? Verdict.ok("splice plate", finding)
        : new Verdict(
            "splice plate",
            Result.TIGHT,
            finding,
            "take fewer screws each side or a longer plate: less than "
                + wording.length(WOOD_AT_SCREW)
                + " can split");
  }
}
