package curvestock.packing;

import curvestock.layout.TrueGap;
import curvestock.units.LengthStyle;
import java.util.List;
import java.util.stream.Collectors;

/** Pinned pieces break a rule among themselves, so that no layout around them can be right. */
public final class PinnedConflictException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<TrueGap> broken;

  PinnedConflictException(List<TrueGap> broken) {
    super("the pinned pieces break the rules: " + words(broken, LengthStyle.METRIC));
    this.broken = List.copyOf(broken);
  }

  private static String words(List<TrueGap> broken, LengthStyle style) {
    return broken.stream().map(gap -> gap.words(style)).collect(Collectors.joining("; "));
  }

  /** What is broken; numbers of pieces count in the list of pinned pieces. */
  public List<TrueGap> broken() {
    return broken;
  }

  /** The facts in the user's units, one sentence. */
  public String words(LengthStyle style) {
    return "The pinned pieces break the rules: " + words(broken, style) + ".";
  }
}
