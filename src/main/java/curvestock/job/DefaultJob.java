package curvestock.job;

/** The job that is planned if none is given: a helix of our own invention, at invented prices. */
public final class DefaultJob {

  /** What it is called in messages and results; also its name in {@code demo-data}. */
  public static final String FILE_NAME = "default.yaml";

  private DefaultJob() {}

  /** The job file itself, for writing out as a first example. */
  public static String text() {
    return Resource.text(FILE_NAME);
  }

  public static Job read() {
    return JobReader.read(text(), FILE_NAME);
  }
}
