package curvestock.web;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** Serves the page to a browser, and somebody in front of it, for all tests of a class. */
abstract class PageInBrowser {

  @TempDir static Path folder;

  static PageServer server;
  static Chromium browser;
  static Visitor visitor;

  @BeforeAll
  static void start() throws IOException {
    browser = Chromium.start(folder);
    server = PageServer.start(Binding.loopback(0));
    visitor = new Visitor(browser, server.url());
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
    if (server != null) {
      server.close();
    }
  }

  static String field(String path) {
    return Visitor.field(path);
  }
}
