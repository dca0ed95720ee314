package curvestock.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.units.LengthStyle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PictureTest {

  private static BufferedImage image(byte[] png) throws Exception {
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  @Test
  void png_cleanSheet_hasTheSheetsProportionsAndInkWhereThePieceIs() throws Exception {
    String svg =
        SheetDrawing.annotated(
            SampleLayouts.stack(), SampleLayouts.title(LengthStyle.INCH_FRACTIONS));

    BufferedImage image = image(Picture.png(svg, 1200));

    double scale = 1200 / 2478.4;
    assertThat(image.getWidth()).isEqualTo(1200);
    // A point of the first piece off its marks, and one of waste; SVG adds a border of 20 mm.
    assertThat(image.getRGB((int) ((20 + 290) * scale), (int) ((20 + 500) * scale)) & 0xFFFFFF)
        .isEqualTo(0xF3EFE6);
    assertThat(image.getRGB((int) ((20 + 40) * scale), (int) ((20 + 600) * scale)) & 0xFFFFFF)
        .isEqualTo(0xFFFFFF);
  }

  @Test
  void png_twice_isTheSame() {
    String svg =
        SheetDrawing.annotated(SampleLayouts.mixed(), SampleLayouts.title(LengthStyle.METRIC));

    assertThat(Picture.png(svg, 500)).isEqualTo(Picture.png(svg, 500));
  }

  @Test
  void png_notADrawingOrWidth_isRefused() {
    assertThatThrownBy(() -> Picture.png("<svg", 100))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("cannot be shown");
    assertThatThrownBy(() -> Picture.png("<svg/>", 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("picture width must be within 1 to 20000 pixels, but was 0");
  }

  /** A picture beside the drawing is not drawn: the page stays white or the drawing is refused. */
  @Test
  void png_outsideResource_isNotLoaded(@TempDir Path folder) throws Exception {
    BufferedImage red = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 100; i++) {
      red.setRGB(i % 10, i / 10, 0xFF0000);
    }
    Path file = folder.resolve("red.png");
    ImageIO.write(red, "png", file.toFile());
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:x=\"http://www.w3.org/1999/xlink\""
            + " width=\"10mm\" height=\"10mm\" viewBox=\"0 0 10 10\"><image width=\"10\""
            + " height=\"10\" x:href=\""
            + file.toUri()
            + "\"/></svg>";
    assertThat(Files.size(file)).isPositive();

    int colour;
    try {
      colour = image(Picture.png(svg, 10)).getRGB(5, 5) & 0xFFFFFF;
    } catch (IllegalArgumentException refused) {
      colour = 0xFFFFFF;
    }

    assertThat(colour).isNotEqualTo(0xFF0000);
  }
}
