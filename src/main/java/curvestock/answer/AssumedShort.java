package curvestock.answer;

import curvestock.helix.HelixOrder;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.VerdictWords;
import curvestock.units.Length;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Assumed lengths at the ends that pass no check of their own, because nothing does that the job
 * leaves open.
 */
final class AssumedShort {

  private AssumedShort() {}

  /** What was taken and what is usual, in a sentence; empty if all of them pass. */
  static String words(HelixOrder order, Figures figures) {
    List<Verdict> shortOf = order.shortEnds();
    if (shortOf.isEmpty()) {
      return "";
    }
    String all =
        shortOf.stream().map(verdict -> taken(verdict, figures)).collect(Collectors.joining("; "));
    return "At this rise per turn no assumed lengths pass every check. Taken instead: %s. %s"
        .formatted(all, change(order, figures));
  }

  private static String change(HelixOrder order, Figures figures) {
    return order
        .withRiseForEnds()
        .map(
            more ->
                "With a rise of %s per turn (grade %s) they would pass; lengths of your own can also change that."
                    .formatted(
                        figures.given(more.climb().risePerTurn()), more.trackGrades().get(0)))
        .orElse("More rise per turn, or lengths of your own, can change that.");
  }

  private static String taken(Verdict verdict, Figures figures) {
    String has = figures.length((Length) verdict.measured().orElseThrow());
    String usual = figures.length((Length) verdict.needed().orElseThrow());
    return switch (verdict.rule()) {
      case VERTICAL_CURVE ->
          "%s %s, where %s is typical".formatted(VerdictWords.title(verdict), has, usual);
      case LEAD ->
          "%s %s, though the slope changes for %s beyond the ring"
              .formatted(VerdictWords.title(verdict), has, usual);
      default ->
          "%s: %s"
              .formatted(
                  VerdictWords.title(verdict), new VerdictWords(figures.style()).finding(verdict));
    };
  }
}
