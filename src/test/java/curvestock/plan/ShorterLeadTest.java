package curvestock.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import curvestock.job.Job;
import curvestock.job.JobReader;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A lead too long for the sheet is told, with keys that make the job one that can be cut. */
class ShorterLeadTest {

  /** Invented. */
  private static final String JOB =
      """
      curvestock: 1
      title: Long leads
      units: mm
      sheets:
        - {name: panel, size: 1200x600, thickness: 9, price: 20}
      cutting: {kerf: 3, margin: 5}
      helix:
        scale: H0
        turns: 2
        radius: 500
        width: 90
        rise-per-turn: 100
        segments-per-turn: 6
        joint: {half-lap: 40}
        bottom: {lead-in: 300}
        top: {lead-in: 300}
        supports: {per-turn: 12}
        trains: {tallest: 55}
      search: {effort: quick}
      """;

  private static Infeasible refused(Job job) {
    return catchThrowableOfType(
        Infeasible.class, () -> new Planner(job, PlanListener.NONE).planRoughly());
  }

  @ParameterizedTest
  @ValueSource(strings = {"bottom", "top"})
  void leadTooLong_isToldWithKeysThatWork(String end) throws Exception {
    String text = JOB.replace(end + ": {lead-in: 300}", end + ": {lead-in: 900}");

    String advice = refused(JobReader.read(text, "job.yaml")).getMessage();

    Matcher told =
        Pattern.compile(
                "write `(lead-in: [0-9.]+ mm)` under `" + end + ":`.*`(- \\{name: .*\\}\\})`")
            .matcher(advice);
    assertThat(told.find()).as(advice).isTrue();
    String taken =
        text.replace(end + ": {lead-in: 900}", end + ": {" + told.group(1) + "}")
            + "pieces:\n  "
            + told.group(2)
            + "\n";
    Plan plan = new Planner(JobReader.read(taken, "job.yaml"), PlanListener.NONE).planRoughly();
    assertThat(plan.job().demands()).anyMatch(d -> d.piece().name().startsWith("rest of the "));
    double straight = Double.parseDouble(told.group(1).replaceAll("[^0-9.]", ""));
    assertThat(told.group(2)).contains("length: " + (int) (900 - straight) + " mm");
  }

  @Test
  void segmentTooLarge_isNotBlamedOnTheLead() {
    String text = JOB.replace("segments-per-turn: 6", "segment-angle: 290");

    assertThat(refused(JobReader.read(text, "job.yaml")).getMessage())
        .contains("Segments of 290° fit on no sheet")
        .doesNotContain("lead-in");
  }

  /** Thirds of a garden railway: one cause, so one message, with what fits, tried by taking it. */
  @Test
  void segmentsTooLarge_areToldOnceWithTheCutThatFits() throws Exception {
    String text =
        """
        curvestock: 2
        title: Garden thirds (invented)
        invented: true
        units: mm
        sheets: [{name: ply, size: 1220x2440 mm, thickness: 17.7, price: 60}]
        cutting: {kerf: 3, margin: 5}
        helix: {scale: IIm, radius: 1500, width: 260, climb: 700, rise-per-turn: 350,
                segments-per-turn: 3, trains: {tallest: 200}}
        search: {effort: quick}
        """;

    String message = refused(JobReader.read(text, "job.yaml")).getMessage();

    assertThat(message.lines()).hasSize(1);
    // By hand: 2 x 1630 mm x sin (121.94° / 2) = 2850 mm from corner to corner, 120° and a
    // half-lap,
    // and 2430 mm are to be had.
    assertThat(message)
        .contains("120°")
        .contains("2850")
        .contains("Fix: write `segments-per-turn:");
    Matcher told = Pattern.compile("segments-per-turn: ([0-9]+)").matcher(message);
    assertThat(told.find()).isTrue();
    String taken = text.replace("segments-per-turn: 3", told.group());
    Plan plan = new Planner(JobReader.read(taken, "job.yaml"), PlanListener.NONE).planRoughly();
    assertThat(plan.layouts()).isNotEmpty();
    int fewer = Integer.parseInt(told.group(1)) - 1;
    String tooFew = text.replace("segments-per-turn: 3", "segments-per-turn: " + fewer);
    assertThat(refused(JobReader.read(tooFew, "job.yaml"))).isNotNull();
  }

  /** The page has fields; it never shows a key of the job file. */
  @ParameterizedTest
  @ValueSource(
      strings = {"bottom: {lead-in: 900}", "segment-angle: 290", "machine: {bed: 300x200}"})
  void page_isToldOfItsFields(String change) {
    String key = change.substring(0, change.indexOf(':'));
    String text =
        key.equals("bottom")
            ? JOB.replace("bottom: {lead-in: 300}", change)
            : key.equals("machine") ? JOB + change : JOB.replace("segments-per-turn: 6", change);

    Infeasible refused = refused(JobReader.read(text, "job.yaml"));

    assertThat(refused.getMessage()).contains("`");
    assertThat(refused.onPage()).doesNotContain("`", "{", "lead-in:", "bottom:");
    assertThat(refused.onPage()).containsAnyOf("Lead to", "Segments per turn");
  }

  /** 'Cut it in parts' named no key. */
  @Test
  void bedTooSmall_namesTheKeysThatMakeThePieceSmaller() {
    String message =
        refused(JobReader.read(JOB + "machine: {bed: 300x200}\n", "job.yaml")).getMessage();

    assertThat(message).contains("`segments-per-turn:`", "`lead-in:`", "`bed:`");
    assertThat(message).doesNotContain("in parts");
  }
}
