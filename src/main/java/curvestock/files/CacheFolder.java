package curvestock.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/**
 * What is kept on disk between runs: a file for each entry, named by a checksum of the build and
 * the key. The folder may be deleted at any time. An entry that was damaged is found out by its
 * checksum and thrown away; one of another build is never looked at; beyond a size the oldest go.
 * Where the disk refuses, nothing is kept and nobody is troubled.
 */
final class CacheFolder {

  /** {@code off}, or a folder instead of the user's own; keeps tests out of their user's cache. */
  private static final String PROPERTY = "curvestock.cache";

  private static final String HEADER = "curvestock kept 2 ";
  private static final int HEADER_BYTES = HEADER.length() + 2 * 32 + 1;
  private static final String PREFIX = ".new-";
  private static final int WRITES_BETWEEN_CLEARINGS = 200;
  private static final long STALE_MILLIS = 86_400_000;

  private final Path folder;
  private final String build;
  private final String ending;
  private final long longestEntry;
  private final long mostBytes;
  private final AtomicInteger writes = new AtomicInteger();

  /**
   * A folder of entries.
   *
   * @param build a fingerprint of the program
   * @param ending of its files' names; others in the folder are left alone
   * @param longestEntry in bytes; longer ones are not kept
   * @param mostBytes all entries together
   */
  CacheFolder(Path folder, String build, String ending, long longestEntry, long mostBytes) {
    this.folder = folder;
    this.build = build;
    this.ending = ending;
    this.longestEntry = longestEntry;
    this.mostBytes = mostBytes;
  }

  /**
   * In the user's own folder for such things: {@code $XDG_CACHE_HOME/curvestock}, else {@code
   * ~/.cache/curvestock}; nothing where there is no such place, or the program cannot tell its own
   * build.
   */
  static Optional<CacheFolder> ofUser(String ending, long longestEntry, long mostBytes) {
    Optional<Path> home = ofUser(System.getProperty(PROPERTY));
    if (home.isEmpty()) {
      return Optional.empty();
    }
    Optional<String> build = BuildFingerprint.find();
    return build.isEmpty()
        ? Optional.empty()
        : Optional.of(new CacheFolder(home.get(), build.get(), ending, longestEntry, mostBytes));
  }

  private static Optional<Path> ofUser(String property) {
    if ("off".equals(property)) {
      return Optional.empty();
    }
    return property == null
        ? home(System.getenv("XDG_CACHE_HOME"), System.getProperty("user.home"))
        : Optional.of(Path.of(property));
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

  /** What was kept under the key, to the byte. */
  Optional<byte[]> find(String key) {
    Path file = file(key);
    try {
      if (Files.size(file) > longestEntry + HEADER_BYTES) {
        throw new IOException("too long");
      }
      byte[] entry = Files.readAllBytes(file);
      if (entry.length < HEADER_BYTES
          || !Arrays.equals(Arrays.copyOf(entry, HEADER_BYTES), header(entry, HEADER_BYTES))) {
        throw new IOException("damaged");
      }
      Files.setLastModifiedTime(file, FileTime.fromMillis(System.currentTimeMillis()));
      return Optional.of(Arrays.copyOfRange(entry, HEADER_BYTES, entry.length));
    } catch (NoSuchFileException none) {
      return Optional.empty();
    } catch (IOException | SecurityException unreadable) {
      removeQuietly(file);
      return Optional.empty();
    }
  }

  /** What goes before the bytes from a place on: their checksum, and that it is one. */
  private static byte[] header(byte[] bytes, int from) {
    MessageDigest digest = Checksum.digest();
    digest.update(bytes, from, bytes.length - from);
    return (HEADER + Checksum.hex(digest.digest()) + "\n").getBytes(StandardCharsets.UTF_8);
  }

  void keep(String key, byte[] content) {
    if (content.length > longestEntry) {
      return;
    }
    Path fresh = folder;
    try {
      Files.createDirectories(folder);
      fresh = Files.createTempFile(folder, PREFIX, ending);
      byte[] header = header(content, 0);
      byte[] entry = Arrays.copyOf(header, header.length + content.length);
      System.arraycopy(content, 0, entry, header.length, content.length);
      Files.write(fresh, entry);
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
    return folder.resolve(Checksum.of(build + "\n" + key) + ending);
  }

  /** An entry as the folder lists it. */
  private record Entry(Path file, long bytes, long used) {}

  /** Deletes the entries that were not used for longest until the rest is small enough. */
  void clear() throws IOException {
    List<Entry> entries = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(path -> path.toString().endsWith(ending)).toList()) {
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
