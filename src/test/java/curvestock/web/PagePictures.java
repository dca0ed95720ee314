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
    browser.view(1280, 900);
    browser.open(url);
    Visitor visitor = new Visitor(browser, url);
    visitor.untilPlanned();
    visitor.untilDone();
    window("page");
    browser.press("#plan-view .bed[data-label='9']", "click");
    browser.press("#view-turning");
    section("page-helix", "#helix-part");
    section("page-sizes", ".decision");
    browser.press("#lay");
    browser.press("#pin");
    section("page-sheets", "#sheets-part");
    browser.press("#as-found");
    browser.press("#lay");
    browser.press("#view-plan");
    browser.choose("#theme", "dark");
    window("page-evening");
    browser.choose("#theme", "light");
    browser.phone(390, 844);
    browser.js("scrollTo(0, 0)");
    window("page-phone-answer");
    browser.press("#change");
    window("page-phone-questions");
  }

  private void window(String name) throws IOException {
    Files.write(folder.resolve(name + ".png"), browser.picture());
  }

  private void section(String name, String css) throws IOException {
    Files.write(folder.resolve(name + ".png"), browser.find(css).getScreenshotAs(OutputType.BYTES));
  }
}
