package curvestock.bound;

/**
 * A sector widened by a gap d, as far as it lies to the left of an upright line, in closed form.
 *
 * <p>Taken for the widened sector is a part of it: the points at radii from r − d to R + d within
 * the sector's half angle α, and those at radii from r to R within α + asin(d / R), which keep
 * within d of an end face. Both angles are then shortened by {@code range}: a sector that turns
 * about the centre of its arcs slides along itself, so what is left lies in the widened sector
 * whatever its direction within {@code range} of the given one. Left out are only the rounded
 * corners.
 *
 * <p>Areas are those of slices of discs (pies): the two bands are sums and differences of six. Seen
 * from the centre of the arcs; millimetres and radians.
 */
final class SectorProfile {

  /** An end that spans so little from left to right (mm) is taken for upright. */
  private static final double UPRIGHT = 1e-6;

  /** Radius, half angle, sign of its area, sign of its arc's share of the border. */
  private final double[][] pies;

  /** Tangents and sines of a pie's two edges. */
  private final double[][] edges;

  /** Direction from the bisector, radius from, radius to. */
  private final double[][] ends;

  /** Least x, span from left to right, rise of the two faces at each of the ends. */
  private final double[][] faces;

  private final double direction;

  private double area;
  private double rise;

  private SectorProfile(double[][] pies, double[][] ends, double direction) {
    this.pies = pies;
    this.ends = ends;
    this.direction = direction;
    edges = new double[pies.length][];
    for (int k = 0; k < pies.length; k++) {
      double from = direction - pies[k][1];
      double to = direction + pies[k][1];
      edges[k] =
          new double[] {
            StrictMath.tan(from), StrictMath.tan(to), StrictMath.sin(from), StrictMath.sin(to)
          };
    }
    faces = new double[2 * ends.length][];
    for (int k = 0; k < faces.length; k++) {
      double[] end = ends[k / 2];
      double angle = direction + (k % 2 == 0 ? end[0] : -end[0]);
      double cos = StrictMath.cos(angle);
      double length = end[2] - end[1];
      faces[k] =
          new double[] {
            Math.min(end[1] * cos, end[2] * cos),
            length * Math.abs(cos),
            length * Math.abs(StrictMath.sin(angle))
          };
    }
  }

  /** A whole disc. */
  static SectorProfile disc(double radius) {
    return new SectorProfile(new double[][] {{radius, Math.PI, 1, 1}}, new double[0][], 0);
  }

  /**
   * @param radii r and R
   * @param half α
   * @param direction of the bisector, from −π to π
   * @param range less than α
   */
  static SectorProfile widened(
      double[] radii, double gap, double half, double direction, double range) {
    double inner = Math.max(0, radii[0] - gap);
    double outer = radii[1] + gap;
    double shorter = half - range;
    // Were it further, the outermost point would be nearest to the face's inner corner.
    double beside = Math.min(gap, Math.sqrt(radii[1] * radii[1] - radii[0] * radii[0]));
    double longer = Math.min(Math.PI, half + StrictMath.asin(beside / radii[1])) - range;
    return new SectorProfile(
        new double[][] {
          {outer, shorter, 1, 1},
          {radii[1], shorter, -1, -1},
          {radii[1], longer, 1, 1},
          {radii[0], longer, -1, 1},
          {radii[0], shorter, 1, -1},
          {inner, shorter, -1, 1},
        },
        new double[][] {
          {shorter, inner, radii[0]}, {longer, radii[0], radii[1]}, {shorter, radii[1], outer},
        },
        direction);
  }

  /** The same with x and y exchanged: what lies below a level line. */
  SectorProfile mirrored() {
    double towards = Math.PI / 2 - direction;
    return new SectorProfile(pies, ends, towards > Math.PI ? towards - 2 * Math.PI : towards);
  }

  /**
   * Looks at the line at {@code x}; {@link #area} and {@link #rise} then tell what is left of it.
   */
  void cutAt(double x) {
    area = 0;
    rise = 0;
    double known = -1;
    double limit = 0;
    double height = 0;
    for (int k = 0; k < pies.length; k++) {
      double[] pie = pies[k];
      double radius = pie[0];
      if (radius != known) {
        known = radius;
        double cut = Math.max(-radius, Math.min(radius, x));
        limit = radius > 0 ? StrictMath.acos(cut / radius) : 0;
        height = Math.sqrt(radius * radius - cut * cut);
      }
      area += pie[2] * pieLeftOf(x, k, limit, height);
      rise += pie[3] * arcRise(k, limit, height);
    }
    for (double[] face : faces) {
      double share = face[1] < UPRIGHT ? (x < face[0] ? 0 : 1) : (x - face[0]) / face[1];
      rise += face[2] * Math.max(0, Math.min(1, share));
    }
  }

  /** Area left of the line, right to double precision. */
  double area() {
    return area;
  }

  /**
   * How far the border left of the line goes up and down in all. As a line moves, its length within
   * the sector varies by no more than the border between goes up and down.
   */
  double rise() {
    return rise;
  }

  /**
   * A ray at angle φ to +x is left of a line at x ≥ 0 up to x / cos φ where that is less than the
   * radius: within ±acos(x / radius), where ½ ∫ x² / cos² φ = ½ x² tan φ. Elsewhere all of it is.
   * For x below 0, all is mirrored.
   */
  private double pieLeftOf(double x, int k, double limit, double height) {
    double radius = pies[k][0];
    double half = pies[k][1];
    double whole = half * radius * radius;
    if (Math.abs(x) >= radius) {
      return x > 0 ? whole : 0;
    }
    double towards = x >= 0 ? direction : direction + Math.PI;
    double most = x >= 0 ? limit : Math.PI - limit;
    double lost = 0;
    for (int turn = -2; turn <= 1; turn++) {
      double from = towards - half + 2 * Math.PI * turn;
      double to = towards + half + 2 * Math.PI * turn;
      double low = Math.max(from, -most);
      double high = Math.min(to, most);
      if (low < high) {
        double right = high < most ? x * x * edges[k][1] : Math.abs(x) * height;
        double left = low > -most ? x * x * edges[k][0] : -Math.abs(x) * height;
        lost += radius * radius * (high - low) - right + left;
      }
    }
    return x >= 0 ? whole - lost / 2 : lost / 2;
  }

  private double arcRise(int k, double limit, double height) {
    double[] pie = pies[k];
    double sum = 0;
    for (int turn = -1; turn <= 1; turn++) {
      double from = Math.max(limit, direction - pie[1] + 2 * Math.PI * turn);
      double to = Math.min(2 * Math.PI - limit, direction + pie[1] + 2 * Math.PI * turn);
      if (from < to) {
        double start = from > limit ? pie[0] * edges[k][2] : height;
        double stop = to < 2 * Math.PI - limit ? pie[0] * edges[k][3] : -height;
        sum += travelled(to, stop, pie[0]) - travelled(from, start, pie[0]);
      }
    }
    return sum;
  }

  /** Up and down in all from angle 0 to an angle up to 2π, where the height is y. */
  private static double travelled(double angle, double y, double radius) {
    if (angle <= Math.PI / 2) {
      return y;
    }
    return angle <= 3 * Math.PI / 2 ? 2 * radius - y : 4 * radius + y;
  }
}
