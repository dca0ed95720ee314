package curvestock.bench;

/** How a cost grows with the size of a question. */
final class PowerLaw {

  private PowerLaw() {}

  /**
   * The slope of the least-squares line through the logarithms of sizes and costs: 1 is
   * proportional, 2 quadratic.
   *
   * @param sizes above zero, as many as costs
   * @param costs above zero
   */
  static double exponent(double[] sizes, double[] costs) {
    double meanX = 0;
    double meanY = 0;
    for (int i = 0; i < sizes.length; i++) {
      meanX += Math.log(sizes[i]) / sizes.length;
      meanY += Math.log(costs[i]) / sizes.length;
    }
    double xy = 0;
    double xx = 0;
    for (int i = 0; i < sizes.length; i++) {
      double x = Math.log(sizes[i]) - meanX;
      xy += x * (Math.log(costs[i]) - meanY);
      xx += x * x;
    }
    return xy / xx;
  }
}
