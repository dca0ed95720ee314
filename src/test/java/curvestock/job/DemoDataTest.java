package curvestock.job;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class DemoDataTest {

  static List<Path> files() {
    return DemoData.files();
  }

  private static Job read(String name) {
    return JobReader.read(DemoData.text(DemoData.FOLDER.resolve(name)), name);
  }

  @Test
  void folder_holdsTheKnownJobs() {
    assertThat(files().stream().map(file -> file.getFileName().toString()))
        .contains("default.yaml", "window-loops.yaml", "club-remnants.yaml")
        .hasSizeGreaterThanOrEqualTo(10);
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyDemo_readsAndSaysItIsInvented(Path file) {
    Job job = JobReader.read(DemoData.text(file), file.toString());

    assertThat(job.invented()).isTrue();
    assertThat(job.title()).endsWith("(invented)");
    assertThat(DemoData.text(file).lines().limit(3)).anyMatch(line -> line.contains("#"));
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyDemo_hasUniquePieceIds(Path file) {
    List<String> ids =
        JobReader.read(DemoData.text(file), file.toString()).demands().stream()
            .map(demand -> demand.piece().id())
            .toList();

    assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
  }

  /** Check values of the tests (30 in radius, 5 in wide) are not to be shown to users as demos. */
  @ParameterizedTest
  @MethodSource("files")
  void noDemo_usesTheSizesOfTheCheckValues(Path file) {
    Set<AnnularSector> arcs =
        JobReader.read(DemoData.text(file), file.toString()).demands().stream()
            .map(demand -> demand.piece().shape().blank())
            .filter(AnnularSector.class::isInstance)
            .map(AnnularSector.class::cast)
            .collect(Collectors.toSet());

    assertThat(arcs)
        .isNotEmpty()
        .noneMatch(arc -> arc.radius().inches() == 30 && arc.width().inches() == 5);
  }

  @Test
  void defaultJob_isTheCopyInDemoData() {
    assertThat(DefaultJob.text())
        .isEqualTo(DemoData.text(DemoData.FOLDER.resolve(DefaultJob.FILE_NAME)));
    assertThat(DefaultJob.read()).isEqualTo(read("default.yaml"));
  }

  /** Counts by hand: turns × 360° / angle. */
  @ParameterizedTest
  @CsvSource({
    "default.yaml, 1 + 19 + 1",
    "foundry-oval.yaml, 1 + 7 + 4 + 6 + 6 + 3 + 1",
    "first-helix-half.yaml, 12",
    "first-helix-third.yaml, 18",
    "first-helix-quarter.yaml, 24",
    "first-helix-sixty.yaml, 36",
    "window-loops.yaml, 18 + 17 + 36 + 2 + 8",
    "spare-room.yaml, 27",
    "overhead-oval.yaml, 18 + 9",
    "harbor-curves.yaml, 5 + 5 + 3 + 4",
    "club-remnants.yaml, 16",
    "closet-spiral.yaml, 80",
  })
  void demands_ofEachDemo_areCounted(String file, String expected) {
    assertThat(
            read(file).demands().stream()
                .map(demand -> Integer.toString(demand.count()))
                .collect(Collectors.joining(" + ")))
        .isEqualTo(expected);
  }

  @Test
  void windowLoops_putsTheHelixBeforeTheListedPieces() {
    assertThat(read("window-loops.yaml").demands())
        .extracting(Demand::piece)
        .extracting(Piece::id)
        .containsExactly("S", "A", "B", "C", "D");
  }
}
