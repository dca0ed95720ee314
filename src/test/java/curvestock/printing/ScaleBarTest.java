package curvestock.printing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Pen;
import curvestock.drawing.Paper.Words;
import curvestock.drawing.TextWidth;
import curvestock.geometry.Point;
import org.junit.jupiter.api.Test;

class ScaleBarTest {

  /** Two bars stand 6 mm apart: the words of one over the other told a ruler the wrong length. */
  @Test
  void words_ofAnUprightBar_standNearerToItThanToItsNeighbour() {
    Paper page = new Paper();
    ScaleBar.up(page, new Point(50, 100), 100, "100 mm", Pen.of("#000000", 0.2));

    assertThat(page.things())
        .filteredOn(Words.class::isInstance)
        .map(Words.class::cast)
        .isNotEmpty()
        .allSatisfy(
            words -> {
              assertThat(words.anchor()).isEqualTo(Paper.Anchor.MIDDLE);
              assertThat(words.at().x()).isEqualTo(50);
              assertThat(TextWidth.ems(words.text()) * words.size() / 2).isLessThan(3);
            });
  }
}
