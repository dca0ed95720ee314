package curvestock.report;

import curvestock.answer.Choices;
import curvestock.answer.CompareWords;
import curvestock.answer.Figures;
import curvestock.answer.Table;
import curvestock.compare.SizeLook;
import curvestock.job.Rates;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Segment sizes side by side: the recommendation, one table to decide by, then what it takes. */
public final class ComparePaper {

  private static final List<String> DECISIVE =
      List.of(
          "segment",
          "pieces",
          "perSheet",
          "sheets",
          "cost",
          "joints",
          "largestLength",
          "largestWidth");

  static final String STOPPED =
      "Stopped early: only what was compared up to then is shown; a full run may find better.";

  private ComparePaper() {}

  public static List<String> text(Choices choices) {
    return TextPaper.of(choices.heading(), parts(choices).done());
  }

  /** What decides: two sentences or a few, one table, and whatever was asked for besides. */
  public static List<String> brief(Choices choices) {
    CompareWords words = new CompareWords(choices);
    Parts parts = decided(choices, words);
    parts.table(decisive(choices, "offcutLength", "offcutWidth"));
    words.perSheet().ifPresent(parts::say);
    words.mixed(false).forEach(plan -> listed(parts, plan));
    asked(parts, choices, words);
    return TextPaper.of(choices.heading(), parts.done());
  }

  /** The first numbers, a line a choice. */
  public static List<String> firstLook(List<SizeLook> looks, Figures figures) {
    Table table = Choices.firstLook(looks);
    List<String> lines = new ArrayList<>(List.of(table.caption()));
    lines.addAll(
        TextPaper.of(
            table.only("segment", "pieces", "perSheet", "sheets", "cost", "joints"), figures));
    return lines;
  }

  static Parts parts(Choices choices) {
    CompareWords words = new CompareWords(choices);
    Parts parts = decided(choices, words);
    parts.table(decisive(choices, "best", "used", "search"));
    parts.table(joints(choices));
    parts.table(work(choices));
    parts.bullets(List.of(words.counted()));
    parts.bullets(words.remarks());
    words.mixed(true).forEach(plan -> listed(parts, plan));
    if (!words.sensitivity().isEmpty()) {
      parts.section("What would change the answer").bullets(words.sensitivity());
    }
    asked(parts, choices, words);
    return parts;
  }

  private static Parts decided(Choices choices, CompareWords words) {
    Parts parts = new Parts().say(words.decision()).say(words.reasons());
    if (choices.comparison().stopped()) {
      parts.notice(STOPPED);
    }
    return parts;
  }

  /** The answers to further questions of the command line. */
  private static void asked(Parts parts, Choices choices, CompareWords words) {
    if (!words.scan().isEmpty()) {
      parts.section("All angles from 30° to 180°, by quick count").bullets(words.scan());
      parts.table(choices.fewestPieces());
    }
    if (!words.reach().isEmpty()) {
      listed(parts, words.reach());
    }
  }

  private static void listed(Parts parts, List<String> lines) {
    parts.section(lines.get(0)).bullets(lines.subList(1, lines.size()));
  }

  /** The columns by which a size is chosen, and these after them. */
  private static Table decisive(Choices choices, String... after) {
    return sides(
        choices,
        choices
            .options()
            .only(Stream.concat(DECISIVE.stream(), Stream.of(after)).toArray(String[]::new)));
  }

  /** The largest piece and the offcut each in one column, as people say them. */
  static Table sides(Choices choices, Table table) {
    Figures figures = choices.heading().figures();
    return table
        .sides("largestLength", "largestWidth", choices.largestTitle(), figures)
        .sides("wholeLength", "wholeWidth", "Without a lead", figures)
        .sides("offcutLength", "offcutWidth", "Offcut", figures);
  }

  private static Table joints(Choices choices) {
    return sides(
            choices,
            choices
                .options()
                .only(
                    "segment",
                    "limit",
                    "wholeLength",
                    "wholeWidth",
                    "couldStillSave",
                    "turnsPerSheet",
                    "jointsPerTurn",
                    "jointsFall",
                    "smallParts",
                    "smallPartsInOffcuts",
                    "extraSheets"))
        .captioned("Limits, joints, and plates cut from offcuts");
  }

  private static Table work(Choices choices) {
    List<String> keys =
        new ArrayList<>(List.of("segment", "screws", "glue", "cutLength", "weight"));
    Rates rates = choices.job().rates();
    if (rates.feedPerMinute().isPresent()) {
      keys.add("cutMinutes");
    }
    keys.addAll(List.of("offcutLength", "offcutWidth"));
    if (rates.offcutsWorth() > 0) {
      keys.add("offcutsWorth");
    }
    if (choices.priced()) {
      keys.addAll(List.of("cuttingCost", "jointsCost", "total"));
    }
    return sides(choices, choices.options().only(keys.toArray(String[]::new)))
        .captioned(
            "Work, with screws and glue for the joints only, and the largest offcut to keep");
  }
}
