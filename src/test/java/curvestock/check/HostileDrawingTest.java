package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import curvestock.check.Finding.Kind;
import curvestock.drawing.SampleLayouts;
import curvestock.drawing.SheetDrawing;
import curvestock.layout.Layout;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawings that are broken, odd or made to do harm. */
class HostileDrawingTest {

  private static final Layout LAYOUT = SampleLayouts.mixed();
  private static final String GOOD = SheetDrawing.clean(LAYOUT);

  private static CheckReport check(String svg) throws CheckException {
    return LayoutCheck.check(svg, Expectation.of(LAYOUT));
  }

  private static String drawingOf(String cutGroup) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"2438.4mm\" height=\"1219.2mm\""
        + " viewBox=\"0 0 2438.4 1219.2\">"
        + "<g id=\"sheet\"><path id=\"edge\" d=\"M 0 0 H 2438.4 V 1219.2 H 0 Z\"/></g>"
        + cutGroup
        + "</svg>";
  }

  private static String pathOf(String data) {
    return drawingOf("<g id=\"cut\"><path id=\"p\" data-piece=\"B\" d=\"" + data + "\"/></g>");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<!DOCTYPE svg>",
        "<!DOCTYPE svg [<!ENTITY a \"aaaa\">]>",
        "<!DOCTYPE svg SYSTEM \"file:///etc/hostname\">",
        "<!DOCTYPE svg [<!ENTITY x SYSTEM \"file:///etc/hostname\">]>"
      })
  void check_documentType_isRefused(String documentType) {
    String svg = GOOD.replaceFirst("\\?>", "?>" + documentType);

    assertThatThrownBy(() -> check(svg))
        .isInstanceOf(CheckException.class)
        .hasMessageContaining("DOCTYPE");
  }

  @Test
  void check_undefinedEntity_isRefused() {
    assertThatThrownBy(() -> check(GOOD.replace("<desc>", "<desc>&boom;")))
        .isInstanceOf(CheckException.class)
        .hasMessageContaining("line 4");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "hello", "<svg", "<html/>", "<svg/>", "\u0000", "<a><b></a>"})
  void check_notADrawing_isRefused(String text) {
    assertThatThrownBy(() -> check(text)).isInstanceOf(CheckException.class);
  }

  @Test
  void check_noCutGroup_isRefused() {
    assertThatThrownBy(() -> check(drawingOf("")))
        .isInstanceOf(CheckException.class)
        .hasMessage("the drawing has no group with the id 'cut', so nothing to check");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M NaN 0 L 1 1 Z|malformed",
        "M 0 0 L Infinity 1 Z|malformed",
        "M 0 0 L 1e300 1 L 5 5 Z|out of bounds",
        "M 0 0 L 1e9 1 L 5 5 Z|out of bounds",
        "M 0 0 L 1e999999999 1 L 5 5 Z|out of bounds",
        "L 0 0 Z|malformed",
        "M 0 0 L 100 0 L 100 100|open",
        "M 0 0 L 100 0 L 100 100 M 5 5 L 6 6 L 6 5 Z|open",
        "M 0 0|encloses nothing",
        "M 0 0 Z|encloses nothing",
        "''|encloses nothing",
        "M 0 0 C 1 1 2 2 3 0 Z|neither line nor circular arc",
        "M 0 0 Q 1 1 2 2 L 5 0 Z|neither line nor circular arc",
        "M 0 0 A 10 11 0 0 1 5 5 Z|not circular",
        "M 0 0 A 10 10 0 0110 10 Z|set every number off",
        "M 0 0 X 4 Z|malformed"
      })
  void check_badPathData_saysWhat(String data, String message) throws Exception {
    CheckReport report = check(pathOf(data));

    assertThat(report.findings())
        .anyMatch(f -> f.kind() == Kind.SHAPE && f.message().contains(message));
  }

  @Test
  void check_shapeWithoutArea_isFoundAndNothingBreaks() throws Exception {
    for (String data :
        List.of(
            "M 50 50 L 100 100 Z",
            "M 50 50 L 50.0001 50 L 50 50.0001 Z",
            "M 50 50 L 100 100 L 100 50 L 50 100 Z",
            "M 50 50 A 0 0 0 0 1 100 100 L 100 50 Z",
            "M 50 50 A 1 1 0 0 1 150 50 A 1 1 0 0 1 50 50 Z",
            "M 50 50 A 1000000 1000000 0 1 1 51 50 Z")) {
      assertThat(check(pathOf(data)).findings()).as(data).anyMatch(f -> f.kind() == Kind.SHAPE);
    }
  }

  @Test
  void check_tenThousandPaths_isRefusedAtOnce() {
    String paths = "<path d=\"M 0 0 L 1 0 L 1 1 Z\" data-piece=\"B\"/>".repeat(10_000);

    assertTimeoutPreemptively(
        Duration.ofSeconds(20),
        () ->
            assertThatThrownBy(() -> check(drawingOf("<g id=\"cut\">" + paths + "</g>")))
                .isInstanceOf(CheckException.class)
                .hasMessageContaining("more than 5000 outlines"));
  }

  @Test
  @Tag("slow")
  void check_thousandsOfPiecesOnOneSpot_stopsAfterAHundredFaults() throws Exception {
    String path = GOOD.substring(GOOD.indexOf("<path id=\"piece-5\""));
    path = path.substring(0, path.indexOf("/>") + 2);
    String svg = drawingOf("<g id=\"cut\">" + path.repeat(4_000) + "</g>");

    CheckReport report = assertTimeoutPreemptively(Duration.ofSeconds(60), () -> check(svg));

    assertThat(report.findings()).hasSizeLessThanOrEqualTo(101);
    assertThat(report.findings().get(report.findings().size() - 1).kind()).isEqualTo(Kind.MORE);
  }

  @Test
  @Tag("slow")
  void check_manyIntricateOutlines_isRefusedInTime() {
    StringBuilder paths = new StringBuilder();
    for (int k = 0; k < 60; k++) {
      paths.append("<path data-piece=\"B\" d=\"M 900 600");
      for (int i = 1; i < 1900; i++) {
        double angle = 2 * Math.PI * i / 1900;
        double radius = 200 + (i % 2) * 0.5 + k;
        paths.append(
            String.format(
                Locale.ROOT,
                " L %.4f %.4f",
                700 + radius * Math.cos(angle),
                600 + radius * Math.sin(angle)));
      }
      paths.append(" Z\"/>");
    }

    assertTimeoutPreemptively(
        Duration.ofSeconds(60),
        () ->
            assertThatThrownBy(() -> check(drawingOf("<g id=\"cut\">" + paths + "</g>")))
                .isInstanceOf(CheckException.class)
                .hasMessageContaining("too many edges"));
  }

  @Test
  void check_longPath_isFoundAtOnce() throws Exception {
    String data = "M 0 0" + " L 10 10 L 20 5".repeat(100_000) + " Z";

    CheckReport report =
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> check(pathOf(data)));

    assertThat(report.findings()).anyMatch(f -> f.message().contains("more than 2000 commands"));
  }

  @Test
  void check_deeplyNestedGroups_isRefused() {
    String nested = "<g>".repeat(10_000) + "</g>".repeat(10_000);

    assertThatThrownBy(() -> check(drawingOf(nested)))
        .isInstanceOf(CheckException.class)
        .hasMessageContaining("nested");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<g id=\"cut\"|<g id=\"cut\" transform=\"scale(2)\"|transform",
        "<path id=\"piece-3\"|<path id=\"piece-3\" transform=\"translate(1)\"|transform",
        "<path id=\"piece-3\"|<path id=\"piece-3\" style=\"display:none\"|hides what it holds (display none)",
        "<path id=\"piece-3\"|<path id=\"piece-3\" style=\"d:none\"|style",
        "<path id=\"piece-3\"|<circle r=\"5\"/><path id=\"piece-3\"|circle",
        "<path id=\"piece-3\"|<use href=\"#piece-1\"/><path id=\"piece-3\"|use",
        "<desc>|<style>path{d:none}</style><desc>|style"
      })
  void check_thingsThatMoveOrHideGeometry_areFound(String from, String to, String named)
      throws Exception {
    CheckReport report = check(GOOD.replace(from, to));

    assertThat(report.findings())
        .anyMatch(f -> f.kind() == Kind.STRUCTURE && f.message().contains(named));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "width=\"2438.4mm\"|width=\"2438.4\"",
        "width=\"2438.4mm\"|width=\"95in\"",
        "width=\"2438.4mm\"|width=\"100%\"",
        "width=\"2438.4mm\"|width=\"2439mm\"",
        "viewBox=\"0 0 2438.4 1219.2\"|viewBox=\"0 0 9216 4608\"",
        "viewBox=\"0 0 2438.4 1219.2\"|viewBox=\"0 0 . 1219.2\"",
        "viewBox=\"0 0 2438.4 1219.2\"|",
      })
  void check_scaleNotOneToOne_isFound(String from, String to) throws Exception {
    CheckReport report = check(GOOD.replace(from, to == null ? "" : to));

    assertThat(report.findings()).singleElement().extracting(Finding::kind).isEqualTo(Kind.SCALE);
  }

  @Test
  void check_sweepFlagsSwapped_isFound() throws Exception {
    String swapped =
        GOOD.replace(" 0 0 0 ", " 0 0 x ").replace(" 0 0 1 ", " 0 0 0 ").replace(" x ", " 1 ");

    assertThat(check(swapped).findings())
        .anyMatch(f -> f.kind() == Kind.SHAPE && f.paths().contains("piece-3"));
  }

  @Test
  @Tag("slow")
  void check_drawingWithRandomDamage_neverBreaks() {
    long seed = 20260;
    Random random = new Random(seed);
    for (int i = 0; i < 150; i++) {
      StringBuilder damaged = new StringBuilder(GOOD);
      for (int k = 0; k <= i % 3; k++) {
        int at = random.nextInt(damaged.length());
        switch (random.nextInt(3)) {
          case 0 -> damaged.deleteCharAt(at);
          case 1 -> damaged.setCharAt(at, (char) (32 + random.nextInt(95)));
          default -> damaged.insert(at, (char) (32 + random.nextInt(95)));
        }
      }
      try {
        assertThat(check(damaged.toString())).as("seed %d, case %d", seed, i).isNotNull();
      } catch (CheckException e) {
        assertThat(e.getMessage()).as("seed %d, case %d", seed, i).isNotBlank();
      }
    }
  }

  /** Found by noise: the message held all the digits. */
  @Test
  void check_numberOfManyDigits_isToldInShort() throws Exception {
    CheckReport report = check(pathOf("M 0 0 L " + "9".repeat(84_000) + " 0 L 5 5 Z"));

    assertThat(report.findings()).anyMatch(f -> f.message().contains("out of bounds: 9999"));
    assertThat(report.findings()).allMatch(f -> f.message().length() < 500);
  }

  @Test
  void check_nameThatSteersATerminal_isToldOnOnePlainLine() throws Exception {
    String name = "a\u009b31m\u202e" + "long".repeat(100_000);

    CheckReport report =
        check(
            GOOD.replace("id=\"piece-3\"", "id=\"" + name + "\" style=\"\"" + " transform=\"x\"")
                .replace("data-piece=\"B\"", "data-piece=\"" + name + "\""));

    assertThat(report.findings())
        .isNotEmpty()
        .allMatch(f -> f.message().length() < 1_200 && f.message().indexOf(0x9b) < 0)
        .anyMatch(f -> f.message().contains("\\u009B31m\\u202E"));
  }
}
