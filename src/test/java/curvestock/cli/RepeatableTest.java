package curvestock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The same bytes from machines of their own: other numbers of threads, other countries, other time
 * zones. What can be changed within one machine is in {@link CommandLineTest}.
 */
class RepeatableTest {

  /** More pieces than any pattern holds, so that the search works, and a helix with its tables. */
  private static final String JOB =
      """
      curvestock: 1
      title: Twice the same (invented)
      invented: true
      units: in
      currency: $
      sheets:
        - {name: ply, size: 30 x 24, thickness: 1/2, price: 20}
      cutting: {kerf: 1/8, margin: 1/4}
      helix: {scale: N, turns: 1 1/2, radius: 11, width: 2 1/2, climb: 3, segments-per-turn: 4}
      search: {effort: quick, seed: 5}
      """;

  @TempDir private Path folder;

  private Process start(Path out, String... options) throws IOException {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(List.of(options));
    line.addAll(List.of("-cp", classPath(), Main.class.getName()));
    line.addAll(List.of("plan", folder.resolve("job.yaml").toString(), "--out", out.toString()));
    // The helix is too low for trains, which is another matter.
    line.add("--anyway");
    line.add("--no-cache");
    return new ProcessBuilder(line)
        .redirectErrorStream(true)
        .redirectOutput(out.resolveSibling(out.getFileName() + ".said").toFile())
        .start();
  }

  /** Surefire hides it behind a jar of its own. */
  private static String classPath() {
    return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
  }

  @Test
  void plan_onOtherThreadsCountriesAndTimeZones_isByteIdentical() throws Exception {
    Files.writeString(folder.resolve("job.yaml"), JOB);
    Path one = folder.resolve("one");
    Path other = folder.resolve("other");
    String threads = "-Djava.util.concurrent.ForkJoinPool.common.parallelism=";
    Process first =
        start(
            one,
            threads + "1",
            "-Duser.language=tr",
            "-Duser.country=TR",
            "-Duser.timezone=Pacific/Chatham");
    Process second =
        start(
            other,
            threads + "4",
            "-Duser.language=ar",
            "-Duser.country=EG",
            "-Duser.extensions=nu-arab",
            "-Duser.timezone=America/St_Johns",
            "-Dfile.encoding=ISO-8859-1");

    assertThat(first.waitFor(5, TimeUnit.MINUTES) && second.waitFor(5, TimeUnit.MINUTES)).isTrue();

    assertThat(first.exitValue()).as(Files.readString(folder.resolve("one.said"))).isZero();
    SortedMap<String, byte[]> expected = CommandRun.contents(one);
    SortedMap<String, byte[]> found = CommandRun.contents(other);
    assertThat(found.keySet()).isEqualTo(expected.keySet());
    assertThat(expected.keySet())
        .contains("plan.json", "sheets/sheet-01-cut.svg", "sheets/sheet-01.png", "schedule.csv");
    expected.forEach((name, bytes) -> assertThat(found.get(name)).as(name).isEqualTo(bytes));
  }
}
