package curvestock.answer;

import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.BlockPlan;
import curvestock.helix.build.BoardCutting;
import curvestock.helix.build.Joint;
import curvestock.helix.build.LapEnd;
import curvestock.helix.build.ScheduleRow;
import curvestock.helix.build.Station;
import curvestock.helix.build.SupportRow;
import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.build.SupportRow.Part;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Riser;
import curvestock.plan.Plan;
import curvestock.units.Angle;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.Quantity;
import curvestock.units.Share;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The tables to build a helix from: heights above the base, bearings counter-clockwise. */
final class BuildTables {

  /** More places than this are told by their number. */
  private static final int PLACES = 12;

  private final HelixPlan plan;
  private final Map<String, Integer> sheets;
  private final Optional<BlockPlan> blockPlan;

  /**
   * @param cut how the pieces are cut; their sheets are left blank if that is not known
   */
  BuildTables(HelixOrder order, Optional<Plan> cut) {
    this.plan = order.plan();
    this.sheets = cut.map(Plan::sheetOfLabel).orElse(Map.of());
    this.blockPlan =
        plan.spec().supports().riser() instanceof Riser.WoodBlocks wood
            ? Optional.of(new BlockPlan(wood, plan.supports()))
            : Optional.empty();
  }

  Table schedule() {
    Table.Rows rows =
        new Table.Rows("schedule", "Assembly, from the bottom up; heights above the base")
            .text("piece", "Piece")
            .text("kind", "Kind")
            .count("sheet", "Sheet")
            .count("layer", "Layer")
            .count("turn", "Turn")
            .column("bearingFrom", "Bearing from", Measure.ANGLE)
            .column("bearingTo", "Bearing to", Measure.ANGLE)
            .length("undersideFrom", "Underside from")
            .length("undersideTo", "Underside to")
            .length("railFrom", "Rail top from")
            .length("railTo", "Rail top to")
            .text("lowerJoint", "Lower joint")
            .text("upperJoint", "Upper joint")
            .text("stations", "Stations");
    for (ScheduleRow row : plan.schedule().rows()) {
      BedPiece piece = row.piece();
      rows.add(
          new Text(piece.number()),
          new Text(piece.kindId()),
          Table.orNone(Optional.ofNullable(sheets.get(piece.number())).map(Count::new)),
          new Count(piece.layer()),
          new Count(row.turn()),
          row.bearingFrom(),
          row.bearingTo(),
          row.undersideFrom(),
          row.undersideTo(),
          row.railFrom(),
          row.railTo(),
          new Text(piece.lower().map(Joint::name).orElse("entry")),
          new Text(piece.upper().map(Joint::name).orElse("exit")),
          new Text(stations(piece)));
    }
    return rows.done();
  }

  private static String stations(BedPiece piece) {
    return piece.stations().stream()
        .map(place -> place.station().name())
        .collect(Collectors.joining(" "));
  }

  Table supports() {
    Table.Rows rows =
        new Table.Rows("supports", "Every turn at every station, heights above the base")
            .text("station", "Station")
            .text("turn", "Turn")
            .column("bearing", "Bearing", Measure.ANGLE)
            .count("supports", "Supports")
            .text("under", "Under")
            .length("underside", "Underside")
            .length("railTop", "Rail top")
            .length("gap", blockPlan.isPresent() ? "Block height" : "Gap below")
            .column("slope", "Slope", Measure.SHARE)
            .text("block", "Block");
    Length cross = plan.spec().supports().riser().crossPiece();
    for (SupportRow row : plan.supports().rows()) {
      rows.add(
          new Text(row.station().name()),
          new Text(turn(row)),
          row.bearing(),
          new Count(row.edges().supports()),
          new Text(row.edges() == Edges.MIDDLE ? "middle" : "edges"),
          row.underside(),
          row.railTop(),
          row.gap().minus(cross),
          new Share(row.slope()),
          new Text(block(row)));
    }
    return rows.done();
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
    return blockPlan
        .map(blocks -> blocks.blockUnder(row).map(BlockPlan.Block::id).orElse("none"))
        .orElse("");
  }

  Table heights() {
    int turns = (int) Math.ceil(plan.climb().turns() - 1e-9);
    Table.Rows rows =
        new Table.Rows("heights", "Heights to check: underside of the plywood above the base")
            .text("station", "Station")
            .column("bearing", "Bearing", Measure.ANGLE)
            .length("lead", "Lead");
    for (int turn = 1; turn <= turns; turn++) {
      rows.length("turn" + turn, "Turn " + turn);
    }
    for (Station station : plan.stations().all()) {
      List<SupportRow> here =
          plan.supports().rows().stream().filter(row -> row.station().equals(station)).toList();
      if (!here.isEmpty()) {
        List<Quantity> cells = new ArrayList<>();
        cells.add(new Text(station.name()));
        cells.add(here.get(here.size() - 1).bearing());
        cells.add(height(here, row -> row.part() != Part.RING));
        for (int turn = 1; turn <= turns; turn++) {
          int wanted = turn;
          cells.add(height(here, row -> row.part() == Part.RING && row.turn() == wanted));
        }
        rows.add(cells);
      }
    }
    return rows.done();
  }

  private static Quantity height(List<SupportRow> rows, Predicate<SupportRow> wanted) {
    return Table.orNone(rows.stream().filter(wanted).findFirst().map(SupportRow::underside));
  }

  Table joints() {
    Table.Rows rows =
        new Table.Rows("joints", "Joints")
            .text("joint", "Joint")
            .count("layer", "Layer")
            .count("turn", "Turn")
            .column("bearing", "Bearing", Measure.ANGLE)
            .length("underside", "Underside")
            .text("lowerPiece", "Lower piece")
            .text("upperPiece", "Upper piece")
            .count("plates", "Plates")
            .count("screws", "Screws")
            .text("lowerCutAway", "Lower piece cut away")
            .text("upperCutAway", "Upper piece cut away");
    Map<Joint, ScheduleRow> below = new HashMap<>();
    Map<Joint, ScheduleRow> above = new HashMap<>();
    for (ScheduleRow row : plan.schedule().rows()) {
      row.piece().upper().ifPresent(joint -> below.put(joint, row));
      row.piece().lower().ifPresent(joint -> above.put(joint, row));
    }
    Construction construction = plan.spec().construction();
    boolean halved = construction instanceof Construction.HalfLap;
    for (Joint joint : plan.joints().all()) {
      rows.add(
          new Text(joint.name()),
          new Count(joint.layer()),
          new Count(above.get(joint).turn()),
          above.get(joint).bearingFrom(),
          above.get(joint).undersideFrom(),
          new Text(below.get(joint).piece().number()),
          new Text(above.get(joint).piece().number()),
          new Count(plates(construction)),
          new Count(
              construction instanceof Construction.ButtWithPlate butt
                  ? 2L * butt.plate().screwsEachSide()
                  : 0),
          halved ? new Text(LapEnd.UPPER.side()) : Text.NONE,
          halved ? new Text(LapEnd.LOWER.side()) : Text.NONE);
    }
    return rows.done();
  }

  private static int plates(Construction construction) {
    return construction instanceof Construction.ButtWithPlate
        ? 1
        : construction instanceof Construction.PlatesBeside ? 2 : 0;
  }

  Table blocks(Figures figures) {
    Table.Rows rows =
        new Table.Rows("blocks", "Riser blocks; heights at the middle")
            .text("block", "Block")
            .count("count", "Count")
            .length("height", "Height")
            .length("longSide", "Long side")
            .column("sawTilt", "Saw tilt", Measure.ANGLE)
            .text("where", "Where");
    for (BlockPlan.Block block : blockPlan.map(BlockPlan::blocks).orElse(List.of())) {
      rows.add(
          new Text(block.id()),
          new Count(block.count()),
          block.height(),
          block.onBase() ? block.height().plus(block.slopeCut().times(0.5)) : block.height(),
          Angle.ofRadians(Math.atan(block.slope())),
          new Text(
              (block.onBase() ? "on the base, lower end square: " : "between turns: ")
                  + where(block.rows())));
    }
    return rows.done();
  }

  private static String where(List<SupportRow> rows) {
    return rows.size() > PLACES
        ? rows.size() + " places, see supports.csv"
        : rows.stream().map(BuildTables::place).collect(Collectors.joining(", "));
  }

  static String place(SupportRow row) {
    boolean once = row.station().places().size() == 1;
    return row.station().name() + (once ? "" : " turn " + row.turn());
  }

  Table cuttingList() {
    Table.Rows rows =
        new Table.Rows("cuttingList", "Cutting list")
            .count("board", "Board")
            .text("stock", "Stock")
            .text("part", "Part")
            .length("length", "Length");
    plan.shopping().riserCutting().ifPresent(cutting -> add(rows, cutting));
    return rows.done();
  }

  private static void add(Table.Rows rows, BoardCutting cutting) {
    for (int i = 0; i < cutting.boards().size(); i++) {
      for (BoardCutting.Cut cut : cutting.boards().get(i).cuts()) {
        rows.add(
            new Count(i + 1), new Text(cutting.stock().name()), new Text(cut.part()), cut.length());
      }
    }
  }
}
