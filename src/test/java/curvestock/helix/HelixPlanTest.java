package curvestock.helix;

import static curvestock.helix.SpecBuilder.inches;
import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.build.RodPlan;
import curvestock.helix.build.ShoppingItem;
import curvestock.helix.build.Weight;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.HardwarePrices;
import curvestock.helix.spec.Riser;
import curvestock.piece.Demand;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HelixPlanTest {

  /** Worked example, recomputed: two turns at R 30 in are 376.99 in of track. */
  @Test
  void trackLengths_twoTracks_areEachTracksOwn() {
    HelixPlan plan =
        new SpecBuilder()
            .ground(
                SpecBuilder.twoTracks(
                    inches(30), inches(2.5), inches(2.5), Length.ZERO, Direction.COUNTER_CLOCKWISE))
            .ascent(Ascent.ofTurnsAndRise(2, inches(4)))
            .plan();

    assertThat(plan.trackLengths().get(0).inches()).isCloseTo(376.99, within(0.005));
    assertThat(plan.trackLengths().get(1).inches()).isCloseTo(376.99 * 32.5 / 30, within(0.005));
  }

  /** Without leads and laps the plan asks for what the plain ring of segments asks for. */
  @Test
  void demands_plainRing_agreeWithTheSegmentPlan() {
    HelixPlan plan =
        new SpecBuilder()
            .segment(50)
            .construction(
                new Construction.PlatesBeside(inches(4), inches(0.5), inches(0.25), false))
            .ends(EndPlan.level(inches(24), Length.ZERO))
            .plan();
    List<Demand> plain = new SegmentPlan(6, inches(28), inches(5.5), Angle.ofDegrees(50)).demands();

    assertThat(plan.demands()).hasSameSizeAs(plain);
    for (int i = 0; i < plain.size(); i++) {
      assertThat(plan.demands().get(i).count()).isEqualTo(plain.get(i).count());
      assertThat(plan.demands().get(i).piece().shape().area())
          .isCloseTo(plain.get(i).piece().shape().area(), within(1e-4));
    }
  }

  @Test
  void shopping_prices_areQuantityTimesPrice() {
    HardwarePrices prices =
        new HardwarePrices(
            Optional.of(new Money(5)),
            Optional.of(new Money(3)),
            Optional.of(new Money(40)),
            Optional.empty(),
            Optional.empty(),
            Optional.of(new Money(1200)));
    HelixPlan plan =
        new SpecBuilder()
            .segment(60)
            .supports(SpecBuilder.rods(12, Optional.empty()))
            .prices(prices)
            .plan();
    ShoppingItem nuts = item(plan, "nuts M8");
    ShoppingItem glue = item(plan, "glue");

    assertThat(nuts.price()).contains(new Money(5 * nuts.quantity()));
    assertThat(glue.price()).contains(new Money(Math.round(12.0 * glue.quantity() / 10)));
    assertThat(plan.shopping().knownPrices().minorUnits())
        .isEqualTo(8 * nuts.quantity() + glue.price().orElseThrow().minorUnits());
  }

  private static ShoppingItem item(HelixPlan plan, String name) {
    return plan.shopping().items().stream()
        .filter(item -> item.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** By hand: 680 kg/m³ × 0.483 in × area, holes deducted. */
  @Test
  void weightOf_aPiece_isAreaTimesThicknessTimesDensity() {
    HelixPlan plan = new SpecBuilder().plan();
    Demand segment = plan.demands().get(1);
    double area = segment.piece().shape().area();

    assertThat(plan.weightOf(segment.piece()))
        .isCloseTo(area * 1e-6 * 0.483 * 0.0254 * 680, within(1e-9));
    assertThat(plan.woodWeight()).isGreaterThan(22 * plan.weightOf(segment.piece()));
  }

  /** By hand: a full steel cylinder of 8 mm and 1 m is 0.3946 kg at 7850 kg/m³. */
  @Test
  void weightOfRods_areTheirLengthTimesAFullCylinder() {
    HelixPlan plan = new SpecBuilder().supports(SpecBuilder.rods(8, Optional.empty())).plan();
    RodPlan rods =
        new RodPlan(
            plan.spec(), (Riser.ThreadedRods) plan.spec().supports().riser(), plan.supports());
    double metres =
        rods.cuts().stream().mapToDouble(cut -> cut.length().millimetres()).sum() / 1000;

    assertThat(Weight.ofRod(mm(8), mm(1000))).isCloseTo(0.3946, within(5e-5));
    assertThat(rods.weight()).isCloseTo(metres * 0.39458, within(1e-3));
  }

  @Test
  void numbersOf_aKind_areAsManyAsItsCount() {
    HelixPlan plan = new SpecBuilder().plan();

    assertThat(plan.roadbed().kinds())
        .allSatisfy(kind -> assertThat(plan.roadbed().numbersOf(kind)).hasSize(kind.count()));
  }
}
