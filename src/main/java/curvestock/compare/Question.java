package curvestock.compare;

import curvestock.units.Angle;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * What to compare.
 *
 * @param angles segment angles, each at least 1° and at most 360°, at most 24; none means the usual
 *     fractions of a turn and the job's own
 * @param scan whether to look at all angles in between too, for the one that suits the sheet best
 * @param sheetsOnHand how many sheets the user has, if he asks how far they reach, the remnants
 *     that the job lists as on hand besides; may be 0 then
 * @param mixed whether to try plans of large and small segments together
 * @param changes whether to try what small changes of the size recommended would do
 */
public record Question(
    List<Angle> angles, boolean scan, OptionalInt sheetsOnHand, boolean mixed, boolean changes) {

  /** Halves, thirds, quarters, fifths, sixths and eighths of a turn. */
  public static final List<Angle> USUAL =
      Stream.of(2, 3, 4, 5, 6, 8).map(n -> Angle.ofDegrees(360.0 / n)).toList();

  /** The usual fractions and the job's own, without a scan. */
  public static final Question PLAIN = new Question(List.of(), false, OptionalInt.empty());

  private static final int MOST_ANGLES = 24;

  /**
   * @throws IllegalArgumentException if there are too many angles, one is out of range, or the
   *     sheets on hand are fewer than none
   */
  public Question {
    angles = angles.stream().distinct().toList();
    if (angles.size() > MOST_ANGLES) {
      throw new IllegalArgumentException(
          "segment angles must be at most " + MOST_ANGLES + ", but were " + angles.size());
    }
    for (Angle angle : angles) {
      if (!(angle.degrees() >= 1 && angle.degrees() <= 360)) {
        throw new IllegalArgumentException(
            "segment angle must be from 1° to 360°, but was " + angle);
      }
    }
    if (sheetsOnHand.isPresent() && sheetsOnHand.getAsInt() < 0) {
      throw new IllegalArgumentException(
          "sheets on hand must not be negative, but was " + sheetsOnHand.getAsInt());
    }
  }

  /** Small changes are tried too. */
  public Question(List<Angle> angles, boolean scan, OptionalInt sheetsOnHand, boolean mixed) {
    this(angles, scan, sheetsOnHand, mixed, true);
  }

  /** Mixed plans and small changes are tried too. */
  public Question(List<Angle> angles, boolean scan, OptionalInt sheetsOnHand) {
    this(angles, scan, sheetsOnHand, true);
  }

  /** The same, for an answer that has no room for what small changes would do. */
  public Question withoutChanges() {
    return new Question(angles, scan, sheetsOnHand, mixed, false);
  }
}
