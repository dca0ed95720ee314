package curvestock.app;

import curvestock.drawing.HelixEndsDrawing;
import curvestock.drawing.HelixPlanDrawing;
import curvestock.drawing.HelixSideDrawing;
import curvestock.drawing.HelixTitle;
import curvestock.drawing.Picture;
import curvestock.files.MachineFonts;
import curvestock.files.ResultFolder;
import curvestock.helix.HelixOrder;
import curvestock.job.Job;
import curvestock.printing.Footprint;
import curvestock.printing.PaperTemplates;
import curvestock.printing.SpareFonts;
import curvestock.printing.TrammelSheet;
import java.util.Optional;

/**
 * The files of a result that are the same however its sheets are cut: the test cut, drawings of the
 * helix, and for a packet full-size patterns, footprint and trammel sheet.
 *
 * <p>They can be begun before the sheets are searched.
 */
public final class JobFiles {

  static final SpareFonts FONTS = new MachineFonts();

  /** Pixels. */
  static final int PICTURE_WIDTH = 1600;

  private static final String SVG = ".svg";
  private static final String PNG = ".png";

  private final Job job;
  private final boolean papers;
  private final Begun making;

  private JobFiles(Job job, boolean papers) {
    this.job = job;
    this.papers = papers;
    this.making = Begun.of("files of the job", () -> of(job, papers));
  }

  /**
   * Begins to make them.
   *
   * @param papers whether those of a packet too
   */
  public static JobFiles begin(Job job, boolean papers) {
    return new JobFiles(job.marked(), papers);
  }

  /** Those of the job, with pictures not made before they are asked for. */
  static ResultFolder of(Job job, boolean papers) {
    ResultFolder folder = new ResultFolder();
    MachineFiles.addTestCut(folder, job);
    job.structure()
        .ifPresent(
            order ->
                drawHelix(
                    folder, "", order, new HelixTitle(job.title(), job.style(), job.invented())));
    if (papers) {
      PaperTemplates.of(job, job.paper(), FONTS).forEach(folder::add);
      job.structure()
          .ifPresent(
              order -> folder.add("footprint.pdf", Footprint.pdf(job, order, job.paper(), FONTS)));
      TrammelSheet.pdf(job, FONTS).ifPresent(sheet -> folder.add("trammel.pdf", sheet));
    }
    return folder;
  }

  /** The helix from above, rolled out and at its ends. */
  static void drawHelix(ResultFolder folder, String in, HelixOrder order, HelixTitle title) {
    draw(folder, in + "helix-plan", HelixPlanDrawing.svg(order, title), PICTURE_WIDTH);
    draw(folder, in + "helix-side", HelixSideDrawing.svg(order.plan(), title), PICTURE_WIDTH);
    draw(folder, in + "helix-ends", HelixEndsDrawing.svg(order.plan(), title), PICTURE_WIDTH);
  }

  /** A drawing, and a picture of it for looking at. */
  static void draw(ResultFolder folder, String name, String svg, int width) {
    folder.add(name + SVG, svg);
    folder.add(name + PNG, () -> Picture.png(svg, width));
  }

  /**
   * Those of a planned job: what was begun if it is the same job, else made now.
   *
   * @throws WrongLayoutException if the test cut fails its check
   */
  static ResultFolder of(Job planned, boolean papers, Optional<JobFiles> begun) {
    return begun
        .filter(files -> files.papers == papers && files.job.equals(planned))
        .map(files -> files.making.whole())
        .orElseGet(() -> of(planned, papers));
  }
}
