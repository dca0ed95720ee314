package curvestock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packet as a user asks for it. */
class PacketCommandTest {

  /** Invented. */
  private static final String JOB =
      """
      curvestock: 1
      title: Two shapes (invented)
      invented: true
      units: in
      sheets:
        - {name: ply, size: 40 x 30, thickness: 1/2, price: 20}
      cutting: {kerf: 1/8, margin: 1/4}
      pieces:
        - {name: quarter, count: 2, arc: {radius: 12, width: 3, angle: 90}}
        - {name: plate, count: 1, strip: {length: 9, width: 2}}
      search: {effort: quick}
      """;

  @TempDir private Path folder;

  private Path job() throws IOException {
    return Files.writeString(folder.resolve("job.yaml"), JOB);
  }

  @Test
  void packet_onPaperOfChoice_writesFolderGuideAndArchive() throws IOException {
    Path out = folder.resolve("packet");

    int code =
        Main.run("packet", job().toString(), "--out", out.toString(), "--paper", "a3", "--quiet");

    assertThat(code).isZero();
    assertThat(out.resolve("README.txt")).content().contains("patterns/01-", "report.html");
    assertThat(out.resolve("packet.zip")).isNotEmptyFile();
    try (PDDocument pattern = Loader.loadPDF(firstPattern(out))) {
      // ISO 216: A3 is 297 mm wide.
      float[] sides = {
        pattern.getPage(1).getMediaBox().getWidth(), pattern.getPage(1).getMediaBox().getHeight()
      };
      assertThat(Math.min(sides[0], sides[1]) / 72 * 25.4).isBetween(296.95, 297.05);
    }
  }

  private static byte[] firstPattern(Path out) throws IOException {
    try (var files = Files.list(out.resolve("patterns"))) {
      return Files.readAllBytes(files.sorted().findFirst().orElseThrow());
    }
  }

  @Test
  void packet_withoutAFolder_isAWrongInput() throws IOException {
    assertThat(Main.run("packet", job().toString())).isEqualTo(Main.WRONG_INPUT);
  }
}
