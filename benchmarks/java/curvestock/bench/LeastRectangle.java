package curvestock.bench;

import curvestock.geometry.Box;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;

/**
 * The bounding rectangle that a cut list would book for a piece: the least in area over angles in
 * steps of a quarter degree.
 *
 * @param length the longer side, in millimetres
 * @param width the shorter side, in millimetres
 */
record LeastRectangle(double length, double width) {

  private static final int STEPS = 720;

  static LeastRectangle around(Outline outline) {
    LeastRectangle least = null;
    for (int step = 0; step < STEPS; step++) {
      Box box = outline.at(new Pose(0, 0, step * Math.PI / STEPS)).box();
      double longer = Math.max(box.width(), box.height());
      double shorter = Math.min(box.width(), box.height());
      if (least == null || longer * shorter < least.length * least.width * (1 - 1e-9)) {
        least = new LeastRectangle(longer, shorter);
      }
    }
    return least;
  }
}
