package curvestock.packing.atlas;

/**
 * The shape of a packing question for one kind of arc on a rectangle, without its size.
 *
 * <p>The gap is not part of it: pieces that keep a gap g from each other and a margin m from the
 * edge are pieces g/2 larger all round that may touch, on a sheet smaller by m − g/2 all round. The
 * corners of such a piece would be round and its end faces parallel to the old ones; here it is
 * taken for the arc that reaches as far at mid-width. That is good for finding a start, and the
 * start is judged by the true gaps.
 *
 * @param sweep swept angle, radians
 * @param outer outer radius over the short side
 * @param width radial width over the short side
 * @param aspect long side over short side, at least 1
 */
public record Proportions(double sweep, double outer, double width, double aspect) {

  /**
   * @throws IllegalArgumentException if one is not above zero, the width exceeds the radius or the
   *     sides are exchanged
   */
  public Proportions {
    if (!(sweep > 0 && width > 0 && outer >= width && aspect >= 1)) {
      throw new IllegalArgumentException(
          "proportions must be above zero, the width at most the radius, the aspect at least 1,"
              + " but were sweep "
              + sweep
              + ", outer "
              + outer
              + ", width "
              + width
              + ", aspect "
              + aspect);
    }
  }

  /** Radius at mid-width over the short side. */
  public double middle() {
    return outer - width / 2;
  }

  /**
   * How much harder a question of these proportions is than another, as a rough share of size:
   * about 0 if what just fits there just fits here, below 0 if there is room to spare.
   */
  double strain(Proportions than) {
    return StrictMath.log(outer / than.outer)
        + 0.5 * StrictMath.log(width / than.width)
        + 0.5 * StrictMath.log(sweep / than.sweep)
        - 0.5 * StrictMath.log(aspect / than.aspect);
  }

  /** Whether the two are so alike that a layout of one may tell something of the other. */
  boolean isLike(Proportions other) {
    return isNear(sweep, other.sweep, 0.06)
        && isNear(aspect, other.aspect, 0.06)
        && isNear(width, other.width, 0.35)
        && isNear(outer, other.outer, 0.2);
  }

  private static boolean isNear(double a, double b, double within) {
    return Math.abs(StrictMath.log(a / b)) <= within;
  }
}
