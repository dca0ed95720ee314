package curvestock.helix.build;

import curvestock.helix.build.EntryWay.Hit;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Climb;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoublePredicate;

/**
 * Where the first station of the ring goes if the builder does not say.
 *
 * <p>The usual place is at the ring's entry for blocks, so that joints stand on them, and in the
 * middle of the widest gap between joints for rods. If a support would stand in the approach there,
 * the nearest to the usual place (blocks) or the farthest from joints (rods) of those where fewest
 * do.
 */
final class FirstStation {

  private static final double ROUNDING = 1e-6;

  /** Places tried between one station and the next. */
  private static final int STEPS = 60;

  /** From an ear's foot to the end of its piece, in millimetres: our own choice. */
  private static final double EAR_CLEAR = 1;

  /** More than all supports of a turn that could stand too near. */
  private static final int IN_THE_WAY = 1000;

  private final HelixSpec spec;
  private final Climb climb;
  private final EntryWay way;
  private final Joints joints;
  private final double run;
  private final double spacing;

  FirstStation(HelixSpec spec, Climb climb, CentreLine line, Joints joints) {
    this.spec = spec;
    this.climb = climb;
    this.joints = joints;
    way = new EntryWay(spec, line);
    run = climb.runPerTurn().millimetres();
    spacing = run / spec.supports().perTurn();
  }

  /** A place, how many supports stand in the way or too near if it is taken, and its room. */
  private record Tried(double first, int hits, double room) {}

  /**
   * Distance from the ring's entry in millimetres, less than the spacing.
   *
   * @param settles whether, from such a place, all that would stand in the approach can be left
   *     out; of places as good otherwise one that does is taken
   */
  double place(DoublePredicate settles) {
    boolean rods = spec.supports().riser() instanceof Riser.ThreadedRods;
    double usual = rods ? middleOfWidestGap() : 0;
    int fewest = blocked(usual);
    if (fewest == 0) {
      return usual;
    }
    List<Tried> all = new ArrayList<>(List.of(new Tried(usual, fewest, Double.POSITIVE_INFINITY)));
    for (int i = 0; i < STEPS; i++) {
      double first = spacing * i / STEPS;
      double room = rods ? roomAtJoints(first) : -aside(first, usual);
      if (!rods || room >= roomWanted()) {
        all.add(new Tried(first, blocked(first), room));
      }
    }
    all.sort(
        Comparator.comparingInt(Tried::hits)
            .thenComparing(Comparator.comparingDouble(Tried::room).reversed()));
    Tried best = all.get(0);
    return best.hits() < IN_THE_WAY
        ? best.first()
        : all.stream().map(Tried::first).filter(settles::test).findFirst().orElse(best.first());
  }

  /**
   * How many supports of the lowest turn would stand in the approach, and of rods how many too near
   * the lead's wood: blocks stay under the joints for that.
   */
  private int blocked(double first) {
    int count = 0;
    for (double at = first; at < Math.min(run, climb.ringLength()); at += spacing) {
      if (way.isBeside(at) && at > run - nearEntry()) {
        count += weight(way.hit(at, way.offset())) + weight(way.hit(at, -way.offset()));
      }
    }
    return count;
  }

  private int weight(Hit hit) {
    boolean close = hit == Hit.CLOSE && spec.supports().riser() instanceof Riser.ThreadedRods;
    return hit.isInTheWay() ? IN_THE_WAY : close ? 1 : 0;
  }

  /** Along the line before the entry, where alone a turn can lie beside the approach. */
  private double nearEntry() {
    return run / 4 + spec.ground().straight().millimetres();
  }

  private double roomAtJoints(double first) {
    return joints.placesToAvoid().stream()
        .filter(end -> end >= 0 && end <= climb.ringLength())
        .mapToDouble(end -> aside(end, first))
        .min()
        .orElse(spacing);
  }

  /** From a joint: for the hole with its wood, and for half an ear, which is widest inside. */
  private double roomWanted() {
    Riser.ThreadedRods rods = (Riser.ThreadedRods) spec.supports().riser();
    double hole =
        new HoleRule(spec, climb)
            .diameter(rods)
            .times(0.5)
            .plus(HoleRule.WOOD_AT_END)
            .millimetres();
    double inside = spec.ground().innerEdge().millimetres();
    double widening = spec.ground().bedRadius().millimetres() / inside;
    return rods.ear()
        .map(ear -> inside * Math.asin(ear.width().millimetres() / 2 / inside) * widening)
        .map(half -> Math.max(hole, half + EAR_CLEAR))
        .orElse(hole);
  }

  /** How far apart two places are, each repeated at every station. */
  private double aside(double a, double b) {
    double off = Math.abs(a - b) % spacing;
    return Math.min(off, spacing - off);
  }

  private double middleOfWidestGap() {
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
}
