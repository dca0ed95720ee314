package curvestock.machine;

import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A line drawn on the wood, with points along it nearer together than letters are high: made once,
 * since many places are tried for each word.
 */
record DrawnLine(Box box, List<Point> points) {

  DrawnLine {
    points = List.copyOf(points);
  }

  static DrawnLine of(Edge line) {
    int count = Math.max(1, (int) Math.ceil(line.length()));
    List<Point> points = new ArrayList<>(List.of(line.start()));
    for (int i = 1; i <= count; i++) {
      points.add(line.part(0, (double) i / count).end());
    }
    return new DrawnLine(line.box(), points);
  }

  static List<DrawnLine> of(List<Edge> lines) {
    return lines.stream().map(DrawnLine::of).toList();
  }

  /** Whether it comes nearer to letters than that, as far as its points tell; in millimetres. */
  boolean runsThrough(Outline letters, double clear) {
    Box around = letters.box();
    if (box.distance(around) > clear) {
      return false;
    }
    for (Point point : points) {
      if (Box.of(point, point).distance(around) <= clear
          && (letters.contains(point)
              || letters.edges().stream().anyMatch(edge -> edge.distanceTo(point) < clear))) {
        return true;
      }
    }
    return false;
  }
}
