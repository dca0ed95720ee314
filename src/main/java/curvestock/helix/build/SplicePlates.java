package curvestock.helix.build;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.Construction.ButtWithPlate;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.SplicePlate;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Drilled;
import curvestock.piece.Piece;
import curvestock.piece.Shape;
import curvestock.piece.Strip;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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

  /** The plate with its screw holes. */
  public Shape drilled() {
    return new Drilled(shape(), holes().stream().map(Hole::rim).toList());
  }

  /** Where the plate's frame lies under a joint. */
  public Pose pose(CentreLine line, Joint joint) {
    Waypoint here = line.at(joint.at());
    double inwards = line.inwards();
    if (plate.form() == SplicePlate.Form.CURVED) {
      Point centre = here.toLeft(inwards * ground.bedRadius().millimetres());
      return new Pose(centre.x(), centre.y(), here.heading() - inwards * Math.PI / 2);
    }
    Point middle = here.toLeft(inwards * ground.bedRadius().minus(middleRadius()).millimetres());
    return new Pose(middle.x(), middle.y(), here.heading());
  }

  /**
   * The least distance, in millimetres, between the plate's outline under a joint and the roadbed's
   * edges; below zero if it stands out. Taken at the corners and in the middles of the sides, of
   * which one is always the worst.
   */
  public double roomAt(CentreLine line, Joint joint) {
    double reach = plate.length().millimetres();
    List<Edge> part = line.portion(joint.at() - reach, joint.at() + reach);
    double farthest =
        shape().outline().at(pose(line, joint)).edges().stream()
            .flatMap(edge -> Stream.of(edge.start(), middle(edge)))
            .mapToDouble(point -> distance(part, point))
            .max()
            .orElseThrow();
    return ground.width().millimetres() / 2 - farthest;
  }

  private static Point middle(Edge edge) {
    return edge instanceof Arc arc ? arc.middle() : edge.start().plus(edge.end()).times(0.5);
  }

  private static double distance(List<Edge> part, Point point) {
    return part.stream().mapToDouble(edge -> edge.distanceTo(point)).min().orElseThrow();
  }

  /** The plates wanted, drilled for their screws. */
  public Demand demand() {
    return new Demand(Piece.of("plate", "splice plate", drilled()), count);
  }

  /** A hole for each screw, in the plate's frame. */
  public List<Hole> holes() {
    return screwPositions().stream().map(at -> new Hole(at, plate.screwHole())).toList();
  }

  /** From the joint to each row of screws, along the track. */
  public Length screwsAlong() {
    return plate.length().times(0.25);
  }

  /** From the plate's middle line to each screw of a row, outwards; below zero inwards. */
  public List<Length> screwsAcross() {
    return IntStream.range(0, plate.screwsEachSide())
        .mapToObj(i -> width().times((i + 0.5) / plate.screwsEachSide() - 0.5))
        .toList();
  }

  /** Between the rims of neighbouring holes, or a hole and the plate's edge: the least. */
  public Length woodBetweenScrews() {
    Length across = width().times(0.5 / plate.screwsEachSide());
    Length least = across.compareTo(screwsAlong()) < 0 ? across : screwsAlong();
    return least.minus(plate.screwHole().times(0.5));
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
    double quarter = screwsAlong().millimetres();
    for (double along : new double[] {-quarter, quarter}) {
      for (Length across : screwsAcross()) {
        positions.add(onPlate(along, across.millimetres()));
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
