package curvestock.files;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.stream.Stream;

/**
 * The hidden folders beside a result, in which it is written and the former one set aside, and what
 * becomes of those that a killed run left there.
 *
 * <p>Their names hold a checksum of the result's name, so that no run touches those of another
 * result.
 */
final class Leftovers {

  private static final int DIGITS = 12;

  /** No run takes as long to write its files; younger folders may be another run's. */
  private static final long STALE_MILLIS = 86_400_000;

  private static final String ASIDE = "result";

  private final Path target;
  private final Path parent;
  private final String freshPrefix;
  private final String oldPrefix;

  Leftovers(Path target, Path parent) {
    this.target = target;
    this.parent = parent;
    String name = Checksum.of(target.getFileName().toString()).substring(0, DIGITS);
    freshPrefix = ".curvestock-new-" + name + "-";
    oldPrefix = ".curvestock-old-" + name + "-";
  }

  /** A hidden folder to write a result in. */
  Path makeFresh() throws IOException {
    return Files.createTempDirectory(parent, freshPrefix);
  }

  /** Where in a new hidden folder the former result may be moved. */
  Path makeAside() throws IOException {
    return Files.createTempDirectory(parent, oldPrefix).resolve(ASIDE);
  }

  /**
   * Puts a former result back that was set aside by a run which was killed before the new one
   * stood.
   *
   * @return whether there was one
   */
  boolean restore() {
    try {
      for (Path old : folders()) {
        Path aside = old.resolve(ASIDE);
        if (name(old).startsWith(oldPrefix)
            && Files.isRegularFile(aside.resolve(ContentsList.NAME), LinkOption.NOFOLLOW_LINKS)
            && !Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
          Files.move(aside, target);
          remove(old);
          return true;
        }
      }
    } catch (IOException cannotBeSaved) {
      // What is wrong with the disk is told by whoever writes next.
      return false;
    }
    return false;
  }

  /** Deletes what killed runs left more than a day ago, once a result stands. */
  void clear() {
    try {
      long stale = System.currentTimeMillis() - STALE_MILLIS;
      for (Path folder : folders()) {
        boolean ours = name(folder).startsWith(freshPrefix) || name(folder).startsWith(oldPrefix);
        if (ours && Files.getLastModifiedTime(folder).toMillis() < stale) {
          remove(folder);
        }
      }
    } catch (IOException leftover) {
      // Hidden and harmless: the result stands all the same.
      return;
    }
  }

  private List<Path> folders() throws IOException {
    try (Stream<Path> list = Files.list(parent)) {
      return list.filter(path -> name(path).startsWith(".curvestock-"))
          .filter(path -> Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
          .sorted()
          .toList();
    }
  }

  private static String name(Path path) {
    return path.getFileName().toString();
  }

  /** Failing to remove what is hidden and harmless is no reason to fail. */
  static void remove(Path folder) {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    try {
      Files.walkFileTree(folder, new Removal());
    } catch (IOException leftover) {
      // Nothing of the user's is lost, so there is nothing to tell.
      return;
    }
  }

  private static final class Removal extends SimpleFileVisitor<Path> {

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
      Files.delete(file);
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult postVisitDirectory(Path folder, IOException failure) throws IOException {
      if (failure != null) {
        throw failure;
      }
      Files.delete(folder);
      return FileVisitResult.CONTINUE;
    }
  }
}
