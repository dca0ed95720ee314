package curvestock.answer;

import curvestock.helix.HelixOrder;
import curvestock.job.Job;
import java.util.Optional;

/**
 * What was assumed and passes no check, and what plywood it costs, in sentences. They are worked
 * out when a paper first asks for them, and then kept: to say at which rise the ends would pass is
 * to plan some helixes, and the page, which asks for an answer at every step, does not show it.
 */
final class AssumedCost {

  private final Job job;
  private final HelixOrder order;
  private final Figures figures;

  /** Empty until they are worked out. */
  private Optional<String> words = Optional.empty();

  AssumedCost(Job job, HelixOrder order, Figures figures) {
    this.job = job;
    this.order = order;
    this.figures = figures;
  }

  /** Empty if there is nothing to say. */
  synchronized String words() {
    if (words.isEmpty()) {
      String wood = AssumedWood.of(job, order).map(known -> known.words(figures)).orElse("");
      words =
          Optional.of(
              String.join(
                      " ",
                      AssumedShort.words(order, figures),
                      wood,
                      AssumedWood.bought(order, figures))
                  .replace("  ", " ")
                  .strip());
    }
    return words.get();
  }
}
