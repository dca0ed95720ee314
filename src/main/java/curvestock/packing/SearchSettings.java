package curvestock.packing;

/** What makes a search repeatable: the seed of its random choices and its budget. */
public record SearchSettings(long seed, Effort effort) {

  /** Seed 1, normal effort. */
  public static final SearchSettings DEFAULT = new SearchSettings(1, Effort.NORMAL);

  /** The same seed at another effort. */
  public SearchSettings at(Effort other) {
    return new SearchSettings(seed, other);
  }
}
