package curvestock.helix.build;

import curvestock.helix.build.Bridge.Form;
import curvestock.helix.spec.Construction.PlatesBeside;
import curvestock.helix.spec.GroundPlan;
import curvestock.units.Length;
import java.util.List;
import java.util.stream.Stream;

/**
 * The plates beside the joints: one at each edge, but for where an edge strip runs past the joint.
 * The strip is glued along both pieces there, which is what the plate is for.
 *
 * @param plate what one is
 * @param ground the roadbed's edges
 * @param strips those and other bridges of the helix
 */
public record SidePlates(
    PlatesBeside plate, GroundPlan ground, List<Joint> joints, List<Bridge> strips) {

  /** A strip needs so much past the middle of its support: our own choice. */
  private static final Length LEAST_OVERLAP = Length.ofInches(0.5);

  /** What glue fills, and what a clamp closes: our own choice. */
  private static final double CLOSES = 0.3;

  private static final double ROUNDING = 1e-6;

  public SidePlates {
    joints = List.copyOf(joints);
    strips = strips.stream().filter(bridge -> bridge.form() == Form.STRIP).toList();
  }

  /** Whether the strip covers the plates on its way or ends before them. */
  boolean leaveRoomFor(Bridge strip) {
    return joints.stream().allMatch(joint -> covers(strip, joint) || isClear(strip, joint));
  }

  private double half() {
    return plate.length().millimetres() / 2;
  }

  /** What is so long along an edge, along the line; on an oval's straights both are the same. */
  private double onLine(double length, boolean outer) {
    double edge = (outer ? ground.outerEdge() : ground.innerEdge()).millimetres();
    double share = ground.bedRadius().millimetres() / edge;
    return length * (ground.isOval() ? Math.max(1, share) : share);
  }

  /** From the joint to the end of its plate at the strip's edge, and so much more, on the line. */
  private double reach(Bridge strip, Length more) {
    return onLine(half() + more.millimetres(), strip.outer());
  }

  /** Over the plate's whole length, on some turn. */
  private boolean covers(Bridge strip, Joint joint) {
    double inside = reach(strip, Bridge.OVERLAP.times(-1)) - ROUNDING;
    return strip.shifts().stream()
        .anyMatch(
            shift ->
                strip.from() + shift <= joint.at() - inside
                    && joint.at() + inside <= strip.to() + shift);
  }

  /** On every turn, with as little as it needs past its supports. */
  private boolean isClear(Bridge strip, Joint joint) {
    return !meets(strip, joint, LEAST_OVERLAP);
  }

  private boolean meets(Bridge strip, Joint joint, Length overlap) {
    double reach = reach(strip, overlap) - ROUNDING;
    return strip.covers(joint.at() - reach, joint.at() + reach);
  }

  /** Where a strip takes the place of the plate at the edge. */
  public List<Joint> replaced(boolean outer) {
    return joints.stream()
        .filter(
            joint ->
                strips.stream().anyMatch(strip -> strip.outer() == outer && covers(strip, joint)))
        .toList();
  }

  /** Whether a strip stops at a plate, short of its usual end. */
  public boolean shortenSome() {
    return strips.stream()
        .anyMatch(
            strip ->
                joints.stream()
                    .anyMatch(
                        joint -> !covers(strip, joint) && meets(strip, joint, Bridge.OVERLAP)));
  }

  /** How many plates the joint has. */
  public int at(Joint joint) {
    return (int) Stream.of(true, false).filter(outer -> !replaced(outer).contains(joint)).count();
  }

  /** All plates. */
  public int count() {
    return joints.stream().mapToInt(this::at).sum();
  }

  /**
   * How far a straight plate stands off the round edge that it touches: at its ends outside, in its
   * middle inside. By Pythagoras: √(R² + c²/4) − R and R − √(R² − c²/4).
   */
  public Length gap(boolean outer) {
    double radius = (outer ? ground.outerEdge() : ground.innerEdge()).millimetres();
    double square = half() * half();
    return Length.ofMillimetres(
        outer
            ? Math.sqrt(radius * radius + square) - radius
            : radius - Math.sqrt(Math.max(0, radius * radius - square)));
  }

  /** Whether glue and clamps do not close the gaps. */
  public boolean needShaping() {
    return gap(true).millimetres() > CLOSES || gap(false).millimetres() > CLOSES;
  }

  /** What is left of a plate at its thinnest once its face follows the edge. */
  public Length thinnest() {
    return plate.thickness().minus(gap(true).longer(gap(false)));
  }

  /** Whether so little is left that a plate is better bent of layers: our own choice, half. */
  public boolean needLayers() {
    return thinnest().compareTo(plate.thickness().times(0.5)) < 0;
  }
}
