package curvestock.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/**
 * A shape in numbers of forty digits, made from its measures and pose and not from the program's
 * own edges: an independent judge of distances. Sines and cosines by their series.
 *
 * @param edges its boundary
 * @param holds whether a point lies in its material, by the shape's own inequality
 */
record PreciseShape(List<Edge> edges, Inside holds) {

  static final MathContext DIGITS = new MathContext(40);

  private static final BigDecimal HALF = new BigDecimal("0.5");
  private static final BigDecimal TINY = new BigDecimal("1e-30");

  /** Whether a point lies in the material. */
  interface Inside {
    boolean at(P point);
  }

  /** A point or a vector. */
  record P(BigDecimal x, BigDecimal y) {

    P plus(P other) {
      return new P(x.add(other.x, DIGITS), y.add(other.y, DIGITS));
    }

    P minus(P other) {
      return new P(x.subtract(other.x, DIGITS), y.subtract(other.y, DIGITS));
    }

    P times(BigDecimal factor) {
      return new P(x.multiply(factor, DIGITS), y.multiply(factor, DIGITS));
    }

    BigDecimal dot(P other) {
      return x.multiply(other.x, DIGITS).add(y.multiply(other.y, DIGITS), DIGITS);
    }

    BigDecimal cross(P other) {
      return x.multiply(other.y, DIGITS).subtract(y.multiply(other.x, DIGITS), DIGITS);
    }

    BigDecimal norm() {
      return dot(this).sqrt(DIGITS);
    }

    BigDecimal distance(P other) {
      return minus(other).norm();
    }
  }

  /**
   * A line from {@code a} to {@code b}, or, with a radius above zero, an arc that runs from {@code
   * a} counter-clockwise to {@code b}; the whole circle if the sweep says so.
   */
  record Edge(P a, P b, P centre, BigDecimal radius, double sweep) {

    boolean isArc() {
      return radius.signum() > 0;
    }

    /** Whether the arc passes the direction of a point as seen from its centre. */
    boolean passes(P point) {
      if (sweep >= 2 * Math.PI) {
        return true;
      }
      P d = point.minus(centre);
      boolean afterStart = a.minus(centre).cross(d).signum() >= 0;
      boolean beforeEnd = d.cross(b.minus(centre)).signum() >= 0;
      return sweep <= Math.PI ? afterStart && beforeEnd : afterStart || beforeEnd;
    }

    /** The point of the circle in a direction. */
    P towards(P direction, int sign) {
      BigDecimal norm = direction.norm();
      return centre.plus(
          direction.times(radius.multiply(BigDecimal.valueOf(sign)).divide(norm, DIGITS)));
    }

    BigDecimal distance(P point) {
      BigDecimal ends = point.distance(a).min(point.distance(b));
      if (isArc()) {
        BigDecimal fromCentre = point.distance(centre);
        boolean passed = fromCentre.compareTo(TINY) < 0 || passes(point);
        return passed ? fromCentre.subtract(radius).abs().min(ends) : ends;
      }
      P along = b.minus(a);
      BigDecimal t = point.minus(a).dot(along).divide(along.dot(along), DIGITS);
      boolean within = t.signum() >= 0 && t.compareTo(BigDecimal.ONE) <= 0;
      return within ? point.distance(a.plus(along.times(t))).min(ends) : ends;
    }
  }

  /** The least distance of the material of two shapes. */
  static BigDecimal distance(PreciseShape one, PreciseShape other) {
    BigDecimal least = boundaries(one, other);
    boolean nested = one.holds.at(other.edges.get(0).a()) || other.holds.at(one.edges.get(0).a());
    return nested ? BigDecimal.ZERO : least;
  }

  /** The least distance of the two boundaries. */
  static BigDecimal boundaries(PreciseShape one, PreciseShape other) {
    BigDecimal least = one.edges.get(0).a().distance(other.edges.get(0).a());
    for (Edge e : one.edges) {
      for (Edge f : other.edges) {
        least = least.min(distance(e, f));
      }
    }
    return least;
  }

  private static BigDecimal distance(Edge e, Edge f) {
    BigDecimal least = e.distance(f.a()).min(e.distance(f.b()));
    least = least.min(f.distance(e.a())).min(f.distance(e.b()));
    if (!e.isArc() && !f.isArc()) {
      return crossing(e, f) ? BigDecimal.ZERO : least;
    }
    if (e.isArc() && f.isArc()) {
      return least.min(arcs(e, f, least));
    }
    return e.isArc() ? least.min(lineAndArc(f, e, least)) : least.min(lineAndArc(e, f, least));
  }

  private static boolean crossing(Edge e, Edge f) {
    P u = e.b().minus(e.a());
    P v = f.b().minus(f.a());
    return u.cross(f.a().minus(e.a())).signum() * u.cross(f.b().minus(e.a())).signum() < 0
        && v.cross(e.a().minus(f.a())).signum() * v.cross(e.b().minus(f.a())).signum() < 0;
  }

  private static BigDecimal lineAndArc(Edge line, Edge arc, BigDecimal most) {
    P along = line.b().minus(line.a());
    BigDecimal square = along.dot(along);
    BigDecimal t = arc.centre().minus(line.a()).dot(along).divide(square, DIGITS);
    P foot = line.a().plus(along.times(t));
    BigDecimal height = foot.distance(arc.centre());
    BigDecimal least = most;
    if (height.compareTo(arc.radius()) < 0) {
      BigDecimal half =
          arc.radius().pow(2, DIGITS).subtract(height.pow(2, DIGITS), DIGITS).sqrt(DIGITS);
      for (int sign = -1; sign <= 1; sign += 2) {
        BigDecimal at =
            t.add(
                half.multiply(BigDecimal.valueOf(sign)).divide(square.sqrt(DIGITS), DIGITS),
                DIGITS);
        boolean within = at.signum() >= 0 && at.compareTo(BigDecimal.ONE) <= 0;
        if (within && arc.passes(line.a().plus(along.times(at)))) {
          return BigDecimal.ZERO;
        }
      }
    } else if (t.signum() >= 0 && t.compareTo(BigDecimal.ONE) <= 0 && arc.passes(foot)) {
      least = least.min(height.subtract(arc.radius()));
    }
    return least;
  }

  private static BigDecimal arcs(Edge e, Edge f, BigDecimal most) {
    P between = f.centre().minus(e.centre());
    BigDecimal apart = between.norm();
    if (apart.compareTo(TINY) < 0) {
      return most;
    }
    BigDecimal least = most;
    for (int i = -1; i <= 1; i += 2) {
      for (int j = -1; j <= 1; j += 2) {
        P p = e.towards(between, i);
        P q = f.towards(between, j);
        if (e.passes(p) && f.passes(q)) {
          least = least.min(p.distance(q));
        }
      }
    }
    // Where the circles meet: at x along the line of centres and h to either side of it.
    BigDecimal x =
        apart
            .pow(2, DIGITS)
            .add(e.radius().pow(2, DIGITS))
            .subtract(f.radius().pow(2, DIGITS), DIGITS)
            .multiply(HALF)
            .divide(apart, DIGITS);
    BigDecimal square = e.radius().pow(2, DIGITS).subtract(x.pow(2, DIGITS), DIGITS);
    if (square.signum() >= 0) {
      BigDecimal h = square.sqrt(DIGITS);
      P along = between.times(BigDecimal.ONE.divide(apart, DIGITS));
      P across = new P(along.y().negate(), along.x());
      for (int sign = -1; sign <= 1; sign += 2) {
        P meet =
            e.centre()
                .plus(along.times(x))
                .plus(across.times(h.multiply(BigDecimal.valueOf(sign))));
        if (e.passes(meet) && f.passes(meet)) {
          return BigDecimal.ZERO;
        }
      }
    }
    return least;
  }

  /** An annular sector about the origin, its bisector along +x, moved to a pose. */
  static PreciseShape sector(
      double radius, double width, double sweep, double x, double y, double turn) {
    BigDecimal outer = big(radius).add(big(width).multiply(HALF), DIGITS);
    BigDecimal inner = big(radius).subtract(big(width).multiply(HALF), DIGITS);
    P centre = new P(big(x), big(y));
    BigDecimal half = big(sweep).multiply(HALF);
    boolean ring = sweep >= 2 * Math.PI;
    P first = unit(big(turn).subtract(half, DIGITS));
    P last = unit(big(turn).add(half, DIGITS));
    P outerA = centre.plus(first.times(outer));
    P outerB = ring ? outerA : centre.plus(last.times(outer));
    P innerA = centre.plus(first.times(inner));
    P innerB = ring ? innerA : centre.plus(last.times(inner));
    List<Edge> edges = new ArrayList<>();
    edges.add(new Edge(outerA, outerB, centre, outer, sweep));
    if (inner.signum() > 0) {
      edges.add(new Edge(innerA, innerB, centre, inner, sweep));
    }
    if (!ring) {
      edges.add(new Edge(innerA, outerA, centre, BigDecimal.ZERO, 0));
      edges.add(new Edge(innerB, outerB, centre, BigDecimal.ZERO, 0));
    }
    Edge rim = edges.get(0);
    return new PreciseShape(
        edges,
        point -> {
          BigDecimal r = point.distance(centre);
          return r.compareTo(inner) > 0 && r.compareTo(outer) < 0 && rim.passes(point);
        });
  }

  /** A rectangle with a corner at the origin, moved to a pose. */
  static PreciseShape rectangle(double length, double width, double x, double y, double turn) {
    P home = new P(big(x), big(y));
    P along = unit(big(turn));
    P across = new P(along.y().negate(), along.x());
    P b = home.plus(along.times(big(length)));
    P c = b.plus(across.times(big(width)));
    P d = home.plus(across.times(big(width)));
    P[] corners = {home, b, c, d};
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      edges.add(new Edge(corners[i], corners[(i + 1) % 4], home, BigDecimal.ZERO, 0));
    }
    return new PreciseShape(
        edges,
        point -> {
          P local = point.minus(home);
          return isBetween(local.dot(along), length) && isBetween(local.dot(across), width);
        });
  }

  private static boolean isBetween(BigDecimal value, double most) {
    return value.signum() > 0 && value.compareTo(big(most)) < 0;
  }

  private static BigDecimal big(double value) {
    return new BigDecimal(value);
  }

  /** Cosine and sine by their series about zero, of the angle halved four times. */
  private static P unit(BigDecimal angle) {
    int halvings = 4;
    BigDecimal small = angle.divide(BigDecimal.valueOf(1L << halvings), DIGITS);
    BigDecimal square = small.multiply(small, DIGITS).negate();
    BigDecimal cos = BigDecimal.ONE;
    BigDecimal sin = small;
    BigDecimal cosTerm = BigDecimal.ONE;
    BigDecimal sinTerm = small;
    for (int k = 1; k <= 18; k++) {
      cosTerm = cosTerm.multiply(square).divide(BigDecimal.valueOf((2L * k - 1) * 2 * k), DIGITS);
      sinTerm = sinTerm.multiply(square).divide(BigDecimal.valueOf(2L * k * (2L * k + 1)), DIGITS);
      cos = cos.add(cosTerm, DIGITS);
      sin = sin.add(sinTerm, DIGITS);
    }
    P direction = new P(cos, sin);
    for (int k = 0; k < halvings; k++) {
      P d = direction;
      direction =
          new P(
              d.x().pow(2, DIGITS).subtract(d.y().pow(2, DIGITS), DIGITS),
              d.x().multiply(d.y(), DIGITS).multiply(BigDecimal.valueOf(2)));
    }
    return direction;
  }
}
