package curvestock.answer;

import curvestock.handwork.CuttingOrder.LostPivot;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How a trammel's pivot is held, by what lies under it: the one rule of every paper. */
public final class PivotWords {

  /** How a pivot is set without a hole. */
  public static final String PAD =
      "stick a thin pad of scrap plywood over the mark with double-sided tape and pivot on the pad.";

  /** On wood that somebody wants. */
  public static final String ON_GOOD_WOOD =
      "Never drive a pin into a piece or an offcut you keep: where a pivot is on one, "
          + PAD
          + " Raise the other end of the stick as much, or the radius comes out short.";

  /** Beside the sheet. */
  public static final String OFF_THE_SHEET =
      "Where a pivot is outside the sheet, clamp a scrap of the same thickness there, level with the"
          + " sheet.";

  /** Beside the trammel's holes, for roadbed with ears. */
  public static final String STOP_AT_EARS =
      "The ears for the rods stand out from both edges, so swing no edge in one go: start after an ear"
          + " and stop before the next. The circle runs straight through the ears and would cut them off."
          + " marking-out.pdf says from which corner to which each arc runs. Saw the sides of the ears"
          + " with the jigsaw.";

  private PivotWords() {}

  /** Pieces whose arcs end where the piece goes on. */
  static String stops(List<String> pieces) {
    return "On %s %s, stop the trammel where each arc ends: past that point the edge is no longer part of the arc. The marking-out sheets show where each arc starts and stops."
        .formatted(pieces.size() == 1 ? "piece" : "pieces", Figures.list(pieces));
  }

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
                (entry.getValue().size() == 1 ? "Piece " : "Pieces ")
                    + Figures.list(entry.getValue().stream().distinct().toList())
                    + (entry.getValue().size() == 1
                        ? ": by the time you get to it, "
                        : ": by the time you get to them, ")
                    + entry.getKey())
        .toList();
  }

  /** In a table that says where pivots lie while arcs are drawn. */
  public static String toRout(LostPivot.Why why) {
    return switch (why) {
      case CUT_AWAY -> "cut out before you rout: see the order of cutting";
      case OTHER_BOARD -> "on another part when you rout: see the order of cutting";
      case LOOSE -> "too loose when you rout: see the order of cutting";
      case WEAK_EDGE -> "edge too weak when you rout: see the order of cutting";
    };
  }

  private static String gone(LostPivot.Why why) {
    return switch (why) {
      case CUT_AWAY -> "the wood under the pivot is cut out.";
      case OTHER_BOARD -> "the wood under the pivot is sawn off with another part of the sheet.";
      case LOOSE -> "little or nothing holds the wood under the pivot.";
      case WEAK_EDGE -> "too little sheet is left around the pivot to clamp a pivot scrap to.";
    };
  }

  private static String again(String radius) {
    return (" Saw to the line with the jigsaw instead. Or saw off any of the sheet that is left there, fix a scrap of the same thickness in"
            + " its place to the boards that the sheet lies on, and find the pivot again on the scrap. Set the trammel to %s. Put tape on one end of the piece's arc of %s radius, so"
            + " that the pin leaves no mark, set the pin there and pencil a short line on the scrap. Do the same at that"
            + " arc's other end. The pivot is where the two lines cross.")
        .formatted(radius, radius);
  }
}
