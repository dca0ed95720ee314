package curvestock.geometry;

import java.util.List;

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

  /** Nearer than this (mm) the side of an edge on which a point lies may be lost in rounding. */
  private static final double SURE = 1e-6;

  /** What kind an edge is: straight, or an arc of at most, or of more than half a turn. */
  private static final int KIND = 0;

  private static final double STRAIGHT = 0;
  private static final double SHORT_ARC = 1;
  private static final double LONG_ARC = 2;
  private static final double CIRCLE = 3;

  private static final int START = 1;
  private static final int END = 3;

  /** The way from start to end, and its squared length. */
  private static final int ALONG = 5;

  private static final int SQUARE = 7;

  /** Of an arc: centre, radius, 1 if counter-clockwise, start and end seen from the centre. */
  private static final int CENTRE = 8;

  private static final int RADIUS = 10;
  private static final int TURN = 11;
  private static final int FROM = 12;
  private static final int TO = 14;

  /** At its start and at its end: 1 if the corner there juts out, −1 if in, 0 if it is smooth. */
  private static final int JUT = 16;

  private static final int NUMBERS = 18;

  /** Sine of the turn below which a corner counts as smooth. */
  private static final double SMOOTH = 1e-3;

  private final int count;

  /** The numbers of each edge together, so that they are at hand together. */
  private final double[] data;

  private final Run[] runs;

  /** Copies the numbers of all edges of the outline, its holes included. */
  public FlatOutline(Outline outline) {
    List<Edge> edges = outline.edges();
    count = edges.size();
    data = new double[NUMBERS * count];
    for (int i = 0; i < count; i++) {
      fill(NUMBERS * i, edges.get(i));
    }
    int at = 0;
    for (Loop loop : outline.loops().toList()) {
      at = corners(at, loop.edges());
    }
    runs = outline.loops().flatMap(loop -> Run.of(loop).stream()).toArray(Run[]::new);
  }

  private void fill(int at, Edge edge) {
    Point along = edge.end().minus(edge.start());
    put(at + START, edge.start());
    put(at + END, edge.end());
    put(at + ALONG, along);
    data[at + SQUARE] = along.dot(along);
    if (edge instanceof Arc arc) {
      double size = Math.abs(arc.sweep());
      data[at + KIND] = size >= 2 * Math.PI ? CIRCLE : size <= Math.PI ? SHORT_ARC : LONG_ARC;
      put(at + CENTRE, arc.centre());
      data[at + RADIUS] = arc.radius();
      data[at + TURN] = Math.signum(arc.sweep());
      put(at + FROM, arc.start().minus(arc.centre()));
      put(at + TO, arc.end().minus(arc.centre()));
    }
  }

  /** Notes the corners of a loop whose edges' numbers begin there; returns where they end. */
  private int corners(int at, List<Edge> edges) {
    int size = edges.size();
    for (int i = 0; i < size; i++) {
      int next = (i + 1) % size;
      double turn = edges.get(i).endDirection().cross(edges.get(next).startDirection());
      double jut = Math.abs(turn) < SMOOTH ? 0 : Math.signum(turn);
      data[at + NUMBERS * i + JUT + 1] = jut;
      data[at + NUMBERS * next + JUT] = jut;
    }
    return at + NUMBERS * size;
  }

  private void put(int at, Point point) {
    data[at] = point.x();
    data[at + 1] = point.y();
  }

  /** How many edges there are. */
  public int count() {
    return count;
  }

  /** Distance of (x, y) from edge i, in mm. */
  public double distance(int i, double x, double y) {
    int at = NUMBERS * i;
    if (data[at + KIND] == STRAIGHT) {
      double t = share(at, x, y);
      double dx = x - (data[at + START] + data[at + ALONG] * t);
      double dy = y - (data[at + START + 1] + data[at + ALONG + 1] * t);
      return Math.sqrt(dx * dx + dy * dy);
    }
    double ux = x - data[at + CENTRE];
    double uy = y - data[at + CENTRE + 1];
    if (ux == 0 && uy == 0) {
      return data[at + RADIUS];
    }
    if (isBetweenEnds(at, ux, uy)) {
      return Math.abs(Math.sqrt(ux * ux + uy * uy) - data[at + RADIUS]);
    }
    return Math.sqrt(Math.min(toPoint(at + START, x, y), toPoint(at + END, x, y)));
  }

  /** Share of a straight edge at which the point nearest to (x, y) lies. */
  private double share(int at, double x, double y) {
    double along =
        (x - data[at + START]) * data[at + ALONG]
            + (y - data[at + START + 1]) * data[at + ALONG + 1];
    double square = data[at + SQUARE];
    return along <= 0 || square == 0 ? 0 : along >= square ? 1 : along / square;
  }

  private double toPoint(int at, double x, double y) {
    double dx = x - data[at];
    double dy = y - data[at + 1];
    return dx * dx + dy * dy;
  }

  private boolean isBetweenEnds(int at, double ux, double uy) {
    double turn = data[at + TURN];
    boolean pastStart = turn * (data[at + FROM] * uy - data[at + FROM + 1] * ux) >= 0;
    boolean beforeEnd = turn * (ux * data[at + TO + 1] - uy * data[at + TO]) >= 0;
    return data[at + KIND] == SHORT_ARC
        ? pastStart && beforeEnd
        : data[at + KIND] == CIRCLE || pastStart || beforeEnd;
  }

  /**
   * The way out of the material at (x, y), a unit vector, where edge i is the nearest.
   *
   * @param signed the distance, below zero inside
   */
  public void outward(int i, double x, double y, double signed, double[] outward) {
    int at = NUMBERS * i;
    boolean onEdge = Math.abs(signed) <= ON_EDGE;
    if (data[at + KIND] == STRAIGHT) {
      double t = share(at, x, y);
      if (onEdge) {
        // The material lies to the left of each edge, so outward is to the right.
        double length = Math.sqrt(data[at + SQUARE]);
        outward[0] = length > 0 ? data[at + ALONG + 1] / length : 1;
        outward[1] = length > 0 ? -data[at + ALONG] / length : 0;
      } else {
        outward[0] = (x - (data[at + START] + data[at + ALONG] * t)) / signed;
        outward[1] = (y - (data[at + START + 1] + data[at + ALONG + 1] * t)) / signed;
      }
      return;
    }
    double ux = x - data[at + CENTRE];
    double uy = y - data[at + CENTRE + 1];
    double norm = Math.sqrt(ux * ux + uy * uy);
    if (norm > 0 && (onEdge || isBetweenEnds(at, ux, uy))) {
      double way = onEdge ? data[at + TURN] : (norm - data[at + RADIUS]) * signed;
      outward[0] = Math.signum(way) * ux / norm;
      outward[1] = Math.signum(way) * uy / norm;
    } else {
      int end = at + (toPoint(at + START, x, y) < toPoint(at + END, x, y) ? START : END);
      outward[0] = (x - data[end]) / signed;
      outward[1] = (y - data[end + 1]) / signed;
    }
  }

  /**
   * On which side of edge i the point (x, y) lies, where that edge is the nearest: 1 outside the
   * material, −1 in it; 0 if it is too near to tell, or the nearest point the end of an edge that
   * goes on smoothly. The way to the nearest point crosses no other edge, so the side at that point
   * is the side of (x, y); and only from outside is a corner nearest that juts out, only from
   * inside one that juts in.
   *
   * @param distance from that edge
   */
  public int side(int i, double x, double y, double distance) {
    if (distance < SURE) {
      return 0;
    }
    int at = NUMBERS * i;
    if (data[at + KIND] == STRAIGHT) {
      double dx = x - data[at + START];
      double dy = y - data[at + START + 1];
      double along = dx * data[at + ALONG] + dy * data[at + ALONG + 1];
      if (along <= 0 || along >= data[at + SQUARE]) {
        return (int) data[at + (along <= 0 ? JUT : JUT + 1)];
      }
      return data[at + ALONG] * dy - data[at + ALONG + 1] * dx > 0 ? -1 : 1;
    }
    double ux = x - data[at + CENTRE];
    double uy = y - data[at + CENTRE + 1];
    if (!isBetweenEnds(at, ux, uy)) {
      boolean atStart = toPoint(at + START, x, y) < toPoint(at + END, x, y);
      return (int) data[at + (atStart ? JUT : JUT + 1)];
    }
    boolean beyond = ux * ux + uy * uy > data[at + RADIUS] * data[at + RADIUS];
    return beyond == data[at + TURN] > 0 ? 1 : -1;
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

  /** Distance in mm from (x, y) to the nearest edge, on either side of it. */
  public double depth(double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      least = Math.min(least, distance(i, x, y));
    }
    return least;
  }
}
