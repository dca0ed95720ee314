package curvestock.printing;

import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.PlanFigure;
import curvestock.drawing.SvgNumber;
import curvestock.geometry.Point;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.HoleRule;
import curvestock.helix.build.Station;
import curvestock.helix.build.SupportRow;
import curvestock.helix.spec.Riser;
import java.util.ArrayList;
import java.util.List;

/** Names of the supports on the footprint, where each can be taken for no other's. */
final class SupportNames {

  private static final double NAME_AWAY = 13;
  private static final int DIRECTIONS = 16;

  private final HelixPlan plan;
  private final PlanFigure figure;
  private final Paper paper;
  private final double half;

  SupportNames(HelixPlan plan, PlanFigure figure, Paper paper) {
    this.plan = plan;
    this.figure = figure;
    this.paper = paper;
    half = plan.spec().ground().width().millimetres() / 2;
  }

  /** To a tenth of a degree. */
  String bearing(double at) {
    return SvgNumber.of(plan.line().bearing(at).degrees() % 359.95, 1) + "°";
  }

  /** A support's name beside each of its marks, where no other support's mark is near. */
  void name(Station station, List<SupportRow> rows) {
    double at = station.places().get(0);
    boolean inner = rows.stream().anyMatch(row -> row.edges().atInner());
    boolean outer = rows.stream().anyMatch(row -> row.edges().atOuter());
    String full =
        plan.stations().ring().contains(station)
            ? station.name() + "  " + bearing(at)
            : station.name();
    if (inner || !outer) {
      double side = inner ? -1 : 0;
      paper.text(full, besideMark(at, side), Footprint.LETTERS, Anchor.MIDDLE, true);
    }
    if (outer) {
      String words = inner ? station.name() : full;
      paper.text(words, besideMark(at, 1), Footprint.LETTERS, Anchor.MIDDLE, true);
    }
  }

  /** As far from all other marks as can be, right beside this one. */
  private Point besideMark(double at, double side) {
    Point mark = mark(at, side);
    List<Point> others = new ArrayList<>();
    for (Station station : plan.stations().all()) {
      for (double other : new double[] {-1, 1}) {
        Point point = mark(station.places().get(0), other);
        if (point.distance(mark) > 1) {
          others.add(point);
        }
      }
    }
    Point best = mark;
    double farthest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < DIRECTIONS; i++) {
      Point stand = mark.plus(Point.polar(markReach(), 2 * Math.PI * i / DIRECTIONS));
      double near = others.stream().mapToDouble(stand::distance).min().orElse(0);
      // Inside the roadbed rather than out, if both are as good.
      double free = Math.min(near, 2 * markReach() + 20);
      free += figure.beside(at, 0).distance(stand) < half ? 1 : 0;
      if (free > farthest + 1e-9) {
        farthest = free;
        best = stand;
      }
    }
    return best;
  }

  private Point mark(double at, double side) {
    return figure.beside(at, side * offset());
  }

  /** From the centre line to the middle of a support at an edge. */
  private double offset() {
    Riser riser = plan.spec().supports().riser();
    return riser instanceof Riser.ThreadedRods rods
        ? new HoleRule(plan.spec(), plan.climb()).offset(rods).millimetres()
        : half - ((Riser.WoodBlocks) riser).width().millimetres() / 2;
  }

  /** From a mark's middle to the name beside it. */
  private double markReach() {
    return NAME_AWAY
        + (plan.spec().supports().riser() instanceof Riser.WoodBlocks blocks
            ? blocks.width().longer(blocks.along()).millimetres() / 2
            : 0);
  }
}
