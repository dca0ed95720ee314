package curvestock.helix.build;

import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.helix.build.BedPiece.StationPlace;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Climb;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The holes that threaded rods need: one at each edge that a rod goes through, square to the line.
 *
 * <p>Diameter: the rod, its fit, and the slope's share = grade × plywood, since the roadbed lies at
 * a slope on a plumb rod (derived).
 */
public final class HoleRule {

  /** Wood to leave between a hole and a joint or the end of a piece: our own choice, 3/8 in. */
  public static final Length WOOD_AT_END = Length.ofInches(0.375);

  private final HelixSpec spec;
  private final Climb climb;

  public HoleRule(HelixSpec spec, Climb climb) {
    this.spec = spec;
    this.climb = climb;
  }

  /** What the slope adds: grade × plywood, all layers. */
  public Length slop() {
    return spec.plywood().times(climb.grade().ratio());
  }

  /** Diameter of the holes for the given rods. */
  public Length diameter(Riser.ThreadedRods rods) {
    return rods.thread().diameter().plus(rods.fit()).plus(slop());
  }

  /** From the roadbed's centre line to the middle of a hole. */
  public Length offset(Riser.ThreadedRods rods) {
    return spec.ground().width().times(0.5).minus(rods.inset());
  }

  /** The holes at the given places, inner and outer, in the frame that lies at {@code pose}. */
  List<Hole> holes(CentreLine line, List<StationPlace> places, Pose pose) {
    List<Hole> holes = new ArrayList<>();
    if (spec.supports().riser() instanceof Riser.ThreadedRods rods) {
      double side = offset(rods).millimetres();
      for (StationPlace place : places) {
        Waypoint here = line.at(place.at());
        if (place.station().edges().atInner()) {
          holes.add(new Hole(local(here.toLeft(side * line.inwards()), pose), diameter(rods)));
        }
        if (place.station().edges().atOuter()) {
          holes.add(new Hole(local(here.toLeft(-side * line.inwards()), pose), diameter(rods)));
        }
      }
    }
    return holes;
  }

  private static Point local(Point point, Pose pose) {
    Point offset = point.minus(new Point(pose.x(), pose.y()));
    return Point.polar(offset.norm(), offset.angle() - pose.rotation());
  }
}
