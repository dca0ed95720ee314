package curvestock.helix;

import java.util.Optional;
import java.util.function.IntFunction;

/**
 * The fewest steps at which an attempt succeeds, if more steps never make it worse, and what it
 * gave there.
 */
record FewestSteps<T>(int steps, T found) {

  /**
   * Twice as many steps again and again until that is enough, then halved back.
   *
   * @param most from so many on no more are tried
   */
  static <T> Optional<FewestSteps<T>> of(IntFunction<Optional<T>> attempt, int most) {
    int enough = 1;
    Optional<T> tried = attempt.apply(enough);
    while (enough < most && tried.isEmpty()) {
      enough *= 2;
      tried = attempt.apply(enough);
    }
    int reached = enough;
    return tried.map(found -> new FewestSteps<>(reached, found).above(reached / 2, attempt));
  }

  /** The fewest that succeed, between so many that do not and these, by halving. */
  FewestSteps<T> above(int tooFew, IntFunction<Optional<T>> attempt) {
    int low = tooFew;
    FewestSteps<T> best = this;
    while (best.steps - low > 1) {
      int middle = (low + best.steps) / 2;
      Optional<T> tried = attempt.apply(middle);
      if (tried.isPresent()) {
        best = new FewestSteps<>(middle, tried.get());
      } else {
        low = middle;
      }
    }
    return best;
  }
}
