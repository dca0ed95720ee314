package curvestock.helix.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.answer.Answer;
import curvestock.answer.FixingWords;
import curvestock.drawing.HelixPlanDrawing;
import curvestock.drawing.HelixTitle;
import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.spec.GroundPlan;
import curvestock.job.Job;
import curvestock.job.JobReader;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Plates beside the joints, and edge strips that pass there. */
class SidePlatesTest {

  /** Invented; one support after another is left out beside the entry, so strips pass joints. */
  private static final String JOB =
      """
      curvestock: 2
      title: Mill side plates
      invented: true
      units: in
      currency: $
      sheets:
        - {name: half birch, size: 5x5 ft, thickness: 0.472, nominal-thickness: 1/2, price: 58.00}
      cutting: {kerf: 1/8, margin: 1/4}
      helix:
        scale: S
        turns: 2 1/4
        radius: 38
        width: 5 1/2
        rise-per-turn: 5 1/2
        segments-per-turn: 8
        joint: {side-plates: {length: %s, height: 1 1/4, thickness: %s}}
        heights: {underlay: 1/4, ties: 0.1, rail: 0.12}
        bottom: {vertical-curve: 42, climb-lead: 40, lead-in: 40, approach-run: 10 ft}
        top: {vertical-curve: 42, climb-lead: 40, lead-in: 40, approach-run: 10 ft}
        supports: {per-turn: 16, foot-height: 14, rods: {thread: 5/16-18, inset: 5/8, washer: 1, end-allowance: 1 1/2, kerf: 1/16, base: 1/2, stock: {name: 'rod 5/16-18, 3 ft', length: 36, price: 4.80}}}
        trains: {tallest: 3.4, spare: 3/16, opening: 40}
      search: {effort: quick}
      """;

  private static Job job;
  private static HelixPlan plan;
  private static SidePlates plates;

  private static Job job(String length, String thickness) throws Exception {
    return JobReader.read(JOB.formatted(length, thickness), "side.yaml");
  }

  @BeforeAll
  static void read() throws Exception {
    job = job("6", "0.472");
    plan = job.structure().orElseThrow().plan();
    plates = plan.sidePlates().orElseThrow();
  }

  private static double along(double inches) {
    return inches * 25.4;
  }

  /** By the strip's own ends and the plate's, on the line: nothing else is asked. */
  private static void assertApart(HelixPlan helix) {
    SidePlates beside = helix.sidePlates().orElseThrow();
    for (Bridge strip : helix.stations().bridges()) {
      for (Joint joint : helix.joints().all()) {
        if (strip.form() == Bridge.Form.STRIP && !beside.replaced(strip.outer()).contains(joint)) {
          // Even when it is trimmed, a strip keeps half an inch past its supports: as angles.
          double edge = strip.outer() ? 40.75 : 35.25;
          double half = beside.plate().length().inches() / 2;
          double least = along((half + 0.5) / edge * 38) - 1e-3;
          assertThat(strip.covers(joint.at() - least, joint.at() + least))
              .as(joint.name())
              .isFalse();
        }
      }
    }
  }

  @Test
  void strip_andPlate_shareNoPlace() {
    assertThat(plan.stations().bridges()).anyMatch(b -> b.form() == Bridge.Form.STRIP);
    assertApart(plan);
    // The joints at 0 degrees lie between S15 and S1, over which the strip runs.
    assertThat(plates.replaced(true)).extracting(Joint::name).containsExactly("J8", "J16");
    assertThat(plates.replaced(false)).isEmpty();
    assertThat(plates.shortenSome()).isTrue();
  }

  @Test
  void plates_areCountedWithoutThoseThatAStripReplaces() {
    int joints = plan.joints().all().size();

    assertThat(plates.count()).isEqualTo(2 * joints - 2);
    int cut =
        plan.demands().stream()
            .filter(demand -> demand.piece().id().equals("side-plate"))
            .mapToInt(demand -> demand.count())
            .sum();
    long bought =
        plan.shopping().items().stream()
            .filter(item -> item.name().startsWith("side plates"))
            .mapToLong(ShoppingItem::quantity)
            .sum();
    assertThat(cut + bought).isEqualTo(plates.count());
  }

  /** A plate whose end would reach into the strip's own span leaves no room for the strip. */
  @Test
  void strip_thatWouldMeetAPlateHalfway_isNotPlanned() throws Exception {
    for (String length : List.of("8", "9", "10", "12")) {
      assertApart(job(length, "0.472").structure().orElseThrow().plan());
    }
  }

  /**
   * Rise of an arc over its chord, Machinery's Handbook, segments of circles: h = c²/8r + h²/2r; 6
   * in on R 40.75 in and 35.25 in: 0.110 and 0.128 in.
   */
  @Test
  void gap_ofAStraightPlate_isTheRiseOfTheArc() {
    GroundPlan ground = plan.spec().ground();

    assertThat(ground.outerEdge().inches()).isCloseTo(40.75, within(1e-9));
    assertThat(plates.gap(true).inches()).isCloseTo(0.110, within(5e-4));
    double inner = plates.gap(false).inches();
    assertThat(inner).isCloseTo(36 / (8 * 35.25) + inner * inner / (2 * 35.25), within(1e-9));
    assertThat(inner).isCloseTo(0.128, within(5e-4));
  }

  private static String fixing(Job of) {
    HelixOrder order = of.structure().orElseThrow();
    Answer answer = Answer.ofHelix(of, order, Optional.empty(), false);
    return String.join(
        " ", new FixingWords(answer.building().orElseThrow(), answer.figures()).all());
  }

  @Test
  void papers_sayHowAPlateIsFittedAndWhereThereIsNone() throws Exception {
    assertThat(fixing(job))
        .contains("flush with the underside, so that it stands up 25/32 in beside the track")
        .contains("stands off 7/64 in at both its ends")
        .contains("trace the piece's edge onto it")
        .contains("No side plate at the outer edge at J8, J16");
    assertThat(fixing(job("6", "1/8, from-sheets: false")))
        .contains("thin layers bent round the edge");
  }

  @Test
  void planDrawing_showsThePlates() {
    String svg = HelixPlanDrawing.svg(plan, new HelixTitle("Mill", plan.style(), true));

    assertThat(svg).contains("side plates.");
  }
}
