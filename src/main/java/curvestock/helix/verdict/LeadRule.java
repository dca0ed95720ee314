package curvestock.helix.verdict;

import curvestock.helix.build.Station;
import curvestock.helix.build.Stations;
import curvestock.helix.course.Climb;
import curvestock.helix.course.HeightProfile;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.standard.SupportSpacing;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Whether the straights before and behind the ring are held closely enough. */
final class LeadRule {

  private static final double ROUNDING = 1e-6;

  private final HelixSpec spec;
  private final Climb climb;
  private final Stations stations;

  LeadRule(HelixSpec spec, Climb climb, Stations stations) {
    this.spec = spec;
    this.climb = climb;
    this.stations = stations;
  }

  List<Verdict> verdicts() {
    List<Verdict> verdicts = new ArrayList<>();
    double entry = spec.bottom().leadIn().millimetres();
    double exit = spec.top().leadIn().millimetres();
    if (entry > 0) {
      verdicts.add(judge(-entry, 0, -entry).at(Place.ENTRY));
    }
    if (exit > 0) {
      double ring = climb.ringLength();
      HeightProfile profile = new HeightProfile(climb, spec.bottom(), spec.top());
      Length end =
          spec.supports().footHeight().plus(Length.ofMillimetres(profile.heightAt(ring + exit)));
      verdicts.add(judge(ring, ring + exit, ring + exit).at(Place.EXIT).with(Fact.UNDERSIDE, end));
    }
    return verdicts;
  }

  /** On an oval the ring's stations hold some of the entry's lead. */
  private static boolean isUnder(double at, double from, double to) {
    return at > from + ROUNDING && at < to + (from < 0 ? -ROUNDING : ROUNDING);
  }

  /** From the nearest station on the ring's side to the outer end. */
  private Verdict judge(double from, double to, double outerEnd) {
    Map<Double, String> names = new TreeMap<>();
    stations.all().forEach(each -> each.places().forEach(at -> names.put(at, each.name())));
    List<Double> places = List.copyOf(names.keySet());
    double widest = 0;
    String between = "";
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < places.size(); i++) {
      nearest = Math.min(nearest, Math.abs(places.get(i) - outerEnd));
      if (i > 0 && places.get(i) > from + ROUNDING && places.get(i - 1) < to - ROUNDING) {
        double wide = places.get(i) - places.get(i - 1);
        if (wide > widest) {
          widest = wide;
          between = names.get(places.get(i - 1)) + " to " + names.get(places.get(i));
        }
      }
    }
    // What reaches out beyond the last support bends like a span of twice its length.
    double span = Math.max(widest, 2 * nearest);
    SupportSpacing.Range range = SupportSpacing.forThickness(spec.plywood()).value();
    String under =
        String.join(
            ", ",
            stations.all().stream()
                .filter(station -> station.places().stream().anyMatch(at -> isUnder(at, from, to)))
                .map(Station::name)
                .toList());
    Length most = range.most();
    boolean ok = span <= most.millimetres();
    return Verdict.of(Rule.LEAD_SUPPORTS, ok ? State.OK : State.MARGINAL)
        .measuring(Length.ofMillimetres(span))
        .against(most)
        .with(Fact.CAREFUL, range.careful())
        .with(Fact.WIDEST, range.widest())
        .with(Fact.SUPPORTS, new Text(under))
        .with(Fact.BETWEEN, new Text(between))
        .with(Fact.SPAN, Length.ofMillimetres(widest))
        .with(Fact.BEYOND, Length.ofMillimetres(nearest));
  }
}
