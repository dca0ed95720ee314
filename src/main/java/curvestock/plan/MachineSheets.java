package curvestock.plan;

import curvestock.geometry.Edge;
import curvestock.geometry.Pose;
import curvestock.helix.build.RoadbedMark;
import curvestock.job.Job;
import curvestock.machine.Caption;
import curvestock.machine.MachineSheet;
import curvestock.machine.SheetWork;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What a machine does on each sheet of a plan. It is worked out when somebody first asks for it,
 * and then kept: to place tabs is to try how each sheet would hold together.
 */
public final class MachineSheets {

  /** A word, a size and a number that counts on. */
  private static final Pattern NUMBERED = Pattern.compile("[a-z]+-(\\d+-\\d+)");

  private final Plan plan;

  /** Empty until they are worked out; a plan has a layout at least. */
  private List<MachineSheet> sheets = List.of();

  public MachineSheets(Plan plan) {
    this.plan = plan;
  }

  /** One for each layout, in their order. */
  public synchronized List<MachineSheet> list() {
    if (sheets.isEmpty()) {
      sheets = of(plan);
    }
    return sheets;
  }

  private static List<MachineSheet> of(Plan plan) {
    List<List<String>> labels = onWood(plan.labels());
    return IntStream.range(0, plan.layouts().size())
        .parallel()
        .mapToObj(
            i ->
                MachineSheet.of(
                    plan.layouts().get(i), labels.get(i), work(plan, i + 1), plan.job().machine()))
        .toList();
  }

  /**
   * What a machine engraves: of {@code block-35-73} only {@code 35-73}, if no other number is the
   * same.
   */
  static List<List<String>> onWood(List<List<String>> numbers) {
    Map<String, Long> times =
        numbers.stream()
            .flatMap(List::stream)
            .collect(Collectors.groupingBy(MachineSheets::onWood, Collectors.counting()));
    return numbers.stream()
        .map(
            sheet ->
                sheet.stream()
                    .map(number -> times.get(onWood(number)) == 1 ? onWood(number) : number)
                    .toList())
        .toList();
  }

  private static String onWood(String number) {
    Matcher numbered = NUMBERED.matcher(number);
    return numbered.matches() ? numbered.group(1) : number;
  }

  private static SheetWork work(Plan plan, int sheet) {
    Job job = plan.job();
    String what = "sheet " + sheet + " of " + plan.layouts().size();
    return new SheetWork(
        marks(plan, sheet),
        MarkedPieces.laps(plan, sheet),
        Remnant.of(plan.layouts().get(sheet - 1)).map(Remnant::where),
        new Caption(job.title(), what, job.style(), job.failure()));
  }

  /** Supports, laps and screws of the helix's pieces on a sheet, in the sheet's frame. */
  private static List<List<Edge>> marks(Plan plan, int sheet) {
    List<List<RoadbedMark>> marks = MarkedPieces.marks(plan, sheet);
    List<List<Edge>> lines = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      Pose pose = plan.layouts().get(sheet - 1).placements().get(i).pose();
      for (RoadbedMark mark : marks.get(i)) {
        mark.at(pose).lines().forEach(line -> lines.add(List.of(line)));
      }
    }
    return lines;
  }
}
