package curvestock.helix.clearance;

import curvestock.helix.spec.HelixSpec;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the height from rail top to rail top goes, item by item.
 *
 * @param risePerTurn from rail top to rail top
 * @param items what takes its share
 */
public record HeightBudget(Length risePerTurn, List<Item> items) {

  /** Something that takes height. */
  public record Item(String name, Length height) {}

  public HeightBudget {
    items = List.copyOf(items);
  }

  /** In the open, between joints and supports. */
  public static HeightBudget inTheOpen(HelixSpec spec, Length risePerTurn) {
    List<Item> items = new ArrayList<>();
    int layers = spec.construction().layers();
    items.add(new Item(layers == 1 ? "plywood" : "plywood, " + layers + " layers", spec.plywood()));
    items.add(new Item("underlay", spec.stack().underlay()));
    items.add(new Item("ties", spec.stack().tie()));
    items.add(new Item("rail", spec.stack().rail()));
    return new HeightBudget(risePerTurn, items);
  }

  /** The same with one more item. */
  public HeightBudget less(String name, Length height) {
    List<Item> more = new ArrayList<>(items);
    more.add(new Item(name, height));
    return new HeightBudget(risePerTurn, more);
  }

  /** Sum of the items. */
  public Length taken() {
    return items.stream().map(Item::height).reduce(Length.ZERO, Length::plus);
  }

  /** What is left above the rails; below zero if the items do not fit. */
  public Length free() {
    return risePerTurn.minus(taken());
  }

  /** The rise per turn that would leave the height free. */
  public Length riseFor(Length free) {
    return taken().plus(free);
  }
}
