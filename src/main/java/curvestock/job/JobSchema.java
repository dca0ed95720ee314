package curvestock.job;

/** The JSON Schema (draft 2020-12) of job files, for editors and for other programs. */
public final class JobSchema {

  /** What the schema is called when it is written out. */
  public static final String FILE_NAME = "job.schema.json";

  private JobSchema() {}

  /**
   * The schema. It refuses what can be told from the form alone; sums, crossings and whether a bare
   * number has a unit are the reader's business, so a file that it allows may still hold problems.
   */
  public static String text() {
    return Resource.text(FILE_NAME);
  }
}
