package curvestock.bound;

import curvestock.packing.Control;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleSupplier;

/**
 * What was proven last: a comparison, and a page on which only a price was changed, ask for the
 * same proofs again, and each takes some tenths of a second.
 */
final class KnownProofs {

  private static final int MOST = 256;

  /** The one used longest ago first. */
  private static final Map<Record, Double> KNOWN = new LinkedHashMap<>(MOST, 0.75f, true);

  private KnownProofs() {}

  /**
   * The answer to a question, worked out unless it is known. Two that ask at once both work it out.
   *
   * @param asked all that the answer follows from
   * @param control what was stopped is not kept
   */
  static double of(Record asked, Control control, DoubleSupplier work) {
    synchronized (KNOWN) {
      Double known = KNOWN.get(asked);
      if (known != null && !control.stopped()) {
        return known;
      }
    }
    double found = work.getAsDouble();
    if (!control.stopped()) {
      keep(asked, found);
    }
    return found;
  }

  private static void keep(Record asked, double found) {
    synchronized (KNOWN) {
      KNOWN.put(asked, found);
      if (KNOWN.size() > MOST) {
        KNOWN.remove(KNOWN.keySet().iterator().next());
      }
    }
  }
}
