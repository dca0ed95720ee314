package curvestock.helix.verdict;

import curvestock.helix.spec.Setting;
import curvestock.units.Quantity;

/**
 * One figure of the job to be changed.
 *
 * @param setting which
 * @param now as it stands
 * @param then as it should be, rounded so that writing just that into the job is enough
 */
public record Change(Setting setting, Quantity now, Quantity then) {

  /** Path of the key within the job's helix block. */
  public String key() {
    return setting.key();
  }
}
