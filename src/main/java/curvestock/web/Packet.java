package curvestock.web;

import curvestock.app.Workshop;
import curvestock.compare.Comparison;
import curvestock.files.ResultFolder;
import curvestock.plan.Plan;
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
    return all.addAll(Workshop.packet(plan, comparison)).zip(FOLDER);
  }
}
