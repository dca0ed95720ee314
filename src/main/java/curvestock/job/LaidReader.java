package curvestock.job;

import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.layout.LaidSheet;
import curvestock.layout.LaidSheet.LaidPiece;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.layout.TrueGaps;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import java.util.List;
import java.util.Optional;

/**
 * Reads {@code laid:}, sheets laid by hand. They must hold exactly the pieces that the job wants,
 * with the gaps and margins that it asks for: what is taken over is never wrong.
 */
final class LaidReader {

  private static final int MOST_SHEETS = 200;
  private static final int MOST_PIECES = 1000;
  private static final int LONGEST = 100;
  private static final double ANY_WAY = 360;

  private final Job job;

  private LaidReader(Job job) {
    this.job = job;
  }

  static Optional<List<LaidSheet>> read(Field field, Job job) {
    LaidReader reader = new LaidReader(job);
    return field
        .each("sheets", 1, MOST_SHEETS, reader::sheet)
        .filter(sheets -> reader.holdsWhatIsWanted(field, sheets));
  }

  private Optional<LaidSheet> sheet(Field field) {
    Optional<Block> block = field.block("sheet", "pieces");
    Optional<SheetStock> stock =
        block.flatMap(b -> b.need("sheet", "sheet: birch")).flatMap(this::stock);
    Optional<List<LaidPiece>> pieces =
        block
            .flatMap(b -> b.need("pieces", "pieces: [{piece: A, at: [12 in, 3 in], turn: 0}]"))
            .flatMap(list -> list.each("pieces", 0, MOST_PIECES, this::piece));
    if (stock.isEmpty() || pieces.isEmpty()) {
      return Optional.empty();
    }
    LaidSheet laid = new LaidSheet(stock.get(), pieces.get());
    return holds(field, laid) ? Optional.of(laid) : Optional.empty();
  }

  private Optional<SheetStock> stock(Field field) {
    Optional<String> name = field.line(LONGEST);
    Optional<SheetStock> found =
        name.flatMap(
            wanted -> job.boards().stream().filter(each -> each.name().equals(wanted)).findFirst());
    if (name.isPresent() && found.isEmpty()) {
      field.note("this job has no sheet " + Words.quoted(name.get()));
    }
    return found;
  }

  private Optional<LaidPiece> piece(Field field) {
    Optional<Block> block = field.block("piece", "number", "at", "turn", "pinned");
    if (block.isEmpty()) {
      return Optional.empty();
    }
    Optional<Piece> piece = block.get().need("piece", "piece: A").flatMap(this::kind);
    Optional<Point> at = block.get().need("at", "at: [12 in, 3 in]").flatMap(Field::point);
    Optional<Double> turn =
        block
            .get()
            .find("turn")
            .map(given -> given.angle(-ANY_WAY, ANY_WAY).map(angle -> angle.radians()))
            .orElse(Optional.of(0.0));
    String number = block.get().find("number").flatMap(each -> each.line(LONGEST)).orElse("");
    boolean pinned = block.get().find("pinned").flatMap(Field::flag).orElse(false);
    return block
        .get()
        .build(
            () ->
                new LaidPiece(
                    new Placement(
                        piece.orElseThrow(),
                        new Pose(at.orElseThrow().x(), at.orElseThrow().y(), turn.orElseThrow())),
                    number,
                    pinned));
  }

  private Optional<Piece> kind(Field field) {
    Optional<String> id = field.line(LONGEST);
    Optional<Piece> found =
        id.flatMap(
            wanted ->
                job.demands().stream()
                    .map(Demand::piece)
                    .filter(piece -> piece.id().equals(wanted))
                    .findFirst());
    if (id.isPresent() && found.isEmpty()) {
      field.note("this job has no piece " + Words.quoted(id.get()));
    }
    return found;
  }

  private boolean holds(Field field, LaidSheet laid) {
    Layout layout = laid.layout(job.cutting());
    if (layout.placements().isEmpty() || TrueGaps.hold(layout)) {
      return true;
    }
    long bad = TrueGaps.tightest(layout).stream().filter(gap -> !gap.holds()).count();
    field.note(
        "%s %s too close to another, to the edge, or to a knot; move them apart, or delete `laid:` to have the sheets planned again"
            .formatted(bad, bad == 1 ? "piece is" : "pieces are"));
    return false;
  }

  private boolean holdsWhatIsWanted(Field field, List<LaidSheet> sheets) {
    for (Demand demand : job.demands()) {
      long held =
          sheets.stream()
              .flatMap(sheet -> sheet.pieces().stream())
              .filter(piece -> piece.placement().piece().equals(demand.piece()))
              .count();
      if (held != demand.count()) {
        field.note(
            "holds %s of piece %s, but the job wants %s; delete `laid:` to have the sheets planned again"
                .formatted(held, demand.piece().id(), demand.count()));
        return false;
      }
    }
    return true;
  }
}
