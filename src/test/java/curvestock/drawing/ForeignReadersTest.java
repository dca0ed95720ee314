package curvestock.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import curvestock.dxf.SheetDxf;
import curvestock.machine.MachineSetup;
import curvestock.machine.MachineSheet;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Files for machines in readers that share nothing with us: Debian's librsvg (rsvg-convert) and the
 * open-source library ezdxf for Python. Where they are not installed the tests are skipped.
 */
class ForeignReadersTest {

  private static final MachineSheet SHEET =
      MachineSheet.of(SampleLayouts.mixed(), List.of(), MachineSetup.DEFAULT);

  private static final String READ =
      """
      import sys, ezdxf
      doc = ezdxf.readfile(sys.argv[1])
      audit = doc.audit()
      print(len(audit.errors), len(audit.fixes), doc.dxfversion, doc.header["$INSUNITS"],
            doc.header["$MEASUREMENT"], *sorted({e.dxf.layer for e in doc.modelspace()}))
      """;

  @TempDir private Path folder;

  private String run(String... command) throws IOException, InterruptedException {
    File words = folder.resolve("words.txt").toFile();
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(words).start();
    assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
    return process.exitValue() == 0 ? Files.readString(words.toPath()).strip() : "failed";
  }

  private boolean isHere(String... command) throws InterruptedException {
    try {
      return !run(command).equals("failed");
    } catch (IOException e) {
      return false;
    }
  }

  /** At 25.4 dots to the inch a dot is a millimetre: SVG 1.1, section 7.10, units of length. */
  @Test
  void svg_inLibrsvg_isAsLargeAsTheSheet() throws Exception {
    assumeTrue(isHere("rsvg-convert", "--version"), "rsvg-convert is not installed");
    Path svg = folder.resolve("sheet.svg");
    Path png = folder.resolve("sheet.png");
    Files.writeString(svg, MachineDrawing.svg(SHEET));

    String said =
        run("rsvg-convert", "-d", "25.4", "-p", "25.4", "-o", png.toString(), svg.toString());

    assertThat(said).isEmpty();
    BufferedImage image = ImageIO.read(png.toFile());
    assertThat(image.getWidth()).isBetween(2438, 2439);
    assertThat(image.getHeight()).isBetween(1219, 1220);
  }

  @Test
  void dxf_inEzdxf_hasNoFaultAndKnowsItsUnit() throws Exception {
    assumeTrue(isHere("python3", "-c", "import ezdxf"), "Python's ezdxf is not installed");
    Path dxf = folder.resolve("sheet.dxf");
    Files.writeString(dxf, SheetDxf.of(SHEET), StandardCharsets.US_ASCII);

    assertThat(run("python3", "-c", READ, dxf.toString()))
        .isEqualTo("0 0 AC1009 4 1 CUT MARK SHEET TITLE");
  }
}
