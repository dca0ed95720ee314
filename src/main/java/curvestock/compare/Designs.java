package curvestock.compare;

import curvestock.job.Job;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Optional;

/** The helix of a job in any division: a plain ring, or a whole helix with all that hangs on it. */
interface Designs {

  /**
   * The helix of the job.
   *
   * @throws IllegalArgumentException if it has none
   */
  static Designs of(Job job) {
    if (job.structure().isPresent()) {
      return new HelixDesigns(job, job.structure().get());
    }
    return new RingDesigns(
        job,
        job.helix()
            .orElseThrow(() -> new IllegalArgumentException("a comparison must have a helix")));
  }

  /** The job with its sheets and its way of cutting. */
  Job job();

  /** As the job says. */
  Division own();

  double turns();

  /** Whether no rule of the helix fails. */
  default boolean works() {
    return true;
  }

  /** Layers of plywood on each other. */
  int layers();

  /** Known price of the plates and screws that are bought for one joint. */
  Money boughtPerJoint();

  /**
   * The helix so divided.
   *
   * @throws IllegalArgumentException if it cannot be divided so; the message says why
   */
  Design in(Division division);

  /**
   * A whole segment of this angle by itself, as it is cut.
   *
   * @throws IllegalArgumentException if there cannot be one
   */
  Piece segment(Angle angle);

  /** The same helix from other sheets, cut another way. */
  Designs on(Job other);

  /** The same helix with so many turns more. */
  Designs longerBy(double turns);

  /**
   * The same helix with another radius and width.
   *
   * @throws IllegalArgumentException if there cannot be one
   */
  Designs resized(Length radiusMore, Length widthMore);

  /** The same helix with or without ears for its rods; nothing where it has no rods. */
  Optional<Designs> withEars(boolean ears);

  /** The sheet that can be had in any number; the first one if none can. */
  default SheetStock mainSheet() {
    return job().sheets().stream()
        .filter(sheet -> sheet.available().isEmpty())
        .findFirst()
        .orElse(job().sheets().get(0));
  }
}
