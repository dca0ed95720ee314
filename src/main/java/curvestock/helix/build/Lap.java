package curvestock.helix.build;

import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The end of a piece that a half-lap takes half the thickness of.
 *
 * @param end which end, and with it from which side the wood is taken
 * @param course the line along the middle of the roadbed, from the shoulder to the end of the wood
 * @param width of the roadbed
 */
public record Lap(LapEnd end, List<Edge> course, Length width) {

  /** Copies the course. */
  public Lap {
    course = List.copyOf(course);
  }

  /** What is taken away, just as large as the overlap. */
  public Outline area() {
    return new RoadbedOutline(course, width.millimetres()).plain();
  }

  /**
   * What a round tool must clear so that nothing stays: past the end and past both sides by its
   * radius, for it leaves that radius in every corner; at the shoulder just as far as the overlap.
   *
   * @param radius of the tool, in millimetres
   */
  public Outline cleared(double radius) {
    Edge last = course.get(course.size() - 1);
    Point beyond = last.end().plus(last.endDirection().times(radius));
    List<Edge> longer = new ArrayList<>(course);
    longer.add(new Segment(last.end(), beyond));
    return new RoadbedOutline(longer, width.millimetres() + 2 * radius).plain();
  }

  /** The same lap of a piece that lies there. */
  public Lap at(Pose pose) {
    return new Lap(end, course.stream().<Edge>map(edge -> edge.at(pose)).toList(), width);
  }

  /** The middle of the shoulder. */
  public Point shoulder() {
    return course.get(0).start();
  }

  /** From the shoulder away from the lap, along the piece: a unit vector. */
  public Point inwards() {
    return course.get(0).startDirection().times(-1);
  }
}
