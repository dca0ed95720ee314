package curvestock.helix;

import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Setting;
import curvestock.helix.spec.SplicePlate;
import curvestock.helix.verdict.Change;
import curvestock.units.Angle;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.Quantity;
import curvestock.units.Share;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Applies changes of single settings to a specification, as if the job said so. */
final class Revision {

  private static final Length LAP = Length.ofInches(2);

  private Revision() {}

  /**
   * The specification with all of the changes.
   *
   * @throws IllegalArgumentException if the changed figures make no helix
   */
  static HelixSpec of(HelixSpec spec, List<Change> changes) {
    HelixSpec revised = spec;
    for (Change change : changes) {
      revised = of(revised, change.setting(), change.then());
    }
    return revised;
  }

  private static HelixSpec of(HelixSpec spec, Setting setting, Quantity then) {
    return switch (setting) {
      case TURNS -> spec.with(turns(spec.ascent(), ((Angle) then).degrees() / 360));
      case RISE_PER_TURN -> spec.with(rise(spec.ascent(), (Length) then));
      case STEEPEST_GRADE -> spec.with(spec.ascent().atMost(new Grade(((Share) then).part())));
      case RADIUS ->
          spec.with(ground(spec, (Length) then, spec.ground().trackSpacing(), width(spec)));
      case WIDTH -> spec.with(ground(spec, bed(spec), spec.ground().trackSpacing(), (Length) then));
      case TRACK_SPACING ->
          spec.with(ground(spec, bed(spec), Optional.of((Length) then), width(spec)));
      case JOINT -> spec.with(new Construction.HalfLap(LAP));
      case PLATE_INSET, PLATE_SCREWS, SIDE_PLATE_HEIGHT -> joint(spec, setting, then);
      case SUPPORTS_PER_TURN ->
          spec.with(spec.supports().with(Math.toIntExact(((Count) then).number())));
      case FIRST_SUPPORT -> spec.with(spec.supports().startingAt(Optional.of((Length) then)));
      default -> ends(spec, setting, (Length) then);
    };
  }

  private static Length bed(HelixSpec spec) {
    return spec.ground().bedRadius();
  }

  private static Length width(HelixSpec spec) {
    return spec.ground().width();
  }

  private static Ascent turns(Ascent old, double turns) {
    return new Ascent(
        OptionalDouble.of(turns),
        old.climb(),
        old.climb().isPresent() ? Optional.empty() : old.risePerTurn(),
        old.steepest(),
        old.exit());
  }

  private static Ascent rise(Ascent old, Length rise) {
    return new Ascent(
        old.turns(),
        old.turns().isPresent() ? Optional.empty() : old.climb(),
        Optional.of(rise),
        old.steepest(),
        old.exit());
  }

  private static GroundPlan ground(
      HelixSpec spec, Length bed, Optional<Length> spacing, Length width) {
    GroundPlan old = spec.ground();
    return new GroundPlan(
        bed.minus(spacing.orElse(Length.ZERO).times(0.5)),
        spacing,
        GroundPlan.marginOfWidth(width, spacing),
        old.straight(),
        old.direction(),
        old.entry());
  }

  private static HelixSpec joint(HelixSpec spec, Setting setting, Quantity then) {
    if (spec.construction() instanceof Construction.ButtWithPlate butt) {
      SplicePlate old = butt.plate();
      return spec.with(
          new Construction.ButtWithPlate(
              new SplicePlate(
                  old.form(),
                  old.length(),
                  setting == Setting.PLATE_INSET ? (Length) then : old.inset(),
                  old.thickness(),
                  setting == Setting.PLATE_SCREWS
                      ? Math.toIntExact(((Count) then).number())
                      : old.screwsEachSide(),
                  old.screwHole(),
                  old.fromRoadbedSheets())));
    }
    Construction.PlatesBeside old = (Construction.PlatesBeside) spec.construction();
    return spec.with(
        new Construction.PlatesBeside(
            old.length(), (Length) then, old.thickness(), old.fromRoadbedSheets()));
  }

  private static HelixSpec ends(HelixSpec spec, Setting setting, Length then) {
    EndPlan bottom = spec.bottom();
    EndPlan top = spec.top();
    return switch (setting) {
      case ENTRY_VERTICAL_CURVE -> spec.with(bottom.withVerticalCurve(then), top);
      case EXIT_VERTICAL_CURVE -> spec.with(bottom, top.withVerticalCurve(then));
      case ENTRY_CLIMB_LEAD -> spec.with(bottom.withClimbLead(then), top);
      case EXIT_CLIMB_LEAD -> spec.with(bottom, top.withClimbLead(then));
      case ENTRY_LEAD_IN -> spec.with(bottom.withLeadIn(then), top);
      case EXIT_LEAD_IN -> spec.with(bottom, top.withLeadIn(then));
      case ENTRY_EASEMENT -> spec.with(bottom.withEasement(then), top);
      case EXIT_EASEMENT -> spec.with(bottom, top.withEasement(then));
      default -> throw new IllegalArgumentException("no end has the setting " + setting);
    };
  }
}
