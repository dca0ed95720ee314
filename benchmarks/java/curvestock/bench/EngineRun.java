package curvestock.bench;

import curvestock.bound.Bound;
import curvestock.layout.Layout;
import curvestock.packing.Control;
import curvestock.packing.Packed;
import curvestock.packing.Packer;
import curvestock.packing.SearchSettings;

/**
 * The engine on one case. All times are processor seconds of the calling thread, which has to be
 * the only one that works.
 *
 * @param value pieces (single kind) or square millimetres (several kinds)
 * @param bound proven bound of a single kind; of several kinds the number wanted
 * @param toBest seconds until the final count: a second, fresh run that may stop there (the search
 *     repeats itself, so it takes the same way); for several kinds the whole run
 * @param whole seconds with the vain search for one piece more
 */
record EngineRun(
    double value,
    int pieces,
    int bound,
    String how,
    boolean valid,
    double areaYield,
    double toBest,
    double whole) {

  /** As many as a plan at normal effort allows. */
  private static final long PROOF_TESTS = 3_000_000;

  static EngineRun of(BenchCase c, SearchSettings settings) {
    return c.isMixed() ? mixed(c, settings) : single(c, settings);
  }

  private static EngineRun single(BenchCase c, SearchSettings settings) {
    Bound bound = Bound.quick(c.piece(), c.sheet(), c.cutting());
    double start = ProcessorTime.seconds();
    Packed packed =
        new Packer(c.sheet(), c.cutting(), settings).most(c.piece(), bound.count(), Control.NONE);
    double whole = secondsSince(start);
    int count = packed.layout().placements().size();
    start = ProcessorTime.seconds();
    Packed again =
        new Packer(c.sheet(), c.cutting(), settings).most(c.piece(), count, Control.NONE);
    double toBest = secondsSince(start);
    bound = bound.byEdges(c.piece(), c.sheet(), c.cutting(), false);
    bound = bound.byCases(c.piece(), c.sheet(), c.cutting(), count, PROOF_TESTS, Control.NONE);
    boolean same = again.layout().placements().size() == count;
    return new EngineRun(
        count,
        count,
        bound.count(),
        packed.how(),
        same && LayoutJudge.accepts(packed.layout()),
        packed.layout().areaYield(),
        toBest,
        whole);
  }

  private static EngineRun mixed(BenchCase c, SearchSettings settings) {
    double start = ProcessorTime.seconds();
    Packed packed = new Packer(c.sheet(), c.cutting(), settings).fill(c.wanted(), Control.NONE);
    double whole = secondsSince(start);
    Layout layout = packed.layout();
    boolean asked =
        c.wanted().stream().allMatch(demand -> layout.count(demand.piece()) <= demand.count());
    return new EngineRun(
        layout.pieceArea(),
        layout.placements().size(),
        c.wanted().stream().mapToInt(demand -> demand.count()).sum(),
        packed.how(),
        asked && LayoutJudge.accepts(layout),
        layout.areaYield(),
        whole,
        whole);
  }

  /** Seconds of a fresh run until it has this many of a single kind, or has found all it can. */
  static double secondsTo(int count, BenchCase c, SearchSettings settings) {
    double start = ProcessorTime.seconds();
    Packed packed =
        new Packer(c.sheet(), c.cutting(), settings).most(c.piece(), count, Control.NONE);
    double seconds = secondsSince(start);
    return packed.layout().placements().size() >= count ? seconds : Double.POSITIVE_INFINITY;
  }

  private static double secondsSince(double start) {
    return ProcessorTime.seconds() - start;
  }
}
