package curvestock.plan;

import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.packing.Packer;
import curvestock.piece.Demand;
import curvestock.sheet.SheetStock;
import java.util.Comparator;
import java.util.Optional;

/**
 * What can be said of a job at once, without a search: the piece that takes most wood, laid on one
 * sheet by a lattice, and about how many such sheets the whole job takes.
 *
 * @param demand the piece that takes most wood
 * @param layout the fullest lattice of it, on the kind of sheet whose wood it uses best; it may
 *     hold more than are wanted
 * @param sheets about how many sheets as full as this one hold everything; a guess, not a bound
 */
public record Glance(Demand demand, Layout layout, int sheets) {

  /** The glance; nothing if no lattice lays that piece on any of the sheets. */
  public static Optional<Glance> at(Job job) {
    Demand main =
        job.demands().stream().max(Comparator.comparingDouble(Glance::area)).orElseThrow();
    double all = job.demands().stream().mapToDouble(Glance::area).sum();
    Layout best = null;
    for (SheetStock sheet : job.sheets()) {
      if (sheet.available().orElse(1) > 0) {
        Layout layout =
            new Packer(sheet, job.cutting(), job.search()).structured(main.piece()).layout();
        if (best == null || layout.areaYield() > best.areaYield()) {
          best = layout;
        }
      }
    }
    if (best == null || best.placements().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Glance(main, best, (int) Math.ceil(all / best.pieceArea())));
  }

  private static double area(Demand demand) {
    return demand.piece().shape().area() * demand.count();
  }
}
