package curvestock.helix;

import curvestock.helix.build.HoleRule;
import curvestock.helix.build.Station;
import curvestock.helix.clearance.EndClearance;
import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.clearance.HeightNeed;
import curvestock.helix.course.ClimbSolver;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser.ThreadedRods;
import curvestock.helix.spec.Setting;
import curvestock.helix.standard.SupportSpacing;
import curvestock.helix.verdict.Place;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Other values for what a job leaves open at one end of the helix: vertical curve, climb lead and
 * lead-in together, since each costs the others their room.
 *
 * <p>Every combination on a grid is judged by the free height, the usual length of the curve, the
 * joint that should not fall on it and what may stand out beyond the last support. Those that meet
 * most come first; of equals the one nearest to the usual, one for each length of straight.
 */
final class EndMoves {

  /** A longer straight makes the end pieces hard to cut and carry: our own choice. */
  static final Length LONGEST_LEAD = Length.ofInches(24);

  /** Vertical curves are tried by steps of this part of the usual one. */
  private static final int CURVE_STEPS = 20;

  private static final int LEAD_STEPS = 8;
  private static final int MOST_CHOICES = 6;

  private static final int FAILS = 100;

  /** Keeps a hole that was rounded down from touching what it must keep off, in millimetres. */
  private static final double ROUNDING = 0.5;

  private final HelixPlan plan;
  private final Move from;
  private final LengthStyle shown;
  private final boolean entry;
  private final EndPlan old;
  private final Length usualCurve;
  private final Length hanging;

  /** The widest span that passes. */
  private final Length widest;

  private final Length overhang;
  private final HeightNeed need;
  private final double least;

  /** Curve, climb lead and lead-in, how many rules they leave unmet, and how unusual they are. */
  private record Choice(EndPlan end, int unmet, double odd) {}

  /**
   * @param from what is assumed so far
   * @param hangs whether something hangs below the roadbed at its joints
   * @param shown the style in which assumed values are told
   */
  EndMoves(HelixPlan plan, Move from, boolean entry, boolean hangs, LengthStyle shown) {
    this.plan = plan;
    this.from = from;
    this.entry = entry;
    this.shown = shown;
    old = entry ? from.spec().bottom() : from.spec().top();
    usualCurve = plan.style().roundUp(needed(Rule.VERTICAL_CURVE));
    hanging = hangs ? hanging() : Length.ZERO;
    SupportSpacing.Range range = SupportSpacing.forThickness(from.spec().plywood()).value();
    widest = range.most();
    overhang = range.widest().times(0.5);
    need = HeightNeed.of(from.spec());
    least = leastBack();
  }

  /** The most promising first. */
  Stream<Move> moves() {
    return choices().stream()
        .flatMap(
            choice -> {
              Move moved = moved(choice.end());
              return Stream.concat(
                  Stream.of(moved), firsts(choice.end()).map(first -> withFirst(moved, first)));
            });
  }

  private List<Choice> choices() {
    List<Choice> all = new ArrayList<>();
    for (Length curve : curves()) {
      for (Length leadIn : leads()) {
        for (Length lead : climbLeads(curve, leadIn)) {
          EndPlan end = old.withLeadIn(leadIn).withClimbLead(lead).withVerticalCurve(curve);
          all.add(new Choice(end, unmet(end), odd(end)));
        }
      }
    }
    Comparator<Choice> best =
        Comparator.comparingInt(Choice::unmet).thenComparingDouble(Choice::odd);
    Set<Length> seen = new HashSet<>();
    List<Choice> varied =
        all.stream().sorted(best).filter(each -> seen.add(each.end().leadIn())).toList();
    int fewest = varied.get(0).unmet();
    return varied.stream()
        .filter(each -> each.unmet() == fewest && fewest < unmetNow())
        .limit(MOST_CHOICES)
        .toList();
  }

  /** The same of the plan as it is, by its own verdicts. */
  private int unmetNow() {
    return Stream.of(Rule.VERTICAL_CURVE, Rule.LEAD, Rule.LEAD_SUPPORTS, Rule.FREE_HEIGHT)
        .flatMap(this::of)
        .mapToInt(each -> each.state() == State.OK ? 0 : each.state() == State.FAIL ? FAILS + 1 : 1)
        .sum();
  }

  private String field(String key) {
    return (entry ? "bottom." : "top.") + key;
  }

  private List<Length> curves() {
    List<Length> curves = new ArrayList<>(List.of(old.verticalCurve()));
    if (from.assumes(field("vertical-curve"))) {
      curves.add(usualCurve);
      for (int part = CURVE_STEPS - 1; part > 0; part--) {
        curves.add(plan.style().roundDown(usualCurve.times((double) part / CURVE_STEPS)));
      }
    }
    return curves;
  }

  /**
   * Longer straights at the entry, at the top what may stand out, or reaches a support beside the
   * turn below and beyond.
   */
  private List<Length> leads() {
    List<Length> leads = new ArrayList<>(List.of(old.leadIn()));
    if (from.assumes(field("lead-in"))) {
      double most = Math.min(overhang.millimetres(), widest.millimetres() / 2 - least);
      Length longest = entry ? LONGEST_LEAD : Length.ofMillimetres(Math.max(0, most));
      for (int part = LEAD_STEPS; part > 0; part--) {
        Length lead = plan.style().roundDown(longest.times((double) part / LEAD_STEPS));
        if (lead.millimetres() > 0 && lead.compareTo(old.easement().times(0.5)) >= 0) {
          leads.add(lead);
        }
      }
      if (!entry && held().compareTo(LONGEST_LEAD) <= 0) {
        Length beyond = LONGEST_LEAD.minus(held());
        for (int part = 0; part <= LEAD_STEPS; part++) {
          Length more = beyond.times((double) part / LEAD_STEPS);
          leads.add(held().plus(plan.style().roundDown(more)));
        }
      }
    }
    return leads;
  }

  /** The least straight at the top that reaches a support beside the turn below. */
  private Length held() {
    return plan.style().roundUp(plan.stations().leadToSupport());
  }

  private List<Length> climbLeads(Length curve, Length leadIn) {
    List<Length> leads = new ArrayList<>(List.of(old.climbLead()));
    if (from.assumes(field("climb-lead"))) {
      leads.add(curve.times(0.5).shorter(leadIn));
      leads.add(leadIn);
      for (int part = 1; part <= LEAD_STEPS; part++) {
        leads.add(plan.style().roundDown(LONGEST_LEAD.times((double) part / LEAD_STEPS)));
      }
    }
    return leads;
  }

  private int unmet(EndPlan end) {
    int unmet = end.verticalCurve().compareTo(needed(Rule.VERTICAL_CURVE)) < 0 ? 1 : 0;
    boolean jointOnCurve =
        end.leadIn().millimetres() == 0 || end.climbLead().compareTo(end.leadIn()) > 0;
    unmet += jointOnCurve ? 1 : 0;
    boolean hung = !entry && end.leadIn().millimetres() + least > widest.millimetres() / 2;
    unmet += hung && !isHeld(end) ? 1 : 0;
    HelixSpec spec = with(end);
    EndClearance clearance = new EndClearance(spec, plan.climb(), at());
    if (clearance.applies()) {
      Length free = clearance.free(hanging);
      unmet += free.compareTo(need.comfortable()) < 0 ? 1 : 0;
      unmet += free.compareTo(need.least()) < 0 ? FAILS : 0;
    }
    return unmet;
  }

  private boolean isHeld(EndPlan end) {
    return end.leadIn().compareTo(held()) >= 0
        && held().millimetres() + least <= widest.millimetres();
  }

  /** Shares of the usual, added up: only to put one choice before another. */
  private double odd(EndPlan end) {
    double usual = Math.max(1, usualCurve.millimetres());
    double shortCurve = Math.max(0, 1 - end.verticalCurve().millimetres() / usual);
    double half = Math.abs(end.climbLead().minus(end.verticalCurve().times(0.5)).millimetres());
    double moved = Math.abs(end.leadIn().minus(old.leadIn()).millimetres());
    boolean far = !entry && end.leadIn().compareTo(widest.times(0.5)) > 0;
    double unheld = far && !isHeld(end) ? 0.5 : 0;
    double onTrack = end.climbLead().compareTo(end.leadIn()) > 0 ? 0.5 : 0;
    return shortCurve
        + unheld
        + onTrack
        + 0.2 * half / usual
        + 0.3 * moved / LONGEST_LEAD.millimetres();
  }

  private End at() {
    return entry ? End.BOTTOM : End.TOP;
  }

  private Length needed(Rule rule) {
    return of(rule)
        .flatMap(verdict -> verdict.needed().stream())
        .map(Length.class::cast)
        .findFirst()
        .orElse(Length.ZERO);
  }

  private Stream<Verdict> of(Rule rule) {
    Place place = entry ? Place.ENTRY : Place.EXIT;
    return plan.verdicts().stream().filter(verdict -> verdict.is(rule, place));
  }

  /** What hangs into the free height here, as the rule on it found. */
  private Length hanging() {
    Length free = new EndClearance(plan.spec(), plan.climb(), at()).free(Length.ZERO);
    return of(Rule.FREE_HEIGHT)
        .map(verdict -> free.minus((Length) verdict.measured().orElseThrow()))
        .findFirst()
        .orElse(Length.ZERO);
  }

  private HelixSpec with(EndPlan end) {
    HelixSpec spec = from.spec();
    return entry ? spec.with(end, spec.top()) : spec.with(spec.bottom(), end);
  }

  private Move moved(EndPlan end) {
    Move move = from.with(with(end));
    int curve = end.verticalCurve().compareTo(usualCurve);
    if (!end.verticalCurve().equals(old.verticalCurve())) {
      String why =
          curve < 0
              ? "the longest with which trains keep their height where they cross the ring"
              : "as long as the change of grade asks";
      move = move.telling(new Assumption(field("vertical-curve"), tell(end.verticalCurve()), why));
    }
    if (!end.climbLead().equals(old.climbLead())) {
      boolean half = end.climbLead().equals(end.verticalCurve().times(0.5));
      String why = "so long that trains keep their height where they cross the ring";
      move =
          half
              ? move.telling(field("climb-lead"), tell(end.climbLead()))
              : move.telling(new Assumption(field("climb-lead"), tell(end.climbLead()), why));
    }
    if (!end.leadIn().equals(old.leadIn())) {
      move = move.telling(new Assumption(field("lead-in"), tell(end.leadIn()), whyLead(end)));
    }
    return move;
  }

  private String whyLead(EndPlan end) {
    return entry
        ? "so that no joint falls where the climb starts"
        : end.leadIn().compareTo(overhang) > 0
            ? "so that it reaches a support beside the turn below"
            : "no longer than may stand out beyond the last support";
  }

  private String tell(Length value) {
    return shown.formatGiven(value);
  }

  /** The supports moved round so that one stands close enough to where the ring ends. */
  private Stream<Length> firsts(EndPlan end) {
    if (entry || !isFirstFree()) {
      return Stream.empty();
    }
    double ring = new ClimbSolver(with(end), plan.style()).solve().ringLength();
    double room = isHeld(end) ? 2 * overhang.millimetres() - held().millimetres() : 0;
    double spare = widest.times(0.5).minus(end.leadIn()).millimetres();
    double most = Math.max(least, Math.max(room, spare));
    return Stream.of(0.0, 0.25, 0.5, 0.75, 1.0)
        .map(part -> least + part * (most - least))
        .filter(back -> isClear(ring, back))
        .map(back -> plan.style().roundDown(Length.ofMillimetres(firstFor(ring, back))))
        .distinct();
  }

  private boolean isFirstFree() {
    return from.spec().supports().firstAt().isEmpty() || from.assumes(Setting.FIRST_SUPPORT.key());
  }

  private double firstFor(double ring, double back) {
    return (ring - back) % plan.stations().spacing().millimetres();
  }

  /** How far before the ring's end the last support stands, or may stand if it is free to move. */
  private double leastBack() {
    double ring = plan.climb().ringLength();
    double now =
        ring - plan.stations().ring().stream().mapToDouble(Station::highest).max().orElse(ring);
    if (!isFirstFree()) {
      return now;
    }
    return IntStream.rangeClosed(0, (int) plan.stations().spacing().millimetres())
        .asDoubleStream()
        .filter(back -> isClear(ring, back))
        .findFirst()
        .orElse(now);
  }

  /**
   * Whether a rod so far before the ring's end, and its like on every turn, keep off the joints.
   */
  private boolean isClear(double ring, double back) {
    if (!(from.spec().supports().riser() instanceof ThreadedRods rods)) {
      return true;
    }
    double spacing = plan.stations().spacing().millimetres();
    Length hole = new HoleRule(from.spec(), plan.climb()).diameter(rods);
    double room = hole.times(0.5).plus(HoleRule.WOOD_AT_END).millimetres() + ROUNDING;
    return plan.joints().placesToAvoid().stream()
        .mapToDouble(place -> Math.abs(place - firstFor(ring, back)) % spacing)
        .allMatch(off -> Math.min(off, spacing - off) >= room);
  }

  private Move withFirst(Move move, Length first) {
    String why = "so that a support stands at the ring's end, where the straight begins";
    HelixSpec spec = move.spec();
    return move.with(spec.with(spec.supports().startingAt(Optional.of(first))))
        .telling(new Assumption(Setting.FIRST_SUPPORT.key(), tell(first), why));
  }
}
