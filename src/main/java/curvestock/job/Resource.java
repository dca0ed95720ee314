package curvestock.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A text that is part of the program. */
final class Resource {

  private Resource() {}

  /**
   * @param name file name beside this class
   * @throws IllegalStateException if the program was built without it
   */
  static String text(String name) {
    try (InputStream in = Resource.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program was built without " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
