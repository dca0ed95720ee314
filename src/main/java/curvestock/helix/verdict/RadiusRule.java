package curvestock.helix.verdict;

import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Setting;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.standard.CurveWidening.VehicleGroup;
import curvestock.helix.standard.EasementLength;
import curvestock.helix.standard.SmallestRadius;
import curvestock.helix.standard.Sourced;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The inner track's radius against the published smallest one and the longest vehicle. */
final class RadiusRule {

  /** Three times the longest vehicle runs reliably: common practice, no source. */
  private static final double TIMES_LONGEST = 3;

  private final HelixSpec spec;
  private final LengthStyle style;

  RadiusRule(HelixSpec spec, LengthStyle style) {
    this.spec = spec;
    this.style = style;
  }

  List<Verdict> verdicts() {
    List<Verdict> verdicts = new ArrayList<>();
    Length radius = spec.ground().innerTrack();
    Sourced<Length> smallest =
        SmallestRadius.nem111(spec.scale(), SmallestRadius.Use.PERMITTED, group());
    verdicts.add(
        judge(Rule.RADIUS_BY_STANDARD, radius, smallest.value())
            .with(Fact.SOURCE, new Text(smallest.citation() + ", " + cars())));
    spec.traffic()
        .longest()
        .map(vehicle -> vehicle.length().times(TIMES_LONGEST))
        .ifPresent(wanted -> verdicts.add(judge(Rule.RADIUS_BY_VEHICLE, radius, wanted)));
    verdicts.add(easement(radius));
    return verdicts;
  }

  private VehicleGroup group() {
    double body =
        spec.traffic().longest().map(Vehicle::length).map(Length::millimetres).orElse(0.0)
            * spec.scale().ratio();
    return Stream.of(VehicleGroup.A, VehicleGroup.B)
        .filter(group -> body <= group.longestBody().millimetres())
        .findFirst()
        .orElse(VehicleGroup.C);
  }

  /** For which cars the standard's figure is meant. */
  private String cars() {
    VehicleGroup group = group();
    Length body = (group == VehicleGroup.A ? group : VehicleGroup.B).longestBody();
    String full =
        style.unit().isImperial()
            ? Math.round(body.in(LengthUnit.FOOT)) + " ft"
            : "%s m".formatted(body.millimetres() / 1000);
    return "for models of cars " + (group == VehicleGroup.C ? "over " : "up to ") + full + " long";
  }

  private static Verdict judge(Rule rule, Length radius, Length wanted) {
    return Verdict.of(rule, radius.compareTo(wanted) >= 0 ? State.OK : State.MARGINAL)
        .measuring(radius)
        .against(wanted);
  }

  private Verdict easement(Length radius) {
    Length has = spec.bottom().easement().shorter(spec.top().easement());
    if (has.millimetres() > 0) {
      return Verdict.ok(Rule.EASEMENT).measuring(has);
    }
    if (spec.ground().isOval() || !EasementLength.isAskedFor(spec.scale(), radius)) {
      return Verdict.ok(Rule.EASEMENT);
    }
    Verdict missing = Verdict.of(Rule.EASEMENT, State.MARGINAL).measuring(has);
    return EasementLength.shift(spec.scale())
        .map(
            shift -> {
              Length wanted = style.roundUp(EasementLength.of(shift.value(), radius));
              return missing
                  .against(wanted)
                  .with(Fact.SOURCE, new Text(shift.citation()))
                  .fixedBy(easements(wanted));
            })
        .orElse(missing);
  }

  /** An easement is cut in one with the lead-in, which must hold its half. */
  private List<Change> easements(Length wanted) {
    Length half = style.roundUp(wanted.times(0.5));
    Length entry = spec.bottom().leadIn();
    Length exit = spec.top().leadIn();
    List<Change> changes = new ArrayList<>();
    if (entry.compareTo(half) < 0) {
      changes.add(new Change(Setting.ENTRY_LEAD_IN, entry, half));
    }
    if (exit.compareTo(half) < 0) {
      changes.add(new Change(Setting.EXIT_LEAD_IN, exit, half));
    }
    changes.add(new Change(Setting.ENTRY_EASEMENT, spec.bottom().easement(), wanted));
    changes.add(new Change(Setting.EXIT_EASEMENT, spec.top().easement(), wanted));
    return changes;
  }
}
