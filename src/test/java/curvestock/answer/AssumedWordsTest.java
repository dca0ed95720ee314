package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.app.Workshop;
import curvestock.job.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever a helix leaves open is told by a name, in the job's own units. Data invented. */
class AssumedWordsTest {

  private static String job(String unit, String radius, String climb, String joint, String more) {
    return """
    curvestock: 2
    title: Test helix (invented)
    invented: true
    units: %s
    sheets: [{name: ply, size: 4x8 ft, thickness: %s, price: 50}]
    cutting: {kerf: 1 mm}
    helix:
      scale: HO
      turns: 3
      radius: %s
      width: %s
      climb: %s
      segments-per-turn: 6
      joint: %s
      supports: {%s}
    """
        .formatted(
            unit,
            unit.equals("in") ? "1/2 in" : "12 mm",
            radius,
            unit.equals("in") ? "4 in" : "100 mm",
            climb,
            joint,
            more);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "in | 26 in | 13 in | plate | per-turn: 18",
        "in | 26 in | 13 in | half-lap | 'rods: {thread: 1/4-20}'",
        "mm | 660 mm | 330 mm | plate | 'rods: {thread: M6}'",
        "mm | 660 mm | 330 mm | side-plates | per-turn: 18",
        "mm | 660 mm | 330 mm | two-layers | 'blocks: {width: 18}'"
      })
  void assumed_haveNamesAndTheJobsUnits(
      String unit, String radius, String climb, String joint, String more) throws Exception {
    Job job = Workshop.readJob(job(unit, radius, climb, joint, more), "test");
    Table assumed =
        Answer.ofHelix(job, job.structure().orElseThrow(), Optional.empty(), true)
            .building()
            .orElseThrow()
            .assumed();

    List<String> names = new ArrayList<>();
    for (int i = 0; i < assumed.rows().size(); i++) {
      names.add(Figures.PLAIN.of(assumed.at(i, "what"), Measure.TEXT));
      String value = Figures.PLAIN.of(assumed.at(i, "value"), Measure.TEXT);
      String reason = Figures.PLAIN.of(assumed.at(i, "reason"), Measure.TEXT);
      assertThat(value + "; " + reason)
          .doesNotContainPattern(unit.equals("in") ? "\\d (mm|cm|kg)" : "\\d (in|ft|lb)\\b");
    }
    assertThat(names).hasSizeGreaterThan(10).doesNotHaveDuplicates();
    assertThat(names).allMatch(name -> name.matches("[a-z].*[a-z]"));
  }
}
