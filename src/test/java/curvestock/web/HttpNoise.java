package curvestock.web;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * Requests that went wrong, written byte by byte; the seed gives the whole sequence. A server may
 * refuse them in any way that HTTP has for it, or hang up, but must not fail (5xx but for 501, 503
 * and 505).
 */
final class HttpNoise {

  /** Not met, not understood, not allowed, too large, or busy. */
  private static final Set<String> REFUSALS =
      Set.of(
          "400", "401", "403", "404", "405", "406", "408", "411", "413", "414", "415", "417", "422",
          "426", "431", "501", "503", "505", "closed");

  private static final Set<String> ANSWERS = Set.of("200", "202", "204", "304");

  private static final List<String> METHODS =
      List.of(
          "GET", "POST", "DELETE", "PUT", "HEAD", "OPTIONS", "TRACE", "PATCH", "get", "", "G T");

  private static final List<String> PATHS =
      List.of(
          "/",
          "/main.js",
          "/api/start",
          "/api/open",
          "/api/save",
          "/api/gaps",
          "/api/look",
          "/api/work",
          "/api/work/x/events",
          "/api/work/%00/packet",
          "/api/work/../../etc/passwd/chart.svg",
          "/../../../../etc/passwd",
          "/%2e%2e/%2e%2e/etc/passwd",
          "/..;/job/default.yaml",
          "//etc/passwd",
          "/%",
          "/%zz",
          "/%c0%ae%c0%ae/",
          "*",
          "http://evil.example/",
          "/?" + "a=b&".repeat(3000),
          "/" + "a".repeat(20_000),
          "/\u00e4\u0000",
          "");

  private static final List<String> BODIES =
      List.of(
          "",
          "{",
          "{}",
          "[]",
          "null",
          "\"text\"",
          "1e999999",
          "{\"text\": 5}",
          "{\"text\": \"a: [\"}",
          "{\"text\": \"a\", \"text\": \"b\"}",
          "{\"text\": \"&a [*a, *a]\"}",
          "{\"text\": \"!!javax.script.ScriptEngineManager [x]\"}",
          "{\"client\": \"x\", \"job\": {\"curvestock\": 1e400}}",
          "{\"client\": \"" + "x".repeat(5000) + "\", \"job\": {}}",
          "{\"client\": \"x\", \"job\": {\"pieces\": [{\"count\": -1}]}, \"hand\": 7}",
          "{\"original\": \"\", \"job\": {\"a\": [[[[]]]]}}",
          "{\"lengths\": [\"1/0\", \"\u0000\", \"\ud800\"]}",
          "[".repeat(50_000),
          "{\"a\":".repeat(2_000),
          "\u0000\u0001\u00ff");

  private final SplittableRandom random;
  private final int port;

  HttpNoise(long seed, int port) {
    this.random = new SplittableRandom(seed);
    this.port = port;
  }

  /** What was sent, in short, and how it was answered. */
  record Answered(String request, String status) {

    boolean isFine() {
      return REFUSALS.contains(status) || ANSWERS.contains(status);
    }

    boolean isRefusal() {
      return REFUSALS.contains(status);
    }
  }

  /** Sends one request on a connection of its own. */
  Answered next() throws IOException {
    byte[] request = request().getBytes(StandardCharsets.ISO_8859_1);
    if (random.nextInt(6) == 0) {
      for (int i = 0; i < 3; i++) {
        request[random.nextInt(request.length)] = (byte) random.nextInt(256);
      }
    }
    boolean cut = random.nextInt(12) == 0;
    int length = cut ? random.nextInt(1, request.length) : request.length;
    String sent = new String(request, 0, length, StandardCharsets.ISO_8859_1);
    String shown =
        (length < 600 ? sent : sent.substring(0, 300) + " ... " + sent.substring(length - 300))
            + (cut ? "... cut off" : "");
    return new Answered(shown, status(request, length));
  }

  private String status(byte[] request, int length) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      socket.setSoTimeout((int) Client.PATIENCE.toMillis());
      OutputStream out = socket.getOutputStream();
      try {
        // In two parts, as slow clients do.
        int half = random.nextInt(length);
        out.write(request, 0, half);
        out.flush();
        out.write(request, half, length - half);
        out.flush();
        socket.shutdownOutput();
        BufferedReader reader =
            new BufferedReader(
                new InputStreamReader(socket.getInputStream(), StandardCharsets.ISO_8859_1));
        String first = reader.readLine();
        return first == null ? "closed" : (first + " ?").split(" ", -1)[1];
      } catch (java.net.SocketException e) {
        // Hung up before all was sent.
        return "closed";
      }
    }
  }

  private String request() {
    String method = random.nextInt(3) == 0 ? one(METHODS) : random.nextBoolean() ? "GET" : "POST";
    String body = one(BODIES);
    StringBuilder text = new StringBuilder();
    text.append(method).append(' ').append(one(PATHS)).append(' ');
    text.append(
        random.nextInt(8) == 0 ? one(List.of("HTTP/0.9", "HTTP/9.9", "x", "")) : "HTTP/1.1");
    text.append("\r\n");
    if (random.nextInt(12) != 0) {
      text.append("Host: 127.0.0.1:").append(port).append("\r\n");
    }
    text.append("Connection: close\r\n");
    text.append("Content-Type: ")
        .append(
            one(
                List.of(
                    "application/json",
                    "application/json",
                    "application/json; charset=utf-16",
                    "application/json; charset=nonsense",
                    "text/plain",
                    "multipart/form-data; boundary=",
                    "\u00ff")))
        .append("\r\n");
    for (int i = random.nextInt(4); i > 0; i--) {
      text.append(header()).append("\r\n");
    }
    switch (random.nextInt(8)) {
      case 0 -> text.append("Content-Length: -5\r\n\r\n").append(body);
      case 1 -> text.append("Content-Length: 99999999999\r\n\r\n").append(body);
      case 2 -> text.append("Content-Length: 3\r\nContent-Length: 5\r\n\r\n").append(body);
      case 3 ->
          text.append("Transfer-Encoding: chunked\r\n\r\n")
              .append(Integer.toHexString(body.length()))
              .append("\r\n")
              .append(body)
              .append("\r\n0\r\n\r\n");
      case 4 -> text.append("Transfer-Encoding: chunked\r\n\r\nzz\r\n").append(body);
      default ->
          text.append("Content-Length: ").append(body.length()).append("\r\n\r\n").append(body);
    }
    return text.toString();
  }

  private String header() {
    return switch (random.nextInt(9)) {
      case 0 -> "Cookie: " + "a=b; ".repeat(random.nextInt(1, 3000));
      case 1 -> "X-" + "n".repeat(random.nextInt(1, 20_000)) + ": 1";
      case 2 -> "Origin: " + one(List.of("null", "http://evil.example", "http://127.0.0.1:1"));
      case 3 -> "Range: bytes=0-" + "9".repeat(30);
      case 4 -> "If-None-Match: \"" + "*,".repeat(500) + "\"";
      case 5 -> "Expect: 100-continue";
      case 6 -> "Accept-Encoding: gzip;q=nonsense, *;q=-1";
      case 7 -> "no colon in this line";
      default -> "Upgrade: h2c";
    };
  }

  private String one(List<String> of) {
    return of.get(random.nextInt(of.size()));
  }
}
