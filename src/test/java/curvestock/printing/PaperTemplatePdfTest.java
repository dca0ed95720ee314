package curvestock.printing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.drawing.PaperSize;
import curvestock.geometry.Point;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.printing.PdfLines.Line;
import curvestock.printing.TileGrid.Tile;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Paper templates as a person with a ruler finds them: read back from the PDF and measured. */
class PaperTemplatePdfTest {

  /** What a ruler does not show. */
  private static final double RULER = 0.05;

  /** The check values of the issue: 30 in to the centre line, 5 in wide, quarters. */
  private static final Job JOB =
      JobReader.read(
          """
          curvestock: 1
          title: Measured template (invented)
          units: in
          sheets: [{name: ply, size: 96 x 48, thickness: 1/2, price: 50}]
          cutting: {kerf: 1/8, margin: 1/4}
          helix: {turns: 2, radius: 30, width: 5, segments-per-turn: 4}
          """,
          "measured.yaml");

  private static final double INCH = 25.4;
  private static final double OUTER = 32.5 * INCH;
  private static final double INNER = 27.5 * INCH;

  private static PaperTemplate template() {
    return PaperTemplates.templates(JOB).get(0);
  }

  /** Shown points of the cut line on all pages, brought together by the pages' own crosses. */
  private static List<Point> assembled(PDDocument document, TileGrid grid) {
    List<Point> all = new ArrayList<>();
    for (int i = 0; i < grid.tiles().size(); i++) {
      Tile tile = grid.tiles().get(i);
      PDPage page = document.getPage(i + 1);
      Point cross = crosses(PdfLines.of(page)).get(0);
      // Which corner of the grid the cross stands for follows from its place on the page.
      boolean right = cross.x() > grid.pageWidth() / 2;
      boolean low = cross.y() < grid.pageHeight() / 2;
      double x = (tile.column() + (right ? 1 : 0)) * grid.cellWidth();
      double y = -(tile.row() + (low ? 1 : 0)) * grid.cellHeight();
      Point shift = new Point(x, y).minus(cross);
      for (Line line : PdfLines.of(page)) {
        if (isCut(line)) {
          line.shown().forEach(point -> all.add(point.plus(shift)));
        }
      }
    }
    return all;
  }

  private static boolean isCut(Line line) {
    return Math.abs(line.width() - 0.35) < 0.01 && !line.dashed();
  }

  /** Middles of the registration crosses: two fine lines of 13 mm that halve each other. */
  private static List<Point> crosses(List<Line> lines) {
    List<Line> arms =
        lines.stream()
            .filter(l -> Math.abs(l.length() - 13) < RULER && Math.abs(l.width() - 0.15) < 0.01)
            .toList();
    List<Point> middles = new ArrayList<>();
    for (Line a : arms) {
      for (Line b : arms) {
        boolean square = isLevel(a) && !isLevel(b);
        if (square && middle(a).distance(middle(b)) < RULER) {
          middles.add(middle(a));
        }
      }
    }
    return middles;
  }

  private static boolean isLevel(Line line) {
    return Math.abs(line.points().get(0).y() - line.points().get(line.points().size() - 1).y())
        < RULER;
  }

  private static Point middle(Line line) {
    return line.points().get(0).plus(line.points().get(line.points().size() - 1)).times(0.5);
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void pattern_assembledFromItsPages_measuresTrue(PaperSize size) throws IOException {
    TileGrid grid = new TiledDrawing("t", List.of(), template().drawing(), size).grid();
    List<Point> points;
    try (PDDocument document =
        Loader.loadPDF(PaperTemplates.pdf(template(), JOB, size, SpareFonts.NONE))) {
      assertThat(document.getNumberOfPages()).isEqualTo(1 + grid.tiles().size());
      points = grid.tiles().size() > 1 ? assembled(document, grid) : onOnePage(document);
    }

    // A quarter turn with its bulge up: the top of the outer arc is at the middle.
    double minX = points.stream().mapToDouble(Point::x).min().orElseThrow();
    double maxX = points.stream().mapToDouble(Point::x).max().orElseThrow();
    double maxY = points.stream().mapToDouble(Point::y).max().orElseThrow();
    // Hand value: the chord of the outer edge is 2 R sin 45°.
    assertThat(maxX - minX).isCloseTo(2 * OUTER * Math.sin(Math.PI / 4), within(RULER));
    Point centre = new Point((minX + maxX) / 2, maxY - OUTER);
    boolean[] degrees = new boolean[91];
    for (Point point : points) {
      Point from = point.minus(centre);
      double angle = Math.toDegrees(from.angle()) - 45;
      boolean onFace = Math.abs(angle) < 0.02 || Math.abs(angle - 90) < 0.02;
      double off = Math.min(Math.abs(from.norm() - OUTER), Math.abs(from.norm() - INNER));
      assertThat(onFace || off < RULER).as("point %s at %s°", point, angle).isTrue();
      if (Math.abs(from.norm() - OUTER) < RULER) {
        degrees[(int) Math.max(0, Math.min(90, Math.round(angle)))] = true;
      }
    }
    // No gap between pages: every degree of the outer arc is shown somewhere.
    assertThat(degrees).doesNotContain(false);
  }

  private static List<Point> onOnePage(PDDocument document) {
    return PdfLines.of(document.getPage(1)).stream()
        .filter(PaperTemplatePdfTest::isCut)
        .flatMap(line -> line.shown().stream())
        .toList();
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void page_ofAnyPaper_hasBarsOf100MillimetresAnd4Inches_bothWays(PaperSize size)
      throws IOException {
    try (PDDocument document =
        Loader.loadPDF(PaperTemplates.pdf(template(), JOB, size, SpareFonts.NONE))) {
      for (int i = 1; i < document.getNumberOfPages(); i++) {
        List<Line> bars =
            PdfLines.of(document.getPage(i)).stream()
                .filter(line -> Math.abs(line.width() - 0.3) < 0.01)
                .filter(line -> line.length() > 50)
                .toList();
        for (double length : new double[] {100, 4 * INCH}) {
          assertThat(bars)
              .anySatisfy(
                  bar -> {
                    assertThat(isLevel(bar)).isTrue();
                    assertThat(bar.length()).isCloseTo(length, within(RULER));
                  })
              .anySatisfy(
                  bar -> {
                    assertThat(isLevel(bar)).isFalse();
                    assertThat(bar.length()).isCloseTo(length, within(RULER));
                  });
        }
      }
    }
  }

  @Test
  void pages_ofAPattern_areOfThePaperAndNamedAsOnTheMap() throws IOException {
    try (PDDocument document =
        Loader.loadPDF(PaperTemplates.pdf(template(), JOB, PaperSize.A4, SpareFonts.NONE))) {
      String map = text(document, 1).replaceAll("\\s+", " ");
      // 2 x 32.5 in x sin 45° = 45.962 in, 2 x 27.5 in x sin 45° = 38.891 in.
      assertThat(map).contains("Print at 100 %", "A to B 45 31/32 in", "C to D 38 57/64 in");
      for (int i = 1; i < document.getNumberOfPages(); i++) {
        // ISO 216: A4 is 210 mm by 297 mm.
        double[] sides = {
          document.getPage(i).getMediaBox().getWidth() / 72 * INCH,
          document.getPage(i).getMediaBox().getHeight() / 72 * INCH
        };
        java.util.Arrays.sort(sides);
        assertThat(sides[0]).isCloseTo(210, within(RULER));
        assertThat(sides[1]).isCloseTo(297, within(RULER));
        String name =
            text(document, i + 1)
                .lines()
                .filter(line -> line.startsWith("Page "))
                .findFirst()
                .orElseThrow();
        assertThat(map).contains(name.substring(5).split(" ", -1)[0]);
      }
    }
  }

  @Test
  void pattern_madeTwice_isTheSameToTheLastByte() {
    assertThat(PaperTemplates.pdf(template(), JOB, PaperSize.A4, SpareFonts.NONE))
        .isEqualTo(PaperTemplates.pdf(template(), JOB, PaperSize.A4, SpareFonts.NONE));
  }

  private static String text(PDDocument document, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    return stripper.getText(document).replace('\u00A0', ' ');
  }
}
