package curvestock.helix.build;

import curvestock.helix.build.EntryWay.Hit;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Climb;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import java.util.List;

/**
 * Moves blocks of the ring that stand too near the wood of the entry's lead a little along the
 * line, where the plywood still spans to their neighbours and no joint stands on them. Rods stay:
 * their first station is chosen for it ({@link FirstStation}), and all holes keep one template.
 */
final class BesideLead {

  private static final double STEP = 1;

  /** Further it would be another place, and seen as a slip: our own choice. */
  private static final double MOST = 40;

  private final HelixSpec spec;
  private final Climb climb;
  private final EntryWay way;
  private final Joints joints;
  private final Bridging bridging;

  BesideLead(HelixSpec spec, Climb climb, CentreLine line, Joints joints) {
    this.spec = spec;
    this.climb = climb;
    this.way = new EntryWay(spec, line);
    this.joints = joints;
    this.bridging = new Bridging(spec, climb, line, joints);
  }

  /** In place. */
  void clear(List<Station> ring) {
    if (!(spec.supports().riser() instanceof Riser.WoodBlocks blocks)) {
      return;
    }
    double run = climb.runPerTurn().millimetres();
    for (int i = 0; i < ring.size(); i++) {
      Station station = ring.get(i);
      double at = station.lowest();
      boolean stated = spec.supports().adjustments().shiftOf(station.name()) != 0;
      if (!stated
          && way.isBeside(at)
          && at <= Math.min(run, climb.ringLength())
          && isClose(at)
          && !carriesJoint(station, blocks.along().millimetres() / 2)) {
        double before = i == 0 ? at : at - ring.get(i - 1).lowest();
        double behind =
            i + 1 == ring.size() ? ring.get(0).lowest() + run - at : ring.get(i + 1).lowest() - at;
        ring.set(i, moved(station, before, behind));
      }
    }
  }

  private Station moved(Station station, double before, double behind) {
    for (double away = STEP; away <= MOST; away += STEP) {
      for (double shift : new double[] {-away, away}) {
        boolean spans = bridging.spans(before + shift) && bridging.spans(behind - shift);
        if (spans && isFreeAfter(station.lowest(), shift)) {
          List<Double> places = station.places().stream().map(place -> place + shift).toList();
          boolean within =
              places.get(0) >= 0 && places.get(places.size() - 1) <= climb.ringLength();
          if (within) {
            return new Station(station.name(), places, station.edges());
          }
        }
      }
    }
    return station;
  }

  private boolean isClose(double at) {
    return hit(at, 1) == Hit.CLOSE || hit(at, -1) == Hit.CLOSE;
  }

  /** Whether no edge that could stand, or stood only too near, meets anything there. */
  private boolean isFreeAfter(double at, double shift) {
    return isFreeAfter(at, shift, 1) && isFreeAfter(at, shift, -1);
  }

  private boolean isFreeAfter(double at, double shift, int side) {
    return hit(at, side).isInTheWay() || hit(at + shift, side) == Hit.NONE;
  }

  private Hit hit(double at, int side) {
    return way.hit(at, side * way.offset());
  }

  private boolean carriesJoint(Station station, double within) {
    return joints.all().stream()
        .anyMatch(
            joint -> station.places().stream().anyMatch(at -> Math.abs(at - joint.at()) <= within));
  }
}
