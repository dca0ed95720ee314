package curvestock.answer;

import curvestock.helix.build.BedPiece;
import curvestock.helix.build.BedPiece.StationPlace;
import curvestock.helix.build.SupportRow;
import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.build.SupportRow.Part;
import curvestock.helix.build.SupportTable;
import java.util.Optional;

/** Which supports a piece rests on, as every paper names them. */
public final class SupportsUnder {

  private final SupportTable supports;

  public SupportsUnder(SupportTable supports) {
    this.supports = supports;
  }

  /**
   * By their names, in order of climb: {@code S10 S11 S12, then S1 of turn 5} for a piece that
   * begins on turn 4.
   *
   * @param turn that the piece begins on
   */
  public String names(BedPiece piece, int turn) {
    return words(piece, turn, false);
  }

  /** The same, with which edge is held where the support of the other is left out. */
  public String namesWithEdges(BedPiece piece, int turn) {
    return words(piece, turn, true);
  }

  private String words(BedPiece piece, int turn, boolean edges) {
    StringBuilder words = new StringBuilder();
    int here = turn;
    boolean named = false;
    for (StationPlace place : piece.stations()) {
      Optional<SupportRow> row = supports.at(place);
      int on = row.filter(each -> each.part() == Part.RING).map(SupportRow::turn).orElse(here);
      boolean next = on != here;
      if (!words.isEmpty()) {
        words.append(next ? ", then " : named ? ", " : " ");
      }
      words.append(place.station().name());
      words.append(edges ? row.map(each -> edge(each.edges())).orElse("") : "");
      words.append(next ? " of turn " + on : "");
      named = next;
      here = on;
    }
    return words.toString();
  }

  private static String edge(Edges edges) {
    return edges == Edges.BOTH ? "" : " (" + edges.words() + ")";
  }
}
