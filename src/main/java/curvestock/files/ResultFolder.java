package curvestock.files;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * The files of a result, collected in memory and then published as a folder all at once: a reader
 * sees the whole new folder or what was there before, never half of it.
 */
public final class ResultFolder {

  /** Plain names only, so that every file system takes them and none leads out of the folder. */
  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._ -]*");

  private static final int LONGEST = 120;

  /** The earliest time that a zip archive can state. */
  private static final LocalDateTime EARLIEST = LocalDateTime.of(1980, 1, 1, 0, 0);

  private final SortedMap<String, Supplier<byte[]>> contents = new TreeMap<>();

  /**
   * Adds a file.
   *
   * @param path relative to the folder, its parts set off by {@code /}, for example {@code
   *     sheets/sheet-01.svg}
   * @throws IllegalArgumentException if the path is not made of plain names, or was added before
   */
  public ResultFolder add(String path, byte[] bytes) {
    byte[] own = bytes.clone();
    return add(path, () -> own);
  }

  /**
   * Adds a file that is made when it is first asked for: a picture costs nothing if nobody writes
   * it.
   *
   * @param bytes gives the same each time; asked once, by any thread
   * @throws IllegalArgumentException as {@link #add(String, byte[])}
   */
  public ResultFolder add(String path, Supplier<byte[]> bytes) {
    for (String name : path.split("/", -1)) {
      if (!isPlain(name)) {
        throw new IllegalArgumentException(
            "a result's path must be made of plain names within the folder, but was '"
                + path
                + "'");
      }
    }
    List<String> taken = new ArrayList<>(contents.keySet());
    taken.add(ContentsList.NAME);
    for (String other : taken) {
      if (other.equalsIgnoreCase(path)
          || startsWithFolder(other, path)
          || startsWithFolder(path, other)) {
        throw new IllegalArgumentException(
            "'" + path + "' must differ from '" + other + "' and not be a folder of it");
      }
    }
    contents.put(path, once(bytes));
    return this;
  }

  /** Adds a text file in UTF-8. */
  public ResultFolder add(String path, String text) {
    return add(path, text.getBytes(StandardCharsets.UTF_8));
  }

  private static Supplier<byte[]> once(Supplier<byte[]> bytes) {
    return new Supplier<>() {
      private byte[] made;

      @Override
      public synchronized byte[] get() {
        if (made == null) {
          made = bytes.get();
        }
        return made;
      }
    };
  }

  /** Adds every file of another folder, those not made yet still unmade. */
  public ResultFolder addAll(ResultFolder other) {
    other.contents.forEach(this::add);
    return this;
  }

  private static boolean isPlain(String name) {
    return NAME.matcher(name).matches() && !name.endsWith(".") && name.length() <= LONGEST;
  }

  private static boolean startsWithFolder(String path, String folder) {
    return path.regionMatches(true, 0, folder + "/", 0, folder.length() + 1);
  }

  /** The paths added so far, sorted. */
  public SortedSet<String> paths() {
    return Collections.unmodifiableSortedSet(new TreeSet<>(contents.keySet()));
  }

  /**
   * The files added so far, sorted by their paths; makes all that are not made yet, side by side.
   */
  public SortedMap<String, byte[]> contents() {
    Map<String, byte[]> made =
        contents.entrySet().parallelStream()
            .collect(Collectors.toMap(Map.Entry::getKey, file -> file.getValue().get()));
    return Collections.unmodifiableSortedMap(new TreeMap<>(made));
  }

  /**
   * All files as one zip archive, sorted, in one folder of the given name. No clock goes in, so the
   * same files give the same archive.
   *
   * @throws IllegalArgumentException if the folder's name is not plain
   */
  public byte[] zip(String folder) {
    if (!isPlain(folder)) {
      throw new IllegalArgumentException(
          "the folder in an archive must have a plain name, but was '" + folder + "'");
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
      for (Map.Entry<String, byte[]> file : contents().entrySet()) {
        ZipEntry entry = new ZipEntry(folder + "/" + file.getKey());
        entry.setTimeLocal(EARLIEST);
        zip.putNextEntry(entry);
        zip.write(file.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory never refuses to be written", e);
    }
    return bytes.toByteArray();
  }

  /**
   * Refuses what {@link #publish} would refuse: asked before a long search, not after it.
   *
   * @throws FileProblem if something at the target is in the way
   */
  public static void requireFree(Path target, boolean force) throws FileProblem {
    new Publication(target, Collections.emptySortedMap()).requireReplaceable(force);
  }

  /**
   * Writes all files into a new folder at {@code target}.
   *
   * <p>They are first written and flushed to disk in a hidden folder beside it, which is then moved
   * into place. An existing folder must be empty; with {@code force} it may also be a former result
   * (a folder with {@value #MARKER}), which is moved aside first and removed at the very end, or
   * put back if the move fails. A symbolic link is never replaced or followed.
   *
   * @throws FileProblem if the target is in the way or the disk refuses; nothing has changed then
   */
  public void publish(Path target, boolean force) throws FileProblem {
    new Publication(target, contents()).run(force);
  }
}
