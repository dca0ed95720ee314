package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.app.Workshop;
import curvestock.compare.CompareListener;
import curvestock.compare.Comparison;
import curvestock.compare.Question;
import curvestock.compare.Recommendation;
import curvestock.compare.SegmentOption;
import curvestock.job.Job;
import curvestock.packing.Effort;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.plan.Remnant;
import curvestock.units.Money;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a reader adds up with a pencil is what is printed; and a plan's figures are its row's. */
class MoneyAddsUpTest {

  private static final String MONEY = "\\$([0-9]+\\.[0-9]{2})";

  private static Plan plan;
  private static Comparison comparison;

  @BeforeAll
  static void compare() throws Exception {
    Job job = Workshop.readJob(Optional.empty());
    plan = Workshop.plan(job.with(job.search().at(Effort.NORMAL)), PlanListener.NONE);
    comparison = Workshop.compare(plan, Question.PLAIN, CompareListener.NONE);
  }

  private static String text() {
    return String.join(" ", new CompareWords(Choices.of(comparison)).reasons());
  }

  private static long cents(String money) {
    return Math.round(Double.parseDouble(money) * 100);
  }

  private static Matcher found(String pattern, String text) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    assertThat(matcher.find()).as(pattern + " in " + text).isTrue();
    return matcher;
  }

  @Test
  void saving_isTheJointsSavedTimesTheirPrice() {
    String words = new ChosenWords(Answer.of(plan).compared(comparison)).sentence().orElseThrow();
    Matcher found =
        found(
            MONEY
                + ", [0-9]+ joints\\. .* would need the same 2 sheets and ([0-9]+) fewer joints\\. If a joint costs you "
                + MONEY
                + " in time and parts, that saves "
                + MONEY,
            words);
    long joints = Long.parseLong(found.group(2));

    assertThat(joints).isPositive();
    assertThat(cents(found.group(4))).isEqualTo(joints * cents(found.group(3)));
  }

  @Test
  void oneMoreTurn_isItsSheetsAndJointsTimesTheirPrice() {
    Matcher found =
        found(
            "cost at most "
                + MONEY
                + ": 1 more sheet \\("
                + MONEY
                + "\\) and ([0-9]+) more joints at "
                + MONEY
                + "\\.",
            text());

    assertThat(cents(found.group(1)))
        .isEqualTo(cents(found.group(2)) + Long.parseLong(found.group(3)) * cents(found.group(4)));
  }

  /** Two sheets at 68.00 against five joints: 136.00 / 5 = 27.20. */
  @Test
  void priceOfAJointThatChangesTheAnswer_isTheSheetsByTheJoints() {
    Recommendation found = comparison.recommendation().orElseThrow();
    SegmentOption best = comparison.best().orElseThrow();
    Recommendation.Swing swing = found.dearerJoints().orElseThrow();
    SegmentOption other =
        comparison.options().stream()
            .filter(option -> option.division().equals(swing.division()))
            .findFirst()
            .orElseThrow();
    long sheets = other.sheetCost().minus(best.sheetCost()).minorUnits();
    int joints = best.joints() - other.joints();

    assertThat(swing.eachJoint()).isEqualTo(new Money((sheets + joints - 1) / joints));
  }

  @Test
  void rowOfTheSizeThatIsPlanned_showsThePlan() {
    SegmentOption own = comparison.own().orElseThrow();
    int most =
        plan.layouts().stream()
            .mapToInt(
                layout ->
                    (int)
                        layout.placements().stream()
                            .map(each -> each.piece().id())
                            .filter(own.segment().id()::equals)
                            .count())
            .max()
            .orElseThrow();

    assertThat(own.perSheet()).isEqualTo(most);
    assertThat(own.sheetCost()).isEqualTo(plan.cost().paid());
    assertThat(own.offcuts())
        .isEqualTo(plan.layouts().stream().flatMap(layout -> Remnant.of(layout).stream()).toList());
    assertThat(own.effort()).isEqualTo(Effort.NORMAL);
  }
}
