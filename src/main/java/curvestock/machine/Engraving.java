package curvestock.machine;

import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * A line of letters on a piece.
 *
 * @param start where the first letter stands, its lower left corner, on the sheet
 * @param height of capitals in millimetres
 * @param angle of the line of writing, in radians
 */
public record Engraving(String words, Point start, double height, double angle) {

  /** Where the line under a number runs, in the letters' grid. */
  private static final double UNDER = -1.5;

  /** The letters as single strokes; numbers with a 6 or a 9 are underlined. */
  public List<List<Edge>> strokes() {
    double scale = height / StrokeLetters.HEIGHT;
    Pose pose = new Pose(start.x(), start.y(), angle);
    List<List<Edge>> strokes = new ArrayList<>(StrokeLetters.of(words));
    if (isUnderlined(words)) {
      strokes.add(
          List.of(new Segment(new Point(0, UNDER), new Point(StrokeLetters.width(words), UNDER))));
    }
    return strokes.stream()
        .map(
            stroke ->
                stroke.stream()
                    .map(
                        edge ->
                            (Edge)
                                new Segment(
                                    pose.apply(edge.start().times(scale)),
                                    pose.apply(edge.end().times(scale))))
                    .toList())
        .toList();
  }

  /** Where the first stroke begins. */
  Point first() {
    List<List<Edge>> strokes = strokes();
    return strokes.isEmpty() ? start : strokes.get(0).get(0).start();
  }

  /** Where the last stroke ends. */
  Point last() {
    List<List<Edge>> strokes = strokes();
    if (strokes.isEmpty()) {
      return start;
    }
    List<Edge> stroke = strokes.get(strokes.size() - 1);
    return stroke.get(stroke.size() - 1).end();
  }

  /** Whether a line shows the foot of a number that could be read upside down. */
  static boolean isUnderlined(String words) {
    return words.contains("6") || words.contains("9");
  }

  /** The rectangle that the letters fill, with the line under them. */
  Outline box() {
    double under = isUnderlined(words) ? -UNDER * height / StrokeLetters.HEIGHT : 0;
    Pose pose = new Pose(start.x(), start.y(), angle);
    Point corner = pose.apply(new Point(0, -under));
    return Outline.rectangle(width(words, height), height + under)
        .at(new Pose(corner.x(), corner.y(), angle));
  }

  /** How long the line of letters is, in millimetres. */
  static double width(String words, double height) {
    return StrokeLetters.width(words) * height / StrokeLetters.HEIGHT;
  }
}
