package curvestock.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.openqa.selenium.OutputType;

/**
 * Takes the pictures of the page that the README shows, of the embedded job (invented): {@code
 * page-*.png} in the folder given. No test: run it when the page has changed.
 */
final class PagePictures {

  private final Chromium browser;
  private final Path folder;

  private PagePictures(Chromium browser, Path folder) {
    this.browser = browser;
    this.folder = folder;
  }

  public static void main(String[] args) throws IOException {
    Path profile = Files.createTempDirectory("page-pictures");
    try (PageServer server = PageServer.start(Binding.loopback(0));
        Chromium browser = Chromium.start(profile)) {
      new PagePictures(browser, Path.of(args[0])).take(server.url());
    }
  }

  private void take(String url) throws IOException {
    browser.size(1280, 1060);
    browser.open(url);
    browser.until("there is a plan", () -> browser.find("#packet").isEnabled());
    browser.until("the sizes are compared", () -> !browser.all("#sizes .chart").isEmpty());
    browser.press("#enough");
    browser.untilDone();
    window("page");
    browser.press("#plan-view .bed[data-label='9']", "click");
    section("page-helix", "#helix-part");
    browser.press("#piece-card button");
    section("page-sizes", "#sizes-part");
    browser.press("#lay");
    browser.press("#sheets .piece", "click");
    browser.press("#pin");
    section("page-sheets", "#sheets-part");
    browser.press("#as-found");
    browser.press("#lay");
    browser.press("#piece-card button");
    browser.choose("#light", "evening");
    browser.js("scrollTo(0, 0)");
    window("page-evening");
    browser.choose("#light", "day");
    browser.phone(390, 844);
    browser.js("scrollTo(0, 0)");
    window("page-phone-questions");
    browser.js("document.querySelector('#answer').scrollIntoView()");
    window("page-phone-answer");
  }

  private void window(String name) throws IOException {
    Files.write(folder.resolve(name + ".png"), browser.picture());
  }

  private void section(String name, String css) throws IOException {
    // The answer in one line lies over whatever part is in the window.
    browser.js("document.querySelector('.peek').hidden = true");
    browser.js("document.querySelector(arguments[0]).scrollIntoView()", css);
    Files.write(folder.resolve(name + ".png"), browser.find(css).getScreenshotAs(OutputType.BYTES));
    browser.js("document.querySelector('.peek').hidden = false");
  }
}
