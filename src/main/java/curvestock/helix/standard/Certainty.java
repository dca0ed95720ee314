package curvestock.helix.standard;

import java.util.Locale;

/** How sure a figure is. */
public enum Certainty {
  /** Read in a copy of the named source. */
  READ,
  /** Read in a page that repeats the source. */
  AS_QUOTED_ELSEWHERE,
  /** Computed from a formula, and recomputed independently. */
  DERIVED,
  /** Common practice, no source. */
  PRACTICE,
  /** Unverified: not to be printed as fact. */
  MEMORY;

  /** Whether a figure of this certainty may be printed. */
  public boolean isPrintable() {
    return this != MEMORY;
  }

  /**
   * Of a tag as it stands in the tables, for example {@code as quoted elsewhere}.
   *
   * @throws IllegalArgumentException if no certainty has this tag
   */
  static Certainty ofTag(String tag) {
    return valueOf(tag.toUpperCase(Locale.ROOT).replace(' ', '_'));
  }
}
