package curvestock.helix.build;

import static curvestock.helix.SpecBuilder.inches;
import static org.assertj.core.api.Assertions.assertThat;

import curvestock.answer.DemoPlans;
import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.build.SupportRow.Part;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.Adjustments;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.SupportPlan;
import curvestock.helix.verdict.Fact;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.helix.verdict.VerdictWords;
import curvestock.units.Angle;
import curvestock.units.LengthStyle;
import curvestock.units.Text;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Supports of the leads, seen from above, measured by JTS (a general-purpose geometry library)
 * against the roadbed of the turns that they pass and against all other supports.
 */
class LeadSupportsTest {

  /** What hand work needs: a quarter of an inch, our own choice. */
  private static final double CLEAR = 6.35;

  /** Chords of arcs lie this far inside them at most, in millimetres. */
  private static final double FLAT = 0.05;

  private static final GeometryFactory JTS = new GeometryFactory();

  static List<Path> jobs() {
    return DemoPlans.files();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void supportsOfLeads_ofDemoJobs_standClearOfTheRing(Path file) {
    DemoPlans.job(file).structure().map(HelixOrder::plan).ifPresent(LeadSupportsTest::measure);
  }

  /** Leads of all kinds: on blocks and rods, circles and ovals, both directions. */
  @ParameterizedTest
  @CsvSource({
    "0, 12, 2.5, true, COUNTER_CLOCKWISE",
    "0, 12, 2.25, false, CLOCKWISE",
    "0, 8, 3, true, CLOCKWISE",
    "12, 16, 2.5, true, COUNTER_CLOCKWISE",
    "20, 16, 3, true, CLOCKWISE",
    "20, 14, 2, false, COUNTER_CLOCKWISE"
  })
  void supportsOfLeads_ofAnyHelix_standClearOfTheRing(
      double straight, int perTurn, double turns, boolean blocks, Direction direction) {
    HelixPlan plan =
        new SpecBuilder()
            .ground(
                new curvestock.helix.spec.GroundPlan(
                    inches(26),
                    Optional.empty(),
                    inches(2.25),
                    inches(straight),
                    direction,
                    Angle.ofDegrees(0)))
            .ends(EndPlan.level(inches(24), inches(36)))
            .ascent(Ascent.ofTurnsAndRise(turns, inches(4.2)))
            .supports(
                blocks ? SpecBuilder.blocks(perTurn) : SpecBuilder.rods(perTurn, Optional.empty()))
            .plan();
    assertThat(plan.stations().exit()).isNotEmpty();
    measure(plan);
  }

  private static HelixPlan crowded(
      boolean blocks, double straight, int perTurn, double turns, double lead, double first) {
    SupportPlan supports =
        blocks ? SpecBuilder.blocks(perTurn) : SpecBuilder.rods(perTurn, Optional.empty());
    return crowded(
        first < 0 ? supports : supports.startingAt(Optional.of(inches(first))),
        straight,
        turns,
        lead);
  }

  private static HelixPlan crowded(
      SupportPlan supports, double straight, double turns, double lead) {
    return new SpecBuilder()
        .ground(
            new curvestock.helix.spec.GroundPlan(
                inches(26),
                Optional.empty(),
                inches(2.25),
                inches(straight),
                Direction.COUNTER_CLOCKWISE,
                Angle.ofDegrees(0)))
        .ends(EndPlan.level(inches(24), inches(lead)))
        .ascent(Ascent.ofTurnsAndRise(turns, inches(4.2)))
        .supports(supports)
        .plan();
  }

  /**
   * Where room is short: blocks of the ring 5.5 mm from the lead's wood, rods 3.5 mm; a block under
   * the exit 6.2 mm from one of the ring that stands at another angle; the exit's lead over the
   * entry's, where its blocks would stand in the entry's wood.
   */
  @ParameterizedTest
  @CsvSource({
    "true, 0, 20, 2.5, 22, -1",
    "false, 0, 8, 2.5, 22, -1",
    "true, 0, 6, 2.25, 22, 1.1",
    "true, 0, 20, 2.75, 36, 1.1",
    "true, 0, 24, 2.75, 36, -1"
  })
  void supportsNearLeads_whereRoomIsShort_areMovedOrLeftOut(
      boolean blocks, double straight, int perTurn, double turns, double lead, double first) {
    HelixPlan plan = crowded(blocks, straight, perTurn, turns, lead, first);

    measure(plan);
    measureBesideEntry(plan);
    assertThat(nearEnds(plan).state()).isEqualTo(State.OK);
  }

  /** Where the builder's own first support leaves no room, it is said which stands too near. */
  @ParameterizedTest
  @CsvSource({
    "true, 16, 8, 2, 22, 1.1, S8 and the lead's plywood",
    "false, 0, 16, 2.5, 22, 3.3, S16 and the lead's plywood",
    "true, 0, 24, 2.75, 36, 1.1, X1 and S21"
  })
  void supportThatCannotBeMoved_isMarginalAndNamed(
      boolean blocks,
      double straight,
      int perTurn,
      double turns,
      double lead,
      double first,
      String named) {
    Verdict verdict = nearEnds(crowded(blocks, straight, perTurn, turns, lead, first));

    // Of these one edge is left out already.
    String near =
        named.startsWith("S")
            ? "what is left of " + named.replace(" and ", " is less than 1/4 in from ")
            : "less than 1/4 in apart: " + named;
    assertThat(verdict.state()).isEqualTo(State.MARGINAL);
    assertThat(((Text) verdict.facts().get(Fact.CLOSE)).words()).isEqualTo(named);
    assertThat(new VerdictWords(LengthStyle.INCH_FRACTIONS).line(verdict))
        .contains(near, "`supports.move`");
  }

  /**
   * As the builder says, and judged. By hand: E1 of blocks at 20.5 in before the ring moves to S1
   * at its beginning; X1 beside the turn below moves back to where the exit's lead begins, over it.
   */
  @ParameterizedTest
  @CsvSource({"E1, 20.5, E1 and S1", "X1, -12, X1 and the turn below"})
  void supportOfALead_movedIntoSomething_fails(String name, double inches, String named) {
    SupportPlan blocks = SpecBuilder.blocks(8).startingAt(Optional.of(inches(0)));
    HelixPlan plan =
        crowded(blocks.with(new Adjustments(List.of(), Map.of(name, inches(inches)))), 0, 2.25, 22);

    assertThat(nearEnds(plan).state()).isEqualTo(State.FAIL);
    assertThat(((Text) nearEnds(plan).facts().get(Fact.MEETING)).words()).contains(named);
    assertThat(new VerdictWords(LengthStyle.METRIC).finding(nearEnds(plan)))
        .contains("in one place: " + named);
  }

  private static Verdict nearEnds(HelixPlan plan) {
    return plan.verdicts().stream()
        .filter(verdict -> verdict.rule() == Rule.APPROACH_SUPPORTS)
        .findFirst()
        .orElseThrow();
  }

  /** Of the lowest turn's second half, and of the exit. */
  private static void measureBesideEntry(HelixPlan plan) {
    double half = plan.spec().ground().width().millimetres() / 2;
    Geometry lead = band(plan, -plan.spec().bottom().leadIn().millimetres(), 0, -half, half);
    for (SupportRow row : plan.supports().rows()) {
      boolean beside =
          row.part() == Part.EXIT || row.at() > plan.climb().runPerTurn().millimetres() / 2;
      if (row.standsOnBase() && beside) {
        for (Geometry support : standing(plan, row)) {
          assertThat(support.distance(lead))
              .as("%s to the lead", row.station().name())
              .isGreaterThan(CLEAR - FLAT);
        }
      }
    }
  }

  private static void measure(HelixPlan plan) {
    Geometry ring = ring(plan);
    for (SupportRow row : plan.supports().rows()) {
      for (Geometry support : standing(plan, row)) {
        if (row.part() == Part.EXIT && plan.climb().turns() >= 1) {
          assertThat(support.distance(ring))
              .as("%s to the ring", row.station().name())
              .isGreaterThan(CLEAR - FLAT);
        }
        if (row.part() == Part.RING) {
          continue;
        }
        for (SupportRow other : plan.supports().rows()) {
          if (!other.station().equals(row.station()) && other.standsOnBase()) {
            for (Geometry beside : standing(plan, other)) {
              assertThat(support.distance(beside))
                  .as("%s to %s", row.station().name(), other.station().name())
                  .isGreaterThan(CLEAR - FLAT);
            }
          }
        }
      }
    }
  }

  private static List<Geometry> standing(HelixPlan plan, SupportRow row) {
    double half = plan.spec().ground().width().millimetres() / 2;
    List<Geometry> standing = new ArrayList<>();
    for (int side : new int[] {1, -1}) {
      if (side > 0 ? !row.edges().atOuter() : !row.edges().atInner()) {
        continue;
      }
      Waypoint here = plan.line().at(row.at());
      Point out = here.toLeft(-plan.line().inwards()).minus(here.point());
      Point ahead = Point.polar(1, here.heading());
      if (plan.spec().supports().riser() instanceof Riser.WoodBlocks wood) {
        Point middle = here.point().plus(out.times(side * (half - wood.width().millimetres() / 2)));
        Point across = out.times(wood.width().millimetres() / 2);
        Point along = ahead.times(wood.along().millimetres() / 2);
        standing.add(
            polygon(
                List.of(
                    middle.plus(across).plus(along),
                    middle.plus(across).minus(along),
                    middle.minus(across).minus(along),
                    middle.minus(across).plus(along))));
      } else if (plan.spec().supports().riser() instanceof Riser.ThreadedRods rods) {
        Point middle = here.point().plus(out.times(side * (half - rods.inset().millimetres())));
        standing.add(
            JTS.createPoint(new Coordinate(middle.x(), middle.y()))
                .buffer(rods.washer().millimetres() / 2));
      }
    }
    return standing;
  }

  private static Geometry polygon(List<Point> corners) {
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i <= corners.size(); i++) {
      Point corner = corners.get(i % corners.size());
      ring[i] = new Coordinate(corner.x(), corner.y());
    }
    return JTS.createPolygon(ring);
  }

  /** One turn of the roadbed in plan with its ears, and its edge strips where they are. */
  private static Geometry ring(HelixPlan plan) {
    double half =
        plan.spec().ground().width().plus(plan.spec().beyondEdges().times(2)).millimetres() / 2;
    double to = plan.climb().ringLength();
    double turn = Math.min(to, plan.climb().runPerTurn().millimetres());
    Geometry all = band(plan, to - turn, to, -half, half);
    for (Bridge bridge : plan.stations().bridges()) {
      double out = half + bridge.breadth().millimetres();
      if (bridge.outer() && bridge.form() == Bridge.Form.STRIP) {
        all = all.union(band(plan, bridge.from() - 25.4, bridge.to() + 25.4, half, out));
      }
    }
    return all;
  }

  /** What lies between two distances outwards of the centre line. */
  private static Geometry band(HelixPlan plan, double from, double to, double in, double out) {
    Geometry all = JTS.createPolygon();
    double side = plan.line().inwards();
    for (Edge edge : plan.line().portion(from, to)) {
      int steps = edge instanceof Arc ? 600 : 1;
      List<Point> points = new ArrayList<>();
      for (int i = 0; i <= steps; i++) {
        points.add(at(edge, (double) i / steps, out, side));
      }
      for (int i = steps; i >= 0; i--) {
        points.add(at(edge, (double) i / steps, in, side));
      }
      all = all.union(polygon(points));
    }
    return all;
  }

  private static Point at(Edge edge, double share, double aside, double side) {
    if (edge instanceof Arc arc) {
      double angle = arc.startAngle() + share * arc.sweep();
      return arc.centre().plus(Point.polar(arc.radius() + aside, angle));
    }
    Point along = edge.end().minus(edge.start());
    Point normal = new Point(along.y(), -along.x()).times(side * aside / along.norm());
    return edge.start().plus(along.times(share)).plus(normal);
  }
}
