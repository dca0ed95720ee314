package curvestock.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackingCacheTest {

  @TempDir private Path folder;

  private PackingCache cache() {
    return new PackingCache(cacheFolder("build 1", 1_000_000));
  }

  private CacheFolder cacheFolder(String build, long mostBytes) {
    return new CacheFolder(folder.resolve("cache"), build, ".packing", 100_000, mostBytes);
  }

  private List<Path> entries() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("cache"))) {
      return files.sorted().toList();
    }
  }

  @Test
  void text_kept_isFoundAgainToTheLetter_alsoByAnotherRun() {
    cache().keep("key", "stack\n0 1.5 -0.0 3.141592653589793\n");

    assertThat(cache().find("key")).contains("stack\n0 1.5 -0.0 3.141592653589793\n");
    assertThat(cache().find("another key")).isEmpty();
  }

  @Test
  void text_ofAnotherBuild_isNotFound() {
    cache().keep("key", "text");

    assertThat(new PackingCache(cacheFolder("build 2", 1_000_000)).find("key")).isEmpty();
  }

  @Test
  void entry_damaged_isFoundOut_andThrownAway_andCanBeKeptAnew() throws IOException {
    cache().keep("key", "a packing");
    Path entry = entries().get(0);
    Files.writeString(entry, Files.readString(entry).replace("packing\n", "pecking\n"));
    Files.writeString(entry, Files.readString(entry).replace("a packing", "a pocking"));

    assertThat(cache().find("key")).isEmpty();
    assertThat(entries()).isEmpty();

    cache().keep("key", "a packing");
    assertThat(cache().find("key")).contains("a packing");
  }

  @Test
  void entry_cutShort_isNotFound() throws IOException {
    cache().keep("key", "a packing of some length");
    Path entry = entries().get(0);
    byte[] bytes = Files.readAllBytes(entry);
    Files.write(entry, java.util.Arrays.copyOf(bytes, bytes.length - 3));

    assertThat(cache().find("key")).isEmpty();
  }

  @Test
  void folder_deletedOrForbidden_troublesNobody() throws IOException {
    PackingCache cache = cache();
    assertThat(cache.find("key")).isEmpty();
    Files.writeString(folder.resolve("cache"), "a file where the folder should be");

    cache.keep("key", "text");

    assertThat(cache.find("key")).isEmpty();
  }

  @Test
  void entries_beyondTheSize_goOldestFirst() throws IOException {
    CacheFolder within = cacheFolder("build", 700);
    PackingCache small = new PackingCache(within);
    for (int i = 0; i < 4; i++) {
      small.keep("key " + i, "x".repeat(200));
      for (Path entry : entries()) {
        FileTime now = Files.getLastModifiedTime(entry);
        Files.setLastModifiedTime(entry, FileTime.fromMillis(now.toMillis() - 10_000));
      }
    }
    // Used just now, so it is no longer the oldest.
    assertThat(small.find("key 0")).isPresent();

    within.clear();

    assertThat(small.find("key 1")).isEmpty();
    assertThat(small.find("key 2")).isEmpty();
    assertThat(small.find("key 0")).isPresent();
    assertThat(small.find("key 3")).isPresent();
  }

  @Test
  void writing_leavesNoHalfFile() throws IOException {
    cache().keep("key", "text");

    assertThat(entries()).hasSize(1);
    assertThat(entries().get(0).getFileName().toString()).doesNotStartWith(".");
  }

  /** Source: XDG Base Directory Specification, 0.8: relative paths are to be ignored. */
  @Test
  void home_followsTheUsersWish_ifItIsAbsolute() {
    String there = folder.toAbsolutePath().toString();

    assertThat(CacheFolder.home(there, "/home/nobody")).contains(Path.of(there, "curvestock"));
    assertThat(CacheFolder.home("relative", there))
        .contains(Path.of(there, ".cache", "curvestock"));
    assertThat(CacheFolder.home(null, there)).contains(Path.of(there, ".cache", "curvestock"));
    assertThat(CacheFolder.home(null, "")).isEmpty();
  }

  @Test
  void fingerprint_changesWithAnyClass() throws IOException {
    Path classes = Files.createDirectory(folder.resolve("classes"));
    Files.writeString(classes.resolve("A.class"), "one");
    String before = BuildFingerprint.of(classes);
    assertThat(BuildFingerprint.of(classes)).isEqualTo(before);

    Files.writeString(classes.resolve("A.class"), "two");

    assertThat(BuildFingerprint.of(classes)).isNotEqualTo(before);
    assertThat(BuildFingerprint.find()).isPresent();
  }
}
