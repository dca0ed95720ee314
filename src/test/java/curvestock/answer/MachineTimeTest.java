package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.drawing.MachineDrawing;
import curvestock.job.HelixJob;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.machine.MachineSheet;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.plan.Planner;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The way with the tool lifted is that of the file, walked by the words of the SVG alone. */
class MachineTimeTest {

  private static final Pattern GROUP =
      Pattern.compile("(?s)<g id=\"(mark|label|drill|cut)\".*?(?=<g id=\"(?!drill-)|</svg>)");

  private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+");
  private static final Pattern PATH = Pattern.compile(" d=\"([^\"]+)\"");

  @Test
  void lifted_isTheWayBetweenAllLinesOfTheFile() throws Exception {
    Job job =
        JobReader.read(HelixJob.TEXT + "rates: {feed-per-minute: 1000}\n", "helix.yaml").marked();
    Plan plan = new Planner(job, PlanListener.NONE).plan();
    Answer answer = Answer.of(plan);
    double walked = 0;
    for (MachineSheet sheet : answer.machineSheets().orElseThrow().list()) {
      String svg = MachineDrawing.svg(sheet);
      double top = sheet.layout().sheet().width().millimetres();
      for (MatchResult group : GROUP.matcher(svg).results().toList()) {
        walked += walked(group.group(), top, group.group(1).equals("drill"));
      }
    }

    MachineTime time = answer.machineTime().orElseThrow();
    assertThat(walked).isGreaterThan(1000);
    assertThat(time.total().lifted().millimetres()).isCloseTo(walked, within(walked / 1e4));
    assertThat(time.total().minutes())
        .isCloseTo(
            (time.total().cut().millimetres()
                    + time.total().marked().millimetres()
                    + time.total().lifted().millimetres())
                / 1000,
            within(1e-6));
    assertThat(String.join(" ", time.words(answer.figures()))).contains("m of marking");
  }

  /**
   * From the sheet's lower left corner over all subpaths; to the middle of a hole to be drilled.
   */
  private static double walked(String group, double top, boolean drilled) {
    double x = 0;
    double y = top;
    double way = 0;
    List<String> paths = PATH.matcher(group).results().map(path -> path.group(1)).toList();
    for (String path : paths) {
      for (String line : path.trim().substring(1).split("M", -1)) {
        List<Double> numbers =
            NUMBER.matcher(line).results().map(found -> Double.valueOf(found.group())).toList();
        double fromX = numbers.get(0);
        double fromY = numbers.get(1);
        boolean closed = line.contains("Z");
        double toX = closed ? fromX : numbers.get(numbers.size() - 2);
        double toY = closed ? fromY : numbers.get(numbers.size() - 1);
        if (drilled) {
          // A circle begins at its right, one radius from its middle.
          fromX -= Double.parseDouble(line.replaceAll("(?s).*?A ?([0-9.]+).*", "$1"));
          toX = fromX;
        }
        way += Math.hypot(fromX - x, fromY - y);
        x = toX;
        y = toY;
      }
    }
    return way;
  }
}
