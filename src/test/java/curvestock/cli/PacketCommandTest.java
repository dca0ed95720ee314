package curvestock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.job.HelixJob;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
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

  /** 30 mm a turn leave no room for the trains: written all the same, and marked everywhere. */
  @Test
  void packet_ofAHelixThatFails_isMarkedEverywhere() throws IOException {
    Path job = folder.resolve("low.yaml");
    Files.writeString(job, HelixJob.with("rise-per-turn: 60", "rise-per-turn: 30"));
    Path out = folder.resolve("low");

    int code =
        Main.run("packet", job.toString(), "--out", out.toString(), "--no-compare", "--quiet");

    assertThat(code).isEqualTo(Main.ANSWER_IS_NO);
    String words = "this helix fails: free height";
    assertThat(out.resolve("report.html")).content().contains(words);
    assertThat(out.resolve("README.txt")).content().contains(words);
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = file.getFileName().toString();
        if (name.matches("sheet-[0-9]+\\.svg") && !file.toString().contains("machine")) {
          assertThat(file).content().contains(words);
        } else if (name.endsWith(".pdf")) {
          try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertThat(text).as(name).contains(words);
          }
        }
      }
    }
  }

  @Test
  void plan_ofAHelixThatFails_exitsWithOneUnlessAnyway() throws IOException {
    Path job = folder.resolve("low.yaml");
    Files.writeString(job, HelixJob.with("rise-per-turn: 60", "rise-per-turn: 30"));

    assertThat(Main.run("plan", job.toString(), "--quiet")).isEqualTo(Main.ANSWER_IS_NO);
    assertThat(Main.run("plan", job.toString(), "--quiet", "--anyway")).isZero();
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
