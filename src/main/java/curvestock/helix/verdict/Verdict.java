package curvestock.helix.verdict;

import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Quantity;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a rule says of the helix, as data; {@link VerdictWords} makes sentences of it.
 *
 * @param rule which rule
 * @param place where, if it applies in several places
 * @param state how it came out
 * @param measured what the helix has
 * @param needed what it should have: at least or at most, see {@link Rule#sense}
 * @param facts what else is known
 * @param remedy what to change; empty if there is nothing to change, or nothing in the job
 */
public record Verdict(
    Rule rule,
    Optional<Place> place,
    State state,
    Optional<Quantity> measured,
    Optional<Quantity> needed,
    Map<Fact, Quantity> facts,
    Optional<Remedy> remedy) {

  /** How a rule came out. */
  public enum State {
    OK("ok"),
    /** It can be built, with less room than the rule asks. */
    MARGINAL("marginal"),
    /** It cannot work as stated. */
    FAIL("fail");

    private final String word;

    State(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  public Verdict {
    Map<Fact, Quantity> ordered = new EnumMap<>(Fact.class);
    ordered.putAll(facts);
    facts = Collections.unmodifiableMap(ordered);
  }

  static Verdict of(Rule rule, State state) {
    return new Verdict(
        rule,
        Optional.empty(),
        state,
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        Optional.empty());
  }

  static Verdict ok(Rule rule) {
    return of(rule, State.OK);
  }

  Verdict at(Place where) {
    return new Verdict(rule, Optional.of(where), state, measured, needed, facts, remedy);
  }

  Verdict measuring(Quantity has) {
    return new Verdict(rule, place, state, Optional.of(has), needed, facts, remedy);
  }

  Verdict against(Quantity wanted) {
    return new Verdict(rule, place, state, measured, Optional.of(wanted), facts, remedy);
  }

  Verdict with(Fact fact, Quantity value) {
    Map<Fact, Quantity> more = new EnumMap<>(Fact.class);
    more.putAll(facts);
    more.put(fact, value);
    return new Verdict(rule, place, state, measured, needed, more, remedy);
  }

  Verdict fixedBy(Change... changes) {
    return fixedBy(List.of(changes));
  }

  Verdict fixedBy(List<Change> changes) {
    Optional<Remedy> fix = changes.isEmpty() ? Optional.empty() : Optional.of(new Remedy(changes));
    return new Verdict(rule, place, state, measured, needed, facts, fix);
  }

  /** The same with another remedy, or none. */
  public Verdict fixedBy(Optional<Remedy> fix) {
    return new Verdict(rule, place, state, measured, needed, facts, fix);
  }

  /** Whether this is about that rule, in that place. */
  public boolean is(Rule other, Place where) {
    return rule == other && place.equals(Optional.of(where));
  }

  /**
   * The length that was measured.
   *
   * @throws ClassCastException if it is no length
   */
  Length length() {
    return (Length) measured.orElseThrow();
  }

  /** The fact as a length. */
  Length length(Fact fact) {
    return (Length) facts.get(fact);
  }

  /** Turns as an angle, the quantity that stands for them. */
  static Angle turns(double turns) {
    return Angle.ofDegrees(turns * 360);
  }
}
