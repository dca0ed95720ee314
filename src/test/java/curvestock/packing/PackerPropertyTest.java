package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.bound.Bound;
import curvestock.bound.InflatedArea;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Random jobs: every layout passes the independent check, and no bound lies below one. */
class PackerPropertyTest {

  private static final int MOST = 6;

  @Test
  void most_ofRandomPiecesOnRandomSheets_passesTheCheckAndStaysWithinTheBound() {
    int pieces = 0;
    for (long seed = 1; seed <= 16; seed++) {
      RandomPacking random = new RandomPacking(seed);
      Piece piece = random.piece("A");
      SheetStock sheet = random.sheet();
      Cutting cutting = random.cutting();
      Bound bound = Bound.quick(piece, sheet, cutting);

      Layout layout =
          new Packer(sheet, cutting, new SearchSettings(seed, Effort.QUICK))
              .most(piece, MOST, Control.NONE)
              .layout();

      pieces += layout.placements().size();
      String what = "seed %d, %s with %s on %s".formatted(seed, piece, cutting, sheet);
      assertThat(Sheets.check(layout).findings()).as(what).isEmpty();
      assertThat(layout.placements().size()).as(what).isBetween(0, Math.min(MOST, bound.count()));
    }
    assertThat(pieces).isGreaterThan(25);
  }

  @Test
  void fill_withSeveralKinds_passesTheCheckAndNeverExceedsDemandOrArea() {
    int mixed = 0;
    for (long seed = 101; seed <= 108; seed++) {
      RandomPacking random = new RandomPacking(seed);
      List<Demand> wanted = new ArrayList<>();
      for (int k = 0; k < 3; k++) {
        wanted.add(new Demand(random.piece("P" + k), random.upTo(4)));
      }
      SheetStock sheet = random.sheet();
      Cutting cutting = random.cutting();

      Layout layout =
          new Packer(sheet, cutting, new SearchSettings(seed, Effort.QUICK))
              .fill(wanted, Control.NONE)
              .layout();

      String what = "seed %d, %s with %s on %s".formatted(seed, wanted, cutting, sheet);
      assertThat(Sheets.check(layout).findings()).as(what).isEmpty();
      for (Demand demand : wanted) {
        assertThat(layout.count(demand.piece())).as(what).isLessThanOrEqualTo(demand.count());
      }
      double inflated =
          layout.placements().stream()
              .mapToDouble(placement -> InflatedArea.ofPiece(placement.piece(), cutting))
              .sum();
      assertThat(inflated).as(what).isLessThanOrEqualTo(InflatedArea.ofSheet(sheet, cutting));
      mixed += layout.placements().stream().map(Placement::piece).distinct().count() > 1 ? 1 : 0;
    }
    assertThat(mixed).isGreaterThan(2);
  }
}
