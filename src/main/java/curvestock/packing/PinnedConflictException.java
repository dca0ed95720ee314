package curvestock.packing;

import curvestock.units.LengthStyle;
import java.util.List;
import java.util.stream.Collectors;

/** Pinned pieces break a rule among themselves, so that no layout around them can be right. */
public final class PinnedConflictException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<Shortfall> shortfalls;

  PinnedConflictException(List<Shortfall> shortfalls) {
    super("the pinned pieces break the rules: " + words(shortfalls, LengthStyle.METRIC));
    this.shortfalls = List.copyOf(shortfalls);
  }

  private static String words(List<Shortfall> shortfalls, LengthStyle style) {
    return shortfalls.stream().map(s -> s.words(style)).collect(Collectors.joining("; "));
  }

  /** What is broken; numbers of pieces count in the list of pinned pieces. */
  public List<Shortfall> shortfalls() {
    return shortfalls;
  }

  /** The facts in the user's units, one sentence. */
  public String words(LengthStyle style) {
    return "The pinned pieces break the rules: " + words(shortfalls, style) + ".";
  }
}
