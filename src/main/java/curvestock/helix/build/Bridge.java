package curvestock.helix.build;

import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;

/**
 * What carries the roadbed's edge from one support to the next where supports between are left out;
 * on every turn that passes there.
 *
 * @param stations where the supports are left out, at least one
 * @param outer whether at the outer edge
 * @param from distance along the line of the support before, on the lowest turn
 * @param to distance of the support behind
 * @param between the names of these two, for example {@code S11 and S13}
 * @param form how it is built
 * @param length of the wood at least, of a batten at most; a strip's with {@link #OVERLAP} at both
 *     ends
 * @param breadth across the track
 * @param depth upright
 * @param outwards of a batten's ends: from the centre line to its middle
 */
public record Bridge(
    List<Station> stations,
    boolean outer,
    double from,
    double to,
    String between,
    Form form,
    Length length,
    Length breadth,
    Length depth,
    double outwards) {

  /** How far a strip runs on past the middle of the support at each end: our own choice. */
  public static final Length OVERLAP = Length.ofInches(1);

  private static final double ROUNDING = 1e-6;

  /** How the edge is carried. */
  public enum Form {
    /** A straight batten, glued and screwed to the underside: it hangs over the turn below. */
    BATTEN("batten under the roadbed"),
    /** A thin strip bent round the edge, flush below: it stands up beside the track. */
    STRIP("edge strip");

    private final String words;

    Form(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  public Bridge {
    stations = List.copyOf(stations);
  }

  /** What to cut: the same on the shopping list, in tables and in data. */
  public record Cut(Length length, Length depth, Length breadth) {}

  /**
   * In sixteenths and eighths of an inch or whole millimetres: a strip not shorter, a batten, which
   * ends just short of its supports, not longer.
   */
  public Cut cut(LengthStyle style) {
    boolean inches = style.unit().isImperial();
    Length step = inches ? Length.ofInches(1.0 / 16) : Length.ofMillimetres(1);
    Length eighth = inches ? Length.ofInches(1.0 / 8) : Length.ofMillimetres(1);
    return form == Form.STRIP
        ? new Cut(length.up(step), depth.up(eighth), breadth.up(eighth))
        : new Cut(length.down(step), depth.up(step), breadth.up(step));
  }

  /** Whether one of its ends lies on what stands there along the line. */
  boolean endsAt(double at) {
    return Math.abs(at - from) < ROUNDING || Math.abs(at - to) < ROUNDING;
  }

  /** One for each turn that passes. */
  public int count() {
    return stations.get(0).places().size();
  }

  /** The stations' names, for example {@code S19, S20}. */
  public String over() {
    return String.join(", ", stations.stream().map(Station::name).toList());
  }

  /** How far it hangs below the plywood. */
  public Length hangsBelow() {
    return form == Form.BATTEN ? depth : Length.ZERO;
  }

  /** How much higher along the line each turn's lies than the lowest. */
  List<Double> shifts() {
    double lowest = stations.get(0).lowest();
    return stations.get(0).places().stream().map(place -> place - lowest).toList();
  }

  /** Whether the topmost one's upper end is at that distance along the line. */
  public boolean endsOnTopAt(double at) {
    List<Double> shifts = shifts();
    return Math.abs(to + shifts.get(shifts.size() - 1) - at) < 1;
  }

  /** Whether that of some turn covers a place between the two distances along the line. */
  public boolean covers(double low, double high) {
    return shifts().stream().anyMatch(shift -> from + shift < high && to + shift > low);
  }

  /** Whether that of some turn begins there. */
  boolean beginsAt(double start) {
    return shifts().stream().anyMatch(shift -> Math.abs(from + shift - start) < ROUNDING);
  }

  /** Both as one, if they lie in the same place. */
  boolean isOne(Bridge other) {
    return outer == other.outer
        && Math.abs(from - other.from) < ROUNDING
        && Math.abs(to - other.to) < ROUNDING;
  }

  /** Whether it is a strip that begins where that one ends, at the same edge. */
  public boolean follows(Bridge before) {
    return form == Form.STRIP && outer == before.outer && beginsAt(before.to);
  }

  /** The same over these stations too. */
  Bridge with(List<Station> more) {
    List<Station> all = new ArrayList<>(stations);
    all.addAll(more);
    return new Bridge(all, outer, from, to, between, form, length, breadth, depth, outwards);
  }
}
