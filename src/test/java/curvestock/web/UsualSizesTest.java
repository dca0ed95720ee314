package curvestock.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.answer.Answer;
import curvestock.app.Workshop;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.job.Job;
import curvestock.plan.PlanListener;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the page suggests to strangers, judged by the program itself. */
class UsualSizesTest {

  private static JsonNode usual() {
    return Json.own(PageFiles.text("usual.json"));
  }

  static Stream<String> scales() {
    return usual().get("scales").properties().stream().map(Map.Entry::getKey);
  }

  /** As `complete` in typical.js makes it. */
  private static Job job(JsonNode sizes, String scale, boolean inches, boolean two) {
    int unit = inches ? 0 : 1;
    ObjectNode job = Json.object().put("curvestock", "1").put("title", "Usual sizes (invented)");
    job.putArray("sheets")
        .addObject()
        .put("name", "plywood")
        .put("size", "4x8 ft")
        .put("thickness", inches ? "0.476 in" : "12 mm")
        .put("price", "50");
    job.putObject("cutting").put("kerf", "3 mm").put("margin", "6 mm");
    ObjectNode helix = job.putObject("helix").put("scale", scale).put("joint", "half-lap");
    Map.of(
            "rise-per-turn", "rise",
            "radius", "radius",
            "width", two ? "width2" : "width")
        .forEach((field, name) -> helix.put(field, sizes.get(name).get(unit).textValue()));
    helix.put("turns", "3").put("tracks", two ? "2" : "1").put("segments-per-turn", "4");
    if (two && sizes.has("spacing")) {
      helix.put("track-spacing", sizes.get("spacing").get(unit).textValue());
    }
    helix.putObject("trains").put("tallest", sizes.get("tallest").get(unit).textValue());
    String lead = sizes.get("lead").get(unit).textValue();
    helix.putObject("bottom").put("climb-lead", lead);
    helix.putObject("top").put("climb-lead", lead);
    return Workshop.readJob(Json.text(job), scale);
  }

  @ParameterizedTest
  @MethodSource("scales")
  void usualSizes_ofAScale_makeAHelixThatWorks(String scale) {
    JsonNode sizes = usual().get("scales").get(scale);
    for (boolean inches : new boolean[] {true, false}) {
      for (boolean two : new boolean[] {true, false}) {
        Answer report = Workshop.helix(job(sizes, scale, inches, two), false, PlanListener.NONE);

        assertThat(report.building().orElseThrow().verdicts())
            .as("%s, inches %s, two tracks %s", scale, inches, two)
            .filteredOn(verdict -> verdict.state() == State.FAIL)
            .extracting(Verdict::rule)
            .isEmpty();
      }
    }
  }

  @Test
  void scales_known_areSeveral() {
    assertThat(scales()).hasSizeGreaterThan(6).contains("N", "HO");
  }
}
