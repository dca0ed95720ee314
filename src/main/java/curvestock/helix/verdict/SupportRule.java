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
import curvestock.helix.spec.Setting;
import curvestock.helix.standard.SupportSpacing;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

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
  private final LengthStyle style;

  SupportRule(
      HelixSpec spec,
      Climb climb,
      CentreLine line,
      Joints joints,
      Stations stations,
      LengthStyle style) {
    this.line = line;
    this.spec = spec;
    this.climb = climb;
    this.joints = joints;
    this.stations = stations;
    this.style = style;
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
    SupportSpacing.Range range = SupportSpacing.forThickness(spec.plywood()).value();
    Length span = widestSpan();
    boolean ok = span.compareTo(range.most()) <= 0;
    boolean tooWide = span.compareTo(range.widest().times(TOO_WIDE)) > 0;
    int wanted =
        (int) Math.ceil(climb.runPerTurn().millimetres() / range.widest().millimetres() - 1e-9);
    return Verdict.of(Rule.SUPPORT_SPACING, ok ? State.OK : tooWide ? State.FAIL : State.MARGINAL)
        .measuring(span)
        .against(range.most())
        .with(Fact.CAREFUL, range.careful())
        .with(Fact.WIDEST, range.widest())
        .fixedBy(
            stations.spacing().compareTo(range.most()) <= 0 ? List.of() : List.of(perTurn(wanted)));
  }

  /** Between neighbours that stand, a support left out without a strip included. */
  private Length widestSpan() {
    return Stream.of(stations.spacing(), stations.widestSpan(true), stations.widestSpan(false))
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  /** At least so many, and a multiple of the pieces of a turn where one is wanted. */
  private Change perTurn(int least) {
    int now = spec.supports().perTurn();
    int pieces = piecesPerTurn();
    boolean multiple =
        pieces > 0 && (spec.supports().riser() instanceof Riser.ThreadedRods || now % pieces == 0);
    int then = multiple ? (least + pieces - 1) / pieces * pieces : least;
    return new Change(Setting.SUPPORTS_PER_TURN, new Count(now), new Count(then));
  }

  /** Zero where a turn is no whole number of pieces. */
  private int piecesPerTurn() {
    double pieces = 360 / spec.segmentation().segment().degrees();
    int whole = (int) Math.rint(pieces);
    return Math.abs(pieces - whole) > 1e-6 ? 0 : whole;
  }

  private Verdict bulge() {
    SupportBulge bulge = SupportBulge.of(spec.ground(), spec.supports());
    boolean both = bulge.needsBothEdges() || spec.supports().riser() instanceof Riser.ThreadedRods;
    return Verdict.ok(Rule.SUPPORT_EDGES)
        .measuring(bulge.bulge())
        .with(Fact.EDGES, new Count(both ? 2 : 1));
  }

  private Verdict holes(Riser.ThreadedRods rods) {
    HoleRule rule = new HoleRule(spec, climb);
    Length diameter = rule.diameter(rods);
    Length away = Length.ofMillimetres(stations.leastDistanceToAvoid(joints));
    Length wanted = diameter.times(0.5).plus(HoleRule.WOOD_AT_END);
    return Verdict.of(Rule.ROD_HOLES, away.compareTo(wanted) >= 0 ? State.OK : State.FAIL)
        .measuring(away)
        .against(wanted)
        .with(Fact.HOLE, diameter)
        .with(Fact.SLOPE_SHARE, rule.slop());
  }

  /** Rods that are no multiple of the pieces of a turn give pieces of several hole patterns. */
  private Optional<Verdict> patterns() {
    int pieces = piecesPerTurn();
    int perTurn = spec.supports().perTurn();
    if (pieces == 0 || perTurn % pieces == 0) {
      return Optional.empty();
    }
    return Optional.of(
        Verdict.of(Rule.HOLE_PATTERNS, State.MARGINAL)
            .measuring(new Count(perTurn))
            .with(Fact.ALL, new Count(pieces))
            .fixedBy(perTurn(perTurn)));
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
    boolean ok = nearest >= wanted.millimetres();
    Verdict verdict = Verdict.of(Rule.EARS, ok ? State.OK : State.FAIL).against(wanted);
    return Optional.of(
        Double.isInfinite(nearest) ? verdict : verdict.measuring(Length.ofMillimetres(nearest)));
  }

  private Verdict onRisers() {
    return Verdict.ok(Rule.JOINTS_ON_RISERS)
        .measuring(new Count(stations.jointsOnSupports(joints).size()))
        .with(Fact.ALL, new Count(joints.all().size()));
  }

  private Verdict stagger() {
    double stagger = joints.stagger();
    Verdict verdict = Verdict.ok(Rule.JOINT_STAGGER);
    if (Double.isInfinite(stagger)) {
      return verdict;
    }
    Verdict measured = verdict.measuring(Length.ofMillimetres(stagger));
    int all = joints.all().size();
    boolean held =
        spec.supports().riser() instanceof Riser.WoodBlocks
            && stations.jointsOnSupports(joints).size() == all;
    return held ? measured.with(Fact.ALL, new Count(all)) : measured;
  }

  private Verdict plate(SplicePlates plates) {
    Length wood = plates.woodBetweenScrews();
    Length out =
        Length.ofMillimetres(
            -joints.all().stream()
                .mapToDouble(joint -> plates.roomAt(line, joint))
                .min()
                .orElse(0));
    boolean fails = out.millimetres() > TOUCHING;
    boolean ok = wood.compareTo(WOOD_AT_SCREW) >= 0;
    Verdict verdict =
        Verdict.of(Rule.SPLICE_PLATE, fails ? State.FAIL : ok ? State.OK : State.MARGINAL)
            .measuring(plates.width())
            .against(plates.widestThatFits())
            .with(Fact.WOOD, wood)
            .with(Fact.WOOD_NEEDED, WOOD_AT_SCREW);
    if (fails) {
      Length now = spec.ground().width().minus(plates.width());
      Length then = style.roundUp(now.plus(out.times(2)));
      return verdict.with(Fact.OUT, out).fixedBy(new Change(Setting.PLATE_INSET, now, then));
    }
    return verdict;
  }
}
