package curvestock.helix.build;

import curvestock.geometry.Point;
import curvestock.helix.build.Bridge.Form;
import curvestock.helix.clearance.EndClearance;
import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.clearance.HeightNeed;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Climb;
import curvestock.helix.course.HeightProfile;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.standard.SupportSpacing;
import curvestock.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How to carry an edge of the roadbed over supports that are left out: by a batten under it, or,
 * where that would take height that the trains need, by a strip on edge beside the track.
 *
 * <p>A batten, with half of the roadbed's width glued on as its flange, must be as stiff for the
 * gap as the roadbed's half alone is for the widest span in use: the deflection of a uniform load
 * is the same share of the span if the second moment of area grows with its cube (5 q L⁴ / 384 EI,
 * USDA Wood Handbook 2010, Table 9-1; both woods taken as equally stiff).
 */
public final class Bridging {

  /** Beyond so many of the widest spans in use nobody should lean on it: our own choice. */
  private static final double MOST_SPANS = 4;

  /** A strip may be cut to the next quarter of an inch. */
  private static final double CUT_FULL = 25.4 / 4;

  /** Where no boards are sawn anyway; a common batten. */
  private static final double BREADTH = 30;

  private static final double LEAST_DEPTH = 6;
  private static final double MOST_DEPTH = 60;

  /** Two layers of hardboard or plywood that still bend: our own choice. */
  private static final double STRIP = 6;

  /** A sixteenth of the span, as for joists: common practice, no source. */
  private static final double STRIP_SHARE = 16;

  /** Between a batten's end and the block or washer that it ends at. */
  private static final double AT_END = 2;

  private static final int SAMPLES = 16;

  private final HelixSpec spec;
  private final Climb climb;
  private final CentreLine line;
  private final Joints joints;
  private final EntryWay way;
  private final HeightProfile profile;
  private final double half;

  Bridging(HelixSpec spec, Climb climb, CentreLine line, Joints joints) {
    this.spec = spec;
    this.climb = climb;
    this.line = line;
    this.joints = joints;
    way = new EntryWay(spec, line);
    profile = new HeightProfile(climb, spec.bottom(), spec.top());
    half = spec.ground().width().millimetres() / 2;
  }

  /** Whether the plywood spans so far by itself. */
  boolean spans(double gap) {
    return gap <= widest();
  }

  private double widest() {
    return SupportSpacing.forThickness(spec.plywood()).value().widest().millimetres();
  }

  /**
   * What carries the edge over the gap; empty if it is too wide, or neither form has room.
   *
   * @param others that are there already
   */
  Optional<Bridge> over(Gap gap, List<Bridge> others) {
    if (gap.to() - gap.from() > MOST_SPANS * widest()) {
      return Optional.empty();
    }
    Bridge strip = strip(gap);
    return batten(strip)
        .filter(batten -> others.stream().noneMatch(other -> meets(batten, other)))
        .filter(this::leavesHeight)
        .or(() -> Optional.of(strip).filter(this::fits));
  }

  /**
   * An edge over a station whose neighbours stand at the two distances along the line.
   *
   * @param between the neighbours' names
   */
  record Gap(Station station, boolean outer, double from, double to, String between) {}

  /** Whether two battens would lie in one place. */
  private boolean meets(Bridge a, Bridge b) {
    if (b.form() != Form.BATTEN || a.isOne(b)) {
      return false;
    }
    double from = Math.max(a.from(), b.from());
    double to = Math.min(a.to(), b.to());
    double apart = a.breadth().plus(b.breadth()).millimetres() / 2;
    return from < to
        && IntStream.rangeClosed(0, SAMPLES)
            .mapToDouble(i -> from + (to - from) * i / SAMPLES)
            .anyMatch(at -> Math.abs(aside(a, at) - aside(b, at)) < apart);
  }

  private Bridge strip(Gap gap) {
    double wide = gap.to() - gap.from();
    double side = gap.outer() ? half : -half;
    double length = 0;
    for (int i = 0; i < SAMPLES; i++) {
      double at = gap.from() + wide * i / SAMPLES;
      length += beside(at, side).distance(beside(at + wide / SAMPLES, side));
    }
    return new Bridge(
        List.of(gap.station()),
        gap.outer(),
        gap.from(),
        gap.to(),
        gap.between(),
        Form.STRIP,
        Length.ofMillimetres(length).plus(Bridge.OVERLAP.times(2)),
        Length.ofMillimetres(STRIP),
        stripDepth(Length.ofMillimetres(wide)),
        side);
  }

  /** How deep a strip on edge is for a span: a share of it, up to the next 5 mm. */
  public static Length stripDepth(Length span) {
    return Length.ofMillimetres(5 * Math.ceil(span.millimetres() / STRIP_SHARE / 5));
  }

  private Point beside(double at, double outwards) {
    return line.at(at).toLeft(-line.inwards() * outwards);
  }

  /**
   * The strip of the turn above begins one rise higher in the same place; ears are in its way, and
   * side plates that it would meet halfway.
   */
  private boolean fits(Bridge strip) {
    double rise = climb.risePerTurn().millimetres();
    boolean plates =
        spec.construction() instanceof Construction.PlatesBeside beside
            && !new SidePlates(beside, spec.ground(), joints.all(), List.of()).leaveRoomFor(strip);
    return !spec.hasEars()
        && !plates
        && (strip.count() == 1 || strip.depth().millimetres() + CUT_FULL <= rise);
  }

  /** A straight one in place of the strip; empty if it cannot lie under the roadbed. */
  private Optional<Bridge> batten(Bridge strip) {
    if (platesBetween(strip)) {
      return Optional.empty();
    }
    boolean boards =
        spec.supports().riser() instanceof Riser.WoodBlocks wood && wood.stock().isPresent();
    double breadth = boards ? blocks().along().millimetres() : BREADTH;
    double depth = depth(strip.to() - strip.from(), breadth);
    if (boards && depth <= blocks().width().millimetres()) {
      depth = blocks().width().millimetres();
    } else if (boards) {
      breadth = blocks().width().millimetres();
      depth = Math.max(depth(strip.to() - strip.from(), breadth), blocks().along().millimetres());
    }
    if (depth > MOST_DEPTH || (boards && depth > blocks().along().millimetres())) {
      return Optional.empty();
    }
    double edge = half - breadth / 2;
    double ends = Math.max(-edge, Math.min(edge, strip.outer() ? way.offset() : -way.offset()));
    double outside = -edge - middle(strip, ends);
    ends = outside > 0 ? ends + outside : ends;
    if (ends > edge || middle(strip, ends) < -edge - 1) {
      return Optional.empty();
    }
    double inset = 2 * (way.halfAlong() + AT_END);
    double length = beside(strip.from(), ends).distance(beside(strip.to(), ends)) - inset;
    return Optional.of(
        new Bridge(
            strip.stations(),
            strip.outer(),
            strip.from(),
            strip.to(),
            strip.between(),
            Form.BATTEN,
            Length.ofMillimetres(length),
            Length.ofMillimetres(breadth),
            Length.ofMillimetres(depth),
            ends));
  }

  private Riser.WoodBlocks blocks() {
    return (Riser.WoodBlocks) spec.supports().riser();
  }

  /** A plate under a joint is in a batten's way, also if it reaches in from a support. */
  private boolean platesBetween(Bridge bridge) {
    if (!(spec.construction() instanceof Construction.ButtWithPlate butt)) {
      return false;
    }
    double reach = butt.plate().length().millimetres() / 2 - way.halfAlong() - AT_END;
    return joints.all().stream()
        .anyMatch(joint -> bridge.covers(joint.at() - reach, joint.at() + reach));
  }

  /** How far outwards of the centre line a batten passes in its middle. */
  private double middle(Bridge bridge, double ends) {
    return aside(bridge, ends, (bridge.from() + bridge.to()) / 2);
  }

  private double aside(Bridge batten, double at) {
    return aside(batten, batten.outwards(), at);
  }

  /** How far outwards of the centre line a straight with such ends passes there. */
  private double aside(Bridge bridge, double ends, double at) {
    double part = (at - bridge.from()) / (bridge.to() - bridge.from());
    Point from = beside(bridge.from(), ends);
    Point there = from.plus(beside(bridge.to(), ends).minus(from).times(part));
    Waypoint here = line.at(at);
    Point out = here.toLeft(-line.inwards()).minus(here.point());
    return there.minus(here.point()).dot(out);
  }

  /** In whole millimetres: as stiff with the roadbed's half as the gap asks. */
  private double depth(double gap, double breadth) {
    double thick = spec.plywood().millimetres();
    double wanted = half * Math.pow(thick * gap / widest(), 3) / 12;
    double depth = LEAST_DEPTH;
    while (depth <= MOST_DEPTH && stiffness(thick, breadth, depth) < wanted) {
      depth++;
    }
    return depth;
  }

  /** Second moment of area of half the roadbed with the batten below, in mm⁴. */
  private double stiffness(double thick, double breadth, double depth) {
    double flange = half * thick;
    double web = breadth * depth;
    double apart = (thick + depth) / 2;
    return half * Math.pow(thick, 3) / 12
        + breadth * Math.pow(depth, 3) / 12
        + flange * web / (flange + web) * apart * apart;
  }

  /**
   * Whether the free height below is no worse judged than without it, on turns and at the entry.
   */
  private boolean leavesHeight(Bridge batten) {
    HeightNeed need = HeightNeed.of(spec);
    Length open = leastClimb(batten, profile, climb).minus(spec.railAboveUnderside());
    if (batten.count() > 1 && !enough(need, open, batten.depth())) {
      return false;
    }
    EndClearance entry = new EndClearance(spec, climb, End.BOTTOM);
    double run = climb.runPerTurn().millimetres();
    return !batten.covers(run - entry.overlapLength().millimetres(), run)
        || !entry.applies()
        || enough(need, entry.free(Length.ZERO), batten.depth());
  }

  private static boolean enough(HeightNeed need, Length without, Length depth) {
    Length free = without.minus(depth);
    return free.compareTo(need.comfortable()) >= 0
        || (without.compareTo(need.comfortable()) < 0 && free.compareTo(need.least()) >= 0);
  }

  /**
   * Least climb over a turn to any place of the bridge; the rise per turn if it hangs over none.
   */
  public static Length leastClimb(Bridge bridge, HeightProfile profile, Climb climb) {
    double run = climb.runPerTurn().millimetres();
    double least = climb.risePerTurn().millimetres();
    for (double shift : bridge.shifts()) {
      for (int i = 0; i <= SAMPLES; i++) {
        double at = bridge.from() + shift + (bridge.to() - bridge.from()) * i / SAMPLES;
        if (at >= run && at <= climb.ringLength()) {
          least = Math.min(least, profile.heightAt(at) - profile.heightAt(at - run));
        }
      }
    }
    return Length.ofMillimetres(least);
  }
}
