package curvestock.web;

import curvestock.app.Workshop;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Everything that is taken to the saw, as one zip, every drawing checked. */
final class Packet {

  private Packet() {}

  /**
   * The zip.
   *
   * @param jobText the job file, put beside the drawings
   * @throws curvestock.app.WrongLayoutException if a drawing fails its check
   */
  static byte[] zip(Plan plan, String jobText) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      put(zip, "job.yaml", jobText.getBytes(StandardCharsets.UTF_8));
      for (Map.Entry<String, byte[]> file :
          Workshop.result(plan, PlanListener.NONE).contents().entrySet()) {
        put(zip, file.getKey(), file.getValue());
      }
    }
    return bytes.toByteArray();
  }

  private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    // The same packet is the same bytes: no clock in it.
    entry.setTime(0);
    zip.putNextEntry(entry);
    zip.write(bytes);
    zip.closeEntry();
  }
}
