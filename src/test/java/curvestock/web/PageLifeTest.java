package curvestock.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** The page in a real browser: stops, lost connections, two tabs, keys alone, accessibility. */
class PageLifeTest extends PageInBrowser {

  @Test
  void search_stopped_keepsTheBestSoFarAndGoesOn() {
    visitor.comesFirst();
    visitor.untilPlanned();
    browser.until("there is something to stop", () -> browser.all("#enough").size() == 1);
    String first = browser.text("#cost");

    browser.press("#enough");

    browser.until(
        "it has stopped", () -> "stopped".equals(browser.js("return document.body.dataset.state")));
    assertThat(sheets(browser.text("#cost"))).isLessThanOrEqualTo(sheets(first));
    assertThat(browser.find("#packet").isEnabled()).isTrue();
    browser.until("it can go on", () -> browser.find("#continue").isEnabled());
    browser.press("#continue");
    browser.until(
        "it goes on", () -> "searching".equals(browser.js("return document.body.dataset.state")));
    assertThat(browser.find("#packet").isEnabled()).isTrue();
    assertThat(sheets(browser.text("#cost"))).isLessThanOrEqualTo(sheets(first));
  }

  private static int sheets(String headline) {
    return Integer.parseInt(headline.replaceFirst(" sheet.*", ""));
  }

  @Test
  void program_gone_isSaidKeepsWhatIsTypedAndIsAskedAgain() {
    visitor.comes(Jobs.SMALL);
    visitor.untilDone();

    browser.offline(true);
    browser.type(field("helix.radius") + "input", "27 1/2");

    browser.until("it is said", () -> browser.text("#step").contains("does not respond"));
    assertThat(browser.find("#step").getDomAttribute("role")).isEqualTo("alert");
    assertThat(browser.find(field("helix.radius") + "input").getDomProperty("value"))
        .isEqualTo("27 1/2");
    assertThat(visitor.kept("job.helix.radius")).isEqualTo("\"27 1/2\"");
    browser.offline(false);
    browser.until(
        "asked again by itself", () -> !browser.text("#step").contains("does not respond"));
    visitor.untilPlanned();
    browser.complaints();
  }

  @Test
  void program_slow_isSaid() {
    visitor.comes(Jobs.SMALL);
    visitor.untilDone();
    browser.slow(4000);

    browser.type(field("helix.radius") + "input", "26 1/2");

    browser.until("it is said", () -> browser.text("#step").contains("slow"));
    browser.slow(0);
    visitor.untilPlanned();
  }

  @Test
  void tabs_twoOfThem_keepTheirOwnJobsAndSearches() {
    visitor.comes(Jobs.SMALL);
    visitor.untilPlanned();
    String first = browser.tab();
    browser.newTab();
    visitor.comes(Jobs.PIECES);
    visitor.untilPlanned();
    String second = browser.tab();
    browser.type(field("cutting.kerf") + "input", "3/16");
    visitor.untilPlanned();

    browser.toTab(first);
    assertThat(browser.js("return document.body.dataset.state")).isNotEqualTo("failed");
    browser.reload();
    visitor.untilPlanned();
    assertThat(visitor.kept("job.title")).contains("Shelf loop");
    browser.toTab(second);
    browser.reload();
    visitor.untilPlanned();
    assertThat(visitor.kept("job.cutting.kerf")).isEqualTo("\"3/16\"");
    browser.closeTab();
    browser.toTab(first);
  }

  @Test
  void first_answer_isAnnounced() {
    visitor.comes(Jobs.SMALL);
    browser.js(
        "window.said = []; new MutationObserver(() => said.push(document.querySelector('#spoken').textContent)).observe(document.querySelector('#spoken'), {childList: true, characterData: true, subtree: true})");
    browser.type(field("helix.radius") + "input", "25 7/8");
    visitor.untilDone();

    List<?> said = (List<?>) browser.js("return said");
    assertThat(said).anyMatch(words -> words.toString().startsWith("First answer: "));
    assertThat(said).anyMatch(words -> words.toString().startsWith("Done: "));
  }

  /** A picture that turns is painted only while it can be seen. */
  @Test
  void turning_outOfSight_isNotPainted() {
    visitor.comes(Jobs.SMALL);
    visitor.untilDone();
    browser.press("#view-turning");
    browser.until("the picture", () -> !browser.all("#turning").isEmpty());
    browser.press("#turn-on");
    String paintings =
        "const done = arguments[0]; import('/turning.js').then(m => done(m.paintings()))";
    long before = (Long) browser.jsLater(paintings);
    browser.until("it turns", () -> (Long) browser.jsLater(paintings) > before + 3);

    browser.js("document.querySelector('#turning').style.display = 'none'");
    browser.until(
        "out of sight", () -> browser.jsLater(paintings).equals(browser.jsLater(paintings)));
    long hidden = (Long) browser.jsLater(paintings);
    for (int i = 0; i < 20; i++) {
      browser.jsLater("const done = arguments[0]; requestAnimationFrame(() => done())");
    }

    assertThat((Long) browser.jsLater(paintings)).isLessThanOrEqualTo(hidden + 1);
    browser.press("#view-plan");
  }

  @Test
  void quit_isAskedFirst() {
    visitor.comes(Jobs.PIECES);
    visitor.untilPlanned();
    browser.press("#file-menu");
    browser.press("#quit");

    browser.until("asked", () -> browser.text("dialog").contains("Quit Curvestock?"));
    browser.js(
        "[...document.querySelectorAll('dialog button')].find(b => b.textContent === 'Cancel').click()");
    browser.until("no dialog", () -> browser.all("dialog").isEmpty());
    assertThat(
            browser.jsLater(
                "const done = arguments[0]; fetch('/api/alive').then(r => done(r.status))"))
        .isEqualTo(204L);
  }

  /** Presses Tab until it stands on the element; gives how often. */
  private static int tabTo(String css) {
    for (int tabs = 1; tabs <= 80; tabs++) {
      browser.hands().sendKeys(Keys.TAB).perform();
      if (Boolean.TRUE.equals(
          browser.js("return document.activeElement.matches(arguments[0])", css))) {
        return tabs;
      }
    }
    throw new AssertionError("no way with the Tab key to " + css);
  }

  @Test
  void keysAlone_fromTheTopOfThePage_leadToTheAnswerAndThePacket() {
    visitor.comes(Jobs.SMALL);
    visitor.untilDone();
    browser.js("document.querySelector('.skip').focus()");

    tabTo("#f-second");
    browser.hands().sendKeys("R").perform();
    browser.until("it is asked", () -> !browser.all(field("helix.rise-per-turn")).isEmpty());
    assertThat(browser.js("return document.activeElement.id")).isEqualTo("f-second");
    tabTo(field("helix.rise-per-turn") + "input");
    // Who comes by Tab finds the old text selected.
    browser.hands().sendKeys("4 1/4", Keys.TAB).perform();
    browser.until("his rise", () -> browser.text(".caption").contains("4 1/4 in"));
    visitor.untilPlanned();

    browser.js("document.querySelector('.skip').focus()");
    browser.hands().sendKeys(Keys.ENTER).perform();
    tabTo("#packet");
    browser.hands().sendKeys(Keys.ENTER).perform();
    browser.until("the packet", () -> browser.text("#packet-words").contains("downloads"));
    tabTo("#sheets .piece");
    browser.hands().sendKeys(Keys.ARROW_RIGHT, Keys.ENTER).perform();
    assertThat(browser.text("#piece-card")).contains("turn 1");
    // The sheets are one stop, whatever number of pieces.
    assertThat(browser.all("#sheets [tabindex='0']")).hasSizeLessThanOrEqualTo(2);
  }

  /** Two pictures of the same kind of thing: all lights, a phone, both dialogs. */
  @Test
  void axe_onEveryLightWidthAndDialog_findsNothing() throws IOException {
    visitor.comes(Jobs.SMALL);
    visitor.untilDone();
    try (InputStream in = PageLifeTest.class.getResourceAsStream("/axe.min.js")) {
      browser.js(new String(in.readAllBytes(), StandardCharsets.UTF_8) + ";window.axe = axe");
    }
    browser.press("#lay");
    browser.js("document.querySelectorAll('details').forEach(d => d.open = true)");
    for (String theme : List.of("light", "dark")) {
      browser.choose("#theme", theme);
      for (String tab :
          theme.equals("light")
              ? List.of("buy", "pieces", "figures", "cautions", "checks")
              : List.of("checks")) {
        browser.press("#tab-" + tab);
        assertThat(axe()).as(theme + " " + tab).isEmpty();
      }
      browser.js(
          "document.querySelectorAll('.panel, .card, .cost').forEach(p => p.classList.add('former'))");
      assertThat(axe()).as(theme + ", former").isEmpty();
      browser.js(
          "document.querySelectorAll('.panel, .card, .cost').forEach(p => p.classList.remove('former'))");
    }
    browser.choose("#theme", "system");
    browser.press("#knot");
    browser.press("#sheets .sheet .board", "click");
    browser.until("the dialog", () -> !browser.all("#knot-x").isEmpty());
    assertThat(axe()).as("knot").isEmpty();
    // At once, before the browser tells that the other is closed: that took the new one away.
    browser.js(
        "document.querySelector('dialog').close();"
            + "[...document.querySelectorAll('#plywood button')].find(b => b.textContent === 'Add remnant').click()");
    browser.until("the pad", () -> !browser.all(".pad").isEmpty());
    assertThat(axe()).as("remnant").isEmpty();
    browser.js("document.querySelector('dialog').close()");
    browser.phone(390, 844);
    assertThat(axe()).as("phone").isEmpty();
    browser.press("#change");
    assertThat(axe()).as("phone, numbers").isEmpty();
    browser.press("#change");
    browser.phone(320, 640);
    assertThat(browser.js("return document.documentElement.scrollWidth")).isEqualTo(320L);
    browser.view(1400, 900);
  }

  @SuppressWarnings("unchecked")
  private static List<String> axe() {
    Object found =
        browser.jsLater(
            """
            const done = arguments[0];
            axe.run(document, {resultTypes: ['violations']}).then(result => done(result.violations
              .map(v => v.id + ': ' + v.nodes.map(n => n.target.join(' ') + ' ' + n.failureSummary).slice(0, 3).join(' | '))));
            """);
    return (List<String>) found;
  }

  /** What the browser has is not sent again. */
  @Test
  void files_askedForAgain_areNotSentAgain() {
    Client client = new Client(server);
    for (String path : List.of("/", "/app.js", "/preact.js", "/bench.css")) {
      String mark = client.get(path).headers().firstValue("ETag").orElseThrow();

      var again = client.get(path, "If-None-Match", mark);

      assertThat(again.statusCode()).as(path).isEqualTo(304);
      assertThat(again.body()).isEmpty();
    }
    assertThat(client.get("/").body()).contains("modulepreload\" href=\"/turning.js\"");
  }
}
