package curvestock.compare;

import curvestock.job.Job;
import curvestock.packing.Control;
import curvestock.packing.Effort;
import curvestock.packing.Packer;
import curvestock.packing.SearchSettings;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Finds the steps: changes each length of a choice up and down until a sheet holds more or fewer
 * pieces. A change is tried by laying the pieces out anew; where no layout is found nothing is
 * claimed but that.
 */
final class Steps {

  private final Job job;
  private final SegmentOption option;
  private final SheetStock main;
  private final CompareListener listener;

  Steps(Job job, SegmentOption option, SheetStock main, CompareListener listener) {
    this.job = job;
    this.option = option;
    this.main = main;
    this.listener = listener;
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
    return new Sensitivity(option, option.fill().isPattern(), steps);
  }

  /**
   * Notes the first change that alters the count and, going on, the first that alters the sheets.
   */
  private void climb(List<Sensitivity.Step> steps, Dimension dimension, int sign) {
    int base = option.perSheet();
    int baseSheets = Sensitivity.sheets(option, base);
    boolean noted = false;
    for (Length rung : rungs(dimension)) {
      if (listener.stopped()) {
        return;
      }
      Length change = rung.times(sign);
      Optional<Job> changed = dimension.change(job, option.segments(), main, change);
      if (changed.isEmpty()) {
        return;
      }
      int found = count(changed.get());
      int count = dimension.eases(change) ? Math.max(base, found) : found;
      int sheets = Sensitivity.sheets(option, count);
      if ((count != base && !noted) || sheets != baseSheets) {
        steps.add(new Sensitivity.Step(dimension, change, count, sheets));
        noted = true;
      }
      if (sheets != baseSheets) {
        return;
      }
    }
  }

  /** All changes by pattern; a search takes longer, so only the smallest and a large one. */
  private List<Length> rungs(Dimension dimension) {
    List<Length> ladder = dimension.ladder(job.style().unit().isImperial());
    return option.fill().isPattern() ? ladder : List.of(ladder.get(0), ladder.get(2));
  }

  private int count(Job changed) {
    SheetStock sheet =
        changed.sheets().stream()
            .filter(offer -> offer.name().equals(main.name()))
            .findFirst()
            .orElseThrow();
    SearchSettings quick = new SearchSettings(job.search().seed(), Effort.QUICK);
    Packer packer = new Packer(sheet, changed.cutting(), quick);
    Segments segments = new Segments(changed);
    if (option.fill().isPattern()) {
      return packer.structured(segments.piece()).layout().placements().size();
    }
    // One piece more than now is enough to know.
    Control control = listener::stopped;
    return packer
        .most(segments.piece(), option.perSheet() + 1, control)
        .layout()
        .placements()
        .size();
  }
}
