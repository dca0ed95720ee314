package curvestock.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.spec.EndPlan;
import curvestock.units.LengthStyle;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LabelReachTest {

  /** A box behind a label hid the supports of the lead that it stood on. */
  @Test
  void labels_ofJointsBesideALead_hideNothingOfIt() {
    HelixPlan plan =
        new SpecBuilder()
            .segment(36)
            .ends(
                EndPlan.level(SpecBuilder.inches(24), SpecBuilder.inches(20))
                    .withClimbLead(SpecBuilder.inches(10)))
            .plan();
    HelixTitle title = new HelixTitle("invented", LengthStyle.METRIC, true);
    Paper drawing =
        HelixPlanDrawing.large(new HelixOrder(plan, List.of(), Optional.empty()), title, 60);

    assertThat(plan.stations().entry()).isNotEmpty();
    assertThat(drawing.things())
        .filteredOn(Paper.Shape.class::isInstance)
        .map(Paper.Shape.class::cast)
        .noneMatch(shape -> shape.fill().equals(Ink.PIECE) && shape.pen().width() == 0.1);
  }
}
