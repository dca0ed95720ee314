package curvestock.plan;

import curvestock.geometry.Box;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.packing.Control;
import curvestock.packing.Effort;
import curvestock.packing.Packed;
import curvestock.packing.Packer;
import curvestock.packing.Packers;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import java.util.List;
import java.util.Optional;
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

  /** A push rarely shortens an end by more than this share of what it could lose at best. */
  private static final double MOST_PUSHED = 0.5;

  /** Pieces times edges of all of them: with more, putting them in one by one takes long. */
  private static final long MOST_EDGES = 1_500;

  /** With more pieces than this a search takes too long for what it gains. */
  private static final int MOST_SEARCHED = 30;

  /** Orders of the kinds tried for each length. */
  private static final int ORDERS = 4;

  /** Millimetres that are not worth another try. */
  private static final double LEAST_GAIN = 2;

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

  /** Lengths tried with the pieces put in anew, one by one. */
  private int anew(Layout layout) {
    int edges =
        layout.pieces().stream().mapToInt(piece -> piece.shape().outline().edges().size()).sum();
    return (long) edges * layout.placements().size() > MOST_EDGES ? 4 : 5;
  }

  /** Lengths tried with the pieces pushed together from where they lie. */
  private static final int PUSHES = 12;

  /** The pieces in the shortest end that was found to hold them: first without a search. */
  private Layout shortest(Layout layout, boolean across) {
    SheetStock sheet = layout.sheet();
    double other = room(sheet, !across);
    double floor =
        Math.max(
            layout.pieceArea() / other / FULLEST,
            narrowest(layout, other - 2 * layout.cutting().margin().millimetres()));
    Layout best = halved(layout, across, floor, anew(layout), (from, end) -> anew(from, end));
    // What was too short to be filled anew may do with a search or a push, but seldom by much.
    if (layout.placements().size() <= MOST_SEARCHED) {
      best = halved(best, across, floor(best, across, floor), searches(), this::searched);
    }
    return halved(
        best, across, floor(best, across, floor), PUSHES, (from, end) -> pushed(from, end));
  }

  private static double floor(Layout best, boolean across, double floor) {
    double reach = extent(best, across);
    return Math.max(floor, reach - (reach - floor) * MOST_PUSHED);
  }

  private int searches() {
    return job.search().effort() == Effort.QUICK ? 2 : 4;
  }

  private Optional<Layout> searched(Layout from, SheetStock end) {
    long budget = job.search().effort() == Effort.QUICK ? 60_000 : 200_000;
    return packer(from, end).shrunk(from, budget, control);
  }

  /** A way to bring all pieces of a layout into a shorter end of its sheet. */
  private interface Shortening {
    Optional<Layout> into(Layout from, SheetStock end);
  }

  private Optional<Layout> anew(Layout from, SheetStock end) {
    int count = from.placements().size();
    return Optional.of(packer(from, end).fillAtOnce(Demand.counted(from.pieces()), ORDERS, control))
        .map(Packed::layout)
        .filter(layout -> layout.placements().size() == count);
  }

  private Optional<Layout> pushed(Layout from, SheetStock end) {
    return packer(from, end).pushed(from);
  }

  private Packer packer(Layout from, SheetStock end) {
    return packers.of(end, from.cutting(), job.search().at(Effort.QUICK));
  }

  private Layout halved(
      Layout layout, boolean across, double floor, int probes, Shortening shortening) {
    double least = floor;
    Layout best = layout;
    for (int probe = 0; probe < probes && !control.stopped(); probe++) {
      double most = extent(best, across);
      if (most - least < LEAST_GAIN) {
        break;
      }
      double middle = (least + most) / 2;
      Optional<Layout> tried =
          shortening
              .into(best, end(best, across, middle))
              .map(found -> new Layout(layout.sheet(), layout.cutting(), found.placements()));
      if (tried.isPresent()) {
        best = tried.get();
      } else {
        least = middle;
      }
    }
    return best;
  }

  private static double room(SheetStock sheet, boolean across) {
    return across ? sheet.length().millimetres() : sheet.width().millimetres();
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

  /** The end of the sheet of that extent, and what the margin takes. */
  private static SheetStock end(Layout layout, boolean across, double extent) {
    SheetStock sheet = layout.sheet();
    double margin = layout.cutting().margin().millimetres();
    double x = across ? extent + margin : sheet.length().millimetres();
    double y = across ? sheet.width().millimetres() : extent + margin;
    return new SheetStock(
        sheet.name(),
        Outline.rectangle(
            Math.min(x, sheet.length().millimetres()), Math.min(y, sheet.width().millimetres())),
        List.of(),
        sheet.thickness(),
        sheet.nominalThickness(),
        sheet.price(),
        OptionalInt.empty(),
        sheet.grain());
  }
}
