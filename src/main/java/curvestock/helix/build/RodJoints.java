package curvestock.helix.build;

import curvestock.helix.spec.Riser.ThreadedRods;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where a rod longer than the stock is joined: never in the base, in plywood or where a nut sits,
 * and never so near to a rod's end that a length cannot reach the middle of the coupling nut.
 */
final class RodJoints {

  private final ThreadedRods riser;

  /** Half a coupling nut and a thread. */
  private final Length reach;

  /** Parts of a rod, from its lower end, where its coupling nut's middle may not be. */
  private final List<Taken> taken = new ArrayList<>();

  /** From one place on the rod to another. */
  private record Taken(Length from, Length to) {
    boolean holds(Length place) {
      return place.compareTo(from) > 0 && place.compareTo(to) < 0;
    }
  }

  RodJoints(ThreadedRods riser) {
    this.riser = riser;
    this.reach = riser.thread().couplingNut().times(0.5).plus(riser.thread().pitch());
  }

  /** The least length of a part: it must reach the middle of the coupling nut. */
  Length least() {
    return reach;
  }

  /** What a coupling nut must keep off. */
  void take(Length from, Length to) {
    taken.add(new Taken(from.minus(reach), to.plus(reach)));
  }

  /**
   * Middles of the coupling nuts from the rod's lower end, each as high as the stock reaches. Where
   * no place is free on a stock's length, it is as high as the stock goes all the same.
   */
  List<Length> of(Length rod) {
    List<Length> joints = new ArrayList<>();
    Length below = Length.ZERO;
    while (rod.minus(below).compareTo(riser.stock().length()) > 0) {
      Length least = below.plus(reach);
      Length most = shorter(below.plus(riser.stock().length()), rod.minus(reach));
      below = highest(least, most).orElse(most);
      joints.add(below);
    }
    return List.copyOf(joints);
  }

  /** The highest free place; one is at the top, or else just under something. */
  private Optional<Length> highest(Length least, Length most) {
    List<Length> places = new ArrayList<>(List.of(most));
    taken.forEach(part -> places.add(part.from()));
    return places.stream()
        .filter(place -> place.compareTo(least) >= 0 && place.compareTo(most) <= 0)
        .filter(place -> taken.stream().noneMatch(part -> part.holds(place)))
        .max(Comparator.naturalOrder());
  }

  private static Length shorter(Length a, Length b) {
    return a.compareTo(b) < 0 ? a : b;
  }
}
