package curvestock.helix.build;

import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HardwarePrices;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.SplicePlate;
import curvestock.helix.standard.Washer;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to buy besides the sheets, counted from the same joints and stations as everything else. */
public final class ShoppingList {

  private final HelixSpec spec;
  private final LengthStyle style;
  private final Roadbed roadbed;
  private final Joints joints;
  private final SupportTable supports;
  private final List<ShoppingItem> items = new ArrayList<>();
  private int screws;
  private Money jointPrice = Money.ZERO;
  private Optional<BoardCutting> riserCutting = Optional.empty();

  /**
   * Counts everything.
   *
   * @param style of the lengths in the names of goods
   */
  public ShoppingList(
      HelixSpec spec,
      Joints joints,
      Roadbed roadbed,
      SupportTable supports,
      List<Bridge> bridges,
      LengthStyle style) {
    this.spec = spec;
    this.style = style;
    this.joints = joints;
    this.roadbed = roadbed;
    this.supports = supports;
    addRisers(bridges.stream().filter(bridge -> bridge.form() == Bridge.Form.BATTEN).toList());
    bridges.forEach(this::addBridge);
    addJointParts();
  }

  /** Battens come from the boards of the blocks, where there are any. */
  private void addBridge(Bridge bridge) {
    boolean batten = bridge.form() == Bridge.Form.BATTEN;
    if (batten && riserCutting.isPresent() && spec.supports().riser() instanceof Riser.WoodBlocks) {
      return;
    }
    String edge = bridge.outer() ? "outer" : "inner";
    add(
        (batten ? "battens " : "edge strips ")
            + size(style.roundUp(bridge.length()), whole(bridge.depth()), whole(bridge.breadth())),
        bridge.count(),
        Optional.empty(),
        (batten
                ? "glued and screwed under the %s edge past %s; one per turn"
                : "two layers of thin plywood or hardboard each, bent and glued along the %s edge past %s; one per turn")
            .formatted(edge, bridge.over()));
  }

  /** In inches the next eighth, as wood is cut. */
  private Length whole(Length length) {
    return style.unit().isImperial()
        ? Length.ofInches(Math.ceil(length.inches() * 8 - 1e-9) / 8)
        : length;
  }

  private static boolean isBlock(BoardCutting.Cut cut) {
    return cut.part().startsWith("block");
  }

  private static void addBattens(List<BoardCutting.Cut> cuts, Bridge bridge) {
    for (int i = 0; i < bridge.count(); i++) {
      cuts.add(new BoardCutting.Cut("batten over " + bridge.over(), bridge.length()));
    }
  }

  private void addRisers(List<Bridge> battens) {
    Riser riser = spec.supports().riser();
    if (riser instanceof Riser.WoodBlocks wood && wood.stock().isPresent()) {
      List<BoardCutting.Cut> cuts = new ArrayList<>(new BlockPlan(wood, supports).cuts());
      battens.forEach(bridge -> addBattens(cuts, bridge));
      String what = cuts.stream().allMatch(ShoppingList::isBlock) ? "" : " and battens";
      Length squaring = style.unit().isImperial() ? Length.ofInches(0.5) : Length.ofMillimetres(12);
      addStock(
          new BoardCutting(wood.stock().get(), wood.kerf(), squaring, style::roundMade, cuts),
          "riser blocks" + what);
    } else if (riser instanceof Riser.ThreadedRods rods) {
      RodPlan plan = new RodPlan(spec, rods, supports);
      addStock(
          new BoardCutting(rods.stock(), rods.kerf(), Length.ZERO, style::roundMade, plan.cuts()),
          "rods");
      add(
          "coupling nuts " + rods.thread().name(),
          plan.couplings(),
          spec.prices().coupling(),
          "to join lengths where a rod is longer than you can buy");
      String each = "one above and one below each turn and the base, on every rod";
      String thread = rods.thread().name();
      add("nuts " + thread, plan.nuts(), spec.prices().nut(), each);
      add(washers(rods), plan.washers(), spec.prices().washer(), each);
    }
  }

  /** With what to ask for in the shop. */
  private String washers(Riser.ThreadedRods rods) {
    Washer washer = rods.washerBought();
    return "washers "
        + rods.thread().name()
        + (washer.standard().isEmpty() ? "" : " " + washer.standard())
        + ", "
        + style.formatGiven(washer.outer())
        + " outside";
  }

  private void addStock(BoardCutting cutting, String what) {
    riserCutting = Optional.of(cutting);
    int boards = cutting.boards().size();
    int cuts = cutting.boards().stream().mapToInt(board -> board.cuts().size()).sum();
    int least = cutting.leastPossible();
    String note =
        boards == least
            ? "for %s %s; fewer are not enough".formatted(cuts, what)
            : "for %s %s; %s would be the fewest possible".formatted(cuts, what, least);
    add(cutting.stock().name(), boards, cutting.stock().price(), note);
  }

  private void addJointParts() {
    int first = items.size();
    addPlatesAndScrews();
    addGlue();
    jointPrice = known(items.subList(first, items.size()));
  }

  private void addPlatesAndScrews() {
    int count = joints.all().size();
    HardwarePrices prices = spec.prices();
    if (spec.construction() instanceof Construction.ButtWithPlate butt) {
      SplicePlate plate = butt.plate();
      SplicePlates plates = new SplicePlates(butt, spec.ground(), count);
      if (!plate.fromRoadbedSheets()) {
        String size = size(plate.length(), plates.width(), plate.thickness());
        add("splice plates " + size, count, prices.plate(), "one for each joint");
      }
      String note = plate.screwsEachSide() + " into each piece at each joint";
      screws = plates.screws();
      add("screws", screws, prices.screw(), note);
    } else if (spec.construction() instanceof Construction.PlatesBeside beside
        && !beside.fromRoadbedSheets()) {
      String size = size(beside.length(), beside.height(), beside.thickness());
      add("side plates " + size, 2L * count, prices.plate(), "two for each joint");
    }
  }

  private String size(Length length, Length width, Length thickness) {
    return style.formatGiven(length)
        + " × "
        + style.formatGiven(width)
        + " × "
        + style.formatGiven(thickness);
  }

  private void addGlue() {
    long grams = Math.round(glueGrams());
    if (grams > 0) {
      Optional<Money> price =
          spec.prices()
              .glueKilogram()
              .map(kilogram -> Money.of(BigDecimal.valueOf(kilogram.minorUnits() * grams, 5)));
      String note = GluedArea.words(style);
      items.add(new ShoppingItem("glue", grams, "g", price, note));
    }
  }

  /** Glued area: plates, laps, or a whole layer. */
  private double gluedArea(Construction construction, int count, double width) {
    if (construction instanceof Construction.ButtWithPlate butt) {
      return new SplicePlates(butt, spec.ground(), 1).shape().area() * count;
    }
    if (construction instanceof Construction.HalfLap half) {
      return half.lap().millimetres() * width * count;
    }
    if (construction instanceof Construction.PlatesBeside beside) {
      return 2 * beside.length().millimetres() * spec.stack().plywood().millimetres() * count;
    }
    return roadbed.area() / spec.construction().layers();
  }

  private void add(String name, long quantity, Optional<Money> each, String note) {
    if (quantity > 0) {
      Optional<Money> price = each.map(money -> money.times(quantity));
      items.add(new ShoppingItem(name, quantity, "pieces", price, note));
    }
  }

  /** How risers are cut from boards or rods; empty where they come from the roadbed's sheets. */
  public Optional<BoardCutting> riserCutting() {
    return riserCutting;
  }

  public List<ShoppingItem> items() {
    return List.copyOf(items);
  }

  /** Screws for all joints. */
  public int screws() {
    return screws;
  }

  /** Glue for all joints, or between two layers, in grams. */
  public double glueGrams() {
    int count = joints.all().size();
    double width = spec.ground().width().millimetres();
    return GluedArea.grams(gluedArea(spec.construction(), count, width));
  }

  /** Known prices of what the joints take: plates that are bought, screws, glue. */
  public Money jointPrice() {
    return jointPrice;
  }

  /** Sum of the known prices. */
  public Money knownPrices() {
    return known(items);
  }

  private static Money known(List<ShoppingItem> items) {
    return items.stream().flatMap(item -> item.price().stream()).reduce(Money.ZERO, Money::plus);
  }
}
