package curvestock.purchase.solver;

import java.util.Comparator;

/**
 * What a choice is judged by, the most important first. Which sheets are bought hangs on the four
 * numbers before the remnant alone, so that two purchases from other layouts name the same sheets.
 *
 * @param missing pieces not covered, and far more for each sheet beyond the stock; zero if valid
 * @param money in minor units
 * @param sheets sheets cut
 * @param wood area of the sheets bought less that of sheets that cost nothing: more is better, as
 *     large sheets are worth more for the same money, and large remnants are worth keeping
 * @param late sum of the sheets' places in the job, so that equal ones are taken as they are listed
 * @param remnant area left on the emptiest panel once all pieces too many that could lie there are
 *     taken off it: more is better, because one large remnant is worth more than scraps
 * @param surplus pieces too many; the fewer, the less there is to leave out
 */
public record Levels(
    long missing, long money, long sheets, long wood, long late, long remnant, long surplus)
    implements Comparable<Levels> {

  private static final Comparator<Levels> BEST_FIRST =
      Comparator.comparingLong(Levels::missing)
          .thenComparingLong(Levels::money)
          .thenComparingLong(Levels::sheets)
          .thenComparing(Comparator.comparingLong(Levels::wood).reversed())
          .thenComparingLong(Levels::late)
          .thenComparing(Comparator.comparingLong(Levels::remnant).reversed())
          .thenComparingLong(Levels::surplus);

  /** Better choices come first. */
  @Override
  public int compareTo(Levels other) {
    return BEST_FIRST.compare(this, other);
  }
}
