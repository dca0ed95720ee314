package curvestock.app;

import curvestock.answer.Answer;
import curvestock.check.CutForm;
import curvestock.check.Expectation;
import curvestock.check.LayoutCheck;
import curvestock.check.Recess;
import curvestock.drawing.MachineDrawing;
import curvestock.dxf.SheetDxf;
import curvestock.files.ResultFolder;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.Lap;
import curvestock.helix.build.LapEnd;
import curvestock.helix.spec.Construction;
import curvestock.job.Batch;
import curvestock.job.Job;
import curvestock.machine.Caption;
import curvestock.machine.MachineSetup;
import curvestock.machine.MachineSheet;
import curvestock.machine.TestCut;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.plan.Plan;
import curvestock.report.MachineNotes;
import curvestock.report.SheetFiles;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** The files for machines: each is read back and judged before it is added. */
final class MachineFiles {

  /** Degrees; the test cut takes a short part of it. */
  private static final double LONG_ENOUGH = 90;

  private MachineFiles() {}

  /**
   * Adds an SVG and a DXF for each sheet, and the notes.
   *
   * @param answer of the plan
   * @throws WrongLayoutException if one of them fails its check
   */
  static void add(ResultFolder folder, Plan plan, Answer answer) {
    MachineSetup setup = plan.job().machine();
    List<MachineSheet> sheets = answer.machineSheets().orElseThrow().list();
    Map<String, List<Recess>> recesses = recesses(plan.job());
    IntStream.range(0, sheets.size())
        .parallel()
        .mapToObj(i -> of(sheets.get(i), recesses, names(i + 1, setup)))
        .toList()
        .forEach(folder::addAll);
    folder.add(
        "machine.txt",
        String.join(
                "\n",
                MachineNotes.of(
                    plan.job(), sheets, plan.labels(), testCut(plan.job()), answer.machineTime()))
            + "\n");
  }

  /**
   * Adds an SVG and a DXF of the test cut, which the job alone decides.
   *
   * @throws WrongLayoutException if one of them fails its check
   */
  static void addTestCut(ResultFolder folder, Job job) {
    TestCut test = testCut(job);
    Caption caption = new Caption(job.title(), "test cut", job.style(), job.failure());
    MachineSetup setup = job.machine();
    MachineSheet first = test.sheet(caption, setup);
    folder.addAll(
        of(
            first,
            recesses(test),
            new Names(
                SheetFiles.testCut(setup),
                SheetFiles.testCutDxf(setup),
                SheetFiles.TEST_FLIP,
                SheetFiles.testFlipDxf(setup))));
  }

  /** Names of the files of one sheet; those of its underside are used if it has one. */
  private record Names(String svg, String dxf, String flipSvg, String flipDxf) {}

  private static Names names(int sheet, MachineSetup setup) {
    return new Names(
        SheetFiles.clean(sheet, setup),
        SheetFiles.dxf(sheet, setup),
        SheetFiles.flip(sheet),
        SheetFiles.flipDxf(sheet, setup));
  }

  /**
   * A joint of the job's ring, or of the first curved piece: with its half-lap or its plate if the
   * helix has one.
   */
  private static TestCut testCut(Job all) {
    Job job = lapped(all);
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
    return TestCut.of(
        job.sheets().get(0),
        job.cutting(),
        new TestCut.Joint(ring, plate, lap(job)),
        job.machine());
  }

  /** Of several jobs the first that has laps, so that the test cut shows one. */
  private static Job lapped(Job all) {
    return all.members().stream()
        .map(Batch.Member::job)
        .filter(job -> lap(job).isPresent())
        .findFirst()
        .orElse(all);
  }

  private static Optional<Length> lap(Job job) {
    return job.structure()
        .map(order -> order.plan().spec().construction())
        .filter(Construction.HalfLap.class::isInstance)
        .map(joint -> ((Construction.HalfLap) joint).lap());
  }

  private static Optional<AnnularSector> sector(Piece piece) {
    return piece.shape().blank() instanceof AnnularSector sector
        ? Optional.of(sector)
        : Optional.empty();
  }

  private static ResultFolder of(
      MachineSheet sheet, Map<String, List<Recess>> recesses, Names names) {
    ResultFolder folder = new ResultFolder();
    Expectation expected = expected(sheet, recesses);
    List<Integer> loose = sheet.loose();
    String svg = MachineDrawing.svg(sheet);
    String dxf = SheetDxf.of(sheet);
    Workshop.requireRight(names.svg(), loose, () -> LayoutCheck.check(svg, expected));
    folder.add(names.svg(), svg);
    Workshop.requireRight(names.dxf(), loose, () -> LayoutCheck.check(dxf, expected));
    folder.add(names.dxf(), dxf);
    if (sheet.machining().turning().isPresent()) {
      String below = MachineDrawing.underside(sheet);
      Workshop.requireRight(
          names.flipSvg(), () -> LayoutCheck.checkUnderside(below, svg, expected));
      folder.add(names.flipSvg(), below);
      String belowDxf = SheetDxf.underside(sheet);
      Workshop.requireRight(
          names.flipDxf(), () -> LayoutCheck.checkUnderside(belowDxf, dxf, expected));
      folder.add(names.flipDxf(), belowDxf);
    }
    return folder;
  }

  private static Expectation expected(MachineSheet sheet, Map<String, List<Recess>> recesses) {
    return Expectation.of(sheet.layout())
        .in(sheet.form())
        .with(marked(sheet.setup()))
        .with(recesses, toolRadius(sheet.setup(), sheet.layout().cutting()));
  }

  private static double toolRadius(MachineSetup setup, Cutting cutting) {
    return setup.bitOrKerf(cutting).millimetres() / 2;
  }

  /** Where the pieces of a job's helixes are halved, by kind. */
  private static Map<String, List<Recess>> recesses(Job job) {
    Map<String, List<Recess>> recesses = new HashMap<>();
    for (Job.Bed bed : job.beds()) {
      for (BedPiece piece : bed.plan().roadbed().pieces()) {
        recesses.putIfAbsent(bed.ids() + piece.kindId(), recesses(bed.plan().laps().on(piece)));
      }
    }
    return recesses;
  }

  private static Map<String, List<Recess>> recesses(TestCut test) {
    Map<String, List<Recess>> recesses = new HashMap<>();
    for (int i = 0; i < test.laps().size(); i++) {
      recesses.put(test.layout().placements().get(i).piece().id(), recesses(test.laps().get(i)));
    }
    return recesses;
  }

  private static List<Recess> recesses(List<Lap> laps) {
    return laps.stream().map(lap -> new Recess(lap.end() == LapEnd.UPPER, lap.area())).toList();
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
              .with(marked(job.machine()))
              .with(recesses(job), toolRadius(job.machine(), job.cutting())));
    }
    return expectations;
  }

  /** What the job's test cut is. */
  static Expectation testCutExpected(Job job) {
    TestCut test = testCut(job);
    return Expectation.of(test.layout())
        .in(CutForm.FINISHED, form(job))
        .with(marked(job.machine()))
        .with(recesses(test), toolRadius(job.machine(), job.cutting()));
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
