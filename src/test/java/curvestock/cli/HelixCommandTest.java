package curvestock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.job.HelixJob;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole runs of the command in a temporary folder. */
class HelixCommandTest {

  @TempDir private Path folder;

  private CommandRun run(String job, String... more) throws IOException {
    Path file = folder.resolve("job.yaml");
    Files.writeString(file, job);
    List<String> args =
        Stream.concat(Stream.of("helix", file.toString(), "--quiet"), Stream.of(more)).toList();
    return CommandRun.of(args.toArray(String[]::new));
  }

  @Test
  void helix_noJob_judgesTheDefaultJob() {
    CommandRun run = CommandRun.of("helix", "--quiet", "--no-sheets");

    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("[invented data]", "The helix works: ", "Shopping list", "Add --details");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void helix_out_writesDrawingsAndTables() throws IOException {
    Path out = folder.resolve("result");
    CommandRun run = run(HelixJob.TEXT, "--out", out.toString(), "--no-sheets", "--details");

    assertThat(run.code()).as(run.err() + run.out()).isZero();
    for (String name :
        List.of(
            "helix-plan.svg",
            "helix-plan.png",
            "helix-side.svg",
            "helix-side.png",
            "helix-ends.svg",
            "helix-ends.png",
            "schedule.csv",
            "supports.csv",
            "shopping.csv",
            "joints.csv",
            "cutting-list.csv",
            "helix.json",
            "helix.txt")) {
      assertThat(out.resolve(name)).isNotEmptyFile();
    }
    String written = Files.readString(out.resolve("helix.txt"));
    assertThat(written.lines()).containsSubsequence(firstPart(run.out()).lines().toList());
    assertThat(written).contains("Cut list: ", "Assembly, from", "Heights to check");
  }

  private static String firstPart(String printed) {
    return printed.substring(0, printed.indexOf("\n\nWritten")) + "\n";
  }

  @Test
  void helix_twice_givesTheSameBytes() throws IOException {
    Path first = folder.resolve("first");
    Path second = folder.resolve("second");
    run(HelixJob.TEXT, "--out", first.toString(), "--no-sheets");
    run(HelixJob.TEXT, "--out", second.toString(), "--no-sheets");

    for (String name : List.of("helix-plan.svg", "helix-side.png", "helix.json", "schedule.csv")) {
      assertThat(second.resolve(name)).hasSameBinaryContentAs(first.resolve(name));
    }
  }

  @Test
  void helix_withSheets_countsThemInTheTotal() throws IOException {
    CommandRun run = run(HelixJob.TEXT, "--details");

    assertThat(run.out()).contains("sheets included");
    assertThat(run.out()).contains("quick layout");
  }

  @Test
  void helix_plainRing_saysWhatIsMissing() throws IOException {
    CommandRun run =
        run(
            """
            curvestock: 1
            sheets: [{name: a, size: 800x1200 mm, thickness: 6 mm, price: 1}]
            cutting: {kerf: 3 mm}
            helix: {turns: 2, radius: 300 mm, width: 60 mm, segments-per-turn: 4}
            """);

    assertThat(run.code()).isEqualTo(Main.WRONG_INPUT);
    assertThat(run.err()).contains("scale: HO", "rise-per-turn");
  }

  /** 30 mm a turn leave 30 − 6.2 − 3 = 20.8 mm over the rails for a vehicle of 30 mm. */
  @Test
  void helix_turnsTooLow_saysHowMuchRiseItTakes() throws IOException {
    CommandRun run =
        run(HelixJob.with("rise-per-turn: 60", "rise-per-turn: 30"), "--no-sheets", "--details");

    assertThat(run.code()).isEqualTo(Main.ANSWER_IS_NO);
    assertThat(run.out())
        .contains("The helix does not work: ")
        .containsPattern("fail +clearance between turns: 20.8 mm")
        // One value for all places: 32 mm for the train, 6.2 + 3 of wood and track, 6.2 of plate
        // make
        // 47.4 mm; where a train's inner side leaves the ring above at the entry, 6.3 % of the rise
        // are still to come there (12.7 mm free of 30 - 6.2 - 3 - 6.2 = 14.6): 47.4 / 0.937 = 50.6.
        .contains("fix: make the rise per turn at least 51 mm (now 30 mm)");
  }

  /**
   * 60 mm in 2π·330 mm is 2.89 %: over a limit of 2 %, which allows 41.47 mm a turn, too little for
   * the trains, or takes a radius of 477.5 mm; a little more, since the leads climb too.
   */
  @Test
  void helix_tooSteep_namesTheRadiusThatWouldDo() throws IOException {
    CommandRun run =
        run(
            HelixJob.with("rise-per-turn: 60", "rise-per-turn: 60\n  steepest-grade: 2"),
            "--no-sheets");

    assertThat(run.code()).isEqualTo(Main.ANSWER_IS_NO);
    assertThat(run.out())
        .contains("Grade fails: 2.89 %", "your limit is 2 %", "radius 485 mm (now 330 mm)");
  }

  /** A body of 90 mm on trucks 85 mm apart sweeps more than 23 mm are left for at the rods. */
  @Test
  void helix_longVehicleAgainstRods_namesTheMarginItTakes() throws IOException {
    CommandRun run =
        run(
            HelixJob.with(
                "tallest: 30,",
                "tallest: 30, longest: {height: 28, length: 200, width: 20, truck-centres: 150},"),
            "--no-sheets");

    assertThat(run.code()).isEqualTo(Main.ANSWER_IS_NO);
    assertThat(run.out())
        .contains("Room beside the supports inside the curve fails")
        .contains("make the roadbed width at least");
  }

  /**
   * Impossible no. 1: too many turns for the climb. By hand: 32 mm over the rails and 9.2 mm of
   * wood and track take 41.2 mm a turn; 135 mm of climb allow at most 3.27 turns in the open, but
   * the straight at the entry lies under the ring where it has not climbed a whole turn: 3 turns.
   */
  @Test
  void impossible_tooManyTurns_isToldWhatWouldWork() throws IOException {
    CommandRun run =
        run(
            HelixJob.with("turns: 2 1/4", "turns: 5 1/4")
                .replace("rise-per-turn: 60", "climb: 135")
                .replace(
                    "joint: {plate: {length: 60, inset: 12, screws-each-side: 2}}",
                    "joint: two-layers")
                .replace("thickness: 6.2", "thickness: 3.1"),
            "--no-sheets");

    assertThat(run.code()).isEqualTo(Main.ANSWER_IS_NO);
    assertThat(run.out())
        .containsPattern("also\\s+between turns")
        .contains("What would work, with all else as stated")
        .containsPattern("\n  3 turns \\(now 5\\.25\\): 44\\.\\d+ mm a turn, grade 2\\.1\\d %");
  }

  /** Impossible no. 2: too steep for its radius; the radius that would do is planned whole. */
  @Test
  void impossible_tooSteep_isToldTheRadiusThatWouldWork() throws IOException {
    CommandRun run =
        run(
            HelixJob.with(
                "rise-per-turn: 60", "rise-per-turn: 60\n  steepest-grade: 1.5\n  exit: 90"),
            "--no-sheets");

    assertThat(run.code()).isEqualTo(Main.ANSWER_IS_NO);
    // 60 mm at 1.5 % are 4000 mm round: 636.7 mm; the leads climb less there, so a little more.
    assertThat(run.out())
        .contains(
            "Grade fails: 2.89 %",
            "Fix: make the radius at least 640 mm (now 330 mm), and use 24 supports per turn on that wider")
        .containsPattern(
            "radius 64\\d mm \\(now 330 mm\\), 24 supports per turn: 60\\.\\d+ mm a turn");
  }

  /** Impossible no. 3: a vehicle that touches the rods; the width that clears them is planned. */
  @Test
  void impossible_tooNarrow_isToldTheWidthThatWouldWork() throws IOException {
    CommandRun run =
        run(
            HelixJob.with(
                "tallest: 30,",
                "tallest: 30, longest: {height: 28, length: 130, width: 24, truck-centres: 95},"),
            "--no-sheets");

    assertThat(run.code()).isEqualTo(Main.ANSWER_IS_NO);
    assertThat(run.out())
        .contains("Room beside the supports inside the curve fails", "Fix: make the roadbed width")
        .containsPattern("roadbed width [\\d.]+ mm \\(now 70 mm\\): 60 mm a turn");
  }

  @Test
  void helix_contradiction_isLocatedAndExplained() throws IOException {
    CommandRun run = run(HelixJob.with("rise-per-turn: 60", "rise-per-turn: 60\n  climb: 500"));

    assertThat(run.code()).isEqualTo(Main.WRONG_INPUT);
    assertThat(run.err()).contains("job.yaml:11:3: helix: ", "contradict each other", "leave out");
  }
}
