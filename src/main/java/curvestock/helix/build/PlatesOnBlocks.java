package curvestock.helix.build;

import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.units.Length;
import java.util.OptionalDouble;

/**
 * Where a joint's splice plate lies on the blocks under it, so that they must be lower by its
 * thickness: it does wherever its outline, seen from above, covers part of a block or of the cross
 * piece.
 */
final class PlatesOnBlocks {

  /** Half a millimetre more or less of a block needs no packing; our own choice. */
  private static final double PART = 0.5;

  private static final double ROUNDING = 1e-6;

  private final HelixSpec spec;
  private final Joints joints;

  PlatesOnBlocks(HelixSpec spec, Joints joints) {
    this.spec = spec;
    this.joints = joints;
  }

  /** The plate's thickness over a block there; zero if no plate reaches it. */
  Length over(double at, Edges edges) {
    return spec.construction() instanceof Construction.ButtWithPlate butt
            && covered(at).isPresent()
            && (hasCrossPiece() || reachesAcross(butt, edges))
        ? butt.plate().thickness()
        : Length.ZERO;
  }

  /** Whether the plate there ends over the block, along the track. */
  boolean endsOver(double at) {
    return covered(at).stream().anyMatch(along -> along < along() - PART);
  }

  /** How much of a block's side along the track is under a plate. */
  private OptionalDouble covered(double at) {
    if (!(spec.construction() instanceof Construction.ButtWithPlate butt)
        || !(spec.supports().riser() instanceof Riser.WoodBlocks)) {
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
    return ((Riser.WoodBlocks) spec.supports().riser()).along().millimetres();
  }

  private boolean hasCrossPiece() {
    return spec.supports().riser().crossPiece().millimetres() > 0;
  }

  /** A plate may be so narrow that it lies between the blocks. */
  private boolean reachesAcross(Construction.ButtWithPlate butt, Edges edges) {
    SplicePlates plates = new SplicePlates(butt, spec.ground(), 1);
    Length half = plates.width().times(0.5);
    Length middle = plates.middleRadius();
    Length outside = spec.ground().outerEdge().minus(middle.plus(half));
    Length inside = middle.minus(half).minus(spec.ground().innerEdge());
    Length block = ((Riser.WoodBlocks) spec.supports().riser()).width();
    return edges == Edges.MIDDLE
        || (edges.atOuter() && block.compareTo(outside) > 0)
        || (edges.atInner() && block.compareTo(inside) > 0);
  }
}
