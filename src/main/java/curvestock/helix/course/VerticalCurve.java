package curvestock.helix.course;

import curvestock.helix.spec.Grade;

/**
 * A parabola that leads from one grade into another over a length in millimetres (railway
 * handbooks).
 */
public record VerticalCurve(double length, Grade from, Grade to) {

  /** Height above the curve's start, {@code x} along it. */
  public double heightAt(double x) {
    if (length == 0) {
      return 0;
    }
    return from.ratio() * x + (to.ratio() - from.ratio()) * x * x / (2 * length);
  }

  /** Slope {@code x} along the curve. */
  public double slopeAt(double x) {
    return length == 0 ? to.ratio() : from.ratio() + (to.ratio() - from.ratio()) * x / length;
  }

  /** Height gained over the whole curve. */
  public double rise() {
    return (from.ratio() + to.ratio()) / 2 * length;
  }
}
