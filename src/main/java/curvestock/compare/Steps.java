package curvestock.compare;

import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.packing.Effort;
import curvestock.packing.Packed;
import curvestock.packing.Packer;
import curvestock.packing.Packers;
import curvestock.packing.SearchSettings;
import curvestock.piece.Piece;
import curvestock.plan.Infeasible;
import curvestock.plan.Planner;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Finds the steps: changes each length of a choice up and down until a sheet holds more or fewer
 * pieces. A change is tried by laying the pieces out anew; where the count could alter the sheets,
 * the whole job is planned anew. Where no layout is found nothing is claimed but that.
 */
final class Steps {

  /** Pairs of pieces that may be tested for one piece more. */
  private static final long ONE_MORE = 300_000;

  private final Designs designs;
  private final SegmentOption option;
  private final SheetFill fill;
  private final SheetStock main;
  private final Packers packers;
  private final CompareListener listener;
  private final int baseSheets;

  Steps(Designs designs, SegmentOption option, Packers packers, CompareListener listener) {
    this.designs = designs;
    this.option = option;
    this.fill = option.fill().orElseThrow();
    this.main = designs.mainSheet();
    this.packers = packers;
    this.listener = listener;
    this.baseSheets = baseSheets();
  }

  /** Sheets as planned where only the main sheet is on offer; else planned from it alone. */
  private int baseSheets() {
    Job job = designs.job();
    return job.sheets().size() == 1
        ? option.plan().purchase().sheets()
        : sheets(designs.on(job.on(List.of(main), job.cutting())));
  }

  Sensitivity find() {
    List<Sensitivity.Step> steps = new ArrayList<>();
    List<Dimension> dimensions = Arrays.asList(Dimension.values());
    int done = 0;
    for (Dimension dimension : dimensions) {
      listener.worked(done++, dimensions.size());
      climb(steps, dimension, -1);
      climb(steps, dimension, 1);
    }
    return new Sensitivity(option, baseSheets, fill.isPattern(), steps);
  }

  /**
   * Notes the first change that alters the count and, going on, the first that alters the sheets.
   */
  private void climb(List<Sensitivity.Step> steps, Dimension dimension, int sign) {
    int base = option.perSheet();
    boolean noted = false;
    for (Length rung : rungs(dimension)) {
      Length change = rung.times(sign);
      Optional<Designs> changed = dimension.change(designs, main, change);
      if (listener.stopped() || changed.isEmpty()) {
        return;
      }
      int count = clamped(dimension, change, count(changed.get(), dimension, change));
      int sheets = mayAlterSheets(count) ? sheets(changed.get()) : baseSheets;
      boolean breaksRule = designs.works() && !changed.get().works();
      if (listener.stopped() || (sheets < baseSheets && breaksRule)) {
        return;
      }
      if ((count != base && !noted) || sheets != baseSheets) {
        steps.add(new Sensitivity.Step(dimension, change, count, sheets));
        noted = true;
      }
      if (sheets != baseSheets) {
        return;
      }
    }
  }

  /**
   * A layout that holds before an easing change holds after it, and one found after the opposite
   * change held before it: a search that says otherwise was lucky or unlucky.
   */
  private int clamped(Dimension dimension, Length change, int count) {
    int base = option.perSheet();
    if (dimension.eases(change)) {
      return Math.max(base, count);
    }
    return dimension.eases(change.times(-1)) ? Math.min(base, count) : count;
  }

  /** Whether as many sheets of this count no longer come to the same number. */
  private boolean mayAlterSheets(int count) {
    return count != option.perSheet() && bySegment(count) != bySegment(option.perSheet());
  }

  private int bySegment(int perSheet) {
    return perSheet == 0 ? Sensitivity.Step.NONE : (option.pieces() + perSheet - 1) / perSheet;
  }

  private int sheets(Designs changed) {
    try {
      Job job = changed.in(option.division()).job().with(quick());
      return new Planner(job, new Named("a change", listener), packers)
          .planRoughly()
          .purchase()
          .sheets();
    } catch (Infeasible | IllegalArgumentException e) {
      return Sensitivity.Step.NONE;
    }
  }

  /** All changes by pattern; a search takes longer, so only the smallest and a large one. */
  private List<Length> rungs(Dimension dimension) {
    List<Length> ladder = dimension.ladder(designs.job().style().unit().isImperial());
    return fill.isPattern() ? ladder : List.of(ladder.get(0), ladder.get(2));
  }

  private int count(Designs changed, Dimension dimension, Length change) {
    Piece segment;
    try {
      segment = changed.segment(option.angle());
    } catch (IllegalArgumentException impossible) {
      return 0;
    }
    SheetStock sheet = changed.job().sheets().get(0);
    Packer packer = packers.of(sheet, changed.job().cutting(), quick());
    if (fill.isPattern()) {
      return packer.structured(segment).layout().placements().size();
    }
    return dimension.eases(change) ? eased(packer, segment) : harder(packer, segment);
  }

  /** What lay there before lies there still; perhaps one more. */
  private int eased(Packer packer, Piece segment) {
    Packed before = new Packed(before(segment, option.perSheet()), "search");
    return packer.oneMore(segment, before, ONE_MORE, listener.silent()).isPresent()
        ? option.perSheet() + 1
        : option.perSheet();
  }

  /**
   * All, if they can be pushed into place from where they lay before; else as many as a search
   * finds, since a loss must not be claimed only because pushing did not do.
   */
  private int harder(Packer packer, Piece segment) {
    int all = option.perSheet();
    return packer.pushed(before(segment, all)).isPresent()
        ? all
        : packer.most(segment, all, listener.silent()).layout().placements().size();
  }

  /** The former layout with the changed piece in it: no valid layout. */
  private Layout before(Piece segment, int count) {
    List<Placement> placements =
        fill.layout().placements().stream()
            .limit(count)
            .map(placement -> new Placement(segment, placement.pose()))
            .toList();
    return new Layout(fill.layout().sheet(), fill.layout().cutting(), placements);
  }

  private SearchSettings quick() {
    return designs.job().search().at(Effort.QUICK);
  }
}
