package curvestock.compare;

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

  /** The helix with this length changed, on the main sheet alone; nothing where that cannot be. */
  Optional<Designs> change(Designs designs, SheetStock main, Length by) {
    Job job = designs.job();
    Cutting cutting = job.cutting();
    Designs alone = designs.on(job.on(List.of(main), cutting));
    try {
      return switch (this) {
        case RADIUS -> Optional.of(alone.resized(by, Length.ZERO));
        case WIDTH -> Optional.of(alone.resized(Length.ZERO, by));
        case KERF -> Optional.of(cut(alone, cutting.withKerf(cutting.kerf().plus(by))));
        case MARGIN ->
            Optional.of(
                cut(
                    alone,
                    new Cutting(cutting.kerf(), cutting.spacing(), cutting.margin().plus(by))));
        case SHEET_LENGTH -> sheet(alone, main, by, Length.ZERO);
        case SHEET_WIDTH -> sheet(alone, main, Length.ZERO, by);
      };
    } catch (IllegalArgumentException impossible) {
      return Optional.empty();
    }
  }

  private static Designs cut(Designs alone, Cutting way) {
    return alone.on(alone.job().on(alone.job().sheets(), way));
  }

  private static Optional<Designs> sheet(
      Designs alone, SheetStock main, Length along, Length across) {
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
    return Optional.of(alone.on(alone.job().on(List.of(cut), alone.job().cutting())));
  }
}
