package curvestock.web;

import curvestock.app.Workshop;
import curvestock.compare.Comparison;
import curvestock.files.ResultFolder;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import java.util.Map;
import java.util.Optional;

/** Everything that is taken to the saw, as one zip, every drawing checked. */
final class Packet {

  private static final String FOLDER = "curvestock-packet";

  private Packet() {}

  /**
   * The zip.
   *
   * @param jobText the job file, put beside the drawings
   * @throws curvestock.app.WrongLayoutException if a drawing fails its check
   */
  static byte[] zip(Plan plan, Optional<Comparison> comparison, String jobText) {
    ResultFolder all = new ResultFolder().add("job.yaml", jobText);
    ResultFolder packet = Workshop.packet(plan, comparison, PlanListener.NONE);
    for (Map.Entry<String, byte[]> file : packet.contents().entrySet()) {
      // The archive in the folder would be the same files once more.
      if (!file.getKey().equals(Workshop.ARCHIVE)) {
        all.add(file.getKey(), file.getValue());
      }
    }
    return all.zip(FOLDER);
  }
}
