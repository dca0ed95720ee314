package curvestock.compare;

import curvestock.job.Job;
import curvestock.job.JobReader;

/** Small invented jobs that compare in a few seconds. */
public final class TestJobs {

  private TestJobs() {}

  private static final String SMALL =
      """
      curvestock: 1
      title: Small job
      invented: true
      units: in
      currency: $
      sheets:
        - {name: panel, size: 4x4 ft, thickness: 1/2, price: 40}
      cutting: {kerf: 1/8, margin: 1/4}
      helix: {turns: 2 1/2, radius: 20, width: 4, segments-per-turn: 4}
      search: {seed: 1, effort: quick}
      """;

  /** Two and a half turns from half sheets, without rates. */
  public static Job small() {
    return JobReader.read(SMALL, "small.yaml");
  }

  /** The same with more lines at the end of the file. */
  public static Job smallWith(String lines) {
    return JobReader.read(SMALL + lines, "small.yaml");
  }

  /** The same with texts replaced by others, in pairs. */
  public static Job small(String... pairs) {
    String text = SMALL;
    for (int i = 0; i < pairs.length; i += 2) {
      if (!text.contains(pairs[i])) {
        throw new IllegalArgumentException("the small job does not hold " + pairs[i]);
      }
      text = text.replace(pairs[i], pairs[i + 1]);
    }
    return JobReader.read(text, "small.yaml");
  }

  /** Stops as Ctrl-C would, once all is planned and before changes are tried. */
  public static CompareListener untilPlanned() {
    return new CompareListener() {
      private boolean planned;

      @Override
      public void step(String what) {
        planned |= what.endsWith("trying small changes");
      }

      @Override
      public boolean stopped() {
        return planned;
      }
    };
  }
}
