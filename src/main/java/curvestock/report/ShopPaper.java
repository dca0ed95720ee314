package curvestock.report;

import curvestock.answer.Answer;
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
    answer.building().ifPresent(paper::helixPictures);
    paper.sheets();
    answer.choices().ifPresent(paper::choices);
    paper.cutList();
    paper.shopping();
    answer.building().ifPresent(paper::building);
    paper.parts.chapter("Cautions").bullets(Cautions.all());
    answer
        .building()
        .filter(helix -> !helix.assumed().isEmpty())
        .ifPresent(helix -> paper.parts.chapter("Assumptions").table(helix.assumed()));
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
    PlanPaper.loose(job, words).forEach(parts::notice);
    PlanPaper.translated(job).forEach(parts::notice);
    words.reservations().forEach(parts::notice);
    parts.notice(Cautions.PLANNING.words());
  }

  private void helixPictures(Building helix) {
    HelixWords words = new HelixWords(helix, figures);
    parts
        .chapter("The helix")
        .picture(
            "helix-plan",
            "The helix from above: roadbed, tracks, joints and support stations with their bearings,"
                + " and each turn with the numbers of its pieces",
            "From above. Numbers are pieces, J joints, S support stations; large figure first, then"
                + " turn by turn.")
        .picture(
            "helix-side",
            "The helix unrolled: the height of the track along its way, with every joint and support",
            "Unrolled, with heights above the base.")
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
                + " from the edge.");
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
                  + ".");
    }
    parts.table(buying.remnants());
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
                + " it leaves the sheet.");
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
        .table(
            helix
                .supports()
                .only(
                    "station",
                    "turn",
                    "bearing",
                    "supports",
                    "underside",
                    "railTop",
                    "gap",
                    "block"))
        .table(helix.blocks())
        .table(helix.rods())
        .table(helix.cuttingList());
  }
}
