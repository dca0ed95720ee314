package curvestock.machine;

import curvestock.geometry.Arc;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.layout.Placement;
import curvestock.piece.Drilled;
import curvestock.piece.Shape;
import curvestock.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * A round hole for a screw, a bolt, a rod or a pivot: made with a drill of its own size, not cut
 * along its rim.
 *
 * @param number of the piece, from 1, in the layout's order; 0 if it is in no piece
 * @param hole its number in the piece, from 1
 * @param centre on the sheet
 * @param diameter of the finished hole, whatever the form of the outlines
 */
public record Drilling(int number, int hole, Point centre, Length diameter) {

  /** Up to half an inch a hole is drilled, if no tool is wider: common practice, no source. */
  public static final Length LARGEST = Length.ofInches(0.5);

  /** Centres of one circle lie together within this, in millimetres. */
  private static final double ONE_CENTRE = 1e-6;

  /** The path's name in files, such as {@code piece-3-drill-1}; of a dowel {@code dowel-1}. */
  public String id() {
    return number == 0 ? "dowel-" + hole : "piece-" + number + "-drill-" + hole;
  }

  /** The rim, counter-clockwise. */
  public Loop rim() {
    return Loop.circle(centre, diameter.millimetres() / 2);
  }

  /** What is left of a shape to be cut once its small holes are drilled, in the shape's frame. */
  public static Outline cut(Shape shape, Length bit) {
    Outline whole = shape.outline();
    List<Loop> rest = whole.holes().stream().filter(hole -> !isDrilled(shape, hole, bit)).toList();
    return new Outline(whole.outer(), rest);
  }

  /** The holes of a piece that are drilled, where it lies. */
  static List<Loop> holes(Placement placement, Length bit) {
    Shape shape = placement.piece().shape();
    return shape.outline().holes().stream()
        .filter(hole -> isDrilled(shape, hole, bit))
        .map(hole -> hole.at(placement.pose()))
        .toList();
  }

  private static boolean isDrilled(Shape shape, Loop hole, Length bit) {
    return shape instanceof Drilled piece
        && piece.drilled().contains(hole)
        && circle(hole)
            .filter(arc -> isSmall(Length.ofMillimetres(2 * arc.radius()), bit))
            .isPresent();
  }

  private static boolean isSmall(Length diameter, Length bit) {
    return diameter.compareTo(LARGEST) <= 0 || diameter.compareTo(bit) < 0;
  }

  /** The circle that a loop runs round, if it is one. */
  static Optional<Arc> circle(Loop loop) {
    if (!(loop.edges().get(0) instanceof Arc first)) {
      return Optional.empty();
    }
    boolean round =
        loop.edges().stream()
            .allMatch(
                edge ->
                    edge instanceof Arc arc
                        && Math.abs(arc.radius() - first.radius()) < ONE_CENTRE
                        && arc.centre().distance(first.centre()) < ONE_CENTRE);
    return round ? Optional.of(first) : Optional.empty();
  }
}
