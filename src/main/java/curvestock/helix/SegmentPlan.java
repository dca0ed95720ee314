package curvestock.helix;

import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * A helix cut as equal segments laid end to end, the last one shorter where the turns do not
 * divide.
 *
 * @param turns how many times the track goes round; fractions allowed
 * @param radius centre-line radius of the roadbed
 * @param width radial width of the roadbed
 * @param segment swept angle of one segment
 */
public record SegmentPlan(double turns, Length radius, Length width, Angle segment) {

  /** A remainder below a thousandth of a degree is rounding, not a piece. */
  private static final double NEGLIGIBLE_DEGREES = 1e-3;

  private static final double MOST_TURNS = 1000;

  /**
   * @throws IllegalArgumentException if the turns are not above 0 and at most 1000, or the segment
   *     is out of range for an {@link AnnularSector}
   */
  public SegmentPlan {
    if (!(turns > 0 && turns <= MOST_TURNS)) {
      throw new IllegalArgumentException(
          "turns must be above 0 and at most 1000, but was " + turns);
    }
    // Fails here rather than later if radius, width or angle cannot make a piece.
    new AnnularSector(radius, width, segment).outline();
  }

  /** Number of whole segments. */
  public int wholeSegments() {
    return (int) Math.floor((turns * 360 + NEGLIGIBLE_DEGREES) / segment.degrees());
  }

  /** What is left after the whole segments, in degrees; 0 if the turns divide evenly. */
  public double remainderDegrees() {
    double rest = turns * 360 - wholeSegments() * segment.degrees();
    return rest > NEGLIGIBLE_DEGREES ? rest : 0;
  }

  /** The pieces wanted: the whole segments, then the shorter last piece if there is one. */
  public List<Demand> demands() {
    List<Demand> demands = new ArrayList<>();
    int whole = wholeSegments();
    if (whole > 0) {
      demands.add(new Demand(piece("S", "segment of " + segment, segment), whole));
    }
    double rest = remainderDegrees();
    if (rest > 0) {
      Angle last = Angle.ofDegrees(rest);
      demands.add(new Demand(piece("L", "last piece of " + last, last), 1));
    }
    return demands;
  }

  private Piece piece(String id, String name, Angle sweep) {
    return Piece.of(id, name, new AnnularSector(radius, width, sweep));
  }
}
