package curvestock.helix.verdict;

import curvestock.helix.course.Climb;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.verdict.Verdict.Result;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Room for the person inside, and the longest train as a share of a turn. */
final class PassageRule {

  /** A train longer than this share of a turn can pull itself inwards: common practice. */
  private static final double TRAIN_SHARE = 0.75;

  private final HelixSpec spec;
  private final Climb climb;
  private final Wording wording;

  PassageRule(HelixSpec spec, Climb climb, Wording wording) {
    this.spec = spec;
    this.climb = climb;
    this.wording = wording;
  }

  List<Verdict> verdicts() {
    List<Verdict> verdicts = new ArrayList<>();
    verdicts.add(opening());
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
    String finding =
        wording.length(width)
            + " across for whoever gets in (wanted "
            + wording.length(wanted)
            + ")";
    return width.compareTo(wanted) >= 0
        ? Verdict.ok("opening", finding)
        : new Verdict(
            "opening",
            Result.FAILS,
            finding,
            "widen the radius by "
                + wording.atLeast(wanted.minus(width).times(0.5))
                + ", narrow the roadbed, or plan access from outside");
  }

  private Verdict train(Length length) {
    Length run = spec.ground().runPerTurn(spec.ground().innerTrack());
    double share = length.millimetres() / run.millimetres();
    String finding =
        "the longest train spans " + wording.number(share) + " turns of the inner track";
    if (share <= TRAIN_SHARE || climb.turns() < TRAIN_SHARE) {
      return Verdict.ok("train", finding);
    }
    return new Verdict(
        "train",
        Result.TIGHT,
        finding + "; above 0.75 it can pull itself inwards (common practice)",
        "run trains up to "
            + wording.atMost(run.times(TRAIN_SHARE))
            + ", or put the heavy cars in front");
  }
}
