package curvestock.helix.verdict;

import curvestock.helix.clearance.Overhang;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.standard.CurveWidening;
import curvestock.helix.standard.CurveWidening.VehicleGroup;
import curvestock.helix.standard.Sourced;
import curvestock.helix.standard.TrackSpacing;
import curvestock.helix.standard.TrackSpacing.EquipmentClass;
import curvestock.helix.verdict.Verdict.Result;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Room beside the longest vehicle: to the supports inside and outside, and between two tracks. */
final class BesideRule {

  private final HelixSpec spec;
  private final GroundPlan ground;
  private final Wording wording;

  BesideRule(HelixSpec spec, Wording wording) {
    this.spec = spec;
    this.ground = spec.ground();
    this.wording = wording;
  }

  List<Verdict> verdicts() {
    if (spec.traffic().longest().isEmpty()) {
      return byStandard();
    }
    Vehicle vehicle = spec.traffic().longest().get();
    if (vehicle.truckCentres().compareTo(ground.innerTrack()) >= 0) {
      return List.of(
          new Verdict(
              "longest vehicle",
              Result.FAILS,
              "its trucks are "
                  + wording.length(vehicle.truckCentres())
                  + " apart, the radius is "
                  + wording.length(ground.innerTrack()),
              "no vehicle turns so sharply: widen the radius to three times its length, "
                  + wording.atLeast(vehicle.length().times(3))));
    }
    Overhang inner = new Overhang(vehicle, ground.innerTrack());
    Overhang outer = new Overhang(vehicle, ground.outerTrack());
    Length room = ground.sideMargin().minus(spec.supports().riser().reachFromEdge());
    List<Verdict> verdicts = new ArrayList<>();
    verdicts.add(
        judge(
            "room to the inner supports", inner.innerReach(), inner.inside(), room, "side margin"));
    verdicts.add(
        judge(
            "room to the outer supports",
            outer.outerReach(),
            outer.outside(),
            room,
            "side margin"));
    ground.trackSpacing().ifPresent(spacing -> verdicts.add(between(inner, outer, spacing)));
    if (spec.construction() instanceof Construction.PlatesBeside beside) {
      verdicts.add(plates(beside, inner.innerReach(), outer.outerReach()));
    }
    return verdicts;
  }

  /** Without a vehicle: the standard's clear width, widened for the longest group it allows. */
  private List<Verdict> byStandard() {
    Length radius = ground.innerTrack();
    Optional<Sourced<Length>> half = CurveWidening.straightHalfWidth(spec.scale());
    Optional<Sourced<Length>> more =
        CurveWidening.eachSide(spec.scale(), radius, VehicleGroup.C)
            .or(() -> CurveWidening.eachSide(spec.scale(), radius, VehicleGroup.B));
    if (half.isEmpty() || more.isEmpty()) {
      return List.of();
    }
    Length wanted = half.get().value().plus(more.get().value());
    Length room = ground.sideMargin().minus(spec.supports().riser().reachFromEdge());
    String finding =
        wording.length(room)
            + " from the track's middle (wanted "
            + wording.length(wanted)
            + ": "
            + half.get().citation()
            + ", "
            + more.get().citation()
            + ")";
    String rule = "room to the supports";
    return List.of(
        room.compareTo(wanted) >= 0
            ? Verdict.ok(rule, finding)
            : new Verdict(
                rule,
                Result.TIGHT,
                finding,
                "make the side margin "
                    + wording.atLeast(wanted.minus(room))
                    + " wider, or state the longest vehicle to see what it needs"));
  }

  /** Plates stand outside the edges, and up beside the track by what they have over the plywood. */
  private Verdict plates(Construction.PlatesBeside beside, Length inside, Length outside) {
    Length reach = inside.compareTo(outside) > 0 ? inside : outside;
    Length up = beside.height().minus(spec.plywood());
    String finding =
        "they stand "
            + wording.length(beside.thickness())
            + " out from the edges and "
            + (up.millimetres() > 0 ? wording.length(up) : "no higher")
            + " up beside the track; the edges are "
            + wording.length(ground.sideMargin())
            + " from the track's middle, the longest vehicle reaches "
            + wording.length(reach);
    if (up.millimetres() <= 0
        || ground.sideMargin().compareTo(reach.plus(spec.traffic().spare())) >= 0) {
      return Verdict.ok("side plates", finding);
    }
    return new Verdict(
        "side plates",
        ground.sideMargin().compareTo(reach) >= 0 ? Result.TIGHT : Result.FAILS,
        finding,
        "make the plates no higher than the plywood ("
            + wording.length(spec.plywood())
            + ") and longer, or the side margin "
            + wording.atLeast(reach.plus(spec.traffic().spare()).minus(ground.sideMargin()))
            + " wider");
  }

  private Verdict judge(String rule, Length reach, Length overhang, Length room, String what) {
    Length wanted = reach.plus(spec.traffic().spare());
    String finding =
        "the longest vehicle reaches "
            + wording.length(reach)
            + " from the track's middle (overhang "
            + wording.length(overhang)
            + "), there are "
            + wording.length(room);
    if (room.compareTo(wanted) >= 0) {
      return Verdict.ok(rule, finding);
    }
    String mend =
        "make the "
            + what
            + " "
            + wording.atLeast(wanted.minus(room))
            + " wider, or set the supports as much further out (ears)";
    Result result = room.compareTo(reach) >= 0 ? Result.TIGHT : Result.FAILS;
    return new Verdict(rule, result, finding, mend);
  }

  /** From the family of standards that the user chose for heights, or else from the other. */
  private Optional<Sourced<Length>> publishedSpacing() {
    Optional<Sourced<Length>> nem = TrackSpacing.nem112(spec.scale(), ground.innerTrack());
    Optional<Sourced<Length>> nmra =
        TrackSpacing.nmraS8(spec.scale(), ground.innerTrack(), EquipmentClass.IA);
    return switch (spec.traffic().heights()) {
      case NEM_102, NEM_102_WIRE -> nem.or(() -> nmra);
      case NMRA_S7, PROTOTYPE_FEET -> nmra.or(() -> nem);
    };
  }

  private Verdict between(Overhang inner, Overhang outer, Length spacing) {
    Length reach = inner.outerReach().plus(outer.innerReach());
    Length wanted = reach.plus(spec.traffic().spare());
    Optional<Sourced<Length>> published =
        publishedSpacing().filter(figure -> figure.certainty().isPrintable());
    String finding =
        "two longest vehicles side by side need "
            + wording.length(reach)
            + ", the tracks are "
            + wording.length(spacing)
            + " apart"
            + published
                .map(f -> " (published: " + wording.length(f.value()) + ", " + f.citation() + ")")
                .orElse("");
    if (spacing.compareTo(wanted) >= 0) {
      return Verdict.ok("room between the tracks", finding);
    }
    Result result = spacing.compareTo(reach) >= 0 ? Result.TIGHT : Result.FAILS;
    return new Verdict(
        "room between the tracks",
        result,
        finding,
        "set the tracks " + wording.atLeast(wanted) + " apart");
  }
}
