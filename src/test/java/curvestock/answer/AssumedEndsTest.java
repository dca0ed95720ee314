package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.helix.HelixOrder;
import curvestock.helix.verdict.Place;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.helix.verdict.VerdictWords;
import curvestock.job.Job;
import curvestock.job.JobReader;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is assumed at the ends of a helix, in every scale the program knows. All invented. */
class AssumedEndsTest {

  private static final Set<Rule> AT_THE_ENDS =
      Set.of(Rule.VERTICAL_CURVE, Rule.LEAD, Rule.LEAD_SUPPORTS, Rule.FREE_HEIGHT);

  /** Scale, plywood, radius, width, a rise with little room, in mm. */
  private static final List<String> SCALES =
      List.of(
          "Z 4 300 40 41",
          "N 9 420 70 60",
          "TT 9 550 80 73",
          "HO 12 760 100 99",
          "H0 12 760 100 99",
          "OO 12 760 105 113",
          "S 12 1040 140 124",
          "O 18 1470 190 174",
          "0 18 1480 195 176",
          "1 18 2080 240 236",
          "IIm 18 2080 260 310",
          "G 18 2080 260 301");

  static Stream<Arguments> leastJobs() {
    List<String> joints = List.of("", ", joint: half-lap");
    List<String> risers = List.of("", ", supports: {rods: {thread: M8}}");
    List<String> leads = List.of("", ", bottom: {lead-in: 0}, top: {lead-in: 0}");
    return SCALES.stream()
        .flatMap(
            scale ->
                joints.stream()
                    .flatMap(
                        joint ->
                            risers.stream()
                                .flatMap(
                                    riser ->
                                        leads.stream()
                                            .map(
                                                lead ->
                                                    Arguments.of(scale, joint + riser + lead)))));
  }

  private static Job job(String scale, String more) {
    String[] each = scale.split(" ", -1);
    String trains = each[0].equals("G") ? ", trains: {tallest: 205}" : "";
    return JobReader.read(
        """
        curvestock: 2
        title: Least said (invented)
        invented: true
        units: mm
        sheets: [{name: ply, size: 2440x1220 mm, thickness: %s, price: 60}]
        cutting: {kerf: 3, margin: 5}
        helix: {scale: "%s", turns: 3.25, radius: %s, width: %s, rise-per-turn: %s,
                segments-per-turn: 4%s%s}
        """
            .formatted(each[1], each[0], each[2], each[3], each[4], more, trains),
        "least.yaml");
  }

  /** No assumed value fails a check; one that is short of a check is said with the usual value. */
  @ParameterizedTest
  @MethodSource("leastJobs")
  void leastJob_failsNothingAndSaysWhatIsShort(String scale, String more) {
    Job job = job(scale, more);
    HelixOrder order = job.structure().orElseThrow();
    String told = Building.of(job, order, Optional.empty()).assumedCost();

    assertThat(order.plan().verdicts()).noneMatch(verdict -> verdict.state() == State.FAIL);
    assertThat(order.shortEnds())
        .allSatisfy(
            verdict -> assertThat(told).contains(VerdictWords.title(verdict), "Taken instead"));
  }

  /** Where the rise leaves a little room, the assumed ends pass every check of theirs. */
  @ParameterizedTest
  @CsvSource({
    "Z 4 300 40 46, ''",
    "N 9 420 70 64, ''",
    "TT 9 550 80 83, ''",
    "HO 12 760 100 105, ''",
    "HO 12 760 100 105, ', supports: {rods: {}}'",
    "H0 12 760 100 105, ''",
    "OO 12 760 105 134, ''",
    "S 12 1040 140 157, ', supports: {rods: {}}'",
    "O 18 1470 190 222, ''",
    "0 18 1480 195 223, ''",
    "1 18 2080 240 314, ''"
  })
  void leastJob_withSomeRoom_passesAtBothEnds(String scale, String more) {
    Job job = job(scale, more);
    HelixOrder order = job.structure().orElseThrow();

    assertThat(order.plan().verdicts())
        .filteredOn(verdict -> AT_THE_ENDS.contains(verdict.rule()))
        .filteredOn(
            verdict ->
                verdict.place().filter(Place.ENTRY::equals).isPresent()
                    || verdict.place().filter(Place.EXIT::equals).isPresent())
        .hasSize(8)
        .allMatch(verdict -> verdict.state() == State.OK || isShortInTheOpen(order, verdict));
  }

  /** A straight a little longer than just to the support beside the turn below gave the height. */
  @ParameterizedTest
  @CsvSource({"N 9 310 70 51", "HO 12 570 100 87", "H0 12 570 100 87", "OO 12 570 105 101"})
  void exit_thatCanBeLonger_keepsItsWholeCurve(String scale) {
    HelixOrder order = job(scale, ", joint: half-lap").structure().orElseThrow();

    assertThat(order.plan().verdicts())
        .filteredOn(verdict -> AT_THE_ENDS.contains(verdict.rule()))
        .filteredOn(verdict -> verdict.rule() != Rule.FREE_HEIGHT)
        .hasSize(6)
        .allMatch(verdict -> verdict.state() == State.OK);
  }

  /** What to change is a figure; a job with it has whole curves and straights. */
  @ParameterizedTest
  @CsvSource({"TT 9 510 80 73, ', joint: plate'", "1 18 1530 240 229, ', joint: plate'"})
  void rise_thatIsTold_leavesNothingShort(String scale, String more) {
    Job job = job(scale, more);
    String told = Building.of(job, job.structure().orElseThrow(), Optional.empty()).assumedCost();
    Matcher rise = Pattern.compile("With a rise of ([0-9.]+) mm per turn").matcher(told);

    assertThat(rise.find()).as(told).isTrue();
    String higher = scale.replaceFirst("[0-9]+$", rise.group(1));
    HelixOrder order = job(higher, more).structure().orElseThrow();
    assertThat(order.shortEnds()).isEmpty();
    assertThat(order.plan().works()).isTrue();
  }

  /** Where trains have less than the standard's most everywhere, no end can have more. */
  private static boolean isShortInTheOpen(HelixOrder order, Verdict verdict) {
    return verdict.rule() == Rule.FREE_HEIGHT
        && verdict.state() == State.MARGINAL
        && order.plan().verdicts().stream()
            .anyMatch(each -> each.is(Rule.FREE_HEIGHT, Place.OPEN) && each.state() != State.OK);
  }
}
