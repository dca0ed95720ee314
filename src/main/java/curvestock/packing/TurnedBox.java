package curvestock.packing;

/** The bounding box of a body turned by an angle about its origin, in closed form. */
record TurnedBox(double minX, double minY, double maxX, double maxY) {

  static TurnedBox of(Body body, double turn) {
    double cos = snap(StrictMath.cos(turn));
    double sin = snap(StrictMath.sin(turn));
    double minX = Double.POSITIVE_INFINITY;
    double minY = Double.POSITIVE_INFINITY;
    double maxX = Double.NEGATIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < body.cornerX.length; k++) {
      double x = cos * body.cornerX[k] - sin * body.cornerY[k];
      double y = sin * body.cornerX[k] + cos * body.cornerY[k];
      minX = Math.min(minX, x);
      minY = Math.min(minY, y);
      maxX = Math.max(maxX, x);
      maxY = Math.max(maxY, y);
    }
    for (int k = 0; k < body.arcX.length; k++) {
      double x = cos * body.arcX[k] - sin * body.arcY[k];
      double y = sin * body.arcX[k] + cos * body.arcY[k];
      double mx = cos * body.arcMiddleX[k] - sin * body.arcMiddleY[k];
      double my = sin * body.arcMiddleX[k] + cos * body.arcMiddleY[k];
      double r = body.arcRadius[k];
      minX = -mx >= body.arcCosHalf[k] ? Math.min(minX, x - r) : minX;
      maxX = mx >= body.arcCosHalf[k] ? Math.max(maxX, x + r) : maxX;
      minY = -my >= body.arcCosHalf[k] ? Math.min(minY, y - r) : minY;
      maxY = my >= body.arcCosHalf[k] ? Math.max(maxY, y + r) : maxY;
    }
    return new TurnedBox(minX, minY, maxX, maxY);
  }

  /** Quarter turns are meant exactly. */
  private static double snap(double value) {
    return Math.abs(value) < 1e-15 ? 0 : value;
  }
}
