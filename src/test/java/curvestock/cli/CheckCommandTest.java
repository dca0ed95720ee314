package curvestock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drawings judged together against the job that lies beside them, or another. Data invented. */
class CheckCommandTest {

  private static final String JOB =
      """
      curvestock: 1
      title: Test planks
      units: mm
      sheets:
        - {name: board, size: 330x130, thickness: 9, price: 5}
      stock-file: rest.yaml
      cutting: {kerf: 3, margin: 5}
      pieces:
        - {name: plank, count: 5, strip: {length: 300, width: 50}}
      search: {effort: quick}
      """;

  private static final String REST =
      "sheets:\n  - {name: rest, size: 330x70 mm, thickness: 9 mm, on-hand: true, available: 1}\n";

  @TempDir private static Path shared;
  @TempDir private Path folder;
  private Path out;

  @BeforeAll
  static void plan() throws IOException {
    Files.writeString(shared.resolve("job.yaml"), JOB);
    Files.writeString(shared.resolve("rest.yaml"), REST);
    CommandRun run =
        CommandRun.of("plan", shared + "/job.yaml", "--quiet", "--out", shared + "/out");
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(shared.resolve("out/sheets/sheet-03.svg")).exists();
  }

  /** A copy far from the job file. */
  @BeforeEach
  void copy() throws IOException {
    out = folder.resolve("out");
    Path from = shared.resolve("out");
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Files.copy(file, out.resolve(from.relativize(file).toString()));
      }
    }
  }

  private static CommandRun check(Object... args) {
    return CommandRun.of(
        Stream.concat(Stream.of("check"), Stream.of(args).map(Object::toString))
            .toArray(String[]::new));
  }

  private Path sheet(String name) {
    return out.resolve("sheets").resolve(name);
  }

  @Test
  void folder_withoutAJob_isJudgedByTheJobInItsPlan() {
    for (Path path : new Path[] {out, out.resolve("sheets")}) {
      CommandRun run = check(path);

      assertThat(run.code()).as(run.out() + run.err()).isZero();
      assertThat(run.out())
          .contains(
              "drawings for people (SVG), 3 files: complete, 5 of 5 pieces",
              "cut files (SVG), 3 files: complete, 5 of 5 pieces",
              "cut files (DXF), 3 files: complete, 5 of 5 pieces")
          .doesNotContain("WRONG");
    }
    assertThat(check(out).out()).contains("test-cut.svg (test cut): right");
    assertThat(check(out.resolve("test-cut.svg")).code()).isZero();
  }

  @Test
  void sheet_missing_isAFaultUnlessOnlySomeAreGiven() {
    CommandRun some = check(sheet("sheet-01.svg"), sheet("sheet-02.svg"));
    CommandRun partial = check(sheet("sheet-01.svg"), sheet("sheet-02.svg"), "--partial");

    assertThat(some.code()).isEqualTo(1);
    assertThat(some.out())
        .containsPattern("drawings for people \\(SVG\\), 2 files: missing: [12] x A\\. Give");
    assertThat(partial.code()).isZero();
    assertThat(partial.out()).containsPattern("not among those given: [12] x A\\.");
  }

  @Test
  void sheet_twice_isAFault() {
    CommandRun run = check(out, sheet("sheet-01-cut-mm.dxf"));

    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out())
        .contains("is the same drawing as ", "cut files (DXF), 4 files: more than");
  }

  @Test
  void piece_deleted_isAFaultEvenWhereOnlySomeSheetsAreGiven() throws IOException {
    Path file = sheet("sheet-01-cut.svg");
    String svg = Files.readString(file);
    Files.writeString(file, svg.replaceFirst("<path id=\"piece-1\"[^>]*/>", ""));

    CommandRun run = check(file, "--partial");

    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).contains("WRONG", "piece A is drawn ");
  }

  @Test
  void files_unreadable_areNamedAndTheOthersJudged() throws IOException {
    Path broken = Files.writeString(sheet("broken.svg"), "<svg");

    CommandRun run = check(broken, out.resolve("none.dxf"), sheet("sheet-01.svg"), "--partial");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("Not checked: ", "broken.svg", "none.dxf");
    assertThat(run.out())
        .contains("broken.svg: NOT CHECKED", "not readable XML", "there is no such file")
        .contains("sheet-01.svg: right");
  }

  @Test
  void drawing_withoutPlanOrJob_asksForTheJob() throws IOException {
    Path alone = Files.copy(sheet("sheet-01.svg"), folder.resolve("alone.svg"));

    CommandRun run = check(alone);

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("alone.svg", "no plan.json beside it", "--job JOB");
    assertThat(check(alone, "--partial", "--job", shared + "/job.yaml").code()).isZero();
    assertThat(check(out, alone).err()).contains("--job JOB");
  }

  @Test
  void plan_thatCarriesNoJob_asksForIt() throws IOException {
    Path plan = out.resolve("plan.json");
    Files.writeString(plan, "{\"curvestockPlan\": 2}");
    assertThat(check(out).err()).contains("plan.json", "does not say which job", "--job JOB");
    for (String text : new String[] {"{\"curvestockPlan\": 7}", "[", "3"}) {
      Files.writeString(plan, text);
      CommandRun run = check(out);
      assertThat(run.code()).isEqualTo(2);
      assertThat(run.err()).contains("plan.json", "Curvestock did not write this plan");
    }
    assertThat(check(out, "--job", shared + "/job.yaml").code()).isZero();
  }

  @Test
  void drawings_ofTwoPlans_areRefused() {
    CommandRun run = check(out, shared.resolve("out"));

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("belongs to a different plan");
  }

  @Test
  void folder_withoutDrawings_isRefused() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));

    CommandRun run = check(empty);

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("there are no drawings in this folder");
  }
}
