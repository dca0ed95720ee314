package curvestock.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.answer.Answer;
import curvestock.app.Workshop;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.Joint;
import curvestock.helix.build.ScheduleRow;
import curvestock.helix.course.Waypoint;
import curvestock.job.HelixJob;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.Drilled;
import curvestock.report.TableCsv;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The cut layouts of a whole helix against its schedule, number by number. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HelixLabelsTest {

  private Plan plan;
  private HelixPlan helix;
  private final Map<String, Placement> cut = new HashMap<>();
  private final List<String> labels = new ArrayList<>();

  @BeforeAll
  void planOnce() throws Infeasible {
    plan = Workshop.plan(HelixJob.read(), PlanListener.NONE);
    helix = plan.job().structure().orElseThrow().plan();
    for (int sheet = 0; sheet < plan.layouts().size(); sheet++) {
      Layout layout = plan.layouts().get(sheet);
      for (int i = 0; i < layout.placements().size(); i++) {
        String label = plan.labels().get(sheet).get(i);
        labels.add(label);
        cut.put(label, layout.placements().get(i));
      }
    }
  }

  @Test
  void labels_areTheNumbersOfTheScheduleOnceEach() {
    List<String> scheduled =
        helix.schedule().rows().stream().map(row -> row.piece().number()).toList();

    assertThat(labels).doesNotHaveDuplicates();
    assertThat(labels.stream().filter(label -> !label.startsWith("plate-")))
        .containsExactlyInAnyOrderElementsOf(scheduled);
    assertThat(labels.stream().filter(label -> label.startsWith("plate-")))
        .hasSize(helix.joints().all().size());
  }

  @Test
  void labels_standOnPiecesOfTheirKind() {
    for (ScheduleRow row : helix.schedule().rows()) {
      assertThat(cut.get(row.piece().number()).piece().id()).isEqualTo(row.piece().kindId());
    }
  }

  /**
   * Laid into the helix, what is cut ends square to the line at just the joints of the schedule.
   */
  @Test
  void endsOfCutPieces_areTheJointsOfTheSchedule() {
    for (ScheduleRow row : helix.schedule().rows()) {
      BedPiece piece = row.piece();
      for (Optional<Joint> joint : List.of(piece.lower(), piece.upper())) {
        joint.ifPresent(
            here ->
                assertThat(hasEndAt(piece, here))
                    .as("piece %s has an end at %s", piece.number(), here.name())
                    .isTrue());
      }
    }
  }

  private boolean hasEndAt(BedPiece piece, Joint joint) {
    double half = helix.spec().ground().width().millimetres() / 2;
    Waypoint here = helix.line().at(joint.at());
    Point left = here.toLeft(half);
    Point right = here.toLeft(-half);
    return cut.get(piece.number()).piece().shape().outline().at(piece.pose()).edges().stream()
        .filter(Segment.class::isInstance)
        .anyMatch(edge -> joins(edge, left, right) || joins(edge, right, left));
  }

  private static boolean joins(Edge edge, Point from, Point to) {
    return edge.start().distance(from) < 1e-6 && edge.end().distance(to) < 1e-6;
  }

  /**
   * Every station of a piece is a pair of holes in what is cut, where the rods stand; a single hole
   * where the other edge's rod would stand in the approach and is left out on every turn.
   */
  @Test
  void holesOfCutPieces_areTheStationsOfTheSchedule() {
    for (ScheduleRow row : helix.schedule().rows()) {
      Drilled shape = (Drilled) cut.get(row.piece().number()).piece().shape();

      int rods =
          row.piece().stations().stream()
              .mapToInt(place -> place.station().edges().supports())
              .sum();
      assertThat(shape.drilled()).as("piece %s", row.piece().number()).hasSize(rods);
    }
  }

  @Test
  void sheetsOfTheSchedule_areThoseOfTheLayouts() {
    Answer answer = Answer.of(plan);
    List<String> lines =
        TableCsv.of(answer.building().orElseThrow().schedule(), answer.figures())
            .lines()
            .skip(1)
            .toList();

    assertThat(lines).hasSize(helix.schedule().rows().size());
    for (String line : lines) {
      String[] fields = line.split(",", -1);
      assertThat(plan.labels().get(Integer.parseInt(fields[2]) - 1)).contains(fields[0]);
    }
  }

  /** Drawn, read back and judged with their holes: a wrong one would throw. */
  @Test
  void result_holdsCheckedSheetsAndTheHelix() {
    Map<String, byte[]> files = Workshop.result(plan, PlanListener.NONE).contents();

    assertThat(files).containsKeys("schedule.csv", "helix-plan.svg", "sheets/sheet-01-cut.svg");
    String clean = new String(files.get("sheets/sheet-01-cut.svg"), StandardCharsets.UTF_8);
    long arcs = clean.split(" A 4.28").length - 1L;
    assertThat(arcs).as("quarter arcs of holes of 8.57 mm").isPositive().isEven();
    String svg = new String(files.get("helix-plan.svg"), StandardCharsets.UTF_8);
    for (ScheduleRow row : helix.schedule().rows()) {
      assertThat(svg).contains(">" + row.piece().number() + "</text>");
    }
    for (Joint joint : helix.joints().all()) {
      assertThat(svg).contains(">" + joint.name() + "</text>");
    }
  }

  @Test
  void areaYield_leavesOutTheHoles() {
    Placement first = cut.get("1");
    double holes =
        ((Drilled) first.piece().shape())
            .drilled().stream().mapToDouble(hole -> -hole.signedArea()).sum();

    assertThat(first.piece().shape().area())
        .isCloseTo(first.piece().shape().blank().area() - holes, within(1e-6));
  }
}
