package curvestock.report;

import curvestock.compare.Comparison;
import curvestock.compare.SegmentOption;
import curvestock.helix.Assumption;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.Joint;
import curvestock.helix.build.PieceKind;
import curvestock.helix.build.ScheduleRow;
import curvestock.helix.build.ShoppingItem;
import curvestock.helix.build.SupportRow;
import curvestock.helix.spec.Riser;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.VerdictWords;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Shape;
import curvestock.piece.Strip;
import curvestock.plan.Plan;
import curvestock.purchase.PurchaseLine;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** All that a shop needs to read, pictures first; how it is shown is for others to say. */
public final class ShopReport {

  private final Plan plan;
  private final Job job;
  private final LengthStyle style;
  private final Optional<HelixReport> helix;
  private final Optional<Comparison> comparison;
  private final List<ReportPart> parts = new ArrayList<>();

  private ShopReport(Plan plan, Optional<Comparison> comparison) {
    this.plan = plan;
    this.job = plan.job();
    this.style = job.style();
    this.comparison = comparison;
    this.helix =
        job.structure().map(order -> new HelixReport(job, order, Optional.of(plan), false));
  }

  /** The report's parts in order. */
  public static List<ReportPart> of(Plan plan, Optional<Comparison> comparison) {
    ShopReport report = new ShopReport(plan, comparison);
    report.write();
    return List.copyOf(report.parts);
  }

  private void write() {
    answer();
    helix.ifPresent(this::helixPictures);
    sheets();
    comparison.ifPresent(this::choices);
    cutList();
    shopping();
    helix.ifPresent(this::verdicts);
    helix.ifPresent(this::schedule);
    helix.ifPresent(this::supports);
    cautions();
    helix.ifPresent(this::assumed);
  }

  private void say(String text) {
    parts.add(new ReportPart.Paragraph(text));
  }

  private void chapter(String text) {
    parts.add(new ReportPart.Chapter(text));
  }

  private void table(String caption, List<String> head, List<List<String>> rows) {
    parts.add(new ReportPart.Table(caption, head, rows));
  }

  // The answer.

  private void answer() {
    chapter("The answer");
    if (job.invented()) {
      parts.add(
          new ReportPart.Notice("The figures of this job are invented, for demonstration only."));
    }
    String sheets =
        plan.purchase().lines().stream()
            .map(line -> line.bought() + " × " + line.product().stock().name())
            .collect(Collectors.joining(", "));
    say(
        "Cut "
            + plan.pieces()
            + " pieces from "
            + sheets
            + ", for "
            + money(plan.purchase().sheetCost())
            + ": "
            + plan.purchase().gapSentence(job.currency())
            + ". "
            + percent(plan.areaYield())
            + " of the sheets becomes pieces.");
    helix.ifPresent(
        report -> {
          HelixPlan built = report.plan();
          say(
              (report.works()
                      ? "The helix works: it climbs "
                      : "The helix does not work yet (see below). It climbs ")
                  + style.format(built.climb().climb())
                  + " in "
                  + decimal(built.climb().turns(), 3)
                  + " turns of "
                  + style.format(built.spec().ground().bedRadius())
                  + " radius, "
                  + style.format(built.climb().risePerTurn())
                  + " a turn.");
        });
    if (plan.stopped()) {
      parts.add(
          new ReportPart.Notice("Planning was stopped early: a full run may find fewer sheets."));
    }
    parts.add(
        new ReportPart.Notice(
            "A planning aid. Measure your sheets, measure the scale bars of what you print, cut one test"
                + " piece and try it with your own trains before you cut a stack."));
  }

  private void helixPictures(HelixReport report) {
    chapter("The helix");
    parts.add(
        new ReportPart.Picture(
            "helix-plan",
            "The helix from above: roadbed, tracks, joints and support stations with their bearings,"
                + " and each turn with the numbers of its pieces",
            "From above. Numbers are pieces, J joints, S support stations; large figure first, then"
                + " turn by turn."));
    parts.add(
        new ReportPart.Picture(
            "helix-side",
            "The helix unrolled: the height of the track along its way, with every joint and support",
            "Unrolled, with heights above the base."));
    for (int i = 0; i < report.plan().trackGrades().size(); i++) {
      say(
          "Track at "
              + style.format(report.plan().spec().ground().trackRadii().get(i))
              + " radius: grade "
              + report.plan().trackGrades().get(i)
              + ", like about "
              + report.plan().equivalentGrades().get(i)
              + " on the straight (an estimate of the curve's drag); "
              + HelixSummary.far(report.plan().trackLengths().get(i), style)
              + " of track on the ring.");
    }
  }

  // Sheets.

  private void sheets() {
    chapter("The sheets");
    say(
        "Outlines are the finished size: cut on the waste side of the line. Kerf "
            + style.formatGiven(job.cutting().kerf())
            + ", pieces at least "
            + style.formatGiven(job.cutting().spacing())
            + " apart and "
            + style.formatGiven(job.cutting().margin())
            + " from the edge.");
    for (int i = 0; i < plan.layouts().size(); i++) {
      Layout layout = plan.layouts().get(i);
      String numbers = String.join(", ", plan.labels().get(i));
      String name = "Sheet " + (i + 1) + " of " + plan.layouts().size();
      parts.add(new ReportPart.Section(name + ", " + layout.sheet().name()));
      String file = SheetFiles.picture(i + 1);
      parts.add(
          new ReportPart.Picture(
              file.substring(0, file.length() - ".png".length()),
              name
                  + ": where its "
                  + layout.placements().size()
                  + " pieces lie, with their numbers",
              name
                  + ": pieces "
                  + numbers
                  + ". Left over: "
                  + Leftover.of(layout).describe(style)
                  + "."));
    }
  }

  private void choices(Comparison compared) {
    chapter("Which segment size");
    parts.add(
        new ReportPart.Picture(
            "charts/choices",
            "Chart: sheets and cost for each segment size",
            "The whole helix in each size, laps, leads and ears as the job has them."));
    List<List<String>> rows = new ArrayList<>();
    for (SegmentOption option : compared.options()) {
      rows.add(
          List.of(
              SegmentName.brief(option.division()),
              Integer.toString(option.pieces()),
              option.fill().isPresent() ? Integer.toString(option.perSheet()) : "mixed",
              option.fill().map(fill -> Integer.toString(fill.bound().count())).orElse(""),
              option.fill().isPresent() ? decimal(option.turnsPerSheet(), 2) : "",
              Integer.toString(option.sheets()),
              money(option.sheetCost()),
              money(option.cost().couldStillSave()),
              Integer.toString(option.joints()),
              style.format(option.chord()) + " × " + style.format(option.depth())));
    }
    table(
        "Segment sizes, counted on " + compared.mainSheet().name(),
        List.of(
            "Segment",
            "Pieces",
            "Found on a sheet",
            "No layout holds over",
            "Turns a sheet",
            "Sheets",
            "Their cost",
            "Any layout saves at most",
            "Joints",
            "Largest piece"),
        rows);
    for (String line : new CompareAdvice(compared).lines()) {
      if (line.startsWith(" ")) {
        say(line.strip());
      } else if (!line.isBlank()) {
        parts.add(new ReportPart.Section(line));
      }
    }
  }

  // Pieces.

  private void cutList() {
    chapter("Cut list");
    List<List<String>> rows = new ArrayList<>();
    for (Demand demand : job.demands()) {
      rows.add(
          List.of(
              demand.piece().id(),
              Integer.toString(demand.count()),
              demand.piece().name(),
              size(demand.piece().shape()),
              numbers(demand.piece().id()),
              onSheets(demand)));
    }
    table(
        "Pieces to cut from the sheets",
        List.of("Kind", "Count", "What it is", "Size", "Numbers", "On sheets"),
        rows);
    say(
        "All of one kind are alike. Write the number on each piece, 'up' and 'inner edge', before it"
            + " leaves the sheet.");
  }

  private String size(Shape shape) {
    Shape blank = shape.blank();
    int holes = shape.outline().holes().size() - blank.outline().holes().size();
    String drilled = holes > 0 ? ", " + holes + " holes" : "";
    if (blank instanceof AnnularSector sector) {
      return "R "
          + style.format(sector.innerRadius())
          + " to "
          + style.format(sector.outerRadius())
          + ", "
          + sector.sweep()
          + drilled;
    }
    if (blank instanceof Strip strip) {
      return style.format(strip.length()) + " × " + style.format(strip.width()) + drilled;
    }
    return "within "
        + style.format(Length.ofMillimetres(blank.outline().box().width()))
        + " × "
        + style.format(Length.ofMillimetres(blank.outline().box().height()))
        + drilled;
  }

  private String numbers(String id) {
    return helix
        .map(
            report ->
                report.plan().roadbed().kinds().stream()
                    .filter(kind -> kind.id().equals(id))
                    .map((PieceKind kind) -> report.plan().roadbed().numbersOf(kind))
                    .map(numbers -> String.join(" ", numbers))
                    .collect(Collectors.joining()))
        .orElse("");
  }

  private String onSheets(Demand demand) {
    List<String> on = new ArrayList<>();
    for (int i = 0; i < plan.layouts().size(); i++) {
      int count = plan.layouts().get(i).count(demand.piece());
      if (count > 0) {
        on.add(count + " on sheet " + (i + 1));
      }
    }
    return String.join(", ", on);
  }

  // Shopping.

  private void shopping() {
    chapter("Shopping list and cost");
    List<List<String>> rows = new ArrayList<>();
    Money total = Money.ZERO;
    boolean complete = true;
    for (PurchaseLine line : plan.purchase().lines()) {
      total = total.plus(line.cost());
      rows.add(
          List.of(
              line.product().stock().name()
                  + ", "
                  + style.format(line.product().stock().length())
                  + " × "
                  + style.format(line.product().stock().width())
                  + " × "
                  + style.formatGiven(line.product().stock().nominalThickness()),
              line.bought() + " " + (line.bought() == 1 ? "sheet" : "sheets"),
              line.cost().minorUnits() == 0 ? "on hand" : money(line.cost()),
              line.used() + " cut"));
    }
    List<ShoppingItem> items =
        helix.map(report -> report.plan().shopping().items()).orElse(List.of());
    for (ShoppingItem item : items) {
      complete &= item.price().isPresent();
      total = total.plus(item.price().orElse(Money.ZERO));
      rows.add(
          List.of(
              item.name(),
              item.quantity() + " " + item.unit(),
              item.price().map(this::money).orElse("no price given"),
              item.note()));
    }
    table("What to buy", List.of("Item", "Quantity", "Price", "Note"), rows);
    say(
        "All that has a price comes to "
            + money(total)
            + (complete ? "." : "; items without a price come on top."));
    say("Prices are those of the job file; ask before you buy.");
  }

  private void verdicts(HelixReport report) {
    chapter("Does the helix work?");
    List<List<String>> rows = new ArrayList<>();
    VerdictWords words = report.words();
    for (Verdict verdict : report.verdicts()) {
      String fix = words.fix(verdict);
      rows.add(
          List.of(
              verdict.state().word(),
              VerdictWords.title(verdict),
              words.finding(verdict) + (fix.isEmpty() ? "" : ". Fix: " + fix)));
    }
    table("One verdict for each rule", List.of("Verdict", "Rule", "Finding"), rows);
  }

  private void schedule(HelixReport report) {
    chapter("Assembly schedule");
    Map<String, Integer> sheets = plan.sheetOfLabel();
    List<List<String>> rows = new ArrayList<>();
    for (ScheduleRow row : report.plan().schedule().rows()) {
      BedPiece piece = row.piece();
      rows.add(
          List.of(
              piece.number(),
              piece.kindId(),
              Optional.ofNullable(sheets.get(piece.number())).map(String::valueOf).orElse(""),
              Integer.toString(row.turn()),
              decimal(row.bearingFrom().degrees(), 1)
                  + "° – "
                  + decimal(row.bearingTo().degrees(), 1)
                  + "°",
              style.format(row.undersideFrom()) + " – " + style.format(row.undersideTo()),
              style.format(row.railFrom()) + " – " + style.format(row.railTo()),
              piece.lower().map(Joint::name).orElse("entry")
                  + " – "
                  + piece.upper().map(Joint::name).orElse("exit"),
              piece.stations().stream()
                  .map(place -> place.station().name())
                  .collect(Collectors.joining(" "))));
    }
    table(
        "Pieces from the bottom up, heights above the base",
        List.of(
            "Piece",
            "Kind",
            "Sheet",
            "Turn",
            "Bearing",
            "Underside",
            "Rail top",
            "Joints",
            "Stations"),
        rows);
    say("Bearings run counter-clockwise as seen from above; 0° points to the right of the plan.");
  }

  private void supports(HelixReport report) {
    chapter("Support heights");
    Riser riser = report.plan().spec().supports().riser();
    boolean blocks = riser instanceof Riser.WoodBlocks;
    List<List<String>> rows = new ArrayList<>();
    for (SupportRow row : report.plan().supports().rows()) {
      rows.add(
          List.of(
              row.station().name(),
              Integer.toString(row.turn()),
              decimal(row.bearing().degrees(), 1) + "°",
              Integer.toString(row.edges().supports()),
              style.format(row.underside()),
              style.format(row.railTop()),
              style.format(row.gap().minus(riser.crossPiece()))));
    }
    table(
        "Every turn at every station, heights above the base",
        List.of(
            "Station",
            "Turn",
            "Bearing",
            "Supports",
            "Underside",
            "Rail top",
            blocks ? "Block height" : "Gap below"),
        rows);
  }

  private void cautions() {
    chapter("Cautions");
    parts.add(
        new ReportPart.Bullets(
            List.of(
                "Wear eye and hearing protection. Wood dust harms the lungs: use extraction and a mask,"
                    + " and vacuum rather than sweep.",
                "Clamp the work; support the piece and the offcut; never hold a small arc by hand; wait"
                    + " until the blade stands still. Unplug before changing a blade or bit. No gloves or"
                    + " loose sleeves near turning tools.",
                "A router on a trammel takes several shallow passes, never with the bit's turning.",
                "Machines: clamps and screws outside the tool's path, an air cut first, never unattended."
                    + " Laser: fume extraction, and only sheet known to be suitable.",
                "A full sheet takes two people; secure it on the car.",
                "Cut ends of threaded rod are sharp: deburr and cap them.",
                "A helix is a structure that people reach into and duck under: prop it while raising it,"
                    + " pad its edges, and leave a way out.",
                "Follow your tools' manuals and local codes. Leave mains wiring, and structures fixed over"
                    + " people's heads, to licensed people.")));
  }

  private void assumed(HelixReport report) {
    List<Assumption> assumed = report.order().assumed();
    if (assumed.isEmpty()) {
      return;
    }
    chapter("Assumed where the job left it open");
    parts.add(
        new ReportPart.Bullets(
            assumed.stream()
                .map(one -> one.field() + ": " + one.value() + " (" + one.reason() + ")")
                .toList()));
  }

  private String money(Money money) {
    return money.format(job.currency());
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }

  /** Without needless zeros. */
  private static String decimal(double value, int places) {
    String text = String.format(Locale.ROOT, "%." + places + "f", value);
    return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
  }
}
