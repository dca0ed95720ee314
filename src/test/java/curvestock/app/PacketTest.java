package curvestock.app;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.files.ResultFolder;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The shop packet as a whole; its parts have tests of their own. */
class PacketTest {

  /** Invented. */
  static final String SMALL_HELIX =
      """
      curvestock: 1
      title: Shelf helix (invented)
      invented: true
      units: in
      print: {unit: in, fraction: 32}
      currency: $
      sheets:
        - {name: ply, size: 4x4 ft, thickness: 0.236, price: 20}
      cutting: {kerf: 1/8, margin: 1/4}
      helix:
        scale: N
        turns: 1 1/2
        radius: 14
        width: 3
        climb: 3
        segments-per-turn: 4
        joint: {half-lap: 1}
        heights: {underlay: 1/8, ties: 0.05, rail: 0.08}
        supports:
          per-turn: 8
          foot-height: 1
          blocks:
            width: 1/2
            along: 1
            board: {name: pine, length: 96, price: 3}
      search: {effort: quick}
      """;

  /** Takes the first layouts found; how full they are is no matter here. */
  private static final PlanListener AT_ONCE =
      new PlanListener() {
        @Override
        public boolean stopped() {
          return true;
        }
      };

  private static ResultFolder packet;
  private static Plan plan;

  @BeforeAll
  static void makePacket() throws Exception {
    Job job = JobReader.read(SMALL_HELIX, "small.yaml");
    plan = Workshop.plan(job, AT_ONCE);
    packet = Workshop.archived(Workshop.packet(plan, Optional.empty()));
  }

  @Test
  void packet_ofAPlan_holdsItsResultAndAGuide() {
    assertThat(packet.contents().keySet())
        .contains("plan.json", "sheets/sheet-01.svg", "helix-plan.svg", "README.txt")
        .contains(Workshop.ARCHIVE);
  }

  @Test
  void guide_ofAPacket_namesEveryFileButItselfAndTheArchive() {
    String guide = text("README.txt");

    for (String path : packet.contents().keySet()) {
      if (!path.equals("README.txt") && !path.equals(Workshop.ARCHIVE)) {
        assertThat(guide.lines().map(String::strip)).contains(path);
      }
    }
  }

  @Test
  void archive_ofAPacket_holdsEveryOtherFileSortedAndUnchanged() throws IOException {
    List<String> paths = new ArrayList<>();
    try (ZipInputStream zip =
        new ZipInputStream(new ByteArrayInputStream(packet.contents().get(Workshop.ARCHIVE)))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        String path = entry.getName().substring("curvestock-packet/".length());
        paths.add(path);
        assertThat(zip.readAllBytes()).isEqualTo(packet.contents().get(path));
        assertThat(entry.getTimeLocal().getYear()).isEqualTo(1980);
      }
    }

    List<String> wanted = new ArrayList<>(packet.contents().keySet());
    wanted.remove(Workshop.ARCHIVE);
    assertThat(paths).isEqualTo(wanted);
  }

  @Test
  void packet_madeAgain_isTheSameToTheLastByte() {
    ResultFolder again = Workshop.archived(Workshop.packet(plan, Optional.empty()));

    assertThat(again.contents().keySet()).isEqualTo(packet.contents().keySet());
    again
        .contents()
        .forEach(
            (path, bytes) -> assertThat(bytes).as(path).isEqualTo(packet.contents().get(path)));
  }

  private static String text(String path) {
    return new String(packet.contents().get(path), StandardCharsets.UTF_8);
  }
}
