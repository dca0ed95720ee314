package curvestock.compare;

import curvestock.helix.spec.Riser;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Optional;

/**
 * What ears for the rods cost in sheets, all else alike.
 *
 * @param inJob whether the job has them
 * @param sheetsWith sheets with ears
 * @param sheetsWithout sheets of roadbed without them, the rods then going through it
 * @param extra how much more the sheets cost with ears than without; below zero if less
 */
public record Ears(boolean inJob, int sheetsWith, int sheetsWithout, Money extra) {

  /** A rod's middle lies at least so far from an edge; common practice, no source. */
  private static final Length LEAST_INSET = Length.ofMillimetres(12);

  private static final double INSET_IN_RODS = 1.5;

  /** Ears of the usual size, the rods outside the roadbed's edge: assumed. */
  static Riser.ThreadedRods added(Riser.ThreadedRods rods) {
    Length inset = inset(rods);
    Riser.Ear ear = new Riser.Ear(rods.washer().times(2), inset.plus(rods.washer()));
    return with(rods, inset.times(-1), Optional.of(ear));
  }

  /** The rods through the roadbed itself. */
  static Riser.ThreadedRods removed(Riser.ThreadedRods rods) {
    boolean inside = rods.inset().compareTo(inset(rods)) >= 0;
    return with(rods, inside ? rods.inset() : inset(rods), Optional.empty());
  }

  private static Length inset(Riser.ThreadedRods rods) {
    Length thick = rods.thread().diameter().times(INSET_IN_RODS);
    return thick.compareTo(LEAST_INSET) > 0 ? thick : LEAST_INSET;
  }

  private static Riser.ThreadedRods with(
      Riser.ThreadedRods rods, Length inset, Optional<Riser.Ear> ear) {
    return rods.at(inset, ear);
  }
}
