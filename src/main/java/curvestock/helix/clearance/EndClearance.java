package curvestock.helix.clearance;

import curvestock.helix.course.Climb;
import curvestock.helix.course.HeightProfile;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.units.Length;
import java.util.Set;
import java.util.TreeSet;

/**
 * The height that is free where a straight approach runs under the ring (bottom) or over it (top).
 *
 * <p>A tangent at radius Rc stays under a ring of outer radius Ro for √(Ro² − Rc²); there the lap
 * above has not climbed a full turn, and a vertical curve that begins at the ring costs half its
 * length more. Distances are measured along the tangent, which is a little longer than along the
 * ring and so errs on the safe side (derived). On an oval the approach also runs under the whole
 * straight.
 */
public final class EndClearance {

  /** Which end of the helix. */
  public enum End {
    BOTTOM,
    TOP
  }

  private static final int HALVINGS = 40;

  private final HelixSpec spec;
  private final Climb climb;
  private final End end;
  private final Length overlap;

  public EndClearance(HelixSpec spec, Climb climb, End end) {
    this.spec = spec;
    this.climb = climb;
    this.end = end;
    this.overlap = overlap(spec, end);
  }

  /** √(Ro² − Rc²): how long a tangent at radius {@code track} stays within the outer radius. */
  public static Length tangentUnderRing(Length track, Length outerEdge) {
    double rc = track.millimetres();
    double ro = outerEdge.millimetres();
    return Length.ofMillimetres(Math.sqrt(Math.max(0, ro * ro - rc * rc)));
  }

  /** Measured to the inner side of the trains on the inner track, which clears last. */
  private static Length overlap(HelixSpec spec, End end) {
    Length side = spec.ground().innerTrack().minus(spec.straightHalfWidth());
    Length tangent = tangentUnderRing(side, spec.ground().outerEdge());
    return end == End.BOTTOM ? tangent.plus(spec.ground().straight()) : tangent;
  }

  /** How far from the ring's end the approach still lies under or over the ring. */
  public Length overlapLength() {
    return overlap;
  }

  /** Whether the turns reach far enough round for one to lie over the other here. */
  public boolean applies() {
    return climb.ringLength() >= climb.runPerTurn().minus(overlap).millimetres();
  }

  /** Least free height where approach and ring overlap, under something that hangs below. */
  public Length free(Length hanging) {
    return free(climbLead(), hanging);
  }

  private Length climbLead() {
    return end == End.BOTTOM ? spec.bottom().climbLead() : spec.top().climbLead();
  }

  private Length verticalCurve() {
    return end == End.BOTTOM ? spec.bottom().verticalCurve() : spec.top().verticalCurve();
  }

  /** The lead beyond which nothing more is gained: the vertical curve ends before the overlap. */
  public Length fullLead() {
    return overlap.plus(verticalCurve());
  }

  /**
   * How far outside the ring the climb must begin (end, at the top) for so much free height, rise
   * per turn unchanged; {@link #fullLead} where even that does not give it.
   */
  public Length leadFor(Length wanted, Length hanging) {
    if (free(hanging).compareTo(wanted) >= 0) {
      return climbLead();
    }
    Length low = climbLead();
    Length high = fullLead().compareTo(low) > 0 ? fullLead() : low;
    for (int i = 0; i < HALVINGS; i++) {
      Length middle = low.plus(high).times(0.5);
      if (free(middle, hanging).compareTo(wanted) >= 0) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  /** As {@link #free(Length)}, if the vertical curve reached {@code lead} outside the ring. */
  public Length free(Length lead, Length hanging) {
    EndPlan bottom = end == End.BOTTOM ? spec.bottom().withClimbLead(lead) : spec.bottom();
    EndPlan top = end == End.TOP ? spec.top().withClimbLead(lead) : spec.top();
    HeightProfile profile = new HeightProfile(climb, bottom, top);
    double run = climb.runPerTurn().millimetres();
    double ring = climb.ringLength();
    double least = Double.POSITIVE_INFINITY;
    for (double u : places(profile, run, ring)) {
      double above = end == End.BOTTOM ? profile.heightAt(run - u) : profile.heightAt(ring + u);
      double below = end == End.BOTTOM ? profile.heightAt(-u) : profile.heightAt(ring - run + u);
      least = Math.min(least, above - below);
    }
    return Length.ofMillimetres(least).minus(spec.railAboveUnderside()).minus(hanging);
  }

  /**
   * Where the difference of the two heights can be least: ends, breaks of either slope, and a
   * hundred steps between, for differences that curve.
   */
  private Set<Double> places(HeightProfile profile, double run, double ring) {
    Set<Double> places = new TreeSet<>();
    double reach = overlap.millimetres();
    for (int i = 0; i <= 100; i++) {
      places.add(reach * i / 100);
    }
    for (double s : profile.breaks()) {
      places.add(end == End.BOTTOM ? -s : s - ring);
      places.add(end == End.BOTTOM ? run - s : s - ring + run);
    }
    places.removeIf(u -> u < 0 || u > reach);
    return places;
  }
}
