package curvestock.helix.build;

import curvestock.helix.course.Climb;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.SupportPlan;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The stations of one turn, evenly spaced along the line, each serving every turn, and those of the
 * leads.
 *
 * <p>Where the first one goes is stated, or chosen: for blocks at the ring's entry, so that joints
 * stand on blocks where the stations are a multiple of the pieces per turn (common practice, no
 * source); for rods in the middle of the widest gap that all joints leave, since a hole on a joint
 * would be two half holes.
 *
 * <p>A lead gets stations of its own, no further apart than the ring's, the last of them at its
 * outer end, wherever it reaches out by more than half that distance. The exit's stand on the base
 * and so only where the lead has left the turn below it. On an oval the entry's lead runs under the
 * ring's straight and is held by the ring's own stations there.
 */
public final class Stations {

  private static final double ROUNDING = 1e-6;

  private final List<Station> ring = new ArrayList<>();
  private final List<Station> entry = new ArrayList<>();
  private final List<Station> exit = new ArrayList<>();
  private final double spacing;

  public Stations(HelixSpec spec, Climb climb, Joints joints) {
    SupportPlan supports = spec.supports();
    LeadEnds leads = new LeadEnds(spec, climb);
    double run = climb.runPerTurn().millimetres();
    spacing = run / supports.perTurn();
    double first =
        supports.firstAt().map(Length::millimetres).orElseGet(() -> choose(supports, climb, joints))
            % spacing;
    for (int i = 0; i < supports.perTurn(); i++) {
      List<Double> places = new ArrayList<>();
      double lowest = first + i * spacing;
      for (int turn = -1; lowest + turn * run <= climb.ringLength() + ROUNDING; turn++) {
        if (lowest + turn * run >= leads.ringStationsFrom() - ROUNDING) {
          places.add(lowest + turn * run);
        }
      }
      if (!places.isEmpty()) {
        ring.add(new Station("S" + (i + 1), places));
      }
    }
    addEntry(leads);
    addExit(leads);
  }

  private void addEntry(LeadEnds leads) {
    double lowest = ring.stream().mapToDouble(Station::lowest).min().orElseThrow();
    double reach = lowest - leads.entryEnd();
    if (leads.hasEntry() && reach > spacing / 2) {
      int count = spans(reach);
      for (int i = 0; i < count; i++) {
        entry.add(new Station("E" + (i + 1), List.of(leads.entryEnd() + reach * i / count)));
      }
    }
  }

  private void addExit(LeadEnds leads) {
    double highest = ring.stream().mapToDouble(Station::highest).max().orElseThrow();
    double reach = leads.exitEnd() - highest;
    if (!leads.hasExit() || reach <= spacing / 2 || leads.exitEnd() < leads.exitClear()) {
      return;
    }
    boolean waits = leads.exitClear() - highest > spacing / 2;
    double from = waits ? leads.exitClear() : highest + reach / spans(reach);
    double rest = leads.exitEnd() - from;
    int count = rest > spacing / 2 ? spans(rest) : 0;
    for (int i = 0; i <= count; i++) {
      double share = count == 0 ? 0 : (double) i / count;
      exit.add(new Station("X" + (i + 1), List.of(from + rest * share)));
    }
  }

  /** How many even spans of at most the ring's spacing so much length takes. */
  private int spans(double length) {
    return (int) Math.ceil(length / spacing - ROUNDING);
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

  /** All, in order of climb: the entry's lead, the ring, the exit's lead. */
  public List<Station> all() {
    return Stream.of(entry, ring, exit).flatMap(List::stream).toList();
  }

  /** Those of the ring, from its entry. */
  public List<Station> ring() {
    return List.copyOf(ring);
  }

  /** Those of the entry's lead alone, from its outer end. */
  public List<Station> entry() {
    return List.copyOf(entry);
  }

  /** Those of the exit's lead alone, from the ring. */
  public List<Station> exit() {
    return List.copyOf(exit);
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

  /** From a place on the line to the nearest station. */
  public double distanceToStation(double at) {
    return all().stream()
        .flatMap(station -> station.places().stream())
        .mapToDouble(place -> Math.abs(place - at))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
