package curvestock.answer;

import curvestock.compare.Division;
import curvestock.units.Angle;

/** What people call a segment: {@code quarters (90°)}, or by its angle alone. */
public final class SegmentName {

  private static final String[] FRACTIONS = {
    "whole rings",
    "halves",
    "thirds",
    "quarters",
    "fifths",
    "sixths",
    "sevenths",
    "eighths",
    "ninths",
    "tenths",
    "elevenths",
    "twelfths"
  };

  private SegmentName() {}

  /** For a sentence: {@code 17 quarters (90°) at the bottom and sixths (60°) above them}. */
  public static String plural(Division division) {
    return division
        .lower()
        .map(
            run ->
                run.count()
                    + " "
                    + plural(run.segment())
                    + " at the bottom and "
                    + plural(division.segment())
                    + " above them")
        .orElse(plural(division.segment()));
  }

  /** For a table: {@code 17 x 1/4 + 1/6}. */
  public static String brief(Division division) {
    return division.isMixed() ? tick(division) : brief(division.segment());
  }

  /** For a chart's axis. */
  public static String tick(Division division) {
    return division
        .lower()
        .map(run -> run.count() + " x " + tick(run.segment()) + " + " + tick(division.segment()))
        .orElse(tick(division.segment()));
  }

  /** For a sentence. */
  public static String plural(Angle angle) {
    int parts = parts(angle);
    return parts > 0 && parts <= FRACTIONS.length
        ? FRACTIONS[parts - 1] + " (" + angle + ")"
        : "segments of " + angle;
  }

  /** For a table or a chart. */
  public static String brief(Angle angle) {
    int parts = parts(angle);
    return parts > 1 ? "1/" + parts + " (" + angle + ")" : angle.toString();
  }

  /** For a chart's axis: the fraction alone where there is one. */
  public static String tick(Angle angle) {
    int parts = parts(angle);
    return parts > 1 ? "1/" + parts : angle.toString();
  }

  /** How many make a turn; 0 if they do not. */
  private static int parts(Angle angle) {
    double parts = 360 / angle.degrees();
    return Math.abs(parts - Math.rint(parts)) < 1e-6 ? (int) Math.rint(parts) : 0;
  }
}
