package curvestock.helix.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.answer.DemoPlans;
import curvestock.helix.verdict.Rule.Sense;
import curvestock.helix.verdict.Verdict.State;
import curvestock.job.Job;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Quantity;
import curvestock.units.Share;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A printed number never says otherwise than its verdict. */
class PrintedVerdictsTest {

  static List<Path> helices() {
    return DemoPlans.files().stream()
        .filter(file -> DemoPlans.job(file).structure().isPresent())
        .toList();
  }

  @ParameterizedTest
  @MethodSource("helices")
  void numbers_ofEveryDemoVerdict_agreeWithIt(Path file) {
    Job job = DemoPlans.job(file);
    job.structure().orElseThrow().plan().advice().forEach(v -> requireRight(v, job.style()));
  }

  /** A rule of thumb for an easement is no limit: what is missing is measured as nothing. */
  private static void requireRight(Verdict v, LengthStyle style) {
    if (v.measured().isEmpty() || v.needed().isEmpty() || v.rule() == Rule.SPLICE_PLATE) {
      return;
    }
    double has = printed(v, v.measured().get(), style);
    double needs = printed(v, v.needed().get(), style);
    boolean met = v.rule().sense() == Sense.AT_LEAST ? has >= needs : has <= needs;
    if (v.state() == State.OK) {
      assertThat(met).as("%s: %s", v.rule(), new VerdictWords(style).finding(v)).isTrue();
    } else if (v.state() == State.FAIL || !v.facts().containsKey(Fact.COMFORTABLE)) {
      assertThat(met).as("%s: %s", v.rule(), new VerdictWords(style).finding(v)).isFalse();
    }
  }

  private static double printed(Verdict v, Quantity quantity, LengthStyle style) {
    String words = new Figures(style).telling(v).printed(quantity).orElse("0");
    Matcher whole = Pattern.compile("^([0-9.]+)(?: ([0-9]+)/([0-9]+))?.*").matcher(words);
    Matcher part = Pattern.compile("^([0-9]+)/([0-9]+).*").matcher(words);
    if (part.matches()) {
      return Double.parseDouble(part.group(1)) / Double.parseDouble(part.group(2));
    }
    assertThat(whole.matches()).as(words).isTrue();
    return Double.parseDouble(whole.group(1))
        + (whole.group(2) == null
            ? 0
            : Double.parseDouble(whole.group(2)) / Double.parseDouble(whole.group(3)));
  }

  @ParameterizedTest
  @CsvSource({"2.9131, 2.9141, 16", "2.9131, 2.9141, 32", "2.91312, 2.91407, 0"})
  void height_aHairTooLow_isNotPrintedAsWhatIsNeeded(double has, double needs, int fraction) {
    Verdict verdict =
        Verdict.of(Rule.FREE_HEIGHT, State.FAIL)
            .at(Place.OPEN)
            .measuring(Length.ofInches(has))
            .against(Length.ofInches(needs))
            .with(Fact.COMFORTABLE, Length.ofInches(3.2))
            .with(Fact.SOURCE, new curvestock.units.Text("test"));
    LengthStyle style = new LengthStyle(curvestock.units.LengthUnit.INCH, fraction);

    assertThat(new VerdictWords(style).finding(verdict)).contains("2.913 in (2.914 in is needed");
    requireRight(verdict, style);
  }

  @Test
  void grade_aHairTooSteep_isNotPrintedAsTheLimit() {
    Verdict verdict =
        Verdict.of(Rule.GRADE, State.FAIL)
            .measuring(new Share(0.030004))
            .against(new Share(0.03))
            .with(Fact.RISE, Length.ofInches(4))
            .with(Fact.RUN, Length.ofInches(133))
            .with(Fact.WITH_DRAG, new Share(0.04));

    assertThat(new VerdictWords(LengthStyle.INCH_FRACTIONS).finding(verdict))
        .startsWith("3.0004 %")
        .contains("your limit is 3 %");
  }
}
