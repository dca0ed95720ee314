package curvestock.helix.build;

import curvestock.geometry.Arc;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import curvestock.helix.spec.GroundPlan;
import curvestock.piece.Demand;
import curvestock.piece.FreeShape;
import curvestock.piece.Piece;
import curvestock.units.Length;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The base that carries the helix, as pieces to cut: everywhere under the roadbed, open in the
 * middle.
 *
 * @param form square, of four alike quarters with a round opening, or octagon, of eight alike
 *     mitred boards
 * @param innerEdge inner radius of the roadbed
 * @param outerEdge outer radius of the roadbed
 * @param rim how far the base reaches beyond the roadbed on both sides
 */
public record BaseFrame(Form form, Length innerEdge, Length outerEdge, Length rim) {

  private static final double HALF_EIGHTH = Math.PI / 8;

  /** Outline of the base. */
  public enum Form {
    SQUARE,
    OCTAGON
  }

  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if a radius is not above zero, the rim below zero, or nothing
   *     is left to stand in
   */
  public BaseFrame {
    innerEdge.requirePositive("inner radius");
    outerEdge.requirePositive("outer radius");
    rim.requireNotNegative("rim");
    innerEdge.minus(rim).requirePositive("opening of the base");
  }

  /**
   * Under a circle.
   *
   * @throws IllegalArgumentException if the plan is an oval
   */
  public static BaseFrame under(GroundPlan ground, Form form, Length rim) {
    if (ground.isOval()) {
      throw new IllegalArgumentException("a base is planned for circles only, not for an oval");
    }
    return new BaseFrame(form, ground.innerEdge(), ground.outerEdge(), rim);
  }

  /** Width of the whole base across two parallel sides. */
  public Length acrossFlats() {
    return outerEdge.plus(rim).times(2);
  }

  /** What is open in its middle: the round opening, or between two sides of the octagon's. */
  public Length clear() {
    Length opening = innerEdge.minus(rim).times(2);
    return form == Form.SQUARE ? opening : opening.times(Math.cos(HALF_EIGHTH));
  }

  /** The pieces wanted. */
  public Demand demand() {
    return switch (form) {
      case SQUARE -> new Demand(Piece.of("base", "quarter of the square base", quarter()), 4);
      case OCTAGON -> new Demand(Piece.of("base", "board of the octagon base", board()), 8);
    };
  }

  /** Every piece where it lies, the helix's centre at the origin. */
  public List<Outline> inPlace() {
    Demand demand = demand();
    Outline piece = demand.piece().shape().outline();
    return IntStream.range(0, demand.count())
        .mapToObj(i -> piece.at(new Pose(0, 0, 2 * Math.PI * i / demand.count())))
        .toList();
  }

  /** Frame: the helix's centre at the origin. */
  private FreeShape quarter() {
    double side = outerEdge.plus(rim).millimetres();
    double hole = innerEdge.minus(rim).millimetres();
    Arc opening = new Arc(Point.ORIGIN, hole, Math.PI / 2, -Math.PI / 2);
    Point corner = new Point(side, side);
    Point right = new Point(side, 0);
    Point top = new Point(0, side);
    return new FreeShape(
        Outline.of(
            new Loop(
                List.of(
                    opening,
                    new Segment(opening.end(), right),
                    new Segment(right, corner),
                    new Segment(corner, top),
                    new Segment(top, opening.start())))));
  }

  /**
   * Frame: the helix's centre at the origin, +x through the board's middle. The inner sides lie
   * within the roadbed's inner edge even at the corners.
   */
  private FreeShape board() {
    double outer = outerEdge.plus(rim).millimetres();
    double inner = innerEdge.minus(rim).millimetres() * Math.cos(HALF_EIGHTH);
    double slope = Math.tan(HALF_EIGHTH);
    return FreeShape.polygon(
        List.of(
            new Point(inner, -inner * slope),
            new Point(outer, -outer * slope),
            new Point(outer, outer * slope),
            new Point(inner, inner * slope)));
  }
}
