package curvestock.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FinishedRunsTest {

  private static final List<String> PLAN = List.of("plan", "job.yaml", "--out");

  @TempDir private Path folder;

  private Path job;
  private Path stock;

  @BeforeEach
  void write() throws IOException {
    job = Files.writeString(folder.resolve("job.yaml"), "title: invented\n");
    stock = Files.writeString(folder.resolve("stock.yaml"), "sheets: []\n");
  }

  private FinishedRuns runs(String build, long mostBytes) {
    return new FinishedRuns(
        new CacheFolder(folder.resolve("cache"), build, ".run", 100_000, mostBytes));
  }

  private FinishedRuns runs() {
    return runs("build 1", 1_000_000);
  }

  private Inputs read(Path... files) throws FileProblem {
    Inputs inputs = new Inputs();
    for (Path file : files) {
      inputs.read(file);
    }
    return inputs;
  }

  private static FinishedRun run(String said) {
    return new FinishedRun(
        1,
        said,
        new TreeMap<>(
            Map.of(
                "sheets/sheet-01.svg",
                "<svg>\u00e9</svg>".getBytes(StandardCharsets.UTF_8),
                "b",
                new byte[] {0, -1, 7})));
  }

  private List<Path> entries() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("cache"))) {
      return files.sorted().toList();
    }
  }

  private Path largest() throws IOException {
    Path largest = entries().get(0);
    for (Path entry : entries()) {
      largest = Files.size(entry) > Files.size(largest) ? entry : largest;
    }
    return largest;
  }

  @Test
  void run_kept_isFoundToTheByte_andWrittenAsAResult() throws Exception {
    FinishedRun run = run("Buy 2 sheets.\n\nWritten: " + FinishedRun.FOLDER + " \u00bd in");
    runs().keep(PLAN, read(job, stock), run);

    FinishedRun found = runs().find(PLAN).orElseThrow();

    assertThat(found.code()).isEqualTo(1);
    assertThat(found.said()).isEqualTo(run.said());
    assertThat(found.files().keySet()).isEqualTo(run.files().keySet());
    found.files().forEach((path, bytes) -> assertThat(bytes).isEqualTo(run.files().get(path)));
    found.publish(folder.resolve("out"), false);
    assertThat(folder.resolve("out/b")).hasBinaryContent(new byte[] {0, -1, 7});
    assertThat(folder.resolve("out/contents.txt")).content().contains("sheets/sheet-01.svg");
    assertThatThrownBy(() -> found.publish(folder.resolve("out"), false))
        .isInstanceOf(FileProblem.class)
        .hasMessageContaining("--force");
  }

  @Test
  void run_ofAChangedJob_isNotFound_andOfOneChangedBack_is() throws Exception {
    runs().keep(PLAN, read(job), run("one"));
    Files.writeString(job, "title: invented again\n");
    assertThat(runs().find(PLAN)).isEmpty();
    runs().keep(PLAN, read(job), run("two"));

    assertThat(runs().find(PLAN).orElseThrow().said()).isEqualTo("two");
    Files.writeString(job, "title: invented\n");
    assertThat(runs().find(PLAN).orElseThrow().said()).isEqualTo("one");
  }

  @Test
  void run_whoseOtherFileChangedOrWent_isNotFound() throws Exception {
    runs().keep(PLAN, read(job, stock), run("one"));
    Files.writeString(stock, "sheets: [changed]\n");
    assertThat(runs().find(PLAN)).isEmpty();
    Files.delete(stock);

    assertThat(runs().find(PLAN)).isEmpty();
  }

  @Test
  void run_ofAnotherQuestionOrBuild_isNotFound() throws Exception {
    runs().keep(PLAN, read(job), run("one"));

    assertThat(runs().find(List.of("plan", "job.yaml", "--out", "--seed", "2"))).isEmpty();
    assertThat(runs().find(List.of("plan", "job.yaml"))).isEmpty();
    assertThat(runs("build 2", 1_000_000).find(PLAN)).isEmpty();
  }

  @Test
  void entry_withOneWrongBit_isThrownAway() throws Exception {
    runs().keep(PLAN, read(job), run("one"));
    byte[] right = Files.readAllBytes(largest());
    for (int i = 0; i < right.length; i++) {
      byte[] wrong = right.clone();
      wrong[i] = (byte) (wrong[i] ^ 1);
      Path entry = largest();
      Files.write(entry, wrong);
      assertThat(runs().find(PLAN)).as("byte %s", i).isEmpty();
      assertThat(entry).doesNotExist();
      Files.write(entry, right);
    }

    assertThat(runs().find(PLAN)).isPresent();
  }

  @Test
  void run_byWhatCannotBeReadAgain_isNotKept() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), job);
    runs().keep(PLAN, read(link), run("by a link, as pipes are"));
    assertThat(folder.resolve("cache")).doesNotExist();

    Inputs changing = read(job);
    Files.writeString(job, "title: changed while it was read\n");
    changing.read(job);
    runs().keep(PLAN, changing, run("two texts in one run"));

    assertThat(folder.resolve("cache")).doesNotExist();
  }

  /** Which letters the machine's fonts have may change with the next font that is put there. */
  @Test
  void run_withLettersOfTheMachinesFonts_isNotKept() throws Exception {
    Files.writeString(job, "title: \u03c0 \u0416 \u2300\n");
    runs().keep(PLAN, read(job), run("a sign that may be missing"));
    assertThat(folder.resolve("cache")).doesNotExist();
    Files.writeString(job, "title: \u03c0 \u0416 \u2033\n");

    runs().keep(PLAN, read(job), run("all letters are the program's own"));

    assertThat(runs().find(PLAN)).isPresent();
  }

  @Test
  void entries_beyondTheSize_goOldestFirst() throws Exception {
    for (int i = 0; i < 4; i++) {
      runs("build", 2_000).keep(List.of("plan", "" + i), read(job), run("x".repeat(800)));
      for (Path entry : entries()) {
        FileTime now = Files.getLastModifiedTime(entry);
        Files.setLastModifiedTime(entry, FileTime.fromMillis(now.toMillis() - 10_000));
      }
    }

    long kept = 0;
    for (Path entry : entries()) {
      kept += Files.size(entry);
    }
    assertThat(kept).isLessThan(3_300);
    assertThat(runs("build", 2_000).find(List.of("plan", "0"))).isEmpty();
    assertThat(runs("build", 2_000).find(List.of("plan", "3"))).isPresent();
  }

  @Test
  void folder_forbidden_troublesNobody() throws Exception {
    Files.writeString(folder.resolve("cache"), "a file where the folder should be");

    runs().keep(PLAN, read(job), run("one"));

    assertThat(runs().find(PLAN)).isEmpty();
  }
}
