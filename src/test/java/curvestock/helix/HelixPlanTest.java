package curvestock.helix;

import static curvestock.helix.SpecBuilder.inches;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.build.Braces;
import curvestock.helix.build.RodPlan;
import curvestock.helix.build.ShoppingItem;
import curvestock.helix.build.SupportRow;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.HardwarePrices;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.SupportPlan;
import curvestock.helix.standard.RodThread;
import curvestock.helix.standard.Washer;
import curvestock.helix.standard.WoodDensity;
import curvestock.helix.standard.WoodDensity.Wood;
import curvestock.piece.Demand;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    // Two laps of 2 in on 5.5 in of width, half of their wood cut away.
    area -= 2 * 2 * 5.5 * 25.4 * 25.4 / 2;
    assertThat(plan.weightOf(segment.piece()))
        .isCloseTo(area * 1e-6 * 0.483 * 0.0254 * 680, within(1e-9));
    assertThat(plan.woodWeight()).isGreaterThan(22 * plan.weightOf(segment.piece()));
  }

  /**
   * DIN 976-1, table of masses as quoted elsewhere: 1000 rods M10 of 100 mm weigh 50.2 kg, of 200
   * mm twice that. M8 by hand: pitch diameter 8 - 0.6495 x 1.25 = 7.188 mm (ISO 724), 0.3186 kg/m.
   */
  @Test
  void rods_weighWhatThePublishedTableSays() {
    assertThat(RodThread.named("M10").kilogramsPerMetre()).isCloseTo(0.502, within(5e-4));
    assertThat(RodThread.named("M8").kilogramsPerMetre()).isCloseTo(0.3186, within(5e-5));
  }

  /** Basic pitch diameters of ASME B1.1's coarse series, in inches, as quoted elsewhere. */
  @ParameterizedTest
  @CsvSource({"1/4-20,0.2175", "5/16-18,0.2764", "3/8-16,0.3344"})
  void pitchDiameters_areThoseOfTheStandard(String name, double inches) {
    assertThat(RodThread.named(name).pitchDiameter().inches()).isCloseTo(inches, within(6e-5));
  }

  /**
   * Grams a piece. Metric: the table of DIN 125 (the sizes of ISO 7089), as quoted elsewhere. Inch:
   * 11100, 9750 and 7000 in 50 lb by a maker's table for ASME B18.21.1, as quoted elsewhere.
   */
  @ParameterizedTest
  @CsvSource({
    "M6,ISO 7089,12,1.02",
    "M8,ISO 7089,16,1.83",
    "M10,ISO 7089,20,3.57",
    "1/4-20,SAE,15.875,2.043",
    "5/16-18,SAE,17.475,2.326",
    "3/8-16,SAE,20.625,3.240"
  })
  void usualWasher_isTheStandardsAndWeighsWhatTheTableSays(
      String thread, String standard, double outer, double grams) {
    Washer washer = RodThread.named(thread).usualWasher();

    assertThat(washer.standard()).isEqualTo(standard);
    assertThat(washer.outer().millimetres()).isCloseTo(outer, within(0.01));
    assertThat(washer.kilograms() * 1000).isCloseTo(grams, within(0.02 * grams));
  }

  /**
   * Grams of DIN 934, M6 and M8 (from memory); ISO 4032's nuts are 5.2 and 6.8 for 5 and 6.5 mm.
   */
  @ParameterizedTest
  @CsvSource({"M6,2.5,1.04", "M8,5.2,1.046"})
  void nut_weighsWhatTheTableSays(String thread, double grams, double higher) {
    assertThat(RodThread.named(thread).nutKilograms() * 1000)
        .isCloseTo(grams * higher, within(0.04 * grams));
  }

  /** Which washer to ask for in the shop; one of the builder's own has no standard's name. */
  @ParameterizedTest
  @CsvSource({
    "16,'washers M8 ISO 7089, 16 mm outside'",
    "24,'washers M8 ISO 7093-1, 24 mm outside'",
    "20,'washers M8, 20 mm outside'"
  })
  void shoppingList_saysWhichWasher(double outer, String name) {
    Riser.ThreadedRods usual = (Riser.ThreadedRods) SpecBuilder.rods(8, Optional.empty()).riser();
    Riser.ThreadedRods rods =
        new Riser.ThreadedRods(
            usual.thread(),
            usual.inset(),
            usual.fit(),
            Length.ofMillimetres(outer),
            usual.endAllowance(),
            usual.ear(),
            usual.kerf(),
            usual.stock());
    HelixPlan plan =
        new SpecBuilder().supports(SpecBuilder.rods(8, Optional.empty()).with(rods)).plan();

    assertThat(plan.shopping().items()).anyMatch(item -> item.name().equals(name));
  }

  /** M8: nut 5.43 g as above; washer pi/4 (256 - 70.56) x 1.6 = 233 mm3, 1.83 g as DIN 125 says. */
  @Test
  void weightOfRods_countsNutsAndWashers() {
    HelixPlan plan = new SpecBuilder().supports(SpecBuilder.rods(8, Optional.empty())).plan();
    RodPlan rods =
        new RodPlan(
            plan.spec(), (Riser.ThreadedRods) plan.spec().supports().riser(), plan.supports());
    double metres =
        rods.cuts().stream().mapToDouble(cut -> cut.length().millimetres()).sum() / 1000;

    assertThat(rods.weight())
        .isCloseTo(metres * 0.3186 + rods.nuts() * (0.00543 + 0.00183), within(0.01));
  }

  /** By hand, M8: base 12.7, two nuts of 6.8 and two washers of 1.6, 20 mm to spare: 49.5 mm. */
  @Test
  void rodLength_includesBaseNutsAndWashers() {
    HelixPlan plan = new SpecBuilder().supports(SpecBuilder.rods(8, Optional.empty())).plan();
    RodPlan rods =
        new RodPlan(
            plan.spec(), (Riser.ThreadedRods) plan.spec().supports().riser(), plan.supports());
    SupportRow top =
        plan.supports().rows().stream()
            .max(Comparator.comparingDouble(SupportRow::at))
            .orElseThrow();
    RodPlan.Rods longest =
        rods.rods().stream()
            .filter(each -> each.station().equals(top.station()))
            .findFirst()
            .orElseThrow();

    assertThat(longest.length().millimetres())
        .isCloseTo(top.underside().millimetres() + 0.483 * 25.4 + 49.5, within(1e-6));
    assertThat(top.underside().minus(rods.lowerNut(top)).millimetres())
        .isCloseTo(8.4, within(1e-9));
  }

  /** Two pieces lapped over each other weigh as much as one that runs through. */
  @Test
  void woodWeight_countsALapOnce() {
    HelixPlan plan = new SpecBuilder().ends(EndPlan.level(inches(24), Length.ZERO)).plan();
    double run = 2 * Math.PI * 28 * 6 * 25.4;
    double kilograms = run * 5.5 * 25.4 * 0.483 * 25.4 * 680e-9;

    assertThat(plan.woodWeight()).isCloseTo(kilograms, within(1e-6 * kilograms));
  }

  /**
   * By hand: a block of 3/4 in x 1 1/2 in under each place held, longer on the base by half of what
   * the slope takes of its top; those over 20 times 3/4 in stand in pairs, with a brace from foot
   * to top across the roadbed's 5 1/2 in; those under the leads have others along the track.
   * Softwood of 19 mm as in the table of densities.
   */
  @Test
  void riserWeight_countsBlocksAndTheirBraces() {
    SupportPlan blocks = SpecBuilder.blocks(8);
    SupportPlan tall =
        new SupportPlan(blocks.riser(), 8, Optional.empty(), inches(20), blocks.bulgeShare());
    HelixPlan plan = new SpecBuilder().supports(tall).plan();
    double length = 0;
    double braces = 0;
    for (SupportRow row : plan.supports().rows()) {
      double top = row.standsOnBase() ? 1.5 * row.slope() / 2 : 0;
      length += row.edges().supports() * (row.gap().inches() + top);
      if (row.edges() == SupportRow.Edges.BOTH && row.gap().inches() > 15) {
        braces += Math.hypot(5.5, row.gap().inches());
      }
    }
    double density = WoodDensity.of(Wood.SOFTWOOD, inches(0.75)).value();
    double each = 0.75 * 1.5 * Math.pow(0.0254, 3) * density;

    double along =
        plan.supports().braces().orElseThrow().all().stream()
            .filter(Braces.Brace::along)
            .mapToDouble(brace -> brace.length().inches())
            .sum();

    assertThat(braces).isGreaterThan(8 * 15);
    assertThat(plan.riserWeight()).isCloseTo((length + braces + along) * each, within(0.002));
  }

  @Test
  void numbersOf_aKind_areAsManyAsItsCount() {
    HelixPlan plan = new SpecBuilder().plan();

    assertThat(plan.roadbed().kinds())
        .allSatisfy(kind -> assertThat(plan.roadbed().numbersOf(kind)).hasSize(kind.count()));
  }
}
