package curvestock.answer;

import curvestock.machine.MachineSheet;
import curvestock.plan.MachineSheets;
import curvestock.plan.Plan;
import curvestock.purchase.BrokenSheets;
import curvestock.purchase.Cost;
import curvestock.purchase.Panel;
import curvestock.purchase.PurchaseLine;
import curvestock.units.Length;
import curvestock.units.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What to buy and what is cut from it.
 *
 * @param cost of all sheets, tax and proven least
 * @param sheets that are cut; one that is ripped counts once
 * @param layouts sheets and panels with a layout of their own
 * @param pieces on all of them
 * @param yield share of the sheets that becomes pieces
 * @param purchase a row for each kind of sheet bought
 * @param kinds a row for each kind of piece
 * @param perSheet how many of each kind a sheet holds
 * @param cuts a row for each sheet or panel that is cut
 * @param byHand the order in which each of them is cut by hand
 * @param room how the layouts stand if a sheet comes smaller than stated
 * @param remnants what is kept for the next job
 * @param rips how the store, or the builder for his machine's bed, rips sheets
 * @param carriedWhole what it would be without ripping
 * @param unused sheets of a thickness that no piece asks for
 * @param obstacles a row for each piece that keeps a cheaper purchase from being found, the piece
 *     that takes most wood first
 * @param loose pieces that the machine's tabs do not hold, by sheet
 * @param rough whether it was planned quickly, only to know about how many sheets are needed
 * @param stopped whether planning was stopped early
 */
public record Buying(
    Cost cost,
    int sheets,
    int layouts,
    int pieces,
    Share yield,
    Table purchase,
    Table kinds,
    Table perSheet,
    Table cuts,
    CutsByHand byHand,
    Optional<SheetRoom> room,
    Table remnants,
    List<Rip> rips,
    Optional<CarriedWhole> carriedWhole,
    List<Unused> unused,
    Table obstacles,
    List<Loose> loose,
    boolean rough,
    boolean stopped) {

  /**
   * Sheets that are ripped alike.
   *
   * @param forBed for the reach of a machine, at home, not for carrying
   */
  public record Rip(BrokenSheets way, boolean forBed) {
    public List<Panel> panels() {
      return way.breakdown().panels();
    }
  }

  /** The purchase if no sheet had to be ripped, and what ripping adds to it. */
  public record CarriedWhole(int sheets, Cost cost, int moreSheets, boolean forBed) {}

  /** A kind of sheet that nothing is cut from. */
  public record Unused(String sheet, Length thickness) {}

  /** Pieces of one sheet, by what is written on them, that have to be held another way. */
  public record Loose(int sheet, List<String> pieces) {}

  public Buying {
    loose = List.copyOf(loose);
    rips = List.copyOf(rips);
    unused = List.copyOf(unused);
  }

  /**
   * What to buy for a plan.
   *
   * @param machine what a machine does on its sheets; none if it was planned only roughly
   */
  static Buying of(Plan plan, Optional<MachineSheets> machine) {
    BuyingTables tables = new BuyingTables(plan);
    boolean forBed = plan.job().machine().bed().isPresent();
    return new Buying(
        plan.cost(),
        plan.purchase().sheets(),
        plan.layouts().size(),
        plan.pieces(),
        new Share(plan.areaYield()),
        tables.purchase(),
        tables.kinds(),
        tables.perSheet(),
        tables.cuts(),
        new CutsByHand(plan),
        SheetRoom.of(plan),
        tables.remnants(),
        rips(plan, forBed),
        plan.carriedWhole()
            .map(
                whole ->
                    new CarriedWhole(
                        whole.sheets(),
                        Cost.of(whole.sheetCost(), whole.bound(), plan.job().terms().tax()),
                        plan.purchase().sheets() - whole.sheets(),
                        forBed)),
        unused(plan),
        tables.obstacles(),
        machine.map(sheets -> loose(plan, sheets)).orElse(List.of()),
        machine.isEmpty(),
        plan.stopped());
  }

  private static List<Loose> loose(Plan plan, MachineSheets machine) {
    List<Loose> loose = new ArrayList<>();
    if (plan.job().machine().tabs().isEmpty()) {
      return loose;
    }
    List<List<String>> labels = plan.labels();
    List<MachineSheet> sheets = machine.list();
    for (int i = 0; i < sheets.size(); i++) {
      List<String> onSheet = labels.get(i);
      List<String> pieces =
          sheets.get(i).loose().stream().map(number -> onSheet.get(number - 1)).toList();
      if (!pieces.isEmpty()) {
        loose.add(new Loose(i + 1, pieces));
      }
    }
    return loose;
  }

  private static List<Rip> rips(Plan plan, boolean forBed) {
    List<Rip> rips = new ArrayList<>();
    for (PurchaseLine line : plan.purchase().lines()) {
      line.broken().stream()
          .filter(way -> way.breakdown().isRipped())
          .forEach(way -> rips.add(new Rip(way, forBed)));
    }
    return rips;
  }

  private static List<Unused> unused(Plan plan) {
    return plan.job().wholeProducts().stream()
        .map(product -> product.stock())
        .filter(
            stock ->
                plan.job().demands().stream()
                    .noneMatch(demand -> plan.job().suits(demand.piece(), stock)))
        .map(stock -> new Unused(stock.name(), stock.thickness()))
        .toList();
  }
}
