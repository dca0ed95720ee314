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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
  void out_aFolderOfSomebodyElse_isRefusedBeforeAnySearch(@TempDir Path other) throws Exception {
    Files.writeString(other.resolve("photo.txt"), "not ours");

    CommandRun run = CommandRun.of("packet", "--force", "--out", other.toString());

    assertThat(run.code()).isEqualTo(Main.WRONG_INPUT);
    assertThat(run.err()).contains("photo.txt").doesNotContain("trying layouts");
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
    String words = "this helix fails: clearance";
    assertThat(out.resolve("report.html")).content().contains(words);
    assertThat(out.resolve("README.txt")).content().contains(words);
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = file.getFileName().toString();
        if (name.endsWith(".dxf") || name.matches("(sheet|test).*\\.svg")) {
          assertThat(file).as(name).content().contains(words);
        } else if (name.endsWith(".pdf")) {
          try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertThat(text).as(name).contains(words);
          }
        }
      }
    }
  }

  /** A drawing that lost its warning, or stems from before the job was changed, is wrong. */
  @ParameterizedTest
  @ValueSource(strings = {"sheet-01.svg", "sheet-01-cut.svg", "sheet-01-cut-mm.dxf"})
  void check_ofADrawingThatDoesNotSayThatTheHelixFails_findsIt(String name) throws IOException {
    Path job = folder.resolve("low.yaml");
    Files.writeString(job, HelixJob.with("rise-per-turn: 60", "rise-per-turn: 30"));
    Path out = folder.resolve("low");
    Main.run("plan", job.toString(), "--out", out.toString(), "--quiet");
    Path drawing = out.resolve("sheets").resolve(name);

    assertThat(CommandRun.of("check", out.toString()).code()).isZero();

    Files.writeString(
        drawing, Files.readString(drawing).replace("this helix fails", "all is well"));
    CommandRun run = CommandRun.of("check", out.toString());
    assertThat(run.code()).isEqualTo(Main.ANSWER_IS_NO);
    assertThat(run.out())
        .contains("does not say 'this helix fails: clearance", "plan the job again");
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
