package curvestock.compare;

import curvestock.helix.SegmentPlan;
import curvestock.job.Job;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;

/** The helix of a job and its main sheet, and the job with other segments. */
final class Segments {

  private final Job job;
  private final SegmentPlan helix;

  /**
   * @throws IllegalArgumentException if the job has no helix
   */
  Segments(Job job) {
    this.job = job;
    this.helix =
        job.helix()
            .orElseThrow(() -> new IllegalArgumentException("a comparison must have a helix"));
  }

  /** The sheet that can be had in any number; the first one if none can. */
  SheetStock mainSheet() {
    return job.sheets().stream()
        .filter(sheet -> sheet.available().isEmpty())
        .findFirst()
        .orElse(job.sheets().get(0));
  }

  /** The angle that the job says. */
  Angle own() {
    return helix.segment();
  }

  double turns() {
    return helix.turns();
  }

  /** The whole segment as the helix has it. */
  Piece piece() {
    return piece(own());
  }

  /** A segment of this angle, by itself. */
  Piece piece(Angle angle) {
    return Piece.of(
        "S", "segment of " + angle, new AnnularSector(helix.radius(), helix.width(), angle));
  }

  SegmentPlan plan(Angle angle) {
    return plan(angle, helix.turns());
  }

  SegmentPlan plan(Angle angle, double turns) {
    return new SegmentPlan(turns, helix.radius(), helix.width(), angle);
  }

  Job job(SegmentPlan segments) {
    return job.with(segments, job.sheets(), job.cutting());
  }
}
