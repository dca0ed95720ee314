package curvestock.answer;

import curvestock.compare.Comparison;
import curvestock.compare.Division;
import curvestock.compare.JointPrice;
import curvestock.job.Job;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;

/** Which segment size, in a sentence, while plans of the sizes still arrive. */
public final class DecisionWords {

  private final Figures figures;

  public DecisionWords(Job job) {
    this.figures = Figures.of(job);
  }

  /** The sentence while some sizes are known by a regular pattern alone. */
  public String soFar(Division best, int sheets, Money paid, int planned, int all) {
    return "%s so far: about %s, %s. %s"
        .formatted(
            card(best),
            Figures.count(sheets, "sheet"),
            figures.money(paid),
            planned == 0
                ? "Quick count; each size is planned next."
                : planned + " of " + all + " sizes are planned.");
  }

  /** The sentence when every size that can be cut has its plan, and what would change it. */
  public List<String> whole(Comparison comparison) {
    CompareWords words = new CompareWords(Choices.of(comparison));
    List<String> lines = new ArrayList<>();
    words.decision().ifPresent(lines::add);
    lines.addAll(words.changes());
    return lines;
  }

  /** What a joint counts for. */
  public String joint(JointPrice joint) {
    return figures.money(joint.each());
  }

  /** What a size is called, on a card or as a sentence begins: {@code Quarters (90°)}. */
  public static String card(Division division) {
    String words = SegmentName.plural(division);
    return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }
}
