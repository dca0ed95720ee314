package curvestock.cli;

import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Folders named on the command line. */
final class Folders {

  private Folders() {}

  /**
   * The folder.
   *
   * @throws ParameterException if its name is empty
   */
  static Path named(Path folder, CommandLine line) {
    if (folder.toString().isBlank()) {
      throw new ParameterException(line, "--out must name a folder, but was empty");
    }
    return folder;
  }
}
