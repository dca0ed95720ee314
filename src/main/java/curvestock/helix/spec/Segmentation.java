package curvestock.helix.spec;

import curvestock.units.Angle;
import java.util.Optional;

/**
 * Into which pieces the ring is cut.
 *
 * <p>On an oval the segment must divide a half turn, and each straight is one piece.
 *
 * @param segment swept angle of a whole piece
 * @param starter swept angle of the first piece, if another, so that joints are staggered
 * @param lower the lowest pieces, if of another angle; then {@code segment} holds above them
 */
public record Segmentation(Angle segment, Optional<Angle> starter, Optional<SegmentRun> lower) {

  private static final double LEAST_DEGREES = 5;

  /** Beyond this a piece with a straight lead-in would run into its own other end. */
  private static final double MOST_DEGREES = 300;

  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if an angle is not 5° to 300°, the starter is longer than the
   *     segment, or both a starter and lower pieces are given
   */
  public Segmentation {
    requireRange("segment angle", segment);
    starter.ifPresent(angle -> requireRange("starter angle", angle));
    if (starter.isPresent() && starter.get().compareTo(segment) > 0) {
      throw new IllegalArgumentException(
          "starter angle must be at most the segment angle ("
              + segment
              + "), but was "
              + starter.get());
    }
    lower.ifPresent(run -> requireRange("angle of the lower segments", run.segment()));
    if (lower.isPresent() && starter.isPresent()) {
      throw new IllegalArgumentException(
          "a starter and lower segments cannot both be given: the lower segments begin the ring");
    }
  }

  /** Segments of one angle throughout, but perhaps for the first. */
  public Segmentation(Angle segment, Optional<Angle> starter) {
    this(segment, starter, Optional.empty());
  }

  private static void requireRange(String what, Angle angle) {
    if (!(angle.degrees() >= LEAST_DEGREES && angle.degrees() <= MOST_DEGREES)) {
      throw new IllegalArgumentException(what + " must be 5° to 300°, but was " + angle);
    }
  }

  public static Segmentation of(Angle segment) {
    return new Segmentation(segment, Optional.empty());
  }

  /** The first piece's angle. */
  public Angle first() {
    return starter.or(() -> lower.map(SegmentRun::segment)).orElse(segment);
  }
}
