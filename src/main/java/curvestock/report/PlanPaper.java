package curvestock.report;

import curvestock.answer.Answer;
import curvestock.answer.Building;
import curvestock.answer.Buying;
import curvestock.answer.BuyingWords;
import curvestock.answer.Cautions;
import curvestock.answer.ChosenWords;
import curvestock.answer.Figures;
import curvestock.answer.HalfLapWords;
import curvestock.answer.HelixWords;
import curvestock.answer.Table;
import curvestock.job.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The summary of a plan: the decision, then its figures. */
public final class PlanPaper {

  /** So many rows of layouts fit a screen. */
  private static final int MOST_LAYOUTS = 10;

  private PlanPaper() {}

  public static List<String> text(Job job, Answer answer) {
    return TextPaper.of(answer.heading(), parts(job, answer).done());
  }

  /** What decides: what to buy, whether the helix works, and what lies on each sheet. */
  public static List<String> brief(Job job, Answer answer) {
    return TextPaper.of(answer.heading(), briefly(job, answer).done());
  }

  static Parts briefly(Job job, Answer answer) {
    BuyingWords words = new BuyingWords(answer);
    Parts parts = decided(job, answer, words, words.headline());
    parts.say(Cautions.CUTTING_IN_A_LINE);
    Table layouts = layouts(answer);
    parts.table(layouts.first(MOST_LAYOUTS));
    int more = layouts.rows().size() - MOST_LAYOUTS;
    parts.bullets(words.legend().stream().toList());
    return parts.bullets(
        more > 0
            ? List.of("and %s. %s".formatted(Figures.count(more, "more sheet"), words.used()))
            : List.of(words.used()));
  }

  static Parts parts(Job job, Answer answer) {
    Buying buying = answer.bought();
    BuyingWords words = new BuyingWords(answer);
    Parts parts = decided(job, answer, words, List.of(words.decided()));
    parts.table(kinds(buying));
    parts.bullets(HalfLapWords.added(job).stream().toList());
    parts.table(purchase(buying));
    parts.bullets(words.remarks());
    parts.table(buying.perSheet().only("kind", "sheet", "found", "standing", "limit"));
    parts.bullets(words.limitProofs());
    parts.bullets(words.obstacles());
    parts.bullets(words.least().stream().toList());
    parts.table(layouts(answer));
    parts.bullets(List.of(words.used()));
    answer.machineTime().ifPresent(time -> parts.bullets(time.words(answer.figures())));
    parts.table(buying.remnants());
    return parts.section("Cautions").bullets(Cautions.ofPacket());
  }

  private static Table layouts(Answer answer) {
    return answer
        .bought()
        .cuts()
        .only("number", "sheet", "kinds", "used", "offcutLength", "offcutWidth")
        .sides("offcutLength", "offcutWidth", "Offcut", answer.figures());
  }

  private static Parts decided(Job job, Answer answer, BuyingWords words, List<String> headline) {
    Parts parts = new Parts();
    Optional<Building> helix = answer.building();
    List<String> told =
        helix.map(built -> new HelixWords(built, answer.figures()).warnings()).orElse(List.of());
    // Nobody should buy wood for a helix that fails before he has read that it does.
    boolean fails = helix.filter(built -> !built.works()).isPresent();
    parts.say(fails ? told : List.of());
    parts.say(headline);
    parts.say(new ChosenWords(answer).sentence());
    parts.say(fails ? List.of() : told);
    parts.say(MachineNotes.overTheEdge(job));
    parts.say(words.loose());
    parts.say(translated(job));
    return parts.say(words.reservations());
  }

  /** How keys of an older format were read. */
  static List<String> translated(Job job) {
    return job.sources().stream().flatMap(source -> source.translated().stream()).toList();
  }

  private static Table kinds(Buying buying) {
    return buying.kinds().only("kind", "count", "name", "onSheets");
  }

  /** What is bought, without columns for what nobody asked. */
  static Table purchase(Buying buying) {
    List<String> keys = new ArrayList<>(List.of("sheet", "length", "width", "thickness"));
    Table all = buying.purchase();
    boolean asSold =
        IntStream.range(0, all.rows().size())
            .allMatch(row -> all.at(row, "thickness").equals(all.at(row, "measured")));
    if (!asSold) {
      keys.add("measured");
    }
    keys.addAll(List.of("bought", "used", "each", "cost"));
    return all.only(keys.toArray(String[]::new));
  }
}
