package curvestock.helix.verdict;

import curvestock.helix.build.EntryWay;
import curvestock.helix.build.EntryWay.Hit;
import curvestock.helix.build.Stations;
import curvestock.helix.build.SupportRow;
import curvestock.helix.build.SupportTable;
import curvestock.helix.course.CentreLine;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Whether a support stands where the approach comes in: in the way of trains, or through the wood
 * of the lead-in. Those of the lowest turn can, and those under the exit's lead where it leaves
 * over the entry. The plan leaves such supports out where it may; what still stands there fails.
 */
final class ApproachRule {

  private final EntryWay way;
  private final Stations stations;
  private final SupportTable supports;

  ApproachRule(HelixSpec spec, CentreLine line, Stations stations, SupportTable supports) {
    this.way = new EntryWay(spec, line);
    this.stations = stations;
    this.supports = supports;
  }

  Verdict verdict() {
    List<String> blocking = new ArrayList<>();
    List<String> touching = new ArrayList<>();
    for (SupportRow row : supports.rows()) {
      // Under the lead's own wood a support is where it should be.
      boolean elsewhere =
          stations.exit().contains(row.station())
              || (stations.ring().contains(row.station()) && way.isBeside(row.at()));
      if (row.standsOnBase() && elsewhere) {
        judge(row, blocking, touching);
      }
    }
    boolean ok = blocking.isEmpty() && touching.isEmpty();
    return Verdict.of(Rule.APPROACH_SUPPORTS, ok ? State.OK : State.FAIL)
        .with(Fact.BLOCKING, new Text(String.join(", ", blocking)))
        .with(Fact.TOUCHING, new Text(String.join(", ", touching)))
        .with(Fact.LEFT_OUT, new Text(String.join(", ", stations.leftOut())))
        .with(Fact.BRIDGED, new Text(bridged()));
  }

  private void judge(SupportRow row, List<String> blocking, List<String> touching) {
    List<Double> places =
        switch (row.edges()) {
          case BOTH -> List.of(way.offset(), -way.offset());
          case OUTER -> List.of(way.offset());
          case INNER -> List.of(-way.offset());
          case MIDDLE -> List.of(0.0);
          case NONE -> List.of();
        };
    List<Hit> hits = places.stream().map(offset -> way.hit(row.at(), offset)).toList();
    if (hits.contains(Hit.TRACK)) {
      blocking.add(row.station().name());
    } else if (hits.contains(Hit.WOOD)) {
      touching.add(row.station().name());
    }
  }

  private String bridged() {
    return stations.bridges().stream()
        .map(bridge -> bridge.form().words() + " between " + bridge.between())
        .distinct()
        .collect(Collectors.joining(", "));
  }
}
