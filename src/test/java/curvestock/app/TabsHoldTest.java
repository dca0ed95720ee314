package curvestock.app;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.check.CheckReport;
import curvestock.check.Expectation;
import curvestock.check.Finding;
import curvestock.check.LayoutCheck;
import curvestock.drawing.MachineDrawing;
import curvestock.dxf.SheetDxf;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.layout.Layout;
import curvestock.machine.MachineSheet;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Plates side by side, one kerf apart: 18 of 25 were loose before tabs looked beyond the cut. */
@Tag("slow")
class TabsHoldTest {

  @Test
  void porchHelix_cutAlongItsOffsetLinesWithFourTabs_losesNoPiece() throws Exception {
    String text = Files.readString(Path.of("demo-data/porch-helix-store-cut.yaml"));
    Job job =
        JobReader.read(
            text
                + "\nsearch: {effort: quick}\n"
                + "machine: {outlines: offset, tabs: {width: 1/4, count: 4}, bit: 1/4}\n",
            "porch");
    Plan plan = Workshop.plan(job, PlanListener.NONE);
    for (int i = 0; i < plan.layouts().size(); i++) {
      Layout layout = plan.layouts().get(i);
      MachineSheet sheet = MachineSheet.of(layout, plan.labels().get(i), job.machine());

      assertThat(sheet.loose()).isEmpty();
      assertThat(sheet.travel()).isLessThanOrEqualTo(sheet.travelAsLaidOut());
      for (String drawing : List.of(MachineDrawing.svg(sheet), SheetDxf.of(sheet))) {
        CheckReport report = LayoutCheck.check(drawing, Expectation.of(layout).in(sheet.form()));
        assertThat(report.findings()).extracting(Finding::message).isEmpty();
      }
    }
  }
}
