package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.helix.HelixOrder;
import curvestock.helix.build.BoardCutting;
import curvestock.helix.spec.Riser;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The boards of every demo job, added up as a carpenter would with the lengths that are printed:
 * exact fractions of a micrometre, no rounding in the sums.
 */
class BoardsOfDemoJobsTest {

  static List<Path> jobs() {
    return DemoPlans.files();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void boards_asPrinted_haveASquareEndAndAKerfForEveryPiece(Path file) {
    Optional<HelixOrder> order = DemoPlans.job(file).structure();
    Optional<BoardCutting> cutting = order.flatMap(of -> of.plan().shopping().riserCutting());
    if (cutting.isEmpty()) {
      return;
    }
    LengthStyle style = order.get().plan().style();
    Riser riser = order.get().plan().spec().supports().riser();
    // Stated again, not asked of the class under test.
    Length squared =
        riser instanceof Riser.WoodBlocks wood
            ? wood.inches() ? Length.ofInches(0.5) : Length.ofMillimetres(12)
            : Length.ZERO;
    Length kerf =
        riser instanceof Riser.WoodBlocks wood ? wood.kerf() : ((Riser.ThreadedRods) riser).kerf();
    for (BoardCutting.Board board : cutting.get().boards()) {
      BigDecimal used = exact(squared);
      for (BoardCutting.Cut cut : board.cuts()) {
        used = used.add(exact(style.roundSawn(cut.length()))).add(exact(kerf));
      }
      BigDecimal stock = exact(cutting.get().stock().length());
      if (board.whole()) {
        assertThat(board.cuts()).hasSize(1);
      } else {
        assertThat(used).as("%s: %s", file, board.cuts()).isLessThanOrEqualTo(stock);
        assertThat(exact(board.left())).isLessThanOrEqualTo(stock.subtract(used));
      }
    }
  }

  /** A sixty-fourth of an inch is 0.396875 mm, so all are whole numbers of 10⁻⁶ mm. */
  private static BigDecimal exact(Length length) {
    return new BigDecimal(length.millimetres(), MathContext.DECIMAL64)
        .setScale(6, RoundingMode.HALF_UP);
  }
}
