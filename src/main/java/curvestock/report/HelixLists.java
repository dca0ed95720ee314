package curvestock.report;

import curvestock.helix.HelixPlan;
import curvestock.helix.build.BaseFrame;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.BlockPlan;
import curvestock.helix.build.BoardCutting;
import curvestock.helix.build.BoardCutting.Board;
import curvestock.helix.build.BoardCutting.Cut;
import curvestock.helix.build.Joint;
import curvestock.helix.build.ScheduleRow;
import curvestock.helix.build.SplicePlates;
import curvestock.helix.build.Station;
import curvestock.helix.build.SupportRow;
import curvestock.helix.build.SupportRow.Part;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Riser;
import curvestock.piece.Piece;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What a builder takes to the bench, in words: blocks and rods to cut, plates and their screws, the
 * base, the pieces in order of building, heights to check.
 */
final class HelixLists {

  /** International pound, exact. */
  private static final double KILOGRAMS_A_POUND = 0.45359237;

  /** A post so many times as tall as it is wide wants a brace: our own choice. */
  private static final double SLENDER = 20;

  private final HelixReport report;
  private final HelixPlan plan;
  private final LengthStyle style;
  private final List<String> lines = new ArrayList<>();

  private HelixLists(HelixReport report) {
    this.report = report;
    this.plan = report.plan();
    this.style = report.job().style();
  }

  static List<String> of(HelixReport report) {
    HelixLists lists = new HelixLists(report);
    lists.base();
    lists.blocks();
    lists.boards();
    lists.plates();
    lists.schedule();
    lists.heights();
    return List.copyOf(lists.lines);
  }

  private void base() {
    report.order().base().ifPresent(this::base);
  }

  private void base(BaseFrame base) {
    heading("Base to cut: " + (base.form() == BaseFrame.Form.SQUARE ? "a square" : "an octagon"));
    Piece piece = base.demand().piece();
    item(
        base.demand().count()
            + " alike pieces `"
            + piece.id()
            + "` ("
            + piece.name()
            + "), "
            + weight(plan.weightOf(piece), style)
            + " each; together "
            + show(base.acrossFlats())
            + " across, "
            + show(base.innerEdge().minus(base.rim()).times(2))
            + " clear in the middle");
    item("they are on the cut layouts with everything else; the plan drawing shows them in grey");
  }

  private void blocks() {
    if (!(plan.spec().supports().riser() instanceof Riser.WoodBlocks wood)) {
      return;
    }
    BlockPlan blocks = new BlockPlan(wood, plan.supports());
    heading(
        "Riser blocks, "
            + style.formatGiven(wood.width())
            + " across and "
            + style.formatGiven(wood.along())
            + " along the track; heights at the middle");
    TextTable table = new TextTable().wordsLast();
    table.row(List.of("  block", "count", "height", "long side", "saw", "where"));
    for (BlockPlan.Block block : blocks.blocks()) {
      table.row(
          List.of(
              "  " + block.id(),
              Integer.toString(block.count()),
              show(block.height()),
              show(longSide(block)),
              String.format(Locale.ROOT, "%.1f°", Math.toDegrees(Math.atan(block.slope()))),
              (block.onBase() ? "on the base, lower end square: " : "between turns: ")
                  + where(block.rows())));
    }
    lines.addAll(table.lines());
    blocks.blocks().stream()
        .filter(block -> !block.onBase() && !exactly(block.height(), style).isEmpty())
        .forEach(
            block ->
                item(
                    block.id()
                        + " is "
                        + show(block.height())
                        + exactly(block.height(), style)
                        + ": what is rounded away adds up turn by turn, so set the saw's stop by a"
                        + " stack of them and check the heights below as you build"));
    item(
        "saw: tilt of a sloping end; between turns both ends slope alike, so both sides are equal");
    List<String> slender =
        blocks.blocks().stream()
            .filter(block -> block.height().compareTo(wood.width().times(SLENDER)) > 0)
            .map(BlockPlan.Block::id)
            .toList();
    if (!slender.isEmpty()) {
      item("tall and thin, so brace them sideways: " + String.join(", ", slender));
    }
    blocks
        .withoutRoom()
        .forEach(row -> item("no block at " + name(row) + ": the roadbed lies on what is below"));
  }

  /** The length in decimals, if the fraction that is printed is not all of it. */
  static String exactly(Length length, LengthStyle style) {
    LengthStyle decimals = new LengthStyle(style.unit(), 0);
    boolean rounded =
        style.denominator() > 0
            && Math.abs(
                    length.in(style.unit()) * style.denominator()
                        - Math.rint(length.in(style.unit()) * style.denominator()))
                > 0.1;
    return rounded ? " (" + decimals.format(length) + ")" : "";
  }

  /** Of a block on the base, uphill; between turns the ends are parallel. */
  private static Length longSide(BlockPlan.Block block) {
    return block.onBase() ? block.height().plus(block.slopeCut().times(0.5)) : block.height();
  }

  /** Where they stand; only how many places where there are many. */
  private String where(List<SupportRow> rows) {
    if (rows.size() > 12) {
      return rows.size() + " places, see supports.csv";
    }
    return rows.stream().map(this::name).collect(Collectors.joining(", "));
  }

  private String name(SupportRow row) {
    boolean once = row.station().places().size() == 1;
    return row.station().name() + (once ? "" : " turn " + row.turn());
  }

  private void boards() {
    plan.shopping().riserCutting().ifPresent(this::boards);
  }

  private void boards(BoardCutting cutting) {
    heading(
        "Cutting list: "
            + cutting.boards().size()
            + " of "
            + cutting.stock().name()
            + ", "
            + style.formatGiven(cutting.stock().length())
            + " each"
            + (plan.spec().supports().riser() instanceof Riser.WoodBlocks
                ? "; lengths with what the slope takes"
                : ""));
    int number = 0;
    for (Board board : cutting.boards()) {
      number++;
      Map<String, List<Cut>> alike = new LinkedHashMap<>();
      board
          .cuts()
          .forEach(cut -> alike.computeIfAbsent(cut.part(), p -> new ArrayList<>()).add(cut));
      item(
          number
              + ": "
              + alike.values().stream().map(this::cuts).collect(Collectors.joining(", "))
              + "; "
              + left(board.left()));
    }
  }

  private String left(Length rest) {
    String words = style.formatDown(rest);
    return words.startsWith("0 ") ? "nothing left" : words + " left";
  }

  private String cuts(List<Cut> alike) {
    Cut first = alike.get(0);
    String count = alike.size() == 1 ? "" : alike.size() + " x ";
    return count + first.part() + " " + show(first.length());
  }

  private void plates() {
    if (!(plan.spec().construction() instanceof Construction.ButtWithPlate butt)
        || plan.joints().all().isEmpty()) {
      return;
    }
    SplicePlates plates = new SplicePlates(butt, plan.spec().ground(), plan.joints().all().size());
    heading("Splice plates: one under each of the " + plates.count() + " joints");
    item(
        style.formatGiven(butt.plate().length())
            + " along the track, "
            + show(plates.width())
            + " across, "
            + style.formatGiven(butt.plate().thickness())
            + " thick, its middle at a radius of "
            + show(plates.middleRadius())
            + " on the arcs");
    item(
        "screws: a row of "
            + butt.plate().screwsEachSide()
            + " on each side, "
            + show(plates.screwsAlong())
            + " from the joint; from the plate's middle line "
            + plates.screwsAcross().stream().map(this::across).collect(Collectors.joining(", "))
            + "; holes of "
            + style.formatGiven(butt.plate().screwHole()));
  }

  private String show(Length length) {
    return style.formatMade(length);
  }

  private String across(Length offset) {
    double mm = offset.millimetres();
    if (Math.abs(mm) < 1e-6) {
      return "on it";
    }
    return show(Length.ofMillimetres(Math.abs(mm))) + (mm > 0 ? " outwards" : " inwards");
  }

  private void schedule() {
    heading(
        "Assembly, from the bottom up; heights of the underside above the base, joint to joint");
    TextTable table = new TextTable().wordsLast();
    table.row(
        List.of("  piece", "kind", "turn", "from", "to", "height", "to", "joints", "held by"));
    for (ScheduleRow row : plan.schedule().rows()) {
      BedPiece piece = row.piece();
      table.row(
          List.of(
              "  " + piece.number(),
              piece.kindId(),
              Integer.toString(row.turn()),
              HelixSummary.bearing(row.bearingFrom()),
              HelixSummary.bearing(row.bearingTo()),
              show(row.undersideFrom()),
              show(row.undersideTo()),
              piece.lower().map(Joint::name).orElse("entry")
                  + " - "
                  + piece.upper().map(Joint::name).orElse("exit"),
              piece.stations().stream()
                  .map(place -> place.station().name())
                  .collect(Collectors.joining(" "))));
    }
    lines.addAll(table.lines());
  }

  private void heights() {
    heading("Heights to check at every support: underside of the plywood above the base");
    int turns = (int) Math.ceil(plan.climb().turns() - 1e-9);
    TextTable table = new TextTable();
    List<String> head = new ArrayList<>(List.of("  station", "bearing", "lead"));
    for (int turn = 1; turn <= turns; turn++) {
      head.add("turn " + turn);
    }
    table.row(head);
    for (Station station : plan.stations().all()) {
      table.row(heights(station, turns));
    }
    lines.addAll(table.lines());
  }

  private List<String> heights(Station station, int turns) {
    List<SupportRow> rows =
        plan.supports().rows().stream().filter(row -> row.station().equals(station)).toList();
    List<String> cells = new ArrayList<>();
    cells.add("  " + station.name());
    cells.add(HelixSummary.bearing(rows.get(rows.size() - 1).bearing()));
    cells.add(height(rows.stream().filter(row -> row.part() != Part.RING).toList()));
    for (int turn = 1; turn <= turns; turn++) {
      int wanted = turn;
      cells.add(
          height(
              rows.stream()
                  .filter(row -> row.part() == Part.RING && row.turn() == wanted)
                  .toList()));
    }
    return cells;
  }

  private String height(List<SupportRow> rows) {
    return rows.isEmpty() ? "" : show(rows.get(0).underside());
  }

  /** In pounds for those who measure in inches. */
  static String weight(double kilograms, LengthStyle style) {
    boolean imperial = style.unit().isImperial();
    double weight = imperial ? kilograms / KILOGRAMS_A_POUND : kilograms;
    String format = weight < 1 ? "%.2f %s" : "%.1f %s";
    return String.format(Locale.ROOT, format, weight, imperial ? "lb" : "kg");
  }

  private void heading(String text) {
    lines.add("");
    lines.add(text);
  }

  private void item(String text) {
    lines.add("  " + text);
  }
}
