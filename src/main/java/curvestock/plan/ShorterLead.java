package curvestock.plan;

import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.job.Job;
import curvestock.piece.Piece;
import curvestock.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * The longest straight that an end piece of the helix may carry and still fit a sheet, where it is
 * the straight that makes it too large. Every length told was planned and laid on a sheet.
 *
 * @param entry whether at the entry; else at the exit
 * @param then the straight in one with the end piece
 * @param rest what is to be joined on
 * @param works whether the helix passes its rules with that
 */
record ShorterLead(boolean entry, Length then, Length rest, boolean works) {

  /** Lengths tried, as parts of the straight. */
  private static final int STEPS = 16;

  /** For a piece of the job that fits no sheet; empty if another straight does not help. */
  static Optional<ShorterLead> of(Job job, Piece tooLarge) {
    if (job.structure().isEmpty()) {
      return Optional.empty();
    }
    HelixPlan plan = job.structure().get().plan();
    if (end(plan, true).equals(tooLarge.id())) {
      return at(job, plan.spec(), true);
    }
    return end(plan, false).equals(tooLarge.id()) ? at(job, plan.spec(), false) : Optional.empty();
  }

  /** Id of the kind that the first piece of the ring is, or the last. */
  private static String end(HelixPlan plan, boolean entry) {
    List<BedPiece> pieces = plan.roadbed().pieces();
    return pieces.get(entry ? 0 : pieces.size() - 1).kindId();
  }

  private static Optional<ShorterLead> at(Job job, HelixSpec spec, boolean entry) {
    Length now = (entry ? spec.bottom() : spec.top()).leadIn();
    Length step = job.style().unit().isImperial() ? Length.ofInches(1) : Length.ofMillimetres(10);
    Length tried = Length.ofMillimetres(-1);
    for (int k = STEPS - 1; k >= 0; k--) {
      double steps = Math.floor(now.millimetres() * k / STEPS / step.millimetres());
      Length then = step.times(steps);
      if (!then.equals(tried) && then.compareTo(now) < 0) {
        Optional<HelixPlan> plan = planned(job, spec, entry, then);
        if (plan.isPresent() && fits(job, plan.get(), entry)) {
          return Optional.of(new ShorterLead(entry, then, now.minus(then), plan.get().works()));
        }
      }
      tried = then;
    }
    return Optional.empty();
  }

  private static Optional<HelixPlan> planned(
      Job job, HelixSpec spec, boolean entry, Length leadIn) {
    try {
      EndPlan bottom = entry ? spec.bottom().withLeadIn(leadIn) : spec.bottom();
      EndPlan top = entry ? spec.top() : spec.top().withLeadIn(leadIn);
      return Optional.of(HelixPlan.of(spec.with(bottom, top), job.style()));
    } catch (IllegalArgumentException impossible) {
      return Optional.empty();
    }
  }

  /** Whether the end piece, the first or the last of the ring, lies on one of the sheets. */
  private static boolean fits(Job job, HelixPlan plan, boolean entry) {
    String id = end(plan, entry);
    Piece piece =
        plan.roadbed().kinds().stream()
            .filter(kind -> kind.id().equals(id))
            .findFirst()
            .orElseThrow()
            .blankDemand()
            .piece();
    return FinerCut.fits(job, piece);
  }
}
