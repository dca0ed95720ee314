package curvestock.machine;

import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where two straight cuts of different outlines run along one line: grown outlines of pieces that
 * lie just one kerf apart. The line stays with the first of them, so that it is cut once. Finished
 * outlines always lie apart.
 */
final class SharedCuts {

  /** Lines nearer than this are one cut, in millimetres. */
  private static final double ONE_CUT = 0.01;

  /** Shorter shares are left as they are, in millimetres. */
  private static final double WORTH = 3;

  /**
   * What is left of an outline reaches so far into the shared line, in millimetres: the cuts meet
   * for certain, and no two outlines end in one point.
   */
  private static final double OVERLAP = 0.5;

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
    for (int i = 0; i < run.size(); i++) {
      Edge edge = run.get(i);
      boolean begun = i > 0 && !isStraightOn(run.get(i - 1), edge);
      boolean goesOn = i < run.size() - 1 && !isStraightOn(edge, run.get(i + 1));
      List<double[]> left = left(edge, begun, goesOn);
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

  /** Two halves of one line, where the outline begins. */
  private static boolean isStraightOn(Edge before, Edge after) {
    return before instanceof Segment
        && after instanceof Segment
        && Math.abs(before.endDirection().cross(after.startDirection())) < 1e-9;
  }

  private static void close(List<Edge> part, List<List<Edge>> parts) {
    if (!part.isEmpty()) {
      parts.add(part);
    }
  }

  /**
   * The stretches of an edge that no earlier cut runs along, as shares of its length.
   *
   * @param begun whether another edge leads to it
   * @param goesOn whether another follows
   */
  private List<double[]> left(Edge edge, boolean begun, boolean goesOn) {
    List<double[]> left = new ArrayList<>();
    left.add(new double[] {0, 1});
    if (!(edge instanceof Segment segment)) {
      return left;
    }
    double least = ONE_CUT / segment.length();
    double overlap = OVERLAP / segment.length();
    for (double[] covered : covered(segment)) {
      double low = covered[0] > least || begun ? covered[0] + overlap : covered[0];
      double high = covered[1] < 1 - least || goesOn ? covered[1] - overlap : covered[1];
      if ((high - low) * segment.length() > WORTH) {
        length += (high - low) * segment.length();
        left = without(left, new double[] {low, high}, least);
      }
    }
    return left;
  }

  /** The stretches of a line along which others run, as shares of its length, each whole. */
  private List<double[]> covered(Segment segment) {
    List<double[]> all = new ArrayList<>();
    for (Segment other : drawn) {
      if (other.box().distance(segment.box()) <= ONE_CUT) {
        double[] covered = covered(segment, other);
        if (covered[1] > covered[0]) {
          all.add(covered);
        }
      }
    }
    all.sort(Comparator.comparingDouble(stretch -> stretch[0]));
    List<double[]> merged = new ArrayList<>();
    for (double[] stretch : all) {
      double[] last = merged.isEmpty() ? stretch : merged.get(merged.size() - 1);
      if (last != stretch && stretch[0] <= last[1] + ONE_CUT / segment.length()) {
        last[1] = Math.max(last[1], stretch[1]);
      } else {
        merged.add(stretch);
      }
    }
    return merged;
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
    return high > low ? new double[] {low / a.length(), high / a.length()} : new double[2];
  }
}
