package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.layout.TrueGap;
import curvestock.layout.TrueGap.Neighbour;
import curvestock.layout.TrueGaps;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Going on from pinned pieces, and the true gaps of layouts that are not right. */
class ContinuationTest {

  private static final SheetStock SHEET = Sheets.inches(40, 30);
  private static final Piece QUARTER = Sheets.sector(10, 13, 90);
  private static final Piece PLATE = Sheets.strip("T", 5, 2);

  private static Packer packer(long seed) {
    return new Packer(SHEET, Sheets.USUAL, new SearchSettings(seed, Effort.QUICK));
  }

  private static Placement at(Piece piece, double x, double y, double degrees) {
    return new Placement(piece, new Pose(x * 25.4, y * 25.4, Math.toRadians(degrees)));
  }

  /** A quarter turn in the middle of the sheet and a plate in a corner, turned the wrong way. */
  private static List<Placement> pinned() {
    return List.of(at(QUARTER, 12, 15, 0), at(PLATE, 37, 27, -180));
  }

  private static Continued go(Arrangement from) {
    return packer(1).continueFrom(from, Control.NONE, better -> {});
  }

  @Test
  void continueFrom_piecesOverEachOther_bringsThemApartAndMovesNoPinnedOne() {
    List<Placement> free =
        List.of(
            at(QUARTER, 12, 15, 10),
            at(QUARTER, 5, 10, 40),
            at(QUARTER, 60, 10, 0),
            at(PLATE, 20, 15, 30));

    Continued continued = go(new Arrangement(pinned(), free, List.of()));

    assertThat(continued.leftOut()).isEmpty();
    assertThat(continued.pinned()).isEqualTo(2);
    Layout layout = continued.layout();
    assertThat(layout.placements()).hasSize(6).startsWith(pinned().toArray(Placement[]::new));
    assertThat(layout.placements().subList(2, 6))
        .extracting(Placement::piece)
        .containsExactly(QUARTER, QUARTER, QUARTER, PLATE);
    Sheets.requireRight(layout);
  }

  @Test
  void continueFrom_piecesThatAreRight_leavesThemAndAddsUpToTheNumberWanted() {
    List<Placement> free = List.of(at(PLATE, 5, 5, 0), at(PLATE, 30, 10, 45));

    Continued continued =
        go(new Arrangement(pinned(), free, List.of(new Demand(QUARTER, 2), new Demand(PLATE, 3))));

    assertThat(continued.added()).isEqualTo(5);
    Layout layout = continued.layout();
    assertThat(layout.count(QUARTER)).isEqualTo(3);
    assertThat(layout.count(PLATE)).isEqualTo(6);
    assertThat(layout.placements()).startsWith(pinned().toArray(Placement[]::new));
    Sheets.requireRight(layout);
  }

  @Test
  void continueFrom_moreThanFits_leavesOutWhatDoesNotAndTellsEachBetterLayout() {
    List<Placement> free = new ArrayList<>();
    for (int k = 0; k < 14; k++) {
      free.add(at(QUARTER, 20, 15, 25 * k));
    }
    List<Continued> told = new ArrayList<>();

    Continued continued =
        packer(3).continueFrom(new Arrangement(pinned(), free, List.of()), Control.NONE, told::add);

    assertThat(continued.leftOut()).isNotEmpty().allMatch(QUARTER::equals);
    assertThat(continued.layout().placements()).hasSize(16 - continued.leftOut().size());
    assertThat(continued.layout().placements().size()).isGreaterThan(6);
    assertThat(told.get(told.size() - 1)).isEqualTo(continued);
    for (int k = 0; k < told.size(); k++) {
      Sheets.requireRight(told.get(k).layout());
      assertThat(told.get(k).layout().placements()).startsWith(pinned().toArray(Placement[]::new));
      assertThat(k == 0 || size(told.get(k)) > size(told.get(k - 1))).isTrue();
    }
  }

  private static int size(Continued continued) {
    return continued.layout().placements().size();
  }

  @Test
  void continueFrom_withOneThreadOrMore_isTheSame() throws Exception {
    Arrangement from =
        new Arrangement(
            pinned(), List.of(at(QUARTER, 12, 15, 10)), List.of(new Demand(QUARTER, 5)));
    Continued common = go(from);
    for (int threads : new int[] {1, 3}) {
      ForkJoinPool pool = new ForkJoinPool(threads);
      try {
        assertThat(pool.submit(() -> go(from)).get()).isEqualTo(common);
      } finally {
        pool.shutdown();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 4})
  void continueFrom_stoppedAtAnyTime_isRightAndKeepsThePins(int after) {
    AtomicInteger asked = new AtomicInteger();
    List<Placement> free = List.of(at(QUARTER, 12, 15, 10), at(QUARTER, 5, 10, 40));

    Layout layout =
        packer(1)
            .continueFrom(
                new Arrangement(pinned(), free, List.of(new Demand(QUARTER, 9))),
                () -> asked.getAndIncrement() >= after,
                better -> {})
            .layout();

    assertThat(layout.placements()).startsWith(pinned().toArray(Placement[]::new));
    Sheets.requireRight(layout);
  }

  @Test
  void continueFrom_pinnedPiecesTooNear_isRefusedWithTheGap() {
    List<Placement> pinned = List.of(at(PLATE, 5, 5, 0), at(PLATE, 5, 7.0625, 0));

    assertThatThrownBy(() -> go(new Arrangement(pinned, List.of(), List.of())))
        .isInstanceOfSatisfying(
            PinnedConflictException.class,
            refused -> {
              assertThat(refused.broken()).hasSize(1);
              assertThat(refused.words(LengthStyle.INCH_FRACTIONS))
                  .contains("piece 1 and piece 2 are 1/16 in apart, and need 1/8 in");
            });
  }

  @Test
  void continueFrom_pinnedPieceOverTheEdge_isRefused() {
    List<Placement> pinned = List.of(at(PLATE, 2, 5, 0));

    assertThatThrownBy(() -> go(new Arrangement(pinned, List.of(), List.of())))
        .isInstanceOf(PinnedConflictException.class)
        .hasMessageContaining("piece 1 reaches over the edge of the sheet");
  }

  /** With no margin a boundary that crosses the edge has a distance of nothing from it. */
  @Test
  void continueFrom_marginOfNothingAndAPieceHalfOffTheSheet_bringsItIn() {
    Packer packer = new Packer(SHEET, Sheets.cutting(0, 0), new SearchSettings(1, Effort.QUICK));
    List<Placement> free = List.of(at(PLATE, 40, 15, 0), at(QUARTER, 20, 30, 0));

    Layout layout =
        packer
            .continueFrom(
                new Arrangement(List.of(at(PLATE, 20, 5, 0)), free, List.of()),
                Control.NONE,
                better -> {})
            .layout();

    assertThat(layout.placements()).hasSize(3);
    Sheets.requireRight(layout);
  }

  /** Two strips side by side 0.05 in apart; one of them 0.1 in from the edge: by hand. */
  @Test
  void gaps_ofKnownDistances_areThose() {
    Layout layout =
        new Layout(
            SHEET,
            Sheets.USUAL,
            List.of(at(PLATE, 2.6, 5, 0), at(PLATE, 2.6, 7.05, 0), at(PLATE, 20, 15, 90)));

    List<TrueGap> broken = TrueGaps.broken(layout);
    assertThat(broken)
        .extracting(TrueGap::to)
        .containsExactly(Neighbour.PIECE, Neighbour.EDGE, Neighbour.EDGE);
    assertThat(broken.get(0).gap()).isCloseTo(0.05 * 25.4, Offset.offset(1e-9));
    assertThat(broken.get(1).gap()).isCloseTo(0.1 * 25.4, Offset.offset(1e-9));
    assertThat(TrueGaps.tightest(layout).get(2).gap()).isCloseTo(12.5 * 25.4, Offset.offset(1e-9));
  }

  @Test
  void gaps_ofPiecesOverEachOther_areBelowNothing() {
    Layout layout =
        new Layout(SHEET, Sheets.USUAL, List.of(at(QUARTER, 12, 15, 0), at(QUARTER, 12.5, 15, 3)));

    List<TrueGap> broken = TrueGaps.broken(layout);

    assertThat(TrueGaps.hold(layout)).isFalse();
    assertThat(broken).hasSize(1);
    assertThat(broken.get(0).gap()).isNegative();
  }

  @Test
  void gaps_ofAPackedLayout_hold() {
    Layout layout = Sheets.pack(QUARTER, SHEET, Sheets.USUAL, Effort.QUICK, 8);

    assertThat(TrueGaps.hold(layout)).isTrue();
  }
}
