package curvestock.printing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.answer.Answer;
import curvestock.answer.BenchWords;
import curvestock.answer.Building;
import curvestock.answer.DemoPlans;
import curvestock.answer.Figures;
import curvestock.answer.PivotWords;
import curvestock.helix.build.BlockPlan;
import curvestock.helix.build.BoardCutting;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Riser;
import curvestock.plan.Plan;
import curvestock.report.ReportHtml;
import curvestock.report.ShopPaper;
import curvestock.units.Length;
import curvestock.units.LengthUnit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a builder asks of the printed packet, of every demo job: the papers answer, and agree. */
class PacketSubstanceTest {

  private static final Pattern SAWN =
      Pattern.compile(
          "(?:(\\d+) [x×] )?(?:brace for )?(block-\\d+)(?:, along the track)? \\(([^)]+)\\)");

  static List<Path> jobs() {
    return DemoPlans.files();
  }

  static List<Path> helices() {
    return DemoPlans.files().stream()
        .filter(file -> DemoPlans.job(file).structure().isPresent())
        .toList();
  }

  static List<Path> onBoards() {
    return helices().stream()
        .filter(
            file ->
                DemoPlans.job(file).structure().orElseThrow().plan().spec().supports().riser()
                        instanceof Riser.WoodBlocks wood
                    && wood.stock().isPresent())
        .toList();
  }

  private static String text(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replace('\u00A0', ' ').replaceAll("\\s+", " ");
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static String report(Plan plan) {
    Answer answer = Answer.of(plan);
    return ReportHtml.of(answer.heading(), ShopPaper.of(plan.job(), answer), Map.of())
        .replaceAll("<[^>]*>", " ")
        .replace("&quot;", "\"")
        .replaceAll("[\\s\\u00a0]+", " ");
  }

  private static String supports(Plan plan) {
    return text(SupportSheet.pdf(Answer.of(plan), plan.job().paper(), SpareFonts.NONE));
  }

  private static double millimetres(String length) throws Exception {
    return Length.parse(length.strip(), LengthUnit.INCH).millimetres();
  }

  /** By the printed numbers alone: lengths, kerfs, squaring and what is left are no more. */
  @ParameterizedTest
  @MethodSource("onBoards")
  void boards_addedUpAsPrinted_areNoLongerThanTheyAre(Path file) throws Exception {
    Plan plan = DemoPlans.plan(file);
    Building helix = Answer.of(plan).building().orElseThrow();
    Figures figures = Figures.of(plan.job());
    BoardCutting cutting = helix.plan().shopping().riserCutting().orElseThrow();
    Riser.WoodBlocks wood = (Riser.WoodBlocks) helix.plan().spec().supports().riser();
    double kerf = wood.kerf().millimetres();
    Map<String, String> once = new java.util.HashMap<>();
    BlockPlan blocks = helix.plan().supports().blocks().orElseThrow();
    blocks.blocks().forEach(block -> once.put(block.id(), figures.sawn(block.longSide())));

    List<String> boards =
        new BenchWords(helix, figures)
            .boards().stream().filter(line -> line.startsWith("No. ")).toList();
    assertThat(boards).hasSameSizeAs(cutting.boards());
    for (String line : boards) {
      double sum = 0;
      Matcher sawn = SAWN.matcher(line);
      while (sawn.find()) {
        int count = sawn.group(1) == null ? 1 : Integer.parseInt(sawn.group(1));
        sum += count * (millimetres(sawn.group(3)) + kerf);
        if (!line.substring(0, sawn.start(2)).endsWith("brace for ")) {
          assertThat(sawn.group(3)).isEqualTo(once.get(sawn.group(2)));
        }
      }
      Matcher left = Pattern.compile("; (.*) left$").matcher(line);
      assertThat(left.find()).isTrue();
      sum += left.group(1).equals("nothing") ? -kerf : millimetres(left.group(1));
      sum += cutting.squaring().millimetres();
      assertThat(sum).as(line).isLessThanOrEqualTo(cutting.stock().length().millimetres() + 0.01);
    }
  }

  /** What helix.txt says of rounding and bracing stands on the papers that go to the saw. */
  @ParameterizedTest
  @MethodSource("helices")
  void warningsOfBlocks_standOnEveryPaperThatTheyAreCutBy(Path file) {
    Plan plan = DemoPlans.plan(file);
    Building helix = Answer.of(plan).building().orElseThrow();
    String report = report(plan);
    String supports = supports(plan);

    for (String remark : new BenchWords(helix, Figures.of(plan.job())).blockRemarks()) {
      String end = remark.substring(1);
      assertThat(report).contains(end);
      assertThat(supports).contains(end);
    }
  }

  @ParameterizedTest
  @MethodSource("helices")
  void supportTable_asOneBuilds_goesUpTurnByTurnAndMeasuresWood(Path file) {
    Plan plan = DemoPlans.plan(file);
    String text = supports(plan);
    int last =
        plan.job().structure().orElseThrow().plan().supports().rows().stream()
            .filter(row -> row.part() == curvestock.helix.build.SupportRow.Part.RING)
            .mapToInt(row -> row.turn())
            .max()
            .orElseThrow();

    List<Integer> places = new ArrayList<>();
    for (int turn = 1; turn <= last; turn++) {
      places.add(text.indexOf("Turn " + turn + " Support"));
    }
    assertThat(places).doesNotContain(-1).isSorted();
    assertThat(text).contains("Top of plywood").doesNotContainIgnoringCase("rail");
  }

  @ParameterizedTest
  @MethodSource("helices")
  void fastening_ofBlocksAndJoints_isOnPaper(Path file) {
    Plan plan = DemoPlans.plan(file);
    Answer answer = Answer.of(plan);
    String report = report(plan);

    for (String paper : List.of(report, supports(plan))) {
      assertThat(paper).contains("Drilling and fastening", "glue");
      boolean plates =
          answer.building().orElseThrow().plan().spec().construction()
                  instanceof Construction.ButtWithPlate
              || answer.building().orElseThrow().plan().spec().construction()
                  instanceof Construction.PlatesBeside;
      assertThat(paper.contains("glue each plate") || paper.contains("glue the side plates"))
          .isEqualTo(plates);
    }
    Length high = (Length) answer.building().orElseThrow().figures().at(0, "roomHeight");
    assertThat(report).contains("highest rail is " + answer.figures().roomy(high));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void markingOut_ofLapsAndHoles_saysWhatThereIs(Path file) {
    Plan plan = DemoPlans.plan(file);
    String text = text(MarkingSheets.pdf(plan, SpareFonts.NONE));
    boolean holes =
        plan.layouts().stream()
            .flatMap(layout -> layout.placements().stream())
            .anyMatch(placement -> !placement.outline().holes().isEmpty());
    boolean laps = !curvestock.plan.MarkedPieces.laps(plan, 1).stream().allMatch(List::isEmpty);

    assertThat(text.contains("Drill its holes")).isEqualTo(holes);
    assertThat(text.contains("1: half-laps")).isEqualTo(laps);
    if (laps) {
      String deep =
          Figures.of(plan.job()).given(plan.layouts().get(0).sheet().thickness().times(0.5));
      String told = Pattern.quote(deep) + "\\)?";
      assertThat(text)
          .containsPattern("half of what your own sheet measures: [^.]*" + told)
          .contains("from the top", "from the underside");
      assertThat(report(plan)).containsPattern(told).contains("Cut the half-laps last");
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void pivotOnGoodWood_isHeldInOneWayOnBothPapers(Path file) {
    Plan plan = DemoPlans.plan(file);
    String marking = text(MarkingSheets.pdf(plan, SpareFonts.NONE));

    TrammelSheet.pdf(plan.job(), SpareFonts.NONE)
        .ifPresent(
            pdf -> {
              assertThat(text(pdf)).contains(PivotWords.ON_GOOD_WOOD).doesNotContain("drive the");
              if (marking.contains("pad it")) {
                assertThat(marking).contains(PivotWords.PAD);
              }
            });
  }
}
