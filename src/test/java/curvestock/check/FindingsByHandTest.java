package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.check.Finding.Kind;
import curvestock.drawing.SampleLayouts;
import curvestock.drawing.SheetDrawing;
import curvestock.geometry.Arc;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Distances, areas and places that the check tells, each by hand. Blocks of 100 x 40 on a sheet of
 * 1000 x 500, spacing 3, margin 6 (all invented).
 */
class FindingsByHandTest {

  private static final Piece BLOCK = strip("B");
  private static final Cutting CUTTING =
      new Cutting(Length.ofMillimetres(2), Length.ofMillimetres(3), Length.ofMillimetres(6));

  private static Piece strip(String id) {
    return Piece.of(id, "block", new Strip(Length.ofMillimetres(100), Length.ofMillimetres(40)));
  }

  private static SheetStock sheet() {
    return SheetStock.rectangle(
        "plain",
        Length.ofMillimetres(1000),
        Length.ofMillimetres(500),
        Length.ofMillimetres(12),
        Money.ZERO);
  }

  /** Blocks with their lower left corners at the given places. */
  private static Layout blocks(double... places) {
    List<Placement> placements = new ArrayList<>();
    for (int i = 0; i < places.length; i += 2) {
      placements.add(new Placement(BLOCK, new Pose(places[i] + 50, places[i + 1] + 20, 0)));
    }
    return new Layout(sheet(), CUTTING, placements);
  }

  private static CheckReport check(Layout layout) throws CheckException {
    return LayoutCheck.check(SheetDrawing.clean(layout), Expectation.of(layout));
  }

  private static String only(CheckReport report) {
    assertThat(report.findings()).hasSize(1);
    return report.findings().get(0).message();
  }

  @Test
  void spacing_isCutPlusAllowance() {
    assertThat(CUTTING.spacing().millimetres()).isEqualTo(3);
  }

  @ParameterizedTest
  @CsvSource({"3.0, true", "2.9996, true", "2.999, false", "2, false", "0.01, false"})
  void gap_isAskedToWithinTheRounding(double gap, boolean enough) throws Exception {
    CheckReport report = check(blocks(100, 100, 200 + gap, 110));

    assertThat(report.passed()).isEqualTo(enough);
    assertThat(report.leastGap().orElseThrow().millimetres()).isCloseTo(gap, Offset.offset(1e-4));
    assertThat(report.leastGap().orElseThrow().what()).isEqualTo("piece-1 (B) and piece-2 (B)");
  }

  @Test
  void gap_tooSmall_isToldWithItsPlace() throws Exception {
    CheckReport report = check(blocks(100, 100, 202, 100));

    assertThat(only(report))
        .matches(
            "piece-1 \\(B\\) and piece-2 \\(B\\) are 2\\.0000 mm apart near \\(201\\.0,"
                + " 1\\d\\d\\.\\d\\) mm, at least 3\\.0000 mm is asked");
    assertThat(report.findings().get(0).kind()).isEqualTo(Kind.GAP);
    assertThat(report.findings().get(0).paths()).containsExactly("piece-1", "piece-2");
  }

  @ParameterizedTest
  @CsvSource({"52.9, true", "53.1, false", "300, false"})
  void gap_fartherThanOfInterest_isNotMeasured(double gap, boolean measured) throws Exception {
    CheckReport report = check(blocks(100, 100, 200 + gap, 100));

    assertThat(report.passed()).isTrue();
    assertThat(report.leastGap().isPresent()).isEqualTo(measured);
  }

  @Test
  void gap_leastOfSeveral_isTheLeast() throws Exception {
    CheckReport report = check(blocks(100, 100, 220, 100, 325, 100, 440, 100));

    assertThat(report.leastGap().orElseThrow().millimetres()).isCloseTo(5, Offset.offset(1e-6));
    assertThat(report.leastGap().orElseThrow().what()).isEqualTo("piece-2 (B) and piece-3 (B)");
  }

  @Test
  void overlap_isToldWithItsArea() throws Exception {
    CheckReport report = check(blocks(100, 100, 190, 110));

    // 10 x 30.
    assertThat(only(report))
        .startsWith("piece-1 (B) and piece-2 (B) overlap near (")
        .endsWith(") mm: 300.00 mm² belong to both");
    assertThat(report.findings().get(0).kind()).isEqualTo(Kind.OVERLAP);
  }

  /** Touching along 40 mm no deeper than the rounding is a gap of nothing, not an overlap. */
  @Test
  void touching_isAGapOfNothing() throws Exception {
    assertThat(check(blocks(100, 100, 199.9999, 100)).findings())
        .singleElement()
        .extracting(Finding::kind)
        .isEqualTo(Kind.GAP);
    assertThat(check(blocks(100, 100, 199.99, 100)).findings())
        .singleElement()
        .extracting(Finding::kind)
        .isEqualTo(Kind.OVERLAP);
  }

  @ParameterizedTest
  @CsvSource({"6, 6, true", "5.9996, 30, true", "5.99, 30, false", "30, 5.99, false"})
  void margin_isAskedToWithinTheRounding(double x, double y, boolean enough) throws Exception {
    CheckReport report = check(blocks(x, y));

    assertThat(report.passed()).isEqualTo(enough);
    assertThat(report.leastMargin().orElseThrow().millimetres())
        .isCloseTo(Math.min(x, y), Offset.offset(1e-4));
  }

  @Test
  void margin_atEachSide_isToldWithItsPlace() throws Exception {
    assertThat(only(check(blocks(896, 100))))
        .matches(
            "piece-1 \\(B\\) is 4\\.0000 mm from the sheet's edge near \\(998\\.0, 1\\d\\d\\.\\d\\)"
                + " mm, at least 6\\.0000 mm is asked");
    assertThat(only(check(blocks(300, 455)))).contains("is 5.0000 mm from", ", 497.5) mm");
    assertThat(check(blocks(300, 456, 400.5, 100, 20, 7)).leastMargin().orElseThrow().what())
        .isEqualTo("piece-1 (B) to the sheet's edge");
  }

  @Test
  void pieceOverTheEdge_isToldWithTheAreaOutside() throws Exception {
    CheckReport report = check(blocks(-20, 100));

    assertThat(only(report))
        .startsWith("piece-1 (B) reaches over the sheet's edge near (")
        .endsWith(" mm: 800.00 mm² lie outside");
    assertThat(check(blocks(-300, 100)).leastMargin().orElseThrow().millimetres())
        .isCloseTo(-200, Offset.offset(1e-4));
    assertThat(only(check(blocks(-300, 100)))).endsWith(" mm: 4000.00 mm² lie outside");
  }

  @Test
  void defect_nearAndUnderAPiece_isToldWithItsDistance() throws Exception {
    for (double[] knot : new double[][] {{150, 170, 28}, {150, 120, 0}, {201, 120, 0}}) {
      Outline disc = Outline.of(Loop.circle(new Point(knot[0], knot[1]), 2));
      SheetStock s = sheet();
      SheetStock knotty =
          new SheetStock(
              s.name(),
              s.outline(),
              List.of(disc),
              s.thickness(),
              s.nominalThickness(),
              s.price(),
              s.available(),
              s.grain());
      Layout layout = new Layout(knotty, CUTTING, blocks(100, 100).placements());
      CheckReport report = check(layout);
      if (knot[2] > 0) {
        assertThat(report.findings()).isEmpty();
      } else {
        assertThat(only(report))
            .startsWith("piece-1 (B) is 0.0000 mm from defect 1 of the sheet near (")
            .endsWith(", at least 3.0000 mm is asked");
      }
    }
  }

  /** A sheet whose top is an arc: SVG's y = 0 lies at the arc's top, 400 + 300. */
  @Test
  void sheet_withARoundTop_isReadByItsHighestPoint() throws Exception {
    Arc top = new Arc(new Point(500, 400), 300, 0, Math.PI);
    Outline outline =
        Outline.of(
            new Loop(
                List.of(
                    new Segment(new Point(200, 0), new Point(800, 0)),
                    new Segment(new Point(800, 0), new Point(800, 400)),
                    top,
                    new Segment(new Point(200, 400), new Point(200, 0)))));
    SheetStock s = sheet();
    SheetStock arched =
        new SheetStock(
            "arched",
            outline,
            List.of(),
            s.thickness(),
            s.nominalThickness(),
            s.price(),
            s.available(),
            s.grain());
    Layout good = new Layout(arched, CUTTING, blocks(450, 640).placements());
    Layout high = new Layout(arched, CUTTING, blocks(450, 652).placements());

    // Its upper corners lie at (±50, 280) from the arc's centre: √(50² + 280²) = 284.43.
    CheckReport report = check(good);
    assertThat(report.findings()).isEmpty();
    assertThat(report.leastMargin().orElseThrow().millimetres())
        .isCloseTo(300 - Math.hypot(50, 280), Offset.offset(1e-3));
    assertThat(only(check(high))).contains("from the sheet's edge");
  }

  /** Round below and hollow on top: neither arc is the highest, which is the top's 500. */
  @Test
  void sheet_withArcsElsewhere_isReadByItsCorners() throws Exception {
    Arc below = new Arc(new Point(500, 300), 300, Math.PI, Math.PI);
    Arc hollow = new Arc(new Point(500, 500), 100, 0, -Math.PI);
    Outline outline =
        Outline.of(
            new Loop(
                List.of(
                    below,
                    new Segment(new Point(800, 300), new Point(800, 500)),
                    new Segment(new Point(800, 500), new Point(600, 500)),
                    hollow,
                    new Segment(new Point(400, 500), new Point(200, 500)),
                    new Segment(new Point(200, 500), new Point(200, 300)))));
    SheetStock s = sheet();
    SheetStock odd =
        new SheetStock(
            "odd",
            outline,
            List.of(),
            s.thickness(),
            s.nominalThickness(),
            s.price(),
            s.available(),
            s.grain());

    assertThat(check(new Layout(odd, CUTTING, blocks(450, 300).placements())).findings()).isEmpty();
  }

  @Test
  void sheet_otherThanExpected_isNamed() throws Exception {
    Layout layout = blocks(100, 100);
    SheetStock s = sheet();
    SheetStock longer =
        SheetStock.rectangle(
            "longer",
            Length.ofMillimetres(1000.1),
            Length.ofMillimetres(500),
            s.thickness(),
            s.price());
    CheckReport report =
        LayoutCheck.check(
            SheetDrawing.clean(layout),
            Expectation.of(new Layout(longer, CUTTING, layout.placements())));

    assertThat(report.findings())
        .anyMatch(
            f ->
                f.message()
                    .equals("the sheet's edge as drawn is not that of longer, in size or place"));
  }

  @Test
  void sheetEdge_brokenOrMissing_isTold() throws Exception {
    Layout layout = blocks(100, 100);
    String svg = SheetDrawing.clean(layout);
    int at = svg.indexOf(" d=\"", svg.indexOf("id=\"edge\"")) + 4;
    String broken = svg.substring(0, at) + "M 0 0 L 5 5" + svg.substring(svg.indexOf('"', at));
    String missing = svg.replace("id=\"edge\"", "id=\"hedge\"");

    assertThat(LayoutCheck.check(broken, Expectation.of(layout)).findings())
        .anyMatch(f -> f.message().startsWith("the sheet's edge: the path is open"));
    assertThat(LayoutCheck.check(missing, Expectation.of(layout)).findings())
        .anyMatch(f -> f.message().contains("(path 'edge' in group 'sheet') is not drawn"));
  }

  /** A DXF of a sheet 1000 x 500 and of blocks with their lower left corners given. */
  private static String dxf(String layer, double... places) {
    StringBuilder text = new StringBuilder("0\nSECTION\n2\nENTITIES\n");
    text.append(rectangle(layer, 0, 0, 1000, 500));
    for (int i = 0; i < places.length; i += 2) {
      text.append(rectangle("CUT", places[i], places[i + 1], 100, 40));
    }
    return text + "0\nENDSEC\n0\nEOF\n";
  }

  private static String rectangle(String layer, double x, double y, double length, double width) {
    StringBuilder text = new StringBuilder("0\nPOLYLINE\n8\n" + layer + "\n66\n1\n70\n1\n");
    for (double[] corner :
        new double[][] {{x, y}, {x + length, y}, {x + length, y + width}, {x, y + width}}) {
      text.append(
          String.format(
              Locale.ROOT, "0\nVERTEX\n8\n%s\n10\n%s\n20\n%s\n", layer, corner[0], corner[1]));
    }
    return text + "0\nSEQEND\n8\n" + layer + "\n";
  }

  private static CheckReport dxf(String text, Map<String, Integer> counts) throws CheckException {
    return LayoutCheck.check(
        text,
        new Expectation(sheet(), CUTTING, List.of(strip("X"), strip("Y")), Optional.of(counts)));
  }

  @Test
  void dxf_piecesOfOneShape_areTakenForThoseStillDue() throws Exception {
    CheckReport two = dxf(dxf("SHEET", 10, 10, 200, 10), Map.of("X", 1, "Y", 1));
    CheckReport three = dxf(dxf("SHEET", 10, 10, 200, 10, 400, 10), Map.of("X", 1, "Y", 1));

    assertThat(two.findings()).isEmpty();
    assertThat(two.counts()).isEqualTo(Map.of("X", 1, "Y", 1));
    assertThat(only(three)).isEqualTo("piece X is drawn 2 times, but 1 were asked");
    assertThat(dxf(dxf("SHEET", 10, 10), Map.of("Y", 1)).counts()).isEqualTo(Map.of("Y", 1));
    assertThat(
            LayoutCheck.check(
                    dxf("SHEET", 10, 10, 200, 10),
                    Expectation.anyOf(sheet(), CUTTING, List.of(strip("X"), strip("Y"))))
                .counts())
        .isEqualTo(Map.of("X", 2));
  }

  @Test
  void dxf_faults_areTold() throws Exception {
    String open = dxf("SHEET", 10, 10).replace("8\nCUT\n66\n1\n70\n1", "8\nCUT\n66\n1\n70\n0");
    String other = dxf("SHEET", 10, 10).replace("10\n110.0", "10\n111.0");

    assertThat(only(dxf(dxf("NOTES", 10, 10), Map.of("X", 1))))
        .isEqualTo("the sheet's edge (a closed line on layer SHEET) is not drawn");
    assertThat(dxf(open, Map.of("X", 1)).findings())
        .extracting(Finding::message)
        .contains(
            "the line that starts at (10.0, 10.0) mm: the path is open: each part must be closed");
    assertThat(dxf(other, Map.of("X", 1)).findings())
        .extracting(Finding::message)
        .contains("piece near (60.5, 10.0) mm has the shape of no piece asked for");
    assertThat(only(dxf(dxf("SHEET", 10, 10, 112, 10), Map.of("X", 1, "Y", 1))))
        .startsWith(
            "piece near (60.0, 10.0) mm (X) and piece near (162.0, 10.0) mm (Y) are 2.0000 mm");
  }

  /** Off by a hundredth all round is within the tolerance of 0.02, and told as the worst error. */
  @ParameterizedTest
  @CsvSource({"100.02, 0.0100, true", "100.06, 0.0300, false"})
  void shape_off_isToldBySize(double length, String error, boolean allowed) throws Exception {
    Piece longer =
        Piece.of("B", "block", new Strip(Length.ofMillimetres(length), Length.ofMillimetres(40)));
    Layout drawn =
        new Layout(sheet(), CUTTING, List.of(new Placement(longer, new Pose(200, 200, 0.5))));
    CheckReport report =
        LayoutCheck.check(SheetDrawing.clean(drawn), Expectation.of(blocks(100, 100)));

    assertThat(report.passed()).isEqualTo(allowed);
    if (allowed) {
      assertThat(report.worstShapeError()).isCloseTo(0.01, Offset.offset(2e-4));
    } else {
      assertThat(report.worstShapeError()).isZero();
      assertThat(only(report))
          .contains(
              "piece-1 (B): the outline is not the nominal shape: it is off by 0.0",
              " mm after the best fit, at most 0.0200 mm is allowed");
      assertThat(error).isEqualTo("0.0300");
    }
  }

  @Test
  void form_notAskedFor_isToldInItsWords() throws Exception {
    Layout layout = blocks(100, 100);
    Expectation grown = Expectation.of(layout).in(new CutForm(1, 0, 0, 0), new CutForm(2, 0, 0, 0));

    assertThat(only(LayoutCheck.check(SheetDrawing.clean(layout), grown)))
        .isEqualTo(
            "the outlines are said to be grown 0 mm, tabs 0 of 0 mm, lines within 0 mm, but asked"
                + " for is grown 1 mm, tabs 0 of 0 mm, lines within 0 mm or grown 2 mm, tabs 0 of 0"
                + " mm, lines within 0 mm");
  }

  @Test
  void ring_withTheHoleOfAnother_isNotItsShape() throws Exception {
    Piece ring =
        Piece.of(
            "R",
            "ring",
            new AnnularSector(
                Length.ofMillimetres(80), Length.ofMillimetres(40), Angle.ofDegrees(360)));
    Layout layout =
        new Layout(sheet(), CUTTING, List.of(new Placement(ring, new Pose(200, 200, 0))));
    Piece narrow =
        Piece.of(
            "R",
            "ring",
            new AnnularSector(
                Length.ofMillimetres(80.1), Length.ofMillimetres(39.8), Angle.ofDegrees(360)));
    Layout other =
        new Layout(sheet(), CUTTING, List.of(new Placement(narrow, new Pose(200, 200, 0))));

    assertThat(check(layout).findings()).isEmpty();
    assertThat(only(LayoutCheck.check(SheetDrawing.clean(other), Expectation.of(layout))))
        .contains("off by 0.2000 mm after the best fit");
    assertThat(SampleLayouts.RING.id()).isEqualTo("R");
  }
}
