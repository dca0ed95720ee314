package curvestock.helix.course;

import curvestock.helix.spec.EndPlan;
import java.util.List;

/**
 * Height along the line: the approach's grade, a vertical curve, the steady grade, a vertical
 * curve, the grade beyond. Zero at the foot, where the lower vertical curve begins.
 */
public final class HeightProfile {

  private final VerticalCurve lower;
  private final VerticalCurve upper;
  private final double foot;
  private final double steadyFrom;
  private final double steadyTo;
  private final double head;
  private final double grade;

  public HeightProfile(Climb climb, EndPlan bottom, EndPlan top) {
    lower =
        new VerticalCurve(
            bottom.verticalCurve().millimetres(), bottom.approachGrade(), climb.grade());
    upper =
        new VerticalCurve(top.verticalCurve().millimetres(), climb.grade(), top.approachGrade());
    foot = -bottom.climbLead().millimetres();
    steadyFrom = foot + lower.length();
    head = climb.ringLength() + top.climbLead().millimetres();
    steadyTo = head - upper.length();
    grade = climb.grade().ratio();
  }

  /** Height above the foot at distance {@code s}. */
  public double heightAt(double s) {
    if (s <= foot) {
      return lower.from().ratio() * (s - foot);
    }
    if (s <= steadyFrom) {
      return lower.heightAt(s - foot);
    }
    double atSteadyEnd = lower.rise() + grade * (steadyTo - steadyFrom);
    if (s <= steadyTo) {
      return lower.rise() + grade * (s - steadyFrom);
    }
    if (s <= head) {
      return atSteadyEnd + upper.heightAt(s - steadyTo);
    }
    return atSteadyEnd + upper.rise() + upper.to().ratio() * (s - head);
  }

  /** Slope (rise over run) at distance {@code s}. */
  public double slopeAt(double s) {
    if (s <= foot) {
      return lower.from().ratio();
    }
    if (s <= steadyFrom) {
      return lower.slopeAt(s - foot);
    }
    if (s <= steadyTo) {
      return grade;
    }
    return s <= head ? upper.slopeAt(s - steadyTo) : upper.to().ratio();
  }

  /** Where the climb begins. */
  public double foot() {
    return foot;
  }

  /** Where the climb ends. */
  public double head() {
    return head;
  }

  /** Height of the head above the foot. */
  public double climb() {
    return heightAt(head);
  }

  /** Where one kind of slope ends and another begins, in order. */
  public List<Double> breaks() {
    return List.of(foot, steadyFrom, steadyTo, head);
  }
}
