package curvestock.helix;

import curvestock.helix.build.BaseFrame;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Construction.ButtWithPlate;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser.WoodBlocks;
import curvestock.helix.spec.Setting;
import curvestock.helix.verdict.Change;
import curvestock.helix.verdict.Fact;
import curvestock.helix.verdict.Place;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Sets what the job left open so that the rules hold: a longer vertical curve, a half-lap where a
 * plate would hang too low, a straight no longer than it may stand out.
 *
 * <p>Only assumed values move, one at a time, and a move is kept only if fewer rules fail, or as
 * few fail and fewer are marginal.
 */
final class Settling {

  private static final int MOST_ROUNDS = 12;

  private static final Length LAP = Length.ofInches(2);

  /** A longer straight makes the end pieces hard to cut and carry: our own choice. */
  private static final Length LONGEST_LEAD = Length.ofInches(24);

  /** A shorter vertical curve is tried by steps of this part of the usual one. */
  private static final int CURVE_STEPS = 20;

  private static final String HEIGHT = "trains keep their height where they cross the ring";

  /** A narrower block splits at the screw: our own choice. */
  private static final Length NARROWEST_BLOCK = Length.ofInches(0.5);

  private final LengthStyle shown;
  private HelixPlan plan;
  private List<Assumption> assumed;

  /**
   * @param rounding how values that are set are rounded
   */
  Settling(HelixPlan plan, List<Assumption> assumed, LengthStyle rounding) {
    this.shown = plan.style();
    this.plan = told(plan, rounding);
    this.assumed = List.copyOf(assumed);
  }

  /** A specification with some assumed values moved. */
  private record Move(HelixSpec spec, List<Assumption> assumed) {}

  HelixOrder settled(Optional<BaseFrame> base) {
    for (int round = 0; round < MOST_ROUNDS && improved(); round++) {
      // Each round moves one value.
    }
    return new HelixOrder(told(plan, shown).whole(), assumed, base);
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
        .flatMap(verdict -> moves(verdict).stream())
        .anyMatch(this::isBetter);
  }

  private boolean isBetter(Move move) {
    try {
      HelixPlan moved = HelixPlan.trial(move.spec(), plan.style());
      long fails = count(plan, State.FAIL) - count(moved, State.FAIL);
      long marginal = count(plan, State.MARGINAL) - count(moved, State.MARGINAL);
      if (fails > 0 || (fails == 0 && marginal > 0)) {
        plan = moved;
        assumed = move.assumed();
        return true;
      }
    } catch (IllegalArgumentException cannotBePlanned) {
      return false;
    }
    return false;
  }

  private static long count(HelixPlan plan, State state) {
    return plan.verdicts().stream().filter(verdict -> verdict.state() == state).count();
  }

  private List<Move> moves(Verdict verdict) {
    return switch (verdict.rule()) {
      case VERTICAL_CURVE ->
          curve(verdict).stream()
              .flatMap(longer -> Stream.concat(Stream.of(longer), halfLap(longer).stream()))
              .toList();
      case FREE_HEIGHT ->
          Stream.of(
                  halfLap(new Move(plan.spec(), assumed)),
                  earlierClimb(verdict),
                  shorterCurve(verdict),
                  laterEnd(verdict))
              .flatMap(Optional::stream)
              .toList();
      case SPLICE_PLATE -> screws().stream().toList();
      case SUPPORT_ROOM -> blocks(verdict).stream().toList();
      case LEAD_SUPPORTS ->
          Stream.of(lastSupport(verdict), lead(verdict)).flatMap(Optional::stream).toList();
      default -> List.of();
    };
  }

  private boolean isAssumed(String field) {
    return assumed.stream().anyMatch(each -> each.field().equals(field));
  }

  private Optional<Move> curve(Verdict verdict) {
    Length curve = (Length) verdict.remedy().orElseThrow().changes().get(0).then();
    return curve(
        verdict.place().orElseThrow() == Place.ENTRY, curve, "as long as the change of grade asks");
  }

  /** Another vertical curve, half of it outside the ring as far as the straight reaches. */
  private Optional<Move> curve(boolean entry, Length curve, String reason) {
    String end = entry ? "bottom" : "top";
    if (!isAssumed(end + ".vertical-curve")) {
      return Optional.empty();
    }
    HelixSpec spec = plan.spec();
    EndPlan old = entry ? spec.bottom() : spec.top();
    EndPlan other = old.withVerticalCurve(curve);
    List<Assumption> now = replaced(end + ".vertical-curve", curve, reason);
    if (isAssumed(end + ".climb-lead")) {
      boolean free = entry && isAssumed(end + ".lead-in");
      Length longest = free ? longer(LONGEST_LEAD, old.leadIn()) : old.leadIn();
      Length lead = shorter(curve.times(0.5), longest);
      other = other.withClimbLead(lead).withLeadIn(longer(lead, old.leadIn()));
      now = replaced(now, end + ".climb-lead", lead);
      now = replaced(now, end + ".lead-in", other.leadIn());
    }
    return Optional.of(new Move(with(entry, other), now));
  }

  /**
   * A vertical curve that reaches less far into the ring, where it costs height: the longest that
   * leaves all the height that trains need, else the longest that they get through with.
   */
  private Optional<Move> shorterCurve(Verdict verdict) {
    Optional<Place> place = verdict.place().filter(at -> at == Place.ENTRY || at == Place.EXIT);
    if (place.isEmpty() || verdict.state() != State.FAIL) {
      return Optional.empty();
    }
    boolean entry = place.get() == Place.ENTRY;
    Length usual = (entry ? plan.spec().bottom() : plan.spec().top()).verticalCurve();
    Optional<Move> least = Optional.empty();
    for (int part = CURVE_STEPS - 1; part > 0; part--) {
      Length curve = plan.style().roundDown(usual.times((double) part / CURVE_STEPS));
      Optional<Move> move = curve(entry, curve, "no longer than that " + HEIGHT);
      Optional<State> height = move.flatMap(tried -> height(tried, verdict));
      if (height.filter(State.OK::equals).isPresent()) {
        return move;
      }
      if (least.isEmpty() && height.filter(State.MARGINAL::equals).isPresent()) {
        least = move;
      }
    }
    return least;
  }

  /** How the verdict on the same height is after the move. */
  private Optional<State> height(Move move, Verdict before) {
    try {
      return HelixPlan.trial(move.spec(), plan.style()).verdicts().stream()
          .filter(v -> v.rule() == before.rule() && v.place().equals(before.place()))
          .map(Verdict::state)
          .max(Comparator.naturalOrder());
    } catch (IllegalArgumentException cannotBePlanned) {
      return Optional.empty();
    }
  }

  /** A climb that begins further outside, on a straight that is still easy to cut and carry. */
  private Optional<Move> earlierClimb(Verdict verdict) {
    if (!isAssumed("bottom.lead-in")) {
      return Optional.empty();
    }
    return climbLead(verdict, Place.ENTRY, Setting.ENTRY_CLIMB_LEAD)
        .map(
            lead -> {
              EndPlan old = plan.spec().bottom();
              EndPlan earlier = old.withClimbLead(lead).withLeadIn(longer(lead, old.leadIn()));
              List<Assumption> now = replaced("bottom.climb-lead", lead, "so long that " + HEIGHT);
              return new Move(
                  with(true, earlier), replaced(now, "bottom.lead-in", earlier.leadIn()));
            });
  }

  /** A climb that ends on the track beyond the last piece, if trains do not pass otherwise. */
  private Optional<Move> laterEnd(Verdict verdict) {
    return climbLead(verdict, Place.EXIT, Setting.EXIT_CLIMB_LEAD)
        .filter(lead -> verdict.state() == State.FAIL)
        .map(
            lead ->
                new Move(
                    with(false, plan.spec().top().withClimbLead(lead)),
                    replaced("top.climb-lead", lead, "so long that " + HEIGHT)));
  }

  /** How far outside the ring the climb would have to begin or end, if that is not too far. */
  private Optional<Length> climbLead(Verdict verdict, Place place, Setting setting) {
    if (!verdict.place().equals(Optional.of(place)) || !isAssumed(setting.key())) {
      return Optional.empty();
    }
    return verdict.remedy().stream()
        .flatMap(remedy -> remedy.changes().stream())
        .filter(change -> change.setting() == setting)
        .map(change -> (Length) change.then())
        .filter(lead -> lead.compareTo(LONGEST_LEAD) <= 0)
        .findFirst();
  }

  /** The supports moved round so that one stands where the ring ends and the straight begins. */
  private Optional<Move> lastSupport(Verdict verdict) {
    HelixSpec spec = plan.spec();
    boolean entry = verdict.place().orElseThrow() == Place.ENTRY;
    if (entry || spec.supports().firstAt().isPresent()) {
      return Optional.empty();
    }
    double spacing = plan.stations().spacing().millimetres();
    Length first =
        plan.style().roundDown(Length.ofMillimetres(plan.climb().ringLength() % spacing));
    List<Assumption> now = new ArrayList<>(assumed);
    now.add(
        new Assumption(
            Setting.FIRST_SUPPORT.key(),
            shown.formatGiven(first),
            "so that a support stands at the ring's end, where the straight begins"));
    return Optional.of(
        new Move(spec.with(spec.supports().startingAt(Optional.of(first))), List.copyOf(now)));
  }

  /** The straight at the top no longer than what may stand out beyond the last support. */
  private Optional<Move> lead(Verdict verdict) {
    boolean entry = verdict.place().orElseThrow() == Place.ENTRY;
    if (entry || !isAssumed("top.lead-in")) {
      return Optional.empty();
    }
    EndPlan old = plan.spec().top();
    Length over =
        ((Length) verdict.facts().get(Fact.BEYOND))
            .minus(((Length) verdict.needed().orElseThrow()).times(0.5));
    Length lead = plan.style().roundDown(old.leadIn().minus(over));
    if (lead.millimetres() <= 0 || lead.compareTo(old.leadIn()) >= 0) {
      return Optional.empty();
    }
    boolean climbs = isAssumed("top.climb-lead") && old.climbLead().compareTo(lead) > 0;
    EndPlan shorter = (climbs ? old.withClimbLead(lead) : old).withLeadIn(lead);
    List<Assumption> now =
        replaced("top.lead-in", lead, "no longer than may stand out beyond the last support");
    return Optional.of(
        new Move(with(false, shorter), climbs ? replaced(now, "top.climb-lead", lead) : now));
  }

  /** The same with half-laps, below which nothing hangs. */
  private Optional<Move> halfLap(Move from) {
    if (!isAssumed("joint") || !(from.spec().construction() instanceof ButtWithPlate)) {
      return Optional.empty();
    }
    List<Assumption> now = new ArrayList<>();
    for (Assumption each : from.assumed()) {
      if (each.field().equals("joint")) {
        now.add(new Assumption("joint", "half-lap", "a plate below would take height trains need"));
        now.add(new Assumption("joint.half-lap", shown.formatGiven(LAP), "rule of thumb"));
      } else if (!each.field().startsWith("joint.")) {
        now.add(each);
      }
    }
    return Optional.of(new Move(from.spec().with(new Construction.HalfLap(LAP)), List.copyOf(now)));
  }

  private Optional<Move> screws() {
    String field = Setting.PLATE_SCREWS.key();
    if (!isAssumed(field)
        || !(plan.spec().construction() instanceof ButtWithPlate butt)
        || butt.plate().screwsEachSide() == 1) {
      return Optional.empty();
    }
    int fewer = butt.plate().screwsEachSide() - 1;
    Change change =
        new Change(
            Setting.PLATE_SCREWS, new Count(butt.plate().screwsEachSide()), new Count(fewer));
    return Optional.of(
        new Move(
            Revision.of(plan.spec(), List.of(change)),
            replaced(field, Integer.toString(fewer), "as the plate has room")));
  }

  private Optional<Move> blocks(Verdict verdict) {
    String field = "supports.blocks.width";
    if (!isAssumed(field) || !(plan.spec().supports().riser() instanceof WoodBlocks old)) {
      return Optional.empty();
    }
    Length missing =
        ((Length) verdict.needed().orElseThrow()).minus((Length) verdict.measured().orElseThrow());
    Length width = plan.style().roundDown(old.width().minus(missing));
    if (width.compareTo(NARROWEST_BLOCK) < 0) {
      return Optional.empty();
    }
    WoodBlocks narrow =
        new WoodBlocks(width, old.along(), old.crossPiece(), old.kerf(), old.stock());
    return Optional.of(
        new Move(
            plan.spec().with(plan.spec().supports().with(narrow)),
            replaced(field, width, "ripped narrower, so that trains pass")));
  }

  private HelixSpec with(boolean entry, EndPlan end) {
    HelixSpec spec = plan.spec();
    return entry ? spec.with(end, spec.top()) : spec.with(spec.bottom(), end);
  }

  private List<Assumption> replaced(String field, Length value, String reason) {
    return replaced(field, shown.formatGiven(value), reason);
  }

  private List<Assumption> replaced(String field, String value, String reason) {
    Predicate<Assumption> same = each -> each.field().equals(field);
    return assumed.stream()
        .map(each -> same.test(each) ? new Assumption(field, value, reason) : each)
        .toList();
  }

  private List<Assumption> replaced(List<Assumption> list, String field, Length value) {
    String words = shown.formatGiven(value);
    return list.stream()
        .map(
            each -> each.field().equals(field) ? new Assumption(field, words, each.reason()) : each)
        .toList();
  }

  private static Length shorter(Length a, Length b) {
    return a.compareTo(b) <= 0 ? a : b;
  }

  private static Length longer(Length a, Length b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}
