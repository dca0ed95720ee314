package curvestock.geometry;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The edges of an outline as plain numbers, for the millions of distances a search asks for: the
 * same arithmetic as {@link Edge#distanceTo} and {@link Outline#contains}, so the same values to
 * the last bit, without an object or a sine made on the way.
 *
 * <p>Edges are numbered as in {@link Outline#edges}. For parity every edge is cut at its highest
 * and lowest points into <i>runs</i> that only rise or only fall.
 */
public final class FlatOutline {

  /** Nearer than this (mm) a point lies on the edge, and the way out is the edge's own. */
  private static final double ON_EDGE = 1e-12;

  private final int count;
  private final boolean[] arc;

  /** Start and end of each edge. */
  private final double[] startX;

  private final double[] startY;
  private final double[] endX;
  private final double[] endY;

  /** Of a segment the way from start to end and its squared length. */
  private final double[] alongX;

  private final double[] alongY;
  private final double[] square;

  /** Of an arc: centre, radius, sweep, and start and end as seen from the centre. */
  private final double[] centreX;

  private final double[] centreY;
  private final double[] radius;
  private final double[] sweep;
  private final double[] fromX;
  private final double[] fromY;
  private final double[] toX;
  private final double[] toY;

  private final Run[] runs;

  public FlatOutline(Outline outline) {
    List<Edge> edges = outline.edges();
    count = edges.size();
    arc = new boolean[count];
    startX = of(edges, edge -> edge.start().x());
    startY = of(edges, edge -> edge.start().y());
    endX = of(edges, edge -> edge.end().x());
    endY = of(edges, edge -> edge.end().y());
    alongX = of(edges, edge -> edge.end().minus(edge.start()).x());
    alongY = of(edges, edge -> edge.end().minus(edge.start()).y());
    square = new double[count];
    centreX = ofArcs(edges, each -> each.centre().x());
    centreY = ofArcs(edges, each -> each.centre().y());
    radius = ofArcs(edges, Arc::radius);
    sweep = ofArcs(edges, Arc::sweep);
    fromX = ofArcs(edges, each -> each.start().minus(each.centre()).x());
    fromY = ofArcs(edges, each -> each.start().minus(each.centre()).y());
    toX = ofArcs(edges, each -> each.end().minus(each.centre()).x());
    toY = ofArcs(edges, each -> each.end().minus(each.centre()).y());
    for (int i = 0; i < count; i++) {
      arc[i] = edges.get(i) instanceof Arc;
      square[i] = alongX[i] * alongX[i] + alongY[i] * alongY[i];
    }
    runs = outline.loops().flatMap(loop -> Run.of(loop).stream()).toArray(Run[]::new);
  }

  private static double[] of(List<Edge> edges, ToDoubleFunction<Edge> value) {
    return edges.stream().mapToDouble(value).toArray();
  }

  private static double[] ofArcs(List<Edge> edges, ToDoubleFunction<Arc> value) {
    return of(edges, edge -> edge instanceof Arc one ? value.applyAsDouble(one) : 0);
  }

  /** How many edges there are. */
  public int count() {
    return count;
  }

  /** Distance of (x, y) from edge i. */
  public double distance(int i, double x, double y) {
    if (!arc[i]) {
      double t = share(i, x, y);
      double dx = x - (startX[i] + alongX[i] * t);
      double dy = y - (startY[i] + alongY[i] * t);
      return Math.sqrt(dx * dx + dy * dy);
    }
    double ux = x - centreX[i];
    double uy = y - centreY[i];
    if (ux == 0 && uy == 0) {
      return radius[i];
    }
    if (isBetweenEnds(i, ux, uy)) {
      return Math.abs(Math.sqrt(ux * ux + uy * uy) - radius[i]);
    }
    return Math.sqrt(Math.min(toStart(i, x, y), toEnd(i, x, y)));
  }

  /** Share of segment i at which the point nearest to (x, y) lies. */
  private double share(int i, double x, double y) {
    double along = (x - startX[i]) * alongX[i] + (y - startY[i]) * alongY[i];
    return square[i] == 0 ? 0 : Math.max(0, Math.min(1, along / square[i]));
  }

  private double toStart(int i, double x, double y) {
    double dx = x - startX[i];
    double dy = y - startY[i];
    return dx * dx + dy * dy;
  }

  private double toEnd(int i, double x, double y) {
    double dx = x - endX[i];
    double dy = y - endY[i];
    return dx * dx + dy * dy;
  }

  private boolean isBetweenEnds(int i, double ux, double uy) {
    double size = Math.abs(sweep[i]);
    double turn = Math.signum(sweep[i]);
    boolean pastStart = turn * (fromX[i] * uy - fromY[i] * ux) >= 0;
    boolean beforeEnd = turn * (ux * toY[i] - uy * toX[i]) >= 0;
    return size >= 2 * Math.PI
        || (size <= Math.PI ? pastStart && beforeEnd : pastStart || beforeEnd);
  }

  /**
   * The way out of the material at (x, y), a unit vector, where edge i is the nearest.
   *
   * @param signed the distance, below zero inside
   */
  public void outward(int i, double x, double y, double signed, double[] outward) {
    if (arc[i]) {
      double ux = x - centreX[i];
      double uy = y - centreY[i];
      double norm = Math.sqrt(ux * ux + uy * uy);
      if (norm > 0 && isBetweenEnds(i, ux, uy)) {
        boolean onArc = Math.abs(signed) <= ON_EDGE;
        double way = onArc ? sweep[i] : (norm - radius[i]) * signed;
        outward[0] = Math.signum(way) * ux / norm;
        outward[1] = Math.signum(way) * uy / norm;
        return;
      }
    }
    double t = arc[i] ? (toStart(i, x, y) < toEnd(i, x, y) ? 0 : 1) : share(i, x, y);
    double footX = arc[i] && t == 1 ? endX[i] : startX[i] + alongX[i] * t;
    double footY = arc[i] && t == 1 ? endY[i] : startY[i] + alongY[i] * t;
    if (Math.abs(signed) > ON_EDGE) {
      outward[0] = (x - footX) / signed;
      outward[1] = (y - footY) / signed;
    } else if (arc[i]) {
      outward[0] = (footX - centreX[i]) / radius[i] * Math.signum(sweep[i]);
      outward[1] = (footY - centreY[i]) / radius[i] * Math.signum(sweep[i]);
    } else {
      // The material lies to the left of each edge, so outward is to the right.
      double length = Math.sqrt(square[i]);
      outward[0] = length > 0 ? alongY[i] / length : 1;
      outward[1] = length > 0 ? -alongX[i] / length : 0;
    }
  }

  /** How many runs there are. */
  public int runs() {
    return runs.length;
  }

  /** Whether a point of the rectangle, open to the right, can have the run to its right. */
  public boolean mayCross(int run, double minX, double minY, double maxY) {
    return runs[run].mayCross(minX, minY, maxY);
  }

  /** Whether the ray from (x, y) to the right crosses the run. */
  public boolean crosses(int run, double x, double y) {
    return runs[run].crosses(x, y);
  }

  /** As {@link Outline#contains}. */
  public boolean contains(double x, double y) {
    boolean odd = false;
    for (Run run : runs) {
      odd ^= run.crosses(x, y);
    }
    return odd;
  }

  /** Distance from (x, y) to the nearest edge, on either side of it. */
  public double depth(double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      least = Math.min(least, distance(i, x, y));
    }
    return least;
  }
}
