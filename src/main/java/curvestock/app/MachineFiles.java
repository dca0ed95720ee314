package curvestock.app;

import curvestock.check.CutForm;
import curvestock.check.Expectation;
import curvestock.drawing.MachineDrawing;
import curvestock.dxf.SheetDxf;
import curvestock.files.ResultFolder;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.machine.MachineSetup;
import curvestock.machine.MachineSheet;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.plan.Plan;
import curvestock.report.MachineNotes;
import curvestock.report.SheetFiles;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.List;

/** The files for machines: each is read back and judged before it is added. */
final class MachineFiles {

  private MachineFiles() {}

  /**
   * Adds an SVG and a DXF for each sheet, and the notes.
   *
   * @throws WrongLayoutException if one of them fails its check
   */
  static void add(ResultFolder folder, Plan plan) {
    MachineSetup setup = plan.job().machine();
    List<List<String>> labels = plan.labels();
    List<MachineSheet> sheets = new ArrayList<>();
    for (int i = 0; i < plan.layouts().size(); i++) {
      MachineSheet sheet = MachineSheet.of(plan.layouts().get(i), labels.get(i), setup);
      sheets.add(sheet);
      add(folder, SheetFiles.clean(i + 1, setup), MachineDrawing.svg(sheet), sheet);
      add(folder, SheetFiles.dxf(i + 1, setup), SheetDxf.of(sheet), sheet);
    }
    folder.add("machine.txt", String.join("\n", MachineNotes.of(plan.job(), sheets)) + "\n");
  }

  private static void add(ResultFolder folder, String name, String drawing, MachineSheet sheet) {
    Layout layout = sheet.layout();
    Workshop.requireRight(name, drawing, Expectation.of(layout).in(sheet.form()));
    folder.add(name, drawing);
  }

  /**
   * What a drawing of the job may be: any of its sheets, of the finished size or for its machine.
   */
  static List<Expectation> expectations(Job job) {
    List<Piece> pieces = job.demands().stream().map(Demand::piece).toList();
    CutForm form = job.machine().form(job.cutting());
    List<Expectation> expectations = new ArrayList<>();
    for (SheetStock sheet : job.sheets()) {
      expectations.add(Expectation.anyOf(sheet, job.cutting(), pieces).in(CutForm.FINISHED, form));
    }
    return expectations;
  }
}
