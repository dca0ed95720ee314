package curvestock.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.job.JobText;

/** Somebody in front of the page. */
final class Visitor {

  private final Chromium browser;
  private final String url;

  Visitor(Chromium browser, String url) {
    this.browser = browser;
    this.url = url;
  }

  static String field(String path) {
    return "[data-path='" + path + "'] ";
  }

  /** For the first time: the browser knows nothing of the page. */
  void comesFirst() {
    // The icon runs no script: what the browser keeps can be set before the page asks anything.
    browser.open(url + "icon.svg");
    browser.js("localStorage.clear(); sessionStorage.clear()");
    opens();
  }

  private void opens() {
    browser.open(url);
    browser.until("the questions", () -> !browser.all(field("cutting.kerf")).isEmpty());
  }

  /** With this job in the tab. */
  void comes(String yaml) {
    browser.open(url + "icon.svg");
    ObjectNode kept =
        Json.object().put("original", yaml).put("example", false).put("assume", false);
    kept.set("job", Json.tree(JobText.tree(yaml, "job")));
    kept.putNull("hand");
    browser.js(
        "localStorage.clear(); sessionStorage.setItem('curvestock-tab', arguments[0])",
        kept.toString());
    opens();
  }

  void untilPlanned() {
    browser.until("there is a plan", () -> browser.find("#packet").isEnabled());
  }

  void untilDone() {
    browser.until(
        "the answer is complete",
        () -> "done".equals(browser.js("return document.body.dataset.state")));
  }

  /** Of the job that is asked about. */
  String fingerprint() {
    return (String) browser.js("return document.body.dataset.job");
  }

  /** What the tab keeps, as JSON. */
  String kept(String path) {
    return (String)
        browser.js(
            "return JSON.stringify(arguments[0].split('.').reduce((node, key) => node?.[key],"
                + " JSON.parse(sessionStorage.getItem('curvestock-tab'))) ?? null)",
            path);
  }
}
