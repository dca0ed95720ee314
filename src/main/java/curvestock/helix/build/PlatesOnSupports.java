package curvestock.helix.build;

import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.units.Length;
import java.util.OptionalDouble;

/**
 * Where a joint's splice plate lies on the blocks under it, or on the washers of rods, so that they
 * must be lower by its thickness: it does wherever its outline, seen from above, covers part of a
 * block, of the cross piece or of a washer.
 */
final class PlatesOnSupports {

  /** Half a millimetre more or less along the track needs no packing; our own choice. */
  private static final double PART = 0.5;

  /** A block of whose breadth a plate covers less needs packing beside it; our own choice. */
  private static final double ENOUGH_OF_A_BLOCK = 0.75;

  private static final double ROUNDING = 1e-6;

  private final HelixSpec spec;
  private final Joints joints;

  PlatesOnSupports(HelixSpec spec, Joints joints) {
    this.spec = spec;
    this.joints = joints;
  }

  /** The plate's thickness over a block or a washer there; zero if no plate reaches it. */
  Length over(double at, Edges edges) {
    return spec.construction() instanceof Construction.ButtWithPlate butt
            && covered(at).isPresent()
            && (hasCrossPiece() || shareAcross(butt, edges) > 0)
        ? butt.plate().thickness()
        : Length.ZERO;
  }

  /**
   * Whether the plate there covers only a part of the block, so that packing must lie beside it, or
   * of a washer, which would tilt.
   */
  boolean isPartlyOver(double at, Edges edges) {
    if (!(spec.construction() instanceof Construction.ButtWithPlate butt)) {
      return false;
    }
    boolean across = !hasCrossPiece() && shareAcross(butt, edges) < enoughAcross();
    return covered(at).stream().anyMatch(along -> across || along < along() - PART);
  }

  private double enoughAcross() {
    return spec.supports().riser() instanceof Riser.ThreadedRods ? 1 - ROUNDING : ENOUGH_OF_A_BLOCK;
  }

  /** How much of a block's side along the track, or of a washer's diameter, is under a plate. */
  private OptionalDouble covered(double at) {
    if (!(spec.construction() instanceof Construction.ButtWithPlate butt)) {
      return OptionalDouble.empty();
    }
    double half = butt.plate().length().millimetres() / 2;
    return joints.all().stream()
        .mapToDouble(
            joint ->
                Math.min(at + along() / 2, joint.at() + half)
                    - Math.max(at - along() / 2, joint.at() - half))
        .filter(along -> along > ROUNDING)
        .max();
  }

  private double along() {
    return spec.supports().riser().along().millimetres();
  }

  private boolean hasCrossPiece() {
    return spec.supports().riser().crossPiece().millimetres() > 0;
  }

  /**
   * The least share of their breadth that is under a plate; 0 if it is so narrow as to miss all.
   */
  private double shareAcross(Construction.ButtWithPlate butt, Edges edges) {
    if (edges == Edges.MIDDLE) {
      return 1;
    }
    SplicePlates plates = new SplicePlates(butt, spec.ground(), 1);
    Length half = plates.width().times(0.5);
    Length middle = plates.middleRadius();
    double outer = edges.atOuter() ? share(spec.ground().outerEdge().minus(middle.plus(half))) : 0;
    double inner = edges.atInner() ? share(middle.minus(half).minus(spec.ground().innerEdge())) : 0;
    return outer > 0 && inner > 0 ? Math.min(outer, inner) : Math.max(outer, inner);
  }

  /** Of a block or washer by an edge, from which the plate keeps so far. */
  private double share(Length bare) {
    double face = spec.supports().riser().outerFaceFromEdge().millimetres();
    double across = spec.supports().riser().across().millimetres();
    double under = face + across - Math.max(bare.millimetres(), face);
    return under > ROUNDING ? under / across : 0;
  }
}
