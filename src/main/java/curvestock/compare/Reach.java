package curvestock.compare;

/**
 * How far a given number of sheets reaches.
 *
 * @param onSheets pieces found to lie on the sheets asked about
 * @param onRemnants pieces found to lie on what is on hand besides
 */
public record Reach(Division division, int onSheets, int onRemnants, int layers) {

  public int pieces() {
    return onSheets + onRemnants;
  }

  public double turns() {
    return pieces() * division.segment().degrees() / 360 / layers;
  }
}
