package curvestock.helix.build;

import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Climb;
import curvestock.helix.course.HeightProfile;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Heights at every station and turn, all from one datum: the base that the supports stand on.
 *
 * <p>On the first turn one support in the middle will do where the bulge is small; above it the
 * supports stand beside the track, at both edges.
 */
public final class SupportTable {

  private final List<SupportRow> rows;

  public SupportTable(
      HelixSpec spec, Climb climb, CentreLine line, HeightProfile profile, Stations stations) {
    boolean both =
        spec.supports().riser() instanceof Riser.ThreadedRods
            || SupportBulge.of(spec.ground(), spec.supports()).needsBothEdges();
    double foot = spec.supports().footHeight().millimetres();
    double run = climb.runPerTurn().millimetres();
    rows = new ArrayList<>();
    for (Station station : stations.all()) {
      for (int lap = 0; lap < station.places().size(); lap++) {
        double at = station.places().get(lap);
        double height = profile.heightAt(at);
        double gap =
            lap == 0
                ? foot + height
                : height - profile.heightAt(at - run) - spec.plywood().millimetres();
        Length underside = Length.ofMillimetres(foot + height);
        rows.add(
            new SupportRow(
                station,
                lap + 1,
                at,
                line.bearing(at),
                lap > 0 || both ? Edges.BOTH : Edges.MIDDLE,
                underside,
                underside.plus(spec.railAboveUnderside()),
                Length.ofMillimetres(gap),
                profile.slopeAt(at)));
      }
    }
    rows.sort(Comparator.comparingDouble(SupportRow::at));
  }

  /** In order of climb. */
  public List<SupportRow> rows() {
    return List.copyOf(rows);
  }

  /** The rows of one turn (from 1). */
  public List<SupportRow> ofTurn(int turn) {
    return rows.stream().filter(row -> row.turn() == turn).toList();
  }
}
