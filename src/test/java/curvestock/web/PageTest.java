package curvestock.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.app.Workshop;
import curvestock.job.Job;
import curvestock.job.JobText;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The page in a real browser, as a person uses it. */
class PageTest {

  @TempDir private static Path folder;

  private static PageServer server;
  private static Chromium browser;

  @BeforeAll
  static void start() throws IOException {
    browser = Chromium.start(folder);
    server = PageServer.start(Binding.loopback(0));
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

  @BeforeEach
  void downloadsAreEmpty() throws IOException {
    try (Stream<Path> files = Files.list(browser.downloads())) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
  }

  /** Nothing on the console, but what a browser itself says of a refused request. */
  @AfterEach
  void consoleIsQuiet() {
    assertThat(browser.complaints()).allMatch(line -> line.contains("422 (Unprocessable"));
  }

  private static void firstVisit() {
    // The icon runs no script: what the browser keeps can be set before the page asks anything.
    browser.open(server.url() + "icon.svg");
    browser.js("localStorage.clear()");
    browser.open(server.url());
  }

  /** A visit of somebody whose browser keeps this job. */
  private static void visit(String yaml) {
    browser.open(server.url() + "icon.svg");
    ObjectNode kept = Json.object().put("original", yaml);
    kept.set("job", Json.tree(JobText.tree(yaml, "job")));
    kept.putNull("hand");
    browser.js("localStorage.setItem('curvestock-job-1', arguments[0])", kept.toString());
    browser.open(server.url());
  }

  private static void untilPlanned() {
    browser.until("there is a plan", () -> browser.find("#packet").isEnabled());
  }

  private static String field(String path) {
    return "[data-path='" + path + "'] ";
  }

  @Test
  void firstVisit_withoutInput_givesAnAnswer() {
    firstVisit();
    untilPlanned();

    assertThat(browser.text("#cost")).contains("sheets, $");
    assertThat(browser.text("#bound")).containsAnyOf("No purchase under", "Proven cheapest");
    assertThat(browser.text("#verdict-line")).contains("check");
    assertThat(browser.all("#sheets .piece")).hasSize(21);
    assertThat(browser.all("#plan-view .bed")).hasSize(21);
    assertThat(browser.all("#side-view .bed")).hasSizeGreaterThanOrEqualTo(21);
    browser.until("first counts of sizes", () -> !browser.all("#sizes tbody tr").isEmpty());
    browser.press("#enough");
    browser.untilDone();
  }

  @Test
  void radius_changed_changesThePictureAndTheFigures() {
    visit(Jobs.SMALL);
    untilPlanned();
    String drawing = "return document.querySelector('#plan-view svg').getAttribute('viewBox')";
    Object before = browser.js(drawing);
    String across = browser.text("#facts");

    browser.type(field("helix.radius") + "input", "28 1/2");

    browser.until("another picture", () -> !before.equals(browser.js(drawing)));
    assertThat(browser.text("#facts")).isNotEqualTo(across);
    browser.press("#undo");
    browser.until("the former picture", () -> before.equals(browser.js(drawing)));
    assertThat(browser.find(field("helix.radius") + "input").getDomProperty("value"))
        .isEqualTo("30");
    browser.press("#redo");
    browser.until("the picture again", () -> !before.equals(browser.js(drawing)));
  }

  @Test
  void error_inAField_isShownBesideIt() {
    visit(Jobs.SMALL);
    untilPlanned();

    browser.type(field("helix.radius") + "input", "wide");

    browser.until(
        "the error", () -> browser.text(field("helix.radius") + ".error").contains("wide"));
    WebElement input = browser.find(field("helix.radius") + "input");
    assertThat(input.getDomAttribute("aria-invalid")).isEqualTo("true");
    assertThat(input.getDomAttribute("aria-describedby")).contains("error");
    browser.type(field("helix.radius") + "input", "30");
    browser.until("no error", () -> browser.text(field("helix.radius") + ".error").isEmpty());
  }

  @Test
  void search_endedByThePerson_keepsTheBestSoFar() {
    visit(Jobs.SMALL.replace("effort: quick", "effort: thorough"));
    untilPlanned();

    browser.press("#enough");

    browser.untilDone();
    assertThat(browser.text("#cost")).contains("$");
    assertThat(browser.find("#packet").isEnabled()).isTrue();
  }

  @Test
  void piece_pointedAt_isShownInAllDrawings() {
    visit(Jobs.SMALL);
    untilPlanned();

    browser.js(
        "document.querySelector('#sheets .piece[data-label=\"2\"]')"
            + ".dispatchEvent(new MouseEvent('click', {bubbles: true}))");

    assertThat(browser.all("#plan-view .bed.chosen")).hasSize(1);
    assertThat(browser.all("#side-view .bed.chosen")).isNotEmpty();
    assertThat(browser.text("#piece-card")).contains("turn 1").contains("sheet 1");
    browser.js(
        "document.querySelector('#plan-view .bed[data-label=\"3\"]')"
            + ".dispatchEvent(new MouseEvent('click', {bubbles: true}))");
    assertThat(browser.find("#sheets .piece.chosen").getDomAttribute("data-label")).isEqualTo("3");
  }

  @Test
  void piece_draggedAndPinned_staysThroughAReloadAndAnImprovement() {
    visit(Jobs.PIECES);
    untilPlanned();
    browser.press("#lay");
    WebElement piece = browser.find("#sheets .piece");
    String before = piece.getDomAttribute("transform");
    browser.js("arguments[0].scrollIntoView({block: 'center'})", piece);

    browser.hands().moveToElement(corner(piece)).clickAndHold().moveByOffset(3, 2).perform();
    browser.hands().moveByOffset(37, 13).release().perform();

    browser.until("the gap is told", () -> browser.text("#gap").startsWith("Piece"));
    String label = browser.find("#sheets .piece.chosen").getDomAttribute("data-label");
    String chosen = "#sheets .piece[data-label='" + label + "']";
    String moved = browser.find(chosen).getDomAttribute("transform");
    assertThat(moved).isNotEqualTo(before);
    browser.press("#as-found");
    assertThat(browser.find(chosen).getDomAttribute("transform")).isEqualTo(before);

    browser.press("#pin");
    String pinned = browser.find(chosen).getDomAttribute("transform");
    browser.reload();
    untilPlanned();
    assertThat(browser.all("#sheets .piece.pinned")).hasSize(1);
    browser.press("#lay");
    browser.untilDone();
    browser.press("#improve");
    browser.untilDone();
    assertThat(browser.find("#sheets .piece.pinned").getDomAttribute("transform"))
        .isEqualTo(pinned);
    browser.press("#lay");
  }

  /** The outline of a piece, whose middle need not lie in its wood. */
  private static WebElement corner(WebElement piece) {
    return piece.findElement(org.openqa.selenium.By.cssSelector(".mark"));
  }

  @Test
  void piece_movedByKeys_isJudged() {
    visit(Jobs.PIECES);
    untilPlanned();
    browser.press("#lay");
    browser.js("document.querySelector('#sheets .piece').focus()");

    browser
        .hands()
        .keyDown(Keys.SHIFT)
        .sendKeys(Keys.ARROW_LEFT, Keys.ARROW_LEFT)
        .keyUp(Keys.SHIFT)
        .perform();

    browser.until(
        "the piece lies wrong",
        () -> browser.text("#gap").contains("edge") || browser.text("#bad-pieces").length() > 0);
    assertThat(browser.all("#sheets .piece.bad")).isNotEmpty();
    browser.until("no packet of that", () -> !browser.find("#packet").isEnabled());
    browser.press("#as-found");
    browser.until("a packet again", () -> browser.find("#packet").isEnabled());
    browser.press("#lay");
  }

  @Test
  void knot_marked_isKeptClearOf() {
    visit(Jobs.PIECES);
    untilPlanned();
    browser.js(
        "[...document.querySelectorAll('#hand button')].find(b => b.textContent.startsWith('Knot by')).click()");
    browser.choose("#knot-which", "all");
    browser.press("#knot-keep");

    browser.until("the knot is drawn", () -> !browser.all("#sheets .defect").isEmpty());
    untilPlanned();
    assertThat(browser.text("#plywood")).contains("1 knot or void");
  }

  @Test
  void units_switchedThereAndBack_leaveTheTextAsTyped() {
    visit(Jobs.SMALL);
    untilPlanned();
    String input = field("helix.climb") + "input";

    assertThat(browser.text(field("helix.climb") + ".unit")).isEqualTo("in");
    browser.choose("#unit", "mm");
    browser.until(
        "millimetres", () -> "152.4 mm".equals(browser.find(input).getDomProperty("value")));
    browser.until("figures in millimetres", () -> browser.text("#facts").contains("mm"));
    browser.type(field("helix.width") + "input", "130");
    browser.until(
        "its unit is kept",
        () ->
            String.valueOf(
                    browser.js(
                        "return JSON.parse(localStorage.getItem('curvestock-job-1')).job.helix.width"))
                .equals("130 mm"));
    browser.choose("#unit", "in");

    browser.until("inches", () -> "6".equals(browser.find(input).getDomProperty("value")));
    assertThat(
            browser.js(
                "return JSON.parse(localStorage.getItem('curvestock-job-1')).job.helix.climb"))
        .isEqualTo("6");
  }

  @Test
  void job_savedAndOpened_isTheSamePlanWithItsComments() throws IOException {
    visit(Jobs.SMALL);
    untilPlanned();
    browser.type(field("helix.width") + "input", "4 7/8");
    browser.until("asked anew", () -> browser.text("#cost").contains("$"));
    untilPlanned();
    String cost = browser.text("#cost");

    browser.press("#save");
    Path saved = downloaded(".yaml");
    String text = Files.readString(saved);
    assertThat(text).contains("this comment must survive").contains("width: 4 7/8");
    visit(Jobs.PIECES);
    untilPlanned();
    browser.find("#file").sendKeys(saved.toString());

    browser.until("opened", () -> browser.text("#note").contains("Opened"));
    untilPlanned();
    assertThat(browser.text("#cost")).isEqualTo(cost);
    assertThat(browser.find(field("helix.width") + "input").getDomProperty("value"))
        .isEqualTo("4 7/8");
  }

  @Test
  void packet_downloaded_passesTheCheck() throws IOException {
    visit(Jobs.SMALL);
    untilPlanned();

    browser.press("#packet");

    Path zip = downloaded("-packet.zip");
    Job job = Workshop.readJob(Jobs.SMALL, "small.yaml");
    int judged = 0;
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        if (entry.getName().matches(".*sheets/sheet-\\d+(-cut)?\\.svg")) {
          Path drawing = folder.resolve("drawing-" + judged++ + ".svg");
          Files.write(drawing, in.readAllBytes());
          assertThat(Workshop.check(List.of(drawing), Optional.of(job), true).report().passed())
              .as(entry.getName())
              .isTrue();
        }
      }
    } catch (curvestock.files.FileProblem e) {
      throw new AssertionError(e);
    }
    assertThat(judged).isGreaterThanOrEqualTo(2);
  }

  /** What somebody does who has never seen the page and wants his own helix: seven acts. */
  @Test
  void stranger_withAHelixOfHisOwn_getsItsPacketInAFewActs() throws IOException {
    firstVisit();
    browser.until("the questions", () -> !browser.all(field("helix.scale") + "select").isEmpty());
    browser.choose(field("helix.scale") + "select", "N");
    browser.press(field("helix.scale") + ".take");
    browser.type(field("helix.climb") + "input", "9 in");
    browser.type(field("sheets[1].size") + "input", "5x5 ft");
    browser.type(field("sheets[1].price") + "input", "41.50");
    browser.choose("[data-path='search.effort'] select", "quick");
    browser.until(
        "his own answer",
        () -> browser.text("#cost").contains("$41.50") || browser.text("#cost").contains("$83.00"));
    untilPlanned();

    browser.press("#packet");

    assertThat(downloaded("my-helix-in-n-packet.zip")).isNotEmptyFile();
    assertThat(browser.text("#verdict-line")).contains("Works").doesNotContain("fail");
  }

  /** Presses Tab until it stands on the element; gives how often. */
  private static int tabTo(String css) {
    for (int tabs = 1; tabs <= 120; tabs++) {
      browser.hands().sendKeys(Keys.TAB).perform();
      if (Boolean.TRUE.equals(
          browser.js("return document.activeElement.matches(arguments[0])", css))) {
        return tabs;
      }
    }
    throw new AssertionError("no way with the Tab key to " + css);
  }

  @Test
  void keysAlone_fromTheTopOfThePage_leadToTheAnswerAndThePacket() throws IOException {
    visit(Jobs.SMALL);
    untilPlanned();
    browser.js("document.querySelector('.skip').focus()");

    tabTo("#f-second");
    browser.hands().sendKeys(Keys.ARROW_DOWN).perform();
    browser.until("it is asked", () -> browser.find(field("helix.rise-per-turn")).isDisplayed());
    // The choice was made anew from the answer; the keyboard has not lost its place.
    tabTo(field("helix.rise-per-turn") + "input");
    // Who comes by Tab finds the old text selected.
    browser.hands().sendKeys("4 1/4", Keys.TAB).perform();
    browser.until("his rise", () -> browser.text("#facts").contains("4 1/4 in"));
    untilPlanned();

    // By the link for those who do not want to pass all the questions.
    browser.js("document.querySelector('.skip').focus()");
    browser.hands().sendKeys(Keys.ENTER).perform();
    tabTo("#packet");
    browser.hands().sendKeys(Keys.ENTER).perform();

    browser.until("the packet", () -> browser.text("#packet-words").contains("downloads"));
    tabTo("#sheets .piece");
    browser.hands().sendKeys(Keys.ARROW_RIGHT, Keys.ENTER).perform();
    assertThat(browser.text("#piece-card")).contains("turn 1");
  }

  @Test
  void answer_whileItIsAskedAnew_isDrawnPale() {
    visit(Jobs.SMALL);
    untilPlanned();
    browser.js(
        """
        window.seen = [];
        new MutationObserver(() => seen.push(document.body.dataset.fresh))
          .observe(document.body, {attributes: true, attributeFilter: ['data-fresh']});
        """);

    browser.type(field("sheets[1].price") + "input", "70.10");

    browser.until("the new price", () -> browser.text("#cost").contains("$70.10"));
    assertThat(browser.js("return seen.join()")).asString().contains("no,yes");
  }

  @Test
  void problem_thatNamesAnotherField_isShownBesideThatField() {
    visit(Jobs.SMALL.replace("scale: HO", "scale: O").replace("turns:", "tracks: 2\n  turns:"));

    browser.until(
        "the error beside the field that mends it",
        () -> browser.text(field("helix.track-spacing") + ".error").contains("distance of two"));
    browser.press(field("helix.track-spacing") + ".take");
    browser.until(
        "no error", () -> browser.text(field("helix.track-spacing") + ".error").isEmpty());
  }

  private static Path downloaded(String ending) {
    browser.until("a download ending in " + ending, () -> newest(ending).isPresent());
    return newest(ending).orElseThrow();
  }

  private static Optional<Path> newest(String ending) {
    try (Stream<Path> files = Files.list(browser.downloads())) {
      return files.filter(file -> file.toString().endsWith(ending)).findFirst();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void remnant_drawnByItsCorners_isOneMoreSheet() {
    visit(Jobs.PIECES);
    untilPlanned();
    browser.js(
        "[...document.querySelectorAll('#plywood button')].find(b => b.textContent.startsWith('Draw')).click()");
    for (int i = 0; i < 3; i++) {
      browser.js(
          "[...document.querySelectorAll('dialog button')].find(b => b.textContent.startsWith('One more')).click()");
    }
    String[] corners = {"0", "0", "40", "0", "0", "40"};
    for (int i = 0; i < corners.length; i++) {
      browser.js(
          "const f = document.querySelectorAll('.corners input')[arguments[0]]; f.value = arguments[1];"
              + " f.dispatchEvent(new Event('change'))",
          i,
          corners[i]);
    }

    browser.press("#remnant-keep");

    browser.until("a second sheet", () -> browser.all("#plywood .sheet-kind").size() == 2);
    untilPlanned();
    assertThat(browser.text("#plywood")).contains("remnant of 3 corners");
  }

  @Test
  void axe_onEveryLightAndWidth_findsNothing() throws IOException {
    visit(Jobs.SMALL);
    untilPlanned();
    browser.until("sizes", () -> !browser.all("#sizes tbody tr").isEmpty());
    browser.press("#lay");
    browser.js("document.querySelectorAll('details').forEach(d => d.open = true)");
    try (InputStream in = PageTest.class.getResourceAsStream("/axe.min.js")) {
      browser.js(new String(in.readAllBytes(), StandardCharsets.UTF_8) + ";window.axe = axe");
    }
    for (String light : List.of("day", "evening")) {
      browser.choose("#light", light);
      assertThat(axe()).as(light).isEmpty();
    }
    browser.choose("#light", "as-machine");
    browser.press("#lay");
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
}
