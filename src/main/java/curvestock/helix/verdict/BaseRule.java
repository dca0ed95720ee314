package curvestock.helix.verdict;

import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.helix.build.BaseFrame;
import curvestock.helix.build.EntryWay;
import curvestock.helix.build.SupportRow;
import curvestock.helix.build.SupportTable;
import curvestock.helix.course.CentreLine;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether every support that heights are given for as if it stood on the base does: those of leads,
 * which the base does not follow, may stand beside it or over its edge.
 */
public final class BaseRule {

  /** A pad is so much larger all round than what stands on it, for its screws: our own choice. */
  private static final double PAD_RIM = 25.4;

  /** Aside of a seam between two boards of the base, in millimetres. */
  private static final double ASIDE = 1e-3;

  private final CentreLine line;
  private final SupportTable supports;
  private final List<Outline> base;
  private final double offset;
  private final double across;
  private final double along;

  public BaseRule(HelixSpec spec, CentreLine line, SupportTable supports, BaseFrame frame) {
    this.line = line;
    this.supports = supports;
    base = frame.inPlace();
    offset = new EntryWay(spec, line).offset();
    across = spec.supports().riser().across().millimetres();
    along = spec.supports().riser().along().millimetres();
  }

  /** With the size of a pad that carries any of them. */
  public Verdict verdict() {
    List<SupportRow> beside =
        supports.rows().stream()
            .filter(SupportRow::standsOnBase)
            .filter(row -> !feet(row).stream().allMatch(this::isOnBase))
            .toList();
    if (beside.isEmpty()) {
      return Verdict.ok(Rule.BASE).with(Fact.SUPPORTS, new Text(""));
    }
    double apart =
        beside.stream().mapToInt(row -> row.edges().supports()).max().orElseThrow() > 1
            ? 2 * offset
            : 0;
    return Verdict.of(Rule.BASE, State.MARGINAL)
        .with(
            Fact.SUPPORTS,
            new Text(
                beside.stream()
                    .map(row -> row.station().name())
                    .distinct()
                    .collect(Collectors.joining(", "))))
        .with(Fact.PAD_ACROSS, Length.ofMillimetres(apart + across + 2 * PAD_RIM))
        .with(Fact.PAD_ALONG, Length.ofMillimetres(along + 2 * PAD_RIM));
  }

  private boolean isOnBase(Point point) {
    return Stream.of(new Point(ASIDE, ASIDE), new Point(-ASIDE, -ASIDE))
        .map(point::plus)
        .anyMatch(near -> base.stream().anyMatch(piece -> piece.contains(near)));
  }

  /** The corners of the blocks, or four points at the rim of the washers. */
  private List<Point> feet(SupportRow row) {
    Waypoint here = line.at(row.at());
    Point ahead = Point.polar(1, here.heading());
    Point aside = Point.polar(1, here.heading() + Math.PI / 2);
    List<Point> feet = new ArrayList<>();
    for (double outwards : row.edges().outwards(offset)) {
      Point middle = here.toLeft(-line.inwards() * outwards);
      for (double forth : new double[] {-along / 2, along / 2}) {
        for (double side : new double[] {-across / 2, across / 2}) {
          feet.add(middle.plus(ahead.times(forth)).plus(aside.times(side)));
        }
      }
    }
    return feet;
  }
}
