package curvestock.geometry;

/** One directed piece of an outline's boundary. The material lies to its left. */
public sealed interface Edge permits Segment, Arc {

  Point start();

  Point end();

  double length();

  /** The edge after the shape it belongs to was laid at {@code pose}. */
  Edge at(Pose pose);

  /** The same points, run the other way. */
  Edge reversed();

  /** The least axis-parallel rectangle around the edge. */
  Box box();

  /** Distance to the nearest point of the edge. */
  double distanceTo(Point point);

  /** This edge's share of ½∮(x dy − y dx), by which {@link Loop} sums its area; exact for arcs. */
  double areaTerm();
}
