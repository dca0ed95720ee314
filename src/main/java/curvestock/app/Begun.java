package curvestock.app;

import curvestock.files.ResultFolder;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/**
 * Files that are being made on a thread of their own while something else is searched. So less is
 * left to write when a search is stopped, and what is left is written by code that has run before.
 */
public final class Begun {

  private final CompletableFuture<ResultFolder> making;

  private Begun(CompletableFuture<ResultFolder> making) {
    this.making = making;
  }

  /**
   * Begins.
   *
   * @param name of the thread
   */
  static Begun of(String name, Supplier<ResultFolder> files) {
    return new Begun(
        CompletableFuture.supplyAsync(
            () -> {
              ResultFolder folder = files.get();
              folder.contents();
              return folder;
            },
            making -> {
              Thread thread = new Thread(making, name);
              thread.setDaemon(true);
              thread.start();
            }));
  }

  /** All of them; waits for the last, and passes on what went wrong. */
  ResultFolder whole() {
    try {
      return making.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw e;
    }
  }
}
