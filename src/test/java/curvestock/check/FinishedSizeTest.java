package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Back to the finished size: tabs closed, arcs found in lines, growth undone. Figures by hand. */
class FinishedSizeTest {

  private static final Offset<Double> CLOSE = Offset.offset(1e-6);

  private static Trace.Straight line(double x1, double y1, double x2, double y2) {
    return new Trace.Straight(new Point(x1, y1), new Point(x2, y2));
  }

  private static Trace.Round arc(double x, double y, double radius, double first, double sweep) {
    return new Trace.Round(new Point(x, y), radius, Math.toRadians(first), Math.toRadians(sweep));
  }

  private static TraceLoop polygon(Point... corners) {
    List<Trace> edges = new ArrayList<>();
    for (int i = 0; i < corners.length; i++) {
      edges.add(new Trace.Straight(corners[i], corners[(i + 1) % corners.length]));
    }
    return new TraceLoop(edges);
  }

  private static Point point(double x, double y) {
    return new Point(x, y);
  }

  private static TraceShape finished(CutForm form, TraceLoop... loops) throws CheckException {
    List<Chain> chains = new ArrayList<>();
    for (TraceLoop loop : loops) {
      chains.add(new Chain(loop.edges(), true));
    }
    return new FinishedSize(form).of(chains);
  }

  private static void assertAt(Point point, double x, double y) {
    assertThat(point.distance(new Point(x, y)))
        .as("%s, not (%s, %s)", point, x, y)
        .isLessThan(1e-6);
  }

  // Growth by half a kerf.

  private static final CutForm TWO = new CutForm(2, 0, 0, 0);

  /** The path of a tool of radius 2 about a plate 40 x 30: its sides and four quarter arcs. */
  private static TraceLoop aroundPlate(double x, double y) {
    return new TraceLoop(
        List.of(
            line(x, y - 2, x + 40, y - 2),
            arc(x + 40, y, 2, -90, 90),
            line(x + 42, y, x + 42, y + 30),
            arc(x + 40, y + 30, 2, 0, 90),
            line(x + 40, y + 32, x, y + 32),
            arc(x, y + 30, 2, 90, 90),
            line(x - 2, y + 30, x - 2, y),
            arc(x, y, 2, 180, 90)));
  }

  @Test
  void grownPlate_isTakenBackToItsCorners() throws Exception {
    TraceShape plate = finished(TWO, aroundPlate(5, 7));

    assertThat(plate.outer().area()).isCloseTo(1200, CLOSE);
    assertThat(plate.outer().edges()).hasSize(4);
    assertAt(plate.outer().edges().get(0).start(), 5, 7);
    assertAt(plate.outer().edges().get(1).end(), 45, 37);
  }

  @Test
  void grownDisc_andItsHole_getTheirRadiiBack() throws Exception {
    TraceShape ring =
        finished(
            TWO,
            new TraceLoop(List.of(arc(9, 8, 52, 0, 360))),
            new TraceLoop(List.of(arc(9, 8, 28, 0, -360))));

    assertThat(((Trace.Round) ring.outer().edges().get(0)).radius()).isCloseTo(50, CLOSE);
    assertThat(((Trace.Round) ring.holes().get(0).edges().get(0)).radius()).isCloseTo(30, CLOSE);
    assertAt(((Trace.Round) ring.outer().edges().get(0)).centre(), 9, 8);
  }

  /** An L of two legs: its inside corner has no arc, the moved lines cross at (13, 13). */
  @Test
  void grownInsideCorner_isWhereTheLinesCross() throws Exception {
    TraceLoop around =
        new TraceLoop(
            List.of(
                line(0, -3, 60, -3),
                arc(60, 0, 3, -90, 90),
                line(63, 0, 63, 10),
                arc(60, 10, 3, 0, 90),
                line(60, 13, 13, 13),
                line(13, 13, 13, 50),
                arc(10, 50, 3, 0, 90),
                line(10, 53, 0, 53),
                arc(0, 50, 3, 90, 90),
                line(-3, 50, -3, 0),
                arc(0, 0, 3, 180, 90)));
    TraceShape angle = finished(new CutForm(3, 0, 0, 0), around);

    assertThat(angle.outer().area()).isCloseTo(60 * 10 + 10 * 40, CLOSE);
    assertThat(angle.outer().edges()).hasSize(6);
    assertThat(angle.outer().edges()).anySatisfy(edge -> assertAt(edge.end(), 10, 10));
  }

  /** A quarter ring between radii 50 and 100, grown by 3; its ends turn by 90° each. */
  @Test
  void grownSector_hasItsRadiiAndSweepBack() throws Exception {
    TraceLoop around =
        new TraceLoop(
            List.of(
                line(50, -3, 100, -3),
                arc(100, 0, 3, -90, 90),
                arc(0, 0, 103, 0, 90),
                arc(0, 100, 3, 90, 90),
                line(-3, 100, -3, 50),
                arc(0, 50, 3, 180, 90),
                arc(0, 0, 47, 90, -90),
                arc(50, 0, 3, 180, 90)));
    TraceShape sector = finished(new CutForm(3, 0, 0, 0), around);

    assertThat(sector.outer().area()).isCloseTo(Math.PI / 4 * (100 * 100 - 50 * 50), CLOSE);
    assertThat(sector.outer().edges()).hasSize(4);
    assertThat(sector.outer().edges())
        .filteredOn(edge -> edge instanceof Trace.Round)
        .extracting(edge -> ((Trace.Round) edge).radius())
        .allSatisfy(radius -> assertThat(radius).isIn(100.0, 50.0));
  }

  /** What is taken back too little stays on: the plate with round corners, by Steiner's formula. */
  @Test
  void grown_byMoreThanStated_isStillTooLarge() throws Exception {
    assertThat(finished(new CutForm(1.9, 0, 0, 0), aroundPlate(5, 7)).outer().area())
        .isCloseTo(1200 + 140 * 0.1 + Math.PI * 0.01, CLOSE);
  }

  @ParameterizedTest
  @ValueSource(doubles = {2.01, 2.1, 3, 6})
  void grown_byLessThanStated_isRefused(double stated) {
    assertThatThrownBy(() -> finished(new CutForm(stated, 0, 0, 0), aroundPlate(5, 7)))
        .isInstanceOf(CheckException.class);
  }

  @Test
  void grown_notAtAll_isRefusedWithBothSizes() {
    TraceLoop plain = polygon(point(0, 0), point(40, 0), point(40, 30), point(0, 30));

    // The corners of the drawn plate lie 2·√2 from those of the one that is 2 smaller all round.
    assertThatThrownBy(() -> finished(TWO, plain))
        .hasMessageContaining("the outline is grown by 2.8284 mm, but 2.0000 mm is stated");
  }

  @Test
  void grown_moreThanThereIs_isRefused() {
    assertThatThrownBy(() -> finished(TWO, new TraceLoop(List.of(arc(0, 0, 1.5, 0, 360)))))
        .hasMessageContaining("too small to be offset by half a kerf");
    assertThatThrownBy(() -> finished(TWO, new TraceLoop(List.of(arc(0, 0, 2, 0, 360)))))
        .hasMessageContaining("does not have the form of one offset by half a kerf");
    assertThatThrownBy(
            () -> finished(TWO, new TraceLoop(List.of(line(0, 0, 50, 0), arc(25, 0, 25, 0, 180)))))
        .isInstanceOf(CheckException.class);
  }

  @Test
  void grown_withOneCornerPulledOut_isRefused() {
    List<Trace> edges = new ArrayList<>(aroundPlate(0, 0).edges());
    edges.set(4, line(40, 32, 0, 32.05));

    assertThatThrownBy(() -> finished(TWO, new TraceLoop(edges)))
        .isInstanceOf(CheckException.class);
  }

  /**
   * A plate with a flat peak of 10° on it, grown and drawn as lines: the round corners are arcs of
   * six lines, that of the peak a single short one. Taken back, its five corners and its area by
   * hand: 60 x 30 and a triangle of half 60 x 30·tan 5°.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 2, 4})
  void grownOutlineDrawnAsLines_isTakenBackToItsCorners(double grown) throws Exception {
    double peak = 30 * Math.tan(Math.toRadians(5));
    TraceLoop plate =
        polygon(point(0, 0), point(60, 0), point(60, 30), point(30, 30 + peak), point(0, 30));
    List<Trace> edges = plate.edges();
    List<Point> drawn = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      Trace before = edges.get((i + 4) % 5);
      Point corner = edges.get(i).start();
      Point a = before.startDirection();
      Point b = edges.get(i).startDirection();
      double turn = Math.atan2(a.cross(b), a.dot(b));
      double first = new Point(a.y(), -a.x()).angle();
      int steps = turn > 0.3 ? 6 : 1;
      for (int k = 0; k <= steps; k++) {
        drawn.add(corner.plus(Point.polar(grown, first + turn * k / steps)));
      }
    }
    TraceLoop lines = polygon(drawn.toArray(Point[]::new));
    TraceShape found = finished(new CutForm(grown, 0, 0, 0.05), lines);

    assertThat(found.outer().edges()).hasSize(5);
    assertThat(found.outer().area()).isCloseTo(1800 + 30 * peak, Offset.offset(1e-4));
    assertThat(found.outer().edges()).anySatisfy(e -> assertAt(e.start(), 30, 30 + peak));
    assertThatThrownBy(() -> finished(new CutForm(grown + 0.2, 0, 0, 0.05), lines))
        .isInstanceOf(CheckException.class);
    // Without the word that arcs are drawn as lines, the corners are not corners.
    assertThatThrownBy(() -> finished(new CutForm(grown, 0, 0, 0), lines))
        .isInstanceOf(CheckException.class);
  }

  // Arcs found in lines.

  private static TraceLoop polyline(Outline outline, double steps) {
    List<Point> corners = new ArrayList<>();
    for (Trace edge : TraceShape.of(outline).outer().edges()) {
      int parts = edge instanceof Trace.Round ? (int) steps : 1;
      for (int i = 0; i < parts; i++) {
        corners.add(edge.at((double) i / parts));
      }
    }
    return polygon(corners.toArray(Point[]::new));
  }

  private static Outline sector(double radius, double width, double degrees) {
    return new curvestock.piece.AnnularSector(
            curvestock.units.Length.ofMillimetres(radius),
            curvestock.units.Length.ofMillimetres(width),
            curvestock.units.Angle.ofDegrees(degrees))
        .outline();
  }

  @ParameterizedTest
  @CsvSource({"90, 20", "90, 3", "90, 57", "200, 40", "30, 5", "340, 90"})
  void lines_ofASector_areItsTwoArcsAgain(double degrees, int steps) throws Exception {
    // The longest step strays by r(1 − cos(s/2)).
    double strays = 120 * (1 - Math.cos(Math.toRadians(degrees / steps / 2)));
    TraceLoop drawn = polyline(sector(100, 40, degrees).at(new Pose(3, 4, 1)), steps);
    CutForm form = new CutForm(0, 0, 0, strays + 0.0001);

    for (int start = 0; start < 8; start++) {
      List<Trace> turned = new ArrayList<>(drawn.edges());
      java.util.Collections.rotate(turned, start * 5);
      TraceShape found = finished(form, new TraceLoop(turned));
      assertThat(found.outer().edges()).hasSize(4);
      assertThat(found.outer().area())
          .isCloseTo(Math.toRadians(degrees) * 100 * 40, Offset.offset(1e-4));
    }
    // Half as much straying allowed, and they stay lines.
    CutForm finer = new CutForm(0, 0, 0, Math.max(0.0001, strays / 2 - 0.002));
    assertThat(finished(finer, drawn).outer().edges()).hasSizeGreaterThan(steps);
  }

  @ParameterizedTest
  @ValueSource(ints = {4, 5, 7, 36, 100})
  void lines_ofARing_areAWholeCircle(int steps) throws Exception {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      corners.add(new Point(9, 8).plus(Point.polar(50, 0.3 + 2 * Math.PI * i / steps)));
    }
    double strays = 50 * (1 - Math.cos(Math.PI / steps));
    TraceLoop drawn = polygon(corners.toArray(Point[]::new));
    Trace.Round circle =
        (Trace.Round) finished(new CutForm(0, 0, 0, strays + 0.001), drawn).outer().edges().get(0);

    assertThat(circle.isWholeCircle()).isTrue();
    assertThat(circle.radius()).isCloseTo(50, CLOSE);
    assertAt(circle.centre(), 9, 8);
    assertAt(circle.start(), corners.get(0).x(), corners.get(0).y());
    TraceShape other = finished(new CutForm(0, 0, 0, 0.0001), drawn);
    assertThat(other.outer().edges()).hasSize(steps);
    // Run the other way, as holes are.
    TraceLoop back = ArcsFromLines.of(drawn.turned(false), strays + 0.001, 0);
    assertThat(back.area()).isCloseTo(-2500 * Math.PI, CLOSE);
  }

  /**
   * Of 36 corners on a circle of 50 two are left out: that line is 2·50·sin 15° = 25.88 long and
   * strays by 1.70, the others by 0.19.
   */
  @ParameterizedTest
  @CsvSource({"26, true", "25.87, false", "0, false"})
  void line_overATab_mayStrayFurther(double gap, boolean circle) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < 36; i++) {
      if (i != 17 && i != 18) {
        corners.add(Point.polar(50, Math.toRadians(10 * i)));
      }
    }
    TraceLoop found = ArcsFromLines.of(polygon(corners.toArray(Point[]::new)), 0.2, gap);

    assertThat(found.edges().size() == 1).isEqualTo(circle);
    assertThat(ArcsFromLines.of(polygon(corners.toArray(Point[]::new)), 1.8, 0).edges()).hasSize(1);
  }

  /** A line of 70° is longer than the radius: too much of the circle to stand for a tab. */
  @Test
  void line_overAFifthOfACircle_isNoTab() {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i <= 29; i++) {
      corners.add(Point.polar(50, Math.toRadians(10 * i)));
    }
    TraceLoop drawn = polygon(corners.toArray(Point[]::new));

    assertThat(ArcsFromLines.of(drawn, 0.2, 60).edges()).hasSizeGreaterThan(1);
    assertThat(ArcsFromLines.of(drawn, 0.2, 60).edges())
        .anyMatch(edge -> edge instanceof Trace.Straight && edge.length() > 57);
  }

  @Test
  void lines_thatAreStraightOrCorners_stayAsTheyAre() throws Exception {
    TraceLoop cut =
        polygon(
            point(0, 0),
            point(20, 0),
            point(40, 0),
            point(60, 0),
            point(80, 0),
            point(80, 25),
            point(75, 30),
            point(0, 30));
    TraceShape shape = finished(new CutForm(0, 0, 0, 0.05), cut);

    assertThat(shape.outer().edges()).hasSize(8).allMatch(e -> e instanceof Trace.Straight);
    assertThat(shape.outer().area()).isCloseTo(80 * 30 - 12.5, CLOSE);
  }

  @Test
  void loop_withATrueArc_isLeftAlone() {
    TraceLoop loop = new TraceLoop(List.of(line(0, 0, 10, 0), arc(5, 0, 5, 0, 180)));

    assertThat(ArcsFromLines.of(loop, 1, 0)).isSameAs(loop);
  }

  @Test
  void lines_withOneCornerOffTheCircle_areTwoArcs() throws Exception {
    TraceLoop drawn = polyline(sector(100, 40, 90), 20);
    List<Point> corners = new ArrayList<>(drawn.edges().stream().map(Trace::start).toList());
    Point moved = corners.get(10);
    corners.set(10, moved.times(1 + 0.01 / moved.norm()));
    TraceLoop dented = polygon(corners.toArray(Point[]::new));

    assertThat(finished(new CutForm(0, 0, 0, 0.1), drawn).outer().edges()).hasSize(4);
    assertThat(finished(new CutForm(0, 0, 0, 0.1), dented).outer().edges()).hasSizeGreaterThan(4);
  }

  // Tabs.

  private static final CutForm TABS = new CutForm(0, 2, 10, 0);

  private static Chain open(Trace... edges) {
    return new Chain(List.of(edges), false);
  }

  @Test
  void tabs_onLinesAndArcs_areClosed() throws Exception {
    // A half disc of radius 50: a gap of 10 in the line, one of 0.1 rad in the arc.
    double half = Math.toDegrees(0.05);
    Chain right = open(line(5, 0, 50, 0), arc(0, 0, 50, 0, 90 - half));
    Chain left = open(arc(0, 0, 50, 90 + half, 90 - half), line(-50, 0, -5, 0));
    TraceShape shape = new FinishedSize(TABS).of(List.of(right, left));

    assertThat(shape.outer().area()).isCloseTo(1250 * Math.PI, CLOSE);
    assertThat(shape.outer().edges()).hasSize(6);
    TraceLoop joined = Joined.of(shape.outer());
    assertThat(joined.edges()).hasSize(2);
  }

  @Test
  void tabs_longerMoreOrElsewhereThanStated_areRefused() {
    FinishedSize two = new FinishedSize(TABS);
    Chain right = open(line(5.1, 0, 50, 0), arc(0, 0, 50, 0, 180));
    Chain whole = open(line(5, 0, 50, 0), arc(0, 0, 50, 0, 180), line(-50, 0, -5, 0));
    Chain longer = open(line(5.02, 0, 50, 0), arc(0, 0, 50, 0, 180), line(-50, 0, -5, 0));
    Chain tab = open(line(0, 0, 1, 0));

    assertThatThrownBy(() -> two.of(List.of(right))).hasMessageContaining("that is no tab");
    assertThatThrownBy(() -> two.of(List.of(longer)))
        .hasMessage(
            "the path has a gap of 10.0200 mm that is no tab of 10.0000 mm on a line that goes"
                + " straight on");
    assertThatThrownBy(() -> two.of(List.of(tab, tab, tab, tab, tab, tab, tab)))
        .hasMessage("the path has 7 gaps, but there are to be at most 6");
    assertThatThrownBy(() -> new FinishedSize(CutForm.FINISHED).of(List.of(whole)))
        .hasMessage("the path is open: each part must be closed");
  }

  @ParameterizedTest
  @CsvSource({
    // A line along +x ends in (0, 0); the next starts at (x, y) and runs at an angle.
    "9, 0, 0, true",
    "10.009, 0, 0, true",
    "10.02, 0, 0, false",
    "9, 0, 24, true",
    "9, 0, -24, true",
    "9, 0, 26, false",
    "9, 0, 180, false",
    "-9, 0, 0, false",
    "8, 3.6, 24, true",
    "8, 3.8, 25, false",
    "0, 9, 90, false",
    "0, 0, 0, false"
  })
  void tab_isAGapAcrossWhichALineGoesOn(double x, double y, double degrees, boolean isTab) {
    Bridges bridges = new Bridges(TABS, SharedLines.NONE);
    Point ahead = Point.polar(20, Math.toRadians(degrees));
    Chain before = open(line(-20, 0, 0, 0));
    Chain after = open(line(x, y, x + ahead.x(), y + ahead.y()));

    assertThat(bridges.join(before, after)).isEqualTo(isTab);
  }

  @Test
  void chain_reversed_runsBack() {
    Chain chain = open(line(0, 0, 5, 0), line(5, 0, 5, 7));

    assertThat(chain.reversed().start()).isEqualTo(new Point(5, 7));
    assertThat(chain.reversed().end()).isEqualTo(new Point(0, 0));
    assertThat(chain.reversed().closed()).isFalse();
    assertThat(chain.last()).isEqualTo(line(5, 0, 5, 7));
  }

  @Test
  void shape_ofClosedAndOpenChains_hasBothAsLoops() throws Exception {
    Chain hole = new Chain(List.of(arc(0, 20, 5, 0, 360)), true);
    Chain outer = open(line(5, 0, 50, 0), arc(0, 0, 50, 0, 180), line(-50, 0, -5, 0));
    TraceShape shape = new FinishedSize(TABS).of(List.of(hole, outer));

    assertThat(shape.holes()).hasSize(1);
    assertThat(shape.outer().area()).isCloseTo(1250 * Math.PI, CLOSE);
  }

  // Parts joined.

  @Test
  void joined_partsOfEdges_areWholeEdgesFromACorner() {
    TraceLoop cutUp =
        new TraceLoop(
            List.of(
                line(30, 0, 50, 0),
                arc(0, 0, 50, 0, 60),
                arc(0, 0, 50, 60, 90),
                arc(0, 0, 50, 150, 30),
                line(-50, 0, 10, 0),
                line(10, 0, 10.0005, 0),
                line(10.0005, 0, 30, 0)));
    TraceLoop joined = Joined.of(cutUp);

    assertThat(joined.edges()).hasSize(2);
    assertThat(joined.area()).isCloseTo(1250 * Math.PI, CLOSE);
    assertThat(joined.edges()).anyMatch(e -> e.length() == 100);
  }

  @Test
  void joined_circleInParts_isAWholeCircle() {
    TraceLoop circle =
        Joined.of(
            new TraceLoop(
                List.of(arc(3, 4, 50, 10, 100), arc(3, 4, 50, 110, 130), arc(3, 4, 50, 240, 130))));

    assertThat(circle.edges()).hasSize(1);
    assertThat(((Trace.Round) circle.edges().get(0)).isWholeCircle()).isTrue();
    assertAt(((Trace.Round) circle.edges().get(0)).centre(), 3, 4);
    assertThat(circle.edges().get(0).length()).isCloseTo(100 * Math.PI, CLOSE);
  }

  @Test
  void joined_whatOnlyNearlyContinues_staysApart() {
    // A kink of 0.1 in 50; another radius; the other way round; back along itself.
    assertThat(
            Joined.of(polygon(point(0, 0), point(50, 0.1), point(100, 0), point(50, 60))).edges())
        .hasSize(4);
    assertThat(
            Joined.of(
                    new TraceLoop(
                        List.of(
                            arc(0, 0, 50, 0, 90), arc(0, -1, 51, 90, 90), line(-51, -1, 50, 0))))
                .edges())
        .hasSize(3);
    assertThat(
            Joined.of(
                    new TraceLoop(
                        List.of(
                            arc(0, 0, 50, 0, 90),
                            arc(0, 100, 50, -90, -90),
                            line(-50, 100, 50, 0))))
                .edges())
        .hasSize(3);
    assertThat(
            Joined.of(
                    new TraceLoop(
                        List.of(
                            line(0, 0, 50, 0),
                            line(50, 0, 20, 0),
                            line(20, 0, 0, 30),
                            line(0, 30, 0, 0))))
                .edges())
        .hasSize(4);
  }

  @Test
  void joined_loopOfSplinters_isLeftAsItIs() {
    TraceLoop tiny = polygon(point(0, 0), point(0.0005, 0), point(0, 0.0005));

    assertThat(Joined.of(tiny)).isEqualTo(tiny);
  }
}
