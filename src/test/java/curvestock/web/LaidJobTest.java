package curvestock.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.app.Workshop;
import curvestock.job.Job;
import curvestock.job.JobException;
import curvestock.layout.Placement;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Sheets laid by hand in a job file: saved by the page, checked on reading, kept by a plan. */
class LaidJobTest {

  private static PageServer server;
  private static Client client;
  private static ObjectNode hand;

  @BeforeAll
  static void start() throws Exception {
    server = PageServer.start(Binding.loopback(0));
    client = new Client(server);
    List<WorkEvents.Event> events =
        client.events(client.work("laid", Jobs.pieces()), "done"::equals);
    JsonNode plan =
        Json.own(
            events.stream()
                .filter(event -> event.name().equals("plan"))
                .reduce((a, b) -> b)
                .orElseThrow()
                .json());
    hand = Json.object();
    hand.set("sheets", plan.get("sheets").deepCopy());
    // As somebody would: the numbers in another order, the first piece pinned.
    ArrayNode placements = (ArrayNode) hand.at("/sheets/0/placements");
    JsonNode first = placements.get(0).get("label");
    ((ObjectNode) placements.get(0)).set("label", placements.get(1).get("label"));
    ((ObjectNode) placements.get(1)).set("label", first);
    ((ObjectNode) placements.get(0)).put("pinned", true);
  }

  @AfterAll
  static void stop() throws IOException {
    server.close();
  }

  private static String saved(JsonNode laid) {
    ObjectNode request = Json.object().put("original", Jobs.PIECES);
    request.set("job", Jobs.pieces());
    request.set("hand", laid);
    return Json.own(client.post("/api/save", request.toString()).body()).get("text").textValue();
  }

  @Test
  void layout_savedAndOpened_isTheSame() {
    JsonNode opened =
        Json.own(
            client.post("/api/open", Json.object().put("text", saved(hand)).toString()).body());

    assertThat(opened.at("/job").has("laid")).isFalse();
    JsonNode before = hand.at("/sheets/0/placements");
    JsonNode after = opened.at("/hand/sheets/0/placements");
    assertThat(after).hasSameSizeAs(before);
    for (int i = 0; i < before.size(); i++) {
      assertThat(after.get(i).get("label")).isEqualTo(before.get(i).get("label"));
      assertThat(after.get(i).get("x").doubleValue())
          .isCloseTo(before.get(i).get("x").doubleValue(), within(1e-8));
    }
    assertThat(after.get(0).get("pinned").booleanValue()).isTrue();
    assertThat(after.get(1).get("pinned").booleanValue()).isFalse();
  }

  @Test
  void plan_ofAJobLaidByHand_keepsPlacesAndNumbers() throws Exception {
    Plan plan = Workshop.plan(Workshop.readJob(saved(hand), "laid.yaml"), PlanListener.NONE);

    JsonNode before = hand.at("/sheets/0/placements");
    List<Placement> placements = plan.layouts().get(0).placements();
    assertThat(placements).hasSameSizeAs(before);
    for (int i = 0; i < before.size(); i++) {
      assertThat(placements.get(i).pose().y())
          .isCloseTo(before.get(i).get("y").doubleValue(), within(1e-8));
      assertThat(plan.labels().get(0).get(i)).isEqualTo(before.get(i).get("label").textValue());
    }
    assertThat(plan.stopped()).isFalse();
  }

  private static Job changed(java.util.function.Consumer<ArrayNode> change) {
    ObjectNode other = hand.deepCopy();
    change.accept((ArrayNode) other.at("/sheets/0/placements"));
    return Workshop.readJob(saved(other), "laid.yaml");
  }

  @Test
  void layout_thatIsWrong_isRefusedOnReading() {
    assertThatThrownBy(() -> changed(placements -> placements.remove(0)))
        .isInstanceOf(JobException.class)
        .hasMessageContaining("laid")
        .hasMessageContaining("but the job wants 4");
    assertThatThrownBy(
            () ->
                changed(
                    placements -> {
                      ObjectNode onto = (ObjectNode) placements.get(0);
                      onto.set("x", placements.get(1).get("x"));
                      onto.set("y", placements.get(1).get("y"));
                      onto.set("rotation", placements.get(1).get("rotation"));
                    }))
        .isInstanceOf(JobException.class)
        .hasMessageContaining("too close");
    assertThatThrownBy(
            () -> changed(placements -> ((ObjectNode) placements.get(0)).put("piece", "Z")))
        .isInstanceOf(JobException.class)
        .hasMessageContaining("this job has no piece");
  }
}
