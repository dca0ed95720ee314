package curvestock.handwork;

import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A stick with a hole for the pivot and one for each line to be drawn about it.
 *
 * @param name what is drawn with it
 * @param holes nearest to the pivot first
 * @param ears whether the edges stop at ears, which a full swing would cut off
 */
public record Trammel(String name, List<Hole> holes, boolean ears) {

  /** For edges without ears. */
  public Trammel(String name, List<Hole> holes) {
    this(name, holes, false);
  }

  /** Which side of a line the wood that is kept lies on. */
  public enum Keep {
    /** Farther from the pivot: the line is an inner edge. */
    OUTSIDE,
    /** Nearer to the pivot: the line is an outer edge. */
    INSIDE,
    /** On both sides: the line is drawn, not cut. */
    BOTH
  }

  /**
   * One hole.
   *
   * @param line what it draws
   * @param radius of the line
   */
  public record Hole(String line, Length radius, Keep keep) {

    /**
     * From the pivot to the middle of a router bit that cuts along the line on its waste side: the
     * radius and half the bit for an outer edge, the radius less half the bit for an inner one.
     *
     * @return the radius itself where nothing is cut
     */
    public Length bitMiddle(Length bit) {
      return switch (keep) {
        case OUTSIDE -> radius.minus(bit.times(0.5));
        case INSIDE -> radius.plus(bit.times(0.5));
        case BOTH -> radius;
      };
    }
  }

  /**
   * Sorts the holes.
   *
   * @throws IllegalArgumentException if there are none
   */
  public Trammel {
    if (holes.isEmpty()) {
      throw new IllegalArgumentException("a trammel must have a hole");
    }
    List<Hole> sorted = new ArrayList<>(holes);
    sorted.sort(Comparator.comparing(Hole::radius));
    holes = List.copyOf(sorted);
  }

  /** From the pivot to the farthest that a bit's middle or a pencil is on the stick. */
  public Length reach(Length bit) {
    Length cut = cut(bit);
    return cut.compareTo(reach()) > 0 ? cut : reach();
  }

  /** From the pivot to the farthest that a bit's middle is on the stick; zero if nothing is cut. */
  public Length cut(Length bit) {
    return holes.stream()
        .filter(hole -> hole.keep() != Keep.BOTH)
        .map(hole -> hole.bitMiddle(bit))
        .reduce(Length.ZERO, (a, b) -> a.compareTo(b) > 0 ? a : b);
  }

  /** From the pivot to the farthest hole. */
  public Length reach() {
    return holes.get(holes.size() - 1).radius();
  }
}
