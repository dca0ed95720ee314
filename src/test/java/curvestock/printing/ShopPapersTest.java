package curvestock.printing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.answer.Answer;
import curvestock.app.Workshop;
import curvestock.drawing.PaperSize;
import curvestock.geometry.Box;
import curvestock.geometry.Point;
import curvestock.helix.HelixOrder;
import curvestock.helix.build.PieceKind;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.layout.Placement;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.printing.PdfLines.Line;
import curvestock.report.ReportHtml;
import curvestock.report.ReportPart;
import curvestock.report.ShopPaper;
import curvestock.report.TextPaper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The papers for the workshop, read back. */
class ShopPapersTest {

  /** Invented; two tracks on rods, metric. */
  private static final String METRIC =
      """
      curvestock: 1
      title: Loft helix <invented> & test
      invented: true
      units: mm
      currency: EUR
      sheets:
        - {name: ply, size: 1250 x 2500, thickness: 9.2, price: 40}
      cutting: {kerf: 4, margin: 10}
      helix:
        scale: H0
        turns: 1 1/2
        radius: 530.5
        track-spacing: 61
        width: 141
        climb: 150
        segments-per-turn: 4
        joint: {half-lap: 40}
        heights: {underlay: 5, ties: 2, rail: 2.5}
        supports:
          per-turn: 8
          foot-height: 40
          rods: {thread: M8, inset: 12, washer: 24, end-allowance: 40, stock: {name: rod, length: 1000, price: 3}}
      search: {effort: quick}
      """;

  private static Plan plan;
  private static Job job;

  @BeforeAll
  static void plan() throws Exception {
    job = JobReader.read(METRIC, "metric.yaml");
    plan =
        Workshop.plan(
            job,
            new PlanListener() {
              @Override
              public boolean stopped() {
                return true;
              }
            });
  }

  private static HelixOrder order() {
    return job.structure().orElseThrow();
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replace('\u00A0', ' ');
    }
  }

  @Test
  void markingOut_ofEverySheet_printsPivotAndCornersAsTheyLie() throws IOException {
    String text = text(MarkingSheets.pdf(plan, SpareFonts.NONE));

    for (int sheet = 0; sheet < plan.layouts().size(); sheet++) {
      List<Placement> placements = plan.layouts().get(sheet).placements();
      for (int i = 0; i < placements.size(); i++) {
        String label = plan.labels().get(sheet).get(i);
        Point first = placements.get(i).outline().outer().edges().get(0).start();
        assertThat(text.lines())
            .anySatisfy(
                line ->
                    assertThat(line).startsWith(label + " " + mm(first.x()) + " " + mm(first.y())));
      }
    }
    assertThat(text).contains("order of cutting", "keep it as the template", "chord");
  }

  /** A rod's hole cannot be drilled from its place alone: a bit has to be chosen. */
  @Test
  void markingOut_ofDrilledPieces_tellsWhatToDrill() throws IOException {
    String text = text(MarkingSheets.pdf(plan, SpareFonts.NONE));

    for (PieceKind kind : order().plan().roadbed().kinds()) {
      String diameter = job.style().formatGiven(kind.holes().get(0).diameter());
      assertThat(text)
          .containsPattern(
              "(?s)%s, %s.*?\\RHole diameter: %s\\.\\R(The holes are the same|Piece hole 1 x)"
                  .formatted(kind.id(), Pattern.quote(kind.name()), Pattern.quote(diameter)));
    }
  }

  /** To the half millimetre, without needless zeros. */
  private static String mm(double value) {
    return java.math.BigDecimal.valueOf(Math.rint(value * 2) / 2)
        .stripTrailingZeros()
        .toPlainString();
  }

  @Test
  void trammel_ofTwoTracks_hasAllTheirRadii() throws IOException {
    String text = text(TrammelSheet.pdf(job, SpareFonts.NONE).orElseThrow());

    // 500 and 561 mm; 141 mm wide, so 40 mm beyond each track; half a bit of 4 mm.
    assertThat(text)
        .contains("500 mm", "561 mm", "460 mm", "601 mm", "458 mm", "603 mm", "inner track");
  }

  @Test
  void supportTable_ofEveryStation_hasABoxForEachTurn() throws IOException {
    byte[] pdf = SupportSheet.pdf(Answer.of(plan), job.paper(), SpareFonts.NONE);
    String text = text(pdf);
    int boxes = 0;
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        boxes +=
            (int)
                PdfLines.of(document.getPage(i)).stream()
                    .filter(line -> Math.abs(line.width() - 0.25) < 0.01)
                    .count();
      }
    }

    assertThat(boxes).isEqualTo(order().plan().supports().rows().size());
    order().plan().stations().all().forEach(s -> assertThat(text).contains(s.name() + " "));
  }

  @Test
  void labels_ofThePlan_areOneForEachPiece() throws IOException {
    String text = text(LabelSheet.pdf(plan, SpareFonts.NONE)).replaceAll("\\s+", " ");

    assertThat(text.split("track side up", -1)).hasSize(plan.pieces() + 1);
    assertThat(text).contains("turn 1", "inner edge", "from entry up to J1");
    assertThat(text).contains("half-lap: top at J1", "half-lap: underside at J1, top at J2");
  }

  /** The footprint's edges, read from one page of a roll or several, are circles of 460 and 601. */
  @Test
  void footprint_onAnyPaper_hasTheRoadbedsEdgesAtFullSize() throws IOException {
    TileGrid grid =
        new TiledDrawing("t", List.of(), Footprint.drawing(job, order()), PaperSize.A3).grid();
    int onEdges = 0;
    try (PDDocument document =
        Loader.loadPDF(Footprint.pdf(job, order(), PaperSize.A3, SpareFonts.NONE))) {
      for (int i = 0; i < grid.tiles().size(); i++) {
        Point origin = grid.origin(grid.tiles().get(i));
        for (Line line : PdfLines.of(document.getPage(i + 1))) {
          boolean arc = line.points().size() > 100 && Math.abs(line.width() - 0.35) < 0.01;
          for (Point point : arc ? line.shown() : List.<Point>of()) {
            double radius = point.minus(origin).norm();
            assertThat(Math.min(Math.abs(radius - 460), Math.abs(radius - 601))).isLessThan(0.05);
            onEdges++;
          }
        }
      }
    }
    assertThat(onEdges).isGreaterThan(1000);
  }

  @Test
  void pattern_ofADrilledPiece_showsItsHolesWhereTheyAre() throws IOException {
    PieceKind kind =
        order().plan().roadbed().kinds().stream()
            .filter(k -> k.holes().size() > 1)
            .findFirst()
            .orElseThrow();
    PaperTemplate template = BedTemplate.of(order().plan(), kind, job.style());
    List<Box> circles = new ArrayList<>();
    try (PDDocument document =
        Loader.loadPDF(PaperTemplates.pdf(template, job, PaperSize.ROLL, SpareFonts.NONE))) {
      double radius = kind.holes().get(0).diameter().millimetres() / 2;
      for (Line line : PdfLines.of(document.getPage(1))) {
        Box box = box(line.points());
        if (Math.abs(box.width() - 2 * radius) < 0.05
            && Math.abs(box.height() - 2 * radius) < 0.05) {
          circles.add(box);
        }
      }
    }
    assertThat(circles).hasSameSizeAs(kind.holes());
    // Distances between holes are the same in the piece's frame and on paper.
    Point a = kind.holes().get(0).centre();
    Point b = kind.holes().get(1).centre();
    assertThat(middle(circles.get(0)).distance(middle(circles.get(1))))
        .isCloseTo(a.distance(b), within(0.05));
  }

  private static Box box(List<Point> points) {
    Box box = Box.of(points.get(0), points.get(0));
    for (Point point : points) {
      box = box.union(Box.of(point, point));
    }
    return box;
  }

  private static Point middle(Box box) {
    return new Point((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
  }

  @Test
  void report_asHtml_isWellFormedSelfContainedAndNamed() throws Exception {
    List<ReportPart> parts = ShopPaper.of(job, Answer.of(plan));
    String html =
        ReportHtml.of(
            Answer.of(plan).heading(),
            parts,
            Map.of("helix-plan", "data:image/svg+xml;base64,PHN2Zy8+"));
    Document document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(
                new ByteArrayInputStream(
                    html.replace("<!DOCTYPE html>", "").getBytes(StandardCharsets.UTF_8)));

    assertThat(html).doesNotContain("http://", "https://", "<script", "url(", "@import");
    assertThat(document.getDocumentElement().getAttribute("lang")).isEqualTo("en");
    NodeList images = document.getElementsByTagName("img");
    assertThat(images.getLength()).isEqualTo(1);
    for (int i = 0; i < images.getLength(); i++) {
      assertThat(((Element) images.item(i)).getAttribute("alt")).hasSizeGreaterThan(20);
      assertThat(((Element) images.item(i)).getAttribute("src")).startsWith("data:");
    }
    NodeList heads = document.getElementsByTagName("th");
    for (int i = 0; i < heads.getLength(); i++) {
      assertThat(((Element) heads.item(i)).getAttribute("scope")).isEqualTo("col");
    }
    assertThat(document.getElementsByTagName("h1").item(0).getTextContent())
        .isEqualTo(plan.job().title());
    assertThat(document.getElementsByTagName("h2").getLength())
        .isEqualTo((int) parts.stream().filter(ReportPart.Chapter.class::isInstance).count());
  }

  @Test
  void report_ofAMetricJob_speaksNoInches() {
    ShopPaper.of(job, Answer.of(plan)).stream()
        .filter(ReportPart.Figures.class::isInstance)
        .map(part -> ((ReportPart.Figures) part).table())
        // Sources may quote the unit of their table.
        .filter(table -> !Set.of("assumed", "verdicts").contains(table.key()))
        .flatMap(table -> TextPaper.of(table, Answer.of(plan).figures()).stream())
        .forEach(line -> assertThat(line).doesNotContainPattern("\\d (in|lb|ft)\\b"));
  }

  @Test
  void report_asPdf_saysWhatTheHtmlSays() throws IOException {
    List<ReportPart> parts = ShopPaper.of(job, Answer.of(plan));
    String text =
        text(ReportPdf.of(Answer.of(plan).heading(), parts, Map.of(), job.paper(), SpareFonts.NONE))
            .replaceAll("\\s+", " ");

    for (ReportPart part : parts) {
      if (part instanceof ReportPart.Chapter chapter) {
        assertThat(text).contains(chapter.text());
      } else if (part instanceof ReportPart.Paragraph paragraph) {
        assertThat(text).contains(paragraph.text().replaceAll("\\s+", " "));
      }
    }
  }
}
