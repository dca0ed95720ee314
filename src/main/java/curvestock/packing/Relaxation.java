package curvestock.packing;

/**
 * Moves pieces downhill on the {@link Overlap} energy: all together, or one among fixed others.
 * Angles are scaled so that a unit of any variable moves wood by about a millimetre.
 */
final class Relaxation {

  private final Overlap overlap;
  private final boolean[] frozen;
  private final Minimiser together;
  private final Minimiser alone = new Minimiser(3);
  private final double[] variables;
  private final double[] pose;
  private final double[] gradient;
  private final double[] single = new double[3];
  private final double longestStep;

  /**
   * @param frozen pieces that must stay where they are
   */
  Relaxation(Overlap overlap, boolean[] frozen) {
    this.overlap = overlap;
    this.frozen = frozen;
    int size = 3 * overlap.count;
    together = new Minimiser(size);
    variables = new double[size];
    pose = new double[size];
    gradient = new double[size];
    double smallest = Double.POSITIVE_INFINITY;
    for (Body body : overlap.bodies) {
      smallest = Math.min(smallest, 2 * body.area / (2 * body.radius));
    }
    longestStep = Math.max(1, smallest / 2);
  }

  /** Relaxes all pieces that are not frozen; returns the weighted energy reached. */
  double all(double[] poses, int steps, double goal) {
    for (int k = 0; k < variables.length; k++) {
      variables[k] = k % 3 == 2 ? poses[k] * overlap.scale(k / 3) : poses[k];
    }
    double reached =
        together.minimise(this::energyOfAll, variables, steps, goal, longestStep, 0.02);
    for (int k = 0; k < variables.length; k++) {
      poses[k] = k % 3 == 2 ? variables[k] / overlap.scale(k / 3) : variables[k];
    }
    return reached;
  }

  private double energyOfAll(double[] at, double[] slope) {
    for (int k = 0; k < at.length; k++) {
      pose[k] = k % 3 == 2 ? at[k] / overlap.scale(k / 3) : at[k];
    }
    double value = overlap.evaluate(pose, slope);
    for (int i = 0; i < overlap.count; i++) {
      slope[3 * i + 2] /= overlap.scale(i);
      if (frozen[i]) {
        slope[3 * i] = 0;
        slope[3 * i + 1] = 0;
        slope[3 * i + 2] = 0;
      }
    }
    return value;
  }

  /** Relaxes piece i alone; {@link Overlap#placeAll} must have seen the poses of the others. */
  double one(int i, double[] poses, int steps) {
    double scale = overlap.scale(i);
    System.arraycopy(poses, 0, pose, 0, pose.length);
    single[0] = poses[3 * i];
    single[1] = poses[3 * i + 1];
    single[2] = poses[3 * i + 2] * scale;
    double reached =
        alone.minimise(
            (at, slope) -> {
              pose[3 * i] = at[0];
              pose[3 * i + 1] = at[1];
              pose[3 * i + 2] = at[2] / scale;
              double value = overlap.evaluateOne(i, pose, gradient);
              slope[0] = gradient[3 * i];
              slope[1] = gradient[3 * i + 1];
              slope[2] = gradient[3 * i + 2] / scale;
              return value;
            },
            single,
            steps,
            1e-9,
            longestStep,
            0.02);
    poses[3 * i] = single[0];
    poses[3 * i + 1] = single[1];
    poses[3 * i + 2] = single[2] / scale;
    return reached;
  }
}
