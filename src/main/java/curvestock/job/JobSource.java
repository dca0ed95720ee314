package curvestock.job;

import java.util.Optional;

/**
 * The text that a job was read from, so that a result can carry it.
 *
 * @param text of the job file, as its owner wrote it
 * @param stock the text of its {@code stock-file:}, if it names one
 * @param translated how a key of an older format was read, in a sentence or two
 */
public record JobSource(String text, Optional<String> stock, Optional<String> translated) {

  /**
   * The job once more.
   *
   * @param name what to call the text in messages
   * @throws JobException if it is not a right job; holds all problems
   */
  public Job read(String name) {
    return JobReader.read(
        text,
        name,
        path ->
            stock
                .map(StockFiles.Found::text)
                .orElseGet(() -> StockFiles.Found.problem("is not kept with the plan")));
  }
}
