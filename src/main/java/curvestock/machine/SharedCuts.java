package curvestock.machine;

import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * Where two straight cuts of different outlines run along one line: grown outlines of pieces that
 * lie just one kerf apart. Finished outlines always lie apart.
 */
public final class SharedCuts {

  /** Lines nearer than this are one cut, in millimetres. */
  private static final double ONE_CUT = 0.01;

  private SharedCuts() {}

  /** Length that is cut twice, in millimetres. */
  public static double length(MachineSheet sheet) {
    List<Segment> lines = new ArrayList<>();
    for (Contour contour : sheet.contours()) {
      for (Edge edge : contour.edges()) {
        if (edge instanceof Segment segment) {
          lines.add(segment);
        }
      }
    }
    double sum = 0;
    for (int i = 0; i < lines.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (lines.get(i).box().distance(lines.get(j).box()) <= ONE_CUT) {
          sum += shared(lines.get(i), lines.get(j));
        }
      }
    }
    return sum;
  }

  private static double shared(Segment a, Segment b) {
    Point along = a.startDirection();
    Point from = b.start().minus(a.start());
    Point to = b.end().minus(a.start());
    if (Math.abs(along.cross(from)) > ONE_CUT || Math.abs(along.cross(to)) > ONE_CUT) {
      return 0;
    }
    double low = Math.max(0, Math.min(along.dot(from), along.dot(to)));
    double high = Math.min(a.length(), Math.max(along.dot(from), along.dot(to)));
    double length = high - low;
    return length > ONE_CUT ? length : 0;
  }
}
