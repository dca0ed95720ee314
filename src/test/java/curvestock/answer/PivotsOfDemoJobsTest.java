package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.handwork.ArcMark;
import curvestock.handwork.CuttingOrder.Board;
import curvestock.handwork.MarkingOut;
import curvestock.handwork.PieceMarks;
import curvestock.layout.Layout;
import curvestock.plan.Plan;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Every demo job's sheets cut piece by piece, with an eye on what the trammel's nail stands in. */
class PivotsOfDemoJobsTest {

  private static final GeometryFactory JTS = new GeometryFactory();

  static List<Path> jobs() {
    return DemoPlans.files();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void pivots_inTheOrderOfCutting_standInWoodOrAreSaidToBeGone(Path file) {
    cut(DemoPlans.plan(file));
  }

  /** With a search, whose layouts are less regular. */
  @ParameterizedTest
  @ValueSource(strings = {"default", "first-helix-quarter", "spare-room"})
  void pivots_ofASearchedLayout_standInWoodOrAreSaidToBeGone(String name) {
    cut(DemoPlans.searched(Path.of("demo-data", name + ".yaml")));
  }

  private static void cut(Plan plan) {
    List<HandCuts> sheets = HandCuts.of(plan);
    for (int i = 0; i < sheets.size(); i++) {
      cut(plan, plan.layouts().get(i), sheets.get(i));
    }
  }

  private static void cut(Plan plan, Layout layout, HandCuts hand) {
    Box sheet = layout.sheet().outline().box();
    List<PieceMarks> marks = MarkingOut.of(layout, hand.kept());
    String said = String.join("\n", hand.pivots(Figures.of(plan.job())));
    for (Board board : hand.order().boards()) {
      List<Outline> gone = new ArrayList<>();
      for (int piece : board.pieces()) {
        PieceMarks mark = marks.get(piece);
        for (ArcMark arc : mark.isSwung() ? mark.pivots() : List.<ArcMark>of()) {
          Point nail = arc.pivot().plus(new Point(sheet.minX(), sheet.minY()));
          boolean here = board.box().distance(Box.of(arc.pivot(), arc.pivot())) < 1e-6;
          boolean off = !layout.sheet().outline().contains(nail);
          boolean cutOut = gone.stream().anyMatch(outline -> outline.contains(nail));
          boolean firm = !off && here && !cutOut && isFirm(layout, board, gone, piece, nail);
          if (!off && !firm) {
            assertThat(said)
                .containsPattern(
                    "Pieces? [^:]*\\b" + hand.labels().get(piece) + "\\b[^:]*: by the time");
          }
          boolean onPiece =
              layout.placements().stream().anyMatch(each -> each.outline().contains(nail));
          if (onPiece) {
            assertThat(arc.place().isOnWoodToKeep()).isTrue();
          }
        }
        gone.add(layout.placements().get(piece).outline());
      }
    }
  }

  /** A web narrower than this is sure to give, in millimetres. */
  private static final double WEAK = 20;

  /**
   * Whether wood that is left of the board holds the nail to the piece, by JTS (a general-purpose
   * geometry library): what of it lies farther than half a weak web from every cut and edge.
   */
  private static boolean isFirm(
      Layout layout, Board board, List<Outline> gone, int piece, Point nail) {
    Box sheet = layout.sheet().outline().box();
    Box part = board.box();
    Geometry wood =
        JTS.toGeometry(
            new Envelope(
                part.minX() + sheet.minX(),
                part.maxX() + sheet.minX(),
                part.minY() + sheet.minY(),
                part.maxY() + sheet.minY()));
    wood = wood.intersection(polygon(layout.sheet().outline()));
    for (Outline outline : gone) {
      wood = wood.difference(polygon(outline));
    }
    Geometry firm = wood.buffer(-WEAK / 2);
    Geometry pin = JTS.createPoint(new Coordinate(nail.x(), nail.y())).buffer(3 * WEAK);
    Geometry wanted = polygon(layout.placements().get(piece).outline());
    for (int i = 0; i < firm.getNumGeometries(); i++) {
      Geometry web = firm.getGeometryN(i);
      if (web.intersects(pin) && web.intersects(wanted)) {
        return true;
      }
    }
    return false;
  }

  private static Geometry polygon(Outline outline) {
    List<Coordinate> ring = new ArrayList<>();
    for (Edge edge : outline.outer().edges()) {
      for (int i = 0; i < 60; i++) {
        Point point = i == 0 ? edge.start() : edge.part(0, i / 60.0).end();
        ring.add(new Coordinate(point.x(), point.y()));
      }
    }
    ring.add(ring.get(0));
    return JTS.createPolygon(ring.toArray(Coordinate[]::new)).buffer(0);
  }
}
