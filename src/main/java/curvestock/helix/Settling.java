package curvestock.helix;

import curvestock.helix.build.BaseFrame;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Construction.ButtWithPlate;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser.WoodBlocks;
import curvestock.helix.spec.Setting;
import curvestock.helix.verdict.Change;
import curvestock.helix.verdict.Place;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Sets what the job left open so that the rules hold: a longer vertical curve, a half-lap where a
 * plate would hang too low, a straight no longer than it may stand out.
 *
 * <p>Only assumed values move, one at a time, and a move is kept only if fewer rules fail, or as
 * few fail and fewer are marginal, and none fails that did not before.
 */
final class Settling {

  private static final int MOST_ROUNDS = 12;

  private static final Length LAP = Length.ofInches(2);

  /** A narrower block splits at the screw: our own choice. */
  private static final Length NARROWEST_BLOCK = Length.ofInches(0.5);

  private final LengthStyle shown;
  private HelixPlan plan;
  private Move now;

  /**
   * @param rounding how values that are set are rounded
   */
  Settling(HelixPlan plan, List<Assumption> assumed, LengthStyle rounding) {
    this.shown = plan.style();
    this.plan = told(plan, rounding);
    this.now = new Move(this.plan.spec(), assumed);
  }

  HelixOrder settled(Optional<BaseFrame> base) {
    for (int round = 0; round < MOST_ROUNDS && improved(); round++) {
      // Each round moves one value.
    }
    return new HelixOrder(told(plan, shown).whole(), now.assumed(), base);
  }

  /** The plan with its advice in round figures of that style. */
  private static HelixPlan told(HelixPlan plan, LengthStyle style) {
    return plan.style().equals(style) ? plan : HelixPlan.trial(plan.spec(), style);
  }

  /** Heights last: they depend on the curves and leads that other rules ask for. */
  private boolean improved() {
    Predicate<Verdict> height = verdict -> verdict.rule() == Rule.FREE_HEIGHT;
    List<Verdict> open =
        plan.verdicts().stream().filter(verdict -> verdict.state() != State.OK).toList();
    return Stream.concat(open.stream().filter(height.negate()), open.stream().filter(height))
        .flatMap(this::moves)
        .anyMatch(this::isBetter);
  }

  private boolean isBetter(Move move) {
    try {
      HelixPlan moved = HelixPlan.trial(move.spec(), plan.style());
      if (!failing(plan).containsAll(failing(moved))) {
        return false;
      }
      long fails = count(plan, State.FAIL) - count(moved, State.FAIL);
      long marginal = count(plan, State.MARGINAL) - count(moved, State.MARGINAL);
      if (fails > 0 || (fails == 0 && marginal > 0)) {
        plan = moved;
        now = move;
        return true;
      }
    } catch (IllegalArgumentException cannotBePlanned) {
      return false;
    }
    return false;
  }

  private static Set<Rule> failing(HelixPlan plan) {
    return plan.verdicts().stream()
        .filter(verdict -> verdict.state() == State.FAIL)
        .map(Verdict::rule)
        .collect(Collectors.toSet());
  }

  private static long count(HelixPlan plan, State state) {
    return plan.verdicts().stream().filter(verdict -> verdict.state() == state).count();
  }

  private Stream<Move> moves(Verdict verdict) {
    return switch (verdict.rule()) {
      case FREE_HEIGHT -> Stream.concat(halfLap().stream(), ends(verdict));
      case VERTICAL_CURVE, LEAD, LEAD_SUPPORTS -> ends(verdict);
      case SPLICE_PLATE -> screws();
      case SUPPORT_ROOM -> blocks(verdict).stream();
      default -> Stream.empty();
    };
  }

  /**
   * Other values at the end that the verdict is about; if none of them does, with half-laps as
   * well.
   */
  private Stream<Move> ends(Verdict verdict) {
    boolean entry = verdict.place().equals(Optional.of(Place.ENTRY));
    if (!entry && !verdict.place().equals(Optional.of(Place.EXIT))) {
      return Stream.empty();
    }
    return Stream.concat(
        new EndMoves(plan, now, entry, true, shown).moves(),
        halfLap().stream()
            .flatMap(lapped -> new EndMoves(plan, lapped, entry, false, shown).moves()));
  }

  /** The same with half-laps, below which nothing hangs; supports placed anew, off the laps. */
  private Optional<Move> halfLap() {
    if (!now.assumes("joint") || !(now.spec().construction() instanceof ButtWithPlate)) {
      return Optional.empty();
    }
    List<Assumption> told = new ArrayList<>();
    for (Assumption each : now.assumed()) {
      if (each.field().equals("joint")) {
        told.add(
            new Assumption("joint", "half-lap", "a plate below would take height trains need"));
        told.add(new Assumption("joint.half-lap", shown.formatGiven(LAP), "rule of thumb"));
      } else if (!each.field().startsWith("joint.")
          && !each.field().equals(Setting.FIRST_SUPPORT.key())) {
        told.add(each);
      }
    }
    HelixSpec spec = now.spec().with(new Construction.HalfLap(LAP));
    return Optional.of(
        new Move(
            now.assumes(Setting.FIRST_SUPPORT.key())
                ? spec.with(spec.supports().startingAt(Optional.empty()))
                : spec,
            told));
  }

  /** Fewer screws, one less at a time: the first number for which the plate has room. */
  private Stream<Move> screws() {
    String field = Setting.PLATE_SCREWS.key();
    if (!now.assumes(field) || !(plan.spec().construction() instanceof ButtWithPlate butt)) {
      return Stream.empty();
    }
    int screws = butt.plate().screwsEachSide();
    return IntStream.range(1, screws)
        .map(less -> screws - less)
        .mapToObj(
            fewer ->
                now.with(
                        Revision.of(
                            plan.spec(),
                            List.of(
                                new Change(
                                    Setting.PLATE_SCREWS, new Count(screws), new Count(fewer)))))
                    .telling(
                        new Assumption(field, Integer.toString(fewer), "as the plate has room")));
  }

  private Optional<Move> blocks(Verdict verdict) {
    String field = "supports.blocks.width";
    if (!now.assumes(field) || !(plan.spec().supports().riser() instanceof WoodBlocks old)) {
      return Optional.empty();
    }
    Length missing =
        ((Length) verdict.needed().orElseThrow()).minus((Length) verdict.measured().orElseThrow());
    Length width = plan.style().roundDown(old.width().minus(missing));
    if (width.compareTo(NARROWEST_BLOCK) < 0) {
      return Optional.empty();
    }
    WoodBlocks narrow =
        new WoodBlocks(width, old.along(), old.crossPiece(), old.kerf(), old.stock(), old.inches());
    return Optional.of(
        now.with(plan.spec().with(plan.spec().supports().with(narrow)))
            .telling(
                new Assumption(
                    field, shown.formatGiven(width), "ripped narrower, so that trains pass")));
  }
}
