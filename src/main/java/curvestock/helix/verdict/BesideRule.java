package curvestock.helix.verdict;

import curvestock.helix.clearance.SideRoom;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Setting;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.standard.CurveWidening.VehicleGroup;
import curvestock.helix.standard.Sourced;
import curvestock.helix.standard.TrackSpacing;
import curvestock.helix.standard.TrackSpacing.EquipmentClass;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Room beside the longest vehicle: to the supports inside and outside, and between two tracks. */
final class BesideRule {

  private final HelixSpec spec;
  private final GroundPlan ground;
  private final SideRoom side;
  private final LengthStyle style;

  BesideRule(HelixSpec spec, LengthStyle style) {
    this.spec = spec;
    this.ground = spec.ground();
    this.side = new SideRoom(spec);
    this.style = style;
  }

  List<Verdict> verdicts() {
    if (spec.traffic().longest().isEmpty()) {
      return byStandard();
    }
    Vehicle vehicle = spec.traffic().longest().get();
    if (vehicle.truckCentres().compareTo(ground.innerTrack()) >= 0) {
      Length wanted = vehicle.length().times(3).plus(ground.bedRadius()).minus(ground.innerTrack());
      return List.of(
          Verdict.of(Rule.LONGEST_VEHICLE, State.FAIL)
              .measuring(vehicle.truckCentres())
              .against(ground.innerTrack())
              .fixedBy(new Change(Setting.RADIUS, ground.bedRadius(), style.roundUp(wanted))));
    }
    SideRoom.Reach reach = side.of(vehicle);
    List<Verdict> verdicts = new ArrayList<>();
    verdicts.add(judge(reach.inside(), reach.inner().inside()).at(Place.INSIDE));
    verdicts.add(judge(reach.outside(), reach.outer().outside()).at(Place.OUTSIDE));
    ground.trackSpacing().ifPresent(spacing -> verdicts.add(between(reach.between(), spacing)));
    if (spec.construction() instanceof Construction.PlatesBeside beside) {
      verdicts.add(plates(beside, reach.inside().longer(reach.outside())));
    }
    return verdicts;
  }

  /** Without a vehicle: the standard's clear width, widened for the longest group it allows. */
  private List<Verdict> byStandard() {
    return side.wanted(VehicleGroup.C)
        .or(() -> side.wanted(VehicleGroup.B))
        .map(wanted -> List.of(byStandard(wanted)))
        .orElse(List.of());
  }

  private Verdict byStandard(SideRoom.Wanted wanted) {
    Length room = side.room();
    boolean ok = room.compareTo(wanted.width()) >= 0;
    return Verdict.of(Rule.SUPPORT_ROOM, ok ? State.OK : State.MARGINAL)
        .measuring(room)
        .against(wanted.width())
        .with(Fact.SOURCE, new Text(wanted.citation()))
        .fixedBy(ok ? List.of() : List.of(wider(wanted.width().minus(room))));
  }

  /** The roadbed wider by so much on each side. */
  private Change wider(Length eachSide) {
    Length then = style.roundUp(ground.width().plus(eachSide.times(2)));
    return new Change(Setting.WIDTH, ground.width(), then);
  }

  /** Plates stand outside the edges, and up beside the track by what they have over the plywood. */
  private Verdict plates(Construction.PlatesBeside beside, Length reach) {
    Length up = beside.height().minus(spec.plywood());
    Length wanted = reach.plus(spec.traffic().spare());
    boolean ok = up.millimetres() <= 0 || ground.sideMargin().compareTo(wanted) >= 0;
    boolean fails = !ok && ground.sideMargin().compareTo(reach) < 0;
    return Verdict.of(Rule.SIDE_PLATES, ok ? State.OK : fails ? State.FAIL : State.MARGINAL)
        .measuring(ground.sideMargin())
        .against(wanted)
        .with(Fact.THICKNESS, beside.thickness())
        .with(Fact.UP, up)
        .with(Fact.REACH, reach)
        .fixedBy(
            ok
                ? List.of()
                : List.of(new Change(Setting.SIDE_PLATE_HEIGHT, beside.height(), spec.plywood())));
  }

  private Verdict judge(Length reach, Length overhang) {
    Length room = side.room();
    Length wanted = reach.plus(spec.traffic().spare());
    boolean ok = room.compareTo(wanted) >= 0;
    boolean fails = room.compareTo(reach) < 0;
    return Verdict.of(Rule.SUPPORT_ROOM, fails ? State.FAIL : ok ? State.OK : State.MARGINAL)
        .measuring(room)
        .against(wanted)
        .with(Fact.REACH, reach)
        .with(Fact.OVERHANG, overhang)
        .fixedBy(ok ? List.of() : List.of(wider(wanted.minus(room))));
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

  private Verdict between(Length reach, Length spacing) {
    Length wanted = reach.plus(spec.traffic().spare());
    Optional<Sourced<Length>> published =
        publishedSpacing().filter(figure -> figure.certainty().isPrintable());
    boolean ok = spacing.compareTo(wanted) >= 0;
    boolean fails = spacing.compareTo(reach) < 0;
    Verdict verdict =
        Verdict.of(Rule.TRACK_ROOM, fails ? State.FAIL : ok ? State.OK : State.MARGINAL)
            .measuring(spacing)
            .against(wanted)
            .with(Fact.REACH, reach)
            .fixedBy(
                ok
                    ? List.of()
                    : List.of(new Change(Setting.TRACK_SPACING, spacing, style.roundUp(wanted))));
    return published
        .map(
            figure ->
                verdict
                    .with(Fact.PUBLISHED, figure.value())
                    .with(Fact.SOURCE, new Text(figure.citation())))
        .orElse(verdict);
  }
}
