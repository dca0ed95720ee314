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
record Remembered(PackedStore store, SheetStock sheet, Cutting cutting, SearchSettings settings) {

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
    if (store == PackedStore.NONE) {
      return work.get();
    }
    List<Piece> pieces =
        Stream.concat(wanted.stream().map(Demand::piece), before.stream()).distinct().toList();
    String key = key(task, wanted, beside);
    Optional<Packed> known =
        store
            .find(key)
            .flatMap(text -> PackedText.read(text, sheet, cutting, pieces))
            .filter(packed -> isSound(packed, wanted, before));
    if (known.isPresent()) {
      return known.get();
    }
    Packed packed = work.get();
    if (!control.stopped()) {
      store.keep(key, PackedText.of(packed, pieces));
    }
    return packed;
  }

  /** All that a packing follows from. */
  String key(String task, List<Demand> wanted, String beside) {
    return PackedText.key(sheet, cutting, settings, task, wanted, beside);
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
