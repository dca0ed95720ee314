package curvestock.packing;

import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.layout.TrueGap;
import curvestock.layout.TrueGaps;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;

/**
 * Brings free pieces into order round pinned ones and adds more, one piece at a time; see {@link
 * Packer#continueFrom}.
 */
final class Continuation {

  private final OneSheet sheet;
  private final Arrangement from;
  private final int pinned;
  private final Control control;
  private final Consumer<Continued> better;

  private Layout layout;
  private final List<Piece> leftOut = new ArrayList<>();
  private int added;

  Continuation(OneSheet sheet, Arrangement from, Control control, Consumer<Continued> better) {
    this.sheet = sheet;
    this.from = from;
    this.pinned = from.pinned().size();
    this.control = control;
    this.better = better;
    this.layout = sheet.of(from.pinned());
  }

  Continued run() {
    List<TrueGap> broken = TrueGaps.broken(layout);
    if (!broken.isEmpty()) {
      throw new PinnedConflictException(broken);
    }
    keepWhatHolds();
    tell();
    if (!leftOut.isEmpty()) {
      bringAllIn();
    }
    for (Demand demand : from.more()) {
      addMore(demand);
    }
    return now();
  }

  private Continued now() {
    return new Continued(layout, pinned, leftOut, added);
  }

  private void tell() {
    better.accept(now());
  }

  /** The free pieces that are right where they lie, each judged with those before it. */
  private void keepWhatHolds() {
    for (Placement placement : from.free()) {
      List<Placement> with = new ArrayList<>(layout.placements());
      with.add(placement);
      Layout trial = sheet.of(with);
      if (TrueGaps.holdFrom(with.size() - 1, trial)) {
        layout = trial;
      } else {
        leftOut.add(placement.piece());
      }
    }
  }

  /** All free pieces moved at once, from where they lie; if that fails, as many as go in. */
  private void bringAllIn() {
    List<Placement> all = new ArrayList<>(from.pinned());
    all.addAll(from.free());
    Layout start = sheet.of(all);
    Optional<Layout> found = solve(start.pieces(), OneSheet.poses(start));
    if (found.isPresent()) {
      layout = found.get();
      leftOut.clear();
      tell();
      return;
    }
    List<Piece> missing = List.copyOf(leftOut);
    for (Piece piece : missing) {
      if (oneMore(piece)) {
        leftOut.remove(piece);
        tell();
      }
    }
  }

  private void addMore(Demand demand) {
    for (int k = 0; k < demand.count() && oneMore(demand.piece()); k++) {
      added++;
      tell();
    }
  }

  /** One more piece in the free wood, or with all free pieces moved. */
  private boolean oneMore(Piece piece) {
    if (control.stopped()) {
      return false;
    }
    SplittableRandom random = sheet.randomFor(layout);
    Optional<Layout> more = sheet.insert(piece, layout, random);
    if (more.isEmpty() && layout.pieceArea() + piece.shape().area() < sheet.area()) {
      List<Piece> pieces = new ArrayList<>(layout.pieces());
      pieces.add(piece);
      more = solve(pieces, OneSheet.poses(layout));
    }
    more.ifPresent(found -> layout = withPinned(found));
    return more.isPresent();
  }

  private Optional<Layout> solve(List<Piece> pieces, double[] known) {
    boolean[] frozen = new boolean[pieces.size()];
    Arrays.fill(frozen, 0, pinned, true);
    return sheet
        .solve(pieces, frozen, List.of(known), sheet.budget(), control)
        .map(this::withPinned);
  }

  /** The pinned pieces as they were given, whatever arithmetic did to their angles. */
  private Layout withPinned(Layout found) {
    List<Placement> placements = new ArrayList<>(from.pinned());
    placements.addAll(found.placements().subList(pinned, found.placements().size()));
    return sheet.of(placements);
  }
}
