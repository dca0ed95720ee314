package curvestock.compare;

import curvestock.units.Money;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The choice to take: of those whose pieces can be carried the cheapest, then the one with fewest
 * joints, then fewest sheets, then the most wood kept, then the largest piece.
 *
 * @param best the division recommended
 * @param reason what decided
 * @param joint what one joint is taken to cost
 * @param dearerJoints the choice with fewer joints that wins first as a joint costs more
 * @param cheaperJoints the choice with more joints that wins first as a joint costs less
 * @param dearerSheets the choice that wins first as sheets cost more
 * @param cheaperSheets the choice that wins first as sheets cost less
 */
public record Recommendation(
    Division best,
    Reason reason,
    JointPrice joint,
    Optional<Swing> dearerJoints,
    Optional<Swing> cheaperJoints,
    Optional<PriceSwing> dearerSheets,
    Optional<PriceSwing> cheaperSheets) {

  /** What decided between the best choice and the next. */
  public enum Reason {
    ONLY_CHOICE,
    CHEAPEST,
    FEWEST_JOINTS,
    FEWEST_SHEETS,
    LARGEST_OFFCUTS,
    LARGEST_PIECES,
    /** No choice can be carried; the cheapest is shown all the same. */
    NOT_CARRIED
  }

  /**
   * At this price of sheets, as a multiple of today's, both choices cost the same, a joint costing
   * what it does today.
   */
  public record PriceSwing(Division division, double factor) {}

  /** At this price of one joint, in all that it costs, both choices cost the same. */
  public record Swing(Division division, Money eachJoint) {}

  /** The best of the choices; at least one. */
  static Recommendation among(List<Standing> choices, JointPrice joint) {
    Money eachJoint = joint.each();
    List<Standing> ranked = choices.stream().sorted(order(eachJoint)).toList();
    Standing best = ranked.get(0);
    Reason reason =
        !best.carried()
            ? Reason.NOT_CARRIED
            : ranked.size() == 1 || !ranked.get(1).carried()
                ? Reason.ONLY_CHOICE
                : reason(best, ranked.get(1), eachJoint);
    return new Recommendation(
        best.division(),
        reason,
        joint,
        swing(best, ranked, eachJoint, true),
        swing(best, ranked, eachJoint, false),
        priceSwing(best, ranked, eachJoint, true),
        priceSwing(best, ranked, eachJoint, false));
  }

  /** The first other choice to overtake the best one as sheets become dearer or cheaper. */
  private static Optional<PriceSwing> priceSwing(
      Standing best, List<Standing> choices, Money eachJoint, boolean rising) {
    return choices.stream()
        .filter(other -> other.carried() == best.carried())
        .filter(other -> rising == (other.sheetCost().compareTo(best.sheetCost()) < 0))
        .filter(other -> !other.sheetCost().equals(best.sheetCost()))
        .map(other -> new PriceSwing(other.division(), evenFactor(best, other, eachJoint)))
        .filter(swing -> rising ? swing.factor() >= 1 : swing.factor() > 0 && swing.factor() <= 1)
        .min(
            rising
                ? Comparator.comparingDouble(PriceSwing::factor)
                : Comparator.comparingDouble(PriceSwing::factor).reversed());
  }

  private static double evenFactor(Standing best, Standing other, Money eachJoint) {
    double work = (double) other.work(eachJoint).minorUnits() - best.work(eachJoint).minorUnits();
    return work / (best.sheetCost().minorUnits() - other.sheetCost().minorUnits());
  }

  static Comparator<Standing> order(Money eachJoint) {
    return Comparator.comparing((Standing choice) -> !choice.carried())
        .thenComparing(choice -> !choice.certain())
        .thenComparing(choice -> choice.total(eachJoint))
        .thenComparing(Standing::joints)
        .thenComparing(Standing::sheets)
        .thenComparing(Standing::offcuts, Comparator.reverseOrder())
        .thenComparing(choice -> choice.division().largest(), Comparator.reverseOrder());
  }

  private static Reason reason(Standing best, Standing next, Money eachJoint) {
    if (!next.certain() && best.certain()) {
      return Reason.ONLY_CHOICE;
    }
    if (best.total(eachJoint).compareTo(next.total(eachJoint)) < 0) {
      return Reason.CHEAPEST;
    }
    if (best.joints() < next.joints()) {
      return Reason.FEWEST_JOINTS;
    }
    if (best.sheets() < next.sheets()) {
      return Reason.FEWEST_SHEETS;
    }
    return best.offcuts() > next.offcuts() ? Reason.LARGEST_OFFCUTS : Reason.LARGEST_PIECES;
  }

  /**
   * The first other choice to overtake the best one as the price of a joint rises or falls from
   * {@code eachJoint}; prices are rounded up when rising and down when falling, so that beyond them
   * the other choice is surely no dearer.
   */
  private static Optional<Swing> swing(
      Standing best, List<Standing> choices, Money eachJoint, boolean rising) {
    return choices.stream()
        .filter(other -> other.carried() == best.carried())
        .filter(other -> rising ? other.joints() < best.joints() : other.joints() > best.joints())
        .map(other -> new Swing(other.division(), even(best, other, rising)))
        .filter(
            swing ->
                rising
                    ? swing.eachJoint().compareTo(eachJoint) >= 0
                    : swing.eachJoint().compareTo(Money.ZERO) > 0
                        && swing.eachJoint().compareTo(eachJoint) <= 0)
        .min(
            rising
                ? Comparator.comparing(Swing::eachJoint)
                : Comparator.comparing(Swing::eachJoint).reversed());
  }

  private static Money even(Standing best, Standing other, boolean rising) {
    long money = other.withoutJoints().minorUnits() - best.withoutJoints().minorUnits();
    long joints = (long) best.joints() - other.joints();
    return new Money(rising ? -Math.floorDiv(-money, joints) : Math.floorDiv(-money, -joints));
  }
}
