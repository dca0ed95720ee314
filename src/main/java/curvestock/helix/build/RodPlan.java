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
   * @param joints middles of the coupling nuts, from its lower end
   */
  public record Rods(Station station, int turns, Length length, List<Length> joints) {
    public Rods {
      joints = List.copyOf(joints);
    }

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
        int turns = row.station().places().size();
        rods.add(
            new Rods(row.station(), turns, length, joints(spec, row.station(), table, length)));
      }
    }
    rods.sort(Comparator.comparingDouble(each -> each.station().lowest()));
  }

  private List<Length> joints(HelixSpec spec, Station station, SupportTable table, Length length) {
    RodJoints joints = new RodJoints(riser);
    Length top = belowBaseTop();
    joints.take(top.minus(riser.base()).minus(nutAndWasher()), top.plus(nutAndWasher()));
    for (SupportRow row : table.rows()) {
      if (row.station().equals(station)) {
        Length above = top.plus(row.underside()).plus(spec.plywood());
        joints.take(top.plus(lowerNut(row)), above.plus(nutAndWasher()));
      }
    }
    return joints.of(length);
  }

  private Length nutAndWasher() {
    return riser.thread().nutHeight().plus(riser.washerBought().thickness());
  }

  /** Where the lower nut of a turn sits, below a splice plate if one is there: its lower face. */
  public Length lowerNut(SupportRow row) {
    return row.underside().minus(row.plate()).minus(nutAndWasher());
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

  /** Lengths to cut: one for each rod, or its parts from below where it is joined. */
  public List<BoardCutting.Cut> cuts() {
    List<BoardCutting.Cut> cuts = new ArrayList<>();
    for (Rods each : rods) {
      if (each.station().edges().atInner()) {
        addCuts(cuts, each.station().name() + " inner", each);
      }
      if (each.station().edges().atOuter()) {
        addCuts(cuts, each.station().name() + " outer", each);
      }
    }
    return cuts;
  }

  private static void addCuts(List<BoardCutting.Cut> cuts, String name, Rods rod) {
    List<Length> ends = new ArrayList<>(rod.joints());
    ends.add(rod.length());
    Length below = Length.ZERO;
    for (int i = 0; i < ends.size(); i++) {
      String part = ends.size() == 1 ? name : "%s (%s of %s)".formatted(name, i + 1, ends.size());
      cuts.add(new BoardCutting.Cut(part, ends.get(i).minus(below)));
      below = ends.get(i);
    }
  }

  /** Coupling nuts that join lengths to rods longer than the stock. */
  public int couplings() {
    return cuts().size() - count();
  }
}
