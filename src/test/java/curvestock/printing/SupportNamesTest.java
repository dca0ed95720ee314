package curvestock.printing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.drawing.HelixPlanDrawing;
import curvestock.drawing.HelixTitle;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Words;
import curvestock.drawing.PaperSize;
import curvestock.geometry.Point;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.HoleRule;
import curvestock.helix.build.SupportRow;
import curvestock.helix.spec.Riser;
import curvestock.job.Job;
import curvestock.job.JobReader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Who drills by a name drills that support's hole. */
class SupportNamesTest {

  /** Invented; supports of the leads stand among those of the ring. */
  private static final String JOB =
      """
      curvestock: 2
      title: Ferry rods
      invented: true
      units: mm
      currency: EUR
      sheets:
        - {name: ply, size: 1250 x 2500, thickness: 12.2, price: 40}
      cutting: {kerf: 3, margin: 6}
      helix:
        scale: H0
        turns: 3
        radius: 640
        width: 100
        climb: 330
        segments-per-turn: 4
        joint: {half-lap: 40}
        heights: {underlay: 5, ties: 2, rail: 2.5}
        bottom: {lead-in: 500}
        top: {lead-in: 500}
        supports:
          per-turn: 16
          foot-height: 60
          rods: {thread: M8, inset: 16, washer: 24, end-allowance: 40, stock: {name: rod, length: 1000, price: 3}}
      search: {effort: quick}
      """;

  private static final Pattern NAME = Pattern.compile("([SEX]\\d+)(?:  ([0-9.]+)°)?");

  private static Job job;
  private static HelixPlan plan;

  /** A mark and whose it is. */
  private record Mark(String name, Point at) {}

  @BeforeAll
  static void read() throws Exception {
    job = JobReader.read(JOB, "rods.yaml");
    plan = job.structure().orElseThrow().plan();
  }

  /** From the line and the hole's distance from it alone. */
  private static List<Mark> marks() {
    Riser.ThreadedRods rods = (Riser.ThreadedRods) plan.spec().supports().riser();
    double out = new HoleRule(plan.spec(), plan.climb()).offset(rods).millimetres();
    List<Mark> marks = new ArrayList<>();
    for (SupportRow row : plan.supports().rows()) {
      for (int side = -1; side <= 1; side += 2) {
        if (side > 0 ? row.edges().atOuter() : row.edges().atInner()) {
          Point at = plan.line().at(row.at()).toLeft(-plan.line().inwards() * side * out);
          marks.add(new Mark(row.station().name(), at));
        }
      }
    }
    return marks;
  }

  private static void assertNamed(Paper drawing) {
    List<Mark> marks = marks();
    Map<String, Integer> names = new HashMap<>();
    for (Paper.Thing thing : drawing.things()) {
      if (thing instanceof Words words && NAME.matcher(words.text()).matches()) {
        Matcher matcher = NAME.matcher(words.text());
        assertThat(matcher.matches()).isTrue();
        Mark nearest =
            marks.stream()
                .min(Comparator.comparingDouble(mark -> mark.at().distance(words.at())))
                .orElseThrow();
        assertThat(matcher.group(1)).as("%s", words).isEqualTo(nearest.name());
        names.merge(matcher.group(1), 1, Integer::sum);
      }
    }
    // A name at each of a station's marks.
    for (Mark mark : marks) {
      long of =
          marks.stream()
              .filter(other -> other.name().equals(mark.name()))
              .map(other -> Math.round(other.at().x()) + "," + Math.round(other.at().y()))
              .distinct()
              .count();
      assertThat(names).as(mark.name()).containsEntry(mark.name(), (int) of);
    }
  }

  @Test
  void everyName_standsNearestToItsOwnMark() {
    Paper drawing = Footprint.drawing(job, job.structure().orElseThrow());

    assertNamed(drawing);
    assertNamed(Lettering.clear(drawing, TileGrid.of(drawing, PaperSize.A4)));
  }

  /** 16 to a turn stand 22.5° apart, some at a half of a tenth of a degree. */
  @Test
  void support_hasOneBearingOnEveryTurn() {
    Map<String, Set<Double>> bearings = new HashMap<>();
    for (SupportRow row : plan.supports().rows()) {
      if (row.part() == SupportRow.Part.RING) {
        bearings
            .computeIfAbsent(row.station().name(), name -> new HashSet<>())
            .add(row.bearing().degrees());
      }
    }

    // One that would stand too near the lead is left out.
    assertThat(bearings).hasSize(15);
    assertThat(bearings.values()).allMatch(each -> each.size() == 1);
  }

  /** The exit leaves at 0° over S1, S2 ... of the turn below. */
  @Test
  void plan_saysWhatStandsBelowTheExit() {
    String svg = HelixPlanDrawing.svg(plan, new HelixTitle("Ferry", plan.style(), true));

    assertThat(svg.replaceAll("\\s+", " ")).contains("Dashed on the exit");
  }
}
