package curvestock.helix.verdict;

import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.standard.CurveWidening.VehicleGroup;
import curvestock.helix.standard.EasementLength;
import curvestock.helix.standard.SmallestRadius;
import curvestock.helix.standard.Sourced;
import curvestock.helix.verdict.Verdict.Result;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/** The inner track's radius against the published smallest one and the longest vehicle. */
final class RadiusRule {

  /** Three times the longest vehicle runs reliably: common practice, no source. */
  private static final double TIMES_LONGEST = 3;

  /** Bodies of NEM 103's groups A and B on the prototype, in millimetres. */
  private static final double GROUP_A = 20_000;

  private static final double GROUP_B = 24_200;

  private final HelixSpec spec;
  private final Wording wording;

  RadiusRule(HelixSpec spec, Wording wording) {
    this.spec = spec;
    this.wording = wording;
  }

  List<Verdict> verdicts() {
    List<Verdict> verdicts = new ArrayList<>();
    Length radius = spec.ground().innerTrack();
    Sourced<Length> smallest =
        SmallestRadius.nem111(spec.scale(), SmallestRadius.Use.PERMITTED, group());
    verdicts.add(
        judge(
            "radius against the standard",
            radius,
            smallest.value(),
            "smallest permitted for group " + group() + " by " + smallest.citation()));
    spec.traffic()
        .longest()
        .map(vehicle -> vehicle.length().times(TIMES_LONGEST))
        .ifPresent(
            wanted ->
                verdicts.add(
                    judge(
                        "radius against the longest vehicle",
                        radius,
                        wanted,
                        "three times the longest vehicle, common practice")));
    verdicts.add(easement(radius));
    return verdicts;
  }

  private VehicleGroup group() {
    double body =
        spec.traffic().longest().map(Vehicle::length).map(Length::millimetres).orElse(0.0)
            * spec.scale().ratio();
    return body <= GROUP_A ? VehicleGroup.A : body <= GROUP_B ? VehicleGroup.B : VehicleGroup.C;
  }

  private Verdict judge(String rule, Length radius, Length wanted, String why) {
    String finding = wording.length(radius) + " (" + why + ": " + wording.length(wanted) + ")";
    return radius.compareTo(wanted) >= 0
        ? Verdict.ok(rule, finding)
        : new Verdict(
            rule,
            Result.TIGHT,
            finding,
            "try the longest vehicles on a mock-up, or widen to " + wording.atLeast(wanted));
  }

  private Verdict easement(Length radius) {
    String rule = "easement";
    boolean has =
        spec.bottom().easement().millimetres() > 0 && spec.top().easement().millimetres() > 0;
    if (has || spec.ground().isOval() || !EasementLength.isAskedFor(spec.scale(), radius)) {
      return Verdict.ok(
          rule, has ? "planned at both ends" : "none asked for: straights, or more than 60 gauges");
    }
    String length =
        EasementLength.shift(spec.scale())
            .map(
                shift ->
                    "one of "
                        + wording.atLeast(EasementLength.of(shift.value(), radius))
                        + " by "
                        + shift.citation()
                        + " eases the ends")
            .orElse("an easement eases the ends");
    return new Verdict(rule, Result.TIGHT, "radius below 60 gauges without an easement", length);
  }
}
