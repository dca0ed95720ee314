package curvestock.geometry;

/** One directed piece of an outline's boundary. The material lies to its left. */
public sealed interface Edge permits Segment, Arc {

  /** Where the edge begins. */
  Point start();

  /** Where the edge ends. */
  Point end();

  /** Length along the edge, in mm; exact for arcs. */
  double length();

  /** The edge after the shape it belongs to was laid at {@code pose}. */
  Edge at(Pose pose);

  /** The same points, run the other way. */
  Edge reversed();

  /**
   * The part between two shares of the edge's length, 0 its start and 1 its end; {@code from} must
   * be less than {@code to}.
   */
  Edge part(double from, double to);

  /** Direction of travel at the start, a unit vector. */
  Point startDirection();

  /** Direction of travel at the end, a unit vector. */
  default Point endDirection() {
    return reversed().startDirection().times(-1);
  }

  /** The point half-way along. */
  default Point middle() {
    return part(0, 0.5).end();
  }

  /** The least axis-parallel rectangle around the edge. */
  Box box();

  /** Distance to the nearest point of the edge, in mm. */
  double distanceTo(Point point);

  /** This edge's share of ½∮(x dy − y dx), by which {@link Loop} sums its area; exact for arcs. */
  double areaTerm();
}
