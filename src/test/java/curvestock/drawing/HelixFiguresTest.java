package curvestock.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.app.Workshop;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Words;
import curvestock.geometry.Point;
import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.build.Bridge;
import curvestock.helix.spec.Ascent;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names in the figures of a helix stand where they can be read. */
class HelixFiguresTest {

  /** Two tracks on rods, with leads so short that their ends lie over the ring; invented. */
  private static final String SHORT_LEADS =
      """
      curvestock: 2
      title: Two tracks (invented)
      invented: true
      units: mm
      currency: EUR
      sheets:
        - {name: birch, size: 2500x1250 mm, thickness: 9, price: 62}
      cutting: {kerf: 3, margin: 10}
      helix:
        scale: N
        tracks: 2
        inner-track: 400
        track-spacing: 33
        width: 105
        segments-per-turn: 4
        rise-per-turn: 65
        turns: 8.5
        supports: {rods: {}}
      """;

  private static final HelixOrder ORDER =
      Workshop.readJob(SHORT_LEADS, "two.yaml").structure().orElseThrow();

  private static HelixTitle title() {
    return new HelixTitle("Two tracks", ORDER.plan().style(), true);
  }

  private static List<Words> words(Paper paper) {
    return paper.things().stream().filter(Words.class::isInstance).map(Words.class::cast).toList();
  }

  private static double wide(Words words) {
    return words.size()
        * (words.bold() ? TextWidth.boldEms(words.text()) : TextWidth.ems(words.text()));
  }

  private static double left(Words words) {
    return words.at().x()
        - (words.anchor() == Anchor.START ? 0 : words.anchor() == Anchor.MIDDLE ? 0.5 : 1)
            * wide(words);
  }

  /** They stood upon the ring's edges. */
  @Test
  void namesOfShortLeads_standBesideTheRing() {
    double outer = ORDER.plan().spec().ground().outerEdge().millimetres();
    List<Words> ends =
        words(HelixPlanDrawing.large(ORDER, title(), 56)).stream()
            .filter(words -> words.text().matches("(entry|exit), .*"))
            .toList();

    assertThat(ends).hasSize(2);
    for (Words end : ends) {
      assertThat(IntStream.rangeClosed(0, 10))
          .allSatisfy(
              i -> {
                double x = left(end) + wide(end) * i / 10;
                assertThat(new Point(x, end.at().y()).norm()).isGreaterThan(outer);
              });
    }
  }

  /** Numbers of pieces were moved onto the joint at a quarter of the turn. */
  @Test
  void numbersOfPieces_inTheSideView_standApartFromJoints() {
    List<Words> all = words(HelixSideDrawing.figure(ORDER.plan(), title(), 3, 60));
    List<Words> numbers = all.stream().filter(w -> w.bold() && w.text().matches("\\d+")).toList();
    List<Words> joints = all.stream().filter(w -> w.text().matches("J\\d+")).toList();

    assertThat(numbers).hasSize(34);
    assertThat(joints).hasSize(33);
    for (Words number : numbers) {
      for (Words joint : joints) {
        boolean apart =
            left(number) > left(joint) + wide(joint)
                || left(joint) > left(number) + wide(number)
                || Math.abs(number.at().y() - joint.at().y())
                    > 0.36 * (number.size() + joint.size());
        assertThat(apart).as(number + " on " + joint).isTrue();
      }
    }
  }

  /** Pushed aside by measures, numbers stood over the neighbour, and two over each other. */
  @ParameterizedTest
  @ValueSource(doubles = {24, 28, 36, 48, 60, 84})
  void numbersOfPieces_inTheSideView_standOverTheirOwn(double letters) {
    HelixPlan plan =
        new SpecBuilder()
            .segment(45)
            .circle(51, 11.5)
            .ascent(Ascent.ofTurnsAndRise(2.5, SpecBuilder.inches(7.5)))
            .plan();
    double run = plan.climb().runPerTurn().millimetres();
    List<Words> all = words(HelixSideDrawing.figure(plan, title(), 3, letters));

    assertThat(plan.roadbed().pieces())
        .hasSize(20)
        .allSatisfy(
            piece -> {
              Words number =
                  all.stream()
                      .filter(w -> w.bold() && w.text().equals(piece.number()))
                      .findFirst()
                      .orElseThrow();
              double turn = Math.floor((piece.from() + piece.to()) / 2 / run) * run;
              assertThat(number.at().x()).isBetween(piece.from() - turn, piece.to() - turn);
            });
  }

  /** They hid the numbers' edges: a ring so narrow has its numbers inside. */
  @Test
  void numbersOfTurns_ofANarrowRing_standInside() {
    Paper turns = HelixPlanDrawing.turns(ORDER, title(), 56);
    List<Words> first =
        words(turns).stream().filter(w -> w.bold() && w.text().matches("[1234]")).toList();
    double middle = first.stream().mapToDouble(w -> w.at().x()).average().orElseThrow();
    double line =
        words(turns).stream()
            .filter(w -> w.text().equals("entry"))
            .mapToDouble(w -> w.at().x() - middle)
            .findFirst()
            .orElseThrow();

    assertThat(first).hasSize(4);
    // At 45° they would stand at 0.7 of the ring's radius if they stood on it.
    assertThat(first)
        .allSatisfy(w -> assertThat(Math.abs(w.at().x() - middle)).isLessThan(0.55 * line));
  }

  /** They lay exactly upon the edge's line, where nobody saw them. */
  @Test
  void edgeStrips_lieOutsideTheEdge_andStandInTheLegend() {
    HelixPlan plan =
        Workshop.readJob(
                """
                curvestock: 2
                title: Strips (invented)
                invented: true
                units: in
                sheets: [{name: ply, size: 4x8 ft, thickness: 1/2, price: 68}]
                cutting: {kerf: 1/8, margin: 1/4}
                helix: {scale: HO, turns: 3, radius: 29, width: 4, rise-per-turn: 4 1/2,
                        segments-per-turn: 4, supports: {foot-height: 2}}
                """,
                "strips.yaml")
            .structure()
            .orElseThrow()
            .plan();
    double edge = plan.spec().ground().outerEdge().millimetres();
    PlanFigure figure = new PlanFigure(plan, 1, Point.ORIGIN);
    List<Bridge> outer =
        plan.stations().bridges().stream()
            .filter(bridge -> bridge.form() == Bridge.Form.STRIP && bridge.outer())
            .toList();

    assertThat(outer).isNotEmpty();
    for (Bridge strip : outer) {
      double thick = strip.cut(plan.style()).breadth().millimetres();
      assertThat(figure.bridge(strip))
          .extracting(each -> each.start().norm())
          .allSatisfy(radius -> assertThat(radius).isBetween(edge - 1e-6, edge + thick + 1e-6))
          .anySatisfy(radius -> assertThat(radius).isCloseTo(edge + thick, within(1e-6)));
    }
    assertThat(HelixPlanDrawing.svg(plan, title()).replaceAll("<[^>]*>\\s*", " "))
        .contains("Dark bands outside the edge: edge strips");
  }
}
