package curvestock.helix.build;

import curvestock.helix.course.Climb;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.SupportPlan;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The stations of one turn, evenly spaced along the line, each serving every turn.
 *
 * <p>Where the first one goes is stated, or chosen: for blocks at the ring's entry, so that joints
 * stand on blocks where the stations are a multiple of the pieces per turn (common practice, no
 * source); for rods in the middle of the widest gap that all joints leave, since a hole on a joint
 * would be two half holes.
 */
public final class Stations {

  private static final double ROUNDING = 1e-6;

  private final List<Station> stations;
  private final double spacing;

  public Stations(SupportPlan supports, Climb climb, Joints joints) {
    double run = climb.runPerTurn().millimetres();
    spacing = run / supports.perTurn();
    double first =
        supports.firstAt().map(Length::millimetres).orElseGet(() -> choose(supports, climb, joints))
            % spacing;
    stations = new ArrayList<>();
    for (int i = 0; i < supports.perTurn(); i++) {
      List<Double> places = new ArrayList<>();
      for (int turn = 0;
          first + i * spacing + turn * run <= climb.ringLength() + ROUNDING;
          turn++) {
        places.add(first + i * spacing + turn * run);
      }
      if (!places.isEmpty()) {
        stations.add(new Station(i + 1, places));
      }
    }
  }

  private double choose(SupportPlan supports, Climb climb, Joints joints) {
    if (supports.riser() instanceof Riser.WoodBlocks) {
      return 0;
    }
    List<Double> taken = new ArrayList<>(List.of(0.0));
    joints.placesToAvoid().stream()
        .filter(end -> end >= 0 && end <= climb.ringLength())
        .forEach(end -> taken.add(end % spacing));
    taken.sort(null);
    double best = taken.get(taken.size() - 1);
    double widest = taken.get(0) + spacing - best;
    for (int i = 1; i < taken.size(); i++) {
      if (taken.get(i) - taken.get(i - 1) > widest + ROUNDING) {
        widest = taken.get(i) - taken.get(i - 1);
        best = taken.get(i - 1);
      }
    }
    return (best + widest / 2) % spacing;
  }

  /** In order of climb from the ring's entry. */
  public List<Station> all() {
    return List.copyOf(stations);
  }

  /** From one station to the next along the line. */
  public Length spacing() {
    return Length.ofMillimetres(spacing);
  }

  /** Least distance along the line between a station and a place that holes must avoid. */
  public double leastDistanceToAvoid(Joints joints) {
    return joints.placesToAvoid().stream().mapToDouble(this::distanceToStation).min().orElseThrow();
  }

  /** The joints that stand on a station, within the given distance along the line. */
  public List<Joint> jointsOnStations(Joints joints, double within) {
    return joints.all().stream().filter(joint -> distanceToStation(joint.at()) <= within).toList();
  }

  private double distanceToStation(double at) {
    return stations.stream()
        .flatMap(station -> station.places().stream())
        .mapToDouble(place -> Math.abs(place - at))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
