package curvestock.job;

import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Grade;
import curvestock.helix.standard.SupportSpacing;
import curvestock.units.Length;
import java.util.Optional;

/** Reads {@code bottom:} and {@code top:} of a helix: how the track comes to it and leaves it. */
final class EndReader {

  static final String[] KEYS = {
    "vertical-curve", "climb-lead", "lead-in", "approach-grade", "approach-run", "easement"
  };

  /** HO practice; other scales in proportion. */
  private static final Length VERTICAL_CURVE = Length.ofInches(24);

  private static final Length LEAD_IN = Length.ofInches(12);

  /** A longer straight makes the end pieces hard to cut and carry: our own choice. */
  private static final Length LONGEST_LEAD = Length.ofInches(24);

  private static final double STEEPEST_APPROACH = 10;

  private final Assumed assumed;
  private final double toScale;

  /** How far the straight at the top may stand out: bent like a span of twice its length. */
  private final Length overhang;

  EndReader(Assumed assumed, double toScale, Length plywood) {
    this.assumed = assumed;
    this.toScale = toScale;
    this.overhang = SupportSpacing.forThickness(plywood).value().widest().times(0.5);
  }

  /**
   * @param end {@code bottom} or {@code top}
   */
  Optional<EndPlan> read(Block helix, String end) {
    Optional<Field> field = helix.find(end);
    Optional<Block> block = field.flatMap(given -> given.block(KEYS));
    boolean hangs = end.equals("top");
    Length longest = hangs ? LONGEST_LEAD.shorter(overhang) : LONGEST_LEAD;
    String atMost =
        hangs
            ? "no longer than may reach beyond the last support"
            : assumed.shown(LONGEST_LEAD) + " at most";
    Length curve =
        assumed.length(
            block,
            "vertical-curve",
            Lengths.DISTANCE,
            end + ".vertical-curve",
            VERTICAL_CURVE.times(toScale),
            assumed.shown(VERTICAL_CURVE)
                + " in HO, other scales in proportion; "
                + Assumed.PRACTICE);
    Length lead =
        assumed.length(
            block,
            "climb-lead",
            Lengths.DISTANCE,
            end + ".climb-lead",
            curve.times(0.5).shorter(longest),
            "about half the vertical curve lies outside the ring, " + atMost);
    Length easement = length(block, "easement", Lengths.DISTANCE);
    Length leadIn =
        assumed.length(
            block,
            "lead-in",
            Lengths.DISTANCE,
            end + ".lead-in",
            LEAD_IN
                .times(toScale)
                .shorter(longest)
                .longer(lead.shorter(LONGEST_LEAD))
                .longer(easement.times(0.5)),
            assumed.shown(LEAD_IN)
                + " in HO, "
                + atMost
                + ", so that no joint falls where the climb starts; "
                + Assumed.PRACTICE);
    Length run = length(block, "approach-run", Lengths.DISTANCE);
    Grade grade =
        block
            .flatMap(given -> given.find("approach-grade"))
            .flatMap(given -> given.amount(STEEPEST_APPROACH))
            .map(Grade::ofPercent)
            .orElse(Grade.LEVEL);
    Block place = block.orElse(helix);
    return place.build(() -> new EndPlan(curve, lead, leadIn, grade, run, easement));
  }

  /** Zero where nothing is said. */
  private static Length length(Optional<Block> block, String key, Lengths rule) {
    return block.flatMap(given -> given.find(key)).flatMap(rule::read).orElse(Length.ZERO);
  }
}
