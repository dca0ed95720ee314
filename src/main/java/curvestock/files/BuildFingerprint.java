package curvestock.files;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Tells one build of this program from every other, by its own classes, tables and libraries: what
 * an older build has kept must never be taken for an answer of this one.
 */
final class BuildFingerprint {

  private BuildFingerprint() {}

  /** The fingerprint; nothing where the program cannot see its own files. */
  static Optional<String> find() {
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

  /** A jar lists a checksum of each file in it: enough, and quickly read. */
  private static void addJar(MessageDigest digest, Path jar) throws IOException {
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      List<String> entries = new ArrayList<>();
      zip.stream().forEach(entry -> entries.add(line(entry)));
      entries.stream().sorted().forEach(entry -> add(digest, entry));
    }
  }

  private static String line(ZipEntry entry) {
    return entry.getName() + " " + entry.getSize() + " " + entry.getCrc();
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
