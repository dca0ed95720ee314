package curvestock.helix.build;

import curvestock.geometry.Clearance;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Climb;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Room between the supports of a lead and others that stand on the base: with a washer, a nut and a
 * hand's error each. One that stands too near is moved along its lead, as far as no span grows
 * longer than the ring's.
 */
public final class LeadSpacing {

  /** That a support of a lead may meet besides other supports. */
  public static final String TURN_BELOW = "the turn below";

  private static final double STEP = 2;

  private static final double ROUNDING = 1e-6;

  private final HelixSpec spec;
  private final CentreLine line;
  private final double longest;
  private final double offset;
  private final Optional<Outline> below;

  /**
   * For the supports of one helix.
   *
   * @param longest the widest span allowed between two supports of a lead
   */
  public LeadSpacing(HelixSpec spec, Climb climb, CentreLine line, double longest) {
    this.spec = spec;
    this.line = line;
    this.longest = longest;
    offset = new EntryWay(spec, line).offset();
    below = turnBelow(climb);
  }

  /** The roadbed that the exit's lead passes over: the first half of the turn below it. */
  private Optional<Outline> turnBelow(Climb climb) {
    double from = climb.ringLength() - climb.runPerTurn().millimetres();
    if (from < 0) {
      return Optional.empty();
    }
    double width = spec.ground().width().plus(spec.beyondEdges().times(2)).millimetres();
    List<Edge> half = line.portion(from, from + climb.runPerTurn().millimetres() / 2);
    return Optional.of(new RoadbedOutline(half, width).plain());
  }

  /**
   * A support of a lead and what it stands too near to.
   *
   * @param support its name
   * @param other the name of the other support, or {@link #TURN_BELOW}
   * @param meets whether the two would be in one place
   */
  public record Near(String support, String other, boolean meets) {}

  /**
   * What stands closer than it should.
   *
   * @param lead the supports of one lead
   * @param others that stand on the base, those of the lead among them or not
   * @param atExit whether the lead passes over a turn
   */
  public List<Near> tooNear(List<Station> lead, List<Station> others, boolean atExit) {
    List<Near> near = new ArrayList<>();
    for (Station station : lead) {
      for (Station other : others) {
        if (!other.name().equals(station.name())) {
          add(near, station, other.name(), gap(station.lowest(), station, other));
        }
      }
      if (atExit) {
        add(near, station, TURN_BELOW, gapToTurn(station));
      }
    }
    return near;
  }

  private static void add(List<Near> near, Station station, String other, double gap) {
    if (gap < LeadEnds.CLEAR - ROUNDING) {
      near.add(new Near(station.name(), other, gap <= 0));
    }
  }

  private double gapToTurn(Station station) {
    return below.stream()
        .flatMapToDouble(
            wood ->
                station.edges().outwards(offset).stream()
                    .mapToDouble(outwards -> gap(station.lowest(), outwards, wood)))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private double gap(double at, double outwards, Outline wood) {
    Point middle = line.at(at).toLeft(-line.inwards() * outwards);
    if (spec.supports().riser() instanceof Riser.ThreadedRods rods) {
      double away = wood.contains(middle) ? 0 : wood.depth(middle);
      return away - rods.washer().millimetres() / 2;
    }
    return Clearance.between(block(at, middle), wood);
  }

  /**
   * Moves supports of a lead, in place.
   *
   * @param lead in order of climb
   * @param others that they must keep clear of
   * @param low the lowest place for one, and the support or end before it
   * @param high the highest
   */
  void clear(List<Station> lead, List<Station> others, double low, double high) {
    for (int i = 0; i < lead.size(); i++) {
      Station station = lead.get(i);
      boolean stated = spec.supports().adjustments().shiftOf(station.name()) != 0;
      if (!stated && !isClear(station.lowest(), station, others)) {
        double before = i == 0 ? low : lead.get(i - 1).lowest();
        double behind = i + 1 == lead.size() ? high : lead.get(i + 1).lowest();
        lead.set(i, moved(station, others, before, behind));
      }
    }
  }

  private Station moved(Station station, List<Station> others, double before, double behind) {
    for (double away = STEP; away < longest; away += STEP) {
      for (double place : new double[] {station.lowest() - away, station.lowest() + away}) {
        boolean spans =
            place >= before - ROUNDING
                && place <= behind + ROUNDING
                && place - before <= longest + ROUNDING
                && behind - place <= longest + ROUNDING;
        if (spans && isClear(place, station, others)) {
          return new Station(station.name(), List.of(place), station.edges());
        }
      }
    }
    return station;
  }

  /** Whether all stand clear. */
  boolean areClear(List<Station> lead, List<Station> others) {
    return lead.stream().allMatch(station -> isClear(station.lowest(), station, others));
  }

  boolean isClear(double at, Station station, List<Station> others) {
    return others.stream()
        .filter(other -> !other.name().equals(station.name()))
        .allMatch(other -> gap(at, station, other) >= LeadEnds.CLEAR - ROUNDING);
  }

  private double gap(double at, Station station, Station other) {
    double least = Double.POSITIVE_INFINITY;
    for (double mine : station.edges().outwards(offset)) {
      for (double its : other.edges().outwards(offset)) {
        least = Math.min(least, gap(at, mine, other.lowest(), its));
      }
    }
    return least;
  }

  /** Between two supports, so far outwards of the line. */
  private double gap(double at, double outwards, double otherAt, double otherOutwards) {
    Point mine = line.at(at).toLeft(-line.inwards() * outwards);
    Point its = line.at(otherAt).toLeft(-line.inwards() * otherOutwards);
    if (spec.supports().riser() instanceof Riser.ThreadedRods rods) {
      return mine.distance(its) - rods.washer().millimetres();
    }
    return Clearance.between(block(at, mine), block(otherAt, its));
  }

  private Outline block(double at, Point middle) {
    Riser.WoodBlocks blocks = (Riser.WoodBlocks) spec.supports().riser();
    double along = blocks.along().millimetres();
    double across = blocks.width().millimetres();
    double heading = line.at(at).heading();
    Point corner =
        middle
            .minus(Point.polar(along / 2, heading))
            .minus(Point.polar(across / 2, heading + Math.PI / 2));
    return Outline.rectangle(along, across).at(new Pose(corner.x(), corner.y(), heading));
  }
}
