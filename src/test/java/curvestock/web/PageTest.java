package curvestock.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The page in a real browser: the decision, the numbers, what is fresh and what is not. */
class PageTest extends PageInBrowser {

  /** Nothing on the console, also when a number was half typed as the page asked. */
  @AfterEach
  void consoleIsQuiet() {
    assertThat(browser.complaints()).isEmpty();
  }

  private static String value(String css) {
    return browser.find(css).getDomProperty("value");
  }

  @Test
  void firstVisit_withoutInput_showsAnExampleThatIsPlainlyOne() {
    visitor.comesFirst();
    visitor.untilPlanned();

    assertThat(browser.text("#example")).contains("Example").contains("invented");
    assertThat(browser.text("#cost")).contains("sheets, $");
    assertThat(browser.text("#proof")).isEmpty();
    browser.press("#tab-figures");
    assertThat(browser.text("#proof"))
        .containsAnyOf("Nothing cheaper was found", "Proven cheapest");
    browser.until("its checks", () -> browser.text("#verdict-line").contains("check"));
    assertThat(browser.all("#sheets .piece")).hasSize(21);
    assertThat(browser.all("#plan-view .bed")).hasSize(21);
    browser.press("#view-side");
    browser.until("side", () -> browser.all("#side-view .bed").size() >= 21);
    browser.press("#view-plan");
    browser.press("#tab-checks");
  }

  /** What decides stands in one window of 1280 x 900, without scrolling. */
  @Test
  void window_of1280by900_holdsWhatDecides() {
    visitor.comes(Jobs.SMALL);
    visitor.untilPlanned();
    browser.view(1280, 900);
    for (String css :
        List.of(
            ".card:nth-of-type(1)",
            ".card:nth-of-type(6)",
            "#cost",
            "#verdict-line",
            "#packet",
            "#sheets .sheet",
            "#plan-view",
            "#why",
            "#tab-checks")) {
      assertThat(browser.isWhollySeen(css)).as(css).isTrue();
    }
    assertThat(browser.js("return document.documentElement.scrollWidth")).isEqualTo(1280L);
    browser.view(1400, 900);
  }

  @Test
  void example_atTheFirstEdit_goesAwayWithItsLeads() {
    visitor.comesFirst();
    visitor.untilPlanned();

    browser.type(field("helix.radius") + "input", "24");

    browser.until("no example", () -> browser.all("#example").isEmpty());
    assertThat(value("#job-title")).isEqualTo("My helix");
    assertThat(value(field("helix.radius") + "input")).isEqualTo("24");
    // What was folded away in the example does not stay as if it were usual.
    assertThat(browser.text(".differing")).isEqualTo("All other options are typical.");
    assertThat(browser.text(field("helix.width") + ".under")).contains("Empty: 4 1/2 in");
    browser.press("#undo");
    browser.until("the example again", () -> !browser.all("#example").isEmpty());
  }

  /** The same wishes give the same answer, in whatever order they are said. */
  @Test
  void wishes_inAnotherOrder_giveTheSameJob() {
    String[][] wishes = {{"helix.radius", "24"}, {"helix.width", "4"}, {"sheets[1].price", "70"}};
    visitor.comesFirst();
    for (String[] wish : wishes) {
      browser.type(field(wish[0]) + "input", wish[1]);
    }
    String one = visitor.fingerprint();
    visitor.comesFirst();
    browser.press("#file-menu");
    browser.press("#new");
    for (int i = wishes.length - 1; i >= 0; i--) {
      browser.type(field(wishes[i][0]) + "input", wishes[i][1]);
    }

    assertThat(visitor.kept("job.helix"))
        .isEqualTo("{\"scale\":\"HO\",\"width\":\"4\",\"radius\":\"24\"}");
    browser.until("asked", () -> !visitor.fingerprint().isEmpty());
    assertThat(one).isNotEmpty();
  }

  @Test
  void radius_changed_changesThePictureAndTheFigures() {
    visitor.comes(Jobs.SMALL);
    visitor.untilPlanned();
    String drawing = "return document.querySelector('#plan-view')?.getAttribute('viewBox') ?? ''";
    browser.until("a picture", () -> !"".equals(browser.js(drawing)));
    Object before = browser.js(drawing);

    browser.type(field("helix.radius") + "input", "28 1/2");

    browser.until("another picture", () -> !before.equals(browser.js(drawing)));
    browser.press("#undo");
    browser.until("the former picture", () -> before.equals(browser.js(drawing)));
    assertThat(value(field("helix.radius") + "input")).isEqualTo("30");
    browser.press("#redo");
    browser.until("the picture again", () -> !before.equals(browser.js(drawing)));
  }

  @Test
  void slider_dragged_movesAllCardsBeforeAnyPlan() {
    visitor.comes(Jobs.SMALL);
    visitor.untilPlanned();

    browser.js(
        "const s = document.querySelector(arguments[0]); s.value = 24 * 25.4;"
            + " s.dispatchEvent(new Event('input', {bubbles: true}))",
        field("helix.radius") + ".slider");

    assertThat(value(field("helix.radius") + "input")).isEqualTo("24");
    browser.until(
        "all cards by patterns or plans of this job",
        () ->
            browser.find(".decision").getDomAttribute("data-former").equals("no")
                && browser.all(".card").size() == 6);
  }

  /** Nothing of a former job is ever at full strength: every panel says of which job it is. */
  @Test
  void answers_ofAFormerJob_areNeverAtFullStrength() {
    visitor.comes(Jobs.SMALL);
    visitor.untilPlanned();
    browser.js(
        """
        window.lies = [];
        window.former = 0;
        window.watch = new MutationObserver(() => {
          for (const part of document.querySelectorAll('[data-former]')) {
            const own = part.dataset.job === document.body.dataset.job;
            if (part.dataset.job && part.dataset.former === 'no' && !own) lies.push(part.className);
            if (part.dataset.former === 'yes') former++;
          }
        });
        watch.observe(document.body, {attributes: true, childList: true, subtree: true, characterData: true});
        """);

    browser.type(field("sheets[1].price") + "input", "70.10");
    browser.until(
        "the new price",
        () -> browser.text("#cost").contains("$70.10") && browser.find("#packet").isEnabled());
    browser.type(field("helix.radius") + "input", "27");
    visitor.untilPlanned();

    assertThat(browser.js("watch.disconnect(); return lies.join()")).isEqualTo("");
    assertThat((Long) browser.js("return former")).isPositive();
  }

  @Test
  void error_inAField_isShownBesideItWithoutMovingTheOthers() {
    visitor.comes(Jobs.SMALL);
    visitor.untilPlanned();
    String place = "return document.querySelector(arguments[0]).getBoundingClientRect().top";
    Object before = browser.js(place, field("helix.climb") + "input");

    browser.type(field("helix.radius") + "input", "wide");

    browser.until(
        "the error", () -> browser.text(field("helix.radius") + ".under").contains("wide"));
    WebElement input = browser.find(field("helix.radius") + "input");
    assertThat(input.getDomAttribute("aria-invalid")).isEqualTo("true");
    assertThat(input.getDomAttribute("aria-describedby")).contains("under");
    assertThat(browser.text(field("helix.radius") + ".under")).doesNotContain("`");
    assertThat(browser.text("#verdict-line")).contains("Fix the marked fields");
    browser.type(field("helix.radius") + "input", "30");
    browser.until(
        "no error", () -> !browser.text(field("helix.radius") + ".under").contains("wide"));
    assertThat(browser.js(place, field("helix.climb") + "input")).isEqualTo(before);
  }

  @Test
  void field_emptied_staysAndSaysWhatIsAssumed() {
    visitor.comesFirst();
    browser.type(field("helix.radius") + "input", "24");
    browser.until("own job", () -> browser.all("#example").isEmpty());
    browser.open(browser.url());
    browser.until("the field", () -> !browser.all(field("helix.radius") + "input").isEmpty());

    browser.type(field("helix.radius") + "input", Keys.BACK_SPACE.toString());

    browser.until(
        "assumed", () -> browser.text(field("helix.radius") + ".under").contains("Empty: 28 in"));
    browser.press(".more summary");
    browser.type(field("helix.joint.half-lap") + "input", "2");
    browser.until("a lap", () -> visitor.kept("job.helix.joint").contains("half-lap"));
    browser.type(field("helix.joint.half-lap") + "input", Keys.BACK_SPACE.toString());
    browser.until("as usual", () -> visitor.kept("job.helix.joint").equals("\"half-lap\""));
    String sold = field("sheets[1].nominal-thickness") + "input";
    browser.type(sold, "1/2");
    browser.type(sold, Keys.BACK_SPACE.toString());
    assertThat(browser.all(sold)).hasSize(1);
    browser.press(".more summary");
  }

  @Test
  void size_chosen_usesThePlanThatIsThere() {
    visitor.comes(Jobs.SMALL);
    visitor.untilDone();
    String sixths = ".card[data-degrees='60'] ";
    String sheets = browser.text(sixths + ".count");
    browser.js("document.querySelector(arguments[0]).focus()", sixths + "input");
    browser.js(
        "window.seen = []; new MutationObserver(() => seen.push(document.querySelector('#cost').textContent)).observe(document.querySelector('#cost'), {childList: true, characterData: true, subtree: true})");

    browser.press(sixths + "input");
    browser.until(
        "it is chosen", () -> browser.find(sixths).getDomAttribute("class").contains("own"));
    visitor.untilDone();

    assertThat(browser.text("#cost")).startsWith(sheets);
    // At no time more sheets than the card said.
    assertThat((List<?>) browser.js("return seen"))
        .allMatch(text -> text.toString().contains(sheets));
    assertThat(browser.js("return document.activeElement.matches(arguments[0])", sixths + "input"))
        .isEqualTo(true);
  }

  @Test
  void joint_priced_sortsTheSizesAnewAtOnce() {
    visitor.comes(Jobs.SMALL);
    visitor.untilDone();
    assertThat(browser.text(".joint")).contains("Empty: 1/20 of a sheet");

    browser.type(field("rates.parts-per-joint") + "input", "90");

    browser.until(
        "its price counts",
        () ->
            browser.text("#why").contains("$90.00 a joint")
                || browser.text(".joint").contains("Time and parts"));
    visitor.untilDone();
    assertThat(browser.text(".card.best .name")).contains("Halves");
  }

  @Test
  void units_switchedThereAndBack_leaveTheTextAsTyped() {
    visitor.comes(Jobs.SMALL);
    visitor.untilPlanned();
    String input = field("helix.climb") + "input";

    assertThat(browser.text(field("helix.climb") + ".unit")).isEqualTo("in");
    browser.choose("#unit", "mm");
    browser.until("millimetres", () -> "152.4 mm".equals(value(input)));
    browser.until("figures in millimetres", () -> browser.text("#plan-view").contains("mm"));
    browser.type(field("helix.width") + "input", "130");
    browser.until("its unit is kept", () -> visitor.kept("job.helix.width").equals("\"130 mm\""));
    browser.choose("#unit", "in");

    browser.until("inches", () -> "6".equals(value(input)));
    assertThat(visitor.kept("job.helix.climb")).isEqualTo("\"6\"");
  }

  @Test
  void problem_thatNamesAnotherField_isShownBesideThatField() {
    visitor.comes(
        Jobs.SMALL.replace("scale: HO", "scale: O").replace("turns:", "tracks: 2\n  turns:"));

    browser.until(
        "the error beside the field that fixes it",
        () -> browser.text(field("helix.track-spacing") + ".under").contains("distance of two"));
    browser.press(".more summary");
    browser.type(field("helix.track-spacing") + "input", "4 1/2");
    browser.until(
        "no error",
        () -> !browser.text(field("helix.track-spacing") + ".under").contains("distance of two"));
  }

  @Test
  void piece_pointedAt_isShownInAllDrawings() {
    visitor.comes(Jobs.SMALL);
    visitor.untilPlanned();

    browser.press("#sheets .piece[data-label='2']", "click");

    browser.until("in the plan", () -> browser.all("#plan-view .bed.chosen").size() == 1);
    assertThat(browser.text("#piece-card")).contains("turn 1").contains("sheet 1");
    browser.press("#view-side");
    browser.until("from the side", () -> !browser.all("#side-view .bed.chosen").isEmpty());
    browser.press("#view-plan");
    browser.press("#plan-view .bed[data-label='3']", "click");
    browser.until(
        "on the sheet",
        () -> "3".equals(browser.find("#sheets .piece.chosen").getDomAttribute("data-label")));
  }
}
