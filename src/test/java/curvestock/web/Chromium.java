package curvestock.web;

import curvestock.DebianChromium;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A page in Debian's Chromium: see {@link DebianChromium}. */
final class Chromium implements AutoCloseable {

  /** For machines that do much else beside. */
  private static final Duration PATIENCE = Duration.ofSeconds(Long.getLong("patience", 120));

  private final ChromeDriver driver;
  private final Path downloads;

  private Chromium(ChromeDriver driver, Path downloads) {
    this.driver = driver;
    this.downloads = downloads;
  }

  /** A browser with a profile of its own below the folder. */
  static Chromium start(Path folder) throws IOException {
    Path downloads = Files.createDirectories(folder.resolve("downloads"));
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    ChromeDriver driver =
        DebianChromium.start(
            folder.resolve("profile"),
            options -> {
              options.addArguments("--window-size=1400,1000");
              options.setExperimentalOption(
                  "prefs", Map.of("download.default_directory", downloads.toString()));
              options.setCapability("goog:loggingPrefs", logs);
            });
    driver.manage().timeouts().scriptTimeout(PATIENCE);
    return new Chromium(driver, downloads);
  }

  void open(String url) {
    driver.get(url);
  }

  String url() {
    return driver.getCurrentUrl();
  }

  void reload() {
    driver.navigate().refresh();
  }

  WebElement find(String css) {
    return driver.findElement(By.cssSelector(css));
  }

  List<WebElement> all(String css) {
    return driver.findElements(By.cssSelector(css));
  }

  String text(String css) {
    return (String) js("return document.querySelector(arguments[0])?.textContent ?? ''", css);
  }

  Object js(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  Object jsLater(String script, Object... arguments) {
    return ((JavascriptExecutor) driver).executeAsyncScript(script, arguments);
  }

  /** Clicks by script: what lies over the element, or outside the window, does not matter. */
  void press(String css) {
    js("document.querySelector(arguments[0]).click()", css);
  }

  /** The same for a part of a drawing, which has no click of its own. */
  void press(String css, String event) {
    js(
        "document.querySelector(arguments[0]).dispatchEvent(new MouseEvent(arguments[1], {bubbles:"
            + " true}))",
        css,
        event);
  }

  /** Writes into a field as a person does, and leaves it. */
  void type(String css, String text) {
    WebElement field = find(css);
    js("arguments[0].scrollIntoView({block: 'center'})", field);
    // Not clear(): that would be a change of its own, to nothing.
    field.sendKeys(Keys.chord(Keys.CONTROL, "a") + text + Keys.TAB);
  }

  void choose(String css, String value) {
    js(
        "const s = document.querySelector(arguments[0]); s.value = arguments[1];"
            + " s.dispatchEvent(new Event('change', {bubbles: true}))",
        css,
        value);
  }

  /** Waits until it is so, asking often. */
  void until(String what, BooleanSupplier so) {
    new WebDriverWait(driver, PATIENCE, Duration.ofMillis(50))
        .ignoring(org.openqa.selenium.StaleElementReferenceException.class)
        .withMessage(
            () ->
                what
                    + "; the page says: "
                    + text("#cost")
                    + " / "
                    + text("#step")
                    + " / "
                    + text("#note")
                    + " / "
                    + text(".under.error"))
        .until(d -> so.getAsBoolean());
  }

  org.openqa.selenium.interactions.Actions hands() {
    return new org.openqa.selenium.interactions.Actions(driver);
  }

  void size(int width, int height) {
    driver.manage().window().setSize(new Dimension(width, height));
  }

  /** The view in so many pixels, whatever the window's frame takes. */
  void view(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  /** Whether the element lies in the window with all of it, and nothing covers its middle. */
  boolean isWhollySeen(String css) {
    return Boolean.TRUE.equals(
        js(
            """
            const node = document.querySelector(arguments[0]);
            const box = node.getBoundingClientRect();
            const top = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
            return box.width > 0 && box.left >= 0 && box.top >= 0 && box.right <= innerWidth
              && box.bottom <= innerHeight && (node.contains(top) || top.contains(node));
            """,
            css));
  }

  /** The view as it is on a phone of that many pixels. */
  void phone(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 2, "mobile", true));
  }

  /** As if the program were gone. */
  void offline(boolean is) {
    network(is, 0);
  }

  /** Every answer takes so long at least. */
  void slow(int millis) {
    network(false, millis);
  }

  private void network(boolean offline, int latency) {
    driver.executeCdpCommand("Network.enable", Map.of());
    driver.executeCdpCommand(
        "Network.emulateNetworkConditions",
        Map.of(
            "offline",
            offline,
            "latency",
            latency,
            "downloadThroughput",
            -1,
            "uploadThroughput",
            -1));
  }

  String tab() {
    return driver.getWindowHandle();
  }

  void newTab() {
    driver.switchTo().newWindow(org.openqa.selenium.WindowType.TAB);
  }

  void toTab(String handle) {
    driver.switchTo().window(handle);
  }

  void closeTab() {
    driver.close();
  }

  byte[] picture() {
    return driver.getScreenshotAs(OutputType.BYTES);
  }

  /** Errors and warnings on the console since it was last asked. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
        .map(LogEntry::getMessage)
        .toList();
  }

  Path downloads() {
    return downloads;
  }

  @Override
  public void close() {
    driver.quit();
  }
}
