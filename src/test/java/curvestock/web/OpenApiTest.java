package curvestock.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import curvestock.packing.Packers;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The description of the API against the API. */
class OpenApiTest {

  private static PageServer server;
  private static Client client;
  private static JsonNode described;

  @BeforeAll
  static void start() throws IOException {
    server = PageServer.start(Binding.loopback(0));
    client = new Client(server);
    described = Json.own(client.get("/api/openapi.json").body());
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @Test
  void paths_described_areThoseServed() {
    Set<String> served = new TreeSet<>();
    new Api(new Works(Packers.FORGETFUL), Optional.empty())
        .routes()
        .forEach(route -> served.add(route.method() + " " + route.path()));
    served.add("GET /api/work/{id}/events");
    Set<String> told = new TreeSet<>();
    described
        .get("paths")
        .properties()
        .forEach(
            path ->
                path.getValue()
                    .fieldNames()
                    .forEachRemaining(
                        method -> told.add(method.toUpperCase(Locale.ROOT) + " " + path.getKey())));

    assertThat(told).hasSizeGreaterThan(12).isEqualTo(served);
  }

  /** A response as the description has it: its schema, and what that refers to. */
  private static void assertAsDescribed(String method, String path, HttpResponse<String> answer) {
    JsonNode response =
        described
            .at("/paths/" + path.replace("/", "~1") + "/" + method + "/responses")
            .get(Integer.toString(answer.statusCode()));
    assertThat(response).as("%s %s %d is described", method, path, answer.statusCode()).isNotNull();
    if (response.has("$ref")) {
      response = described.at(response.get("$ref").textValue().substring(1));
    }
    assertSchema(response.at("/content/application~1json/schema"), answer.body());
  }

  private static Schema judge(JsonNode schema) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(Json.text(schema));
  }

  private static void assertSchema(JsonNode schema, String body) {
    ObjectNode whole = Json.object();
    whole.putArray("allOf").add(schema);
    whole.set("components", described.get("components"));
    Schema judge = judge(whole);
    assertThat(judge.validate(Json.own(body))).as(body).isEmpty();
  }

  @Test
  void answers_ofEveryKind_areAsDescribed() throws Exception {
    assertAsDescribed("get", "/api/start", client.get("/api/start"));
    ObjectNode text = Json.object().put("text", Jobs.PIECES);
    assertAsDescribed("post", "/api/open", client.post("/api/open", text.toString()));
    assertAsDescribed("post", "/api/open", client.post("/api/open", "{\"text\": \"[\"}"));
    assertAsDescribed("post", "/api/open", client.post("/api/open", "{}"));
    ObjectNode save = Json.object().put("original", "");
    save.set("job", Jobs.pieces());
    assertAsDescribed("post", "/api/save", client.post("/api/save", save.toString()));
    ObjectNode work = Json.object().put("client", "described").put("fingerprint", "1");
    work.set("job", Jobs.pieces());
    HttpResponse<String> started = client.post("/api/work", work.toString());
    assertAsDescribed("post", "/api/work", started);
    String id = Json.own(started.body()).get("id").textValue();
    for (WorkEvents.Event event : client.events(id, "done"::equals)) {
      if (event.name().equals("plan")) {
        assertSchema(described.at("/components/schemas/Plan"), event.json());
      }
    }
    work.set("job", Json.object());
    assertAsDescribed("post", "/api/work", client.post("/api/work", work.toString()));
    ObjectNode look = Json.object().put("fingerprint", "1");
    look.set("job", Jobs.small());
    assertAsDescribed("post", "/api/look", client.post("/api/look", look.toString()));
    look.set("job", Json.object().put("cut", "half typed"));
    assertAsDescribed("post", "/api/look", client.post("/api/look", look.toString()));
  }

  /** The events that the page listens to are those that are described. */
  @Test
  void events_ofAComputation_areAllDescribed() {
    String told =
        described.at("/paths/~1api~1work~1{id}~1events/get").toString()
            + described.get("components");
    Matcher names =
        Pattern.compile("\"([a-z]+)\"")
            .matcher(
                PageFiles.text("server.js")
                    .replaceAll("(?s).*const NAMES|export function listen.*", ""));
    int count = 0;
    while (names.find()) {
      assertThat(told).contains(names.group(1));
      count++;
    }

    assertThat(count).isGreaterThan(9);
  }

  @Test
  void schemas_judged_canFail() {
    ObjectNode whole = Json.object();
    whole.put("$ref", "#/components/schemas/Started");
    whole.set("components", described.get("components"));
    Schema judge = judge(whole);

    assertThat(judge.validate(Json.own("{\"number\": 1}"))).isNotEmpty();
  }
}
