package curvestock.compare;

import curvestock.helix.SegmentPlan;
import curvestock.job.Job;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A length of the job that a user could change, or that may turn out otherwise in the wood. */
public enum Dimension {
  RADIUS,
  WIDTH,
  KERF,
  MARGIN,
  SHEET_LENGTH,
  SHEET_WIDTH;

  private static final double SIXTEENTH = 25.4 / 16;

  /** Changes to try, smallest first, in sizes that people can set on their tools. */
  List<Length> ladder(boolean imperial) {
    return switch (this) {
      case RADIUS, WIDTH -> imperial ? sixteenths(2, 4, 8, 16) : millimetres(3, 6, 12, 25);
      case KERF -> imperial ? sixteenths(0.5, 1, 2) : millimetres(1, 2, 3);
      case MARGIN -> imperial ? sixteenths(1, 2, 4) : millimetres(2, 5, 10);
      case SHEET_LENGTH, SHEET_WIDTH ->
          imperial ? sixteenths(1, 2, 4, 8) : millimetres(2, 5, 10, 15);
    };
  }

  private static List<Length> sixteenths(double... counts) {
    return lengths(SIXTEENTH, counts);
  }

  private static List<Length> millimetres(double... counts) {
    return lengths(1, counts);
  }

  private static List<Length> lengths(double unit, double... counts) {
    List<Length> lengths = new ArrayList<>();
    for (double count : counts) {
      lengths.add(Length.ofMillimetres(unit * count));
    }
    return lengths;
  }

  /** Whether a layout made before such a change still holds after it. */
  boolean eases(Length change) {
    boolean less = change.millimetres() < 0;
    return switch (this) {
      case RADIUS -> false;
      case WIDTH, KERF, MARGIN -> less;
      case SHEET_LENGTH, SHEET_WIDTH -> !less;
    };
  }

  /** The job with this length changed on the main sheet; nothing where that cannot be. */
  Optional<Job> change(Job job, SegmentPlan helix, SheetStock main, Length by) {
    Cutting cutting = job.cutting();
    try {
      return switch (this) {
        case RADIUS -> helix(job, helix, helix.radius().plus(by), helix.width());
        case WIDTH -> helix(job, helix, helix.radius(), helix.width().plus(by));
        case KERF ->
            Optional.of(
                job.with(
                    helix,
                    List.of(main),
                    new Cutting(cutting.kerf().plus(by), cutting.extra(), cutting.margin())));
        case MARGIN ->
            Optional.of(
                job.with(
                    helix,
                    List.of(main),
                    new Cutting(cutting.kerf(), cutting.extra(), cutting.margin().plus(by))));
        case SHEET_LENGTH -> sheet(job, helix, main, by, Length.ZERO);
        case SHEET_WIDTH -> sheet(job, helix, main, Length.ZERO, by);
      };
    } catch (IllegalArgumentException impossible) {
      return Optional.empty();
    }
  }

  private static Optional<Job> helix(Job job, SegmentPlan helix, Length radius, Length width) {
    SegmentPlan changed = new SegmentPlan(helix.turns(), radius, width, helix.segment());
    return Optional.of(job.with(changed, job.sheets(), job.cutting()));
  }

  private static Optional<Job> sheet(
      Job job, SegmentPlan helix, SheetStock main, Length along, Length across) {
    if (!main.isRectangle() || !main.defects().isEmpty()) {
      return Optional.empty();
    }
    SheetStock cut =
        new SheetStock(
            main.name(),
            SheetStock.rectangleOutline(main.length().plus(along), main.width().plus(across)),
            List.of(),
            main.thickness(),
            main.nominalThickness(),
            main.price(),
            main.available(),
            main.grain());
    return Optional.of(job.with(helix, List.of(cut), job.cutting()));
  }
}
