package curvestock.packing;

import java.util.List;

/**
 * A periodic lattice of one shape: the pieces of a cell, the step along a column and the step to
 * the next column. The column runs upwards.
 *
 * @param name plain words, for the report
 * @param cell poses (x, y, angle) of the pieces in one cell
 * @param stepX sideways lean of one step along the column
 * @param stepY height of one step along the column
 * @param nextX distance to the next column
 * @param nextY how much higher the next column starts
 */
record PeriodicLattice(
    String name, List<double[]> cell, double stepX, double stepY, double nextX, double nextY) {

  /** Area of the plane that a piece takes up, in square millimetres. */
  double areaPerPiece() {
    return Math.abs(stepX * nextY - stepY * nextX) / cell.size();
  }
}
