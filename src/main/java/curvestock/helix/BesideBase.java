package curvestock.helix;

import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.helix.build.BaseFrame;
import curvestock.helix.build.EntryWay;
import curvestock.helix.build.SupportRow;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.Riser;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The supports that heights are given for as if they stood on the base, but that stand beside it or
 * over its edge: those of leads, which the base does not follow.
 */
final class BesideBase {

  /** Aside of a seam between two boards of the base, in millimetres. */
  private static final double ASIDE = 1e-3;

  private final HelixPlan plan;
  private final List<Outline> base;
  private final double offset;

  BesideBase(HelixPlan plan, BaseFrame frame) {
    this.plan = plan;
    base = frame.inPlace();
    offset = new EntryWay(plan.spec(), plan.line()).offset();
  }

  /** Their names, in order of climb. */
  List<String> names() {
    return plan.supports().rows().stream()
        .filter(SupportRow::standsOnBase)
        .filter(row -> !feet(row).stream().allMatch(this::isOnBase))
        .map(row -> row.station().name())
        .distinct()
        .toList();
  }

  private boolean isOnBase(Point point) {
    return Stream.of(new Point(ASIDE, ASIDE), new Point(-ASIDE, -ASIDE))
        .map(point::plus)
        .anyMatch(near -> base.stream().anyMatch(piece -> piece.contains(near)));
  }

  /** The corners of the blocks, or four points at the rim of the washers. */
  private List<Point> feet(SupportRow row) {
    Waypoint here = plan.line().at(row.at());
    Point ahead = Point.polar(1, here.heading());
    Point aside = Point.polar(1, here.heading() + Math.PI / 2);
    List<Point> feet = new ArrayList<>();
    for (double outwards : row.edges().outwards(offset)) {
      Point middle = here.toLeft(-plan.line().inwards() * outwards);
      for (double along : new double[] {-along() / 2, along() / 2}) {
        for (double across : new double[] {-across() / 2, across() / 2}) {
          feet.add(middle.plus(ahead.times(along)).plus(aside.times(across)));
        }
      }
    }
    return feet;
  }

  private double across() {
    return plan.spec().supports().riser() instanceof Riser.WoodBlocks blocks
        ? blocks.width().millimetres()
        : ((Riser.ThreadedRods) plan.spec().supports().riser()).washer().millimetres();
  }

  private double along() {
    return plan.spec().supports().riser() instanceof Riser.WoodBlocks blocks
        ? blocks.along().millimetres()
        : across();
  }
}
