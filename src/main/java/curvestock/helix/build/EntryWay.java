package curvestock.helix.build;

import curvestock.geometry.Point;
import curvestock.helix.clearance.Overhang;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.Vehicle;
import curvestock.units.Length;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The way by which trains come to the ring, straight and then eased into the curve, seen from
 * above: whether a support would stand in it.
 *
 * <p>Of the lowest turn, whose supports stand on the base beside it, those that meet a track with
 * its loading gauge, or the wood of the lead-in, cannot stand there. A support is a rectangle as
 * wide and as long as its block, square to the line, or as round as its washer.
 */
public final class EntryWay {

  /** What a support would meet. */
  public enum Hit {
    NONE,
    /** The wood of the lead-in, by a hand's error: {@link LeadEnds#CLEAR}. */
    CLOSE,
    WOOD,
    TRACK;

    /** Whether it cannot stand there at all. */
    public boolean isInTheWay() {
      return this == WOOD || this == TRACK;
    }
  }

  /** Looked at along an easement: closer than any block is long. */
  private static final int PLACES_ON_EASEMENT = 100;

  private final HelixSpec spec;
  private final CentreLine line;
  private final Waypoint entry;

  public EntryWay(HelixSpec spec, CentreLine line) {
    this.spec = spec;
    this.line = line;
    entry = line.at(-spec.bottom().easement().millimetres() / 2);
  }

  /**
   * Whether a support of the lowest turn there could stand beside the approach: in the turn's
   * second half. Those of the first half stand under the roadbed that the approach leads on to.
   */
  public boolean isBeside(double at) {
    double run = spec.ground().runPerTurn(spec.ground().bedRadius()).millimetres();
    return at > run / 2;
  }

  /** The support's middle, outwards of the line: at the outer edge; the inner's is its negative. */
  public double offset() {
    double half = spec.ground().width().millimetres() / 2;
    return half - spec.supports().riser().middleFromEdge().millimetres();
  }

  /** What the support so far outwards of the line meets, {@code at} along the line. */
  public Hit hit(double at, double outwards) {
    Waypoint here = line.at(at);
    Point support = here.toLeft(-line.inwards() * outwards);
    Seen seen = new Seen(entry, support, here.heading());
    return seen.behind + seen.deep > 0 ? onStraight(seen) : onEasement(support, here.heading());
  }

  /** A support as it lies from a point of the way, looking along it. */
  private final class Seen {
    private final double behind;
    private final double left;
    private final double wide;
    private final double deep;

    Seen(Waypoint from, Point support, double heading) {
      Point away = support.minus(from.point());
      Point ahead = Point.polar(1, from.heading());
      double turned = heading - from.heading();
      behind = -away.dot(ahead);
      left = ahead.cross(away);
      wide = extent(turned, across(), along());
      deep = extent(turned, along(), across());
    }

    /** From the edge of the roadbed there; below zero in its wood. */
    double apart() {
      double half = spec.ground().width().millimetres() / 2 + spec.beyondEdges().millimetres();
      return Math.abs(left) - half - wide;
    }
  }

  private Hit onStraight(Seen seen) {
    double behind = seen.behind - seen.deep;
    if (behind < reach() && meetsTrack(behind, seen)) {
      return Hit.TRACK;
    }
    return wood(Math.max(seen.apart(), behind - spec.bottom().leadIn().millimetres()));
  }

  /**
   * Between the straight and the ring the way bends little by little: seen from where it is next.
   */
  private Hit onEasement(Point support, double heading) {
    double half = spec.bottom().easement().millimetres() / 2;
    if (half == 0) {
      return Hit.NONE;
    }
    Waypoint nearest =
        IntStream.rangeClosed(0, PLACES_ON_EASEMENT)
            .mapToObj(i -> line.at(half * (2.0 * i / PLACES_ON_EASEMENT - 1)))
            .min(Comparator.comparingDouble(place -> place.point().distance(support)))
            .orElseThrow();
    Seen seen = new Seen(nearest, support, heading);
    if (Math.abs(seen.behind) > seen.deep) {
      return Hit.NONE;
    }
    return meetsTrack(0, seen) ? Hit.TRACK : wood(seen.apart());
  }

  private static Hit wood(double apart) {
    return apart < 0 ? Hit.WOOD : apart < LeadEnds.CLEAR ? Hit.CLOSE : Hit.NONE;
  }

  private boolean meetsTrack(double behind, Seen seen) {
    double swath = halfGauge(behind) + spec.traffic().spare().millimetres() + seen.wide;
    return spec.ground().trackRadii().stream()
        .mapToDouble(
            radius -> line.inwards() * spec.ground().bedRadius().minus(radius).millimetres())
        .anyMatch(track -> Math.abs(seen.left - track) < swath);
  }

  /** Half of the room that trains take: with the overhang while a vehicle is still on the curve. */
  private double halfGauge(double behind) {
    double straight = spec.straightHalfWidth().millimetres();
    if (spec.traffic().longest().isEmpty()) {
      return straight;
    }
    Vehicle vehicle = spec.traffic().longest().get();
    Length inner = spec.ground().innerTrack();
    boolean curved =
        behind < vehicle.length().millimetres() / 2 && vehicle.truckCentres().compareTo(inner) < 0;
    if (!curved) {
      return straight;
    }
    Overhang overhang = new Overhang(vehicle, inner);
    return Math.max(overhang.innerReach().millimetres(), overhang.outerReach().millimetres());
  }

  /** How far the approach is known to run straight: over the ring's width at least. */
  private double reach() {
    double known = spec.bottom().leadIn().plus(spec.bottom().approachRun()).millimetres();
    return Math.max(known, spec.ground().outerEdge().millimetres());
  }

  /** Half of a support's extent along the track. */
  double halfAlong() {
    return along() / 2;
  }

  private double across() {
    return spec.supports().riser().across().millimetres();
  }

  private double along() {
    return spec.supports().riser().along().millimetres();
  }

  /** Half of a block's extent in a direction turned from its first side; a washer's radius. */
  private double extent(double turned, double first, double second) {
    return spec.supports().riser() instanceof Riser.ThreadedRods
        ? first / 2
        : (Math.abs(Math.cos(turned)) * first + Math.abs(Math.sin(turned)) * second) / 2;
  }
}
