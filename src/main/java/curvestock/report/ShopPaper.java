package curvestock.report;

import curvestock.answer.Answer;
import curvestock.answer.AssemblyWords;
import curvestock.answer.BenchWords;
import curvestock.answer.Building;
import curvestock.answer.Buying;
import curvestock.answer.BuyingWords;
import curvestock.answer.Cautions;
import curvestock.answer.Choices;
import curvestock.answer.ChosenWords;
import curvestock.answer.Column;
import curvestock.answer.CompareWords;
import curvestock.answer.Figures;
import curvestock.answer.FixingWords;
import curvestock.answer.HalfLapWords;
import curvestock.answer.HandCuts;
import curvestock.answer.HaveReady;
import curvestock.answer.HelixWords;
import curvestock.answer.Table;
import curvestock.drawing.HelixPlanDrawing;
import curvestock.drawing.SheetTitle;
import curvestock.job.Job;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All that a shop needs to read, pictures first. */
public final class ShopPaper {

  private static final int TURNS_ABREAST = 7;

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
    paper.pieces();
    paper.sheets();
    paper.toolpaths();
    answer.choices().ifPresent(paper::choices);
    paper.shopping();
    answer.building().ifPresent(paper::building);
    boolean rods = answer.building().filter(Building::hasRods).isPresent();
    boolean tabs = job.machine().tabs().isPresent();
    // The others stand on the first page.
    List<String> more = new ArrayList<>(Cautions.all(job.helix().isPresent(), rods, tabs));
    more.removeAll(Cautions.ofPacket());
    paper.parts.chapter("More cautions, besides those on the first page").bullets(more);
    return paper.parts.done();
  }

  private void decision() {
    BuyingWords words = new BuyingWords(answer);
    parts.chapter("What to buy");
    if (answer.heading().invented()) {
      parts.notice(SheetTitle.INVENTED_NOTE);
    }
    parts.say(words.decided());
    answer.building().ifPresent(helix -> parts.say(words.everythingElse()));
    parts.say(
        "%s to cut. %s".formatted(Figures.count(answer.bought().pieces(), "piece"), words.used()));
    answer.building().ifPresent(helix -> parts.say(new HelixWords(helix, figures).warnings()));
    parts.say(new ChosenWords(answer).sentence());
    words.loose().forEach(parts::notice);
    PlanPaper.translated(job).forEach(parts::notice);
    words.reservations().forEach(parts::notice);
    Cautions.ofPacket().forEach(parts::notice);
  }

  /** Before anything is cut by them. */
  private void assumptions(Building helix) {
    if (!helix.assumed().isEmpty()) {
      parts
          .chapter("Assumptions")
          .table(helix.assumed())
          .say(words(helix).quotedInAssumed())
          .say(helix.assumedCost());
    }
  }

  private HelixWords words(Building helix) {
    return new HelixWords(helix, figures);
  }

  private void helixPictures(Building helix) {
    parts
        .chapter("The helix")
        .picture(
            "helix-plan",
            "The helix from above: roadbed, tracks, joints and support stations with their bearings,"
                + " and each turn with the numbers of its pieces",
            "The helix from above. J: joint. S: support. E and X: supports under the entry lead and the"
                + " exit lead. "
                + String.join(" ", HelixPlanDrawing.legend(helix.plan())))
        .picture(
            "helix-turns",
            "The helix turn by turn, each piece with its number and each joint",
            "Each turn from above. A piece is drawn on the turn where it begins. Below each, the"
                + " height of the rail where the first of its pieces begins.")
        .picture(
            "helix-side",
            "The helix unrolled: the height of the track along its way, with every joint and support",
            "The helix from the side, rolled out flat: each turn runs from left to right. Heights are"
                + " above the base."
                + (helix.plan().spec().traffic().tallestKnown().isPresent()
                    ? " The boxes are your tallest vehicle."
                    : "")
                + (helix.supports().where("turn", "exit lead").isEmpty()
                    ? ""
                    : " The supports of the exit lead go down to the base: only their upper ends are"
                        + " drawn."))
        .picture(
            "helix-ends",
            "Entry and exit from the side, with lead, climb lead and vertical curve measured",
            "The entry and the exit from the side. Lead: straight roadbed, cut in one piece with the"
                + " first or last segment. Climb lead: the length outside the ring that slopes. Vertical curve: the length"
                + " over which level track changes to the full grade.")
        .bullets(words(helix).course());
  }

  private void sheets() {
    Buying buying = answer.bought();
    parts
        .chapter("The sheets")
        .say(
            "Outlines are at finished size. Cut on the waste side of the line%s, with a %s that cuts no wider than the gap between two pieces. The layouts allow for the kerf in your job, %s. They keep %s and %s from the sheet's edge. To cut by hand, follow the straight cuts and the order listed under each sheet: measure x to the right and y up from the lower left corner.%s%s"
                .formatted(
                    job.cutting().shares()
                        ? ", or midway between two lines that are only a kerf apart"
                        : "",
                    HaveReady.cutter(job.cutting()),
                    figures.given(job.cutting().kerf()),
                    job.cutting().apart(job.style()),
                    figures.given(job.cutting().margin()),
                    HandCuts.shortNames(buying.byHand().list()),
                    answer.building().map(helix -> " " + words(helix).thickness()).orElse("")));
    Table cuts = buying.cuts();
    for (int i = 0; i < buying.layouts(); i++) {
      String name = "Sheet " + (i + 1) + " of " + buying.layouts();
      String file = SheetFiles.picture(i + 1);
      parts
          .section(name + ", " + cuts.words(i, "sheet", figures))
          .picture(
              file.substring(0, file.length() - ".png".length()),
              name
                  + ": where its "
                  + cuts.words(i, "pieces", figures)
                  + " pieces lie, with their numbers",
              "%s: pieces %s. %s used; %s."
                  .formatted(
                      name,
                      cuts.words(i, "numbers", figures),
                      cuts.words(i, "used", figures),
                      offcut(cuts, i)))
          .bullets(buying.byHand().list().get(i).cuts(figures))
          .bullets(buying.byHand().list().get(i).boards(figures))
          .bullets(buying.byHand().list().get(i).pivots(figures));
    }
    halfLaps(buying);
    parts.table(buying.remnants());
    answer
        .machineTime()
        .ifPresent(
            time ->
                parts.section("Time at the machine").say(time.words(figures)).table(time.sheets()));
  }

  private void halfLaps(Buying buying) {
    List<String> laps =
        HalfLapWords.told(
            buying.byHand().list().stream().flatMap(sheet -> sheet.laps().stream()).toList());
    if (!laps.isEmpty()) {
      parts.section("Half-laps").bullets(laps).bullets(HalfLapWords.BY_HAND);
    }
  }

  /** Pictures that only a printed report has: on a screen the files for machines are at hand. */
  private void toolpaths() {
    if (!job.isForMachine()) {
      return;
    }
    parts
        .chapter("Order of machine cuts")
        .say(
            "Numbers show where the tool comes down, in the order of the cut files. On the dashed lines"
                + " it travels lifted. Read machine.txt before you run the files.");
    for (int i = 0; i < answer.bought().layouts(); i++) {
      String name = "Sheet " + (i + 1) + " of " + answer.bought().layouts();
      parts.picture(
          SheetFiles.toolpath(i + 1),
          name + ": its outlines, numbered in cutting order",
          name + ": order of machine cuts.");
    }
  }

  private String offcut(Table cuts, int row) {
    return cuts.at(row, "offcutLength").equals(Text.NONE)
        ? "no usable offcut"
        : "offcut "
            + cuts.words(row, "offcutLength", figures)
            + " x "
            + cuts.words(row, "offcutWidth", figures);
  }

  private void choices(Choices choices) {
    CompareWords words = new CompareWords(choices);
    parts.chapter("Choosing the segment size");
    if (words.asTheJobIs().isPresent()) {
      parts.notice(
          "This packet is for the size in your job. If you want another, change the job and make the"
              + " packet again before you cut.");
    }
    parts
        .say(words.decision())
        .say(words.briefReasons())
        .table(
            ComparePaper.sides(
                choices,
                choices
                    .options()
                    .only(
                        "segment",
                        "best",
                        "pieces",
                        "perSheet",
                        "sheets",
                        "cost",
                        "joints",
                        "largestLength",
                        "largestWidth")))
        .say(words.perSheet());
  }

  /** Before the sheets, which call the kinds by their names. */
  private void pieces() {
    parts
        .chapter("Pieces to cut")
        .table(answer.bought().kinds().only("kind", "count", "name", "size", "numbers"))
        .say(HalfLapWords.added(job))
        .say(BenchWords.NUMBER + " " + BenchWords.UP);
  }

  private void shopping() {
    BuyingWords words = new BuyingWords(answer);
    parts
        .chapter("Shopping list and cost")
        .say("Sheets: " + words.money() + ". " + words.proven())
        .table(PlanPaper.purchase(answer.bought()))
        .bullets(words.remarks())
        .table(answer.shopping())
        .say(
            "%s. Prices are those in the job file; check them before you buy."
                .formatted(HelixWords.total(answer)));
    answer.building().ifPresent(helix -> parts.say(words(helix).notListed()));
    parts.section("Have ready").bullets(new HaveReady(answer, job.cutting()).lines());
  }

  private void building(Building helix) {
    parts
        .chapter("Does the helix work?")
        .say(words(helix).marginal())
        .table(helix.checks().only("state", "title", "finding", "fix"))
        .say(words(helix).quotedInAssumed().isEmpty() ? words(helix).quoted() : Optional.empty());
    BenchWords bench = new BenchWords(helix, figures);
    parts
        .chapter("Joints and supports")
        .say(
            "Joints: %s. %s"
                .formatted(helix.plan().spec().construction().title(), bench.risers().get(0)))
        .bullets(bench.plates())
        .say(bench.base())
        .bullets(bench.blockRemarks());
    bench.setting().ifPresent(parts::say);
    parts
        .chapter("Assembly schedule")
        .bullets(new AssemblyWords(helix, figures).order())
        .table(schedule(helix))
        .say(
            "Bearings run counter-clockwise, seen from above; 0° points to the right of the plan."
                + (helix.supports().where("turn", "entry lead").isEmpty()
                    ? ""
                    : " For a piece with a lead, the table gives only the part in the ring; the heights along its lead are under 'Support heights'."))
        .section("Drilling and fastening")
        .bullets(new FixingWords(helix, figures).all())
        .chapter("Support heights")
        .say(bench.heights())
        .tables(heights(helix))
        .table(helix.blocks())
        .table(helix.rods())
        .table(helix.bridges())
        .bullets(bench.bridgeRemarks());
    if (!helix.cuttingList().isEmpty()) {
      parts.section(bench.boardsTitle()).bullets(bench.boards());
    }
  }

  /**
   * On which supports a piece lies is told with their heights, on which sheet below its picture.
   */
  private static Table schedule(Building helix) {
    Table brief = HelixPaper.brief(helix);
    return brief.only(
        brief.columns().stream()
            .map(Column::key)
            .filter(key -> !key.equals("stations") && !key.equals("sheet"))
            .toArray(String[]::new));
  }

  /** As many turns side by side as a page is wide. */
  private static List<Table> heights(Building helix) {
    List<String> keys = helix.heights().columns().stream().map(Column::key).toList();
    List<String> turns = keys.subList(keys.indexOf("turn1"), keys.size());
    List<Table> tables = new ArrayList<>();
    for (int from = 0; from < turns.size(); from += TURNS_ABREAST) {
      List<String> columns = new ArrayList<>(List.of("station", "bearing"));
      if (from == 0) {
        columns.addAll(List.of("along", "lead"));
      }
      columns.addAll(turns.subList(from, Math.min(turns.size(), from + TURNS_ABREAST)));
      tables.add(helix.heights().only(columns.toArray(String[]::new)));
    }
    return tables;
  }
}
