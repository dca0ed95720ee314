package curvestock.app;

import curvestock.answer.Answer;
import curvestock.check.Expectation;
import curvestock.drawing.Picture;
import curvestock.drawing.SheetDrawing;
import curvestock.drawing.SheetTitle;
import curvestock.files.ResultFolder;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.plan.MarkedPieces;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.plan.Remnant;
import curvestock.printing.LabelSheet;
import curvestock.printing.MarkingSheets;
import curvestock.printing.SupportSheet;
import curvestock.report.MachineNotes;
import curvestock.report.PieceNotes;
import curvestock.report.SheetFiles;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * The files that go by how the sheets are cut and tell nothing of a comparison: the sheets, drawn
 * and checked, and the papers of a packet.
 */
final class PlanFiles {

  private PlanFiles() {}

  /**
   * The sheets for looking at, and those for a machine.
   *
   * @param labels what to call the pieces of each sheet
   * @throws WrongLayoutException if a drawing fails its check
   */
  static ResultFolder sheets(
      Plan plan, List<List<String>> labels, Answer answer, PlanListener listener) {
    ResultFolder folder = new ResultFolder();
    int sheets = plan.layouts().size();
    AtomicInteger begun = new AtomicInteger();
    IntStream.range(0, sheets)
        .parallel()
        .mapToObj(
            i -> {
              listener.step(
                  "drawing and checking sheet " + begun.incrementAndGet() + " of " + sheets);
              return annotated(plan, i + 1, labels.get(i));
            })
        .toList()
        .forEach(folder::addAll);
    MachineFiles.add(folder, plan, answer);
    return folder;
  }

  /** Those that a packet has besides. */
  static ResultFolder papers(Plan plan, Answer answer) {
    Job job = plan.job();
    ResultFolder folder = new ResultFolder();
    if (job.structure().isPresent()) {
      folder.add("support-table.pdf", () -> SupportSheet.pdf(answer, job.paper(), JobFiles.FONTS));
    }
    return folder
        .add("marking-out.pdf", () -> MarkingSheets.pdf(plan, JobFiles.FONTS))
        .add("labels.pdf", () -> LabelSheet.pdf(plan, JobFiles.FONTS));
  }

  private static ResultFolder annotated(Plan plan, int number, List<String> labels) {
    Layout layout = plan.layouts().get(number - 1);
    String drawing = SheetDrawing.annotated(layout, title(plan, number, labels));
    Workshop.requireRight(SheetFiles.annotated(number), drawing, Expectation.of(layout));
    return new ResultFolder()
        .add(SheetFiles.annotated(number), drawing)
        .add(SheetFiles.picture(number), () -> Picture.png(drawing, JobFiles.PICTURE_WIDTH));
  }

  private static SheetTitle title(Plan plan, int number, List<String> labels) {
    Job job = plan.job();
    String material = plan.layouts().get(number - 1).sheet().name();
    return new SheetTitle(
        job.title(),
        number,
        plan.layouts().size(),
        job.style(),
        material,
        job.invented(),
        labels,
        Remnant.of(plan.layouts().get(number - 1)).map(Remnant::where),
        MachineNotes.size(job),
        PieceNotes.of(plan, number),
        MarkedPieces.marks(plan, number));
  }
}
