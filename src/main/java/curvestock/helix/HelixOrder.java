package curvestock.helix;

import curvestock.helix.build.BaseFrame;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Setting;
import curvestock.helix.verdict.BaseRule;
import curvestock.helix.verdict.Change;
import curvestock.helix.verdict.Place;
import curvestock.helix.verdict.Remedy;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.piece.Demand;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A whole helix as a job orders it.
 *
 * @param plan the helix, worked out
 * @param assumed what the job left open and the trade filled in
 * @param base the base under it, if it is to be cut from the same sheets
 */
public record HelixOrder(HelixPlan plan, List<Assumption> assumed, Optional<BaseFrame> base) {
  public HelixOrder {
    assumed = List.copyOf(assumed);
  }

  /**
   * The helix with what the job left open set so that the rules hold, as far as these values can.
   *
   * @param rounding how values that are set are rounded; not by the units that are printed, which
   *     change no piece
   */
  public static HelixOrder settled(
      HelixPlan plan, List<Assumption> assumed, Optional<BaseFrame> base, LengthStyle rounding) {
    return new Settling(plan, assumed, rounding).settled(base);
  }

  /**
   * The verdicts on vertical curves, leads and their supports that do not pass although the job
   * leaves the length open that they are about.
   */
  public List<Verdict> shortEnds() {
    return plan.verdicts().stream()
        .filter(verdict -> verdict.state() != State.OK && isAssumed(verdict))
        .toList();
  }

  private boolean isAssumed(Verdict verdict) {
    String end = verdict.place().equals(Optional.of(Place.ENTRY)) ? "bottom." : "top.";
    Optional<String> field =
        switch (verdict.rule()) {
          case VERTICAL_CURVE -> Optional.of(end + "vertical-curve");
          case LEAD, LEAD_SUPPORTS -> Optional.of(end + "lead-in");
          default -> Optional.empty();
        };
    return field.filter(this::assumes).isPresent();
  }

  private boolean assumes(String field) {
    return assumed.stream().anyMatch(each -> each.field().equals(field));
  }

  /**
   * This helix with more rise per turn, at which {@link #shortEnds} would be none and no check
   * fails, tried out; empty if none is found, or the job does not state the rise.
   */
  public Optional<HelixPlan> withRiseForEnds() {
    return new RiseForEnds(this).plan();
  }

  /** Whether all supports stand on the base; empty without one. */
  public Optional<Verdict> onBase() {
    return base.map(
        frame -> new BaseRule(plan.spec(), plan.line(), plan.supports(), frame).verdict());
  }

  /** {@link HelixPlan#advice}, and what is to be said of the base. */
  public List<Verdict> verdicts() {
    return Stream.concat(plan.advice().stream().map(this::pinned), onBase().stream()).toList();
  }

  /**
   * With the other lengths of an end that its remedy changes, where the job leaves them open: they
   * would settle anew around what is written, and the remedy was tried with these.
   */
  private Verdict pinned(Verdict verdict) {
    return verdict.fixedBy(verdict.remedy().map(remedy -> new Remedy(pinned(remedy.changes()))));
  }

  private List<Change> pinned(List<Change> changes) {
    List<Change> all = new ArrayList<>(changes);
    for (Map<Setting, Length> end : List.of(lengths(true), lengths(false))) {
      if (changes.stream().anyMatch(change -> end.containsKey(change.setting()))) {
        end.forEach(
            (setting, now) -> {
              boolean changed = changes.stream().anyMatch(each -> each.setting() == setting);
              if (!changed && assumes(setting.key())) {
                all.add(new Change(setting, now, now));
              }
            });
      }
    }
    return all;
  }

  /** The lengths of the entry or the exit that hang on each other. */
  private Map<Setting, Length> lengths(boolean entry) {
    EndPlan end = entry ? plan.spec().bottom() : plan.spec().top();
    Map<Setting, Length> lengths = new EnumMap<>(Setting.class);
    lengths.put(
        entry ? Setting.ENTRY_VERTICAL_CURVE : Setting.EXIT_VERTICAL_CURVE, end.verticalCurve());
    lengths.put(entry ? Setting.ENTRY_CLIMB_LEAD : Setting.EXIT_CLIMB_LEAD, end.climbLead());
    lengths.put(entry ? Setting.ENTRY_LEAD_IN : Setting.EXIT_LEAD_IN, end.leadIn());
    return lengths;
  }

  /** Least distance across the floor: of the ring with all that stands out, or of the base. */
  public Length across() {
    Length ring = plan.spec().ground().outerEdge().plus(plan.beyondEdge(true)).times(2);
    return base.map(BaseFrame::acrossFlats).orElse(ring).longer(ring);
  }

  /** What is open in the middle of the ring and of the base. */
  public Length clearInside() {
    Length ring = plan.spec().ground().innerEdge().minus(plan.beyondEdge(false)).times(2);
    return base.map(BaseFrame::clear).filter(clear -> clear.compareTo(ring) < 0).orElse(ring);
  }

  /** Whether the base takes more floor than the ring. */
  public boolean baseIsWider() {
    return base.map(BaseFrame::acrossFlats).equals(Optional.of(across()));
  }

  /** Everything to be cut from the job's sheets: roadbed, small parts, base. */
  public List<Demand> demands() {
    List<Demand> demands = new ArrayList<>(plan.demands());
    base.ifPresent(frame -> demands.add(frame.demand()));
    return demands;
  }
}
