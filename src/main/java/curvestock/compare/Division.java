package curvestock.compare;

import curvestock.helix.spec.SegmentRun;
import curvestock.units.Angle;
import java.util.Optional;

/**
 * Into which angles the turns are divided.
 *
 * @param lower the lowest pieces, if of another angle: then the plan is a mixed one
 * @param segment swept angle of all others; the topmost may be shorter
 */
public record Division(Optional<SegmentRun> lower, Angle segment) {

  /** Equal pieces throughout. */
  public static Division of(Angle segment) {
    return new Division(Optional.empty(), segment);
  }

  /** Large pieces below, smaller ones above them. */
  static Division mixed(int count, Angle large, Angle small) {
    return new Division(Optional.of(new SegmentRun(count, large)), small);
  }

  public boolean isMixed() {
    return lower.isPresent();
  }

  /** Whether it is the same, to a millionth of a degree. */
  boolean isLike(Division other) {
    double off = segment.degrees() - other.segment.degrees();
    return lower.equals(other.lower) && Math.abs(off) < 1e-6;
  }

  /** The larger of its angles. */
  public Angle largest() {
    return lower
        .map(SegmentRun::segment)
        .filter(angle -> angle.compareTo(segment) > 0)
        .orElse(segment);
  }
}
