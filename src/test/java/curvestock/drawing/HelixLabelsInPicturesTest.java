package curvestock.drawing;

import static curvestock.helix.SpecBuilder.inches;
import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;

import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.standard.HeightStandard;
import curvestock.units.LengthStyle;
import org.junit.jupiter.api.Test;

/** Names in the pictures of a helix of many turns do not stand on each other. */
class HelixLabelsInPicturesTest {

  private static final HelixTitle TITLE = new HelixTitle("Invented", LengthStyle.METRIC, true);

  private static HelixPlan manyTurns() {
    return new SpecBuilder()
        .scale("N")
        .circle(16, 4)
        .construction(new Construction.TwoLayers())
        .ascent(Ascent.ofTurnsAndRise(8.5, mm(65)))
        .tallest(inches(1.2), HeightStandard.NEM_102)
        .plan();
  }

  /** Nine joints over each other made a label of nine names and the figure small. */
  @Test
  void jointsOfManyTurns_shareAShortLabel() {
    String svg = HelixPlanDrawing.svg(manyTurns(), TITLE);

    assertThat(svg).contains("J1-1 J1-5 ... J1-33").doesNotContain("J1-1 J1-5 J1-9");
  }

  /** Above a turn only the upper layer is seen from the side; both layers' numbers overlapped. */
  @Test
  void sideView_numbersOneLayer() {
    String svg = HelixSideDrawing.svg(manyTurns(), TITLE);

    assertThat(svg).contains(">L1-2<").doesNotContain(">L2-2<");
  }
}
