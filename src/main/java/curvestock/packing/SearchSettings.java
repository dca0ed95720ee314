package curvestock.packing;

/** What makes a search repeatable: the seed of its random choices and its budget. */
public record SearchSettings(long seed, Effort effort) {

  public static final SearchSettings DEFAULT = new SearchSettings(1, Effort.NORMAL);
}
