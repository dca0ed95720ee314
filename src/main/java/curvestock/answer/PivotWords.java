package curvestock.answer;

import curvestock.handwork.CuttingOrder.LostPivot;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** How a trammel's pivot is held, by what lies under it: the one rule of every paper. */
public final class PivotWords {

  /** How a pivot is set without a hole. */
  public static final String PAD =
      "stick a thin pad of scrap plywood over the mark with double-sided tape and pivot on the pad.";

  /** On wood that somebody wants. */
  public static final String ON_GOOD_WOOD =
      "Never drive a pin into a piece or an offcut you keep: where a pivot is on one, " + PAD;

  /** Beside the sheet. */
  public static final String OFF_THE_SHEET =
      "Where a pivot is outside the sheet, clamp a scrap of the same thickness there, level with the"
          + " sheet.";

  private PivotWords() {}

  /**
   * What to do where the wood under a pivot is gone when its piece is cut; a line for each case.
   */
  static List<String> lost(List<LostPivot> lost, List<String> labels, Figures figures) {
    Map<String, List<String>> alike = new LinkedHashMap<>();
    for (LostPivot pivot : lost) {
      String radius = figures.marked(Length.ofMillimetres(pivot.arc().radius()));
      alike
          .computeIfAbsent(gone(pivot.why()) + again(radius), words -> new ArrayList<>())
          .add(labels.get(pivot.piece()));
    }
    return alike.entrySet().stream()
        .map(
            entry ->
                "By the time you rout "
                    + (entry.getValue().size() == 1 ? "piece " : "pieces ")
                    + entry.getValue().stream().distinct().collect(Collectors.joining(", "))
                    + " with a trammel, the wood under the pivot"
                    + entry.getKey())
        .toList();
  }

  /** In a table that says where pivots lie while arcs are drawn. */
  public static String toRout(LostPivot.Why why) {
    return switch (why) {
      case CUT_AWAY -> "when you rout, that piece is gone: clamp scrap there";
      case OTHER_BOARD -> "when you rout, that piece is on another part: clamp scrap there";
      case LOOSE -> "when you rout, that piece is loose: clamp scrap there";
    };
  }

  private static String gone(LostPivot.Why why) {
    return switch (why) {
      case CUT_AWAY -> " is cut out.";
      case OTHER_BOARD -> " is on another part of the sheet.";
      case LOOSE -> " is no longer held.";
    };
  }

  private static String again(String radius) {
    return " Clamp a scrap of the same thickness in its place and find the pivot again: set the"
        + " trammel to "
        + radius
        + " and swing a mark from each end of the outer arc with that radius. The pivot is where the two"
        + " marks cross. Or saw to the line with the jigsaw.";
  }
}
