package curvestock.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The files of the page, from a fixed list in the jar: no path from outside is ever looked up. */
final class PageFiles {

  private static final Map<String, String> TYPES =
      Map.of(
          "html", "text/html; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "svg", "image/svg+xml",
          "txt", "text/plain; charset=utf-8",
          "json", "application/json");

  /** The page, its style and its modules; those named .js are fetched ahead, all at once. */
  private static final List<String> NAMES =
      List.of(
          "index.html",
          "bench.css",
          "icon.svg",
          "preact-licence.txt",
          "preact.js",
          "main.js",
          "app.js",
          "asking.js",
          "corners.js",
          "decision.js",
          "details.js",
          "dialogs.js",
          "elements.js",
          "fields.js",
          "files.js",
          "hand.js",
          "helix.js",
          "knot.js",
          "lengths.js",
          "paths.js",
          "questions.js",
          "remnant.js",
          "server.js",
          "sheets.js",
          "store.js",
          "turning.js",
          "typical.js");

  private static final String PRELOAD = "<!-- preload -->";

  /** A file with the mark by which a browser knows it again. */
  private static final class Served {
    private final byte[] bytes;
    private final String mark;

    Served(byte[] bytes) {
      this.bytes = bytes;
      this.mark = markOf(bytes);
    }
  }

  private final Map<String, Served> files = new LinkedHashMap<>();

  PageFiles() {
    for (String name : NAMES) {
      byte[] bytes = name.equals("index.html") ? page() : bytes(name);
      files.put(name, new Served(bytes));
    }
  }

  /** Imports are found one after the other, unless the page says at once which there are. */
  private static byte[] page() {
    String ahead =
        NAMES.stream()
            .filter(name -> name.endsWith(".js"))
            .map(name -> "<link rel=\"modulepreload\" href=\"/" + name + "\">")
            .collect(Collectors.joining("\n  "));
    return text("index.html").replace(PRELOAD, ahead).getBytes(StandardCharsets.UTF_8);
  }

  private static String markOf(byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return '"' + HexFormat.of().formatHex(digest, 0, 12) + '"';
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
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
    Served file = files.get(name);
    // Asked for each time, so that a new version of the program shows its own page; sent only if it
    // is another.
    ctx.header("Cache-Control", "no-cache");
    ctx.header("ETag", file.mark);
    String known = ctx.header("If-None-Match");
    if (known != null && known.contains(file.mark)) {
      ctx.status(304);
      return;
    }
    ctx.contentType(TYPES.get(name.substring(name.lastIndexOf('.') + 1)));
    ctx.result(file.bytes);
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
