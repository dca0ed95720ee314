package curvestock.machine;

import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * Where two straight cuts of different outlines run along one line: grown outlines of pieces that
 * lie just one kerf apart. The line stays with the first of them, so that it is cut once. Finished
 * outlines always lie apart.
 */
final class SharedCuts {

  /** Lines nearer than this are one cut, in millimetres. */
  private static final double ONE_CUT = 0.01;

  /** Shorter shares are left as they are. */
  private static final double WORTH = 1;

  private final List<Contour> contours = new ArrayList<>();
  private final List<Segment> drawn = new ArrayList<>();
  private double length;

  /** Leaves out what an earlier contour holds already. */
  SharedCuts(List<Contour> all) {
    for (Contour contour : all) {
      Contour rest = withoutDrawn(contour);
      contours.add(rest);
      for (Edge edge : rest.edges()) {
        if (edge instanceof Segment segment) {
          drawn.add(segment);
        }
      }
    }
  }

  /** The contours in their order, with every line once. */
  List<Contour> contours() {
    return contours;
  }

  /** Length that would be cut twice if each outline were drawn whole, in millimetres. */
  double length() {
    return length;
  }

  private Contour withoutDrawn(Contour contour) {
    List<List<Edge>> runs = new ArrayList<>();
    double before = length;
    for (List<Edge> run : contour.runs()) {
      runs.addAll(split(run));
    }
    if (length == before || runs.isEmpty()) {
      length = before;
      return contour;
    }
    if (contour.closed() && runs.size() > 1) {
      // A closed outline begins amid a run: its end and its beginning are one.
      List<Edge> joined = new ArrayList<>(runs.get(runs.size() - 1));
      boolean goesOn = joined.get(joined.size() - 1).end().distance(start(runs)) < 1e-6;
      if (goesOn) {
        joined.addAll(runs.get(0));
        runs.set(runs.size() - 1, joined);
        runs.remove(0);
      }
    }
    return new Contour(contour.number(), contour.hole(), contour.placement(), runs, false);
  }

  private static Point start(List<List<Edge>> runs) {
    return runs.get(0).get(0).start();
  }

  /** The parts of a run that are not drawn yet. */
  private List<List<Edge>> split(List<Edge> run) {
    List<List<Edge>> parts = new ArrayList<>();
    List<Edge> part = new ArrayList<>();
    for (Edge edge : run) {
      List<double[]> left = left(edge);
      double at = 0;
      for (double[] stretch : left) {
        if (stretch[0] > at) {
          close(part, parts);
          part = new ArrayList<>();
        }
        boolean whole = stretch[0] == 0 && stretch[1] == 1;
        part.add(whole ? edge : edge.part(stretch[0], stretch[1]));
        at = stretch[1];
      }
      if (at < 1) {
        close(part, parts);
        part = new ArrayList<>();
      }
    }
    close(part, parts);
    return parts;
  }

  private static void close(List<Edge> part, List<List<Edge>> parts) {
    if (!part.isEmpty()) {
      parts.add(part);
    }
  }

  /** The stretches of an edge that no earlier cut runs along, as shares of its length. */
  private List<double[]> left(Edge edge) {
    List<double[]> left = new ArrayList<>();
    left.add(new double[] {0, 1});
    if (!(edge instanceof Segment segment)) {
      return left;
    }
    for (Segment other : drawn) {
      if (other.box().distance(segment.box()) <= ONE_CUT) {
        double[] covered = covered(segment, other);
        if (covered[1] > covered[0]) {
          length += (covered[1] - covered[0]) * segment.length();
          left = without(left, covered, ONE_CUT / segment.length());
        }
      }
    }
    return left;
  }

  private static List<double[]> without(List<double[]> left, double[] covered, double least) {
    List<double[]> rest = new ArrayList<>();
    for (double[] stretch : left) {
      double low = Math.min(stretch[1], covered[0]);
      double high = Math.max(stretch[0], covered[1]);
      if (low - stretch[0] > least) {
        rest.add(new double[] {stretch[0], low});
      }
      if (stretch[1] - high > least) {
        rest.add(new double[] {high, stretch[1]});
      }
    }
    return rest;
  }

  /** The share of the first line along which the second runs. */
  private static double[] covered(Segment a, Segment b) {
    Point along = a.startDirection();
    Point from = b.start().minus(a.start());
    Point to = b.end().minus(a.start());
    if (Math.abs(along.cross(from)) > ONE_CUT || Math.abs(along.cross(to)) > ONE_CUT) {
      return new double[] {0, 0};
    }
    double low = Math.max(0, Math.min(along.dot(from), along.dot(to)));
    double high = Math.min(a.length(), Math.max(along.dot(from), along.dot(to)));
    return high - low > WORTH ? new double[] {low / a.length(), high / a.length()} : new double[2];
  }
}
