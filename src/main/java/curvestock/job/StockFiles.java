package curvestock.job;

import java.util.Optional;

/** Where the text of a job's {@code stock-file:} comes from; reading a job opens no file itself. */
public interface StockFiles {

  /** For jobs that are no file, such as a text pasted into a page. */
  StockFiles NONE =
      path ->
          Found.problem(
              "can only be read for a job that is itself a file; paste its entries under `sheets:`");

  /**
   * A text, or why there is none.
   *
   * @param problem a clause about the field, empty if the text was found
   */
  record Found(Optional<String> text, String problem) {

    public static Found text(String text) {
      return new Found(Optional.of(text), "");
    }

    public static Found problem(String problem) {
      return new Found(Optional.empty(), problem);
    }
  }

  /**
   * The text of the file.
   *
   * @param path as the job gives it
   */
  Found find(String path);
}
