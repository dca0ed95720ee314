package curvestock.helix;

import curvestock.helix.build.BoardCutting;
import curvestock.helix.build.Bridge;
import curvestock.helix.build.RodPlan;
import curvestock.helix.build.SplicePlates;
import curvestock.helix.build.Weight;
import curvestock.helix.spec.Construction.ButtWithPlate;
import curvestock.helix.spec.Construction.HalfLap;
import curvestock.helix.spec.Construction.PlatesBeside;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser.ThreadedRods;
import curvestock.helix.spec.Riser.WoodBlocks;
import curvestock.helix.standard.WoodDensity;
import curvestock.helix.standard.WoodDensity.Wood;
import curvestock.piece.Piece;
import curvestock.units.Length;

/**
 * What the parts of a helix weigh, in kilograms. Boards, battens and cross pieces are taken as
 * softwood, by the same table as plywood; plates and edge strips as the job's plywood.
 */
final class Weights {

  private final HelixPlan plan;
  private final HelixSpec spec;
  private final Weight plywood;

  Weights(HelixPlan plan) {
    this.plan = plan;
    spec = plan.spec();
    plywood = new Weight(spec.woodDensity());
  }

  /** See {@link HelixPlan#weightOf}. */
  double of(Piece piece) {
    double area = piece.shape().area();
    if (spec.construction() instanceof HalfLap half) {
      area -=
          lapEnds(piece)
              * half.lap().times(0.5).millimetres()
              * spec.ground().width().millimetres();
    }
    return plywood.ofWood(area, piece.thickness().orElse(spec.stack().plywood()));
  }

  /** How many of a piece's ends are halved. */
  private int lapEnds(Piece piece) {
    return plan.roadbed().pieces().stream()
        .filter(bed -> bed.kindId().equals(piece.id()))
        .findFirst()
        .map(bed -> (bed.lower().isPresent() ? 1 : 0) + (bed.upper().isPresent() ? 1 : 0))
        .orElse(0);
  }

  /** See {@link HelixPlan#woodWeight}. */
  double sheets() {
    return plan.demands().stream().mapToDouble(demand -> of(demand.piece()) * demand.count()).sum();
  }

  /** See {@link HelixPlan#riserWeight}. */
  double risers() {
    if (spec.supports().riser() instanceof ThreadedRods rods) {
      return new RodPlan(spec, rods, plan.supports()).weight();
    }
    WoodBlocks blocks = (WoodBlocks) spec.supports().riser();
    return plan.shopping().riserCutting().stream()
        .flatMap(cutting -> cutting.boards().stream())
        .flatMap(board -> board.cuts().stream())
        .map(BoardCutting.Cut::length)
        .mapToDouble(length -> softwood(length, blocks.along(), blocks.width()))
        .sum();
  }

  /** See {@link HelixPlan#boughtWoodWeight}. */
  double boughtWood() {
    return plates()
        + crossPieces()
        + plan.stations().bridges().stream().mapToDouble(this::of).sum();
  }

  private double plates() {
    int joints = plan.joints().all().size();
    if (spec.construction() instanceof ButtWithPlate butt && !butt.plate().fromRoadbedSheets()) {
      double area = new SplicePlates(butt, spec.ground(), joints).shape().area();
      return joints * plywood.ofWood(area, butt.plate().thickness());
    }
    if (spec.construction() instanceof PlatesBeside beside && !beside.fromRoadbedSheets()) {
      double area = beside.length().millimetres() * beside.height().millimetres();
      return plan.sidePlates().orElseThrow().count() * plywood.ofWood(area, beside.thickness());
    }
    return 0;
  }

  private double crossPieces() {
    return spec.supports().riser() instanceof WoodBlocks blocks
        ? plan.supports().blocks().orElseThrow().crossPieces()
            * softwood(spec.ground().width(), blocks.along(), blocks.crossPiece())
        : 0;
  }

  private double of(Bridge bridge) {
    boolean strip = bridge.form() == Bridge.Form.STRIP;
    if (!strip
        && spec.supports().riser() instanceof WoodBlocks blocks
        && blocks.stock().isPresent()) {
      return 0;
    }
    double area = bridge.length().millimetres() * bridge.depth().millimetres();
    return bridge.count()
        * (strip
            ? plywood.ofWood(area, bridge.breadth())
            : softwood(bridge.length(), bridge.depth(), bridge.breadth()));
  }

  private static double softwood(Length length, Length breadth, Length thickness) {
    double density = WoodDensity.of(Wood.SOFTWOOD, thickness).value();
    return new Weight(density).ofWood(length.millimetres() * breadth.millimetres(), thickness);
  }
}
