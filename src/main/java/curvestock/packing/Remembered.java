package curvestock.packing;

import curvestock.layout.TrueGaps;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Asks a store before packing, and tells it after. What the store gives back is judged by {@link
 * TrueGaps} like any other layout; whatever fails is packed anew.
 */
record Remembered(Packers packers, SheetStock sheet, Cutting cutting, SearchSettings settings) {

  private PackedStore store() {
    return packers.store();
  }

  /**
   * The packing, from the store or from the work.
   *
   * @param task what is asked, in a word
   * @param wanted at most as many of each lie in the answer, besides those that lie there before
   * @param before pieces that lie on the sheet before, in their places; may be empty
   * @param beside what else the answer follows from
   */
  Packed packed(
      String task,
      List<Demand> wanted,
      List<Piece> before,
      String beside,
      Control control,
      Supplier<Packed> work) {
    if (store() == PackedStore.NONE) {
      return work.get();
    }
    List<Piece> pieces =
        Stream.concat(wanted.stream().map(Demand::piece), before.stream()).distinct().toList();
    String key = key(task, wanted, beside);
    Optional<Packed> known = known(key, wanted, pieces, before);
    if (known.isPresent()) {
      return known.get();
    }
    Packed packed = work.get();
    if (!control.stopped()) {
      store().keep(key, PackedText.of(packed, pieces));
    }
    return packed;
  }

  /**
   * A search for as many of a piece as can be found, up to {@code atMost}. Where it ended before
   * that many, it would have ended at the same layout for any other number from what it found up to
   * {@code alike}, and so it is kept for all of them.
   *
   * @param beyond to this number a search takes a way of its own
   * @param alike the largest number up to which a search takes the same way
   */
  Packed most(
      Piece piece, int atMost, int beyond, int alike, Control control, Supplier<Packed> work) {
    List<Demand> wanted = List.of(new Demand(piece, atMost));
    if (store() == PackedStore.NONE || atMost <= beyond || atMost > alike) {
      return packed("most", wanted, List.of(), "", control, work);
    }
    List<Piece> pieces = List.of(piece);
    String ended = key("most, however many", List.of(new Demand(piece, 1)), "");
    Optional<Packed> known = known(ended, wanted, pieces, List.of());
    if (known.isPresent()) {
      return known.get();
    }
    Supplier<Packed> noted =
        () -> {
          Packed packed = work.get();
          if (packed.layout().placements().size() < atMost && !control.stopped()) {
            store().keep(ended, PackedText.of(packed, pieces));
          }
          return packed;
        };
    return packed("most", wanted, List.of(), "", control, noted);
  }

  private Optional<Packed> known(
      String key, List<Demand> wanted, List<Piece> pieces, List<Piece> before) {
    return store()
        .find(key)
        .flatMap(text -> PackedText.read(text, sheet, cutting, pieces))
        .filter(packed -> isSound(packed, wanted, before));
  }

  /** All that a packing follows from. */
  String key(String task, List<Demand> wanted, String beside) {
    String by = task + " " + packers.atlas().name();
    return PackedText.key(sheet, cutting, settings, by, wanted, beside);
  }

  private static boolean isSound(Packed packed, List<Demand> wanted, List<Piece> before) {
    for (Demand demand : wanted) {
      long there = before.stream().filter(demand.piece()::equals).count();
      if (packed.layout().count(demand.piece()) > demand.count() + there) {
        return false;
      }
    }
    return TrueGaps.hold(packed.layout());
  }
}
