package curvestock.files;

import java.io.EOFException;
import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.security.MessageDigest;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Tells one build of this program from every other, by its own classes, tables and libraries: what
 * an older build has kept must never be taken for an answer of this one.
 */
final class BuildFingerprint {

  private static final int END = 0x06054b50;
  private static final int SHORTEST_END = 22;
  private static final int LONGEST_END = SHORTEST_END + 0xFFFF;
  private static final int LIST_BYTES = 12;
  private static final int LIST_START = 16;

  private BuildFingerprint() {}

  /** Worked out once a process, when first asked for. */
  private static final class Own {
    static final Optional<String> FINGERPRINT = ofOwnFiles();
  }

  /** The fingerprint; nothing where the program cannot see its own files. */
  static Optional<String> find() {
    return Own.FINGERPRINT;
  }

  private static Optional<String> ofOwnFiles() {
    CodeSource source = BuildFingerprint.class.getProtectionDomain().getCodeSource();
    if (source == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(of(Path.of(source.getLocation().toURI())));
    } catch (IOException | URISyntaxException | IllegalArgumentException unseen) {
      return Optional.empty();
    }
  }

  /** Of the program in this jar or folder of classes. */
  static String of(Path program) throws IOException {
    MessageDigest digest = Checksum.digest();
    if (Files.isDirectory(program)) {
      addFolder(digest, program);
      addLibraries(digest);
    } else {
      addJar(digest, program);
    }
    add(digest, System.getProperty("java.version", ""));
    return Checksum.hex(digest.digest());
  }

  /**
   * A jar ends with a list of its files, each with its size and checksum: enough, and quickly read.
   * Source of the numbers: the ZIP format, APPNOTE.TXT 6.3, sections 4.3.12 and 4.3.16.
   */
  private static void addJar(MessageDigest digest, Path jar) throws IOException {
    try (FileChannel file = FileChannel.open(jar)) {
      long from = Math.max(0, file.size() - LONGEST_END);
      ByteBuffer tail = read(file, from, (int) (file.size() - from));
      int end = tail.limit() - SHORTEST_END;
      while (end >= 0 && tail.getInt(end) != END) {
        end--;
      }
      if (end < 0) {
        throw new IOException("no list of its files");
      }
      long bytes = Integer.toUnsignedLong(tail.getInt(end + LIST_BYTES));
      long start = Integer.toUnsignedLong(tail.getInt(end + LIST_START));
      if (start + bytes > from + end) {
        throw new IOException("a list too large for this form");
      }
      digest.update(read(file, start, (int) bytes));
    }
  }

  private static ByteBuffer read(FileChannel file, long from, int bytes) throws IOException {
    ByteBuffer read = ByteBuffer.allocate(bytes).order(ByteOrder.LITTLE_ENDIAN);
    while (read.hasRemaining()) {
      if (file.read(read, from + read.position()) < 0) {
        throw new EOFException("cut short");
      }
    }
    return read.flip();
  }

  private static void addFolder(MessageDigest digest, Path folder) throws IOException {
    List<Path> parts;
    try (Stream<Path> all = Files.walk(folder)) {
      parts = all.filter(Files::isRegularFile).sorted().toList();
    }
    for (Path file : parts) {
      add(digest, folder.relativize(file).toString());
      digest.update(Files.readAllBytes(file));
    }
  }

  /** Libraries do not change under their name; so name and size are enough. */
  private static void addLibraries(MessageDigest digest) {
    String path = System.getProperty("java.class.path", "");
    for (String entry : path.split(Pattern.quote(File.pathSeparator), -1)) {
      File file = new File(entry);
      if (file.isFile()) {
        add(digest, file.getName() + " " + file.length());
      }
    }
  }

  private static void add(MessageDigest digest, String text) {
    digest.update((text + "\n").getBytes(StandardCharsets.UTF_8));
  }
}
