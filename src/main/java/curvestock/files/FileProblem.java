package curvestock.files;

import java.nio.file.Path;

/** Something about a file or folder that the user can mend; the message says how. */
public final class FileProblem extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient Path path;

  /**
   * @param path the file or folder concerned
   * @param cause what is wrong with it
   * @param remedy what to do about it
   */
  public FileProblem(Path path, String cause, String remedy) {
    super(path + ": " + cause + ". " + remedy);
    this.path = path;
  }

  /** As above, where an exception of the system lies behind it. */
  public FileProblem(Path path, String cause, String remedy, Throwable behind) {
    super(path + ": " + cause + ". " + remedy, behind);
    this.path = path;
  }

  /** The file or folder concerned. */
  public Path path() {
    return path;
  }
}
