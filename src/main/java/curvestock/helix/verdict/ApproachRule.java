package curvestock.helix.verdict;

import curvestock.helix.build.EntryWay;
import curvestock.helix.build.EntryWay.Hit;
import curvestock.helix.build.LeadEnds;
import curvestock.helix.build.LeadSpacing;
import curvestock.helix.build.LeadSpacing.Near;
import curvestock.helix.build.Station;
import curvestock.helix.build.Stations;
import curvestock.helix.build.SupportRow;
import curvestock.helix.build.SupportTable;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Climb;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether a support stands where it cannot: in the way of trains that come in, through the wood of
 * the lead-in or in one place with another. Those of the lowest turn can, and those under the
 * leads. The plan moves such supports or leaves them out where it may; what still stands there
 * fails, and what is only too near for work by hand is marginal.
 */
final class ApproachRule {

  private final EntryWay way;
  private final Stations stations;
  private final SupportTable supports;
  private final LeadSpacing room;
  private final List<String> blocking = new ArrayList<>();
  private final List<String> touching = new ArrayList<>();
  private final List<String> meeting = new ArrayList<>();
  private final List<String> close = new ArrayList<>();

  ApproachRule(
      HelixSpec spec, Climb climb, CentreLine line, Stations stations, SupportTable supports) {
    this.way = new EntryWay(spec, line);
    this.stations = stations;
    this.supports = supports;
    this.room = new LeadSpacing(spec, climb, line, stations.spacing().millimetres());
  }

  Verdict verdict() {
    for (SupportRow row : supports.rows()) {
      // Under the lead's own wood a support is where it should be.
      boolean elsewhere =
          stations.exit().contains(row.station())
              || (stations.ring().contains(row.station()) && way.isBeside(row.at()));
      if (row.standsOnBase() && elsewhere) {
        judge(row);
      }
    }
    List<Station> others =
        Stream.of(stations.ring(), stations.entry()).flatMap(List::stream).toList();
    room.tooNear(stations.entry(), stations.ring(), false).forEach(this::judge);
    room.tooNear(stations.exit(), others, true).forEach(this::judge);
    boolean fails = !blocking.isEmpty() || !touching.isEmpty() || !meeting.isEmpty();
    State state = fails ? State.FAIL : close.isEmpty() ? State.OK : State.MARGINAL;
    return Verdict.of(Rule.APPROACH_SUPPORTS, state)
        .with(Fact.BLOCKING, joined(blocking))
        .with(Fact.TOUCHING, joined(touching))
        .with(Fact.MEETING, joined(meeting))
        .with(Fact.CLOSE, joined(close))
        .with(Fact.CLEAR, Length.ofMillimetres(LeadEnds.CLEAR))
        .with(Fact.LEFT_OUT, joined(stations.leftOut()))
        .with(Fact.BRIDGED, new Text(bridged()));
  }

  private static Text joined(List<String> names) {
    return new Text(String.join(", ", names));
  }

  private void judge(Near near) {
    (near.meets() ? meeting : close).add(near.support() + " and " + near.other());
  }

  private void judge(SupportRow row) {
    String name = row.station().name();
    List<Hit> hits =
        row.edges().outwards(way.offset()).stream()
            .map(outwards -> way.hit(row.at(), outwards))
            .toList();
    if (hits.contains(Hit.TRACK)) {
      blocking.add(name);
    } else if (hits.contains(Hit.WOOD)) {
      touching.add(name);
    } else if (hits.contains(Hit.CLOSE)) {
      close.add(name + " and the lead's plywood");
    }
  }

  private String bridged() {
    return stations.bridges().stream()
        .map(bridge -> bridge.form().words() + " between " + bridge.between())
        .distinct()
        .collect(Collectors.joining(", "));
  }
}
