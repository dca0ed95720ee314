package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.app.Workshop;
import curvestock.handwork.Trammel;
import curvestock.helix.build.Bridge;
import curvestock.job.DefaultJob;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.machine.TestCut;
import curvestock.units.Count;
import curvestock.units.Length;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What one table says of a thing, another table and the sentences say too. */
class PapersAgreeTest {

  private static Answer answer(Job job) {
    return Answer.ofHelix(job, job.structure().orElseThrow(), Optional.empty(), false);
  }

  private static Answer pantry() throws Exception {
    return answer(Workshop.readJob(Optional.empty()));
  }

  private static String row(
      Table table, String column, String words, String wanted, Answer answer) {
    return IntStream.range(0, table.rows().size())
        .filter(i -> table.words(i, column, answer.figures()).contains(words))
        .mapToObj(i -> table.words(i, wanted, answer.figures()))
        .findFirst()
        .orElseThrow();
  }

  /** Outer radius 28 1/4 in, 60° from S11 to S1: 29.584 in of arc, and an inch past each end. */
  @Test
  void edgeStrip_hasOneSizeOnEveryPaper_andReachesPastItsSupports() throws Exception {
    Answer answer = pantry();
    Building helix = answer.building().orElseThrow();
    Bridge strip = helix.plan().stations().bridges().get(0);
    double arc = 28.25 * Math.PI / 3;
    double cut = ((Length) helix.bridges().at(0, "length")).inches();

    assertThat(cut).isBetween(arc + 2, arc + 2 + 1.0 / 16);
    assertThat(strip.form()).isEqualTo(Bridge.Form.STRIP);
    String item =
        "strips of plywood or hardboard %s × %s × 1/8 in"
            .formatted(
                answer.figures().length((Length) helix.bridges().at(0, "length")),
                answer.figures().length((Length) helix.bridges().at(0, "depth")));
    assertThat(answer.figures().length((Length) helix.bridges().at(0, "breadth")))
        .isEqualTo("1/4 in");
    // What is bought are the layers: two for each of the five.
    assertThat(row(answer.shopping(), "item", "strips of", "item", answer)).isEqualTo(item);
    assertThat(row(answer.shopping(), "item", "strips of", "quantity", answer)).isEqualTo("10");
    assertThat(row(answer.shopping(), "item", "strips of", "note", answer))
        .contains("5 edge strips, two layers each");
    assertThat(String.join(" ", new BenchWords(helix, answer.figures()).bridgeRemarks()))
        .contains("1/8 in thick each")
        .contains("1 in past the middle of the support");
  }

  /**
   * 20 laps of 2 x 4 1/2 in, both ends of 135 blocks of 3/4 x 1 1/2 in, and five strips glued to
   * 0.476 in of plywood and in two layers; 0.66 oz to the square foot (common practice, no source).
   */
  @Test
  void glue_isForLapsBlocksAndStrips() throws Exception {
    Answer answer = pantry();
    double strips = 5 * (28.25 * Math.PI / 3 + 2) * (0.476 + 1.8);
    double feet = (20 * 2 * 4.5 + 2 * 135 * 0.75 * 1.5 + strips) / 144;

    String told = row(answer.shopping(), "item", "glue", "quantity", answer);
    assertThat(told).matches("[0-9.]+ oz");
    assertThat(Double.parseDouble(told.replace(" oz", ""))).isCloseTo(feet * 0.66, within(0.1));
  }

  /**
   * One down into each of the blocks, one at an angle for each that stands on the base, two for
   * each brace of the three pairs under the exit lead.
   */
  @Test
  void screwsOfBlocks_areOnTheShoppingList() throws Exception {
    Answer answer = pantry();
    Building helix = answer.building().orElseThrow();
    long all = 0;
    long lowest = 0;
    for (int i = 0; i < helix.blocks().rows().size(); i++) {
      long count = ((Count) helix.blocks().at(i, "count")).number();
      all += count;
      lowest +=
          answer.figures().of(helix.blocks().at(i, "where"), Measure.TEXT).startsWith("base, ")
              ? count
              : 0;
    }

    assertThat(row(answer.shopping(), "item", "No. 8 × 1 1/2 in", "quantity", answer))
        .isEqualTo(Long.toString(all + lowest + 2 * 3));
    assertThat(row(answer.shopping(), "item", "No. 8", "price", answer))
        .isEqualTo("no price given");
    // Along the lead, shorter: at both edges of two posts that have a neighbour.
    assertThat(row(answer.shopping(), "item", "No. 8 × 1 1/4 in", "quantity", answer))
        .isEqualTo(Long.toString(2 * 4));
    // Strips and screws of two lengths.
    assertThat(answer.unpriced()).isEqualTo(3);
    assertThat(String.join(" ", new FixingWords(helix, answer.figures()).all()))
        .contains("No. 8 × 1 1/2 in");
  }

  /** Every joint of the pantry helix sits on a riser: its screw is longer than the lap is thick. */
  @Test
  void screwOfABlock_goesThroughTheLap_andNothingElseIsSaid() throws Exception {
    Answer answer = pantry();
    String fixing =
        String.join(" ", new FixingWords(answer.building().orElseThrow(), answer.figures()).all());

    assertThat(fixing).contains("goes down through both halves of the lap");
    assertThat(fixing).doesNotContain("11/32");
  }

  @Test
  void lapWithNoBlockUnderIt_takesAShortScrew() throws Exception {
    Job job =
        JobReader.read(
            DefaultJob.text()
                .replace("    foot-height: 2\n", "    foot-height: 2\n    first-at: 15\n"),
            "job");
    Answer answer = answer(job);

    assertThat(
            String.join(
                " ", new FixingWords(answer.building().orElseThrow(), answer.figures()).all()))
        .contains("shorter than 11/32 in")
        .doesNotContain("both halves");
  }

  /** Set to a sixty-fourth, five blocks on each other are off by less than a pencil line. */
  @Test
  void blocksBetweenTurns_arePrintedIn64ths_andCheckedByAStack() throws Exception {
    Answer answer = pantry();
    Building helix = answer.building().orElseThrow();
    int last = helix.blocks().rows().size() - 1;
    double exact = ((Length) helix.blocks().at(last, "longSide")).inches();
    String printed = helix.blocks().words(last, "longSide", answer.figures());

    // 4.054 in of rise on the grade, less 0.476 in of plywood.
    assertThat(exact).isCloseTo(3.578, within(5e-4));
    assertThat(printed).isEqualTo("3 37/64 in");
    assertThat(Math.abs(5 * (3 + 37.0 / 64 - exact))).isLessThan(1.0 / 64);
    assertThat(String.join(" ", new BenchWords(helix, answer.figures()).blockRemarks()))
        .contains("set the saw's stop to about 3 37/64 in")
        .contains(
            "Cut 10 and lay them end to end, all facing the same way. Together they must measure 35 25/32 in along one edge")
        .doesNotContain("really");
    assertThat(row(helix.supports(), "turn", "5", "gap", answer)).isEqualTo(printed);
  }

  /** S5 has the outer and the inner block on the base, and two on each of four turns above. */
  @Test
  void blocksOfASupport_areAddedUp_andPostsOfLeadsHaveTheirDistance() throws Exception {
    Answer answer = pantry();
    Building helix = answer.building().orElseThrow();
    long all = 0;
    for (int i = 0; i < helix.blocks().rows().size(); i++) {
      all += ((Count) helix.blocks().at(i, "count")).number();
    }
    long bySupport = 0;
    for (int i = 0; i < helix.bySupport().rows().size(); i++) {
      bySupport += ((Count) helix.bySupport().at(i, "count")).number();
    }

    assertThat(bySupport).isEqualTo(all);
    assertThat(row(helix.bySupport(), "station", "S5", "blocks", answer))
        .isEqualTo("2 x block-8, 8 x block-19");
    assertThat(row(helix.supports(), "station", "S5", "pieces", answer)).isNotBlank();
    double first = ((Length) helix.supports().at(0, "along")).inches();
    double second = ((Length) helix.supports().at(1, "along")).inches();
    assertThat(first).isGreaterThan(second).isLessThanOrEqualTo(32);
    assertThat(row(helix.supports(), "turn", "entry lead", "bearing", answer)).isEmpty();
    assertThat(row(helix.supports(), "turn", "exit lead", "along", answer)).isNotEmpty();
    assertThat(row(helix.supports(), "station", "S1", "along", answer)).isEmpty();
  }

  /** 0.476 / 2 = 0.238 in, which is 15.2 sixty-fourths. */
  @Test
  void depthOfAHalfLap_hasItsFraction_andIsHalfOfTheSheetAtHand() throws Exception {
    Answer answer = pantry();
    String joints =
        String.join(
            " ", new BenchWords(answer.building().orElseThrow(), answer.figures()).joints());

    assertThat(joints)
        .contains("0.476 in thick, which makes 0.238 in, a hair over 15/64 in")
        .contains("measure your own sheet");
  }

  /** The bit's middle runs half of 1/8 in outside the outer edge of 28 1/4 in. */
  @Test
  void trammel_reachesPastTheMiddleOfTheBit() {
    Trammel trammel =
        new Trammel(
            "ring",
            List.of(
                new Trammel.Hole("inner edge", Length.ofInches(23.75), Trammel.Keep.OUTSIDE),
                new Trammel.Hole("outer edge", Length.ofInches(28.25), Trammel.Keep.INSIDE)));

    assertThat(trammel.reach(Length.ofInches(0.125))).isEqualTo(Length.ofInches(28.3125));
  }

  @Test
  void testCut_isAskedFromAScrapThatATapeMeasures() throws Exception {
    for (Path file : DemoPlans.files()) {
      Job job = DemoPlans.job(file);
      TestCut cut =
          TestCut.of(
              job.sheets().get(0),
              job.cutting(),
              new TestCut.Joint(Optional.empty(), Optional.empty(), Optional.empty()),
              job.machine());
      String words = String.join(" ", cut.words(job.style(), Optional.empty()));

      assertThat(words).contains("from scrap").doesNotContain("offcut");
      assertThat(words)
          .containsPattern(
              job.style().unit().isImperial()
                  ? "plywood, [0-9]+( 1/2)? in x [0-9]+( 1/2)? in"
                  : "plywood, [0-9]+0 mm x [0-9]+0 mm");
    }
  }

  @Test
  void jointsThatLineUp_areSaidToDoNoHarm_withTheReason() throws Exception {
    Answer answer = pantry();
    Building helix = answer.building().orElseThrow();

    assertThat(row(helix.checks(), "title", "joints, turn to turn", "finding", answer))
        .contains("line up")
        .contains("each sits on a support");
  }
}
