package curvestock.compare;

import curvestock.helix.SegmentPlan;
import curvestock.helix.build.GluedArea;
import curvestock.helix.standard.WoodDensity;
import curvestock.job.Job;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A plain ring. The job says nothing of its joints: butt joints with a splice plate of the usual
 * size below are taken.
 */
record RingDesigns(Job job, SegmentPlan ring) implements Designs {

  /** Usual in HO; common practice, no source. */
  private static final Length PLATE = Length.ofInches(5);

  /** How much narrower than the roadbed; common practice, no source. */
  private static final Length INSET = Length.ofInches(0.5);

  private static final int SCREWS_A_JOINT = 6;
  private static final double CUBIC_MM_PER_CUBIC_M = 1e9;

  @Override
  public Division own() {
    return new Division(ring.lower(), ring.segment());
  }

  @Override
  public double turns() {
    return ring.turns();
  }

  @Override
  public int layers() {
    return 1;
  }

  @Override
  public Money boughtPerJoint() {
    return Money.ZERO;
  }

  @Override
  public Design in(Division division) {
    SegmentPlan plan =
        new SegmentPlan(
            ring.turns(), ring.radius(), ring.width(), division.segment(), division.lower());
    List<Demand> bed = plan.demands();
    int joints = Design.count(bed) - 1;
    List<Demand> small = joints == 0 ? List.of() : plates(joints);
    List<Demand> cut = Stream.concat(bed.stream(), small.stream()).toList();
    List<Demand> planned = Stream.concat(bed.stream(), job.pieces().stream()).toList();
    double glue = small.stream().mapToDouble(d -> d.count() * d.piece().shape().area()).sum();
    return new Design(
        division,
        job.only(planned),
        bed,
        Design.mostOf(bed),
        small,
        new JointParts(
            joints,
            Design.count(small),
            SCREWS_A_JOINT * Design.count(small),
            GluedArea.grams(glue),
            true),
        JointFall.of(joints(bed), division.largest().degrees()),
        Design.perimeter(cut),
        weight(cut));
  }

  private List<Demand> plates(int joints) {
    Length width = ring.width().minus(INSET);
    if (width.millimetres() <= 0) {
      return List.of();
    }
    return List.of(new Demand(Piece.of("plate", "splice plate", new Strip(PLATE, width)), joints));
  }

  private static List<Double> joints(List<Demand> bed) {
    List<Double> joints = new ArrayList<>();
    double at = 0;
    for (Demand demand : bed) {
      double sweep = ((AnnularSector) demand.piece().shape()).sweep().degrees();
      for (int i = 0; i < demand.count(); i++) {
        at += sweep;
        joints.add(at);
      }
    }
    joints.remove(joints.size() - 1);
    return joints;
  }

  /** As birch plywood of the measured thickness. */
  private double weight(List<Demand> cut) {
    Length thickness = job.sheets().get(0).thickness();
    double area = cut.stream().mapToDouble(d -> d.count() * d.piece().shape().area()).sum();
    double density = WoodDensity.of(WoodDensity.Wood.BIRCH, thickness).value();
    return area * thickness.millimetres() * density / CUBIC_MM_PER_CUBIC_M;
  }

  @Override
  public Piece segment(Angle angle) {
    return Piece.of(
        "S", "segment of " + angle, new AnnularSector(ring.radius(), ring.width(), angle));
  }

  @Override
  public Designs on(Job other) {
    return new RingDesigns(other, ring);
  }

  @Override
  public Designs longerBy(double turns) {
    return changed(ring.turns() + turns, ring.radius(), ring.width());
  }

  @Override
  public Designs resized(Length radiusMore, Length widthMore) {
    return changed(ring.turns(), ring.radius().plus(radiusMore), ring.width().plus(widthMore));
  }

  private Designs changed(double turns, Length radius, Length width) {
    return new RingDesigns(
        job, new SegmentPlan(turns, radius, width, ring.segment(), ring.lower()));
  }

  @Override
  public Optional<Designs> withEars(boolean ears) {
    return Optional.empty();
  }
}
