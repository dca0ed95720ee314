package curvestock.app;

import curvestock.job.Job;
import curvestock.layout.Placement;
import curvestock.packing.Arrangement;
import curvestock.packing.Continued;
import curvestock.packing.Packer;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.plan.Infeasible;
import curvestock.plan.PlanListener;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.List;

/**
 * Improves sheets round the pieces that somebody has pinned: on those sheets the free pieces are
 * brought into order and pieces of the other sheets are added, the last sheets' first, so that a
 * sheet may become empty.
 */
final class RoundPins {

  private final Job job;
  private final PlanListener listener;
  private final List<LaidByHand> sheets;

  /** Pieces that found no room on their own sheet. */
  private final List<Piece> homeless = new ArrayList<>();

  RoundPins(Job job, List<LaidByHand> sheets, PlanListener listener) {
    this.job = job;
    this.sheets = new ArrayList<>(sheets);
    this.listener = listener;
  }

  /**
   * All sheets, improved; those without a piece left are gone.
   *
   * @throws Infeasible if a piece finds room on none of them
   * @throws curvestock.packing.PinnedConflictException if pinned pieces break a rule among
   *     themselves
   */
  List<LaidByHand> improved() throws Infeasible {
    for (int i = 0; i < sheets.size(); i++) {
      if (!sheets.get(i).pinned().isEmpty()) {
        listener.step("rearranging sheet " + (i + 1) + " around the pinned pieces");
        improve(i);
      }
    }
    for (int i = 0; i < sheets.size() && !homeless.isEmpty(); i++) {
      listener.step("finding room on sheet " + (i + 1));
      takeIn(i);
    }
    if (!homeless.isEmpty()) {
      throw new Infeasible(
          List.of("No room was found for " + homeless.get(0).name() + ": unpin a piece or two."));
    }
    return sheets.stream().filter(sheet -> !sheet.all().isEmpty()).toList();
  }

  private void improve(int number) {
    LaidByHand sheet = sheets.get(number);
    Arrangement from = new Arrangement(sheet.pinned(), sheet.free(), donated(number));
    Continued result = goneOn(sheet.sheet(), from);
    List<Placement> all = result.layout().placements();
    List<Placement> free = all.subList(result.pinned(), all.size());
    all.subList(all.size() - result.added(), all.size())
        .forEach(placement -> takeFromOthers(placement.piece(), number));
    homeless.addAll(result.leftOut());
    sheets.set(number, new LaidByHand(sheet.sheet(), sheet.pinned(), free));
  }

  private Continued goneOn(SheetStock sheet, Arrangement from) {
    return new Packer(sheet, job.cutting(), job.search())
        .continueFrom(from, listener, better -> {});
  }

  /** What lies free on sheets without a pin, the last sheets' pieces first. */
  private List<Demand> donated(int number) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = sheets.size() - 1; i >= 0; i--) {
      if (i != number && sheets.get(i).pinned().isEmpty()) {
        sheets.get(i).free().forEach(placement -> pieces.add(placement.piece()));
      }
    }
    return Demand.counted(pieces);
  }

  private void takeFromOthers(Piece piece, int number) {
    for (int i = sheets.size() - 1; i >= 0; i--) {
      LaidByHand sheet = sheets.get(i);
      if (i != number && sheet.pinned().isEmpty()) {
        List<Placement> free = new ArrayList<>(sheet.free());
        for (int k = free.size() - 1; k >= 0; k--) {
          if (free.get(k).piece().equals(piece)) {
            free.remove(k);
            sheets.set(i, new LaidByHand(sheet.sheet(), List.of(), free));
            return;
          }
        }
      }
    }
  }

  /** Lays homeless pieces beside all that lies on a sheet, none of which is moved. */
  private void takeIn(int number) {
    LaidByHand sheet = sheets.get(number);
    Arrangement from = new Arrangement(sheet.all(), List.of(), Demand.counted(homeless));
    Continued result = goneOn(sheet.sheet(), from);
    List<Placement> all = result.layout().placements();
    List<Placement> free = new ArrayList<>(sheet.free());
    for (Placement placement : all.subList(result.pinned(), all.size())) {
      free.add(placement);
      homeless.remove(placement.piece());
    }
    sheets.set(number, new LaidByHand(sheet.sheet(), sheet.pinned(), free));
  }
}
