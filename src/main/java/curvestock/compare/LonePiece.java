package curvestock.compare;

import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.packing.Packers;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.Planner;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One piece for which a whole sheet is bought, and what would save that sheet.
 *
 * @param sheet its number
 * @param piece what it is
 * @param saving the first change tried that does with a sheet less; empty if none did
 * @param tried whether changes were tried at all
 */
public record LonePiece(int sheet, String piece, Optional<Saving> saving, boolean tried) {

  /**
   * A change of one length, planned anew.
   *
   * @param change added to the length; negative makes it less
   * @param sheets that are needed then
   */
  public record Saving(Dimension dimension, Length change, int sheets) {}

  /** What a builder changes most easily first; each made smaller. */
  private static final List<Dimension> ORDER =
      List.of(Dimension.MARGIN, Dimension.KERF, Dimension.WIDTH, Dimension.RADIUS);

  /** Of each so many steps. */
  private static final int STEPS = 3;

  /** The number of the sheet that holds one piece alone and is paid for; empty if none does. */
  static OptionalInt sheet(List<Layout> layouts) {
    for (int i = 0; i < layouts.size() && layouts.size() > 1; i++) {
      Layout layout = layouts.get(i);
      boolean paid = layout.sheet().price().compareTo(Money.ZERO) > 0;
      if (paid && layout.placements().size() == 1) {
        return OptionalInt.of(i + 1);
      }
    }
    return OptionalInt.empty();
  }

  /** The one of a choice, with the smallest of the changes tried that saves its sheet. */
  static Optional<LonePiece> of(
      Designs designs, SegmentOption option, Packers packers, CompareListener listener) {
    List<Layout> layouts = option.plan().layouts();
    OptionalInt alone = sheet(layouts);
    if (alone.isEmpty()) {
      return Optional.empty();
    }
    String name = layouts.get(alone.getAsInt() - 1).placements().get(0).piece().name();
    // On several kinds of sheet a change would be tried on one kind alone, and prove nothing.
    boolean plain = designs.job().sheets().size() == 1;
    Optional<Saving> saving = plain ? saving(designs, option, packers, listener) : Optional.empty();
    return Optional.of(new LonePiece(alone.getAsInt(), name, saving, plain));
  }

  private static Optional<Saving> saving(
      Designs designs, SegmentOption option, Packers packers, CompareListener listener) {
    boolean imperial = designs.job().style().unit().isImperial();
    for (int step = 0; step < STEPS; step++) {
      for (Dimension dimension : ORDER) {
        Length change = dimension.ladder(imperial).get(step).times(-1);
        int sheets = sheets(designs, option, dimension, change, packers, listener);
        if (listener.stopped()) {
          return Optional.empty();
        }
        if (sheets < option.sheets()) {
          return Optional.of(new Saving(dimension, change, sheets));
        }
      }
    }
    return Optional.empty();
  }

  private static int sheets(
      Designs designs,
      SegmentOption option,
      Dimension dimension,
      Length change,
      Packers packers,
      CompareListener listener) {
    try {
      Optional<Designs> changed = dimension.change(designs, designs.mainSheet(), change);
      // Advice that breaks a rule of the helix is none.
      if (changed.isEmpty() || (designs.works() && !changed.get().works())) {
        return ShortSheets.NONE;
      }
      Design design = changed.get().in(option.division());
      Job job = design.job().with(design.job().search().at(Effort.QUICK));
      Plan plan = new Planner(job, new Named("a change", listener), packers).planRoughly();
      SmallFit small = new Nesting(packers, changed.get().mainSheet()).fit(plan, design.small());
      return plan.purchase().sheets() + small.extraSheets();
    } catch (Infeasible | IllegalArgumentException impossible) {
      return ShortSheets.NONE;
    }
  }
}
