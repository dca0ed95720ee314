package curvestock.plan;

import curvestock.compare.CompareListener;
import curvestock.packing.PackedStore;
import curvestock.packing.Packers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Says stop from a question or a step on, and counts what goes on after the answer was yes. Steps,
 * questions and packings are counted, never seconds.
 */
public final class Stopper implements CompareListener {

  private final int fromQuestion;
  private final int fromStep;
  private int asked;
  private boolean told;
  private int late;
  private int worked;
  private final List<String> steps = new ArrayList<>();
  private final List<Integer> askedBefore = new ArrayList<>();
  private final AtomicInteger packings = new AtomicInteger();

  private Stopper(int fromQuestion, int fromStep) {
    this.fromQuestion = fromQuestion;
    this.fromStep = fromStep;
  }

  public static Stopper never() {
    return new Stopper(Integer.MAX_VALUE, Integer.MAX_VALUE);
  }

  /** Stops from that question on; the first is 1. */
  public static Stopper fromQuestion(int question) {
    return new Stopper(question, Integer.MAX_VALUE);
  }

  /** Stops as soon as that step begins; the first is 1. */
  public static Stopper fromStep(int step) {
    return new Stopper(Integer.MAX_VALUE, step);
  }

  @Override
  public synchronized void step(String what) {
    steps.add(what);
    askedBefore.add(asked);
    late += told ? 1 : 0;
  }

  @Override
  public synchronized void worked(long done, long budget) {
    worked += told ? 1 : 0;
  }

  @Override
  public synchronized boolean stopped() {
    asked++;
    boolean stop = asked >= fromQuestion || steps.size() >= fromStep;
    told |= stop;
    return stop;
  }

  /** Steps begun until now. */
  public synchronized List<String> steps() {
    return List.copyOf(steps);
  }

  /** The last question of every step, and the first of the next: before and after every stage. */
  public synchronized List<Integer> questionsRoundSteps() {
    return askedBefore.stream()
        .flatMap(before -> List.of(before, before + 1).stream())
        .filter(question -> question >= 1 && question <= asked)
        .distinct()
        .toList();
  }

  /** Steps begun after it was known that it is to stop. */
  public synchronized int lateSteps() {
    return late;
  }

  /** Reports of search work done after it was known that it is to stop. */
  public synchronized int lateWork() {
    return worked;
  }

  /** Layouts packed after it was known that it is to stop. */
  public int latePackings() {
    return packings.get();
  }

  private synchronized boolean told() {
    return told;
  }

  /** Packers that remember nothing, and count. */
  public Packers packers() {
    return new Packers(
        new PackedStore() {
          @Override
          public Optional<String> find(String key) {
            if (told()) {
              packings.incrementAndGet();
            }
            return Optional.empty();
          }

          @Override
          public void keep(String key, String text) {
            // Nothing is kept.
          }
        });
  }
}
