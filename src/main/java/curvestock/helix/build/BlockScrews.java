package curvestock.helix.build;

import curvestock.units.Length;

/**
 * The screw that holds a riser block to the roadbed on it. Its size is a rule of thumb, as no job
 * names one: common practice, no source.
 */
public final class BlockScrews {

  /** What the thread of a screw must not come out of; our own choice. */
  public static final Length SKIN = Length.ofMillimetres(3);

  private BlockScrews() {}

  /** As asked for in a shop, in inches or metric. */
  public static String name(boolean inches) {
    return inches ? "No. 8 × 1 1/2 in" : "4 × 40 mm";
  }

  /** From the head's flat side to the point. */
  public static Length length(boolean inches) {
    return inches ? Length.ofInches(1.5) : Length.ofMillimetres(40);
  }
}
