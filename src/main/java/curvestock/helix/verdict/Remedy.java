package curvestock.helix.verdict;

import java.util.List;

/**
 * What to change in the job so that a rule is met; all of the changes together.
 *
 * @param changes at least one
 */
public record Remedy(List<Change> changes) {

  /**
   * @throws IllegalArgumentException if there is no change
   */
  public Remedy {
    changes = List.copyOf(changes);
    if (changes.isEmpty()) {
      throw new IllegalArgumentException("a remedy must change something");
    }
  }
}
