package curvestock.piece;

import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.units.Length;

/**
 * A rectangle: straight roadbed, a splice plate, a riser block. Frame: origin at the middle, +x
 * along the length.
 */
public record Strip(Length length, Length width) implements Shape {

  /**
   * @throws IllegalArgumentException if a side is not above zero
   */
  public Strip {
    length.requirePositive("length");
    width.requirePositive("width");
  }

  @Override
  public Outline outline() {
    double l = length.millimetres();
    double w = width.millimetres();
    return Outline.rectangle(l, w).at(new Pose(-l / 2, -w / 2, 0));
  }
}
