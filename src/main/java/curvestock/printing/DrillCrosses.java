package curvestock.printing;

import curvestock.answer.Figures;
import curvestock.drawing.Ink;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.geometry.Arc;
import curvestock.geometry.Loop;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.piece.Drilled;
import curvestock.piece.Shape;
import curvestock.units.Length;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The holes on a pattern: a cross through each, and its diameter beside it. */
final class DrillCrosses {

  private static final Pen CROSS = Pen.of(Ink.CUT, 0.15);
  private static final double LETTERS = 2.5;

  /** How far the arms of a cross reach beyond its hole, in millimetres. */
  private static final double ARM = 4;

  private DrillCrosses() {}

  /**
   * Draws the crosses.
   *
   * @param view lays the piece as the pattern shows it
   * @return what to drill; nothing if the piece has no holes
   */
  static Optional<String> draw(Shape shape, Pose view, Ruler ruler, Paper paper) {
    if (!(shape instanceof Drilled piece)) {
      return Optional.empty();
    }
    Map<Length, Integer> sizes = new TreeMap<>();
    for (Loop rim : piece.drilled()) {
      if (rim.edges().get(0) instanceof Arc arc) {
        Point centre = view.apply(arc.centre());
        Length diameter = Length.ofMillimetres(2 * arc.radius());
        double arm = arc.radius() + ARM;
        paper.line(centre.minus(new Point(arm, 0)), centre.plus(new Point(arm, 0)), CROSS);
        paper.line(centre.minus(new Point(0, arm)), centre.plus(new Point(0, arm)), CROSS);
        double aside = 0.8 * arc.radius() + 1;
        Point beside = centre.plus(new Point(aside, aside + 1));
        paper.text(ruler.given(diameter), beside, LETTERS, Anchor.START, false);
        sizes.merge(diameter, 1, Integer::sum);
      }
    }
    return Optional.of(
        sizes.entrySet().stream()
            .map(
                size ->
                    "%s of %s diameter"
                        .formatted(
                            Figures.count(size.getValue(), "hole"), ruler.given(size.getKey())))
            .collect(
                Collectors.joining(
                    ", ", "", ": drill at the crosses before you cut the outline.")));
  }
}
