package curvestock.answer;

import curvestock.helix.HelixOrder;
import curvestock.helix.spec.Riser;
import curvestock.helix.verdict.Verdict.State;
import curvestock.helix.verdict.VerdictWords;

/** How a base that is cut with the roadbed is laid, and what does not stand on it. */
public final class BaseWords {

  private BaseWords() {}

  /** In full sentences; empty without a base. */
  public static String all(HelixOrder order) {
    return order.base().isEmpty() ? "" : laying(isOnRods(order)) + pads(order);
  }

  private static boolean isOnRods(HelixOrder order) {
    return order.plan().spec().supports().riser() instanceof Riser.ThreadedRods;
  }

  private static String laying(boolean rods) {
    return " Screw every piece of it (screws of your own choice) down to a %s that is flat, level and strong enough for the helix and a person who leans on it, with the pieces' ends glued and tight: they do not hold together by themselves.%s"
        .formatted(
            rods ? "frame" : "frame or table top",
            rods
                ? " The rods come out below the base, with a nut and a washer each, so keep the frame's wood clear of them."
                : "");
  }

  /** What the heights of supports beside the base need; empty if all stand on it. */
  public static String pads(HelixOrder order) {
    VerdictWords words = new VerdictWords(order.plan().style());
    return order
        .onBase()
        .filter(verdict -> verdict.state() != State.OK)
        .map(
            verdict ->
                " %s. Heights are from the top of the base, so first %s%s."
                    .formatted(
                        words.finding(verdict),
                        words.fix(verdict),
                        isOnRods(order) ? ", and drill it for the rods" : ""))
        .orElse("");
  }
}
