package curvestock.helix.verdict;

import curvestock.geometry.Point;
import curvestock.helix.build.Station;
import curvestock.helix.build.Stations;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.verdict.Verdict.Result;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Whether an outer support of the lowest turn stands in the way of the approach. */
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
    List<String> names =
        stations.all().stream().filter(this::isInTheWay).map(Station::name).toList();
    String rule = "supports in the approach";
    if (names.isEmpty()) {
      return Verdict.ok(rule, "none stands in the way of the entry");
    }
    return new Verdict(
        rule,
        Result.TIGHT,
        "the outer support of " + String.join(", ", names) + " stands in the way of the entry",
        "shift it outside the approach, or leave it out and bridge to its neighbours");
  }

  /** Inner supports lie inside the ring's inner edge, which no tangent crosses behind the entry. */
  private boolean isInTheWay(Station station) {
    Waypoint entry = line.at(0);
    double at = station.places().get(0);
    if (at <= 0) {
      return false;
    }
    double half = spec.ground().width().millimetres() / 2;
    double inset = spec.supports().riser().reachFromEdge().millimetres() / 2;
    Point support = line.at(at).toLeft(-line.inwards() * (half - inset));
    Point offset = support.minus(entry.point());
    Point ahead = Point.polar(1, entry.heading());
    boolean behind = offset.dot(ahead) < 0;
    return behind && nearTrack(ahead.cross(offset));
  }

  private boolean nearTrack(double toLeft) {
    double halfVehicle =
        spec.traffic()
            .longest()
            .map(Vehicle::width)
            .map(width -> width.millimetres() / 2)
            .orElse(spec.ground().sideMargin().millimetres() / 2);
    double swath = halfVehicle + spec.traffic().spare().millimetres();
    swath += spec.supports().riser().reachFromEdge().millimetres() / 2;
    List<Double> tracks = new ArrayList<>();
    for (Length radius : spec.ground().trackRadii()) {
      tracks.add(line.inwards() * spec.ground().bedRadius().minus(radius).millimetres());
    }
    double reach = swath;
    return tracks.stream().anyMatch(track -> Math.abs(toLeft - track) < reach);
  }
}
