package curvestock.helix.build;

import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.SupportPlan;
import curvestock.units.Length;

/**
 * How far the centre line bulges beyond the straight line between two supports: R·(1 − cos(π/n)).
 * Beyond a share of the width the roadbed would twist on single supports, so that both edges are
 * held (derived; the share is common practice, no source).
 */
public record SupportBulge(Length radius, int perTurn, Length width, double share) {

  /** Of a helix; on an oval the stations are spread over the straights too. */
  public static SupportBulge of(GroundPlan ground, SupportPlan supports) {
    return new SupportBulge(
        ground.bedRadius(), supports.perTurn(), ground.width(), supports.bulgeShare());
  }

  public Length bulge() {
    return radius.times(1 - Math.cos(Math.PI / perTurn));
  }

  /** Whether both edges must be held. */
  public boolean needsBothEdges() {
    return bulge().compareTo(width.times(share)) > 0;
  }
}
