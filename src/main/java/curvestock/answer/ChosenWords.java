package curvestock.answer;

import curvestock.compare.Comparison;
import curvestock.compare.Division;
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
        "Planned as your job says, in "
            + chosen(own.division(), buying.sheets(), buying.cost().paid(), own.joints());
    if (own.division().equals(best.division())) {
      return planned + "; no other size compared is better.";
    }
    String other =
        "; "
            + chosen(
                best.division(),
                best.sheets() - best.assumedSheets(),
                best.sheetCost().minus(best.assumedCost()),
                best.joints())
            + " would ";
    Money paid = buying.cost().paid().plus(own.assumedCost());
    long saved = all(own, paid, joint) - all(best, best.sheetCost(), joint);
    String counted = ", counting " + CompareWords.counted(comparison.job(), joint) + ".";
    return planned
        + other
        + (saved > 0 ? "save " + figures.money(new Money(saved)) : "save nothing")
        + counted;
  }

  private String chosen(Division division, int sheets, Money paid, int joints) {
    return SegmentName.plural(division)
        + ": "
        + Figures.count(sheets, "sheet")
        + ", "
        + figures.money(paid)
        + ", "
        + Figures.count(joints, "joint");
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
