package curvestock.bound;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.packing.Control;
import curvestock.packing.Effort;
import curvestock.packing.Packer;
import curvestock.packing.SearchSettings;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Proofs by weights on points: never below a layout that exists, and right where one can count. */
class FractionalCoverBoundTest {

  private static final Cutting USUAL = Cutting.leaving(mm(3), Length.ZERO, mm(5));

  private static Length mm(double value) {
    return Length.ofMillimetres(value);
  }

  private static SheetStock rectangle(double length, double width) {
    return SheetStock.rectangle("sheet", mm(length), mm(width), mm(12), new Money(1));
  }

  @Test
  void of_randomSmallCases_isNeverBelowALayoutFound() {
    int sharper = 0;
    for (long seed = 1; seed <= 14; seed++) {
      Random random = new Random(seed);
      Piece piece =
          random.nextInt(4) == 0
              ? Piece.of("T", "strip", new Strip(mm(300), mm(80 + random.nextInt(80))))
              : Piece.of(
                  "S",
                  "segment",
                  new AnnularSector(
                      mm(150 + random.nextInt(150)),
                      mm(60 + random.nextInt(80)),
                      Angle.ofDegrees(60 + random.nextInt(120))));
      SheetStock sheet = rectangle(400 + random.nextInt(400), 350 + random.nextInt(250));
      int found =
          new Packer(sheet, USUAL, new SearchSettings(seed, Effort.QUICK))
              .most(piece, 30, Control.NONE)
              .layout()
              .placements()
              .size();

      int bound = FractionalCoverBound.of(piece, sheet, USUAL, 6_000, 60).orElseThrow().count();

      assertThat(bound).as("seed %d, %s", seed, piece.shape()).isGreaterThanOrEqualTo(found);
      sharper += bound < Bound.quick(piece, sheet, USUAL).count() ? 1 : 0;
    }
    assertThat(sharper).as("cases sharper than fit and area").isPositive();
  }

  /** One square of 100 on 150 by 150 leaves no room for a second, by hand; its area for two. */
  @ParameterizedTest
  @CsvSource({"150, 150, 1", "299, 150, 2", "220, 110, 2"})
  void of_squares_isNotBelowTheCountByHand(double length, double width, int count) {
    Cutting none = Cutting.leaving(Length.ZERO, Length.ZERO, Length.ZERO);
    Piece square = Piece.of("Q", "square", new Strip(mm(100), mm(100)));

    Bound bound =
        FractionalCoverBound.of(square, rectangle(length, width), none, 20_000, 100).orElseThrow();

    assertThat(bound.count()).isGreaterThanOrEqualTo(count);
    assertThat(bound.count()).isLessThanOrEqualTo(count + 1);
  }
}
