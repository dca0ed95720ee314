package curvestock.helix.verdict;

import curvestock.geometry.Point;
import curvestock.helix.build.Station;
import curvestock.helix.build.Stations;
import curvestock.helix.build.SupportBulge;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.verdict.Verdict.Result;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether an outer support of the lowest turn stands where the approach comes in: in the way of
 * trains, or only through the wood of the lead.
 *
 * <p>Inner supports lie inside the ring's inner edge, which no tangent crosses behind the entry.
 */
final class ApproachRule {

  private final HelixSpec spec;
  private final CentreLine line;
  private final Stations stations;

  ApproachRule(HelixSpec spec, CentreLine line, Stations stations) {
    this.spec = spec;
    this.line = line;
    this.stations = stations;
  }

  Verdict verdict() {
    List<String> blocking = new ArrayList<>();
    List<String> touching = new ArrayList<>();
    for (Station station : stations.all()) {
      Point offset = offset(station);
      if (offset.x() < 0 && station.places().get(0) > 0) {
        if (isInTheWay(offset.y())) {
          blocking.add(station.name());
        } else if (meetsTheLead(offset)) {
          touching.add(station.name());
        }
      }
    }
    return verdict(String.join(", ", blocking), String.join(", ", touching));
  }

  private static Verdict verdict(String blocking, String touching) {
    String rule = "supports in the approach";
    if (blocking.isEmpty() && touching.isEmpty()) {
      return Verdict.ok(rule, "none stands in the way of the entry");
    }
    List<String> findings = new ArrayList<>();
    List<String> mends = new ArrayList<>();
    if (!blocking.isEmpty()) {
      findings.add("the outer support of " + blocking + " stands in the way of the entry");
      mends.add("shift it outside the approach, or leave it out and bridge to its neighbours");
    }
    if (!touching.isEmpty()) {
      String that = blocking.isEmpty() ? "the outer support" : "that";
      findings.add(that + " of " + touching + " meets the lead's roadbed");
      mends.add("drill or notch the lead for " + touching);
    }
    return new Verdict(rule, Result.TIGHT, String.join("; ", findings), String.join("; ", mends));
  }

  /**
   * Where the outer support, or the only one, stands as seen from the end of the straight approach:
   * x ahead, y to the left.
   */
  private Point offset(Station station) {
    Waypoint entry = line.at(-spec.bottom().easement().millimetres() / 2);
    double side = bothEdges() ? half() - inset() : 0;
    Point support = line.at(station.places().get(0)).toLeft(-line.inwards() * side);
    Point offset = support.minus(entry.point());
    Point ahead = Point.polar(1, entry.heading());
    return new Point(offset.dot(ahead), ahead.cross(offset));
  }

  private boolean bothEdges() {
    return spec.supports().riser() instanceof Riser.ThreadedRods
        || SupportBulge.of(spec.ground(), spec.supports()).needsBothEdges();
  }

  private double half() {
    return spec.ground().width().millimetres() / 2;
  }

  /** The middle of what the support takes of the roadbed. */
  private double inset() {
    return spec.supports().riser().reachFromEdge().millimetres() / 2;
  }

  private boolean isInTheWay(double toLeft) {
    double halfVehicle =
        spec.traffic()
            .longest()
            .map(Vehicle::width)
            .map(width -> width.millimetres() / 2)
            .orElse(spec.ground().sideMargin().millimetres() / 2);
    double swath = halfVehicle + spec.traffic().spare().millimetres() + Math.abs(inset());
    for (Length radius : spec.ground().trackRadii()) {
      double track = line.inwards() * spec.ground().bedRadius().minus(radius).millimetres();
      if (Math.abs(toLeft - track) < swath) {
        return true;
      }
    }
    return false;
  }

  private boolean meetsTheLead(Point offset) {
    double wood = half() + Math.abs(inset());
    return Math.abs(offset.y()) < wood
        && -offset.x() < spec.bottom().leadIn().millimetres() + Math.abs(inset());
  }
}
