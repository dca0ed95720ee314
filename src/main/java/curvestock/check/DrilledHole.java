package curvestock.check;

import java.util.Locale;
import java.util.OptionalDouble;

/** A hole to be drilled must be a circle of the diameter that the drawing states. */
final class DrilledHole {

  /** Names of layers have two decimals in millimetres, three in inches. */
  private static final double ROUNDED = 0.02;

  private DrilledHole() {}

  static void check(Chain chain, OptionalDouble stated, Findings findings) {
    double diameter = 2 * Math.sqrt(Math.abs(new TraceLoop(chain.edges()).area()) / Math.PI);
    boolean round =
        chain.closed()
            && chain.edges().stream()
                .allMatch(
                    edge ->
                        edge instanceof Trace.Round arc
                            && Math.abs(2 * arc.radius() - diameter)
                                <= LayoutCheck.SHAPE_TOLERANCE);
    if (!round) {
      findings.add(Finding.Kind.SHAPE, "a hole to be drilled is no circle" + near(chain));
    } else if (stated.isPresent() && Math.abs(stated.getAsDouble() - diameter) > ROUNDED) {
      findings.add(
          Finding.Kind.SHAPE,
          String.format(
              Locale.ROOT,
              "a hole is drawn %.3f mm wide, but said to be %.3f mm%s",
              diameter,
              stated.getAsDouble(),
              near(chain)));
    }
  }

  private static String near(Chain chain) {
    return " near " + Shown.place(chain.start());
  }
}
