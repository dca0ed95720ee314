package curvestock.answer;

import static curvestock.answer.Field.angle;
import static curvestock.answer.Field.count;
import static curvestock.answer.Field.length;
import static curvestock.answer.Field.sawn;
import static curvestock.answer.Field.text;

import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.BlockPlan;
import curvestock.helix.build.BoardCutting;
import curvestock.helix.build.Braces;
import curvestock.helix.build.Bridge;
import curvestock.helix.build.Joint;
import curvestock.helix.build.LapEnd;
import curvestock.helix.build.RodPlan;
import curvestock.helix.build.ScheduleRow;
import curvestock.helix.build.SupportRow;
import curvestock.helix.build.SupportRow.Part;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Riser;
import curvestock.plan.Plan;
import curvestock.units.Angle;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Quantity;
import curvestock.units.Share;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * The tables to build a helix from: heights above the base, in 64ths so that differences between
 * them come out right, bearings counter-clockwise.
 */
final class BuildTables {

  /** More places than this are told by their number. */
  private static final int PLACES = 12;

  /** Rounding, in millimetres. */
  private static final double SAME_PLACE = 1e-6;

  private final HelixPlan plan;
  private final LengthStyle style;
  private final Map<String, Integer> sheets;
  private final Optional<RodPlan> rodPlan;

  /**
   * @param style in which sizes of wood that is bought are rounded
   * @param cut how the pieces are cut; their sheets are left blank if that is not known
   */
  BuildTables(HelixOrder order, Optional<Plan> cut, LengthStyle style) {
    this.style = style;
    this.plan = order.plan();
    this.sheets = cut.map(Plan::sheetOfLabel).orElse(Map.of());
    this.rodPlan =
        plan.spec().supports().riser() instanceof Riser.ThreadedRods rods
            ? Optional.of(new RodPlan(plan.spec(), rods, plan.supports()))
            : Optional.empty();
  }

  Table schedule() {
    SupportsUnder under = new SupportsUnder(plan.supports());
    return Table.of(
        "schedule",
        "Assembly, from the bottom up; heights above the base",
        plan.schedule().rows(),
        text("piece", "Piece", row -> row.piece().number()),
        text("kind", "Kind", row -> row.piece().kindId()),
        Field.of("sheet", "Sheet", Measure.COUNT, this::sheet),
        count("layer", "Layer", row -> row.piece().layer()),
        count("turn", "Turn", ScheduleRow::turn),
        angle("bearingFrom", "Bearing from", ScheduleRow::bearingFrom),
        angle("bearingTo", "Bearing to", ScheduleRow::bearingTo),
        sawn("undersideFrom", "Underside from", ScheduleRow::undersideFrom),
        sawn("undersideTo", "Underside to", ScheduleRow::undersideTo),
        sawn("railFrom", "Rail top from", ScheduleRow::railFrom),
        sawn("railTo", "Rail top to", ScheduleRow::railTo),
        text("lowerJoint", "Lower joint", row -> joint(row.piece().lower(), "entry")),
        text("upperJoint", "Upper joint", row -> joint(row.piece().upper(), "exit")),
        text("stations", "Supports", row -> under.names(row.piece(), row.turn())));
  }

  private Quantity sheet(ScheduleRow row) {
    return Field.orNone(Optional.ofNullable(sheets.get(row.piece().number())).map(Count::new));
  }

  private static String joint(Optional<Joint> joint, String end) {
    return joint.map(Joint::name).orElse(end);
  }

  Table supports() {
    return Table.of(
        "supports",
        "Every turn at every support, heights above the base",
        plan.supports().rows(),
        text("station", "Support", row -> row.station().name()),
        text("turn", "Turn", BuildTables::turn),
        Field.of("bearing", "Bearing", Measure.ANGLE, BuildTables::bearing),
        Field.of("along", "From the ring", Measure.LENGTH, this::along),
        count("supports", rodPlan.isPresent() ? "Rods" : "Blocks", row -> row.edges().supports()),
        text("under", "Under", row -> row.edges().words()),
        sawn("underside", "Underside", SupportRow::underside),
        sawn("top", "Top of plywood", this::top),
        sawn("railTop", "Rail top", SupportRow::railTop),
        Field.of(
            "gap",
            plan.supports().blocks().isPresent() ? "Block height" : "Gap below",
            Measure.SAWN,
            row ->
                plan.supports().blocks().map(blocks -> blocks.heightUnder(row)).orElse(row.gap())),
        Field.of("lowerNut", "Under the lower nut", Measure.SAWN, this::lowerNut),
        Field.of("slope", "Slope", Measure.SHARE, row -> new Share(row.slope())),
        text("block", "Block", this::block),
        text("braces", "Braces", this::braces),
        text("pieces", "Pieces on it", this::pieces));
  }

  private Length top(SupportRow row) {
    return row.underside().plus(plan.spec().plywood());
  }

  /** Posts of a straight lead share one bearing, which places none of them. */
  private static Quantity bearing(SupportRow row) {
    return row.part() == Part.RING ? row.bearing() : Text.NONE;
  }

  /** From the end of the ring. */
  private Quantity along(SupportRow row) {
    return switch (row.part()) {
      case ENTRY -> Length.ofMillimetres(-row.at());
      case EXIT -> Length.ofMillimetres(row.at() - plan.climb().ringLength());
      case RING -> Text.NONE;
    };
  }

  /** At a joint two. */
  private String pieces(SupportRow row) {
    return plan.schedule().rows().stream()
        .map(ScheduleRow::piece)
        .filter(piece -> piece.layer() == 1)
        .filter(
            piece ->
                piece.stations().stream()
                    .anyMatch(
                        place ->
                            place.station().name().equals(row.station().name())
                                && Math.abs(place.at() - row.at()) < SAME_PLACE))
        .map(BedPiece::number)
        .collect(Collectors.joining(", "));
  }

  /** What each support takes in all, from the base up. */
  Table bySupport() {
    Map<String, List<SupportRow>> stations = new LinkedHashMap<>();
    for (SupportRow row : plan.supports().rows()) {
      stations.computeIfAbsent(row.station().name(), name -> new ArrayList<>()).add(row);
    }
    return Table.of(
        "bySupport",
        "Blocks for each support, all turns",
        plan.supports().blocks().isPresent()
            ? List.copyOf(stations.values())
            : List.<List<SupportRow>>of(),
        text("station", "Support", rows -> rows.get(0).station().name()),
        count("count", "Blocks", rows -> blocks(rows).values().stream().mapToInt(n -> n).sum()),
        text("blocks", "Which", BuildTables.this::which));
  }

  private Map<String, Integer> blocks(List<SupportRow> rows) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    rows.forEach(
        row ->
            plan.supports()
                .blocks()
                .flatMap(blocks -> blocks.blockUnder(row))
                .ifPresent(
                    block -> counts.merge(block.id(), row.edges().supports(), Integer::sum)));
    return counts;
  }

  private String which(List<SupportRow> rows) {
    String blocks =
        blocks(rows).entrySet().stream()
            .map(each -> each.getValue() + " x " + each.getKey())
            .collect(Collectors.joining(", "));
    String braces =
        rows.stream()
            .map(this::braces)
            .filter(words -> !words.isEmpty())
            .collect(Collectors.joining(", "));
    return braces.isEmpty() ? blocks : blocks + "; braces: " + braces;
  }

  /** How many have their upper end there: {@code 1 across, 2 to E2}. */
  private String braces(SupportRow row) {
    List<Braces.Brace> here =
        plan.supports().braces().map(braces -> braces.of(row)).orElse(List.of());
    Map<String, Integer> counts = new LinkedHashMap<>();
    here.forEach(
        brace ->
            counts.merge(
                !brace.along()
                    ? "across"
                    : "to " + brace.other().map(other -> other.station().name()).orElse("the base"),
                1,
                Integer::sum));
    return counts.entrySet().stream()
        .map(each -> each.getValue() + " " + each.getKey())
        .collect(Collectors.joining(", "));
  }

  private Quantity lowerNut(SupportRow row) {
    return Field.orNone(rodPlan.map(rods -> rods.lowerNut(row)));
  }

  Table rods() {
    List<Field<RodPlan.Rods>> fields =
        new ArrayList<>(
            List.of(
                text("station", "Support", each -> each.station().name()),
                count("count", "Rods", RodPlan.Rods::count),
                sawn("length", "Length of each", RodPlan.Rods::length),
                count("turns", "Turns", RodPlan.Rods::turns),
                count("nutsEach", "Nuts on each", RodPlan.Rods::nutsEach)));
    if (plan.rodsAreJoined()) {
      fields.add(text("joints", "Coupling nut, middle above the base", this::couplings));
    }
    return Table.of("rods", "Rods to cut", rodPlan.map(RodPlan::rods).orElse(List.of()), fields);
  }

  private String couplings(RodPlan.Rods rods) {
    Length below = rodPlan.orElseThrow().belowBaseTop();
    return rods.joints().stream()
        .map(joint -> style.formatMade(joint.minus(below)))
        .collect(Collectors.joining(", "));
  }

  /** One row for each gap; the wood is as long, deep and broad on every turn. */
  Table bridges() {
    return Table.of(
        "bridges",
        bridged() + " where a support is left out (one for each turn that passes)",
        plan.stations().bridges(),
        text("over", "Left out", Bridge::over),
        text("edge", "Edge", bridge -> bridge.outer() ? "outer" : "inner"),
        text("between", "From and to", Bridge::between),
        text("form", "What", bridge -> bridge.form().words()),
        count("count", "Count", Bridge::count),
        length("length", "Length", bridge -> bridge.cut(style).length()),
        length("breadth", "Across", bridge -> bridge.cut(style).breadth()),
        length("depth", "Height", bridge -> bridge.cut(style).depth()));
  }

  private String bridged() {
    List<Bridge> bridges = plan.stations().bridges();
    boolean strips = bridges.stream().anyMatch(each -> each.form() == Bridge.Form.STRIP);
    boolean battens = bridges.stream().anyMatch(each -> each.form() == Bridge.Form.BATTEN);
    return strips && battens ? "Edge strips and battens" : battens ? "Battens" : "Edge strips";
  }

  /** The turn's number, or which lead. */
  private static String turn(SupportRow row) {
    return switch (row.part()) {
      case ENTRY -> "entry lead";
      case EXIT -> "exit lead";
      case RING -> Integer.toString(row.turn());
    };
  }

  private String block(SupportRow row) {
    return plan.supports()
        .blocks()
        .map(blocks -> blocks.blockUnder(row).map(BlockPlan.Block::id).orElse("none"))
        .orElse("");
  }

  Table heights() {
    int turns = plan.supports().rows().stream().mapToInt(SupportRow::turn).max().orElse(0);
    Map<String, List<SupportRow>> here =
        plan.supports().rows().stream().collect(Collectors.groupingBy(r -> r.station().name()));
    List<List<SupportRow>> stations =
        plan.stations().all().stream()
            .map(station -> here.getOrDefault(station.name(), List.of()))
            .filter(rows -> !rows.isEmpty())
            .toList();
    List<Field<List<SupportRow>>> fields = new ArrayList<>();
    fields.add(text("station", "Support", rows -> rows.get(0).station().name()));
    fields.add(
        Field.of("bearing", "Bearing", Measure.ANGLE, rows -> bearing(rows.get(rows.size() - 1))));
    fields.add(
        Field.of(
            "along", "From the ring", Measure.LENGTH, rows -> along(rows.get(rows.size() - 1))));
    fields.add(height("lead", "Lead", row -> row.part() != Part.RING));
    for (int t = 1; t <= turns; t++) {
      int turn = t;
      fields.add(
          height(
              "turn" + turn, "Turn " + turn, row -> row.part() == Part.RING && row.turn() == turn));
    }
    return Table.of(
        "heights", "Heights to check: top of the plywood above the base", stations, fields);
  }

  private Field<List<SupportRow>> height(String key, String title, Predicate<SupportRow> wanted) {
    return Field.of(
        key,
        title,
        Measure.SAWN,
        rows -> Field.orNone(rows.stream().filter(wanted).findFirst().map(this::top)));
  }

  Table joints() {
    Map<Joint, ScheduleRow> below = new HashMap<>();
    Map<Joint, ScheduleRow> above = new HashMap<>();
    for (ScheduleRow row : plan.schedule().rows()) {
      row.piece().upper().ifPresent(joint -> below.put(joint, row));
      row.piece().lower().ifPresent(joint -> above.put(joint, row));
    }
    Construction construction = plan.spec().construction();
    boolean halved = construction instanceof Construction.HalfLap;
    return Table.of(
        "joints",
        "Joints",
        plan.joints().all(),
        text("joint", "Joint", Joint::name),
        count("layer", "Layer", Joint::layer),
        count("turn", "Turn", joint -> above.get(joint).turn()),
        angle("bearing", "Bearing", joint -> above.get(joint).bearingFrom()),
        sawn("underside", "Underside", joint -> above.get(joint).undersideFrom()),
        text("lowerPiece", "Lower piece", joint -> below.get(joint).piece().number()),
        text("upperPiece", "Upper piece", joint -> above.get(joint).piece().number()),
        count("plates", "Plates", joint -> plates(construction, joint)),
        count("screws", "Screws", joint -> screws(construction)),
        text("lowerCutAway", "Lower piece cut away", j -> halved ? LapEnd.UPPER.face() : ""),
        text("upperCutAway", "Upper piece cut away", j -> halved ? LapEnd.LOWER.face() : ""));
  }

  private static int screws(Construction construction) {
    return construction instanceof Construction.ButtWithPlate butt
        ? 2 * butt.plate().screwsEachSide()
        : 0;
  }

  private int plates(Construction construction, Joint joint) {
    return construction instanceof Construction.ButtWithPlate
        ? 1
        : plan.sidePlates().map(plates -> plates.at(joint)).orElse(0);
  }

  Table blocks() {
    return Table.of(
        "blocks",
        "Riser blocks; heights at the middle",
        plan.supports().blocks().map(BlockPlan::blocks).orElse(List.of()),
        text("block", "Block", BlockPlan.Block::id),
        count("count", "Count", BlockPlan.Block::count),
        sawn("height", "Height", BlockPlan.Block::height),
        sawn("longSide", "Cut to (long side)", BlockPlan.Block::longSide),
        angle("sawTilt", "Saw angle", block -> Angle.ofRadians(Math.atan(block.slope()))),
        text("where", "Where", BuildTables::where));
  }

  private static String where(BlockPlan.Block block) {
    String where = block.onBase() ? "base" : "between turns";
    return block.rows().size() > PLACES
        ? where
        : where
            + ", "
            + block.rows().stream().map(BuildTables::place).collect(Collectors.joining(", "));
  }

  static String place(SupportRow row) {
    boolean once = row.station().places().size() == 1;
    return row.station().name() + (once ? "" : " turn " + row.turn());
  }

  /** A length to saw from the board of that number. */
  private record Sawn(int board, String stock, BoardCutting.Cut cut) {}

  Table cuttingList() {
    List<Sawn> cuts = new ArrayList<>();
    plan.shopping().riserCutting().ifPresent(cutting -> add(cuts, cutting));
    return Table.of(
        "cuttingList",
        "Cut list",
        cuts,
        count("board", "Board", Sawn::board),
        text("stock", "Stock", Sawn::stock),
        text("part", "Part", sawn -> sawn.cut().part()),
        Field.of("length", "Length", Measure.SAWN, sawn -> sawn.cut().length()));
  }

  private static void add(List<Sawn> cuts, BoardCutting cutting) {
    for (int i = 0; i < cutting.boards().size(); i++) {
      int board = i + 1;
      cutting
          .boards()
          .get(i)
          .cuts()
          .forEach(cut -> cuts.add(new Sawn(board, cutting.stock().name(), cut)));
    }
  }
}
