package curvestock.helix.build;

import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Climb;
import curvestock.helix.spec.Adjustments;
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
 *
 * <p>No support stands in the way of trains or in the wood of the entry's lead: the first station
 * is chosen so ({@link FirstStation}), one that is only too near is moved ({@link BesideLead}), and
 * where that is not enough single supports are left out ({@link LeftOut}).
 */
public final class Stations {

  private static final double ROUNDING = 1e-6;

  /** Supports that the entry's lead gets at most, so that all stand clear of the ring's. */
  private static final int MOST_ADDED = 2;

  private final List<Station> ring = new ArrayList<>();
  private final List<Station> entry = new ArrayList<>();
  private final List<Station> exit = new ArrayList<>();
  private final List<Bridge> bridges;
  private final List<String> names;
  private final double spacing;
  private final double reach;
  private final Length leadToSupport;
  private final Adjustments adjustments;

  /**
   * Places all stations.
   *
   * @throws IllegalArgumentException if a support to move or to leave out is none of them
   */
  public Stations(HelixSpec spec, Climb climb, CentreLine line, Joints joints) {
    SupportPlan supports = spec.supports();
    adjustments = supports.adjustments();
    LeadEnds leads = new LeadEnds(spec, climb);
    spacing = climb.runPerTurn().millimetres() / supports.perTurn();
    reach =
        supports.riser() instanceof Riser.WoodBlocks blocks
            ? blocks.along().millimetres() / 2 - ROUNDING
            : 0;
    double first =
        supports
                .firstAt()
                .map(Length::millimetres)
                .orElseGet(
                    () ->
                        new FirstStation(spec, climb, line, joints)
                            .place(
                                tried ->
                                    new LeftOut(spec, climb, line, joints)
                                        .settles(ring(spec, climb, leads, tried))))
            % spacing;
    ring.addAll(ring(spec, climb, leads, first));
    leadToSupport = leads.exitToSupport();
    addEntry(leads);
    addExit(leads);
    requireKnown();
    new BesideLead(spec, climb, line, joints).clear(ring);
    LeftOut leftOut = new LeftOut(spec, climb, line, joints);
    bridges = leftOut.apply(ring);
    leftOut.clear(exit);
    leftOut.skip(entry);
    apart(new LeadSpacing(spec, climb, line, spacing), leads, leftOut);
    names = leftOut.names();
  }

  private List<Station> ring(HelixSpec spec, Climb climb, LeadEnds leads, double first) {
    double run = climb.runPerTurn().millimetres();
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < spec.supports().perTurn(); i++) {
      List<Double> places = new ArrayList<>();
      String name = "S" + (i + 1);
      double lowest = first + i * spacing + adjustments.shiftOf(name);
      for (int turn = -1; lowest + turn * run <= climb.ringLength() + ROUNDING; turn++) {
        if (lowest + turn * run >= leads.ringStationsFrom() - ROUNDING) {
          places.add(lowest + turn * run);
        }
      }
      if (!places.isEmpty()) {
        stations.add(new Station(name, places));
      }
    }
    return stations;
  }

  /**
   * Moves supports of the leads clear of those of the ring, and of each other's; where that would
   * make a span of the entry's too long, it gets one support more. What still stands too near is
   * left out where the plywood spans.
   */
  private void apart(LeadSpacing room, LeadEnds leads, LeftOut leftOut) {
    double lowest = ring.stream().mapToDouble(Station::lowest).min().orElseThrow();
    double highest = ring.stream().mapToDouble(Station::highest).max().orElseThrow();
    int supports = entry.size();
    room.clear(entry, ring, leads.entryEnd(), lowest);
    for (int more = 1; more <= MOST_ADDED && !room.areClear(entry, ring); more++) {
      entry.clear();
      layEntry(leads, supports + more);
      leftOut.skip(entry);
      room.clear(entry, ring, leads.entryEnd(), lowest);
    }
    leftOut.clear(entry, ring, room, lowest, leads.entryWood());
    List<Station> others = Stream.of(ring, entry).flatMap(List::stream).toList();
    room.clear(exit, others, Math.max(highest, leads.exitClear()), leads.exitEnd());
    leftOut.clear(exit, others, room, highest, leads.exitWood());
  }

  private void requireKnown() {
    List<String> names = all().stream().map(Station::name).toList();
    Stream.concat(
            adjustments.moved().keySet().stream(),
            adjustments.skipped().stream().map(name -> name.replaceFirst(" (inner|outer)$", "")))
        .filter(name -> !names.contains(name))
        .findFirst()
        .ifPresent(
            name -> {
              throw new IllegalArgumentException(
                  "support " + name + " must be one of " + String.join(", ", names));
            });
  }

  private void addEntry(LeadEnds leads) {
    double lowest = ring.stream().mapToDouble(Station::lowest).min().orElseThrow();
    double reach = lowest - leads.entryEnd();
    if (leads.hasEntry() && reach > spacing / 2) {
      layEntry(leads, spans(reach));
    }
  }

  /** So many, evenly from the lead's end to the ring's first. */
  private void layEntry(LeadEnds leads, int count) {
    double lowest = ring.stream().mapToDouble(Station::lowest).min().orElseThrow();
    double reach = lowest - leads.entryEnd();
    for (int i = 0; i < count; i++) {
      entry.add(lead("E" + (i + 1), leads.entryEnd() + reach * i / count));
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
      exit.add(lead("X" + (i + 1), from + rest * share));
    }
  }

  private Station lead(String name, double at) {
    return new Station(name, List.of(at + adjustments.shiftOf(name)));
  }

  /** How many even spans of at most the ring's spacing so much length takes. */
  private int spans(double length) {
    return (int) Math.ceil(length / spacing - ROUNDING);
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

  /** How long the straight at the top must be to rest on a support beside the turn below. */
  public Length leadToSupport() {
    return leadToSupport;
  }

  /** What carries an edge over supports that are left out. */
  public List<Bridge> bridges() {
    return bridges;
  }

  /** Whether some edge is carried by a strip. */
  public boolean hasStrips() {
    return bridges.stream().anyMatch(bridge -> bridge.form() == Bridge.Form.STRIP);
  }

  /** Supports left out, by the builder or by the plan: {@code S19 outer}, {@code S20}. */
  public List<String> leftOut() {
    return names;
  }

  /** The widest distance between two neighbouring supports of the ring's outer or inner edge. */
  public Length widestSpan(boolean outer) {
    List<Double> places =
        ring.stream()
            .filter(station -> outer ? station.edges().atOuter() : station.edges().atInner())
            .flatMap(station -> station.places().stream())
            .sorted()
            .toList();
    double widest = 0;
    for (int i = 1; i < places.size(); i++) {
      double from = places.get(i - 1);
      boolean bridged =
          bridges.stream().anyMatch(bridge -> bridge.outer() == outer && bridge.beginsAt(from));
      widest = bridged ? widest : Math.max(widest, places.get(i) - from);
    }
    return Length.ofMillimetres(widest);
  }

  /** Least distance along the line between a station and a place that holes must avoid. */
  public double leastDistanceToAvoid(Joints joints) {
    return joints.placesToAvoid().stream().mapToDouble(this::distanceToStation).min().orElseThrow();
  }

  /** The joints that stand on a station, within the given distance along the line. */
  public List<Joint> jointsOnStations(Joints joints, double within) {
    return joints.all().stream().filter(joint -> distanceToStation(joint.at()) <= within).toList();
  }

  /** The joints under which a support reaches: a block as far as its wood, a rod at its middle. */
  public List<Joint> jointsOnSupports(Joints joints) {
    return jointsOnStations(joints, reach);
  }

  /** How far from its middle a support still carries the end of a piece, along the line. */
  double reach() {
    return reach;
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
