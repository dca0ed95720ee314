package curvestock.helix.verdict;

/** Where a rule applies, of those that apply in several places. */
public enum Place {
  ENTRY("entry", "at the entry"),
  EXIT("exit", "at the exit"),
  INNER_TRACK("inner-track", "on the inner track"),
  OUTER_TRACK("outer-track", "on the outer track"),
  INSIDE("inside", "inside the curve"),
  OUTSIDE("outside", "outside the curve"),
  OPEN("open", "between turns"),
  UNDER_PLATE("under-plate", "under a splice plate"),
  UNDER_PLATE_NEAR_END("under-plate-near-end", "under the splice plates near entry and exit"),
  UNDER_BATTEN("under-batten", "under the battens that bridge a gap"),
  UNDER_CROSS_PIECE("under-cross-piece", "under a cross piece"),
  UNDER_PLATE_ON_CROSS_PIECE("under-plate-on-cross-piece", "under a splice plate on a cross piece");

  private final String key;
  private final String words;

  Place(String key, String words) {
    this.key = key;
    this.words = words;
  }

  /** Stable name for data. */
  public String key() {
    return key;
  }

  /** To follow a rule's title. */
  public String words() {
    return words;
  }
}
