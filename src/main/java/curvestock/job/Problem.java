package curvestock.job;

/**
 * One thing that is wrong in a job file.
 *
 * @param file name of the file as the user gave it
 * @param line line counted from 1
 * @param column column counted from 1
 * @param path the field, for example {@code sheets[2].price}; empty for the file as a whole
 * @param message the value given, what is allowed, and how to mend it
 */
public record Problem(String file, int line, int column, String path, String message) {

  /** One line for the user: {@code helix.yaml:12:11: helix.radius: "28" has no unit; ...}. */
  @Override
  public String toString() {
    String place = file + ":" + line + ":" + column + ": ";
    return place + (path.isEmpty() ? "" : path + ": ") + message;
  }
}
