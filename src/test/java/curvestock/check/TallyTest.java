package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.piece.Demand;
import curvestock.piece.Grain;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pieces on all drawings of a kind against those wanted; the counts are by hand. */
class TallyTest {

  private static final Strip PLANK = new Strip(Length.ofMillimetres(300), Length.ofMillimetres(50));

  /** Of one shape; along the grain and any way. */
  private static final Piece ALONG =
      new Piece("T", "strict", PLANK, new Grain(Angle.ofDegrees(0), Angle.ofDegrees(10)));

  private static final Piece ANY = Piece.of("S", "loose", PLANK);

  private static Tally tally(DrawingKind kind, int along, int any) {
    return Tally.of(
        kind, 1, List.of(new Demand(ANY, 2), new Demand(ALONG, 3)), Map.of("T", along, "S", any));
  }

  /** What lies along the grain may be either piece, what lies across only the loose one. */
  @ParameterizedTest
  @CsvSource({
    "3, 2, {}, {}",
    "5, 0, {}, {}",
    "2, 3, {T=1}, {S=1}",
    "4, 0, {S=1}, {}",
    "0, 0, '{S=2, T=3}', {}",
    "6, 0, {}, {S=1}"
  })
  void dxf_ofPiecesOfOneShape_isCountedByGrain(int along, int any, String missing, String surplus) {
    Tally tally = tally(DrawingKind.DXF, along, any);

    assertThat(tally.missing()).hasToString(missing);
    assertThat(tally.surplus()).hasToString(surplus);
  }

  @Test
  void svg_namesItsPieces_soEachIsCountedByItself() {
    Tally tally = tally(DrawingKind.MACHINE_SVG, 5, 0);

    assertThat(tally.missing()).hasToString("{S=2}");
    assertThat(tally.surplus()).hasToString("{T=2}");
    assertThat(tally.words(false))
        .containsExactly(
            "cut files (SVG), 1 file: more than wanted: 2 x T. Is a sheet or a piece in it twice?",
            "cut files (SVG), 1 file: missing: 2 x S. Give the drawings of all sheets, or --partial"
                + " if only these are meant.");
    assertThat(tally.words(true).get(1))
        .isEqualTo("cut files (SVG), 1 file: not among those given: 2 x S.");
  }
}
