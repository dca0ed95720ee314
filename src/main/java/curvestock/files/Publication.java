package curvestock.files;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Stream;

/** One go at putting a result folder in place. */
final class Publication {

  private static final int LONGEST_LIST = 1_000_000;

  private final Path target;
  private final Path parent;
  private final SortedMap<String, byte[]> contents;
  private final Leftovers leftovers;

  Publication(Path target, SortedMap<String, byte[]> contents) throws FileProblem {
    this.target = target.toAbsolutePath().normalize();
    this.parent =
        Optional.ofNullable(this.target.getParent())
            .orElseThrow(() -> inTheWay("this is the root of the disk"));
    this.contents = contents;
    leftovers = new Leftovers(this.target, parent);
  }

  void run(boolean force) throws FileProblem {
    requireReplaceable(force);
    Path fresh = parent;
    try {
      Files.createDirectories(parent);
      fresh = leftovers.makeFresh();
      write(fresh);
      moveIntoPlace(fresh);
      leftovers.clear();
    } catch (IOException e) {
      throw new FileProblem(
          target,
          "the result cannot be written (" + TextFiles.reason(e) + ")",
          "Check that the disk has room and that you may write to " + parent + ".",
          e);
    } finally {
      if (!fresh.equals(parent)) {
        Leftovers.remove(fresh);
      }
    }
  }

  /** Refuses anything whose loss could hurt. */
  void requireReplaceable(boolean force) throws FileProblem {
    boolean restored = leftovers.restore();
    if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (Files.isSymbolicLink(target) || !Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
      throw inTheWay("a file of that name already exists");
    }
    List<Path> entries = entries();
    if (entries.isEmpty()) {
      return;
    }
    if (!force) {
      throw new FileProblem(
          target,
          restored
              ? "a run that was cut off had set the earlier result aside; it has been put back, so"
                  + " the folder is not empty"
              : "the folder exists and is not empty",
          "Name another folder, or add --force to replace an earlier result.");
    }
    Path list = target.resolve(ContentsList.NAME);
    Optional<Set<String>> ours =
        Files.isRegularFile(list, LinkOption.NOFOLLOW_LINKS)
            ? ContentsList.read(TextFiles.read(list, LONGEST_LIST))
            : Optional.empty();
    if (ours.isEmpty()) {
      throw inTheWay(
          "this folder was not written by Curvestock (it holds "
              + entries.get(0).getFileName()
              + " and no "
              + ContentsList.NAME
              + "), so it is left alone");
    }
    requireNothingForeign(ours.get());
  }

  /** Each file in the folder must be one that a former result listed. */
  private void requireNothingForeign(Set<String> ours) throws FileProblem {
    try (Stream<Path> all = Files.walk(target)) {
      Optional<String> foreign =
          all.filter(path -> !Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
              .map(path -> target.relativize(path).toString().replace(File.separatorChar, '/'))
              .filter(path -> !ours.contains(path))
              .sorted()
              .findFirst();
      if (foreign.isPresent()) {
        throw inTheWay(
            "the folder holds "
                + foreign.get()
                + ", which is not part of the earlier result, so it is left alone");
      }
    } catch (IOException | UncheckedIOException e) {
      throw new FileProblem(
          target, "the folder cannot be looked at", "Name another folder with --out.", e);
    }
  }

  private List<Path> entries() throws FileProblem {
    try (Stream<Path> list = Files.list(target)) {
      return list.sorted().toList();
    } catch (IOException e) {
      throw new FileProblem(
          target,
          "the folder cannot be looked at (" + TextFiles.reason(e) + ")",
          "Check that you may read it.",
          e);
    }
  }

  private FileProblem inTheWay(String cause) {
    return new FileProblem(target, cause, "Name another folder with --out.");
  }

  private void write(Path folder) throws IOException {
    for (Map.Entry<String, byte[]> file : contents.entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue(), StandardOpenOption.CREATE_NEW);
      try (FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE)) {
        channel.force(true);
      }
    }
    String list = ContentsList.of(contents.keySet());
    Files.writeString(folder.resolve(ContentsList.NAME), list, StandardOpenOption.CREATE_NEW);
    openToOthers(folder);
  }

  /** Temporary folders are made for their owner only; the result gets what a new folder gets. */
  private static void openToOthers(Path folder) throws IOException {
    Path model = Files.createDirectory(folder.resolve(".model"));
    try {
      if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
        Files.setPosixFilePermissions(folder, Files.getPosixFilePermissions(model));
      }
    } finally {
      Files.delete(model);
    }
  }

  private void moveIntoPlace(Path fresh) throws IOException {
    if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      move(fresh, target);
      return;
    }
    Path aside = leftovers.makeAside();
    try {
      move(target, aside);
      try {
        move(fresh, target);
      } catch (IOException e) {
        move(aside, target);
        throw e;
      }
    } finally {
      removeOld(aside);
    }
  }

  /** The former result goes only once the new one stands. */
  private void removeOld(Path aside) {
    if (!Files.exists(aside) || Files.exists(target)) {
      Leftovers.remove(aside.getParent());
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to);
    }
  }
}
