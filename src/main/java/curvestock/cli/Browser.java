package curvestock.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** The machine's own browser, if a person sits before it. */
final class Browser {

  private Browser() {}

  /** Whether there is a screen to show a page on. */
  static boolean exists() {
    return isWindows()
        || isMac()
        || isSet(System.getenv("DISPLAY"))
        || isSet(System.getenv("WAYLAND_DISPLAY"));
  }

  /**
   * Opens the page, or does nothing if the machine knows no browser: the address is printed too.
   */
  static void open(String url) {
    List<String> command =
        isWindows()
            ? List.of("rundll32", "url.dll,FileProtocolHandler", url)
            : List.of(isMac() ? "open" : "xdg-open", url);
    try {
      new ProcessBuilder(command)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException e) {
      System.err.println("No browser could be opened; open the address above yourself.");
    }
  }

  private static boolean isSet(String value) {
    return value != null && !value.isBlank();
  }

  private static boolean isWindows() {
    return system().startsWith("windows");
  }

  private static boolean isMac() {
    return system().startsWith("mac");
  }

  private static String system() {
    return System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
  }
}
