package curvestock.helix.build;

import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser.ThreadedRods;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Threaded rods, nuts and washers: a rod at each edge of each station; on every rod a nut and a
 * washer above and below each turn that it carries, and above and below the base.
 */
public final class RodPlan {

  private static final int NUTS_PER_TURN = 2;
  private static final int NUTS_AT_BASE = 2;

  private final ThreadedRods riser;
  private final List<Rods> rods = new ArrayList<>();

  /**
   * The rods of a station.
   *
   * @param station which station
   * @param turns that they carry
   * @param length of one rod, from below the base to above the highest turn
   */
  public record Rods(Station station, int turns, Length length) {
    public int nutsEach() {
      return NUTS_PER_TURN * turns + NUTS_AT_BASE;
    }

    /** How many such rods: one at each edge that is held. */
    public int count() {
      return station.edges().supports();
    }
  }

  public RodPlan(HelixSpec spec, ThreadedRods riser, SupportTable table) {
    this.riser = riser;
    Length ends = riser.base().plus(nutAndWasher().times(2)).plus(riser.endAllowance());
    for (SupportRow row : table.rows()) {
      if (row.at() == row.station().highest()) {
        Length length = row.underside().plus(spec.plywood()).plus(ends);
        rods.add(new Rods(row.station(), row.station().places().size(), length));
      }
    }
    rods.sort(Comparator.comparingDouble(each -> each.station().lowest()));
  }

  private Length nutAndWasher() {
    return riser.thread().nutHeight().plus(riser.washerBought().thickness());
  }

  /** Where the lower nut of a turn sits: its lower face, above the base. */
  public Length lowerNut(SupportRow row) {
    return row.underside().minus(nutAndWasher());
  }

  /**
   * What of a rod is below the top of the base: the base, washer and nut, and half the allowance.
   */
  public Length belowBaseTop() {
    return riser.base().plus(nutAndWasher()).plus(riser.endAllowance().times(0.5));
  }

  /** By station. */
  public List<Rods> rods() {
    return List.copyOf(rods);
  }

  public int count() {
    return rods.stream().mapToInt(Rods::count).sum();
  }

  public int nuts() {
    return rods.stream().mapToInt(each -> each.nutsEach() * each.count()).sum();
  }

  /** A washer for every nut. */
  public int washers() {
    return nuts();
  }

  /** Turns that a nut makes on its way up one turn of the helix. */
  public double nutTurns(Length height) {
    return height.millimetres() / riser.thread().pitch().millimetres();
  }

  /** Weight of all rods, nuts and washers in kilograms. */
  public double weight() {
    double metres = cuts().stream().mapToDouble(cut -> cut.length().millimetres()).sum() / 1000;
    return metres * riser.thread().kilogramsPerMetre()
        + nuts() * riser.thread().nutKilograms()
        + washers() * riser.washerBought().kilograms();
  }

  /** Lengths to cut: one for each rod, or whole stock and a rest where a rod is longer. */
  public List<BoardCutting.Cut> cuts() {
    List<BoardCutting.Cut> cuts = new ArrayList<>();
    for (Rods each : rods) {
      if (each.station().edges().atInner()) {
        addCuts(cuts, each.station().name() + " inner", each.length());
      }
      if (each.station().edges().atOuter()) {
        addCuts(cuts, each.station().name() + " outer", each.length());
      }
    }
    return cuts;
  }

  private void addCuts(List<BoardCutting.Cut> cuts, String name, Length length) {
    Length left = length;
    boolean joined = length.compareTo(riser.stock().length()) > 0;
    while (left.compareTo(riser.stock().length()) > 0) {
      cuts.add(new BoardCutting.Cut(name + " (whole)", riser.stock().length()));
      left = left.minus(riser.stock().length());
    }
    cuts.add(new BoardCutting.Cut(joined ? name + " (rest)" : name, left));
  }

  /** Coupling nuts that join lengths to rods longer than the stock. */
  public int couplings() {
    return cuts().size() - count();
  }
}
