package curvestock.plan;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.app.Workshop;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.layout.Layout;
import curvestock.layout.TrueGaps;
import curvestock.piece.Demand;
import curvestock.purchase.Purchase;
import java.util.Comparator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A plan stopped before and after every stage: never worse than the purchase from patterns, and
 * right. Jobs are invented.
 */
class StoppedPlanTest {

  private static final Comparator<Purchase> BY_MONEY =
      Comparator.comparing(Purchase::sheetCost).thenComparingInt(Purchase::sheets);

  private static final String START =
      """
      curvestock: 1
      units: in
      currency: $
      cutting: {kerf: 1/8, margin: 1/4}
      search: {effort: quick}
      """;

  /** Jobs that between them go through all stages. */
  private enum Given {
    /** A search finds room for the twelfth, so that one panel does. */
    CHEAPER_BY_A_SEARCH(
        """
        sheets: [{name: panel, size: 4x4 ft, thickness: 1/2, price: 40}]
        pieces: [{name: arc, count: 12, arc: {radius: 16, width: 3, angle: 120}}]
        """),
    /** A limit is proven, and the last panel emptied. */
    TWO_KINDS(
        """
        sheets: [{name: panel, size: 4x4 ft, thickness: 1/2, price: 40}]
        pieces:
          - {name: arc, count: 8, arc: {radius: 15, width: 3, angle: 180}}
          - {name: small, count: 6, arc: {radius: 12, width: 3, angle: 90}}
        """),
    /** What whole sheets would cost is worked out too. */
    RIPPED(
        """
        sheets: [{name: ply, size: 4x8 ft, thickness: 1/2, price: 40}]
        store-cuts: {price: 2, tolerance: 1/8, carry: 50x50}
        pieces:
          - {name: arc, count: 9, arc: {radius: 18, width: 3, angle: 120}}
          - {name: plate, count: 12, strip: {length: 6, width: 3}}
        """),
    /** No pattern lies on the triangle: a piece has to be put in. */
    ASKEW(
        """
        sheets:
          - {name: corner, corners: [[0, 0], [30, 0], [0, 30]], thickness: 1/2, price: 10, available: 4}
        pieces: [{name: bar, count: 4, strip: {length: 34, width: 2}}]
        """);

    @SuppressWarnings("ImmutableEnumChecker") // a job is a record of immutable things
    private final Job job;

    Given(String lines) {
      this.job = JobReader.read(START + lines, "stops.yaml");
    }
  }

  private static Plan plan(Job job, Stopper stopper) throws Infeasible {
    return Workshop.plan(job, stopper, stopper.packers());
  }

  @Test
  void plan_searchPays_theTestSeesItsStages() throws Exception {
    Stopper never = Stopper.never();
    Plan last = plan(Given.CHEAPER_BY_A_SEARCH.job, never);
    Plan first = plan(Given.CHEAPER_BY_A_SEARCH.job, Stopper.fromQuestion(1));

    assertThat(BY_MONEY.compare(last.purchase(), first.purchase())).isNegative();
    assertThat(never.steps()).anyMatch(step -> step.startsWith("trying to fit 12 of A"));
  }

  @ParameterizedTest
  @EnumSource(Given.class)
  void plan_stoppedRoundEveryStage_isRightAndNoWorseThanPatterns(Given given) throws Exception {
    Stopper never = Stopper.never();
    Purchase last = plan(given.job, never).purchase();
    Stopper first = Stopper.fromQuestion(1);
    Purchase patterns = plan(given.job, first).purchase();

    for (int question : never.questionsRoundSteps()) {
      Stopper stopper = Stopper.fromQuestion(question);
      Plan plan = plan(given.job, stopper);
      String when = "stopped at question " + question;
      requireRight(plan, when);
      assertThat(plan.stopped()).as(when).isTrue();
      assertThat(BY_MONEY.compare(plan.purchase(), patterns)).as(when).isLessThanOrEqualTo(0);
      assertThat(BY_MONEY.compare(plan.purchase(), last)).as(when).isGreaterThanOrEqualTo(0);
      requireShort(stopper, when);
    }
  }

  private static void requireRight(Plan plan, String when) {
    for (Layout layout : plan.layouts()) {
      assertThat(TrueGaps.hold(layout)).as(when).isTrue();
    }
    for (Demand demand : plan.job().demands()) {
      int held = plan.layouts().stream().mapToInt(layout -> layout.count(demand.piece())).sum();
      assertThat(held).as(when).isEqualTo(demand.count());
    }
  }

  /** At most the rest of the first answer, or one choice among what was found. */
  private static void requireShort(Stopper stopper, String when) {
    assertThat(stopper.lateSteps()).as(when).isLessThanOrEqualTo(2);
    assertThat(stopper.lateWork()).as(when).isZero();
    assertThat(stopper.latePackings()).as(when).isLessThanOrEqualTo(8);
  }

  /** What is promised at a glance is what a stop at once gives, for the job built in. */
  @Test
  void plan_builtInJobStoppedAtOnce_takesTheSheetsOfTheGlance() throws Exception {
    Job job = Workshop.readJob(java.util.Optional.empty());

    Plan plan = plan(job, Stopper.fromQuestion(1));

    assertThat(plan.purchase().sheets()).isEqualTo(Workshop.glance(job).orElseThrow().sheets());
  }
}
