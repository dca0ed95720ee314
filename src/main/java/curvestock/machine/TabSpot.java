package curvestock.machine;

import curvestock.geometry.Point;
import java.util.Optional;

/**
 * A place where a tab could stay.
 *
 * @param path index of the outline
 * @param edge index of its edge
 * @param middle of the tab, in millimetres along the edge
 * @param along the same along the outline's usable length; not a number on an end
 * @param at its point on the outline as drawn
 * @param waste index of the waste beyond the cut, or -1 if a piece lies there
 * @param onEnd whether it lies on an end, here or across, and not on sides alone
 * @param across where the tab meets the outline of the piece beyond
 */
record TabSpot(
    int path,
    int edge,
    double middle,
    double along,
    Point at,
    int waste,
    boolean onEnd,
    Optional<Across> across) {

  /**
   * The other end of a tab that two pieces have in common.
   *
   * @param path index of the outline
   * @param edge index of its edge
   * @param middle of the tab, in millimetres along that edge
   */
  record Across(int path, int edge, double middle) {}
}
