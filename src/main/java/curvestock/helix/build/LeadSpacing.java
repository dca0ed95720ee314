package curvestock.helix.build;

import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import java.util.ArrayList;
import java.util.List;

/**
 * Room between the supports of a lead and others that stand on the base: with a washer, a nut and a
 * hand's error each. One that stands too near is moved along its lead, as far as no span grows
 * longer than the ring's.
 */
final class LeadSpacing {

  private static final double STEP = 2;

  private static final double ROUNDING = 1e-6;

  private final HelixSpec spec;
  private final CentreLine line;
  private final double longest;
  private final double offset;

  /**
   * For the supports of one helix.
   *
   * @param longest the widest span allowed between two supports of a lead
   */
  LeadSpacing(HelixSpec spec, CentreLine line, double longest) {
    this.spec = spec;
    this.line = line;
    this.longest = longest;
    offset = new EntryWay(spec, line).offset();
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

  private boolean isClear(double at, Station station, List<Station> others) {
    return others.stream()
        .filter(other -> !other.name().equals(station.name()))
        .allMatch(other -> gap(at, station, other) >= LeadEnds.CLEAR - ROUNDING);
  }

  private double gap(double at, Station station, Station other) {
    double least = Double.POSITIVE_INFINITY;
    for (double mine : sides(station)) {
      for (double its : sides(other)) {
        least = Math.min(least, gap(at, mine, other.lowest(), its));
      }
    }
    return least;
  }

  private List<Double> sides(Station station) {
    List<Double> sides = new ArrayList<>();
    if (station.edges().atOuter()) {
      sides.add(offset);
    }
    if (station.edges().atInner()) {
      sides.add(-offset);
    }
    return sides;
  }

  /** Between two supports, so far outwards of the line. */
  private double gap(double at, double outwards, double otherAt, double otherOutwards) {
    Waypoint here = line.at(at);
    Waypoint there = line.at(otherAt);
    Point mine = here.toLeft(-line.inwards() * outwards);
    Point its = there.toLeft(-line.inwards() * otherOutwards);
    if (spec.supports().riser() instanceof Riser.WoodBlocks blocks) {
      Outline block = Outline.rectangle(blocks.along().millimetres(), blocks.width().millimetres());
      return Clearance.between(
          block.at(new Pose(mine.x(), mine.y(), here.heading())),
          block.at(new Pose(its.x(), its.y(), there.heading())));
    }
    Riser.ThreadedRods rods = (Riser.ThreadedRods) spec.supports().riser();
    return mine.distance(its) - rods.washer().millimetres();
  }
}
