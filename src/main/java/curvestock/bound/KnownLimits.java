package curvestock.bound;

import curvestock.piece.AnnularSector;
import curvestock.sheet.Cutting;
import curvestock.units.Length;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleSupplier;

/**
 * The limits by edge waste worked out last: a comparison asks for the same one with every plan it
 * makes, and each takes some tenths of a second.
 */
final class KnownLimits {

  private static final int MOST = 256;

  /** The one used longest ago first. */
  private static final Map<Asked, Double> KNOWN = new LinkedHashMap<>(MOST, 0.75f, true);

  /** All that a limit follows from. */
  record Asked(
      AnnularSector sector,
      Length length,
      Length width,
      Cutting cutting,
      EdgeWeightBound.Grain grain,
      int below) {}

  private KnownLimits() {}

  /** Two that ask at once both work it out. */
  static double of(Asked asked, DoubleSupplier work) {
    synchronized (KNOWN) {
      Double known = KNOWN.get(asked);
      if (known != null) {
        return known;
      }
    }
    double found = work.getAsDouble();
    synchronized (KNOWN) {
      KNOWN.put(asked, found);
      if (KNOWN.size() > MOST) {
        KNOWN.remove(KNOWN.keySet().iterator().next());
      }
    }
    return found;
  }
}
