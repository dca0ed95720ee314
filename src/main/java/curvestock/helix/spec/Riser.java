package curvestock.helix.spec;

import curvestock.helix.standard.RodThread;
import curvestock.helix.standard.Washer;
import curvestock.units.Length;
import java.util.Optional;

/** What holds the turns up. */
public sealed interface Riser {

  /** How far something hangs below the plywood across the track; zero if nothing does. */
  Length crossPiece();

  /** How far the support's inner face lies inside the roadbed's edge; below zero if outside. */
  Length reachFromEdge();

  /** Breadth across the track of a block, or of a rod's washer. */
  Length across();

  /** Extent along the track of a block, or of a rod's washer. */
  Length along();

  /** From the roadbed's edge to the support's middle; below zero if outside. */
  Length middleFromEdge();

  /** From the roadbed's edge to the support's outer face; below zero if outside. */
  default Length outerFaceFromEdge() {
    return middleFromEdge().minus(across().times(0.5));
  }

  /**
   * Wood blocks at the edges of the roadbed, each turn's standing on the turn below.
   *
   * @param width across the track
   * @param along along the track
   * @param crossPiece thickness of a piece that lies across the blocks under the roadbed, zero for
   *     none
   * @param kerf of the saw that cuts them to length
   * @param stock boards that they are cut from; empty if they are cut from the roadbed's sheets,
   *     whose thickness is then their width across the track
   * @param inches whether the shop sells by the inch, by the job's own lengths: which screw is
   *     asked for, and what is cut off to square a board
   */
  record WoodBlocks(
      Length width,
      Length along,
      Length crossPiece,
      Length kerf,
      Optional<StockBoard> stock,
      boolean inches)
      implements Riser {
    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if a side is not above zero, or another length is below zero
     */
    public WoodBlocks {
      width.requirePositive("riser width");
      along.requirePositive("riser length along the track");
      crossPiece.requireNotNegative("cross piece");
      kerf.requireNotNegative("riser saw kerf");
    }

    @Override
    public Length reachFromEdge() {
      return width;
    }

    @Override
    public Length across() {
      return width;
    }

    @Override
    public Length middleFromEdge() {
      return width.times(0.5);
    }
  }

  /**
   * Threaded rods through the roadbed, a nut and a washer above and below each turn.
   *
   * @param thread which rod
   * @param inset from the roadbed's edge to the rod's middle; where it is less than the hole needs,
   *     ears carry the rod
   * @param fit how much wider than the rod the hole is, before the slope's share
   * @param washer outer diameter of the washer
   * @param endAllowance rod beyond the outermost nuts, for both ends together
   * @param ear tabs that carry the rods outside the roadbed's edge, if wanted
   * @param kerf of the saw that cuts the rods
   * @param stock rods as sold
   * @param base thickness of the base that the rods go through
   */
  record ThreadedRods(
      RodThread thread,
      Length inset,
      Length fit,
      Length washer,
      Length endAllowance,
      Optional<Ear> ear,
      Length kerf,
      StockBoard stock,
      Length base)
      implements Riser {

    /** A base of half-inch plywood: common practice, no source. */
    public static final Length USUAL_BASE = Length.ofInches(0.5);

    private static final Length LEAST_INSET = Length.ofMillimetres(12);

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if a length is below zero, the washer no wider than the rod,
     *     or the rod would miss the wood
     */
    public ThreadedRods {
      fit.requireNotNegative("hole fit");
      endAllowance.requireNotNegative("rod end allowance");
      kerf.requireNotNegative("rod saw kerf");
      base.requireNotNegative("thickness of the base");
      if (washer.compareTo(thread.diameter()) <= 0) {
        throw new IllegalArgumentException(
            "washer must be wider than the rod (" + thread.diameter() + "), but was " + washer);
      }
      Length outermost = ear.map(e -> e.reach().times(-1)).orElse(Length.ZERO);
      if (inset.minus(thread.diameter()).compareTo(outermost) < 0) {
        throw new IllegalArgumentException(
            "rod inset must keep the rod inside the wood, by its diameter or more from "
                + outermost
                + ", but was "
                + inset);
      }
    }

    @Override
    public Length across() {
      return washer;
    }

    @Override
    public Length along() {
      return washer;
    }

    @Override
    public Length middleFromEdge() {
      return inset;
    }

    /** Through a base of the usual thickness. */
    public ThreadedRods(
        RodThread thread,
        Length inset,
        Length fit,
        Length washer,
        Length endAllowance,
        Optional<Ear> ear,
        Length kerf,
        StockBoard stock) {
      this(thread, inset, fit, washer, endAllowance, ear, kerf, stock, USUAL_BASE);
    }

    /** The washer to buy. */
    public Washer washerBought() {
      return thread.washer(washer);
    }

    /** The same rods with their middles so far from the edge, on ears or not. */
    public ThreadedRods at(Length middle, Optional<Ear> on) {
      return new ThreadedRods(thread, middle, fit, washer, endAllowance, on, kerf, stock, base);
    }

    /** Wood that a rod wants beside it: half its thickness again, at least 12 mm. Own choice. */
    public static Length usualInset(RodThread thread) {
      Length thick = thread.diameter().times(1.5);
      return thick.compareTo(LEAST_INSET) > 0 ? thick : LEAST_INSET;
    }

    /** The same rods, moved out to ears. */
    public ThreadedRods onEars(Ear on) {
      Length out = usualInset(thread).times(-1);
      return at(out, Optional.of(on));
    }

    /** The same rods, inside the roadbed's edge. */
    public ThreadedRods withoutEars() {
      Length in = ear.isPresent() ? usualInset(thread) : inset;
      return at(in, Optional.empty());
    }

    @Override
    public Length crossPiece() {
      return Length.ZERO;
    }

    @Override
    public Length reachFromEdge() {
      return inset.plus(washer.times(0.5));
    }
  }

  /**
   * A square tab on the roadbed's edge.
   *
   * @param width along the edge
   * @param reach beyond the edge
   */
  record Ear(Length width, Length reach) {
    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if a length is not above zero
     */
    public Ear {
      width.requirePositive("ear width");
      reach.requirePositive("ear reach");
    }
  }
}
