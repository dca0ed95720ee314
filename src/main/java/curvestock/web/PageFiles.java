package curvestock.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** The files of the page, from a fixed list in the jar: no path from outside is ever looked up. */
final class PageFiles {

  private static final Map<String, String> TYPES =
      Map.of(
          "html", "text/html; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "svg", "image/svg+xml",
          "json", "application/json");

  private static final String[] NAMES = {
    "index.html",
    "bench.css",
    "icon.svg",
    "main.js",
    "state.js",
    "server.js",
    "elements.js",
    "questions.js",
    "plywood.js",
    "sketches.js",
    "lengths.js",
    "answer.js",
    "verdicts.js",
    "sheets.js",
    "hand.js",
    "corners.js",
    "helix.js",
    "turning.js",
    "sizes.js",
    "files.js"
  };

  private final Map<String, byte[]> files = new LinkedHashMap<>();

  PageFiles() {
    for (String name : NAMES) {
      files.put(name, bytes(name));
    }
  }

  /** Paths under which the files are served; the page itself at {@code /}. */
  Map<String, String> paths() {
    Map<String, String> paths = new LinkedHashMap<>();
    files.keySet().forEach(name -> paths.put(name.equals("index.html") ? "/" : "/" + name, name));
    // Browsers ask for it unbidden.
    paths.put("/favicon.ico", "icon.svg");
    return paths;
  }

  void send(Context ctx, String name) {
    // Asked for anew each time, so that a new version of the program shows its own page.
    ctx.header("Cache-Control", "no-cache");
    ctx.contentType(TYPES.get(name.substring(name.lastIndexOf('.') + 1)));
    ctx.result(files.get(name));
  }

  static String text(String name) {
    return new String(bytes(name), StandardCharsets.UTF_8);
  }

  static byte[] bytes(String name) {
    try (InputStream in = PageFiles.class.getResourceAsStream("/curvestock/web/" + name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its file " + name);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
