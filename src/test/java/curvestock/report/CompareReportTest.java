package curvestock.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import curvestock.answer.Choices;
import curvestock.answer.SegmentName;
import curvestock.compare.Comparer;
import curvestock.compare.Comparison;
import curvestock.compare.Question;
import curvestock.compare.SegmentOption;
import curvestock.compare.TestJobs;
import curvestock.drawing.Picture;
import curvestock.units.Angle;
import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class CompareReportTest {

  private static Comparison comparison;

  @BeforeAll
  static void compare() throws Exception {
    Question question =
        new Question(
            List.of(Angle.ofDegrees(90), Angle.ofDegrees(60), Angle.ofDegrees(45)),
            true,
            OptionalInt.of(2),
            false);
    comparison = new Comparer(TestJobs.small(), question, TestJobs.untilPlanned()).compare();
  }

  private static JsonNode json() throws Exception {
    return new ObjectMapper().readTree(CompareJson.of(Choices.of(comparison)));
  }

  @Test
  void json_agreesWithTheTable() throws Exception {
    List<String> text = ComparePaper.text(Choices.of(comparison));
    JsonNode choices = json().get("choices");

    assertThat(choices).hasSameSizeAs(comparison.options());
    for (JsonNode choice : choices) {
      String name = SegmentName.brief(Angle.ofDegrees(choice.get("angle").asDouble()));
      List<String> rows =
          text.stream().filter(line -> line.strip().startsWith(name + " ")).toList();
      assertThat(rows).as(name).hasSize(3);
      assertThat(rows.get(0).strip().substring(name.length()).replace("*", " ").strip())
          .matches(
              Stream.of("pieces", "perSheet", "sheets", "cost", "joints")
                  .map(key -> Pattern.quote(shown(key, choice)))
                  .collect(Collectors.joining(" +", "", " .*")));
      assertThat(rows.get(1).strip().substring(name.length()).strip())
          .startsWith(choice.get("limit").asText());
    }
  }

  private static String shown(String key, JsonNode choice) {
    return key.equals("cost")
        ? String.format(Locale.ROOT, "$%.2f", choice.get(key).asLong() / 100.0)
        : choice.get(key).asText();
  }

  @Test
  void recommendation_inJson_isTheOneInTheText() throws Exception {
    assertThat(String.join(" ", ComparePaper.text(Choices.of(comparison))))
        .contains(json().get("recommendation").get("sentence").asText());
  }

  @Test
  void text_withoutRates_saysWhatIsCompared_andWhatAJointIsTakenAt() {
    String text = String.join("\n", ComparePaper.text(Choices.of(comparison)));

    assertThat(text)
        .contains("compared by the price of sheets and joints")
        .contains("Each joint is assumed to cost $2.00");
    assertThat(text).doesNotContain("Time to");
    assertThat(text).contains("With 2 sheets of panel");
  }

  @Test
  void text_withRates_hasTheirColumns() throws Exception {
    Comparison priced =
        new Comparer(
                TestJobs.smallWith(
                    "rates: {feed-per-minute: 30, machine-per-hour: 12, parts-per-joint: 0.75}\n"),
                new Question(List.of(Angle.ofDegrees(90)), false, OptionalInt.empty(), false),
                TestJobs.untilPlanned())
            .compare();
    String text = String.join("\n", ComparePaper.text(Choices.of(priced)));
    SegmentOption quarters = priced.options().get(0);

    assertThat(text)
        .contains("Time")
        .contains("0:29 h")
        .contains(quarters.total().format("$"))
        .doesNotContain("is assumed to cost");
  }

  @Test
  void text_isTheSameInEveryLocale() {
    List<String> here = ComparePaper.text(Choices.of(comparison));
    String chart = CompareCharts.choices(comparison);
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertThat(ComparePaper.text(Choices.of(comparison))).isEqualTo(here);
      assertThat(CompareCharts.choices(comparison)).isEqualTo(chart);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void charts_drawnTwice_areTheSameBytes_withTextInAGenericFace() {
    String choices = CompareCharts.choices(comparison);
    String angles = CompareCharts.angles(comparison, comparison.scan().orElseThrow());

    assertThat(CompareCharts.choices(comparison)).isEqualTo(choices);
    assertThat(CompareCharts.angles(comparison, comparison.scan().orElseThrow())).isEqualTo(angles);
    for (String svg : List.of(choices, angles)) {
      assertThat(svg).contains("sans-serif").contains("<text").doesNotContain("<image");
    }
    assertThat(choices).contains(">joints<");
    assertThat(angles).contains("segment angle, degrees").contains(">1/4<");
  }

  @Test
  void charts_asPictures_areDrawn() throws Exception {
    byte[] png = Picture.png(CompareCharts.choices(comparison), 450);

    assertThat(ImageIO.read(new ByteArrayInputStream(png)).getWidth()).isEqualTo(450);
  }
}
