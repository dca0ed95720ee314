package curvestock.compare;

import java.util.List;

/**
 * Passes on what a comparison says, and works out how much of it is done: each stage has its usual
 * share of the time. May be called from several threads at once.
 */
final class Stages implements CompareListener {

  /** The stages in their order, with their usual shares of the time. */
  enum Stage {
    PATTERNS(0, 0.04),
    SCAN(0.04, 0.1),
    PLANS(0.14, 0.5),
    DEEPER(0.64, 0.12),
    MIXED(0.76, 0.1),
    CHANGES(0.86, 0.1),
    MORE(0.96, 0.04);

    private final double before;
    private final double share;

    Stage(double before, double share) {
      this.before = before;
      this.share = share;
    }
  }

  private final CompareListener to;
  private Stage stage = Stage.PATTERNS;
  private int parts = 1;

  Stages(CompareListener to) {
    this.to = to;
  }

  synchronized void stage(Stage next, String what) {
    stage = next;
    parts = 1;
    to.overall(next.before);
    to.step(what);
  }

  /** So many parts of the stage are done. */
  synchronized void part(int done, int of) {
    parts = of;
    to.overall(stage.before + stage.share * done / of);
  }

  @Override
  public synchronized void step(String what) {
    to.step(what);
  }

  @Override
  public synchronized void worked(long done, long budget) {
    to.worked(done, budget);
    if (parts == 1 && budget > 0 && stage == Stage.CHANGES) {
      to.overall(stage.before + stage.share * done / budget);
    }
  }

  @Override
  public boolean stopped() {
    return to.stopped();
  }

  @Override
  public synchronized void planned(SegmentOption option) {
    to.planned(option);
  }

  @Override
  public void choices(Comparison soFar) {
    to.choices(soFar);
  }

  @Override
  public void firstLook(List<FirstLook> looks) {
    to.firstLook(looks);
  }
}
