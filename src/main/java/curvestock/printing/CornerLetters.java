package curvestock.printing;

import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.geometry.Box;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.handwork.PieceMarks;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Letters the corners of a pattern's outer loop as the marking-out sheets do. */
final class CornerLetters {

  private static final double SIZE = 4.4;
  private static final double INSET = 9;
  private static final double TICK = 3;

  /** More distances than these nobody measures. */
  private static final int MOST_MEASURED = 10;

  private CornerLetters() {}

  /**
   * Draws the letters and ticks, and says how far corners are apart: neighbours, and others from A.
   */
  static String draw(Outline outline, Paper paper, Ruler ruler) {
    List<Point> corners = new ArrayList<>();
    outline.outer().edges().forEach(edge -> corners.add(edge.start()));
    SmoothTicks.draw(outline.outer().edges(), TICK, paper);
    Box box = outline.box();
    int count = corners.size();
    List<String> measures = new ArrayList<>();
    List<Integer> far =
        IntStream.range(1, Math.max(1, count))
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -corners.get(i).distance(corners.get(0))))
            .limit(MOST_MEASURED)
            .toList();
    for (int i = 0; i < count; i++) {
      paper.text(
          PieceMarks.letter(i), stand(outline, corners.get(i), box), SIZE, Anchor.MIDDLE, true);
      for (int j = i + 1; j < count; j++) {
        boolean few = count <= MOST_MEASURED;
        // Of many corners those far from A, which show an error most.
        boolean wanted = few ? j == i + 1 || i == 0 : i == 0 && far.contains(j);
        if (corners.size() <= 4 || wanted) {
          measures.add(
              PieceMarks.letter(i)
                  + " to "
                  + PieceMarks.letter(j)
                  + "\u00A0"
                  + ruler.of(corners.get(i).distance(corners.get(j))));
        }
      }
    }
    return "When the pages are taped together, measure straight from corner to corner: "
        + String.join(", ", measures)
        + "."
        + (SmoothTicks.has(outline.outer().edges()) ? " " + SmoothTicks.NOTE : "");
  }

  /** Beside the corner, inside the piece where that can be had. */
  private static Point stand(Outline outline, Point corner, Box box) {
    Point best = corner.plus(new Point(0, INSET));
    double deepest = Double.NEGATIVE_INFINITY;
    int directions = 16;
    for (int i = 0; i < directions; i++) {
      Point stand = corner.plus(Point.polar(INSET, 2 * Math.PI * i / directions));
      double depth =
          outline.edges().stream().mapToDouble(edge -> edge.distanceTo(stand)).min().orElse(0);
      double signed = outline.contains(stand) ? depth : -depth - box.width();
      if (signed > deepest) {
        deepest = signed;
        best = stand;
      }
    }
    return best;
  }
}
