package curvestock.compare;

import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BaseFrame;
import curvestock.helix.build.Joint;
import curvestock.helix.build.PieceKind;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.Segmentation;
import curvestock.helix.spec.SupportPlan;
import curvestock.job.Job;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A whole helix: laps lengthen its pieces, end pieces carry their leads, a second layer is
 * staggered, ears stand out. Supports stay where the job has them, whatever the division.
 */
final class HelixDesigns implements Designs {

  private final Job job;
  private final HelixSpec spec;
  private final HelixPlan plan;
  private final Optional<BaseFrame> base;

  HelixDesigns(Job job, HelixOrder order) {
    this(job, order.plan().spec(), order.plan(), order.base());
  }

  private HelixDesigns(Job job, HelixSpec spec, HelixPlan plan, Optional<BaseFrame> base) {
    this.job = job;
    this.spec = spec;
    this.plan = plan;
    this.base = base;
  }

  @Override
  public Job job() {
    return job;
  }

  @Override
  public Division own() {
    return new Division(spec.segmentation().lower(), spec.segmentation().segment());
  }

  @Override
  public double turns() {
    return plan.climb().turns();
  }

  @Override
  public boolean works() {
    return plan.works();
  }

  @Override
  public int layers() {
    return spec.construction().layers();
  }

  @Override
  public Money boughtPerJoint() {
    return plan.shopping().boughtPerJoint();
  }

  @Override
  public Design in(Division division) {
    HelixPlan divided = divided(division);
    List<Demand> bed = divided.roadbed().blankKinds().stream().map(PieceKind::blankDemand).toList();
    List<Demand> small = divided.smallParts();
    List<Demand> drilled = divided.demands();
    List<Demand> planned =
        Stream.of(bed.stream(), base.stream().map(BaseFrame::demand), job.pieces().stream())
            .flatMap(demands -> demands)
            .toList();
    return new Design(
        division,
        job.only(planned),
        bed,
        Design.mostOf(bed),
        small,
        parts(divided),
        fall(divided, division),
        Design.perimeter(drilled),
        divided.woodWeight());
  }

  private HelixPlan divided(Division division) {
    boolean own = division.equals(own());
    Optional<Angle> starter =
        own || isShorter(spec.segmentation().starter(), division)
            ? spec.segmentation().starter()
            : Optional.empty();
    return own
        ? plan
        : plan(
            spec.ground(),
            spec.ascent(),
            new Segmentation(division.segment(), starter, division.lower()),
            spec.supports());
  }

  /** A starter for other segments than the job's makes sense only if it is shorter than they. */
  private static boolean isShorter(Optional<Angle> starter, Division division) {
    return !division.isMixed()
        && starter.filter(angle -> angle.compareTo(division.segment()) < 0).isPresent();
  }

  private HelixPlan plan(
      GroundPlan ground, Ascent ascent, Segmentation segmentation, SupportPlan supports) {
    return HelixPlan.of(spec(ground, ascent, segmentation, supports), job.style());
  }

  private HelixSpec spec(
      GroundPlan ground, Ascent ascent, Segmentation segmentation, SupportPlan supports) {
    return new HelixSpec(
        spec.scale(),
        ground,
        ascent,
        spec.bottom(),
        spec.top(),
        spec.stack(),
        spec.construction(),
        segmentation,
        supports,
        spec.traffic(),
        spec.prices(),
        spec.woodDensity());
  }

  private static JointParts parts(HelixPlan divided) {
    int joints = divided.joints().all().size();
    Construction construction = divided.spec().construction();
    int each =
        construction instanceof Construction.ButtWithPlate
            ? 1
            : construction instanceof Construction.PlatesBeside ? 2 : 0;
    return new JointParts(
        joints, each * joints, divided.shopping().screws(), divided.shopping().glueGrams(), false);
  }

  private static JointFall fall(HelixPlan divided, Division division) {
    double run = divided.climb().runPerTurn().millimetres();
    List<Double> joints =
        divided.joints().ofLayer(1).stream().map(Joint::at).map(at -> at / run * 360).toList();
    return JointFall.of(joints, division.largest().degrees());
  }

  @Override
  public Piece segment(Angle angle) {
    return in(Division.of(angle)).segment();
  }

  @Override
  public Designs on(Job other) {
    return new HelixDesigns(other, spec, plan, base);
  }

  @Override
  public Designs longerBy(double turns) {
    Ascent ascent = Ascent.ofTurnsAndRise(plan.climb().turns() + turns, plan.climb().risePerTurn());
    return changed(spec.ground(), ascent, spec.supports());
  }

  @Override
  public Designs resized(Length radiusMore, Length widthMore) {
    GroundPlan ground = spec.ground();
    // The rise of a turn stays, so that a narrower turn is as high.
    Ascent ascent = Ascent.ofTurnsAndRise(plan.climb().turns(), plan.climb().risePerTurn());
    return changed(
        new GroundPlan(
            ground.innerTrack().plus(radiusMore),
            ground.trackSpacing(),
            ground.sideMargin().plus(widthMore.times(0.5)),
            ground.straight(),
            ground.direction(),
            ground.entry()),
        ascent,
        spec.supports());
  }

  @Override
  public Optional<Designs> withEars(boolean ears) {
    if (!(spec.supports().riser() instanceof Riser.ThreadedRods rods)) {
      return Optional.empty();
    }
    if (rods.ear().isPresent() == ears) {
      return Optional.of(this);
    }
    SupportPlan supports = spec.supports();
    SupportPlan other = supports.with(ears ? Ears.added(rods) : Ears.removed(rods));
    return Optional.of(changed(spec.ground(), spec.ascent(), other));
  }

  private Designs changed(GroundPlan ground, Ascent ascent, SupportPlan supports) {
    HelixPlan other = plan(ground, ascent, spec.segmentation(), supports);
    return new HelixDesigns(job, other.spec(), other, base);
  }
}
