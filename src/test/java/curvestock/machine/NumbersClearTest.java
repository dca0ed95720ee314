package curvestock.machine;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Clearance;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.plan.MachineSheets;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.plan.Planner;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers on demo pieces (invented) are clear of laps, holes and lines. */
class NumbersClearTest {

  @ParameterizedTest
  @ValueSource(strings = {"default", "helix/orchard-climb", "helix/boathouse-spiral"})
  void numbers_areClearOfLapsHolesAndLines(String name) throws Exception {
    String text =
        Files.readString(Path.of("demo-data/" + name + ".yaml"))
            .replaceAll("(?m)^search:.*(\\R +.*)*", "");
    Job job = JobReader.read(text + "\nsearch: {effort: quick}\n", name);
    Plan plan = new Planner(job, PlanListener.NONE).plan();
    List<String> struck = new ArrayList<>();
    int numbers = 0;
    for (MachineSheet sheet : new MachineSheets(plan).list()) {
      assertThat(sheet.labels()).hasSameSizeAs(sheet.layout().placements());
      for (Engraving number : sheet.labels()) {
        numbers++;
        Outline box = number.box();
        sheet.machining().pockets().stream()
            .filter(pocket -> Clearance.between(box, pocket.area()) <= 0)
            .forEach(pocket -> struck.add(number.words() + " in " + pocket.id()));
        sheet.machining().drillings().stream()
            .filter(hole -> box.contains(hole.centre()) || distance(box, hole.rim().edges()) <= 0.2)
            .forEach(hole -> struck.add(number.words() + " on " + hole.id()));
        sheet.marks().stream()
            .filter(mark -> distance(box, mark) <= 0.2)
            .forEach(mark -> struck.add(number.words() + " on a line"));
      }
    }

    assertThat(numbers).isGreaterThan(10);
    assertThat(struck).isEmpty();
  }

  /** To points along the edges, half a millimetre apart. */
  private static double distance(Outline box, List<Edge> edges) {
    double least = Double.POSITIVE_INFINITY;
    for (Edge edge : edges) {
      int count = (int) Math.ceil(edge.length() / 0.5);
      for (int i = 1; i <= count && edge.box().distance(box.box()) < 1; i++) {
        var point = edge.part(0, (double) i / count).end();
        least =
            box.contains(point)
                ? 0
                : Math.min(
                    least,
                    box.edges().stream()
                        .mapToDouble(side -> side.distanceTo(point))
                        .min()
                        .orElse(9));
      }
    }
    return least;
  }
}
