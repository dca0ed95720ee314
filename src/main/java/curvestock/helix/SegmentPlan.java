package curvestock.helix;

import curvestock.helix.spec.SegmentRun;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A helix cut as equal segments laid end to end, the last one shorter where the turns do not
 * divide.
 *
 * @param turns how many times the track goes round; fractions allowed
 * @param radius centre-line radius of the roadbed
 * @param width radial width of the roadbed
 * @param segment swept angle of one segment
 * @param lower the lowest pieces, if of another angle; then {@code segment} holds above them
 */
public record SegmentPlan(
    double turns, Length radius, Length width, Angle segment, Optional<SegmentRun> lower) {

  /** A remainder below a thousandth of a degree is rounding, not a piece. */
  private static final double NEGLIGIBLE_DEGREES = 1e-3;

  private static final double MOST_TURNS = 1000;

  /**
   * @throws IllegalArgumentException if the turns are not above 0 and at most 1000, or the segment
   *     is out of range for an {@link AnnularSector}, or the lower pieces leave nothing above them
   */
  public SegmentPlan {
    if (!(turns > 0 && turns <= MOST_TURNS)) {
      throw new IllegalArgumentException(
          "turns must be above 0 and at most 1000, but was " + turns);
    }
    // Fails here rather than later if radius, width or angle cannot make a piece.
    new AnnularSector(radius, width, segment).outline();
    lower.ifPresent(run -> requireRoom(run, turns));
    lower.ifPresent(run -> new AnnularSector(radius, width, run.segment()).outline());
  }

  /** Segments of one angle throughout. */
  public SegmentPlan(double turns, Length radius, Length width, Angle segment) {
    this(turns, radius, width, segment, Optional.empty());
  }

  private static void requireRoom(SegmentRun lower, double turns) {
    if (lower.degrees() > turns * 360 - NEGLIGIBLE_DEGREES) {
      throw new IllegalArgumentException(
          "lower segments must leave some of the turns to the segments above them, but "
              + lower.count()
              + " of "
              + lower.segment()
              + " were given");
    }
  }

  private double upperDegrees() {
    return turns * 360 - lower.map(SegmentRun::degrees).orElse(0.0);
  }

  /** Number of whole segments, the lower ones of another angle not counted. */
  public int wholeSegments() {
    return (int) Math.floor((upperDegrees() + NEGLIGIBLE_DEGREES) / segment.degrees());
  }

  /** What is left after the whole segments, in degrees; 0 if the turns divide evenly. */
  public double remainderDegrees() {
    double rest = upperDegrees() - wholeSegments() * segment.degrees();
    return rest > NEGLIGIBLE_DEGREES ? rest : 0;
  }

  /** The pieces wanted, from the bottom up: the last one is shorter if the turns ask for that. */
  public List<Demand> demands() {
    List<Demand> demands = new ArrayList<>();
    lower.ifPresent(
        run ->
            demands.add(
                new Demand(piece("S", "segment of " + run.segment(), run.segment()), run.count())));
    int whole = wholeSegments();
    if (whole > 0) {
      String id = lower.isPresent() ? "S2" : "S";
      demands.add(new Demand(piece(id, "segment of " + segment, segment), whole));
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
