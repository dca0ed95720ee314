package curvestock.helix.build;

import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.List;

/**
 * One turn on one station: what to check with a ruler as the helix is built.
 *
 * @param station which station
 * @param part whether it is on the ring or on a lead
 * @param turn from 1; the entry's lead counts to the first turn, the exit's to the last
 * @param at distance along the line in millimetres
 * @param bearing direction from the centre, counter-clockwise from +x
 * @param edges whether one support in the middle holds it or two at the edges
 * @param underside of the plywood above the base
 * @param railTop above the base
 * @param gap from what the support stands on (the base, or the plywood of the turn below) to the
 *     plywood's underside
 * @param plate thickness of the splice plate that lies between the roadbed and its blocks or nuts
 *     here; zero where none does
 * @param slope of the roadbed here, rise over run
 */
public record SupportRow(
    Station station,
    Part part,
    int turn,
    double at,
    Angle bearing,
    Edges edges,
    Length underside,
    Length railTop,
    Length gap,
    Length plate,
    double slope) {

  /** Whether the support stands on the base rather than on the turn below. */
  public boolean standsOnBase() {
    return at == station.lowest();
  }

  /** What of the roadbed is held. */
  public enum Part {
    ENTRY,
    RING,
    EXIT
  }

  /** Where a turn is held. */
  public enum Edges {
    MIDDLE(1, "middle"),
    BOTH(2, "edges"),
    /** The other edge's support is left out. */
    INNER(1, "inner edge"),
    OUTER(1, "outer edge"),
    /** Nothing stands there. */
    NONE(0, "none");

    private final int supports;
    private final String words;

    Edges(int supports, String words) {
      this.supports = supports;
      this.words = words;
    }

    /** As in a table. */
    public String words() {
      return words;
    }

    public int supports() {
      return supports;
    }

    /**
     * How far outwards of the line the supports stand, the outer first.
     *
     * @param offset of the one at the outer edge
     */
    public List<Double> outwards(double offset) {
      return switch (this) {
        case BOTH -> List.of(offset, -offset);
        case OUTER -> List.of(offset);
        case INNER -> List.of(-offset);
        case MIDDLE -> List.of(0.0);
        case NONE -> List.of();
      };
    }

    /** Whether a support stands at the inner edge. */
    public boolean atInner() {
      return this == BOTH || this == INNER;
    }

    /** Whether a support stands at the outer edge. */
    public boolean atOuter() {
      return this == BOTH || this == OUTER;
    }
  }
}
