package curvestock.answer;

import curvestock.compare.Comparison;
import curvestock.compare.JointPrice;
import curvestock.compare.SegmentOption;
import curvestock.units.Money;
import java.util.Optional;

/** What was chosen, what the comparison would choose, and what that would save: one sentence. */
public final class ChosenWords {

  private final Answer answer;
  private final Figures figures;

  public ChosenWords(Answer answer) {
    this.answer = answer;
    this.figures = answer.figures();
  }

  /** The sentence; empty if sizes were not compared, or not the one that is planned. */
  public Optional<String> sentence() {
    return answer
        .choices()
        .map(Choices::comparison)
        .flatMap(comparison -> comparison.own().flatMap(own -> sentence(comparison, own)));
  }

  private Optional<String> sentence(Comparison comparison, SegmentOption own) {
    return comparison.best().map(best -> sentence(comparison, own, best));
  }

  private String sentence(Comparison comparison, SegmentOption own, SegmentOption best) {
    Buying buying = answer.bought();
    JointPrice joint = comparison.recommendation().orElseThrow().joint();
    String planned =
        "Your job is set for %s: %s, %s, %s."
            .formatted(
                SegmentName.plural(own.division()),
                Figures.count(buying.sheets(), "sheet"),
                figures.money(buying.cost().paid()),
                Figures.count(own.joints(), "joint"));
    if (own.division().equals(best.division())) {
      return planned + " No other size compared is better.";
    }
    Money paid = buying.cost().paid().plus(own.assumedCost());
    long saved = all(own, paid, joint) - all(best, best.sheetCost(), joint);
    int fewer = own.joints() - best.joints();
    if (isSame(best, buying) && saved > 0 && saved == joint.each().times(fewer).minorUnits()) {
      return "%s %s would need the same %s and %s fewer %s. If a joint costs you %s in time and parts, that saves %s."
          .formatted(
              planned,
              DecisionWords.card(best.division()),
              Figures.count(buying.sheets(), "sheet"),
              fewer,
              fewer == 1 ? "joint" : "joints",
              figures.money(joint.each()),
              figures.money(new Money(saved)));
    }
    return "%s %s would need %s with %s, and %s, counting %s."
        .formatted(
            planned,
            DecisionWords.card(best.division()),
            sheets(best, buying),
            Figures.count(best.joints(), "joint"),
            saved > 0 ? "save " + figures.money(new Money(saved)) : "save nothing",
            CompareWords.counted(comparison.job(), joint));
  }

  /** Those of the other size, plates left out that the job does not list. */
  private String sheets(SegmentOption best, Buying buying) {
    String sheets = Figures.count(best.sheets() - best.assumedSheets(), "sheet");
    return isSame(best, buying)
        ? "the same " + sheets
        : "%s, %s,".formatted(sheets, figures.money(best.sheetCost().minus(best.assumedCost())));
  }

  /** Whether the other size needs as many sheets for the same money. */
  private static boolean isSame(SegmentOption best, Buying buying) {
    return best.sheets() - best.assumedSheets() == buying.sheets()
        && best.sheetCost().minus(best.assumedCost()).equals(buying.cost().paid());
  }

  /** As the recommendation weighs it, with what is really paid for sheets. */
  private static long all(SegmentOption option, Money sheets, JointPrice joint) {
    return sheets
            .plus(option.work().cutting())
            .plus(joint.each().times(option.joints()))
            .minorUnits()
        - option.offcutsWorth().minorUnits();
  }
}
