package curvestock.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever comes over the wire, the server refuses or answers it, and answers the next. */
class HttpNoiseTest {

  private static PageServer server;

  @BeforeAll
  static void start() throws IOException {
    server = PageServer.start(Binding.loopback(0));
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  /** Rounds for a long run: {@code -Dcurvestock.http.noise=20000}. */
  @Test
  void requests_broken_areRefusedOrAnswered_andTheNextIsServed() throws IOException {
    long seed = 815;
    int rounds = Integer.getInteger("curvestock.http.noise", 400);
    HttpNoise noise = new HttpNoise(seed, server.port());
    Map<String, Integer> counts = new TreeMap<>();
    for (int i = 0; i < rounds; i++) {
      HttpNoise.Answered answered = noise.next();
      counts.merge(answered.status(), 1, Integer::sum);
      assertThat(answered).as("seed %d, round %d", seed, i).matches(HttpNoise.Answered::isFine);
    }
    if (rounds > 400) {
      System.out.println(rounds + " requests, seed " + seed + ": " + counts);
    }

    assertThat(counts).containsKeys("200", "400", "403", "404", "405", "431");
    assertThat(new Client(server).get("/").statusCode()).isEqualTo(200);
  }

  /**
   * Found by noise: a body that broke off was answered with 500, one of 99 GB was begun to read.
   */
  @ParameterizedTest
  @CsvSource({"100, 400", "4000001, 413", "99999999999, 413", "-5, 400"})
  void body_shorterThanStated_isRefused(String length, String status) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
      socket.setSoTimeout((int) Client.PATIENCE.toMillis());
      String request =
          "POST /api/open HTTP/1.1\r\nHost: 127.0.0.1:"
              + server.port()
              + "\r\nContent-Type: application/json\r\nContent-Length: "
              + length
              + "\r\nConnection: close\r\n\r\n{\"text\":";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      socket.shutdownOutput();
      BufferedReader reader =
          new BufferedReader(
              new InputStreamReader(socket.getInputStream(), StandardCharsets.ISO_8859_1));

      assertThat(reader.readLine()).startsWith("HTTP/1.1 " + status);
    }
  }

  /** Found by reading: a body without a stated length was taken in whole, however long. */
  @Test
  void body_inChunksBeyondTheLimit_isRefused() throws IOException {
    String chunk = "a".repeat(100_000);
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
      socket.setSoTimeout((int) Client.PATIENCE.toMillis());
      OutputStream out = socket.getOutputStream();
      String head =
          "POST /api/open HTTP/1.1\r\nHost: 127.0.0.1:"
              + server.port()
              + "\r\nContent-Type: application/json\r\nTransfer-Encoding: chunked\r\n"
              + "Connection: close\r\n\r\n";
      String status = "none";
      try {
        out.write(head.getBytes(StandardCharsets.ISO_8859_1));
        out.write("b\r\n{\"text\": \"a\r\n".getBytes(StandardCharsets.ISO_8859_1));
        for (int i = 0; i < 60; i++) {
          out.write(("186a0\r\n" + chunk + "\r\n").getBytes(StandardCharsets.ISO_8859_1));
        }
        out.write("2\r\n\"}\r\n0\r\n\r\n".getBytes(StandardCharsets.ISO_8859_1));
        out.flush();
        BufferedReader reader =
            new BufferedReader(
                new InputStreamReader(socket.getInputStream(), StandardCharsets.ISO_8859_1));
        status = reader.readLine();
      } catch (java.net.SocketException hungUp) {
        status = "411, and hung up";
      }

      assertThat(status).contains("411");
    }
  }
}
