package curvestock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Commands in a machine of their own, told to end in the middle of their search: they end well,
 * with a whole result that passes its check. The job is the one built in, its search long.
 */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "there a program can only be killed")
class InterruptTest {

  @TempDir private Path folder;

  private record Ended(int code, List<String> said) {}

  /** Runs a command and tells it to end as soon as it says that it looks for more. */
  private Ended interrupted(String... command) throws Exception {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(List.of("-Djava.awt.headless=true", "-Dcurvestock.cache=" + cache(), "-cp"));
    line.add(System.getProperty("java.class.path"));
    line.add(Main.class.getName());
    line.addAll(Arrays.asList(command));
    line.addAll(List.of("--effort", "thorough", "--out", folder.resolve("result").toString()));
    Files.createDirectories(cache());
    Process process =
        new ProcessBuilder(line).redirectOutput(folder.resolve("out.txt").toFile()).start();
    List<String> said = new ArrayList<>();
    boolean told = false;
    try (BufferedReader reader = process.errorReader(StandardCharsets.UTF_8)) {
      for (String text = reader.readLine(); text != null; text = reader.readLine()) {
        said.add(text);
        if (!told && (text.contains("trying to fit") || text.contains("segments of"))) {
          told = true;
          process.toHandle().destroy();
        }
      }
    }
    return new Ended(process.waitFor(), said);
  }

  private Path cache() {
    return folder.resolve("cache");
  }

  /** Another run would come further. */
  private void requireNotKept() throws IOException {
    try (Stream<Path> files = Files.list(cache())) {
      assertThat(files.map(Path::toString)).noneMatch(name -> name.endsWith(".run"));
    }
  }

  private void requireWhole(Ended ended, String file) throws IOException {
    assertThat(ended.said()).contains("Stopping with the best so far ...");
    assertThat(ended.said()).noneMatch(text -> text.contains("Exception"));
    assertThat(ended.code()).isZero();
    assertThat(folder.resolve("result").resolve(file)).exists();
    CommandRun check = CommandRun.of("check", folder.resolve("result").toString());
    assertThat(check.code()).as(check.err()).isZero();
    requireNotKept();
  }

  @Test
  void plan_toldToEnd_writesTheBestSoFar() throws Exception {
    Ended ended = interrupted("plan");

    requireWhole(ended, "sheets/sheet-01.svg");
    assertThat(folder.resolve("result/summary.txt")).content().contains("Stopped early");
  }

  @Test
  void packet_toldToEnd_isAWholePacket() throws Exception {
    Ended ended = interrupted("packet");

    requireWhole(ended, "packet.zip");
    assertThat(folder.resolve("result/report.pdf")).exists();
  }

  @Test
  void compare_toldToEnd_saysWhatWasCompared() throws Exception {
    Ended ended = interrupted("compare");

    assertThat(ended.code()).isZero();
    assertThat(folder.resolve("out.txt")).content().contains("Stopped early");
    assertThat(folder.resolve("result/compare.txt")).exists();
    requireNotKept();
  }
}
