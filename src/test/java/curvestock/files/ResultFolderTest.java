package curvestock.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ResultFolderTest {

  @TempDir Path base;

  private static ResultFolder result(String text) {
    return new ResultFolder()
        .add("plan.json", "{}")
        .add("sheets/sheet-01.svg", text)
        .add("cut list.csv", "a,b");
  }

  private static List<String> tree(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(path -> !path.equals(folder))
          .map(path -> folder.relativize(path).toString())
          .sorted()
          .toList();
    }
  }

  @Test
  void publish_newFolderBelowMissingOnes_holdsAllFilesAndNothingElse() throws Exception {
    Path target = base.resolve("a/b/out");

    result("ü").publish(target, false);

    assertThat(tree(target))
        .containsExactly(
            "contents.txt", "cut list.csv", "plan.json", "sheets", "sheets/sheet-01.svg");
    assertThat(Files.readString(target.resolve("sheets/sheet-01.svg"))).isEqualTo("ü");
    assertThat(tree(base.resolve("a/b"))).allMatch(path -> path.startsWith("out"));
  }

  @Test
  void publish_folder_mayBeReadLikeAnyNewFolder() throws Exception {
    Path target = base.resolve("out");
    Path ordinary = Files.createDirectory(base.resolve("ordinary"));

    result("x").publish(target, false);

    assertThat(Files.getPosixFilePermissions(target))
        .isEqualTo(Files.getPosixFilePermissions(ordinary));
  }

  @Test
  void publish_emptyFolder_isFilled() throws Exception {
    Path target = Files.createDirectory(base.resolve("out"));

    result("x").publish(target, false);

    assertThat(target.resolve("plan.json")).exists();
  }

  @Test
  void publish_formerResult_isReplacedOnlyWhenForced() throws Exception {
    Path target = base.resolve("out");
    result("old").add("extra.txt", "gone afterwards").publish(target, false);

    assertThatThrownBy(() -> result("new").publish(target, false))
        .isInstanceOf(FileProblem.class)
        .hasMessageContaining("exists and is not empty")
        .hasMessageContaining("--force");
    assertThat(target.resolve("sheets/sheet-01.svg")).hasContent("old");

    result("new").publish(target, true);

    assertThat(target.resolve("sheets/sheet-01.svg")).hasContent("new");
    assertThat(target.resolve("extra.txt")).doesNotExist();
    assertThat(tree(base)).allMatch(path -> path.startsWith("out"));
  }

  private Path hidden(String kind, String name) {
    return base.resolve(".curvestock-" + kind + "-" + Checksum.of(name).substring(0, 12) + "-77");
  }

  /** What a kill between the two renames of a replacement leaves. */
  private Path setAside(String text) throws Exception {
    Path target = base.resolve("out");
    result(text).publish(target, false);
    Path old = Files.createDirectory(hidden("old", "out"));
    Files.move(target, old.resolve("result"));
    return target;
  }

  @Test
  void publish_afterAKillBetweenTheRenames_putsTheFormerResultBackAndSaysSo() throws Exception {
    Path target = setAside("old");

    assertThatThrownBy(() -> result("new").publish(target, false))
        .isInstanceOf(FileProblem.class)
        .hasMessageContaining("it has been put back")
        .hasMessageContaining("--force");

    assertThat(target.resolve("sheets/sheet-01.svg")).hasContent("old");
    assertThat(tree(base)).allMatch(path -> path.startsWith("out"));
  }

  @Test
  void publish_forcedAfterAKillBetweenTheRenames_replacesTheFormerResult() throws Exception {
    Path target = setAside("old");

    result("new").publish(target, true);

    assertThat(target.resolve("sheets/sheet-01.svg")).hasContent("new");
    assertThat(tree(base)).allMatch(path -> path.startsWith("out"));
  }

  @Test
  void publish_besideTheSetAsideResultOfAnotherName_leavesItAlone() throws Exception {
    setAside("old");

    result("new").publish(base.resolve("other"), false);

    assertThat(hidden("old", "out").resolve("result/sheets/sheet-01.svg")).hasContent("old");
    assertThat(base.resolve("out")).doesNotExist();
  }

  @Test
  void publish_removesHiddenFoldersOfItsName_onceTheyAreOld() throws Exception {
    FileTime lastWeek = FileTime.from(Instant.now().minus(Duration.ofDays(7)));
    Path stale = Files.createDirectory(hidden("new", "out"));
    Path foreign = Files.createDirectory(hidden("new", "other"));
    Path young = Files.createDirectory(base.resolve(hidden("new", "out") + "8"));
    Files.writeString(stale.resolve("plan.json"), "half");
    for (Path folder : List.of(stale, foreign)) {
      Files.setLastModifiedTime(folder, lastWeek);
    }

    result("new").publish(base.resolve("out"), false);

    assertThat(stale).doesNotExist();
    assertThat(foreign).exists();
    assertThat(young).exists();
  }

  @ParameterizedTest
  @ValueSource(strings = {"holiday.jpg", "notes.txt", ".git/config", "sheets/sheet-02.svg"})
  void publish_foreignContent_isRefusedEvenWhenForced(String foreign) throws Exception {
    Path target = base.resolve("out");
    result("old").publish(target, false);
    Path file = target.resolve(foreign);
    Files.createDirectories(file.getParent());
    Files.writeString(file, "precious");

    assertThatThrownBy(() -> result("new").publish(target, true))
        .isInstanceOf(FileProblem.class)
        .hasMessageContaining("left alone")
        .hasMessageContaining(foreign);

    assertThat(file).hasContent("precious");
    assertThat(target.resolve("sheets/sheet-01.svg")).hasContent("old");
  }

  @Test
  void publish_folderWithoutOurMarker_isRefusedEvenWhenForced() throws Exception {
    Path target = Files.createDirectory(base.resolve("out"));
    Files.writeString(target.resolve("index.html"), "my page");
    Files.writeString(target.resolve("plan.json"), "{}");

    assertThatThrownBy(() -> result("new").publish(target, true))
        .isInstanceOf(FileProblem.class)
        .hasMessageContaining("index.html")
        .hasMessageContaining("no contents.txt");
    assertThat(target.resolve("index.html")).hasContent("my page");
  }

  @Test
  void publish_fileOrLinkInTheWay_isRefused() throws Exception {
    Path file = Files.writeString(base.resolve("file"), "text");
    Path elsewhere = Files.createDirectory(base.resolve("elsewhere"));
    Path link = Files.createSymbolicLink(base.resolve("link"), elsewhere);

    for (Path target : List.of(file, link)) {
      assertThatThrownBy(() -> result("new").publish(target, true))
          .isInstanceOf(FileProblem.class)
          .hasMessageContaining("a file of that name already exists");
    }
    assertThat(file).hasContent("text");
    assertThat(tree(elsewhere)).isEmpty();
  }

  @Test
  void publish_linkInsideAFormerResult_isNotFollowed() throws Exception {
    Path target = base.resolve("out");
    result("old").publish(target, false);
    Path precious = Files.createDirectory(base.resolve("precious"));
    Files.writeString(precious.resolve("a.txt"), "keep");
    Files.createSymbolicLink(target.resolve("more"), precious);

    assertThatThrownBy(() -> result("new").publish(target, true)).isInstanceOf(FileProblem.class);

    assertThat(precious.resolve("a.txt")).hasContent("keep");
  }

  @Test
  void publish_parentIsAFile_leavesNothingBehind() throws Exception {
    Files.writeString(base.resolve("file"), "text");

    assertThatThrownBy(() -> result("x").publish(base.resolve("file/out"), false))
        .isInstanceOf(FileProblem.class)
        .hasMessageContaining("cannot be written");
    assertThat(tree(base)).containsExactly("file");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "/etc/x",
        "../x",
        "a/../x",
        "a//b",
        "a/",
        ".hidden",
        "a\\b",
        "C:x",
        "nul\u0000",
        "a./b"
      })
  void add_pathNotPlain_isRefused(String path) {
    assertThatThrownBy(() -> new ResultFolder().add(path, "x"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("plain names");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"sheets", "Plan.json", "contents.txt", "plan.json/x", "SHEETS/sheet-01.svg"})
  void add_pathThatClashes_isRefused(String path) {
    assertThatThrownBy(() -> result("x").add(path, "x"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("must differ");
  }

  /** A picture that nobody writes is never painted, and one that is written is painted once. */
  @Test
  void file_madeWhenAskedFor_isMadeOnceAndNotBefore() {
    AtomicInteger made = new AtomicInteger();
    ResultFolder folder =
        new ResultFolder()
            .add(
                "late.png",
                () -> {
                  made.incrementAndGet();
                  return new byte[] {1, 2};
                });
    ResultFolder whole = new ResultFolder().addAll(folder).add("more.txt", "x");

    assertThat(whole.paths()).containsExactly("late.png", "more.txt");
    assertThat(made).hasValue(0);
    assertThat(whole.contents().get("late.png")).containsExactly(1, 2);
    whole.zip("folder");
    folder.contents();
    assertThat(made).hasValue(1);
  }
}
