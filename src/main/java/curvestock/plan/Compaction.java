package curvestock.plan;

import curvestock.geometry.Box;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.packing.Control;
import curvestock.packing.Effort;
import curvestock.packing.Packers;
import curvestock.packing.SearchSettings;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import java.util.List;
import java.util.OptionalInt;

/**
 * Packs the pieces of a sheet that is not full anew, close together at one end, so that the rest is
 * one large {@link Remnant}.
 *
 * <p>Shorter and shorter ends of the sheet are filled, found by halving, once cut off across and
 * once along. A search: a larger remnant may exist.
 */
final class Compaction {

  /** Of more pieces than this the sheet is rather full, and packing it takes long. */
  private static final int MOST_PIECES = 60;

  /** Ends fuller than this are not tried: curved pieces seldom fill more. */
  private static final double FULLEST = 0.85;

  private static final int STEPS = 180;

  private final Job job;
  private final Control control;
  private final Packers packers;

  Compaction(Job job, Control control, Packers packers) {
    this.packers = packers;
    this.job = job;
    this.control = control;
  }

  /** The layout with the larger remnant: the given one, or its pieces packed anew. */
  Layout compacted(Layout layout) {
    Layout best = layout;
    if (layout.sheet().isRectangle()
        && layout.sheet().defects().isEmpty()
        && layout.placements().size() <= MOST_PIECES) {
      for (boolean across : new boolean[] {true, false}) {
        Layout other = shortest(layout, across);
        best = remnant(other) > remnant(best) ? other : best;
      }
    }
    return best;
  }

  private static double remnant(Layout layout) {
    return Remnant.of(layout).map(Remnant::area).orElse(0.0);
  }

  private int probes() {
    return job.search().effort() == Effort.QUICK ? 3 : 7;
  }

  /** The pieces in the shortest end that was found to hold them. */
  private Layout shortest(Layout layout, boolean across) {
    SheetStock sheet = layout.sheet();
    double other = across ? sheet.width().millimetres() : sheet.length().millimetres();
    double least =
        Math.max(
            layout.pieceArea() / other / FULLEST,
            narrowest(layout, other - 2 * layout.cutting().margin().millimetres()));
    double most = across ? sheet.length().millimetres() : sheet.width().millimetres();
    Layout best = layout;
    for (int probe = 0; probe < probes() && !control.stopped(); probe++) {
      double middle = (least + most) / 2;
      Layout tried = packed(layout, across, middle);
      if (tried.placements().size() == layout.placements().size()) {
        best = tried;
        most = Math.min(middle, extent(tried, across));
      } else {
        least = middle;
      }
    }
    return best;
  }

  /** The extent that the bulkiest piece takes, turned in steps so that it fits the other way. */
  private static double narrowest(Layout layout, double room) {
    double most = 0;
    for (Piece piece : layout.pieces().stream().distinct().toList()) {
      Outline outline = piece.shape().outline();
      double least = Double.POSITIVE_INFINITY;
      for (int step = 0; step < STEPS; step++) {
        Box box = outline.at(new Pose(0, 0, step * Math.PI / STEPS)).box();
        least = box.height() <= room ? Math.min(least, box.width()) : least;
      }
      most = Double.isFinite(least) ? Math.max(most, least) : most;
    }
    return most;
  }

  private static double extent(Layout layout, boolean across) {
    return across ? layout.reach().x() : layout.reach().y();
  }

  /** As many of the pieces as are found to fit the end of that extent, on the whole sheet. */
  private Layout packed(Layout layout, boolean across, double extent) {
    SheetStock sheet = layout.sheet();
    double margin = layout.cutting().margin().millimetres();
    double x = across ? extent + margin : sheet.length().millimetres();
    double y = across ? sheet.width().millimetres() : extent + margin;
    SheetStock end =
        new SheetStock(
            sheet.name(),
            Outline.rectangle(
                Math.min(x, sheet.length().millimetres()),
                Math.min(y, sheet.width().millimetres())),
            List.of(),
            sheet.thickness(),
            sheet.nominalThickness(),
            sheet.price(),
            OptionalInt.empty(),
            sheet.grain());
    SearchSettings quick = job.search().at(Effort.QUICK);
    Layout filled =
        packers
            .of(end, layout.cutting(), quick)
            .fill(Demand.counted(layout.pieces()), control)
            .layout();
    return new Layout(sheet, layout.cutting(), filled.placements());
  }
}
