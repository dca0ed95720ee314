package curvestock.compare;

import java.util.List;
import java.util.Set;

/**
 * Passes on what a comparison says, and works out how much of it is done: each stage has its usual
 * share of the time. May be called from several threads at once.
 */
final class Stages implements CompareListener {

  /** The stages in their order, with how long each usually takes beside the others. */
  enum Stage {
    PATTERNS(1),
    SCAN(10),
    PLANS(60),
    DEEPER(15),
    MIXED(8),
    CHANGES(14),
    MORE(8),
    EARS(12);

    private final double weight;

    Stage(double weight) {
      this.weight = weight;
    }
  }

  private final CompareListener to;
  private final Set<Stage> coming;
  private final double all;
  private Stage stage = Stage.PATTERNS;
  private int parts = 1;

  /**
   * @param coming the stages that there will be
   */
  Stages(CompareListener to, Set<Stage> coming) {
    this.to = to;
    this.coming = Set.copyOf(coming);
    this.all = coming.stream().mapToDouble(next -> next.weight).sum();
  }

  /** Share of the whole that is done before a stage begins. */
  private double before(Stage next) {
    return coming.stream()
            .filter(other -> other.compareTo(next) < 0)
            .mapToDouble(other -> other.weight)
            .sum()
        / all;
  }

  synchronized void stage(Stage next, String what) {
    stage = next;
    parts = 1;
    to.overall(before(next));
    to.step(what);
  }

  /** So many parts of the stage are done. */
  synchronized void part(int done, int of) {
    parts = of;
    to.overall(before(stage) + stage.weight / all * done / of);
  }

  @Override
  public synchronized void step(String what) {
    to.step(what);
  }

  @Override
  public synchronized void worked(long done, long budget) {
    to.worked(done, budget);
    if (parts == 1 && budget > 0 && stage == Stage.CHANGES) {
      to.overall(before(stage) + stage.weight / all * done / budget);
    }
  }

  @Override
  public boolean stopped() {
    return to.stopped();
  }

  @Override
  public void choices(Comparison soFar) {
    to.choices(soFar);
  }

  @Override
  public void firstLook(List<SizeLook> looks) {
    to.firstLook(looks);
  }
}
