package curvestock.helix.verdict;

import curvestock.geometry.Point;
import curvestock.helix.build.Stations;
import curvestock.helix.build.SupportRow;
import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.build.SupportTable;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether a support stands where the approach comes in: in the way of trains, or only through the
 * wood of the lead. The lowest turn's outer supports can, and those under the exit's lead where it
 * leaves over the entry.
 *
 * <p>The ring's inner supports lie inside its inner edge, which no tangent crosses behind the
 * entry. At the exit nothing can stand in the way: no turn lies above the lead.
 */
final class ApproachRule {

  private final HelixSpec spec;
  private final CentreLine line;
  private final Stations stations;
  private final SupportTable supports;

  ApproachRule(HelixSpec spec, CentreLine line, Stations stations, SupportTable supports) {
    this.spec = spec;
    this.line = line;
    this.stations = stations;
    this.supports = supports;
  }

  Verdict verdict() {
    List<String> blocking = new ArrayList<>();
    List<String> touching = new ArrayList<>();
    for (SupportRow row : supports.rows()) {
      // Under the lead's own wood a support is where it should be.
      boolean elsewhere =
          stations.exit().contains(row.station())
              || (stations.ring().contains(row.station()) && row.at() > 0);
      if (row.standsOnBase() && elsewhere) {
        judge(row, blocking, touching);
      }
    }
    return verdict(String.join(", ", blocking), String.join(", ", touching));
  }

  private void judge(SupportRow row, List<String> blocking, List<String> touching) {
    List<Point> places = places(row).stream().filter(offset -> offset.x() < 0).toList();
    if (places.stream().anyMatch(this::isInTheWay)) {
      blocking.add(row.station().name());
    } else if (places.stream().anyMatch(this::meetsTheLead)) {
      touching.add(row.station().name());
    }
  }

  private static Verdict verdict(String blocking, String touching) {
    boolean ok = blocking.isEmpty() && touching.isEmpty();
    return Verdict.of(Rule.APPROACH_SUPPORTS, ok ? State.OK : State.MARGINAL)
        .with(Fact.BLOCKING, new Text(blocking))
        .with(Fact.TOUCHING, new Text(touching));
  }

  /**
   * Where its supports stand as seen from the end of the straight approach: x ahead, y to the left.
   * Of the ring's, the outer one or the only one.
   */
  private List<Point> places(SupportRow row) {
    double side = row.edges() == Edges.BOTH ? half() - inset() : 0;
    List<Double> sides =
        stations.exit().contains(row.station()) ? List.of(side, -side) : List.of(side);
    return sides.stream().map(outwards -> offset(row.at(), outwards)).toList();
  }

  private Point offset(double at, double outwards) {
    Waypoint entry = line.at(-spec.bottom().easement().millimetres() / 2);
    Point support = line.at(at).toLeft(-line.inwards() * outwards);
    Point offset = support.minus(entry.point());
    Point ahead = Point.polar(1, entry.heading());
    return new Point(offset.dot(ahead), ahead.cross(offset));
  }

  private double half() {
    return spec.ground().width().millimetres() / 2;
  }

  /** The middle of what the support takes of the roadbed. */
  private double inset() {
    return spec.supports().riser().reachFromEdge().millimetres() / 2;
  }

  private boolean isInTheWay(Point offset) {
    if (-offset.x() > reach()) {
      return false;
    }
    double halfVehicle =
        spec.traffic()
            .longest()
            .map(Vehicle::width)
            .map(width -> width.millimetres() / 2)
            .orElse(spec.ground().sideMargin().millimetres() / 2);
    double swath = halfVehicle + spec.traffic().spare().millimetres() + Math.abs(inset());
    for (Length radius : spec.ground().trackRadii()) {
      double track = line.inwards() * spec.ground().bedRadius().minus(radius).millimetres();
      if (Math.abs(offset.y() - track) < swath) {
        return true;
      }
    }
    return false;
  }

  /** How far the approach is known to run straight: over the ring's width at least. */
  private double reach() {
    double known = spec.bottom().leadIn().plus(spec.bottom().approachRun()).millimetres();
    return Math.max(known, spec.ground().outerEdge().millimetres());
  }

  private boolean meetsTheLead(Point offset) {
    double wood = half() + spec.beyondEdges().millimetres() + Math.abs(inset());
    return Math.abs(offset.y()) < wood
        && -offset.x() < spec.bottom().leadIn().millimetres() + Math.abs(inset());
  }
}
