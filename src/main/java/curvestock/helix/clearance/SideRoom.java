package curvestock.helix.clearance;

import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.standard.CurveWidening;
import curvestock.helix.standard.CurveWidening.VehicleGroup;
import curvestock.helix.standard.Sourced;
import curvestock.units.Length;
import java.util.Optional;

/** Room from the outermost tracks to the supports beside them, and what cars take of it. */
public record SideRoom(HelixSpec spec) {

  /** From the middle of a track to the support beside it. */
  public Length room() {
    return spec.ground().sideMargin().minus(spec.supports().riser().reachFromEdge());
  }

  /** How far a car reaches from the middle of the tracks: {@link Overhang}. */
  public Reach of(Vehicle car) {
    return new Reach(
        new Overhang(car, spec.ground().innerTrack()),
        new Overhang(car, spec.ground().outerTrack()));
  }

  /**
   * Of one kind of car.
   *
   * @param inner on the inner track
   * @param outer on the outer track, which may be the same
   */
  public record Reach(Overhang inner, Overhang outer) {

    /** To the supports inside the curve. */
    public Length inside() {
      return inner.innerReach();
    }

    /** To the supports outside the curve. */
    public Length outside() {
      return outer.outerReach();
    }

    /** Of two such cars that pass each other, together. */
    public Length between() {
      return inner.outerReach().plus(outer.innerReach());
    }
  }

  /** Whether a car, and another of its kind beside it, passes with the job's spare room. */
  boolean passes(Vehicle car) {
    GroundPlan ground = spec.ground();
    Reach reach = of(car);
    Length spare = spec.traffic().spare();
    return reach.inside().longer(reach.outside()).plus(spare).compareTo(room()) <= 0
        && ground
            .trackSpacing()
            .map(spacing -> reach.between().plus(spare).compareTo(spacing) <= 0)
            .orElse(true);
  }

  /** A clear width from the middle of a track, and where it is published. */
  public record Wanted(Length width, String citation) {}

  /**
   * The standard's clear half width, widened for a group of cars; empty if it has no figure here.
   */
  public Optional<Wanted> wanted(VehicleGroup group) {
    Optional<Sourced<Length>> half = CurveWidening.straightHalfWidth(spec.scale());
    Optional<Sourced<Length>> more =
        CurveWidening.eachSide(spec.scale(), spec.ground().innerTrack(), group);
    return half.flatMap(
        straight ->
            more.map(
                wider ->
                    new Wanted(
                        straight.value().plus(wider.value()),
                        straight.citation() + "; " + wider.citation())));
  }
}
