package curvestock.helix.build;

import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to buy besides the sheets, counted from the same joints and stations as everything else. */
public final class ShoppingList {

  /** White glue, one side spread: common practice, no source. */
  private static final double GLUE_GRAMS_PER_SQUARE_METRE = 200;

  private static final double SQUARE_MM_PER_SQUARE_M = 1e6;

  private final HelixSpec spec;
  private final Roadbed roadbed;
  private final Joints joints;
  private final SupportTable supports;
  private final List<ShoppingItem> items = new ArrayList<>();

  public ShoppingList(HelixSpec spec, Joints joints, Roadbed roadbed, SupportTable supports) {
    this.spec = spec;
    this.joints = joints;
    this.roadbed = roadbed;
    this.supports = supports;
    addRisers();
    addJointParts();
    add("glue", Math.round(glueGrams()), "g", "200 g per square metre, common practice, no source");
  }

  private void addRisers() {
    Riser riser = spec.supports().riser();
    if (riser instanceof Riser.WoodBlocks wood) {
      BlockPlan blocks = new BlockPlan(wood, supports);
      addStock(new BoardCutting(wood.stock(), wood.kerf(), blocks.cuts()), "riser blocks");
    } else if (riser instanceof Riser.ThreadedRods rods) {
      RodPlan plan = new RodPlan(spec, rods, supports);
      addStock(new BoardCutting(rods.stock(), rods.kerf(), plan.cuts()), "rods");
      String each = "above and below each turn and the base, on every rod";
      add("nuts " + rods.thread().name(), plan.nuts(), "pieces", each);
      add("washers " + rods.thread().name(), plan.washers(), "pieces", each);
    }
  }

  private void addStock(BoardCutting cutting, String what) {
    int boards = cutting.boards().size();
    int cuts = cutting.boards().stream().mapToInt(List::size).sum();
    String note =
        cuts + " " + what + " cut from them; at least " + cutting.leastPossible() + " are needed";
    if (boards > 0) {
      items.add(
          new ShoppingItem(
              cutting.stock().name(), boards, "pieces", cutting.stock().price(), note));
    }
  }

  private void addJointParts() {
    int count = joints.all().size();
    if (spec.construction() instanceof Construction.ButtWithPlate butt) {
      SplicePlates plates = new SplicePlates(butt, spec.ground(), count);
      if (!butt.plate().fromRoadbedSheets()) {
        add(
            "splice plates " + butt.plate().length() + " × " + plates.width(),
            count,
            "pieces",
            butt.plate().thickness() + " thick, one for each joint");
      }
      add(
          "screws",
          plates.screws(),
          "pieces",
          butt.plate().screwsEachSide() + " into each piece at each joint");
    } else if (spec.construction() instanceof Construction.PlatesBeside beside
        && !beside.fromRoadbedSheets()) {
      add(
          "side plates " + beside.length() + " × " + beside.height(),
          2L * count,
          "pieces",
          beside.thickness() + " thick, two for each joint");
    }
  }

  /** Glued area: plates, laps, or a whole layer. */
  private double glueGrams() {
    int count = joints.all().size();
    double width = spec.ground().width().millimetres();
    double area = gluedArea(spec.construction(), count, width);
    return area / SQUARE_MM_PER_SQUARE_M * GLUE_GRAMS_PER_SQUARE_METRE;
  }

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

  private void add(String name, long quantity, String unit, String note) {
    if (quantity > 0) {
      items.add(new ShoppingItem(name, quantity, unit, Optional.empty(), note));
    }
  }

  public List<ShoppingItem> items() {
    return List.copyOf(items);
  }

  /** Sum of the known prices. */
  public Money knownPrices() {
    return items.stream().flatMap(item -> item.price().stream()).reduce(Money.ZERO, Money::plus);
  }
}
