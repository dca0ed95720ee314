package curvestock.purchase.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;

/**
 * Complete choices to start from. Which price tier each product is bought in, or that it is not
 * bought, is decided first: every such combination gives one linear programme with true prices. The
 * cheapest programmes are rounded, as long as they promise less money than what is found: once by
 * the largest fractions, then at random, and again and again with a random part of the best choice
 * kept.
 */
final class StartingChoices {

  /** Once there are so many, the products that follow have one option each. */
  private static final int MOST_COMBINATIONS = 400;

  /** Random roundings turn among this many of the cheapest programmes. */
  private static final int SPREAD = 3;

  private record Promise(LinearStart start, double money) {}

  private final Choice choice;
  private final Random random;
  private final long most;
  private final List<int[]> found = new ArrayList<>();
  private int[] best;
  private Levels bestLevels;
  private Promise bestPromise;

  /**
   * @param most roundings to try in each of three ways
   */
  StartingChoices(Choice choice, long seed, long most) {
    this.choice = choice;
    this.random = new Random(seed);
    this.most = most;
  }

  /** All starts found, the greedy one first. */
  List<int[]> all() {
    best = new Greed(choice).uses();
    bestLevels = choice.levels(best);
    found.add(best);
    List<Promise> promises = promises();
    if (!promises.isEmpty()) {
      bestPromise = promises.get(0);
      promises.stream().limit(most).forEach(promise -> round(promise, LinearStart::uses));
      for (int n = 0; n < most; n++) {
        round(promises.get(Math.min(promises.size() - 1, n % SPREAD)), start -> start.uses(random));
        int[] kept = part(best);
        round(bestPromise, start -> start.uses(kept, random));
      }
    }
    return found;
  }

  /** Rounds, unless the programme promises no less money than what is found. */
  private void round(Promise promise, Function<LinearStart, Optional<int[]>> rounding) {
    if (bestLevels.missing() == 0 && promise.money() >= bestLevels.money() + 0.5) {
      return;
    }
    Optional<int[]> uses = rounding.apply(promise.start());
    if (uses.isPresent()) {
      found.add(uses.get());
      Levels levels = choice.levels(uses.get());
      if (levels.compareTo(bestLevels) < 0) {
        best = uses.get();
        bestLevels = levels;
        bestPromise = promise;
      }
    }
  }

  /** Some of the sheets of a choice, each with the same random chance. */
  private int[] part(int[] uses) {
    double chance = random.nextDouble();
    int[] kept = new int[uses.length];
    for (int j = 0; j < kept.length; j++) {
      for (int n = 0; n < uses[j]; n++) {
        kept[j] += random.nextDouble() < chance ? 1 : 0;
      }
    }
    return kept;
  }

  private List<Promise> promises() {
    List<Promise> promises = new ArrayList<>();
    for (int[] tiers : combinations()) {
      LinearStart start = new LinearStart(choice, tiers);
      start.relaxedMoney().ifPresent(money -> promises.add(new Promise(start, money)));
    }
    promises.sort(Comparator.comparingDouble(Promise::money));
    return promises;
  }

  /** For each product its tier, or {@link LinearStart#NOT_BOUGHT}. */
  private List<int[]> combinations() {
    List<int[]> combinations = new ArrayList<>();
    combinations.add(new int[0]);
    for (int p = 0; p < choice.products(); p++) {
      List<Integer> options = options(p);
      if ((long) combinations.size() * options.size() > MOST_COMBINATIONS) {
        options = options.subList(options.size() - 1, options.size());
      }
      List<int[]> longer = new ArrayList<>();
      for (int[] combination : combinations) {
        for (int option : options) {
          int[] next = Arrays.copyOf(combination, p + 1);
          next[p] = option;
          longer.add(next);
        }
      }
      combinations = longer;
    }
    return combinations;
  }

  /** The option that allows to buy none comes last. */
  private List<Integer> options(int product) {
    List<Tier> tiers = choice.tiers.get(product);
    List<Integer> options = new ArrayList<>();
    for (int t = tiers.size() - 1; t >= 0; t--) {
      options.add(t);
    }
    if (tiers.isEmpty() || tiers.get(0).from() > 1) {
      options.add(LinearStart.NOT_BOUGHT);
    }
    return options;
  }
}
