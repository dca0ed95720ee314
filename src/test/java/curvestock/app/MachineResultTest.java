package curvestock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.check.CheckReport;
import curvestock.check.Finding;
import curvestock.files.FileProblem;
import curvestock.job.Job;
import curvestock.job.JobException;
import curvestock.job.JobReader;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The files for machines of a whole small job, as its owner gets them. Data invented. */
class MachineResultTest {

  private static final String JOB =
      """
      curvestock: 1
      title: Test shelf
      units: mm
      sheets:
        - {name: birch, size: 1220x610, thickness: 9, price: 20}
      cutting: {kerf: 3, extra: 1, margin: 5}
      pieces:
        - name: bend
          count: 3
          arc: {radius: 300, width: 60, angle: 60}
        - name: bar
          count: 2
          strip: {length: 200, width: 50}
      search: {effort: quick}
      """;

  @TempDir private Path folder;

  private static Map<String, byte[]> files(Job job) throws Infeasible {
    Plan plan = Workshop.plan(job, PlanListener.NONE);
    return Workshop.result(plan, PlanListener.NONE).contents();
  }

  private static CheckReport check(Path file, Job job) throws FileProblem {
    return Workshop.check(List.of(file), Optional.of(job), true)
        .report()
        .drawings()
        .get(0)
        .report()
        .orElseThrow();
  }

  private static String text(Map<String, byte[]> files, String name) {
    assertThat(files).containsKey(name);
    return new String(files.get(name), StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @CsvSource({
    "'', sheet-01-cut.svg, sheet-01-cut-mm.dxf, test-cut.svg",
    "'outlines: offset', sheet-01-cut-offset.svg, sheet-01-cut-offset-mm.dxf, test-cut-offset.svg",
    "'dxf: {unit: in}', sheet-01-cut.svg, sheet-01-cut-in.dxf, test-cut-in.dxf",
    "'lines-within: 0.1', sheet-01-cut.svg, sheet-01-cut-mm.dxf, test-cut-mm.dxf"
  })
  void files_ofEachSetup_areNamedByItAndJudgedRightByTheJob(
      String machine, String svg, String dxf, String test) throws Exception {
    Job job = JobReader.read(JOB + "machine: {" + machine + "}\n", "job.yaml");
    Map<String, byte[]> files = files(job);

    for (String name : new String[] {"sheets/" + svg, "sheets/" + dxf, test}) {
      text(files, name);
      Path file = folder.resolve("drawing");
      Files.write(file, files.get(name));
      CheckReport report = check(file, job);
      assertThat(report.findings()).as(name).extracting(Finding::message).isEmpty();
    }
  }

  @Test
  void files_ofOneSetup_areNotRightForAnother() throws Exception {
    Job finished = JobReader.read(JOB, "job.yaml");
    Job offset = JobReader.read(JOB + "machine: {outlines: offset}\n", "job.yaml");
    Path file = folder.resolve("drawing");
    Files.write(file, files(offset).get("sheets/sheet-01-cut-offset.svg"));

    assertThat(check(file, finished).findings())
        .extracting(Finding::message)
        .anyMatch(message -> message.contains("grown 1.5 mm"));
  }

  @Test
  void notes_sayHowLargeTheOutlinesAre() throws Exception {
    Job finished = JobReader.read(JOB, "job.yaml");
    Job offset = JobReader.read(JOB + "machine: {outlines: offset}\n", "job.yaml");

    assertThat(text(files(finished), "machine.txt"))
        .contains("at finished size", "Do this first", "Cautions", "There are no tabs.");
    Map<String, byte[]> grown = files(offset);
    assertThat(text(grown, "machine.txt")).contains("already offset by half the kerf, 1.500 mm");
    assertThat(text(grown, "sheets/sheet-01.svg")).contains("offset by half the kerf");
    assertThat(text(grown, "plan.json")).contains("\"outlines\" : \"offset\"", "\"grownBy\" : 1.5");
  }

  @Test
  void notes_sayHowFarLinesStrayAndWhereACutLeavesTheSheet() throws Exception {
    String narrow = JOB.replace("margin: 5", "margin: 1");
    Map<String, byte[]> files =
        files(JobReader.read(narrow + "machine: {lines-within: 0.1}\n", "job.yaml"));

    String caution = "The edge margin of 1 mm is less than half the kerf of 3 mm";
    assertThat(text(files, "machine.txt").replaceAll("\\s+", " ")).contains(caution);
    assertThat(text(files, "summary.txt")).contains(caution, "`margin: 1.5 mm` or more");
    assertThat(text(files, "sheets/sheet-01.svg").replaceAll("<[^>]*>|\\s+", " "))
        .containsPattern("off +by +at +most +0\\.100 +mm");
    assertThat(text(files(JobReader.read(JOB, "job.yaml")), "summary.txt"))
        .doesNotContain("margin of");
  }

  /** Two bends lie on half a sheet only if no piece is laid across the cut. */
  @Test
  void bed_smallerThanTheSheet_givesAFileForEachPanel() throws Exception {
    Job job = JobReader.read(JOB + "machine: {bed: 610x420}\n", "job.yaml");
    Plan plan = Workshop.plan(job, PlanListener.NONE);

    assertThat(plan.pieces()).isEqualTo(5);
    assertThat(plan.layouts())
        .allSatisfy(
            layout -> {
              assertThat(layout.sheet().length().millimetres()).isLessThanOrEqualTo(610);
              assertThat(layout.sheet().width().millimetres()).isLessThanOrEqualTo(420);
            });
    assertThat(text(files(job), "summary.txt")).contains("For the machine's bed, rip");
  }

  @Test
  void bed_thatNoPieceFits_isAnAnswerWithAdvice() {
    Job job = JobReader.read(JOB + "machine: {bed: 100x100}\n", "job.yaml");

    assertThatThrownBy(() -> Workshop.plan(job, PlanListener.NONE))
        .isInstanceOf(Infeasible.class)
        .hasMessageContaining("machine's bed");
  }

  @Test
  void hollow_thatTheKerfCannotFollow_isAProblemOfTheJobFile() {
    String comb =
        JOB.replace(
            "    strip: {length: 200, width: 50}\n",
            "    polygon: {corners: [[0, 0], [90, 0], [90, 50], [47, 50], [47, 20], [45, 20], [45, 50],"
                + " [0, 50]]}\n");

    assertThat(JobReader.read(comb, "job.yaml").demands()).hasSize(2);
    assertThatThrownBy(() -> JobReader.read(comb + "machine: {outlines: offset}\n", "job.yaml"))
        .isInstanceOf(JobException.class)
        .hasMessageContaining(
            "machine: piece B has a hole or a hollow that a cut 3 mm (0.118 in) wide");
  }
}
