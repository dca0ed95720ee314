package curvestock.report;

import curvestock.answer.Answer;
import curvestock.answer.AssemblyWords;
import curvestock.answer.BenchWords;
import curvestock.answer.Building;
import curvestock.answer.Cautions;
import curvestock.answer.FixingWords;
import curvestock.answer.HeightWords;
import curvestock.answer.HelixWords;
import curvestock.answer.RemedyWords;
import curvestock.answer.Table;
import curvestock.helix.verdict.Verdict.State;
import java.util.List;

/** A whole helix: whether it works, why, and what it takes to build it. */
public final class HelixPaper {

  /** So many rows of the shopping list fit a screen. */
  private static final int MOST_ITEMS = 7;

  private static final int FEWEST_ITEMS = 3;

  /** Lines of a screen, without the two and a blank in which a command says what it wrote. */
  private static final int SCREEN = 22;

  private final Answer answer;
  private final Building helix;
  private final HelixWords words;
  private final BenchWords bench;
  private final HeightWords heights;
  private final Parts parts = new Parts();

  private HelixPaper(Answer answer) {
    this.answer = answer;
    this.helix = answer.building().orElseThrow();
    this.words = new HelixWords(helix, answer.figures());
    this.bench = new BenchWords(helix, answer.figures());
    this.heights = new HeightWords(helix, answer.figures());
  }

  /** What decides: whether it works, what does not, its figures and what it costs. */
  public static List<String> brief(Answer answer) {
    List<String> lines = List.of();
    for (int items = MOST_ITEMS; items >= FEWEST_ITEMS; items--) {
      HelixPaper paper = new HelixPaper(answer);
      paper.write(items);
      lines = TextPaper.of(answer.heading(), paper.parts.done());
      if (lines.size() <= SCREEN) {
        break;
      }
    }
    return lines;
  }

  /** All checks and figures. */
  public static List<String> text(Answer answer) {
    HelixPaper paper = new HelixPaper(answer);
    paper.write(false);
    return TextPaper.of(answer.heading(), paper.parts.done());
  }

  /** The same with all that is taken to the bench: cutting lists, assembly, heights to check. */
  public static List<String> withLists(Answer answer) {
    HelixPaper paper = new HelixPaper(answer);
    paper.write(true);
    return TextPaper.of(answer.heading(), paper.parts.done());
  }

  private void write(int items) {
    decide(words.named());
    parts.say(words.size());
    parts.say(words.assumed()).say(helix.assumedCost());
    parts.say(Cautions.BUILDING_IN_A_LINE);
    Table shopping = answer.shopping().only("item", "quantity", "unit", "price");
    parts.table(shopping.first(items));
    int more = shopping.rows().size() - items;
    String total = HelixWords.total(answer);
    parts.bullets(List.of(more > 0 ? "%s more with --details. %s".formatted(more, total) : total));
  }

  private void decide(String decision) {
    parts.say(HelixWords.unfit(answer));
    boolean unfit = !answer.unfit().isEmpty();
    parts.say(unfit ? decision.replaceFirst("^The helix", "Apart from that the helix") : decision);
    if (!helix.works()) {
      parts.bullets(words.failures());
      parts
          .section("What would work, with all else as stated")
          .bullets(new RemedyWords(helix, answer.figures()).lines());
    }
  }

  private void write(boolean lists) {
    decide(words.decision());
    parts.table(helix.assumed()).say(helix.assumedCost());
    parts.section("Helix").bullets(words.course());
    parts.section("Does it work?").say(words.oneByOne());
    parts.bullets(words.checks(State.FAIL)).bullets(words.checks(State.MARGINAL));
    parts.bullets(words.checks(State.OK)).bullets(words.quoted().stream().toList());
    parts.section("Height from rail top to rail top").bullets(heights.budgets());
    parts.section("Entry and exit").bullets(heights.ends());
    parts.section("Joints: " + helix.plan().spec().construction().title()).bullets(bench.joints());
    parts.table(helix.kinds());
    parts.section("Supports").bullets(bench.risers());
    parts.table(answer.shopping());
    parts.bullets(List.of(HelixWords.total(answer), words.notListed()));
    if (lists) {
      benchLists();
    }
    parts.section("Cautions").bullets(Cautions.ofBuilding(helix.hasRods()));
  }

  /** The schedule as far as a page is wide; rail tops stand in the table of supports. */
  static Table brief(Building helix) {
    return helix
        .schedule()
        .only(
            "piece",
            "kind",
            "sheet",
            "turn",
            "bearingFrom",
            "bearingTo",
            "undersideFrom",
            "undersideTo",
            "lowerJoint",
            "upperJoint",
            "stations");
  }

  private void benchLists() {
    parts.section("Drilling and fastening").bullets(new FixingWords(helix, answer.figures()).all());
    parts.say(bench.base()).bullets(new AssemblyWords(helix, answer.figures()).order());
    parts.table(helix.blocks()).bullets(bench.blockRemarks());
    parts.table(helix.bySupport());
    parts.table(helix.rods());
    parts.table(helix.bridges()).bullets(bench.bridgeRemarks());
    if (!helix.cuttingList().isEmpty()) {
      parts.section(bench.boardsTitle()).bullets(bench.boards());
    }
    parts.table(brief(helix));
    parts.table(helix.heights());
  }
}
