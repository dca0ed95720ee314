package curvestock.helix.build;

import curvestock.helix.build.Bridging.Gap;
import curvestock.helix.build.EntryWay.Hit;
import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Climb;
import curvestock.helix.spec.Adjustments;
import curvestock.helix.spec.HelixSpec;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Single supports that are left out: because the builder says so, or because they would stand in
 * the approach of the trains.
 *
 * <p>A support in the approach is left out on every turn where the plywood spans from the one
 * before to the one behind, or else where something bridges the gap ({@link Bridging}); where
 * nothing can, it stays, for the verdict to fail. So does a support that the builder himself has
 * moved there. One that only stands too near, to the lead's wood or under a lead to other supports,
 * is left out where the plywood spans.
 */
final class LeftOut {

  private static final double ROUNDING = 1e-6;

  private final Bridging bridging;
  private final EntryWay way;
  private final Adjustments adjustments;
  private final Map<String, Edges> names = new LinkedHashMap<>();
  private final double run;
  private final double ringLength;

  LeftOut(HelixSpec spec, Climb climb, CentreLine line, Joints joints) {
    this.bridging = new Bridging(spec, climb, line, joints);
    this.way = new EntryWay(spec, line);
    this.adjustments = spec.supports().adjustments();
    this.run = climb.runPerTurn().millimetres();
    this.ringLength = climb.ringLength();
  }

  /** Leaves supports of the ring out, in place; what comes back bridges the gaps. */
  List<Bridge> apply(List<Station> ring) {
    skip(ring);
    List<Bridge> bridges = new ArrayList<>();
    for (boolean outer : new boolean[] {true, false}) {
      List<Station> blocked =
          ring.stream()
              .filter(station -> isHeld(station, outer) && isBlocked(station, outer))
              .toList();
      List<Station> held =
          ring.stream()
              .filter(station -> isHeld(station, outer) && !blocked.contains(station))
              .toList();
      for (Station station : blocked) {
        leaveOut(ring, station, outer, held, bridges).ifPresent(bridge -> join(bridges, bridge));
      }
      leaveOutClose(ring, outer, bridges);
    }
    ring.removeIf(station -> station.edges() == Edges.NONE);
    return List.copyOf(bridges);
  }

  /** Whether nothing stands in the approach any more once supports of this ring are left out. */
  boolean settles(List<Station> ring) {
    List<Station> left = new ArrayList<>(ring);
    apply(left);
    return left.stream()
        .noneMatch(
            station ->
                (isHeld(station, true) && isBlocked(station, true))
                    || (isHeld(station, false) && isBlocked(station, false)));
  }

  private static void join(List<Bridge> bridges, Bridge bridge) {
    for (int i = 0; i < bridges.size(); i++) {
      if (bridges.get(i).isOne(bridge)) {
        bridges.set(i, bridges.get(i).with(bridge.stations()));
        return;
      }
    }
    bridges.add(bridge);
  }

  /** What was left out, for example {@code S19 outer}, {@code S20}. */
  List<String> names() {
    return names.entrySet().stream()
        .map(
            each ->
                switch (each.getValue()) {
                  case INNER -> each.getKey() + " outer";
                  case OUTER -> each.getKey() + " inner";
                  default -> each.getKey();
                })
        .toList();
  }

  private void drop(List<Station> stations, int index, boolean outer) {
    Station station = stations.get(index);
    Station left = station.heldAt(without(station.edges(), outer));
    stations.set(index, left);
    names.put(left.name(), left.edges());
  }

  private Optional<Bridge> leaveOut(
      List<Station> ring,
      Station station,
      boolean outer,
      List<Station> held,
      List<Bridge> bridges) {
    Neighbour before = neighbour(held, station, -1);
    Neighbour behind = neighbour(held, station, 1);
    int index = indexOf(ring, station.name());
    if (bridging.spans(before.away() + behind.away())) {
      drop(ring, index, outer);
      return Optional.empty();
    }
    Gap gap =
        new Gap(
            station.heldAt(without(station.edges(), outer)),
            outer,
            station.lowest() - before.away(),
            station.lowest() + behind.away(),
            before.name() + " and " + behind.name());
    Optional<Bridge> bridge = bridging.over(gap, bridges);
    bridge.ifPresent(found -> drop(ring, index, outer));
    return bridge;
  }

  /** Those that only stand too near the lead's wood, and hold up no bridge. */
  private void leaveOutClose(List<Station> ring, boolean outer, List<Bridge> bridges) {
    for (int i = 0; i < ring.size(); i++) {
      Station station = ring.get(i);
      double at = station.lowest();
      boolean carries =
          bridges.stream()
              .anyMatch(
                  bridge -> bridge.outer() == outer && bridge.covers(at - ROUNDING, at + ROUNDING));
      if (!carries
          && isHeld(station, outer)
          && isBeside(station)
          && hit(at, outer) == Hit.CLOSE
          && spansWithout(ring, station, outer)) {
        drop(ring, i, outer);
      }
    }
  }

  private boolean spansWithout(List<Station> ring, Station station, boolean outer) {
    List<Station> held =
        ring.stream().filter(other -> isHeld(other, outer) && !other.equals(station)).toList();
    return bridging.spans(neighbour(held, station, -1).away() + neighbour(held, station, 1).away());
  }

  private static int indexOf(List<Station> stations, String name) {
    for (int i = 0; i < stations.size(); i++) {
      if (stations.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalStateException("no station " + name);
  }

  /** The next station that is held, and how far it is along the line. */
  private record Neighbour(String name, double away) {}

  /** Forwards or backwards; turns repeat. */
  private Neighbour neighbour(List<Station> held, Station station, int sign) {
    Neighbour nearest = new Neighbour(station.name(), run);
    for (Station other : held) {
      double off = sign * (other.lowest() - station.lowest()) % run;
      double away = off > ROUNDING ? off : off + run;
      nearest = away < nearest.away() ? new Neighbour(other.name(), away) : nearest;
    }
    return nearest;
  }

  /** Where the lowest turn's support would stand on the base beside the approach. */
  private boolean isBlocked(Station station, boolean outer) {
    return isBeside(station) && hit(station.lowest(), outer).isInTheWay();
  }

  private boolean isBeside(Station station) {
    double at = station.lowest();
    return !isMoved(station) && way.isBeside(at) && at <= Math.min(run, ringLength);
  }

  /** What the builder moves stands where he says. */
  private boolean isMoved(Station station) {
    return adjustments.shiftOf(station.name()) != 0;
  }

  private Hit hit(double at, boolean outer) {
    return way.hit(at, outer ? way.offset() : -way.offset());
  }

  /** Leaves out what of an exit's lead would stand in the approach, in place. */
  void clear(List<Station> exit) {
    skip(exit);
    for (int i = 0; i < exit.size(); i++) {
      for (boolean outer : new boolean[] {true, false}) {
        if (!isMoved(exit.get(i)) && hit(exit.get(i).lowest(), outer) != Hit.NONE) {
          drop(exit, i, outer);
        }
      }
    }
    exit.removeIf(station -> station.edges() == Edges.NONE);
  }

  /**
   * Leaves out supports of a lead that could not be moved clear of others, in place, where the
   * plywood spans or reaches out over the gap.
   *
   * @param nearest the ring's support next to the lead, along the line
   * @param end of the lead's wood
   */
  void clear(
      List<Station> lead, List<Station> others, LeadSpacing room, double nearest, double end) {
    for (int i = 0; i < lead.size(); i++) {
      for (boolean outer : new boolean[] {true, false}) {
        Station station = lead.get(i);
        Station edge = station.heldAt(outer ? Edges.OUTER : Edges.INNER);
        if (isHeld(station, outer)
            && !isMoved(station)
            && !room.isClear(station.lowest(), edge, others)
            && bridging.spans(spanWithout(lead, station, outer, nearest, end))) {
          drop(lead, i, outer);
        }
      }
    }
    lead.removeIf(station -> station.edges() == Edges.NONE);
  }

  /** What reaches out beyond the last support bends like a span of twice its length. */
  private static double spanWithout(
      List<Station> lead, Station station, boolean outer, double nearest, double end) {
    double at = station.lowest();
    TreeSet<Double> places = new TreeSet<>(List.of(nearest));
    lead.stream()
        .filter(other -> isHeld(other, outer) && !other.equals(station))
        .forEach(other -> places.add(other.lowest()));
    Double before = places.lower(at);
    Double behind = places.higher(at);
    if (before != null && behind != null) {
      return behind - before;
    }
    return 2 * Math.abs(end - (before == null ? behind : before));
  }

  /** Leaves out what the builder says, in place. */
  void skip(List<Station> stations) {
    for (int i = 0; i < stations.size(); i++) {
      for (boolean outer : new boolean[] {true, false}) {
        if (adjustments.skips(stations.get(i).name(), outer ? "outer" : "inner")) {
          drop(stations, i, outer);
        }
      }
    }
    stations.removeIf(station -> station.edges() == Edges.NONE);
  }

  private static boolean isHeld(Station station, boolean outer) {
    return outer ? station.edges().atOuter() : station.edges().atInner();
  }

  private static Edges without(Edges edges, boolean outer) {
    return switch (edges) {
      case BOTH -> outer ? Edges.INNER : Edges.OUTER;
      case INNER -> outer ? Edges.INNER : Edges.NONE;
      case OUTER -> outer ? Edges.NONE : Edges.OUTER;
      default -> edges;
    };
  }
}
