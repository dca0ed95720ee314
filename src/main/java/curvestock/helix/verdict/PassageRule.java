package curvestock.helix.verdict;

import curvestock.helix.course.Climb;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;

/** Room for the person inside, and the longest train as a share of a turn. */
final class PassageRule {

  /** A train longer than this share of a turn can pull itself inwards: common practice. */
  private static final double TRAIN_SHARE = 0.75;

  /** Higher than a person reaches from the floor: our own choice. */
  private static final Length HIGH = Length.ofMillimetres(2000);

  private final HelixSpec spec;
  private final Climb climb;
  private final LengthStyle style;

  PassageRule(HelixSpec spec, Climb climb, LengthStyle style) {
    this.spec = spec;
    this.climb = climb;
    this.style = style;
  }

  List<Verdict> verdicts() {
    List<Verdict> verdicts = new ArrayList<>();
    verdicts.add(opening());
    if (climb.climb().compareTo(HIGH) > 0) {
      verdicts.add(Verdict.of(Rule.CLIMB, State.MARGINAL).measuring(climb.climb()).against(HIGH));
    }
    spec.traffic().trainLength().ifPresent(length -> verdicts.add(train(length)));
    return verdicts;
  }

  /** Width of the opening inside the roadbed and what stands out from it. */
  static Length openingWidth(HelixSpec spec) {
    return spec.ground().innerEdge().minus(spec.beyondEdges()).times(2);
  }

  private Verdict opening() {
    Length width = openingWidth(spec);
    Length wanted = spec.traffic().opening();
    Verdict verdict =
        Verdict.of(Rule.OPENING, width.compareTo(wanted) >= 0 ? State.OK : State.FAIL)
            .measuring(width)
            .against(wanted);
    Length wider = spec.ground().innerTrack().plus(wanted.minus(width).times(0.5));
    return verdict.state() == State.OK
        ? verdict
        : verdict.fixedBy(new Rises(spec, climb, style).radius(wider));
  }

  private Verdict train(Length length) {
    Length run = spec.ground().runPerTurn(spec.ground().innerTrack());
    double share = length.millimetres() / run.millimetres();
    boolean ok = share <= TRAIN_SHARE || climb.turns() < TRAIN_SHARE;
    return Verdict.of(Rule.TRAIN, ok ? State.OK : State.MARGINAL)
        .measuring(Verdict.turns(share))
        .against(Verdict.turns(TRAIN_SHARE))
        .with(Fact.LIMIT, run.times(TRAIN_SHARE));
  }
}
