package curvestock.handwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curvestock.drawing.SampleLayouts;
import curvestock.drawing.SheetDrawing;
import curvestock.geometry.Arc;
import curvestock.geometry.Box;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.handwork.CuttingOrder.Board;
import curvestock.handwork.CuttingOrder.Rip;
import curvestock.handwork.PivotPlace.OffSheet;
import curvestock.handwork.PivotPlace.OnPiece;
import curvestock.handwork.PivotPlace.OnWaste;
import curvestock.handwork.PivotPlace.Side;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.plan.Remnant;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarkingOutTest {

  private static final double FINE = 1e-9;

  /** A drawing's numbers have 4 decimals. */
  private static final double DRAWN = 1e-4;

  private static final Pattern NUMBERS = Pattern.compile("-?\\d+(?:\\.\\d+)?");

  @ParameterizedTest
  @CsvSource({
    // radius, sweep in degrees
    "717.55, 94.407",
    "300, 45",
    "603.25, 90",
    "500, 180",
    "2000, 10"
  })
  void offsets_fromTheChord_lieOnTheCircle(double radius, double degrees) {
    double sweep = Math.toRadians(degrees);
    ChordOffsets chord = ChordOffsets.of(radius, sweep, 25.4);

    // Textbook: c = 2 R sin(t/2), h = R (1 - cos(t/2)); R = c²/8h + h/2 (intersecting chords).
    assertThat(chord.chord()).isCloseTo(2 * radius * Math.sin(sweep / 2), within(1e-9 * radius));
    assertThat(chord.midHeight()).isCloseTo(radius * (1 - Math.cos(sweep / 2)), within(1e-6));
    double c = chord.chord();
    double h = chord.midHeight();
    assertThat(c * c / (8 * h) + h / 2).isCloseTo(radius, within(1e-6));
    Point centre = new Point(0, h - radius);
    for (ChordOffsets.Offset offset : chord.offsets()) {
      assertThat(new Point(offset.station(), offset.height()).distance(centre))
          .isCloseTo(radius, within(1e-6));
    }
    assertThat(chord.offsets()).hasSize((int) Math.ceil(c / 2 / 25.4 - 1e-9) - 1);
  }

  /**
   * Hand value: R 100, chord 160, so half 80, foot 60, height 40; at 60 the circle stands at 80.
   */
  @Test
  void offsets_ofAThreeFourFiveCircle_areWhole() {
    double sweep = 2 * Math.asin(0.8);
    ChordOffsets chord = ChordOffsets.of(100, sweep, 60);

    assertThat(chord.chord()).isCloseTo(160, within(1e-9));
    assertThat(chord.midHeight()).isCloseTo(40, within(1e-9));
    assertThat(chord.offsets()).hasSize(1);
    assertThat(chord.offsets().get(0).height()).isCloseTo(20, within(1e-9));
  }

  @Test
  void offsets_ofMoreThanHalfATurn_areRefused() {
    assertThatThrownBy(() -> ChordOffsets.of(100, Math.toRadians(181), 10))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at most 180°");
  }

  @Test
  void corners_ofEveryPiece_areThoseOfTheWrittenDrawing() {
    Layout layout = SampleLayouts.mixed();
    String svg = SheetDrawing.clean(layout);
    double height = layout.sheet().outline().box().height();
    List<PieceMarks> marks = MarkingOut.of(layout, Optional.empty());

    Matcher paths = Pattern.compile("id=\"piece-(\\d+)\"[^>]*? d=\"([^\"]*)\"").matcher(svg);
    int found = 0;
    while (paths.find()) {
      List<Point> drawn = ends(paths.group(2), height);
      PieceMarks mark = marks.get(Integer.parseInt(paths.group(1)) - 1);
      for (Point corner : mark.corners()) {
        assertThat(drawn).anySatisfy(p -> assertThat(p.distance(corner)).isLessThan(2 * DRAWN));
      }
      found++;
    }
    assertThat(found).isEqualTo(layout.placements().size());
  }

  /** End points of the commands of a path, y up again. */
  private static List<Point> ends(String path, double height) {
    List<Point> ends = new ArrayList<>();
    for (String command : path.split("(?=[MLA])", -1)) {
      List<Double> numbers = new ArrayList<>();
      Matcher matcher = NUMBERS.matcher(command);
      while (matcher.find()) {
        numbers.add(Double.parseDouble(matcher.group()));
      }
      if (numbers.size() >= 2) {
        int n = numbers.size();
        ends.add(new Point(numbers.get(n - 2), height - numbers.get(n - 1)));
      }
    }
    return ends;
  }

  @Test
  void arcs_aboutTheirPivots_runThroughTheirCornersAndMiddle() {
    for (PieceMarks mark : MarkingOut.of(SampleLayouts.mixed(), Optional.empty())) {
      for (ArcMark arc : mark.arcs()) {
        for (Point point :
            List.of(mark.corners().get(arc.from()), mark.corners().get(arc.to()), arc.middle())) {
          assertThat(point.distance(arc.pivot())).isCloseTo(arc.radius(), within(1e-6));
        }
      }
    }
  }

  /** Pivots of the axis stack lie on its axis, one pitch apart; see the shared figures. */
  @Test
  void pivots_ofAStack_lieOnItsAxisOnWasteOrOffTheSheet() {
    Layout layout = SampleLayouts.stack();
    List<PieceMarks> marks = MarkingOut.of(layout, Optional.empty());
    double pitch = SampleLayouts.pitch((AnnularSector) SampleLayouts.QUARTER.shape());
    double axis = layout.sheet().width().millimetres() / 2;

    for (int i = 0; i < marks.size(); i++) {
      assertThat(marks.get(i).pivots()).hasSize(1);
      ArcMark arc = marks.get(i).pivots().get(0);
      assertThat(arc.pivot().y()).isCloseTo(axis, within(FINE * 1e3));
      if (i > 0) {
        double step = arc.pivot().x() - marks.get(i - 1).pivots().get(0).pivot().x();
        assertThat(step).isCloseTo(pitch, within(1e-6));
      }
      assertThat(arc.place()).isEqualTo(expected(layout, arc.pivot()));
    }
    assertThat(marks.stream().map(m -> m.pivots().get(0).place()))
        .anyMatch(OnWaste.class::isInstance)
        .anyMatch(OffSheet.class::isInstance);
  }

  @Test
  void pivot_underTheMiddleOfAnotherPiece_liesOnThatPiece() {
    double radius = 31 * 25.4;
    Placement swung = new Placement(SampleLayouts.QUARTER, new Pose(1000, 600, 0));
    Placement under = new Placement(SampleLayouts.QUARTER, new Pose(1000 - radius, 600, 0));
    Layout layout = new Layout(SampleLayouts.SHEET, SampleLayouts.CUTTING, List.of(swung, under));

    assertThat(MarkingOut.of(layout, Optional.empty()).get(0).pivots().get(0).place())
        .isEqualTo(new OnPiece(1));
  }

  /** By distance and bearing from each sector's own middle, without the outline's own test. */
  private static PivotPlace expected(Layout layout, Point pivot) {
    for (int i = 0; i < layout.placements().size(); i++) {
      Placement placement = layout.placements().get(i);
      AnnularSector sector = (AnnularSector) placement.piece().shape();
      Point from = pivot.minus(new Point(placement.pose().x(), placement.pose().y()));
      double bearing = from.angle() - placement.pose().rotation();
      double off = Math.abs(Math.IEEEremainder(bearing, 2 * Math.PI));
      boolean inside =
          from.norm() > sector.innerRadius().millimetres() - PivotPlace.PIN
              && from.norm() < sector.outerRadius().millimetres() + PivotPlace.PIN
              && off < sector.sweep().radians() / 2 + PivotPlace.PIN / from.norm();
      if (inside && pivot.x() < 0) {
        continue;
      }
      if (inside) {
        return new OnPiece(i);
      }
    }
    return pivot.x() < 0 ? new OffSheet(Side.LEFT, -pivot.x()) : new OnWaste();
  }

  @Test
  void diagonals_ofASector_areItsTwo() {
    PieceMarks mark = MarkingOut.of(SampleLayouts.stack(), Optional.empty()).get(0);

    assertThat(mark.diagonals()).hasSize(2);
    // Law of cosines between the inner and outer radius, a quarter turn apart: 29 and 33 in.
    double diagonal = Math.sqrt(29 * 29 + 33 * 33) * 25.4;
    assertThat(mark.diagonals())
        .allSatisfy(check -> assertThat(check.distance()).isCloseTo(diagonal, within(1e-6)));
  }

  // Order of cutting.

  @Test
  void rips_ofBlocksInAGrid_touchNoPieceAndPartThemAll() {
    List<Placement> placements = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 2; j++) {
        placements.add(
            new Placement(SampleLayouts.BLOCK, new Pose(200 + 300 * i, 200 + 300 * j, 0)));
      }
    }
    Layout layout = new Layout(SampleLayouts.SHEET, SampleLayouts.CUTTING, placements);
    CuttingOrder order = CuttingOrder.of(layout, Optional.empty());

    assertThat(order.boards()).hasSize(6).allMatch(board -> board.pieces().size() == 1);
    requireRight(layout, order);
  }

  @Test
  void rips_ofAStackOfChevrons_keepItInOneBoard() {
    CuttingOrder order = CuttingOrder.of(SampleLayouts.stack(), Optional.empty());

    assertThat(order.boards()).hasSize(1);
    requireRight(SampleLayouts.stack(), order);
  }

  @Test
  void order_ofMixedSheets_namesEveryPieceOnce() {
    for (Layout layout : List.of(SampleLayouts.mixed(), SampleLayouts.many())) {
      requireRight(layout, CuttingOrder.of(layout, Optional.empty()));
    }
  }

  /**
   * A sheet of 1250 x 2500 mm with pieces along its lower edge: an offcut of 2500 x 859 is promised
   * above them, and cutting between the pieces first would have parted it.
   */
  @Test
  void rips_withAnOffcutPromised_freeItWholeBeforeAnythingElse() {
    SheetStock sheet = SheetStock.rectangle("ply", mm(2500), mm(1250), mm(9), new Money(4000));
    Cutting cutting = new Cutting(mm(4), mm(4), mm(10));
    Piece strip = Piece.of("S", "strip", new Strip(mm(1140), mm(373)));
    Layout layout =
        new Layout(
            sheet,
            cutting,
            List.of(
                new Placement(strip, new Pose(580, 200.5, 0)),
                new Placement(strip, new Pose(1750, 200.5, 0))));
    Box kept = Remnant.of(layout).orElseThrow().where();
    assertThat(kept.width()).isCloseTo(2500, within(FINE));
    assertThat(kept.height()).isCloseTo(859, within(FINE));

    CuttingOrder order = CuttingOrder.of(layout, Optional.of(kept));

    Rip first = order.rips().get(0);
    assertThat(first.freesKept()).isTrue();
    assertThat(first.upright()).isFalse();
    // The kerf takes what lies between the pieces' upper edge, 387, and the offcut, 391.
    assertThat(first.at()).isCloseTo(389, within(FINE));
    assertThat(first.to() - first.from()).isCloseTo(2500, within(FINE));
    assertThat(order.rips().subList(1, order.rips().size()))
        .isNotEmpty()
        .allSatisfy(
            rip -> {
              assertThat(rip.upright() ? rip.to() : rip.at()).isLessThanOrEqualTo(387 + FINE);
              assertThat(rip.freesKept()).isFalse();
            });
    requireRight(layout, order);
  }

  @ParameterizedTest
  @CsvSource({"2400, true", "900, false"})
  void offcut_ofEverySample_isCutOffFirstAndLeftWhole(double length, boolean beside) {
    SheetStock sheet = SheetStock.rectangle("ply", mm(length), mm(1250), mm(9), new Money(4000));
    Layout layout =
        new Layout(
            sheet,
            new Cutting(mm(3), mm(5), mm(5)),
            List.of(new Placement(SampleLayouts.RING, new Pose(400, 400, 0))));
    Box kept = Remnant.of(layout).orElseThrow().where();

    Rip first = CuttingOrder.of(layout, Optional.of(kept)).rips().get(0);

    assertThat(first.upright()).isEqualTo(beside);
    double edge = beside ? kept.minX() : kept.minY();
    assertThat(first.at()).isCloseTo(edge - 1.5, within(FINE));
  }

  @Test
  void pivot_onTheOffcutToKeepOrTooNearAPiece_isSaid() {
    SheetStock sheet = SheetStock.rectangle("ply", mm(2400), mm(1200), mm(9), new Money(4000));
    Placement swung = new Placement(SampleLayouts.QUARTER, new Pose(1500, 600, Math.PI));
    Layout layout = new Layout(sheet, SampleLayouts.CUTTING, List.of(swung));
    Box kept = Remnant.of(layout).orElseThrow().where();

    assertThat(PivotPlace.of(layout, Optional.of(kept), new Point(1500, 600)))
        .isEqualTo(new PivotPlace.OnKept())
        .matches(PivotPlace::isOnWoodToKeep);
    assertThat(PivotPlace.of(layout, Optional.empty(), new Point(1500, 600)))
        .isEqualTo(new OnWaste());
    double inner = 29 * 25.4;
    assertThat(PivotPlace.of(layout, Optional.empty(), new Point(1500 - inner + 4, 600)))
        .isEqualTo(new OnPiece(0));
    assertThat(PivotPlace.of(layout, Optional.empty(), new Point(1500 - inner + 8, 600)))
        .isEqualTo(new OnWaste());
  }

  private static Length mm(double value) {
    return Length.ofMillimetres(value);
  }

  private static void requireRight(Layout layout, CuttingOrder order) {
    List<Integer> all = new ArrayList<>();
    order.boards().forEach(board -> all.addAll(board.pieces()));
    assertThat(all).doesNotHaveDuplicates().hasSize(layout.placements().size());
    double half = layout.cutting().kerf().millimetres() / 2 - 1e-6;
    for (Rip rip : order.rips()) {
      for (Placement placement : layout.placements()) {
        Box box = placement.outline().box();
        double low = rip.upright() ? box.minX() : box.minY();
        double high = rip.upright() ? box.maxX() : box.maxY();
        double start = rip.upright() ? box.minY() : box.minX();
        double end = rip.upright() ? box.maxY() : box.maxX();
        boolean beside = end < rip.from() || start > rip.to();
        assertThat(beside || high <= rip.at() - half || low >= rip.at() + half).isTrue();
      }
    }
    for (Board board : order.boards()) {
      for (int piece : board.pieces()) {
        Box box = layout.placements().get(piece).outline().box();
        assertThat(box.minX()).isGreaterThanOrEqualTo(board.box().minX() - 1e-6);
        assertThat(box.maxX()).isLessThanOrEqualTo(board.box().maxX() + 1e-6);
        assertThat(box.minY()).isGreaterThanOrEqualTo(board.box().minY() - 1e-6);
        assertThat(box.maxY()).isLessThanOrEqualTo(board.box().maxY() + 1e-6);
      }
    }
  }

  /** A strip at the far end, and a quarter that is swung about the strip's middle. */
  @Test
  void order_whereAPivotLiesOnAPiece_cutsThatPieceLater() {
    Piece strip = Piece.of("S", "strip", new Strip(mm(300), mm(100)));
    Placement under = new Placement(strip, new Pose(1000, 600, 0));
    Placement swung = new Placement(SampleLayouts.QUARTER, new Pose(1000, 600, Math.PI));
    Layout layout = new Layout(SampleLayouts.SHEET, SampleLayouts.CUTTING, List.of(under, swung));

    CuttingOrder order = CuttingOrder.of(joined(layout), Optional.empty());

    List<Integer> pieces = order.boards().stream().flatMap(b -> b.pieces().stream()).toList();
    assertThat(pieces.indexOf(1)).isLessThan(pieces.indexOf(0));
    assertThat(order.lost()).isEmpty();
  }

  /** Two quarters, each swung about the middle of the other: one of the pivots must go. */
  @Test
  void order_ofTwoPiecesThatCarryEachOthersPivot_saysWhichIsLost() {
    double radius = 31 * 25.4;
    Placement one = new Placement(SampleLayouts.QUARTER, new Pose(1000, 600, Math.PI));
    Placement other = new Placement(SampleLayouts.QUARTER, new Pose(1000 - radius, 600, 0));
    Layout layout = new Layout(SampleLayouts.SHEET, SampleLayouts.CUTTING, List.of(one, other));

    CuttingOrder order = CuttingOrder.of(joined(layout), Optional.empty());

    assertThat(order.lost()).hasSize(1);
    CuttingOrder.LostPivot lost = order.lost().get(0);
    List<Integer> pieces = order.boards().get(0).pieces();
    assertThat(lost.piece()).isEqualTo(pieces.get(pieces.size() - 1));
    assertThat(lost.why()).isEqualTo(CuttingOrder.LostPivot.Why.CUT_AWAY);
  }

  /** Without the straight cuts that would part the pieces: a strip lies across them all. */
  private static Layout joined(Layout layout) {
    Piece bar = Piece.of("B", "bar", new Strip(mm(1500), mm(20)));
    List<Placement> all = new ArrayList<>(layout.placements());
    all.add(new Placement(bar, new Pose(900, 1180, 0)));
    return new Layout(layout.sheet(), layout.cutting(), all);
  }

  /**
   * An arc of 34 mm on 700 mm bows out by 34² / (8 x 700) = 0.2 mm: no pivot can be found for it,
   * and a straight line does; one of 120 mm by 2.6 mm.
   */
  @ParameterizedTest
  @CsvSource({"34, 0", "120, 2"})
  void arcsThatHardlyBow_areDrawnStraight(double along, int arcs) {
    AnnularSector sector = new AnnularSector(mm(700), mm(10), Angle.ofRadians(along / 700));
    Layout layout =
        new Layout(
            SampleLayouts.stack().sheet(),
            SampleLayouts.stack().cutting(),
            List.of(new Placement(Piece.of("R", "short", sector), new Pose(200, 200, 0))));

    assertThat(MarkingOut.of(layout, Optional.empty()).get(0).arcs()).hasSize(arcs);
  }

  // Trammel.

  @Test
  void trammel_withABit_runsOnTheWasteSide() {
    Length bit = Length.ofInches(0.25);
    Trammel.Hole outer = new Trammel.Hole("outer edge", Length.ofInches(32.5), Trammel.Keep.INSIDE);
    Trammel.Hole inner =
        new Trammel.Hole("inner edge", Length.ofInches(27.5), Trammel.Keep.OUTSIDE);
    Trammel.Hole track = new Trammel.Hole("track", Length.ofInches(30), Trammel.Keep.BOTH);

    assertThat(outer.bitMiddle(bit).inches()).isCloseTo(32.625, within(FINE));
    assertThat(inner.bitMiddle(bit).inches()).isCloseTo(27.375, within(FINE));
    assertThat(track.bitMiddle(bit).inches()).isCloseTo(30, within(FINE));
    assertThat(new Trammel("t", List.of(outer, inner, track)).reach()).isEqualTo(outer.radius());
  }

  @Test
  void marks_ofARing_haveItsMiddleAsPivotOnItsOwnWaste() {
    Piece ring =
        Piece.of(
            "R",
            "ring",
            new AnnularSector(
                Length.ofMillimetres(300), Length.ofMillimetres(90), Angle.ofDegrees(360)));
    Layout layout =
        new Layout(
            SampleLayouts.SHEET,
            SampleLayouts.CUTTING,
            List.of(new Placement(ring, new Pose(500, 500, 0))));
    PieceMarks mark = MarkingOut.of(layout, Optional.empty()).get(0);

    assertThat(mark.pivots()).hasSize(1);
    assertThat(mark.pivots().get(0).place()).isEqualTo(new OnWaste());
    assertThat(mark.placement().outline().outer().edges().get(0)).isInstanceOf(Arc.class);
  }

  /**
   * Two distances from corners fix a point on the side where the piece lies: the circles' crossing
   * is worked out here by Heron's height over the line of the corners.
   */
  @Test
  void pointStruckFromTwoCorners_isWhereTheArcsCross() {
    PieceMarks mark = MarkingOut.of(SampleLayouts.stack(), Optional.empty()).get(0);
    Point hole = mark.corners().get(0).plus(mark.corners().get(2)).times(0.5);
    List<Integer> all = List.of(0, 1, 2, 3);

    PieceMarks.Struck struck = mark.struck(hole, all);

    Point a = mark.corners().get(struck.from());
    Point b = mark.corners().get(struck.and());
    double base = a.distance(b);
    double da = a.distance(hole);
    double db = b.distance(hole);
    double along = (da * da - db * db + base * base) / (2 * base);
    double high = Math.sqrt(da * da - along * along);
    Point ahead = b.minus(a).times(1 / base);
    Point foot = a.plus(ahead.times(along));
    Point aside = new Point(-ahead.y(), ahead.x()).times(high);
    assertThat(Math.min(foot.plus(aside).distance(hole), foot.minus(aside).distance(hole)))
        .isLessThan(1e-6);
    assertThat(mark.placing(4)).isEqualTo(all);
    assertThat(mark.placing(2)).hasSize(2).contains(0);
  }
}
