package curvestock.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curvestock.drawing.SampleLayouts;
import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.machine.MachineSetup.Outlines;
import curvestock.piece.Drilled;
import curvestock.piece.FreeShape;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.units.Length;
import curvestock.units.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Order, start points, tabs, letters and lines. */
class MachineSheetTest {

  private static MachineSheet sheet(Layout layout, MachineSetup setup) {
    List<String> names =
        IntStream.rangeClosed(1, layout.placements().size()).mapToObj(i -> "T" + i).toList();
    return MachineSheet.of(layout, names, setup);
  }

  private static int place(MachineSheet sheet, String id) {
    return sheet.contours().stream().map(Contour::id).toList().indexOf(id);
  }

  @Test
  void order_pieceInARingsHole_isCutBeforeTheHole_andTheHoleBeforeTheOutside() {
    MachineSheet sheet = sheet(SampleLayouts.mixed(), MachineSetup.DEFAULT);

    // Piece 2 lies in the hole of piece 1.
    assertThat(place(sheet, "piece-2")).isNotNegative().isLessThan(place(sheet, "piece-1-hole-1"));
    assertThat(place(sheet, "piece-1-hole-1")).isLessThan(place(sheet, "piece-1"));
    assertThat(sheet.contours()).extracting(Contour::id).doesNotHaveDuplicates().hasSize(10);
  }

  @Test
  void order_manyPieces_isShorterThanAsLaidOut() {
    Layout tidy = SampleLayouts.many();
    List<Placement> shuffled = new ArrayList<>(tidy.placements());
    java.util.Collections.shuffle(shuffled, new java.util.Random(5));
    Layout layout = new Layout(tidy.sheet(), tidy.cutting(), shuffled);

    MachineSheet sheet = sheet(layout, MachineSetup.DEFAULT);

    assertThat(sheet.contours()).hasSize(172);
    assertThat(sheet.travel()).isLessThan(0.2 * sheet.travelAsLaidOut());
  }

  @Test
  void start_ofEveryOutline_isAwayFromItsCorners() {
    Layout layout = SampleLayouts.mixed();
    for (Contour contour : sheet(layout, MachineSetup.DEFAULT).contours()) {
      Placement placement = layout.placements().get(contour.number() - 1);
      double nearest =
          placement.outline().edges().stream()
              .filter(edge -> edge instanceof Segment)
              .flatMap(edge -> Stream.of(edge.start(), edge.end()))
              .mapToDouble(corner -> corner.distance(contour.start()))
              .min()
              .orElse(100);

      assertThat(nearest).as(contour.id()).isGreaterThan(20);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 4, 7})
  void tabs_ofASector_areOnItsArcs_asManyAndAsLongAsAsked(int count) {
    MachineSetup setup =
        MachineFilesTest.setup(
            Outlines.OFFSET, 0, MachineFilesTest.gaps(count), LengthUnit.MILLIMETRE, true);
    MachineSheet sheet = sheet(SampleLayouts.stack(), setup);

    assertThat(sheet.tabless()).isEmpty();
    for (Contour contour : sheet.contours()) {
      assertThat(contour.closed()).isFalse();
      // Its own tabs, and those by which neighbours and waste hang on it.
      int all = contour.runs().size();
      assertThat(all).isBetween(count, 3 * count);
      for (int i = 0; i < all; i++) {
        List<Edge> run = contour.runs().get(i);
        List<Edge> next = contour.runs().get((i + 1) % all);
        Edge last = run.get(run.size() - 1);
        Edge first = next.get(0);
        assertThat(last).isInstanceOf(Arc.class);
        assertThat(((Arc) last).radius()).isEqualTo(((Arc) first).radius()).isGreaterThan(700);
        double chord = last.end().distance(first.start());
        // 4 mm of wood and the kerf of 1/16 in.
        assertThat(chord).isCloseTo(4 + 1.5875, Offset.offset(0.001));
      }
    }
  }

  @Test
  void tabs_ofAStraightPiece_areNeverOnItsEnds() {
    MachineSetup setup =
        MachineFilesTest.setup(
            Outlines.OFFSET, 0, MachineFilesTest.gaps(3), LengthUnit.MILLIMETRE, true);
    Layout layout = SampleLayouts.mixed();
    for (Contour contour : sheet(layout, setup).contours()) {
      Placement placement = layout.placements().get(contour.number() - 1);
      if (!placement.piece().equals(SampleLayouts.BLOCK)) {
        continue;
      }
      Point along = Point.polar(1, placement.pose().rotation());
      for (List<Edge> run : contour.runs()) {
        assertThat(run.get(0).startDirection().cross(along)).isCloseTo(0, Offset.offset(1e-9));
      }
    }
  }

  @Test
  void tabs_withoutALongSide_areReported() {
    Piece tiny = Piece.of("t", "chip", new Strip(Length.ofMillimetres(9), Length.ofMillimetres(9)));
    Layout layout =
        new Layout(
            SampleLayouts.SHEET,
            SampleLayouts.CUTTING,
            List.of(new Placement(tiny, new Pose(100, 100, 0))));
    MachineSetup setup =
        MachineFilesTest.setup(
            Outlines.OFFSET, 0, MachineFilesTest.gaps(2), LengthUnit.MILLIMETRE, true);

    MachineSheet sheet = sheet(layout, setup);

    assertThat(sheet.tabless()).containsExactly(1);
    assertThat(sheet.contours().get(0).closed()).isTrue();
  }

  /** Brackets whose longest sides face each other, a kerf apart: they hang by the other sides. */
  @Test
  void tabs_ofBracketsFaceToFace_holdBoth() {
    Piece bracket =
        Piece.of(
            "G",
            "bracket",
            FreeShape.polygon(
                List.of(
                    new Point(0, 0),
                    new Point(150, 0),
                    new Point(150, 20),
                    new Point(20, 150),
                    new Point(0, 150))));
    double apart = 1.6 * Math.sqrt(2);
    Layout layout =
        new Layout(
            SampleLayouts.SHEET,
            SampleLayouts.CUTTING,
            List.of(
                new Placement(bracket, new Pose(300, 300, 0)),
                new Placement(bracket, new Pose(470 + apart, 470 + apart, Math.PI))));
    MachineSetup setup =
        MachineFilesTest.setup(
            Outlines.OFFSET, 0, MachineFilesTest.gaps(3), LengthUnit.MILLIMETRE, true);

    assertThat(sheet(layout, setup).loose()).isEmpty();
  }

  /** The chord error r(1 − cos(s/2)) of each line, on the side of the centre. */
  @ParameterizedTest
  @ValueSource(doubles = {0.005, 0.01, 0.2})
  void chords_ofAQuarter_strayWithinTheTolerance_andAreFew(double tolerance) {
    Arc arc = new Arc(new Point(10, 20), 711, 0.3, Math.PI / 2);

    List<Edge> lines = new Chords(tolerance).of(List.of(arc));

    for (Edge line : lines) {
      assertThat(line.start().distance(arc.centre())).isCloseTo(711, Offset.offset(1e-9));
      double rise = 711 - line.middle().distance(arc.centre());
      assertThat(rise).isBetween(0.9 * tolerance, tolerance + 1e-9);
    }
    // Shared figure, derived: 149 lines at 0.01 mm.
    assertThat(lines).hasSize((int) Math.ceil(Math.PI / 4 / Math.acos(1 - tolerance / 711)));
    if (tolerance == 0.01) {
      assertThat(lines).hasSize(149);
    }
  }

  @Test
  void letters_everyOne_isInItsCellWithoutDoubleStrokes() {
    String all = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-+/.,:()°×?";
    for (int i = 0; i < all.length(); i++) {
      List<Edge> strokes =
          StrokeLetters.of(all.substring(i, i + 1)).stream().flatMap(List::stream).toList();
      assertThat(strokes).isNotEmpty();
      for (int a = 0; a < strokes.size(); a++) {
        Edge edge = strokes.get(a);
        assertThat(edge.length()).isPositive();
        assertThat(edge.box().minX()).isNotNegative();
        assertThat(edge.box().maxX()).isLessThanOrEqualTo(4);
        assertThat(edge.box().minY()).isNotNegative();
        assertThat(edge.box().maxY()).isLessThanOrEqualTo(StrokeLetters.HEIGHT);
        for (int b = 0; b < a; b++) {
          Edge other = strokes.get(b);
          boolean along =
              other.distanceTo(edge.part(0, 0.4).end()) < 1e-9
                  && other.distanceTo(edge.middle()) < 1e-9;
          assertThat(along).as("strokes of %s", all.charAt(i)).isFalse();
        }
      }
    }
  }

  @Test
  void labels_ofEveryPiece_lieInItsWood() {
    Layout layout = SampleLayouts.many();
    MachineSheet sheet = sheet(layout, MachineSetup.DEFAULT);

    assertThat(sheet.labels()).hasSize(172);
    for (int i = 0; i < 172; i++) {
      for (List<Edge> stroke : sheet.labels().get(i).strokes()) {
        for (Edge edge : stroke) {
          assertThat(layout.placements())
              .anyMatch(placement -> placement.outline().contains(edge.middle()));
        }
      }
    }
  }

  @Test
  void grown_holeNarrowerThanTheKerf_isDrilledAtItsSize() {
    Piece drilled =
        Piece.of(
            "D",
            "drilled",
            new Drilled(
                new Strip(Length.ofMillimetres(80), Length.ofMillimetres(40)),
                List.of(Loop.circle(Point.ORIGIN, 0.7).reversed())));

    MachineSheet sheet = sheet(alone(drilled), grown());

    assertThat(sheet.contours()).hasSize(1);
    Drilling hole = sheet.machining().drillings().get(0);
    assertThat(hole.diameter().millimetres()).isCloseTo(1.4, within(1e-9));
    assertThat(hole.centre().distance(new Point(100, 100))).isLessThan(1e-9);
  }

  @Test
  void grown_hollowNarrowerThanTheKerf_isRefusedWithAdvice() {
    FreeShape comb =
        FreeShape.polygon(
            List.of(
                new Point(0, 0),
                new Point(90, 0),
                new Point(90, 50),
                new Point(46, 50),
                new Point(46, 20),
                new Point(45, 20),
                new Point(45, 50),
                new Point(0, 50)));

    assertThatThrownBy(() -> sheet(alone(Piece.of("D", "comb", comb)), grown()))
        .isInstanceOf(ToolTooWide.class)
        .hasMessageContaining("piece D has a hole or a hollow that a cut 1.59 mm (0.063 in) wide")
        .hasMessageContaining("use a narrower tool");
  }

  private static Layout alone(Piece piece) {
    return new Layout(
        SampleLayouts.SHEET,
        SampleLayouts.CUTTING,
        List.of(new Placement(piece, new Pose(100, 100, 0))));
  }

  private static MachineSetup grown() {
    return MachineFilesTest.setup(
        Outlines.OFFSET, 0, Optional.empty(), LengthUnit.MILLIMETRE, true);
  }

  @Test
  void insideCorners_ofSectorHoleAndNotch_areTheirRadii() {
    assertThat(
            InsideCorners.smallest(SampleLayouts.QUARTER.shape().outline()).orElseThrow().inches())
        .isCloseTo(29, Offset.offset(1e-9));
    assertThat(InsideCorners.smallest(SampleLayouts.BLOCK.shape().outline())).isEmpty();
    assertThat(
            InsideCorners.smallest(
                curvestock.geometry.Outline.of(
                    Loop.polygon(
                        List.of(
                            new Point(0, 0), new Point(9, 0), new Point(3, 3), new Point(0, 9))))))
        .contains(Length.ZERO);
  }

  /** Hand-made: two blocks of 140 x 90 side by side, a kerf of 1/16 in and a little more apart. */
  @ParameterizedTest
  @CsvSource({"0, 140", "0.1, 0"})
  void sharedCuts_ofGrownBlocksAKerfApart_areTheirSides(double more, double shared) {
    double pitch = 90 + 1.5875 + more;
    Layout layout =
        new Layout(
            SampleLayouts.SHEET,
            SampleLayouts.CUTTING,
            List.of(
                new Placement(SampleLayouts.BLOCK, new Pose(200, 200, 0)),
                new Placement(SampleLayouts.BLOCK, new Pose(200, 200 + pitch, 0))));
    MachineSetup offset =
        MachineFilesTest.setup(Outlines.OFFSET, 0, Optional.empty(), LengthUnit.MILLIMETRE, true);
    MachineSheet grown = sheet(layout, offset);

    // The second outline reaches half a millimetre into the line at either end.
    double once = Math.max(0, shared - 1);
    assertThat(grown.sharedCut()).isCloseTo(once, Offset.offset(1e-6));
    double cut =
        grown.contours().stream().flatMap(c -> c.edges().stream()).mapToDouble(Edge::length).sum();
    double each = 2 * (140 + 90) + Math.PI * 1.5875;
    assertThat(cut).isCloseTo(2 * each - once, Offset.offset(0.01));
    assertThat(sheet(layout, MachineSetup.DEFAULT).sharedCut()).isZero();
  }
}
