package curvestock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.check.Expectation;
import curvestock.check.Finding;
import curvestock.check.LayoutCheck;
import curvestock.job.Batch;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.layout.Layout;
import curvestock.packing.Packers;
import curvestock.plan.BatchPlan;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.sheet.Cutting;
import curvestock.units.Length;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a shop that knows nothing of the job must find in the files. Data invented. */
class ShopFilesTest {

  private static final String HELIX =
      """
      curvestock: 1
      title: Test climb
      units: mm
      sheets:
        - {name: birch, size: 1525x1525, thickness: 12.1, price: 20}
      cutting: {kerf: 6, extra: 1, margin: 8}
      helix:
        scale: N
        turns: 1 1/4
        radius: 300
        width: 80
        rise-per-turn: 80
        trains: {opening: 300}
        direction: clockwise
        segments-per-turn: 4
        joint: {half-lap: 50}
      search: {effort: quick}
      """;

  private static final String PLATES =
      HELIX.replace(
          "joint: {half-lap: 50}",
          "joint: {plate: {length: 100, thickness: 12.1, screws-each-side: 2, screw-hole: 4.5,"
              + " from-sheets: true}}");

  private static Map<String, byte[]> files(String job) throws Infeasible {
    return files(JobReader.read(job, "job.yaml"));
  }

  private static final Map<String, Plan> PLANS = new HashMap<>();

  /** The sheets do not depend on how machines are told of them, so they are planned once. */
  private static Map<String, byte[]> files(Job job) throws Infeasible {
    String joint = job.structure().orElseThrow().plan().spec().construction().title();
    if (!PLANS.containsKey(joint)) {
      PLANS.put(joint, Workshop.plan(job, PlanListener.NONE));
    }
    Plan plan = PLANS.get(joint);
    Plan same =
        new Plan(
            job.marked(),
            plan.purchase(),
            plan.layouts(),
            plan.capacities(),
            plan.carriedWhole(),
            plan.obstacles(),
            plan.stopped());
    return Workshop.result(same, PlanListener.NONE).contents();
  }

  private static String text(Map<String, byte[]> files, String name) {
    assertThat(files).containsKey(name);
    return new String(files.get(name), StandardCharsets.UTF_8);
  }

  @Test
  void halfLaps_areAreasWithDepthAndSide_inEveryMachineFile() throws Exception {
    Map<String, byte[]> files = files(HELIX);

    assertThat(text(files, "sheets/sheet-01-cut.svg"))
        .contains("id=\"pocket-top\"", "data-depth=\"6.05\"")
        .doesNotContain("id=\"pocket-bottom\"");
    assertThat(text(files, "sheets/sheet-01-flip.svg"))
        .contains("id=\"pocket-bottom\"", "data-depth=\"6.05\"", "id=\"flip\"", "id=\"drill\"");
    assertThat(text(files, "sheets/sheet-01-cut-mm.dxf")).contains("POCKET-TOP-6_05MM");
    assertThat(text(files, "sheets/sheet-01-flip-mm.dxf")).contains("POCKET-BOTTOM-6_05MM");
    assertThat(text(files, "machine.txt")).contains("pocket-top", "pocket-bottom", "6.050 mm");
    assertThat(text(files, "test-cut.svg")).contains("id=\"pocket-top\"");
    assertThat(text(files, "test-flip.svg")).contains("id=\"pocket-bottom\"");
  }

  /** Two jobs on one run of sheets: each piece keeps its laps, its marks and its own number. */
  @Test
  void severalJobs_haveTheirLapsAndNumbersInTheMachineFiles() throws Exception {
    Batch batch =
        Batch.of(
            List.of(
                JobReader.read(HELIX, "a.yaml"),
                JobReader.read(HELIX.replace("radius: 300", "radius: 340"), "b.yaml")));
    BatchPlan plan = Workshop.plan(batch, PlanListener.NONE, Packers.FORGETFUL);
    Map<String, byte[]> files = Workshop.result(plan, PlanListener.NONE).contents();

    long laps = 0;
    long below = 0;
    for (int i = 1; i <= plan.plan().layouts().size(); i++) {
      String cut = text(files, "sheets/sheet-0" + i + "-cut.svg");
      String flip = text(files, "sheets/sheet-0" + i + "-flip.svg");
      laps += Pattern.compile("id=\"piece-\\d+-pocket-top").matcher(cut).results().count();
      below += Pattern.compile("id=\"piece-\\d+-pocket-bottom").matcher(flip).results().count();
      assertThat(cut).contains("id=\"mark\"", "data-word=\"UP\"");
    }
    long joints =
        batch.members().stream()
            .mapToLong(
                each -> each.job().structure().orElseThrow().plan().roadbed().pieces().size() - 1)
            .sum();
    assertThat(laps).isEqualTo(joints);
    assertThat(below).isEqualTo(joints);
    assertThat(text(files, "test-cut.svg")).contains("id=\"pocket-top\"");
    assertThat(plan.labels().stream().flatMap(List::stream)).contains("A/1", "B/1");
  }

  @ParameterizedTest
  @CsvSource({"finished", "offset"})
  void smallHoles_areDrilledAtTheirSize_notRefused(String outlines) throws Exception {
    Map<String, byte[]> files = files(PLATES + "machine: {outlines: " + outlines + "}\n");
    String stem = outlines.equals("offset") ? "sheets/sheet-01-cut-offset" : "sheets/sheet-01-cut";

    assertThat(text(files, stem + ".svg")).contains("id=\"drill\"", "data-diameter=\"4.5\"");
    assertThat(text(files, stem + "-mm.dxf")).contains("DRILL-4_50MM");
    assertThat(text(files, "machine.txt")).contains("4.500 mm");
  }

  /**
   * Source of the codes: the format's published reference, header variables: $INSUNITS 1 inches, 4
   * millimetres; $MEASUREMENT 0 English, 1 metric; both in group 70. From memory.
   */
  @ParameterizedTest
  @CsvSource({"mm, 4, 1", "in, 1, 0"})
  void dxf_knowsItsUnit(String unit, String units, String measurement) throws Exception {
    String dxf =
        text(
            files(HELIX + "machine: {dxf: {unit: " + unit + "}}\n"),
            "sheets/sheet-01-cut-" + unit + ".dxf");

    assertThat(dxf).contains("$INSUNITS\r\n 70\r\n" + units + "\r\n");
    assertThat(dxf).contains("$MEASUREMENT\r\n 70\r\n" + measurement + "\r\n");
    assertThat(dxf).contains("  0\r\nSTYLE\r\n  2\r\nSTANDARD\r\n");
    assertThat(dxf).contains("  0\r\nLAYER\r\n  2\r\n0\r\n");
  }

  @Test
  void dxf_hasTheJobsColours() throws Exception {
    String dxf =
        text(
            files(HELIX + "machine: {colours: {cut: \"#ff0000\", mark: \"#0000fe\"}}\n"),
            "sheets/sheet-01-cut-mm.dxf");

    assertThat(dxf).contains("  2\r\nCUT\r\n 70\r\n0\r\n 62\r\n1\r\n");
    assertThat(dxf).contains("  2\r\nMARK\r\n 70\r\n0\r\n 62\r\n5\r\n");
    assertThat(dxf).contains("999\r\ncurvestock colour CUT: #ff0000\r\n", "MARK: #0000fe");
  }

  @Test
  void svg_hasLayersTitleAndMetadata() throws Exception {
    String svg = text(files(HELIX), "sheets/sheet-01-cut.svg");

    assertThat(svg)
        .contains("xmlns:inkscape=\"http://www.inkscape.org/namespaces/inkscape\"")
        .contains("inkscape:groupmode=\"layer\"", "inkscape:label=\"cut\"")
        .containsPattern("<title>Test climb, sheet 1 of 1[^<]*</title>")
        .contains("<metadata>", "id=\"remnant\"");
    assertThat(svg.replaceAll("(?s).*<metadata>(.*)</metadata>.*", "$1"))
        .contains("1525", "12.1", "lower left", "kerf 6", "finished size");
  }

  @ParameterizedTest
  @CsvSource({"machine.txt", "summary.txt"})
  void timeAndMoney_areTold_ifThereIsAFeed(String file) throws Exception {
    Map<String, byte[]> files =
        files(HELIX + "rates: {feed-per-minute: 1 m, machine-per-hour: 60}\n");

    assertThat(text(files, file)).contains("Cutting time", "at the machine");
    assertThat(text(files(HELIX), file)).doesNotContain("Cutting time");
  }

  /** One way to name a piece, whatever the file: the number on the wood first. */
  @Test
  void findings_ofBothKinds_nameThePieceByItsNumber() throws Exception {
    Job job = JobReader.read(HELIX, "job.yaml");
    Plan plan = Workshop.plan(job, PlanListener.NONE);
    Map<String, byte[]> files = Workshop.result(plan, PlanListener.NONE).contents();
    List<String> numbers = plan.labels().get(0);
    Expectation wider =
        Expectation.of(
                new Layout(
                    plan.layouts().get(0).sheet(),
                    new Cutting(
                        job.cutting().kerf(), Length.ofMillimetres(30), job.cutting().margin()),
                    plan.layouts().get(0).placements()))
            .numbered(numbers);
    List<List<String>> named = new ArrayList<>();
    for (String file : List.of("sheets/sheet-01-cut.svg", "sheets/sheet-01-cut-mm.dxf")) {
      named.add(
          LayoutCheck.check(text(files, file), wider).findings().stream()
              .filter(finding -> finding.kind() == Finding.Kind.GAP)
              .map(finding -> finding.message().replaceAll("[0-9.]+ mm", "x"))
              .sorted()
              .toList());
    }

    assertThat(named.get(0)).isNotEmpty().allMatch(words -> words.contains(" (piece-"));
    assertThat(named.get(1)).hasSameSizeAs(named.get(0));
    String first = named.get(1).get(0);
    int piece = Integer.parseInt(first.replaceAll("(?s)^.*?piece-([0-9]+).*$", "$1"));
    assertThat(first).contains(numbers.get(piece - 1) + " (piece-" + piece + ", ");
  }

  @Test
  void testCut_fitsTheBed() throws Exception {
    Job job = JobReader.read(HELIX + "machine: {bed: 500x300}\n", "job.yaml");
    String svg = text(files(job), "test-cut.svg");
    Matcher box = Pattern.compile("viewBox=\"\\S+ \\S+ (\\S+) (\\S+)\"").matcher(svg);

    assertThat(box.find()).isTrue();
    assertThat(Double.parseDouble(box.group(1))).isLessThanOrEqualTo(500);
    assertThat(Double.parseDouble(box.group(2))).isLessThanOrEqualTo(300);
  }

  @Test
  void pieceLargerThanTheBed_isToldAtOnce_inThoseWords() {
    Job job = JobReader.read(HELIX + "machine: {bed: 300x200}\n", "job.yaml");
    List<String> steps = new ArrayList<>();

    PlanListener listener =
        new PlanListener() {
          @Override
          public void step(String what) {
            steps.add(what);
          }
        };

    assertThatThrownBy(() -> Workshop.plan(job, listener))
        .isInstanceOf(Infeasible.class)
        .hasMessageContaining("too large for the machine's bed of 300 x 200 mm");
    assertThat(steps).isEmpty();
  }
}
