package curvestock.answer;

import curvestock.helix.HelixOrder;
import curvestock.helix.verdict.Place;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.helix.verdict.VerdictWords;
import curvestock.units.Length;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Assumed lengths at the ends that pass no check of their own, because nothing does that the job
 * leaves open.
 */
final class AssumedShort {

  private static final Map<Rule, String> KEYS =
      Map.of(
          Rule.VERTICAL_CURVE,
          "vertical-curve",
          Rule.LEAD,
          "lead-in",
          Rule.LEAD_SUPPORTS,
          "lead-in");

  private AssumedShort() {}

  /** What was taken and what is usual, in a sentence; empty if all of them pass. */
  static String words(HelixOrder order, Figures figures) {
    String all =
        order.plan().verdicts().stream()
            .filter(verdict -> verdict.state() != State.OK && isAssumed(order, verdict))
            .map(verdict -> taken(verdict, figures))
            .collect(Collectors.joining("; "));
    return all.isEmpty()
        ? ""
        : "At this rise per turn no assumed lengths pass every check. Taken instead: %s. More rise per turn, or lengths of your own, can change that."
            .formatted(all);
  }

  private static String taken(Verdict verdict, Figures figures) {
    String has = figures.length((Length) verdict.measured().orElseThrow());
    String usual = figures.length((Length) verdict.needed().orElseThrow());
    return switch (verdict.rule()) {
      case VERTICAL_CURVE ->
          "%s %s, where %s is usual".formatted(VerdictWords.title(verdict), has, usual);
      case LEAD ->
          "%s %s, though the slope changes for %s beyond the ring"
              .formatted(VerdictWords.title(verdict), has, usual);
      default ->
          "%s as far apart as %s, where %s is usual"
              .formatted(VerdictWords.title(verdict), has, usual);
    };
  }

  private static boolean isAssumed(HelixOrder order, Verdict verdict) {
    String key = KEYS.get(verdict.rule());
    String end = verdict.place().equals(Optional.of(Place.ENTRY)) ? "bottom." : "top.";
    return key != null && order.assumed().stream().anyMatch(each -> each.field().equals(end + key));
  }
}
