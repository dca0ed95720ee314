package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.check.Finding.Kind;
import curvestock.drawing.SampleLayouts;
import curvestock.drawing.SheetDrawing;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.AnnularSector;
import curvestock.piece.FreeShape;
import curvestock.piece.Grain;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a right drawing passes, and that each kind of wrong one is caught. */
class LayoutCheckTest {

  private static CheckReport check(Layout layout) throws CheckException {
    return LayoutCheck.check(SheetDrawing.clean(layout), Expectation.of(layout));
  }

  private static List<Kind> kinds(CheckReport report) {
    return report.findings().stream().map(Finding::kind).distinct().toList();
  }

  private static Layout with(Layout layout, int index, Placement changed) {
    List<Placement> placements = new ArrayList<>(layout.placements());
    placements.set(index, changed);
    return new Layout(layout.sheet(), layout.cutting(), placements);
  }

  private static Layout movedBy(Layout layout, int index, double dx, double dy) {
    Placement old = layout.placements().get(index);
    return with(layout, index, new Placement(old.piece(), old.pose().movedBy(dx, dy)));
  }

  @Test
  void check_stackAtTheLeastPitch_passesWithGapEqualToTheSpacing() throws Exception {
    CheckReport report = check(SampleLayouts.stack());

    assertThat(report.findings()).isEmpty();
    assertThat(report.counts()).isEqualTo(Map.of("A", 16));
    assertThat(report.leastGap().orElseThrow().millimetres())
        .isCloseTo(3.175, Offset.offset(LayoutCheck.ROUNDING));
    assertThat(report.leastMargin().orElseThrow().millimetres())
        .isCloseTo(6.35, Offset.offset(LayoutCheck.ROUNDING));
    assertThat(report.worstShapeError()).isLessThan(0.001);
  }

  @Test
  void check_mixedLayoutWithAPieceInARingsHole_passes() throws Exception {
    CheckReport report = check(SampleLayouts.mixed());

    assertThat(report.findings()).isEmpty();
    assertThat(report.counts()).isEqualTo(Map.of("A", 2, "B", 4, "P", 2, "R", 1));
  }

  @Test
  @Tag("slow")
  void check_sheetOfManySmallPieces_passes() throws Exception {
    CheckReport report = check(SampleLayouts.many());

    assertThat(report.findings()).isEmpty();
    assertThat(report.pieces()).isEqualTo(172);
    assertThat(report.leastGap().orElseThrow().millimetres())
        .isCloseTo(3.175, Offset.offset(LayoutCheck.ROUNDING));
  }

  @Test
  void check_annotatedDrawing_passesLikeTheCleanOne() throws Exception {
    Layout layout = SampleLayouts.mixed();
    String svg = SheetDrawing.annotated(layout, SampleLayouts.title(LengthStyle.INCH_FRACTIONS));

    CheckReport annotated = LayoutCheck.check(svg, Expectation.of(layout));

    // The two begin their outlines at other points, which rounds other coordinates.
    CheckReport clean = check(layout);
    assertThat(annotated.findings()).isEqualTo(clean.findings()).isEmpty();
    assertThat(annotated.counts()).isEqualTo(clean.counts());
    assertThat(annotated.leastGap().orElseThrow().millimetres())
        .isCloseTo(
            clean.leastGap().orElseThrow().millimetres(), Offset.offset(LayoutCheck.ROUNDING));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.01, 0.01})
  void check_pieceNudgedByAHundredth_findsTheGap(double nudge) throws Exception {
    CheckReport report = check(movedBy(SampleLayouts.stack(), 7, nudge, 0));

    assertThat(kinds(report)).containsExactly(Kind.GAP);
    assertThat(report.findings().get(0).paths())
        .containsExactly(
            nudge < 0 ? new String[] {"piece-7", "piece-8"} : new String[] {"piece-8", "piece-9"});
    // The gap lies askew to the nudge, so it shrinks by less than the hundredth.
    assertThat(report.leastGap().orElseThrow().millimetres()).isBetween(3.164, 3.174);
  }

  @Test
  void check_pieceNudgedIntoTheMargin_findsIt() throws Exception {
    CheckReport report = check(movedBy(SampleLayouts.stack(), 0, -0.01, 0));

    assertThat(kinds(report)).containsExactly(Kind.MARGIN);
    assertThat(report.findings().get(0).message())
        .contains("piece-1 (A) is 6.3400 mm from the sheet's edge", "at least 6.3500 mm");
  }

  @ParameterizedTest
  @CsvSource({"-400,0", "0,900", "-20000,0", "9000,9000"})
  void check_pieceOverOrBeyondTheEdge_findsIt(double dx, double dy) throws Exception {
    CheckReport report = check(movedBy(SampleLayouts.stack(), 0, dx, dy));

    assertThat(report.findings())
        .anyMatch(f -> f.kind() == Kind.MARGIN && f.message().contains("over the sheet's edge"));
  }

  @Test
  void check_pieceOnTopOfAnother_findsOverlapInBothOpinions() throws Exception {
    CheckReport report = check(movedBy(SampleLayouts.stack(), 7, -30, 0));

    assertThat(kinds(report)).contains(Kind.OVERLAP);
    assertThat(report.leastGap().orElseThrow().millimetres()).isLessThan(1e-5);
  }

  @Test
  void check_pieceWhollyInsideAnother_findsOverlap() throws Exception {
    Piece large = SampleLayouts.RING;
    Piece disc =
        Piece.of(
            "D",
            "disc",
            new AnnularSector(
                Length.ofMillimetres(10), Length.ofMillimetres(20), Angle.ofDegrees(360)));
    Layout layout =
        new Layout(
            SampleLayouts.SHEET,
            SampleLayouts.CUTTING,
            List.of(
                new Placement(large, new Pose(500, 500, 0)),
                new Placement(disc, new Pose(800, 500, 0))));

    CheckReport report = check(layout);

    assertThat(kinds(report)).containsExactly(Kind.OVERLAP);
    assertThat(report.leastGap().orElseThrow().millimetres()).isZero();
  }

  @Test
  void check_spacingZeroAndTouchingPieces_passesButOverlapIsFound() throws Exception {
    Cutting none = Cutting.leaving(Length.ZERO, Length.ZERO, Length.ZERO);
    Layout touching =
        new Layout(
            SampleLayouts.SHEET,
            none,
            List.of(
                new Placement(SampleLayouts.BLOCK, new Pose(70, 45, 0)),
                new Placement(SampleLayouts.BLOCK, new Pose(210, 45, 0))));

    assertThat(check(touching).findings()).isEmpty();
    assertThat(kinds(check(movedBy(touching, 1, -0.01, 0)))).containsExactly(Kind.OVERLAP);
    assertThat(kinds(check(movedBy(touching, 0, 0, -0.01)))).containsExactly(Kind.MARGIN);
  }

  @ParameterizedTest
  @CsvSource({"31.002,4,90", "31,4.004,90", "31,4,90.01"})
  void check_shapeAlteredByAFewHundredths_findsTheShape(double radius, double width, double angle)
      throws Exception {
    // 0.002 in = 0.05 mm; 0.01° of 838 mm = 0.146 mm, which is 0.07 mm at each end.
    Layout right = SampleLayouts.mixed();
    Piece wrong =
        Piece.of(
            "A",
            "quarter turn",
            new AnnularSector(
                Length.ofInches(radius), Length.ofInches(width), Angle.ofDegrees(angle)));
    Layout layout = with(right, 2, new Placement(wrong, right.placements().get(2).pose()));

    CheckReport report = LayoutCheck.check(SheetDrawing.clean(layout), Expectation.of(right));

    assertThat(kinds(report)).containsExactly(Kind.SHAPE);
    assertThat(report.findings().get(0).paths()).containsExactly("piece-3");
    assertThat(report.findings().get(0).message()).contains("not the nominal shape");
  }

  @Test
  void check_shapeAlteredWithinTheTolerance_passes() throws Exception {
    Layout right = SampleLayouts.mixed();
    Piece near =
        Piece.of(
            "A",
            "quarter turn",
            new AnnularSector(Length.ofInches(31), Length.ofInches(4.0005), Angle.ofDegrees(90)));
    Layout layout = with(right, 2, new Placement(near, right.placements().get(2).pose()));

    CheckReport report = LayoutCheck.check(SheetDrawing.clean(layout), Expectation.of(right));

    assertThat(report.findings()).isEmpty();
    assertThat(report.worstShapeError()).isBetween(0.005, 0.009);
  }

  @Test
  void check_cornerOfAPolygonMovedByFiveHundredths_findsTheShape() throws Exception {
    Layout right = SampleLayouts.mixed();
    FreeShape moved =
        FreeShape.polygon(
            List.of(new Point(0, 0), new Point(160, 0), new Point(120.05, 90), new Point(0, 60)));
    Layout layout =
        with(
            right,
            1,
            new Placement(Piece.of("P", "gusset", moved), right.placements().get(1).pose()));

    CheckReport report = LayoutCheck.check(SheetDrawing.clean(layout), Expectation.of(right));

    assertThat(kinds(report)).containsExactly(Kind.SHAPE);
  }

  @Test
  void check_pieceTurnedOver_isCongruentOnlyIfSymmetric() throws Exception {
    Layout right = SampleLayouts.mixed();
    FreeShape mirrored =
        FreeShape.polygon(
            List.of(new Point(0, 0), new Point(160, 0), new Point(160, 60), new Point(40, 90)));
    Layout layout =
        with(
            right,
            1,
            new Placement(Piece.of("P", "gusset", mirrored), right.placements().get(1).pose()));

    CheckReport report = LayoutCheck.check(SheetDrawing.clean(layout), Expectation.of(right));

    assertThat(kinds(report)).containsExactly(Kind.SHAPE);
    // A sector is its own mirror image: the quarter turns of the same drawing pass.
    assertThat(report.findings()).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(ints = {8, 64, 900})
  void check_arcsReplacedByAPolyline_findsTheShape(int steps) throws Exception {
    Layout right = SampleLayouts.mixed();
    double half = Math.PI / 4;
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      corners.add(Point.polar(33 * 25.4, -half + 2 * half * i / steps));
    }
    for (int i = 0; i <= steps; i++) {
      corners.add(Point.polar(29 * 25.4, half - 2 * half * i / steps));
    }
    Layout layout =
        with(
            right,
            2,
            new Placement(
                Piece.of("A", "quarter turn", FreeShape.polygon(corners)),
                right.placements().get(2).pose()));

    CheckReport report = LayoutCheck.check(SheetDrawing.clean(layout), Expectation.of(right));

    assertThat(kinds(report)).containsExactly(Kind.SHAPE);
    assertThat(report.findings().get(0).message())
        .contains("not the nominal shape", "lines and arcs");
  }

  @Test
  void check_pieceMissingOrExtra_findsTheCount() throws Exception {
    Layout full = SampleLayouts.stack();
    List<Placement> fewer = full.placements().subList(0, 15);
    Layout missing = new Layout(full.sheet(), full.cutting(), fewer);

    CheckReport less = LayoutCheck.check(SheetDrawing.clean(missing), Expectation.of(full));
    CheckReport more = LayoutCheck.check(SheetDrawing.clean(full), Expectation.of(missing));

    assertThat(less.findings()).singleElement().extracting(Finding::kind).isEqualTo(Kind.COUNT);
    assertThat(less.findings().get(0).message())
        .isEqualTo("piece A is drawn 15 times, but 16 were asked");
    assertThat(kinds(more)).containsExactly(Kind.COUNT);
  }

  @Test
  void check_pieceNobodyAskedFor_isFound() throws Exception {
    Layout layout = SampleLayouts.mixed();
    Expectation onlySectors =
        Expectation.anyOf(layout.sheet(), layout.cutting(), List.of(SampleLayouts.QUARTER));

    CheckReport report = LayoutCheck.check(SheetDrawing.clean(layout), onlySectors);

    assertThat(kinds(report)).containsExactly(Kind.UNKNOWN_PIECE);
    assertThat(report.findings()).hasSize(7);
  }

  @Test
  void check_otherSheetThanDrawn_isFound() throws Exception {
    Layout layout = SampleLayouts.mixed();
    SheetStock metric =
        SheetStock.rectangle(
            "1250x2500",
            Length.ofMillimetres(2500),
            Length.ofMillimetres(1250),
            Length.ofMillimetres(12),
            layout.sheet().price());

    CheckReport report =
        LayoutCheck.check(
            SheetDrawing.clean(layout),
            Expectation.of(new Layout(metric, layout.cutting(), layout.placements())));

    assertThat(kinds(report)).contains(Kind.SHEET);
  }

  @Test
  void check_pieceNearADefect_isFoundByTheSpacing() throws Exception {
    Layout layout = SampleLayouts.mixed();
    // Block 5 lies from x 90 to 230 and y 1055 to 1145.
    Outline far = Outline.of(Loop.circle(new Point(160, 1031), 20));
    Outline near = Outline.of(Loop.circle(new Point(160, 1032), 20));
    Outline inside = Outline.of(Loop.circle(new Point(160, 1100), 20));

    assertThat(check(withDefect(layout, far)).findings()).isEmpty();
    assertThat(kinds(check(withDefect(layout, near)))).containsExactly(Kind.DEFECT);
    assertThat(kinds(check(withDefect(layout, inside)))).containsExactly(Kind.DEFECT);
    assertThat(check(withDefect(layout, near)).findings().get(0).message())
        .contains("piece-5 (B) is 3.0000 mm from defect 1", "at least 3.1750 mm");
  }

  private static Layout withDefect(Layout layout, Outline defect) {
    SheetStock s = layout.sheet();
    return new Layout(
        new SheetStock(
            s.name(),
            s.outline(),
            List.of(defect),
            s.thickness(),
            s.nominalThickness(),
            s.price(),
            s.available(),
            s.grain()),
        layout.cutting(),
        layout.placements());
  }

  @ParameterizedTest
  @CsvSource({"0,true", "180,true", "9.9,true", "10.1,false", "90,false", "-170.5,true"})
  void check_pieceWithGrain_mayLieOnlyAlongIt(double degrees, boolean allowed) throws Exception {
    Grain along = new Grain(Angle.ofDegrees(0), Angle.ofDegrees(10));
    Piece block = new Piece("B", "block", SampleLayouts.BLOCK.shape(), along);
    Layout layout =
        new Layout(
            SampleLayouts.SHEET,
            SampleLayouts.CUTTING,
            List.of(new Placement(block, new Pose(500, 500, Math.toRadians(degrees)))));

    assertThat(kinds(check(layout))).isEqualTo(allowed ? List.of() : List.of(Kind.GRAIN));
  }

  @Test
  void check_pieceOverTheNotchOfARemnant_isFound() throws Exception {
    SheetStock s = SampleLayouts.SHEET;
    Outline hook =
        SheetStock.polygonOutline(
            List.of(
                new Point(0, 0),
                new Point(900, 0),
                new Point(900, 900),
                new Point(600, 900),
                new Point(600, 300),
                new Point(300, 300),
                new Point(300, 900),
                new Point(0, 900)));
    SheetStock remnant =
        new SheetStock(
            "remnant",
            hook,
            List.of(),
            s.thickness(),
            s.nominalThickness(),
            s.price(),
            s.available(),
            s.grain());
    Layout good =
        new Layout(
            remnant,
            SampleLayouts.CUTTING,
            List.of(new Placement(SampleLayouts.BLOCK, new Pose(150, 600, 0))));

    assertThat(check(good).findings()).isEmpty();
    assertThat(kinds(check(movedBy(good, 0, 100, 0)))).containsExactly(Kind.MARGIN);
    // Within the box of the remnant, but in its notch.
    assertThat(kinds(check(movedBy(good, 0, 300, 0)))).containsExactly(Kind.MARGIN);
  }

  @Test
  void check_ringWithoutItsHole_findsTheShape() throws Exception {
    Layout right = SampleLayouts.mixed();
    String svg = SheetDrawing.clean(right);
    int hole = svg.indexOf("<path id=\"piece-1-hole-1\"");
    String filled = svg.substring(0, hole) + svg.substring(svg.indexOf("/>", hole) + 2);

    CheckReport report = LayoutCheck.check(filled, Expectation.of(right));

    assertThat(kinds(report)).contains(Kind.SHAPE);
  }

  @Test
  void check_countsNotGiven_acceptsAnyNumber() throws Exception {
    Layout layout = SampleLayouts.stack();
    Expectation any =
        new Expectation(
            layout.sheet(), layout.cutting(), List.of(SampleLayouts.QUARTER), Optional.empty());

    assertThat(LayoutCheck.check(SheetDrawing.clean(layout), any).passed()).isTrue();
  }
}
