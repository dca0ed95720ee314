package curvestock.files;

import curvestock.printing.SpareFonts;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.fontbox.util.autodetect.FontFileFinder;

/**
 * The fonts of this machine. Only TrueType outlines can be embedded in part; others are passed
 * over.
 */
public final class MachineFonts implements SpareFonts {

  /** Sans-serif ones before others, then by file name. */
  @Override
  public Stream<byte[]> files() {
    return new FontFileFinder()
        .find().stream()
            .flatMap(file -> path(file).stream())
            .filter(file -> name(file).endsWith(".ttf"))
            .sorted(Comparator.comparing(MachineFonts::isOther).thenComparing(Path::toString))
            .flatMap(file -> read(file).stream());
  }

  private static Optional<Path> path(URI file) {
    try {
      return Optional.of(Path.of(file));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static String name(Path file) {
    return file.getFileName().toString().toLowerCase(Locale.ROOT);
  }

  private static boolean isOther(Path file) {
    String name = name(file);
    return !name.contains("sans") || name.contains("bold") || name.contains("oblique");
  }

  private static Optional<byte[]> read(Path file) {
    try {
      return Optional.of(Files.readAllBytes(file));
    } catch (IOException e) {
      // A font that cannot be read is as good as none.
      return Optional.empty();
    }
  }
}
