package curvestock.report;

import curvestock.answer.Answer;
import curvestock.answer.BenchWords;
import curvestock.answer.Building;
import curvestock.answer.Cautions;
import curvestock.answer.HelixWords;
import curvestock.answer.RemedyWords;
import curvestock.answer.Table;
import curvestock.helix.verdict.Verdict.State;
import java.util.List;

/** A whole helix: whether it works, why, and what it takes to build it. */
public final class HelixPaper {

  private final Answer answer;
  private final Building helix;
  private final HelixWords words;
  private final BenchWords bench;
  private final Parts parts = new Parts();

  private HelixPaper(Answer answer) {
    this.answer = answer;
    this.helix = answer.building().orElseThrow();
    this.words = new HelixWords(helix, answer.figures());
    this.bench = new BenchWords(helix, answer.figures());
  }

  /** What to read first. */
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

  private void write(boolean lists) {
    parts.say(words.decision());
    if (!helix.works()) {
      parts.bullets(words.failures());
      parts
          .section("What would work, all else as stated")
          .bullets(new RemedyWords(helix, answer.figures()).lines());
    }
    parts.table(helix.assumed()).say(helix.assumedCost());
    parts.section("Helix").bullets(words.course());
    parts.section("Does it work?");
    parts.bullets(words.checks(State.FAIL)).bullets(words.checks(State.MARGINAL));
    parts.bullets(words.checks(State.OK));
    parts.section("Height from rail top to rail top").bullets(words.budgets());
    parts.section("Entry and exit").bullets(words.ends());
    parts.section("Joints: " + helix.plan().spec().construction().title()).bullets(bench.joints());
    parts.table(helix.kinds());
    parts.section("Supports").bullets(bench.risers());
    parts.table(answer.shopping());
    parts.bullets(List.of(HelixWords.total(answer)));
    if (lists) {
      benchLists();
    }
    parts.section("Cautions").bullets(Cautions.ofBuilding());
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
    parts.say(bench.base());
    parts.table(helix.blocks()).bullets(bench.blockRemarks());
    parts.table(helix.rods());
    if (!helix.cuttingList().isEmpty()) {
      parts.section(bench.boardsTitle()).bullets(bench.boards());
    }
    parts.table(brief(helix));
    parts.table(helix.heights());
  }
}
