package curvestock.report;

import curvestock.helix.build.BedPiece;
import curvestock.helix.build.BlockPlan;
import curvestock.helix.build.BoardCutting;
import curvestock.helix.build.Joint;
import curvestock.helix.build.LapEnd;
import curvestock.helix.build.ScheduleRow;
import curvestock.helix.build.ShoppingItem;
import curvestock.helix.build.SupportRow;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Riser;
import curvestock.plan.Plan;
import curvestock.purchase.PurchaseLine;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Money;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The tables to build a helix from, as comma-separated values: lengths as decimals in the job's
 * unit, heights above the base, bearings in degrees counter-clockwise.
 */
public final class HelixTables {

  private final HelixReport report;
  private final LengthStyle decimals;
  private final String unit;

  public HelixTables(HelixReport report) {
    this.report = report;
    unit = report.job().style().unit().symbol();
    decimals = new LengthStyle(report.job().style().unit(), 0);
  }

  /** Every piece of roadbed in the order of building. */
  public String schedule() {
    Csv csv =
        new Csv(
            "piece",
            "kind",
            "sheet",
            "layer",
            "turn",
            "bearing from (deg)",
            "bearing to (deg)",
            "underside from (" + unit + ")",
            "underside to (" + unit + ")",
            "rail top from (" + unit + ")",
            "rail top to (" + unit + ")",
            "lower joint",
            "upper joint",
            "stations");
    Map<String, Integer> sheets =
        report.rough() ? Map.of() : report.sheets().map(Plan::sheetOfLabel).orElse(Map.of());
    for (ScheduleRow row : report.plan().schedule().rows()) {
      BedPiece piece = row.piece();
      csv.add(
          piece.number(),
          piece.kindId(),
          Optional.ofNullable(sheets.get(piece.number())).map(String::valueOf).orElse(""),
          Integer.toString(piece.layer()),
          Integer.toString(row.turn()),
          degrees(row.bearingFrom()),
          degrees(row.bearingTo()),
          number(row.undersideFrom()),
          number(row.undersideTo()),
          number(row.railFrom()),
          number(row.railTo()),
          piece.lower().map(Joint::name).orElse("entry"),
          piece.upper().map(Joint::name).orElse("exit"),
          piece.stations().stream()
              .map(place -> place.station().name())
              .collect(Collectors.joining(" ")));
    }
    return csv.toString();
  }

  /** Every turn at every station: heights to check with a ruler as the helix grows. */
  public String supports() {
    Riser riser = report.plan().spec().supports().riser();
    boolean blocks = riser instanceof Riser.WoodBlocks;
    Csv csv =
        new Csv(
            "station",
            "turn",
            "bearing (deg)",
            "supports",
            "underside (" + unit + ")",
            "rail top (" + unit + ")",
            (blocks ? "block height" : "gap below") + " (" + unit + ")",
            "slope (%)",
            "block");
    for (SupportRow row : report.plan().supports().rows()) {
      csv.add(
          row.station().name(),
          turn(row),
          degrees(row.bearing()),
          Integer.toString(row.edges().supports()),
          number(row.underside()),
          number(row.railTop()),
          number(row.gap().minus(riser.crossPiece())),
          String.format(Locale.ROOT, "%.2f", row.slope() * 100),
          block(row));
    }
    return csv.toString();
  }

  private String block(SupportRow row) {
    return report.plan().spec().supports().riser() instanceof Riser.WoodBlocks wood
        ? new BlockPlan(wood, report.plan().supports())
            .blockUnder(row)
            .map(BlockPlan.Block::id)
            .orElse("none")
        : "";
  }

  /** Every joint, the pieces that it ties, and its screws. */
  public String joints() {
    Csv csv =
        new Csv(
            "joint",
            "layer",
            "turn",
            "bearing (deg)",
            "underside (" + unit + ")",
            "lower piece",
            "upper piece",
            "plates",
            "screws",
            "lower piece cut away",
            "upper piece cut away");
    boolean halved = report.plan().spec().construction() instanceof Construction.HalfLap;
    List<ScheduleRow> rows = report.plan().schedule().rows();
    for (Joint joint : report.plan().joints().all()) {
      ScheduleRow below =
          rows.stream()
              .filter(row -> row.piece().upper().filter(joint::equals).isPresent())
              .findFirst()
              .orElseThrow();
      ScheduleRow above =
          rows.stream()
              .filter(row -> row.piece().lower().filter(joint::equals).isPresent())
              .findFirst()
              .orElseThrow();
      Construction construction = report.plan().spec().construction();
      boolean butt = construction instanceof Construction.ButtWithPlate;
      csv.add(
          joint.name(),
          Integer.toString(joint.layer()),
          Integer.toString(above.turn()),
          degrees(above.bearingFrom()),
          number(above.undersideFrom()),
          below.piece().number(),
          above.piece().number(),
          butt ? "1" : construction instanceof Construction.PlatesBeside ? "2" : "0",
          construction instanceof Construction.ButtWithPlate plate
              ? Integer.toString(2 * plate.plate().screwsEachSide())
              : "0",
          halved ? LapEnd.UPPER.side() : "",
          halved ? LapEnd.LOWER.side() : "");
    }
    return csv.toString();
  }

  /** What is cut from each board or rod; only a heading where risers come from the sheets. */
  public String cuttingList() {
    Csv csv = new Csv("board", "stock", "part", "length (" + unit + ")");
    report
        .plan()
        .shopping()
        .riserCutting()
        .ifPresent(
            cutting -> {
              for (int i = 0; i < cutting.boards().size(); i++) {
                for (BoardCutting.Cut cut : cutting.boards().get(i).cuts()) {
                  csv.add(
                      Integer.toString(i + 1),
                      cutting.stock().name(),
                      cut.part(),
                      number(cut.length()));
                }
              }
            });
    return csv.toString();
  }

  /** The turn's number, or which lead. */
  private static String turn(SupportRow row) {
    return switch (row.part()) {
      case ENTRY -> "entry lead";
      case EXIT -> "exit lead";
      case RING -> Integer.toString(row.turn());
    };
  }

  /** What to buy: sheets first, if they are planned. */
  public String shopping() {
    Csv csv = new Csv("item", "quantity", "unit", "price", "note");
    report
        .sheets()
        .ifPresent(
            plan -> {
              for (PurchaseLine line : plan.purchase().lines()) {
                csv.add(
                    line.product().stock().name(),
                    Integer.toString(line.bought()),
                    "sheets",
                    line.cost().plain(),
                    report.rough() ? "planned in haste" : "see the cut layouts");
              }
            });
    for (ShoppingItem item : report.plan().shopping().items()) {
      csv.add(
          item.name(),
          Long.toString(item.quantity()),
          item.unit(),
          item.price().map(Money::plain).orElse(""),
          item.note());
    }
    return csv.toString();
  }

  private String number(Length length) {
    return decimals.number(length);
  }

  private static String degrees(Angle angle) {
    String text = String.format(Locale.ROOT, "%.2f", angle.degrees());
    return text.equals("-0.00") || text.equals("360.00") ? "0.00" : text;
  }
}
