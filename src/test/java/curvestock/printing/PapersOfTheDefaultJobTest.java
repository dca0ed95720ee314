package curvestock.printing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.answer.Answer;
import curvestock.answer.BenchWords;
import curvestock.answer.Cautions;
import curvestock.answer.DemoPlans;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Words;
import curvestock.drawing.PaperSize;
import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.geometry.Segment;
import curvestock.helix.HelixOrder;
import curvestock.job.Job;
import curvestock.plan.Plan;
import curvestock.report.ShopPaper;
import curvestock.report.TextPaper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** What a builder found in the papers of the built-in job that was not so, or was not said. */
class PapersOfTheDefaultJobTest {

  private static final Path DEFAULT = Path.of("demo-data", "default.yaml");
  private static final Job JOB = DemoPlans.job(DEFAULT);

  private static HelixOrder order() {
    return JOB.structure().orElseThrow();
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = new PDFTextStripper().getText(document);
      return text.replace('\u00A0', ' ').replaceAll("\\s+", " ");
    }
  }

  /** Names near a seam used to stand half on the page beside the one that shows them whole. */
  @Test
  void words_ofFootprintAndPatterns_areCutByNoPage() {
    List<Paper> drawings = new ArrayList<>(List.of(Footprint.drawing(JOB, order())));
    PaperTemplates.templates(JOB).forEach(template -> drawings.add(template.drawing()));
    for (Paper drawing : drawings) {
      TileGrid grid = new TiledDrawing("t", List.of(), drawing, PaperSize.LETTER).grid();
      for (Paper.Thing thing : Lettering.clear(drawing, grid).things()) {
        if (thing instanceof Words words) {
          Box box = Lettering.box(words, words.at());
          for (TileGrid.Tile tile : grid.tiles()) {
            Box page = grid.window(tile);
            boolean whole =
                page.minX() <= box.minX()
                    && page.maxX() >= box.maxX()
                    && page.minY() <= box.minY()
                    && page.maxY() >= box.maxY();
            assertThat(whole || !meets(page, box))
                .as("%s on page %s", words.text(), tile.name())
                .isTrue();
          }
        }
      }
    }
  }

  private static boolean meets(Box a, Box b) {
    return a.minX() < b.maxX() && b.minX() < a.maxX() && a.minY() < b.maxY() && b.minY() < a.maxY();
  }

  /** By hand: the outer edge is at 28 1/4 in, and a strip of 1/4 in stands outside it. */
  @Test
  void footprint_tellsWhyTheReportsWidthIsMore() throws IOException {
    assertThat(text(Footprint.pdf(JOB, order(), PaperSize.LETTER, SpareFonts.NONE)))
        .contains(
            "Floor space 57 in across, as the report has it, leaves room all round for the edge"
                + " strips, 1/4 in wide. The roadbed alone is 56 1/2 in.")
        .contains("1 to 3: 56 1/2 in")
        .contains("edge strip");
  }

  @Test
  void supportTable_withManyBlocks_cautionsBeforeTheSaw() throws IOException {
    String text = text(SupportSheet.pdf(answer(), PaperSize.LETTER, SpareFonts.NONE));

    assertThat(text).contains(Cautions.SHORT_BLOCKS + " Block Count Height");
  }

  @Test
  void number_isWrittenAtOneTime_onAllPapers() throws IOException {
    Plan plan = DemoPlans.plan(DEFAULT);
    String report =
        String.join(" ", TextPaper.of(answer().heading(), ShopPaper.of(JOB, answer())))
            .replaceAll("\\s+", " ");

    assertThat(report).contains(BenchWords.NUMBER);
    assertThat(text(MarkingSheets.pdf(plan, SpareFonts.NONE))).contains(BenchWords.NUMBER);
    for (PaperTemplate template : PaperTemplates.templates(JOB)) {
      assertThat(String.join(" ", template.notes())).contains(BenchWords.NUMBER);
    }
  }

  /** One piece is no template for others. */
  @Test
  void pattern_ofASinglePiece_doesNotSpeakOfOthers() throws IOException {
    for (PaperTemplate template : PaperTemplates.templates(JOB)) {
      String text = text(PaperTemplates.pdf(template, JOB, PaperSize.LETTER, SpareFonts.NONE));
      assertThat(text.contains("before the others")).isEqualTo(template.count() > 1);
    }
  }

  /** By hand: R1 is 32 in of straight, then an arc, so B and E are 32 in from the end A to F. */
  @Test
  void pattern_ofAPieceWithALead_ticksWhereTheArcBegins() {
    for (PaperTemplate template : PaperTemplates.templates(JOB)) {
      List<Edge> cut =
          template.drawing().things().stream()
              .filter(Paper.Shape.class::isInstance)
              .map(Paper.Shape.class::cast)
              .filter(Paper.Shape::closed)
              .map(Paper.Shape::edges)
              .max(Comparator.comparingDouble(edges -> new Loop(edges).perimeter()))
              .orElseThrow();
      List<Edge> ticks =
          template.drawing().things().stream()
              .filter(Paper.Shape.class::isInstance)
              .map(thing -> ((Paper.Shape) thing).edges())
              .filter(edges -> edges.size() == 1 && Math.abs(edges.get(0).length() - 6) < 1e-9)
              .map(edges -> edges.get(0))
              .toList();
      boolean lead = template.title().contains("straight");
      assertThat(ticks).hasSize(lead ? 2 : 0);
      assertThat(String.join(" ", template.notes()).contains(SmoothTicks.NOTE)).isEqualTo(lead);
      for (Edge tick : ticks) {
        assertThat(cut)
            .anySatisfy(
                edge -> {
                  assertThat(edge).isInstanceOf(Segment.class);
                  assertThat(edge.length()).isCloseTo(32 * 25.4, within(1e-6));
                  double near =
                      Math.min(
                          edge.start().distance(tick.middle()), edge.end().distance(tick.middle()));
                  assertThat(near).isLessThan(1e-6);
                });
      }
    }
  }

  /** The built-in job has two pieces with a lead, each with two such points. */
  @Test
  void markingOut_ticksWhereTheArcBegins_andSaysSo() throws IOException {
    Plan plan = DemoPlans.plan(DEFAULT);
    byte[] pdf = MarkingSheets.pdf(plan, SpareFonts.NONE);
    long sheets =
        plan.layouts().stream()
            .filter(
                layout ->
                    layout.placements().stream()
                        .anyMatch(each -> each.piece().name().contains("straight")))
            .count();
    int ticks = 0;
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (PDPage page : document.getPages()) {
        for (PdfLines.Line line : PdfLines.of(page)) {
          ticks += Math.abs(line.length() - 2) < 0.01 ? 1 : 0;
        }
      }
    }
    assertThat(ticks).isEqualTo(4);
    assertThat(text(pdf).split(Pattern.quote(SmoothTicks.NOTE), -1)).hasSize((int) sheets + 1);
  }

  private static Answer answer() {
    return Answer.of(DemoPlans.plan(DEFAULT));
  }
}
