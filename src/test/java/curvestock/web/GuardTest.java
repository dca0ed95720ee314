package curvestock.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who is answered and who is not. */
class GuardTest {

  private static final String TOKEN = "abcdefghijkl_12";

  private static PageServer server;
  private static PageServer club;
  private static Client client;

  @BeforeAll
  static void start() throws IOException {
    server = PageServer.start(Binding.loopback(0));
    club = PageServer.start(new Binding("127.0.0.1", 0, Optional.of(TOKEN)));
    client = new Client(server);
  }

  @AfterAll
  static void stop() {
    server.close();
    club.close();
  }

  @Test
  void page_askedUnderItsOwnAddress_isGiven() throws IOException {
    assertThat(client.get("/").body()).contains("<title>Curvestock");
    assertThat(client.statusOf("GET / HTTP/1.1", "Host: localhost:" + client.port()))
        .isEqualTo("200");
  }

  /** What a name server that points another name at this machine would make a browser send. */
  @ParameterizedTest
  @ValueSource(strings = {"evil.example:%d", "127.0.0.1", "127.0.0.1:1", "evil.example", "%d"})
  void host_thatIsNotOurs_isRefused(String host) throws IOException {
    String named = host.contains("%d") ? host.formatted(client.port()) : host;

    assertThat(client.statusOf("GET /api/start HTTP/1.1", "Host: " + named)).isEqualTo("403");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"http://evil.example", "null", "https://127.0.0.1:%d", "http://127.0.0.1:1"})
  void origin_ofAnotherSite_isRefused(String origin) {
    String from = origin.contains("%d") ? origin.formatted(client.port()) : origin;

    assertThat(client.get("/api/start", "Origin", from).statusCode()).isEqualTo(403);
    assertThat(client.post("/api/open", "{\"text\":\"a: b\"}", "Origin", from).statusCode())
        .isEqualTo(403);
  }

  @ParameterizedTest
  @ValueSource(strings = {"cross-site", "same-site"})
  void fetch_fromAnotherSite_isRefused(String site) {
    assertThat(client.get("/", "Sec-Fetch-Site", site).statusCode()).isEqualTo(403);
  }

  @Test
  void form_ofAnotherType_isRefused() throws IOException {
    String status =
        client.statusOf(
            "POST /api/stop HTTP/1.1",
            "Host: 127.0.0.1:" + client.port(),
            "Content-Type: text/plain",
            "Content-Length: 0");

    assertThat(status).isEqualTo("400");
  }

  @Test
  void headers_onEveryAnswer_allowNothingFromElsewhere() {
    for (String path : new String[] {"/", "/main.js", "/api/start", "/nowhere"}) {
      HttpResponse<String> answer = client.get(path);
      assertThat(answer.headers().firstValue("Content-Security-Policy"))
          .as(path)
          .hasValueSatisfying(
              policy ->
                  assertThat(policy)
                      .contains("default-src 'none'")
                      .doesNotContain("unsafe")
                      .doesNotContain("*"));
      assertThat(answer.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
      assertThat(answer.headers().firstValue("Access-Control-Allow-Origin")).isEmpty();
      assertThat(answer.headers().firstValue("Server")).isEmpty();
    }
  }

  @Test
  void body_beyondTheLimit_isRefused() {
    String large = "{\"text\": \"" + "a".repeat(5_000_000) + "\"}";

    assertThat(client.post("/api/open", large).statusCode()).isEqualTo(413);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/../job/default.yaml",
        "/..%2f..%2fetc/passwd",
        "/%2e%2e/job/default.yaml",
        "//etc/passwd",
        "/usual.json",
        "/openapi.json",
        "/api/work/..%2f..%2fetc/events"
      })
  void path_outsideTheList_isNotServed(String path) throws IOException {
    assertThat(client.statusOf("GET " + path + " HTTP/1.1", "Host: 127.0.0.1:" + client.port()))
        .isIn("404", "400");
  }

  @Test
  void club_withoutToken_isRefusedAndWithItWelcome() {
    Client visitor = new Client(club);
    assertThat(visitor.get("/").statusCode()).isEqualTo(401);
    assertThat(visitor.get("/?token=abcdefghijkl_13").statusCode()).isEqualTo(401);
    assertThat(visitor.get("/api/start?token=" + TOKEN).statusCode()).isEqualTo(401);

    HttpResponse<String> first = visitor.get("/?token=" + TOKEN);

    assertThat(first.statusCode()).isEqualTo(200);
    String cookie = first.headers().firstValue("Set-Cookie").orElseThrow();
    assertThat(cookie).contains("HttpOnly").contains("SameSite=Strict");
    String brought = cookie.substring(0, cookie.indexOf(';'));
    assertThat(visitor.get("/api/start", "Cookie", brought).statusCode()).isEqualTo(200);
    assertThat(visitor.post("/api/stop", "{}", "Cookie", brought).statusCode()).isEqualTo(403);
  }

  @Test
  void binding_toOthersWithoutToken_isRefused() {
    assertThatThrownBy(() -> new Binding("0.0.0.0", 0, Optional.empty()))
        .hasMessageContaining("needs an access token");
    assertThatThrownBy(() -> new Binding("0.0.0.0", 0, Optional.of("short")))
        .hasMessageContaining("12 to 128");
    assertThatThrownBy(() -> Binding.loopback(70_000)).hasMessageContaining("70000");
  }

  @Test
  void port_thatIsTaken_isToldPlainly() {
    assertThatThrownBy(() -> PageServer.start(Binding.loopback(server.port())))
        .isInstanceOf(java.net.BindException.class);
  }
}
