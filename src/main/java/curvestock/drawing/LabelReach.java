package curvestock.drawing;

import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.helix.HelixPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** How far outside the ring the label of a joint stands, so that leads keep their place. */
final class LabelReach {

  /** A label farther out, in half letters, would no longer be looked for there. */
  private static final int FARTHEST_LABEL = 40;

  private final HelixPlan plan;
  private final double size;
  private final double half;

  /** With room for the arrows before and behind them. */
  private final List<Edge> leads = new ArrayList<>();

  /**
   * @param size of the largest letters
   */
  LabelReach(HelixPlan plan, double size) {
    this.plan = plan;
    this.size = size;
    half = plan.spec().ground().width().millimetres() / 2;
    double ring = plan.climb().ringLength();
    double entry = plan.spec().bottom().leadIn().millimetres();
    double exit = plan.spec().top().leadIn().millimetres();
    if (entry > 0) {
      leads.addAll(plan.line().portion(-entry - 4 * size, 0));
    }
    if (exit > 0) {
      leads.addAll(plan.line().portion(ring, ring + exit + 4 * size));
    }
  }

  /** How far out a label stands clear of the leads, so that it hides none of their supports. */
  double past(PlanFigure figure, double at, String words) {
    Point away = figure.outwards(at);
    for (int step = 2; step <= FARTHEST_LABEL; step++) {
      double reach = step * size / 2;
      Point stand = figure.beside(at, half + reach).plus(away.times(0.6 * size));
      if (!isNearLead(words, stand, away)) {
        return reach;
      }
    }
    return size;
  }

  private boolean isNearLead(String words, Point at, Point away) {
    double letters = 0.9 * size;
    double wide = letters * TextWidth.boldEms(words);
    double left = away.x() > 0.35 ? 0 : away.x() < -0.35 ? -wide : -wide / 2;
    double y = at.y() + away.y() * letters * 0.6;
    double room = half + plan.spec().beyondEdges().millimetres() + 2.5 * size;
    return IntStream.rangeClosed(0, 8)
        .mapToObj(i -> new Point(at.x() + left + wide * i / 8, y))
        .anyMatch(p -> leads.stream().anyMatch(lead -> lead.distanceTo(p) < room));
  }
}
