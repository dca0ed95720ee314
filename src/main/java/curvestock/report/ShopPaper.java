package curvestock.report;

import curvestock.answer.Answer;
import curvestock.answer.BenchWords;
import curvestock.answer.Building;
import curvestock.answer.Buying;
import curvestock.answer.BuyingWords;
import curvestock.answer.Cautions;
import curvestock.answer.Choices;
import curvestock.answer.CompareWords;
import curvestock.answer.Figures;
import curvestock.answer.HelixWords;
import curvestock.answer.Measure;
import curvestock.answer.Table;
import curvestock.job.Job;
import curvestock.units.Text;
import java.util.List;

/** All that a shop needs to read, pictures first. */
public final class ShopPaper {

  private final Job job;
  private final Answer answer;
  private final Figures figures;
  private final Parts parts = new Parts();

  private ShopPaper(Job job, Answer answer) {
    this.job = job;
    this.answer = answer;
    this.figures = answer.figures();
  }

  /** The report's parts in order. */
  public static List<ReportPart> of(Job job, Answer answer) {
    ShopPaper paper = new ShopPaper(job, answer);
    paper.decision();
    answer.building().ifPresent(paper::assumptions);
    answer.building().ifPresent(paper::helixPictures);
    paper.sheets();
    paper.toolpaths();
    answer.choices().ifPresent(paper::choices);
    paper.cutList();
    paper.shopping();
    answer.building().ifPresent(paper::building);
    paper.parts.chapter("Cautions").bullets(Cautions.all());
    return paper.parts.done();
  }

  private void decision() {
    BuyingWords words = new BuyingWords(answer);
    parts.chapter("The answer");
    if (answer.heading().invented()) {
      parts.notice("The figures of this job are invented, for demonstration only.");
    }
    parts.say(words.decision() + " " + words.proof());
    parts.say(Figures.count(answer.bought().pieces(), "piece") + ". " + words.used());
    answer.building().ifPresent(helix -> parts.say(new HelixWords(helix, figures).warnings()));
    words.loose().forEach(parts::notice);
    PlanPaper.translated(job).forEach(parts::notice);
    words.reservations().forEach(parts::notice);
    parts.notice(Cautions.PLANNING.words());
  }

  /** Before anything is cut by them. */
  private void assumptions(Building helix) {
    if (!helix.assumed().isEmpty()) {
      parts.chapter("Assumptions").table(helix.assumed()).say(helix.assumedCost());
    }
  }

  private void helixPictures(Building helix) {
    HelixWords words = new HelixWords(helix, figures);
    parts
        .chapter("The helix")
        .picture(
            "helix-plan",
            "The helix from above: roadbed, tracks, joints and support stations with their bearings,"
                + " and each turn with the numbers of its pieces",
            "From above. Numbers are pieces, J joints, S support stations, E and X those of the entry's"
                + " and the exit's lead.")
        .picture(
            "helix-turns",
            "The helix turn by turn, each piece with its number and each joint",
            "Turn by turn, each piece with the turn on which it begins.")
        .picture(
            "helix-side",
            "The helix unrolled: the height of the track along its way, with every joint and support",
            "Unrolled, a turn from left to right, with heights above the base.")
        .picture(
            "helix-ends",
            "Entry and exit from the side, with lead-in, climb-lead and vertical curve measured",
            "Entry and exit from the side, heights too tall. Lead-in: straight roadbed cut in one with"
                + " the end piece. Climb-lead: how far outside the ring the slope begins or ends."
                + " Vertical curve: over it one grade goes over into the other.")
        .bullets(words.course());
  }

  private void sheets() {
    Buying buying = answer.bought();
    parts
        .chapter("The sheets")
        .say(
            "Outlines are the finished size: cut on the waste side of the line. Kerf "
                + figures.given(job.cutting().kerf())
                + ", "
                + job.cutting().apart(job.style())
                + " and "
                + figures.given(job.cutting().margin())
                + " from the edge. Straight cuts and boards below each sheet are for cutting by hand, x to"
                + " the right and y up from the lower left corner.");
    Table cuts = buying.cuts();
    for (int i = 0; i < buying.layouts(); i++) {
      String name = "Sheet " + (i + 1) + " of " + buying.layouts();
      String file = SheetFiles.picture(i + 1);
      parts
          .section(name + ", " + words(cuts, i, "sheet"))
          .picture(
              file.substring(0, file.length() - ".png".length()),
              name + ": where its " + words(cuts, i, "pieces") + " pieces lie, with their numbers",
              name
                  + ": pieces "
                  + words(cuts, i, "numbers")
                  + ". "
                  + words(cuts, i, "used")
                  + " used; "
                  + offcut(cuts, i)
                  + ".")
          .bullets(buying.byHand().get(i).cuts(figures))
          .bullets(buying.byHand().get(i).boards(figures));
    }
    parts.table(buying.remnants());
    answer
        .machineTime()
        .ifPresent(
            time ->
                parts.section("Time at the machine").say(time.words(figures)).table(time.sheets()));
  }

  /** Pictures that only a printed report has: on a screen the files for machines are at hand. */
  private void toolpaths() {
    if (!job.isForMachine()) {
      return;
    }
    parts
        .chapter("Order of machine cuts")
        .say(
            "Numbers stand where the tool comes down, in the order of the cutting files. Dashed: the tool"
                + " lifted, on its way from one outline to the next. Read machine.txt before you run them.");
    for (int i = 0; i < answer.bought().layouts(); i++) {
      String name = "Sheet " + (i + 1) + " of " + answer.bought().layouts();
      parts.picture(
          SheetFiles.toolpath(i + 1),
          name + ": its outlines, numbered in cutting order",
          name + ": order of machine cuts.");
    }
  }

  private String words(Table table, int row, String column) {
    Measure measure =
        table.columns().stream()
            .filter(each -> each.key().equals(column))
            .findFirst()
            .orElseThrow()
            .measure();
    return figures.of(table.at(row, column), measure);
  }

  private String offcut(Table cuts, int row) {
    return cuts.at(row, "offcutLength").equals(Text.NONE)
        ? "no usable offcut"
        : "offcut " + words(cuts, row, "offcutLength") + " x " + words(cuts, row, "offcutWidth");
  }

  private void choices(Choices choices) {
    CompareWords words = new CompareWords(choices);
    parts
        .chapter("Which segment size")
        .say(words.decision())
        .say(words.reasons())
        .picture(
            "charts/choices",
            "Chart: sheets and cost for each segment size",
            "The whole helix in each size, with laps, leads and ears as the job has them.")
        .table(
            choices
                .options()
                .only(
                    "segment",
                    "best",
                    "pieces",
                    "perSheet",
                    "limit",
                    "turnsPerSheet",
                    "sheets",
                    "cost",
                    "couldStillSave",
                    "joints",
                    "largestLength",
                    "largestWidth"));
    if (!words.sensitivity().isEmpty()) {
      parts.section("How sensitive this is").bullets(words.sensitivity());
    }
    parts.bullets(words.remarks());
  }

  private void cutList() {
    parts
        .chapter("Cut list")
        .table(answer.bought().kinds().only("kind", "count", "name", "size", "numbers", "onSheets"))
        .say(
            "All of one kind are alike. Write the number on each piece, 'up' and 'inner edge', before"
                + " it leaves the sheet. "
                + BenchWords.UP);
  }

  private void shopping() {
    BuyingWords words = new BuyingWords(answer);
    parts
        .chapter("Shopping list and cost")
        .say("Sheets: " + words.money() + ". " + words.proof())
        .table(PlanPaper.purchase(answer.bought()))
        .bullets(words.remarks())
        .table(answer.shopping())
        .say(HelixWords.total(answer) + ". Prices are those of the job file; ask before you buy.");
  }

  private void building(Building helix) {
    parts
        .chapter("Does the helix work?")
        .say(new HelixWords(helix, figures).decision())
        .table(helix.checks().only("state", "title", "finding", "fix"))
        .chapter("Assembly schedule")
        .table(HelixPaper.brief(helix))
        .say(
            "Bearings run counter-clockwise as seen from above; 0° points to the right of the plan.")
        .chapter("Support heights")
        .table(supports())
        .table(helix.blocks())
        .table(helix.rods())
        .table(helix.bridges());
    if (!helix.cuttingList().isEmpty()) {
      BenchWords bench = new BenchWords(helix, figures);
      parts.section(bench.boardsTitle()).bullets(bench.boards());
    }
  }

  /** What is set at each station: to blocks, or by nuts on rods. */
  private Table supports() {
    Table all = answer.building().orElseThrow().supports();
    String[] blocks = {
      "station", "turn", "bearing", "supports", "underside", "railTop", "gap", "block"
    };
    String[] rods = {"station", "turn", "bearing", "supports", "underside", "railTop", "lowerNut"};
    return all.only(answer.building().get().blocks().isEmpty() ? rods : blocks);
  }
}
