package curvestock.machine;

import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import java.util.List;

/**
 * A line of letters on a piece.
 *
 * @param start where the first letter stands, its lower left corner, on the sheet
 * @param height of capitals in millimetres
 * @param angle of the line of writing, in radians
 */
public record Engraving(String words, Point start, double height, double angle) {

  /** The letters as single strokes. */
  public List<List<Edge>> strokes() {
    double scale = height / StrokeLetters.HEIGHT;
    Pose pose = new Pose(start.x(), start.y(), angle);
    return StrokeLetters.of(words).stream()
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

  /** The rectangle that the letters fill. */
  Outline box() {
    return Outline.rectangle(width(words, height), height)
        .at(new Pose(start.x(), start.y(), angle));
  }

  /** How long the line of letters is, in millimetres. */
  static double width(String words, double height) {
    return StrokeLetters.width(words) * height / StrokeLetters.HEIGHT;
  }
}
