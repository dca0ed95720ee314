package curvestock.helix;

import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HardwarePrices;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.Riser.Ear;
import curvestock.helix.spec.RoadbedStack;
import curvestock.helix.spec.Segmentation;
import curvestock.helix.spec.SplicePlate;
import curvestock.helix.spec.StockBoard;
import curvestock.helix.spec.SupportPlan;
import curvestock.helix.spec.Traffic;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.standard.HeightStandard;
import curvestock.helix.standard.RodThread;
import curvestock.helix.standard.Scale;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.Optional;

/**
 * Builds helixes for tests. Unless told otherwise: HO, one track at 28 in on 5.5 in of roadbed, 6
 * turns of 4 in, 0.483 in plywood, 3/16 in underlay, 0.175 in of track, vertical curves of 24 in
 * that begin at the ring, quarter turns with half-laps of 2 in, 8 stations of blocks a turn. The
 * scenario is invented.
 */
public final class SpecBuilder {

  private Scale scale = Scale.named("HO");
  private GroundPlan ground = GroundPlan.circle(inches(28), inches(5.5));
  private Ascent ascent = Ascent.ofTurnsAndRise(6, inches(4));
  private EndPlan bottom = EndPlan.level(inches(24), inches(12)).withClimbLead(Length.ZERO);
  private EndPlan top = bottom;
  private RoadbedStack stack =
      new RoadbedStack(inches(0.483), inches(0.1875), inches(0.075), inches(0.1));
  private Construction construction = new Construction.HalfLap(inches(2));
  private Segmentation segmentation = Segmentation.of(Angle.ofDegrees(90));
  private SupportPlan supports = blocks(8);
  private HardwarePrices prices = HardwarePrices.UNKNOWN;
  private Traffic traffic =
      new Traffic(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Length.ZERO,
          HeightStandard.NMRA_S7,
          inches(24));

  public static Length inches(double inches) {
    return Length.ofInches(inches);
  }

  public static Length mm(double millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  public static SupportPlan blocks(int perTurn) {
    return new SupportPlan(
        new Riser.WoodBlocks(
            inches(0.75),
            inches(1.5),
            Length.ZERO,
            inches(0.125),
            Optional.of(new StockBoard("1x4, 8 ft", inches(96), Optional.empty())),
            true),
        perTurn,
        Optional.empty(),
        inches(3),
        SupportPlan.USUAL_BULGE_SHARE);
  }

  public static SupportPlan rods(int perTurn, Optional<Ear> ear) {
    return new SupportPlan(
        new Riser.ThreadedRods(
            RodThread.named("M8"),
            mm(ear.isPresent() ? -12 : 12),
            mm(0.3),
            mm(16),
            mm(20),
            ear,
            mm(2),
            new StockBoard("M8 rod, 1 m", mm(1000), Optional.empty())),
        perTurn,
        Optional.empty(),
        mm(50),
        SupportPlan.USUAL_BULGE_SHARE);
  }

  public static Construction plate(double length, double inset, double thickness) {
    return new Construction.ButtWithPlate(
        new SplicePlate(
            SplicePlate.Form.RECTANGLE,
            inches(length),
            inches(inset),
            inches(thickness),
            2,
            mm(4),
            true));
  }

  public static GroundPlan twoTracks(
      Length inner, Length spacing, Length margin, Length straight, Direction direction) {
    return new GroundPlan(
        inner, Optional.of(spacing), margin, straight, direction, Angle.ofDegrees(0));
  }

  public SpecBuilder scale(String name) {
    scale = Scale.named(name);
    return this;
  }

  public SpecBuilder ground(GroundPlan plan) {
    ground = plan;
    return this;
  }

  public SpecBuilder circle(double radius, double width) {
    return ground(GroundPlan.circle(inches(radius), inches(width)));
  }

  public SpecBuilder ascent(Ascent stated) {
    ascent = stated;
    return this;
  }

  public SpecBuilder ends(EndPlan both) {
    bottom = both;
    top = both;
    return this;
  }

  public SpecBuilder stack(RoadbedStack stated) {
    stack = stated;
    return this;
  }

  public SpecBuilder construction(Construction stated) {
    construction = stated;
    return this;
  }

  public SpecBuilder segment(double degrees) {
    segmentation = Segmentation.of(Angle.ofDegrees(degrees));
    return this;
  }

  public SpecBuilder starter(double segment, double first) {
    segmentation = new Segmentation(Angle.ofDegrees(segment), Optional.of(Angle.ofDegrees(first)));
    return this;
  }

  public SpecBuilder supports(SupportPlan plan) {
    supports = plan;
    return this;
  }

  public SpecBuilder tallest(Length height, HeightStandard standard) {
    traffic =
        new Traffic(
            Optional.of(height),
            traffic.longest(),
            traffic.trainLength(),
            traffic.spare(),
            standard,
            traffic.opening());
    return this;
  }

  public SpecBuilder longest(Vehicle vehicle, Length spare) {
    traffic =
        new Traffic(
            traffic.tallest(),
            Optional.of(vehicle),
            traffic.trainLength(),
            spare,
            traffic.heights(),
            traffic.opening());
    return this;
  }

  public SpecBuilder train(Length length, Length opening) {
    traffic =
        new Traffic(
            traffic.tallest(),
            traffic.longest(),
            Optional.of(length),
            traffic.spare(),
            traffic.heights(),
            opening);
    return this;
  }

  public SpecBuilder prices(HardwarePrices stated) {
    prices = stated;
    return this;
  }

  public HelixSpec spec() {
    return new HelixSpec(
        scale,
        ground,
        ascent,
        bottom,
        top,
        stack,
        construction,
        segmentation,
        supports,
        traffic,
        prices,
        680);
  }

  public HelixPlan plan() {
    return HelixPlan.of(spec());
  }
}
