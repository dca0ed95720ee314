package curvestock.helix.spec;

import curvestock.units.Length;

/**
 * What lies between the underside of the plywood and the rail tops.
 *
 * @param plywood thickness of one layer, as measured
 * @param underlay cork or foam under the track, zero for none
 * @param tie thickness of the ties
 * @param rail height of the rail
 */
public record RoadbedStack(Length plywood, Length underlay, Length tie, Length rail) {

  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if the plywood is not above zero, or another length below zero
   */
  public RoadbedStack {
    plywood.requirePositive("plywood thickness");
    underlay.requireNotNegative("underlay");
    tie.requireNotNegative("tie thickness");
    rail.requireNotNegative("rail height");
  }

  /** From the top of the plywood to the rail tops. */
  public Length aboveWood() {
    return underlay.plus(tie).plus(rail);
  }
}
