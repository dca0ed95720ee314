package curvestock.app;

import curvestock.check.CutForm;
import curvestock.check.Expectation;
import curvestock.drawing.MachineDrawing;
import curvestock.dxf.SheetDxf;
import curvestock.files.ResultFolder;
import curvestock.geometry.Edge;
import curvestock.geometry.Pose;
import curvestock.helix.build.RoadbedMark;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.machine.MachineSetup;
import curvestock.machine.MachineSheet;
import curvestock.machine.TestCut;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.plan.Plan;
import curvestock.report.MachineNotes;
import curvestock.report.PieceNotes;
import curvestock.report.SheetFiles;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The files for machines: each is read back and judged before it is added. */
final class MachineFiles {

  /** Degrees; the test cut takes a short part of it. */
  private static final double LONG_ENOUGH = 90;

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
      MachineSheet sheet =
          MachineSheet.of(plan.layouts().get(i), labels.get(i), marks(plan, i + 1), setup);
      sheets.add(sheet);
      add(folder, SheetFiles.clean(i + 1, setup), MachineDrawing.svg(sheet), sheet);
      add(folder, SheetFiles.dxf(i + 1, setup), SheetDxf.of(sheet), sheet);
    }
    TestCut test = testCut(plan.job());
    MachineSheet first = MachineSheet.of(test.layout(), test.names(), setup);
    add(folder, SheetFiles.testCut(setup), MachineDrawing.svg(first), first);
    add(folder, SheetFiles.testCutDxf(setup), SheetDxf.of(first), first);
    folder.add("machine.txt", String.join("\n", MachineNotes.of(plan.job(), sheets, test)) + "\n");
  }

  /** Supports, laps and screws of the helix's pieces on a sheet, in the sheet's frame. */
  private static List<List<Edge>> marks(Plan plan, int sheet) {
    List<List<RoadbedMark>> marks = PieceNotes.marks(plan, sheet);
    List<List<Edge>> lines = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      Pose pose = plan.layouts().get(sheet - 1).placements().get(i).pose();
      for (RoadbedMark mark : marks.get(i)) {
        mark.at(pose).lines().forEach(line -> lines.add(List.of(line)));
      }
    }
    return lines;
  }

  /** A joint of the job's ring, or of the first curved piece; the plate if the helix has one. */
  private static TestCut testCut(Job job) {
    List<Piece> pieces = job.demands().stream().map(Demand::piece).toList();
    Optional<AnnularSector> ring =
        job.helix()
            .map(
                plan ->
                    new AnnularSector(plan.radius(), plan.width(), Angle.ofDegrees(LONG_ENOUGH)))
            .or(() -> pieces.stream().flatMap(piece -> sector(piece).stream()).findFirst());
    Optional<Piece> plate =
        job.structure().isEmpty()
            ? Optional.empty()
            : pieces.stream().filter(piece -> piece.id().equals("plate")).findFirst();
    return TestCut.of(job.sheets().get(0), job.cutting(), ring, plate);
  }

  private static Optional<AnnularSector> sector(Piece piece) {
    return piece.shape().blank() instanceof AnnularSector sector
        ? Optional.of(sector)
        : Optional.empty();
  }

  private static void add(ResultFolder folder, String name, String drawing, MachineSheet sheet) {
    Layout layout = sheet.layout();
    Expectation expected = Expectation.of(layout).in(sheet.form()).with(marked(sheet.setup()));
    Workshop.requireRight(name, drawing, expected, sheet.loose());
    folder.add(name, drawing);
  }

  /**
   * What a drawing of the job may be: any of its sheets, with any number of the pieces that suit
   * it.
   */
  static List<Expectation> sheets(Job job) {
    List<Expectation> expectations = new ArrayList<>();
    for (SheetStock sheet : job.boards()) {
      List<Piece> suiting =
          job.demands().stream()
              .map(Demand::piece)
              .filter(piece -> job.suits(piece, sheet))
              .toList();
      expectations.add(
          Expectation.anyOf(sheet, job.cutting(), suiting)
              .in(CutForm.FINISHED, form(job))
              .with(marked(job.machine())));
    }
    return expectations;
  }

  /** What the job's test cut is. */
  static Expectation testCutExpected(Job job) {
    return Expectation.of(testCut(job).layout())
        .in(CutForm.FINISHED, form(job))
        .with(marked(job.machine()));
  }

  /** Tabs that are marked beside whole outlines. */
  private static Optional<Expectation.MarkedTabs> marked(MachineSetup setup) {
    return setup
        .tabs()
        .filter(tabs -> tabs.form() == MachineSetup.Tabs.Form.MARKS)
        .map(tabs -> new Expectation.MarkedTabs(tabs.width(), tabs.count()));
  }

  private static CutForm form(Job job) {
    return job.machine().form(job.cutting());
  }
}
