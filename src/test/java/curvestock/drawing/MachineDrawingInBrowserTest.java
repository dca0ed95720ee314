package curvestock.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.DebianChromium;
import curvestock.geometry.Box;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.units.LengthStyle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * Our drawings read and drawn by an engine that is not the writer's: see {@link DebianChromium}.
 */
@Tag("browser")
class MachineDrawingInBrowserTest {

  /** CSS pixels to a millimetre: 96 to an inch (CSS Values and Units, absolute lengths). */
  private static final double PIXELS = 96 / 25.4;

  @TempDir private static Path folder;
  private static ChromeDriver driver;

  @BeforeAll
  static void start() {
    driver =
        DebianChromium.start(
            folder.resolve("profile"),
            options ->
                options.addArguments(
                    "--hide-scrollbars",
                    "--force-device-scale-factor=1",
                    "--window-size=1300,760"));
  }

  @AfterAll
  static void stop() {
    if (driver != null) {
      driver.quit();
    }
  }

  private static void open(String svg) throws IOException {
    Path file = folder.resolve("drawing.svg");
    Files.writeString(file, svg);
    driver.get(file.toUri().toString());
  }

  private static Map<?, ?> measured(String id) {
    return (Map<?, ?>)
        driver.executeScript(
            "const p = document.getElementById(arguments[0]);"
                + "const b = p.getBBox(), r = p.getBoundingClientRect();"
                + "return {x: b.x, y: b.y, w: b.width, h: b.height, l: p.getTotalLength(),"
                + " pixels: r.width};",
            id);
  }

  private static double number(Map<?, ?> map, String key) {
    return ((Number) map.get(key)).doubleValue();
  }

  /** The browser's box and length of each outline are those of the exact outline. */
  @Test
  void browser_measuresEveryOutline_asItIs() throws Exception {
    Layout layout = SampleLayouts.mixed();
    open(SheetDrawing.clean(layout));
    double top = layout.sheet().outline().box().maxY();
    Offset<Double> close = Offset.offset(0.02);
    for (int i = 0; i < layout.placements().size(); i++) {
      Placement placement = layout.placements().get(i);
      Box box = placement.outline().box();

      Map<?, ?> drawn = measured("piece-" + (i + 1));

      assertThat(number(drawn, "x")).isCloseTo(box.minX(), close);
      assertThat(number(drawn, "y")).isCloseTo(top - box.maxY(), close);
      assertThat(number(drawn, "w")).isCloseTo(box.width(), close);
      assertThat(number(drawn, "h")).isCloseTo(box.height(), close);
      // Browsers measure along curves by chords; a thousandth is theirs.
      double length = placement.outline().outer().perimeter();
      assertThat(number(drawn, "l")).isCloseTo(length, Offset.offset(0.001 * length));
    }
  }

  /** A page at 96 dots to the inch: the sheet of 96 in is 9216 pixels wide. */
  @Test
  void browser_showsTheSheet_atItsTrueSize() throws Exception {
    open(SheetDrawing.clean(SampleLayouts.stack()));

    assertThat(number(measured("edge"), "pixels"))
        .isCloseTo(2438.4 * PIXELS, Offset.offset(1.0))
        .isCloseTo(9216, Offset.offset(1.0));
  }

  /**
   * Chromium's picture and Batik's: every dark point of one has a dark point of the other within
   * two pixels. Colours and soft edges differ between engines; where lines lie must not.
   */
  @Test
  void browser_andBatik_drawTheSameLines() throws Exception {
    String plain = SheetDrawing.clean(SampleLayouts.mixed());
    String thick = plain.replace("stroke-width=\"0.1\"", "stroke-width=\"6\"");
    int width = 1200;
    BufferedImage batik = image(Picture.png(thick, width));
    open(
        thick.replaceFirst(
            "width=\"[^\"]+\" height=\"[^\"]+\"",
            "width=\"" + width + "\" height=\"" + batik.getHeight() + "\""));

    BufferedImage chromium = image(driver.getScreenshotAs(OutputType.BYTES));

    assertThat(chromium.getWidth()).isGreaterThanOrEqualTo(width);
    assertThat(darkPoints(batik, width)).hasSizeGreaterThan(5000);
    assertThat(strays(batik, chromium, width)).isZero();
    assertThat(strays(chromium, batik, width)).isZero();
  }

  @Test
  void browser_readsTheAnnotatedDrawing_withoutComplaint() throws Exception {
    open(SheetDrawing.annotated(SampleLayouts.mixed(), SampleLayouts.title(LengthStyle.METRIC)));

    assertThat(driver.executeScript("return document.getElementsByTagName('parsererror').length"))
        .isEqualTo(0L);
    assertThat(number(measured("edge"), "w")).isCloseTo(2438.4, Offset.offset(0.02));
  }

  private static BufferedImage image(byte[] png) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  private static List<int[]> darkPoints(BufferedImage image, int width) {
    List<int[]> points = new java.util.ArrayList<>();
    for (int y = 4; y < Math.min(image.getHeight(), 596); y++) {
      for (int x = 4; x < width - 4; x++) {
        if (isDark(image, x, y, 128)) {
          points.add(new int[] {x, y});
        }
      }
    }
    return points;
  }

  private static boolean isDark(BufferedImage image, int x, int y, int limit) {
    int rgb = image.getRGB(x, y);
    return ((rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255)) / 3 < limit;
  }

  private static long strays(BufferedImage from, BufferedImage to, int width) {
    return darkPoints(from, width).stream().filter(point -> !isNear(to, point)).count();
  }

  private static boolean isNear(BufferedImage image, int[] point) {
    for (int dy = -2; dy <= 2; dy++) {
      for (int dx = -2; dx <= 2; dx++) {
        if (isDark(image, point[0] + dx, point[1] + dy, 200)) {
          return true;
        }
      }
    }
    return false;
  }
}
