package curvestock.files;

import curvestock.packing.PackedStore;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/**
 * Packings kept on disk between runs: a file each, named by a checksum of the build and the key.
 * The folder may be deleted at any time. An entry that was damaged is found out by its checksum and
 * thrown away; one of another build is never looked at; beyond a size the oldest go. Where the disk
 * refuses, nothing is kept and nobody is troubled.
 */
public final class PackingCache implements PackedStore {

  /** All entries together, in bytes. */
  private static final long MOST_BYTES = 64L << 20;

  private static final int LONGEST_ENTRY = 4 << 20;
  private static final String HEADER = "curvestock packing 1 ";
  private static final String ENDING = ".packing";
  private static final String PREFIX = ".new-";
  private static final int WRITES_BETWEEN_CLEARINGS = 200;
  private static final long STALE_MILLIS = 86_400_000;

  private final Path folder;
  private final String build;
  private final long mostBytes;
  private final AtomicInteger writes = new AtomicInteger();

  PackingCache(Path folder, String build, long mostBytes) {
    this.folder = folder;
    this.build = build;
    this.mostBytes = mostBytes;
  }

  /**
   * The cache in the user's own folder for such things: {@code $XDG_CACHE_HOME/curvestock}, else
   * {@code ~/.cache/curvestock}; nothing where there is no such place, or the program cannot tell
   * its own build.
   */
  public static Optional<PackedStore> ofUser() {
    return BuildFingerprint.find()
        .flatMap(
            build ->
                home(System.getenv("XDG_CACHE_HOME"), System.getProperty("user.home"))
                    .map(home -> new PackingCache(home, build, MOST_BYTES)));
  }

  /** As the XDG base directory specification says: a path that is not absolute is passed over. */
  static Optional<Path> home(String stated, String userHome) {
    if (stated != null && !stated.isBlank() && Path.of(stated).isAbsolute()) {
      return Optional.of(Path.of(stated, "curvestock"));
    }
    return userHome == null || userHome.isBlank()
        ? Optional.empty()
        : Optional.of(Path.of(userHome, ".cache", "curvestock"));
  }

  @Override
  public Optional<String> find(String key) {
    Path file = file(key);
    try {
      if (Files.size(file) > LONGEST_ENTRY) {
        throw new IOException("too long");
      }
      String text = Files.readString(file);
      int end = text.indexOf('\n');
      String content = text.substring(end + 1);
      if (end < 0 || !text.substring(0, end).equals(HEADER + Checksum.of(content))) {
        Files.deleteIfExists(file);
        return Optional.empty();
      }
      Files.setLastModifiedTime(file, FileTime.fromMillis(System.currentTimeMillis()));
      return Optional.of(content);
    } catch (NoSuchFileException none) {
      return Optional.empty();
    } catch (IOException | SecurityException unreadable) {
      removeQuietly(file);
      return Optional.empty();
    }
  }

  @Override
  public void keep(String key, String text) {
    Path fresh = folder;
    try {
      Files.createDirectories(folder);
      fresh = Files.createTempFile(folder, PREFIX, ENDING);
      Files.write(
          fresh, (HEADER + Checksum.of(text) + "\n" + text).getBytes(StandardCharsets.UTF_8));
      move(fresh, file(key));
      if (writes.getAndIncrement() % WRITES_BETWEEN_CLEARINGS == 0) {
        clear();
      }
    } catch (IOException | SecurityException refused) {
      if (!fresh.equals(folder)) {
        removeQuietly(fresh);
      }
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private Path file(String key) {
    return folder.resolve(Checksum.of(build + "\n" + key) + ENDING);
  }

  /** An entry as the folder lists it. */
  private record Entry(Path file, long bytes, long used) {}

  /** Deletes the entries that were not used for longest until the rest is small enough. */
  void clear() throws IOException {
    List<Entry> entries = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(path -> path.toString().endsWith(ENDING)).toList()) {
        entry(file).ifPresent(entries::add);
      }
    }
    entries.sort(Comparator.comparingLong(Entry::used).thenComparing(Entry::file));
    long total = entries.stream().mapToLong(Entry::bytes).sum();
    long stale = System.currentTimeMillis() - STALE_MILLIS;
    for (Entry entry : entries) {
      boolean unfinished = entry.file().getFileName().toString().startsWith(PREFIX);
      if (unfinished ? entry.used() < stale : total > mostBytes) {
        removeQuietly(entry.file());
        total -= entry.bytes();
      }
    }
  }

  private static Optional<Entry> entry(Path file) {
    try {
      return Optional.of(
          new Entry(file, Files.size(file), Files.getLastModifiedTime(file).toMillis()));
    } catch (IOException gone) {
      return Optional.empty();
    }
  }

  private static void removeQuietly(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException | SecurityException leftover) {
      // It is never trusted, so it does no harm.
      return;
    }
  }
}
