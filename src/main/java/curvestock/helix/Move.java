package curvestock.helix;

import curvestock.helix.spec.HelixSpec;
import java.util.ArrayList;
import java.util.List;

/** A specification with some assumed values moved, and the list of them as they are then. */
record Move(HelixSpec spec, List<Assumption> assumed) {
  Move {
    assumed = List.copyOf(assumed);
  }

  boolean assumes(String field) {
    return assumed.stream().anyMatch(each -> each.field().equals(field));
  }

  Move with(HelixSpec other) {
    return new Move(other, assumed);
  }

  /** The same with that assumption told otherwise, or told for the first time. */
  Move telling(Assumption told) {
    List<Assumption> now = new ArrayList<>(assumed);
    now.replaceAll(each -> each.field().equals(told.field()) ? told : each);
    if (!assumes(told.field())) {
      now.add(told);
    }
    return new Move(spec, now);
  }

  /** The same with another value for what is assumed, for the reason that it had. */
  Move telling(String field, String value) {
    return new Move(
        spec,
        assumed.stream()
            .map(
                each ->
                    each.field().equals(field) ? new Assumption(field, value, each.reason()) : each)
            .toList());
  }
}
