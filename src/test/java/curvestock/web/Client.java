package curvestock.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Asks the page's server as a page does, and as pages of other sites might try to. */
final class Client {

  /** For machines that do much else beside. */
  static final Duration PATIENCE = Duration.ofSeconds(60);

  private final int port;
  private final HttpClient http = HttpClient.newBuilder().connectTimeout(PATIENCE).build();

  Client(PageServer server) {
    this.port = server.port();
  }

  private HttpRequest.Builder to(String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path)).timeout(PATIENCE);
  }

  HttpResponse<String> send(HttpRequest.Builder request) {
    try {
      return http.send(request.build(), BodyHandlers.ofString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  HttpResponse<String> get(String path, String... headers) {
    HttpRequest.Builder request = to(path);
    if (headers.length > 0) {
      request.headers(headers);
    }
    return send(request);
  }

  HttpResponse<String> post(String path, String body, String... headers) {
    HttpRequest.Builder request = to(path).POST(BodyPublishers.ofString(body));
    request.header("Content-Type", "application/json");
    if (headers.length > 0) {
      request.headers(headers);
    }
    return send(request);
  }

  HttpResponse<String> delete(String path) {
    return send(to(path).DELETE());
  }

  HttpResponse<byte[]> bytes(String path, String body) throws IOException, InterruptedException {
    HttpRequest.Builder request = to(path).POST(BodyPublishers.ofString(body));
    return http.send(
        request.header("Content-Type", "application/json").build(), BodyHandlers.ofByteArray());
  }

  /** Starts a computation and gives its id. */
  String work(String client, JsonNode job) {
    ObjectNode request = Json.object().put("client", client).put("fingerprint", "of this");
    request.set("job", job);
    HttpResponse<String> answer = post("/api/work", request.toString());
    if (answer.statusCode() != 202) {
      throw new IllegalStateException(answer.body());
    }
    return Json.own(answer.body()).get("id").textValue();
  }

  /** The events of a computation up to the first that is wanted. */
  List<WorkEvents.Event> events(String id, Predicate<String> wanted)
      throws IOException, InterruptedException {
    HttpResponse<InputStream> stream =
        http.send(
            to("/api/work/" + id + "/events").header("Accept", "text/event-stream").build(),
            BodyHandlers.ofInputStream());
    List<WorkEvents.Event> events = new ArrayList<>();
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(stream.body(), StandardCharsets.UTF_8))) {
      String name = "";
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (line.startsWith("event: ")) {
          name = line.substring("event: ".length());
        } else if (line.startsWith("data: ")) {
          events.add(new WorkEvents.Event(name, line.substring("data: ".length())));
          if (wanted.test(name)) {
            return events;
          }
        }
      }
    }
    return events;
  }

  /** Status of a request written by hand, for headers that Java's own client would not send. */
  String statusOf(String... lines) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      socket.setSoTimeout((int) PATIENCE.toMillis());
      String request = String.join("\r\n", lines) + "\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      BufferedReader reader =
          new BufferedReader(
              new InputStreamReader(socket.getInputStream(), StandardCharsets.ISO_8859_1));
      String first = reader.readLine();
      return first == null ? "closed" : first.split(" ", -1)[1];
    }
  }

  int port() {
    return port;
  }
}
