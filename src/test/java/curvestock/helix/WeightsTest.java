package curvestock.helix;

import static curvestock.helix.SpecBuilder.inches;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.build.ShoppingItem;
import curvestock.helix.build.SupportRow;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Riser.WoodBlocks;
import curvestock.helix.spec.RoadbedStack;
import curvestock.helix.spec.SplicePlate;
import curvestock.helix.spec.SupportPlan;
import curvestock.helix.standard.HeightStandard;
import curvestock.piece.Demand;
import curvestock.units.Length;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** By hand: area times thickness times density, in kilograms. */
class WeightsTest {

  private static final double CUBIC_INCH = Math.pow(0.0254, 3);

  /** A plate of 4 in x 4 1/2 in from quarter-inch plywood, its four holes of 4 mm drilled. */
  @Test
  void plates_ofAnotherThickness_weighByTheirOwn() {
    HelixPlan plan = new SpecBuilder().construction(SpecBuilder.plate(4, 1, 0.25)).plan();
    Demand plate = plan.smallParts().get(0);
    double holes = 4 * Math.PI * Math.pow(2 / 25.4, 2);

    assertThat(plan.weightOf(plate.piece()))
        .isCloseTo((4 * 4.5 - holes) * 0.25 * CUBIC_INCH * 680, within(1e-6));
  }

  /** Plates that are not cut from the sheets are carried all the same: 23 joints in 6 turns. */
  @Test
  void boughtWood_countsPlates() {
    Construction bought =
        new Construction.ButtWithPlate(
            new SplicePlate(
                SplicePlate.Form.RECTANGLE,
                inches(4),
                inches(1),
                inches(0.25),
                2,
                SpecBuilder.mm(4),
                false));
    HelixPlan plan = new SpecBuilder().construction(bought).ends(far()).plan();

    assertThat(plan.boughtWoodWeight())
        .isCloseTo(23 * 4 * 4.5 * 0.25 * CUBIC_INCH * 680, within(1e-6));
  }

  /**
   * N, two tracks: edge strips of 6 mm on each of 8 turns, past 54 degrees of the outer edge at 469
   * mm and 36 degrees of the inner one at 364 mm, an inch over at both ends; as deep as a sixteenth
   * of the gap along the centre line, in steps of 5 mm: 25 and 20 mm.
   */
  @Test
  void boughtWood_countsEdgeStrips() {
    HelixPlan plan =
        new SpecBuilder()
            .scale("N")
            .ground(
                SpecBuilder.twoTracks(
                    SpecBuilder.mm(400),
                    SpecBuilder.mm(33),
                    SpecBuilder.mm(36),
                    Length.ZERO,
                    Direction.COUNTER_CLOCKWISE))
            .stack(
                new RoadbedStack(
                    SpecBuilder.mm(6.2),
                    SpecBuilder.mm(2.5),
                    SpecBuilder.mm(1.6),
                    SpecBuilder.mm(1.4)))
            .construction(new Construction.HalfLap(SpecBuilder.mm(40)))
            .ends(EndPlan.level(SpecBuilder.mm(330), SpecBuilder.mm(165)))
            .ascent(Ascent.ofTurnsAndRise(8.5, SpecBuilder.mm(50)))
            .tallest(SpecBuilder.mm(30), HeightStandard.NEM_102)
            .supports(SpecBuilder.rods(20, Optional.empty()))
            .plan();
    double outer = (Math.toRadians(54) * 469 + 2 * 25.4) * 25;
    double inner = (Math.toRadians(36) * 364 + 2 * 25.4) * 20;

    assertThat(plan.boughtWoodWeight()).isCloseTo(8 * (outer + inner) * 6 * 680e-9, within(2e-3));
  }

  /** A piece of 5 1/2 in x 1 1/2 in x 3/4 in lies on the blocks of each place that is held. */
  @Test
  void crossPieces_areBoughtAndWeighed() {
    SupportPlan usual = SpecBuilder.blocks(8);
    WoodBlocks old = (WoodBlocks) usual.riser();
    WoodBlocks crossed =
        new WoodBlocks(old.width(), old.along(), inches(0.75), old.kerf(), old.stock(), true);
    HelixPlan plan = new SpecBuilder().supports(usual.with(crossed)).ends(far()).plan();
    long held =
        plan.supports().rows().stream().filter(row -> row.edges() != SupportRow.Edges.NONE).count();

    assertThat(plan.shopping().items())
        .filteredOn(item -> item.name().startsWith("cross pieces 139.7 mm × 38.1 mm × "))
        .extracting(ShoppingItem::quantity)
        .containsExactly(held);
    // 577 kg/m3: softwood in the table of densities.
    assertThat(plan.boughtWoodWeight())
        .isCloseTo(held * 5.5 * 1.5 * 0.75 * CUBIC_INCH * 577, within(1e-3));
  }

  private static EndPlan far() {
    return EndPlan.level(inches(24), inches(12));
  }
}
