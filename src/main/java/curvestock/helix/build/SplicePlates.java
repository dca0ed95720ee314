package curvestock.helix.build;

import curvestock.geometry.Point;
import curvestock.helix.spec.Construction.ButtWithPlate;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.SplicePlate;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.piece.Shape;
import curvestock.piece.Strip;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/** The plates under the joints: their outline, where they may lie, and their screws. */
public final class SplicePlates {

  private final SplicePlate plate;
  private final GroundPlan ground;
  private final int count;

  public SplicePlates(ButtWithPlate joint, GroundPlan ground, int count) {
    this.plate = joint.plate();
    this.ground = ground;
    this.count = count;
  }

  /** One for each joint. */
  public int count() {
    return count;
  }

  /**
   * Width across the track: the roadbed's less the inset.
   *
   * @throws IllegalArgumentException if the inset leaves nothing
   */
  public Length width() {
    return ground.width().minus(plate.inset()).requirePositive("splice plate width");
  }

  /** The widest plate of this length whose corners stay within the roadbed. */
  public Length widestThatFits() {
    if (plate.form() == SplicePlate.Form.CURVED) {
      return ground.width();
    }
    double outer = ground.outerEdge().millimetres();
    double half = plate.length().millimetres() / 2;
    double reach = half < outer ? Math.sqrt(outer * outer - half * half) : 0;
    return Length.ofMillimetres(reach - ground.innerEdge().millimetres());
  }

  /** Whether the plate stays within the roadbed. */
  public boolean fits() {
    return width().compareTo(widestThatFits()) <= 0;
  }

  /** Radius at which the plate's middle lies: in the middle of where it fits. */
  public Length middleRadius() {
    return ground.innerEdge().plus(widestThatFits().times(0.5));
  }

  /** The plate as a piece. */
  public Shape shape() {
    if (plate.form() == SplicePlate.Form.RECTANGLE) {
      return new Strip(plate.length(), width());
    }
    double sweep = plate.length().millimetres() / ground.bedRadius().millimetres();
    return new AnnularSector(ground.bedRadius(), width(), Angle.ofRadians(sweep));
  }

  /** The plates wanted. */
  public Demand demand() {
    return new Demand(Piece.of("plate", "splice plate", shape()), count);
  }

  /** Screws for all plates. */
  public int screws() {
    return 2 * plate.screwsEachSide() * count;
  }

  /**
   * Where the screws go, in the plate's frame: in a row across the track at a quarter of the length
   * from each end.
   */
  public List<Point> screwPositions() {
    List<Point> positions = new ArrayList<>();
    double quarter = plate.length().millimetres() / 4;
    for (double along : new double[] {-quarter, quarter}) {
      for (int i = 0; i < plate.screwsEachSide(); i++) {
        double across = ((i + 0.5) / plate.screwsEachSide() - 0.5) * width().millimetres();
        positions.add(onPlate(along, across));
      }
    }
    return positions;
  }

  private Point onPlate(double along, double across) {
    if (plate.form() == SplicePlate.Form.RECTANGLE) {
      return new Point(along, across);
    }
    double radius = ground.bedRadius().millimetres();
    return Point.polar(radius + across, along / radius);
  }
}
