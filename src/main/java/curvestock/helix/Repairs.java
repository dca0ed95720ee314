package curvestock.helix;

import curvestock.helix.build.SplicePlates;
import curvestock.helix.clearance.Overhang;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.SplicePlate;
import curvestock.helix.spec.Vehicle;
import curvestock.units.Length;
import java.util.Optional;

/**
 * What can be mended by itself, whatever turns and radius are: tracks that are too near each other,
 * a roadbed too narrow for the supports beside the longest vehicle, a splice plate that stands out.
 * Each grows, or shrinks, to the next of the sizes that a builder would choose.
 */
final class Repairs {

  private final HelixSpec spec;
  private final Length step;

  /**
   * @param step of widths and distances
   */
  Repairs(HelixSpec spec, Length step) {
    this.spec = spec;
    this.step = step;
  }

  /**
   * The helix with all of that mended, its roadbed's middle where it was; nothing if nothing was to
   * mend.
   *
   * @throws IllegalArgumentException if the tracks or the roadbed would become too wide
   */
  Optional<HelixSpec> mended() {
    GroundPlan old = spec.ground();
    Optional<Vehicle> longest = spec.traffic().longest();
    Optional<Length> spacing = old.trackSpacing();
    Length margin = old.sideMargin();
    if (longest.isPresent() && longest.get().truckCentres().compareTo(old.innerTrack()) < 0) {
      Overhang inner = new Overhang(longest.get(), old.innerTrack());
      Overhang outer = new Overhang(longest.get(), old.outerTrack());
      Length between = inner.outerReach().plus(outer.innerReach()).plus(spec.traffic().spare());
      spacing = spacing.map(apart -> apart.compareTo(between) >= 0 ? apart : up(between));
      Length reach =
          inner.innerReach().compareTo(outer.outerReach()) > 0
              ? inner.innerReach()
              : outer.outerReach();
      Length wanted =
          reach.plus(spec.traffic().spare()).plus(spec.supports().riser().reachFromEdge());
      if (margin.compareTo(wanted) < 0) {
        Length apart = spacing.orElse(Length.ZERO);
        margin = up(wanted.times(2).plus(apart)).minus(apart).times(0.5);
      }
    }
    Length inner = old.bedRadius().minus(spacing.orElse(Length.ZERO).times(0.5));
    GroundPlan ground =
        new GroundPlan(inner, spacing, margin, old.straight(), old.direction(), old.entry());
    Construction construction = plateThatFits(ground);
    boolean changed = !ground.equals(old) || !construction.equals(spec.construction());
    return changed ? Optional.of(spec.with(ground).with(construction)) : Optional.empty();
  }

  /** On a circle; how far an oval's plates stand out is for the verdict to say. */
  private Construction plateThatFits(GroundPlan ground) {
    if (!(spec.construction() instanceof Construction.ButtWithPlate butt)) {
      return spec.construction();
    }
    SplicePlates plates = new SplicePlates(butt, ground, 1);
    if (plates.fits()) {
      return butt;
    }
    SplicePlate old = butt.plate();
    Length inset = up(ground.width().minus(plates.widestThatFits()));
    return new Construction.ButtWithPlate(
        new SplicePlate(
            old.form(),
            old.length(),
            inset,
            old.thickness(),
            old.screwsEachSide(),
            old.screwHole(),
            old.fromRoadbedSheets()));
  }

  private Length up(Length length) {
    return step.times(Math.ceil(length.millimetres() / step.millimetres() - 1e-9));
  }
}
