package curvestock;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/**
 * Debian's Chromium without a window. Where it is not installed the browser tests are skipped and
 * say so, unless the environment variable {@value #REQUIRED} is "required".
 */
public final class DebianChromium {

  static final String REQUIRED = "CURVESTOCK_BROWSER";

  private static final Path BROWSER = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  private DebianChromium() {}

  /**
   * Starts it.
   *
   * @param profile a folder of its own, still to be made
   * @param more what the tests want besides
   */
  public static ChromeDriver start(Path profile, Consumer<ChromeOptions> more) {
    boolean there = Files.isExecutable(BROWSER) && Files.isExecutable(DRIVER);
    if ("required".equals(System.getenv(REQUIRED))) {
      assertThat(there).as("%s and %s are installed", BROWSER, DRIVER).isTrue();
    }
    Assumptions.assumeTrue(
        there, "no browser tests: install Debian's chromium and chromium-driver to run them");
    ChromeOptions options = new ChromeOptions();
    options.setBinary(BROWSER.toFile());
    options.addArguments(
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--user-data-dir=" + profile);
    more.accept(options);
    // With the driver named, Selenium looks for none and downloads none.
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(DRIVER.toFile())
            .usingAnyFreePort()
            .build();
    return new ChromeDriver(service, options);
  }
}
