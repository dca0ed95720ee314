package curvestock.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.app.Workshop;
import curvestock.check.JobReport;
import curvestock.job.Job;
import curvestock.packing.PackedStore;
import curvestock.packing.Packers;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The JSON API from outside. */
class ApiTest {

  private static PageServer server;
  private static Client client;

  @BeforeAll
  static void start() throws IOException {
    server = PageServer.start(Binding.loopback(0));
    client = new Client(server);
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  private static JsonNode last(List<WorkEvents.Event> events, String name) {
    return Json.own(
        events.stream()
            .filter(e -> e.name().equals(name))
            .reduce((a, b) -> b)
            .orElseThrow()
            .json());
  }

  private static ObjectNode jobWith(String path, String value) {
    ObjectNode job = (ObjectNode) Jobs.small();
    ObjectNode block = job;
    String[] keys = path.split("\\.", -1);
    for (int i = 0; i < keys.length - 1; i++) {
      block = (ObjectNode) block.get(keys[i]);
    }
    block.put(keys[keys.length - 1], value);
    return job;
  }

  @Test
  void start_onAFirstVisit_givesAJobThatCanBeAnswered() {
    JsonNode first = Json.own(client.get("/api/start").body());

    assertThat(first.get("job").get("helix").get("radius").textValue()).isEqualTo("26");
    assertThat(first.get("usual").get("scales").has("HO")).isTrue();
    String id = client.work("first visit", first.get("job"));
    assertThat(client.delete("/api/work/" + id).statusCode()).isEqualTo(204);
  }

  private static ObjectNode asking(JsonNode job) {
    ObjectNode request = Json.object().put("fingerprint", "of this");
    request.set("job", job);
    return request;
  }

  private static JsonNode look(JsonNode job) {
    return Json.own(client.post("/api/look", asking(job).toString()).body());
  }

  private static JsonNode own(JsonNode decision) {
    for (JsonNode size : decision.get("sizes")) {
      if (size.get("own").booleanValue()) {
        return size;
      }
    }
    throw new AssertionError(decision);
  }

  @Test
  void look_onAJobNeverAsked_countsAllSizesByPatterns() {
    JsonNode look = look(jobWith("helix.radius", "29 3/8"));

    assertThat(look.get("fingerprint").textValue()).isEqualTo("of this");
    assertThat(look.at("/helix/pieces")).hasSize(6);
    JsonNode decision = look.get("decision");
    assertThat(decision.get("fingerprint").textValue()).isEqualTo("of this");
    assertThat(decision.get("complete").booleanValue()).isFalse();
    assertThat(decision.get("sizes")).hasSize(6);
    for (JsonNode size : decision.get("sizes")) {
      assertThat(size.get("state").textValue()).isEqualTo("pattern");
      assertThat(size.get("joints").intValue()).isPositive();
    }
    assertThat(own(decision).get("degrees").doubleValue()).isEqualTo(90);
  }

  @Test
  void work_onASmallJob_plansEverySizeAndSaysWhich() throws Exception {
    List<WorkEvents.Event> events =
        client.events(client.work("small", Jobs.narrow()), "done"::equals);

    JsonNode plan = last(events, "plan");
    assertThat(plan.get("fingerprint").textValue()).isEqualTo("of this");
    int placed = 0;
    for (JsonNode sheet : plan.get("sheets")) {
      placed += sheet.get("placements").size();
    }
    assertThat(placed).isEqualTo(plan.at("/answer/pieces").intValue());
    JsonNode decision = last(events, "decision");
    assertThat(decision.get("complete").booleanValue()).isTrue();
    assertThat(decision.get("sentences").get(0).textValue()).startsWith("Cut ");
    assertThat(own(decision).get("sheets")).isEqualTo(plan.at("/answer/sheets"));
    int cut = 0;
    for (JsonNode size : decision.get("sizes")) {
      assertThat(size.get("state").textValue()).isIn("plan", "impossible");
      cut += size.get("state").textValue().equals("plan") ? 1 : 0;
    }
    assertThat(cut).isGreaterThan(3);
  }

  private static boolean isGuess(JsonNode size) {
    return size.get("state").textValue().equals("pattern") && size.get("sheets").intValue() > 0;
  }

  /** The plan that stood on a card is the plan that choosing the card gives. */
  @Test
  void size_chosenAfterItWasPlanned_isAnsweredByThatVeryPlan() throws Exception {
    JsonNode decision =
        last(client.events(client.work("cards", Jobs.narrow()), "done"::equals), "decision");
    ObjectNode sixths = (ObjectNode) Jobs.narrow();
    ((ObjectNode) sixths.get("helix")).put("segments-per-turn", "6");
    // Nothing is left to be guessed by patterns, whichever card is chosen.
    JsonNode look = look(sixths).get("decision");
    assertThat(look.get("sizes")).noneMatch(size -> isGuess(size));
    assertThat(own(look).get("state").textValue()).isEqualTo("plan");

    List<WorkEvents.Event> events = client.events(client.work("cards", sixths), "done"::equals);

    JsonNode card = decision.get("sizes").get(4);
    assertThat(card.get("degrees").doubleValue()).isEqualTo(60);
    List<JsonNode> plans =
        events.stream()
            .filter(event -> event.name().equals("plan"))
            .map(event -> Json.own(event.json()))
            .toList();
    assertThat(plans).isNotEmpty();
    for (JsonNode plan : plans) {
      assertThat(plan.at("/answer/sheets")).isEqualTo(card.get("sheets"));
    }
  }

  @Test
  void title_changed_isAnsweredWithoutASearch() throws Exception {
    Counting counting = new Counting();
    try (PageServer other = PageServer.start(Binding.loopback(0), new Packers(counting))) {
      Client asker = new Client(other);
      JsonNode before = last(asker.events(asker.work("t", Jobs.narrow()), "done"::equals), "plan");
      int asked = counting.asked.get();
      ObjectNode renamed = (ObjectNode) Jobs.narrow();
      renamed.put("title", "Another name").put("note", "x").put("currency", "EUR ");
      renamed.putObject("print").put("unit", "mm");

      List<WorkEvents.Event> events = asker.events(asker.work("t", renamed), "done"::equals);

      // Not even kept packings are asked for: the plan itself is known.
      assertThat(asked).isPositive();
      assertThat(counting.asked.get() - asked).isLessThan(8);
      JsonNode after = last(events, "plan");
      assertThat(placements(after)).isEqualTo(placements(before));
      assertThat(after.at("/answer/money").textValue()).startsWith("EUR ");
      assertThat(last(events, "decision").get("complete").booleanValue()).isTrue();
    }
  }

  private static List<JsonNode> placements(JsonNode plan) {
    List<JsonNode> placements = new ArrayList<>();
    plan.get("sheets").forEach(sheet -> placements.add(sheet.get("placements")));
    return placements;
  }

  @Test
  void search_stoppedAtOnce_givesNoMoreSheetsThanItsFirstPlan() throws Exception {
    ObjectNode job = (ObjectNode) Json.own(client.get("/api/start").body()).get("job");
    ((ObjectNode) job.get("helix")).put("radius", "26 1/4");
    String id = client.work("stops", job);
    JsonNode first = last(client.events(id, "plan"::equals), "plan");
    client.post("/api/work/" + id + "/enough", "{}");

    List<WorkEvents.Event> stopped = client.events(id, "done"::equals);

    JsonNode kept = last(stopped, "plan");
    assertThat(kept.at("/answer/sheets").intValue())
        .isLessThanOrEqualTo(first.at("/answer/sheets").intValue());
    assertThat(kept.get("open").booleanValue()).isTrue();
    ObjectNode further = asking(job).put("client", "stops").put("further", true);
    String next =
        Json.own(client.post("/api/work", further.toString()).body()).get("id").textValue();
    JsonNode onward = last(client.events(next, "plan"::equals), "plan");
    assertThat(onward.at("/answer/sheets").intValue())
        .isLessThanOrEqualTo(kept.at("/answer/sheets").intValue());
    client.delete("/api/work/" + next);
  }

  @Test
  void work_withAWrongField_namesIt() {
    ObjectNode request = asking(jobWith("helix.radius", "twenty")).put("client", "wrong");

    HttpResponse<String> answer = client.post("/api/work", request.toString());

    assertThat(answer.statusCode()).isEqualTo(200);
    JsonNode problem = Json.own(answer.body()).get("problems").get(0);
    assertThat(problem.get("path").textValue()).isEqualTo("helix.radius");
    assertThat(problem.get("message").textValue()).contains("twenty");
  }

  @Test
  void work_thatCannotBeCut_isRefusedWithWhatWouldHelp() throws Exception {
    ObjectNode job = jobWith("helix.radius", "60");
    ((ObjectNode) job.get("helix")).put("segments-per-turn", "2").put("width", "6");

    List<WorkEvents.Event> events =
        client.events(client.work("large", job), name -> name.equals("refused"));

    assertThat(last(events, "refused").get("sentences").toString())
        .contains("set Segments per turn to 5");
  }

  @Test
  void work_askedAnewByTheSameClient_cancelsTheFormerOne() throws Exception {
    ObjectNode patient = jobWith("search.effort", "thorough");
    patient.set("sheets", Json.own(client.get("/api/start").body()).get("job").get("sheets"));
    String former = client.work("busy", patient);

    client.work("busy", Jobs.pieces());

    List<WorkEvents.Event> events = client.events(former, name -> false);
    assertThat(events.get(events.size() - 1).name()).isEqualTo("cancelled");
  }

  @Test
  void work_cancelled_tellsNothingMore() throws Exception {
    String id = client.work("cancels", Json.own(client.get("/api/start").body()).get("job"));

    client.delete("/api/work/" + id);

    List<WorkEvents.Event> events = client.events(id, name -> false);
    assertThat(events.get(events.size() - 1).name()).isEqualTo("cancelled");
    assertThat(events).extracting(WorkEvents.Event::name).doesNotContain("done");
  }

  @Test
  void firstWords_whileAllPlacesAreTaken_waitForNoSearch() throws Exception {
    JsonNode long1 = Json.own(client.get("/api/start").body()).get("job");
    List<String> busy = List.of(client.work("busy 1", long1), client.work("busy 2", long1));
    String id = client.work("third", Jobs.small());

    List<WorkEvents.Event> events = client.events(id, "decision"::equals);

    assertThat(own(last(events, "decision")).get("money").textValue()).startsWith("$");
    assertThat(events).extracting(WorkEvents.Event::name).doesNotContain("plan");
    busy.forEach(each -> client.delete("/api/work/" + each));
    client.delete("/api/work/" + id);
  }

  /** Keeps packings and counts them. */
  private static final class Counting implements PackedStore {
    private final Map<String, String> texts = new ConcurrentHashMap<>();
    private final AtomicInteger asked = new AtomicInteger();

    @Override
    public Optional<String> find(String key) {
      asked.incrementAndGet();
      return Optional.ofNullable(texts.get(key));
    }

    @Override
    public void keep(String key, String text) {
      texts.put(key, text);
    }
  }

  @Test
  void plan_afterAnotherPrice_packsNothingAnew() throws Exception {
    Counting counting = new Counting();
    try (PageServer other = PageServer.start(Binding.loopback(0), new Packers(counting))) {
      Client asker = new Client(other);
      JsonNode before = last(asker.events(asker.work("p", Jobs.pieces()), "done"::equals), "plan");
      int packed = counting.texts.size();
      ObjectNode dearer = (ObjectNode) Jobs.pieces();
      ((ObjectNode) dearer.get("sheets").get(0)).put("price", "99.00");

      JsonNode after = last(asker.events(asker.work("p", dearer), "done"::equals), "plan");

      assertThat(packed).isPositive();
      assertThat(counting.texts).hasSize(packed);
      assertThat(after.get("sheets")).isEqualTo(before.get("sheets"));
      assertThat(after.at("/answer/money").textValue()).isEqualTo("99.00");
    }
  }

  @Test
  void works_beyondWhatCanWait_areRefused() {
    JsonNode job = Json.own(client.get("/api/start").body()).get("job");
    List<String> ids = new ArrayList<>();
    ObjectNode request = asking(job);
    int refused = 0;
    for (int i = 0; i < 14; i++) {
      HttpResponse<String> answer =
          client.post("/api/work", request.put("client", "crowd " + i).toString());
      if (answer.statusCode() == 202) {
        ids.add(Json.own(answer.body()).get("id").textValue());
      } else {
        assertThat(answer.statusCode()).isEqualTo(503);
        refused++;
      }
    }
    ids.forEach(id -> client.delete("/api/work/" + id));

    assertThat(refused).isPositive();
    assertThat(ids.size()).isLessThanOrEqualTo(10);
  }

  /** Worked out by hand: like sectors side by side lie nearest at their outer corners. */
  @Test
  void gaps_ofPiecesLaidByHand_areTrue() {
    double outer = 26 * 25.4;
    double reach = outer * Math.sin(Math.toRadians(30));
    ObjectNode request = Json.object();
    request.set("job", Jobs.pieces());
    ObjectNode sheet = request.putObject("sheet").put("stock", "birch");
    // Turned a quarter, the sector's corners lie to its left and right, `reach` from its middle.
    ArrayNode placements = sheet.putArray("placements");
    for (double x : new double[] {reach + 10, 3 * reach + 12.5}) {
      placements.addObject().put("piece", "A").put("x", x).put("y", 0).put("rotation", Math.PI / 2);
    }

    JsonNode gaps = Json.own(client.post("/api/gaps", request.toString()).body()).get("gaps");

    assertThat(gaps.get(0).get("to").textValue()).isEqualTo("piece");
    assertThat(gaps.get(0).get("gap").doubleValue()).isCloseTo(2.5, within(1e-6));
    assertThat(gaps.get(0).get("holds").booleanValue()).isFalse();
    assertThat(gaps.get(1).get("to").textValue()).isEqualTo("edge");
    double over = 3 * reach + 12.5 + reach - 48 * 25.4;
    assertThat(gaps.get(1).get("words").textValue()).contains("over the sheet's edge");
    assertThat(over).isPositive();
  }

  @Test
  void save_afterAChange_keepsCommentsAndWhatThePageDoesNotShow() {
    ObjectNode request = Json.object().put("original", Jobs.SMALL);
    request.set("job", jobWith("helix.radius", "15 1/2"));

    String text =
        Json.own(client.post("/api/save", request.toString()).body()).get("text").textValue();

    assertThat(text).contains("this comment must survive").contains("# as sold");
    assertThat(text).contains("radius: 15 1/2").contains("price: 68.00");
    assertThat(Workshop.readJob(text, "saved.yaml").title()).isEqualTo("Shelf loop (invented)");
  }

  @Test
  void open_ofWhatIsNoJob_saysWhere() {
    HttpResponse<String> answer =
        client.post("/api/open", Json.object().put("text", "a: [1, 2\nb: 3").toString());

    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(Json.own(answer.body()).get("problems").get(0).get("line").intValue()).isPositive();
  }

  @Test
  void packet_ofAPlan_passesTheCheck(@TempDir Path folder) throws Exception {
    String id = client.work("packet", Jobs.pieces());
    client.events(id, "plan"::equals);

    HttpResponse<byte[]> zip =
        client.bytes(
            "/api/work/" + id + "/packet", Json.object().put("text", Jobs.PIECES).toString());

    assertThat(zip.statusCode()).isEqualTo(200);
    List<String> names = new ArrayList<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip.body()))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        names.add(entry.getName());
        if (entry.getName().matches(".*sheets/sheet-\\d+(-cut)?\\.svg")) {
          Path drawing = folder.resolve(entry.getName().replace('/', '-'));
          Files.write(drawing, in.readAllBytes());
          Job job = Workshop.readJob(Jobs.PIECES, "small.yaml");
          JobReport report = Workshop.check(List.of(drawing), Optional.of(job), true).report();
          assertThat(report.passed()).as(entry.getName()).isTrue();
        }
      }
    }
    assertThat(names).anyMatch(name -> name.endsWith("job.yaml"));
    assertThat(names).anyMatch(name -> name.endsWith("sheets/sheet-01-cut.svg"));
  }

  @Test
  void packet_withPiecesOverEachOther_isRefused() throws Exception {
    String id = client.work("overlaps", Jobs.pieces());
    JsonNode plan = last(client.events(id, "plan"::equals), "plan");
    ObjectNode request = Json.object().put("text", Jobs.PIECES);
    JsonNode sheets = plan.get("sheets").deepCopy();
    ObjectNode first = (ObjectNode) sheets.get(0).get("placements").get(0);
    JsonNode second = sheets.get(0).get("placements").get(1);
    first.setAll((ObjectNode) second.deepCopy());
    request.putObject("hand").set("sheets", sheets);

    HttpResponse<String> answer = client.post("/api/work/" + id + "/packet", request.toString());

    assertThat(answer.statusCode()).isEqualTo(422);
  }

  @Test
  void improve_roundAPinnedPiece_leavesItWhereItIs() throws Exception {
    String id = client.work("pins", Jobs.pieces());
    JsonNode plan = last(client.events(id, "done"::equals), "plan");
    ObjectNode request = Json.object().put("client", "pins");
    JsonNode sheets = plan.get("sheets").deepCopy();
    // Not the first: pinned pieces are told first, and keep their numbers all the same.
    ObjectNode pinned = (ObjectNode) sheets.get(0).get("placements").get(2);
    pinned.put("pinned", true);
    request.set("sheets", sheets);

    HttpResponse<String> started = client.post("/api/work/" + id + "/improve", request.toString());

    String next = Json.own(started.body()).get("id").textValue();
    JsonNode improved = last(client.events(next, "done"::equals), "improved");
    JsonNode kept = improved.get("sheets").get(0).get("placements").get(0);
    assertThat(kept.get("pinned").booleanValue()).isTrue();
    assertThat(kept.get("x").doubleValue()).isEqualTo(pinned.get("x").doubleValue());
    assertThat(kept.get("y").doubleValue()).isEqualTo(pinned.get("y").doubleValue());
    assertThat(kept.get("label")).isEqualTo(pinned.get("label"));
    assertThat(improved.at("/answer/pieces").intValue())
        .isEqualTo(plan.at("/answer/pieces").intValue());
  }

  @Test
  void requests_thatAreNoJson_areRefusedWithWords() {
    assertThat(client.post("/api/work", "[1]").statusCode()).isEqualTo(400);
    assertThat(client.post("/api/work", "{\"client\": 5}").body()).contains("client");
    String odd = "{\"client\": \"a\", \"fingerprint\": \"a\", \"job\": 7}";
    assertThat(client.post("/api/work", odd).body()).contains("job");
    String deep =
        "{\"client\":\"a\",\"job\":" + "{\"a\":".repeat(100) + "1" + "}".repeat(100) + "}";
    assertThat(client.post("/api/work", deep).statusCode()).isEqualTo(400);
    assertThat(client.get("/api/work/none/events").statusCode()).isEqualTo(404);
  }

  /** Each open stream keeps a connection: one computation has eight listeners at most. */
  @Test
  void events_listenedToTooOften_areRefusedInTheEnd() throws Exception {
    String id = client.work("many", Jobs.small());
    List<Socket> open = new ArrayList<>();
    try {
      String said = "";
      for (int i = 0; i < 12 && !said.contains(" 503 "); i++) {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port());
        open.add(socket);
        socket.setSoTimeout((int) Client.PATIENCE.toMillis());
        String request =
            "GET /api/work/%s/events HTTP/1.1\r\nHost: 127.0.0.1:%d\r\nAccept: text/event-stream\r\n\r\n"
                .formatted(id, server.port());
        socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
        said =
            new BufferedReader(
                    new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII))
                .readLine();
      }

      assertThat(said).contains(" 503 ");
      assertThat(open).hasSizeGreaterThan(8);
    } finally {
      for (Socket socket : open) {
        socket.close();
      }
    }
  }
}
