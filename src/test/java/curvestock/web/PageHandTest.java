package curvestock.web;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.app.Workshop;
import curvestock.job.Job;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The page in a real browser: laying by hand, knots and remnants, files and packets. */
class PageHandTest extends PageInBrowser {

  @BeforeEach
  void downloadsAreEmpty() throws IOException {
    try (Stream<Path> files = Files.list(browser.downloads())) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
  }

  @AfterEach
  void consoleIsQuiet() {
    assertThat(browser.complaints()).isEmpty();
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

  private static String transform(String label) {
    return browser.find("#sheets .piece[data-label='" + label + "']").getDomAttribute("transform");
  }

  private static List<?> labels() {
    return (List<?>)
        browser.js(
            "return [...document.querySelectorAll('#sheets .piece')].map(p => p.dataset.label).sort()");
  }

  @Test
  void piece_draggedAndPinned_staysThroughAReloadAndAnImprovement() {
    visitor.comes(Jobs.PIECES);
    visitor.untilDone();
    List<?> before = labels();
    browser.press("#lay");
    WebElement piece = browser.find("#sheets .piece");
    String label = piece.getDomAttribute("data-label");
    String found = transform(label);
    Object ground =
        browser.js("return document.querySelector('#sheets .sheet').getBoundingClientRect().top");
    browser.js(
        "window.tops = new Set(); window.selected = ''; const look = () => {"
            + " tops.add(Math.round(document.querySelector('#sheets .sheet').getBoundingClientRect().top));"
            + " selected += getSelection(); requestAnimationFrame(look); }; look()");

    // The outline of a piece, whose middle need not lie in its wood.
    WebElement edge = piece.findElement(By.cssSelector(".mark"));
    browser.hands().moveToElement(edge).clickAndHold().moveByOffset(3, 2).perform();
    browser.hands().moveByOffset(37, 13).release().perform();

    browser.until("the gap is told", () -> browser.text("#gap").startsWith("Piece"));
    // Dragging never moves the ground, and marks no text.
    assertThat((List<?>) browser.js("return [...tops]")).hasSize(1);
    assertThat(browser.js("return tops.values().next().value"))
        .isEqualTo(Math.round(((Number) ground).doubleValue()));
    assertThat(browser.js("return selected")).isEqualTo("");
    assertThat(transform(label)).isNotEqualTo(found);
    browser.press("#as-found");
    browser.until("as found", () -> found.equals(transform(label)));

    browser.press("#pin");
    browser.until("pinned", () -> browser.all("#sheets .piece.pinned").size() == 1);
    String pinned = transform(label);
    browser.reload();
    visitor.untilPlanned();
    assertThat(browser.all("#sheets .piece.pinned")).hasSize(1);
    browser.press("#lay");
    visitor.untilDone();
    browser.press("#improve");
    visitor.untilDone();
    assertThat(transform(label)).isEqualTo(pinned);
    assertThat(browser.find("#sheets .piece.pinned").getDomAttribute("data-label"))
        .isEqualTo(label);
    assertThat(labels()).isEqualTo(before);
  }

  @Test
  void piece_movedByKeys_isJudged() {
    visitor.comes(Jobs.PIECES);
    visitor.untilDone();
    browser.press("#lay");
    browser.js("document.querySelector('#sheets .piece').focus()");

    browser
        .hands()
        .keyDown(Keys.SHIFT)
        .sendKeys(Keys.ARROW_LEFT, Keys.ARROW_LEFT, Keys.ARROW_LEFT)
        .keyUp(Keys.SHIFT)
        .perform();

    browser.until("the piece lies wrong", () -> !browser.all("#sheets .piece.bad").isEmpty());
    assertThat(browser.text("#gap")).containsAnyOf("edge", "Too close", "lies on");
    browser.until("no packet of that", () -> !browser.find("#packet").isEnabled());
    browser.press("#as-found");
    browser.until("a packet again", () -> browser.find("#packet").isEnabled());
  }

  @Test
  void knot_marked_isCheckedWhileTypedAndKeptClearOf() {
    visitor.comes(Jobs.PIECES);
    visitor.untilDone();
    browser.press("#knot");
    browser.press("#sheets .sheet .board", "click");
    browser.until("the dialog", () -> !browser.all("#knot-x").isEmpty());

    browser.type("#knot-radius", "big");
    browser.until("it says so", () -> browser.text("#knot-radius-under").contains("big"));
    browser.press("#knot-keep");
    assertThat(browser.all("dialog")).hasSize(1);
    browser.type("#knot-radius", "1 1/2");
    browser.type("#knot-x", "20 1/4");
    browser.choose("#knot-which", "all");
    browser.press("#knot-keep");

    browser.until("the knot is drawn", () -> !browser.all("#sheets .defect").isEmpty());
    assertThat(browser.text("#plywood")).contains("1 knot");
    assertThat(visitor.kept("job.sheets.0.defects.0.circle.radius")).isEqualTo("\"1 1/2\"");
    browser.until(
        "the keyboard is not lost",
        () -> Boolean.TRUE.equals(browser.js("return document.activeElement !== document.body")));
  }

  @Test
  void remnant_withCrossedEdges_isRefusedBesideThePadThatStaysWhereItIs() {
    visitor.comes(Jobs.PIECES);
    visitor.untilDone();
    browser.press(".more summary");
    browser.js(
        "[...document.querySelectorAll('#plywood button')].find(b => b.textContent === 'Add remnant').click()");
    browser.until("the pad", () -> !browser.all(".pad").isEmpty());
    String place = "return document.querySelector('.pad').getBoundingClientRect().top";
    Object before = browser.js(place);
    for (int i = 0; i < 4; i++) {
      browser.press("#corner-more");
    }
    browser.until("four corners", () -> browser.all(".corners input").size() == 8);
    corners("0", "0", "40 1/2", "30", "40 1/2", "0", "0", "30");
    browser.until("crossed", () -> browser.text("#remnant-wrong").contains("crosses"));
    browser.press("#remnant-keep");
    assertThat(browser.all("dialog")).hasSize(1);

    corners("0", "0", "40 1/2", "0", "40 1/2", "30", "0", "30");
    browser.until("right", () -> browser.text("#remnant-wrong").isEmpty());
    assertThat(browser.js(place)).isEqualTo(before);
    browser.press("#remnant-keep");

    browser.until("a second sheet", () -> browser.all("#plywood .sheet-kind").size() == 2);
    assertThat(browser.text("#plywood")).contains("remnant with 4 corners");
    visitor.untilPlanned();
    browser.press(".more summary");
  }

  private static void corners(String... texts) {
    for (int i = 0; i < texts.length; i++) {
      browser.js(
          "const f = document.querySelectorAll('.corners input')[arguments[0]]; f.value = arguments[1];"
              + " f.dispatchEvent(new Event('input', {bubbles: true}))",
          i,
          texts[i]);
    }
  }

  @Test
  void job_savedAndOpened_isTheSamePlanWithItsComments() throws IOException {
    visitor.comes(Jobs.SMALL);
    visitor.untilPlanned();
    browser.type(field("helix.width") + "input", "4 7/8");
    visitor.untilPlanned();
    String cost = browser.text("#cost");

    browser.press("#save");
    Path saved = downloaded(".yaml");
    String text = Files.readString(saved);
    assertThat(text).contains("this comment must survive").contains("width: 4 7/8");
    visitor.comes(Jobs.PIECES);
    visitor.untilPlanned();
    browser.find("#file").sendKeys(saved.toString());

    browser.until("opened", () -> browser.text("#note").contains("Opened"));
    visitor.untilPlanned();
    assertThat(browser.text("#cost")).isEqualTo(cost);
    assertThat(browser.find(field("helix.width") + "input").getDomProperty("value"))
        .isEqualTo("4 7/8");
  }

  @Test
  void packet_downloaded_passesTheCheck() throws IOException {
    visitor.comes(Jobs.SMALL);
    visitor.untilPlanned();

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

  /** What somebody does who has never seen the page and wants his own helix: six acts. */
  @Test
  void stranger_withAHelixOfHisOwn_getsItsPacketInAFewActs() throws IOException {
    visitor.comesFirst();
    browser.choose(field("helix.scale") + "select", "HO");
    browser.type(field("helix.radius") + "input", "24");
    browser.type(field("helix.width") + "input", "4");
    browser.type(field("helix.climb") + "input", "18");
    browser.type(field("sheets[1].price") + "input", "70");
    browser.until(
        "his own answer", () -> browser.text("#cost").matches("\\d+ sheets?, \\$\\d*[70]0\\.00"));
    visitor.untilPlanned();

    browser.press("#packet");

    assertThat(downloaded("my-helix-packet.zip")).isNotEmptyFile();
    assertThat(browser.text("#verdict-line")).contains("The helix works");
  }
}
