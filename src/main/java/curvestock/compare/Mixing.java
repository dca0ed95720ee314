package curvestock.compare;

import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.packing.Packer;
import curvestock.packing.Packers;
import curvestock.packing.SearchSettings;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.units.Angle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Thinks of mixed plans: one sheet less of a large segment, and what is then missing made of
 * smaller ones from the leftovers. That a mixed plan really saves the sheet is for planning to
 * show.
 */
final class Mixing {

  /** Angles of the smaller pieces that are tried, in degrees. */
  private static final double[] SMALLER = {60, 45, 36, 30, 22.5};

  /** A smaller piece is at most this share of the larger: else it would take its place. */
  private static final double MOST_SHARE = 0.76;

  /** So many large pieces may be left out of a sheet for the sake of small ones. */
  private static final int MOST_LEFT_OUT = 2;

  private final Designs designs;
  private final Packers packers;
  private final CompareListener listener;

  Mixing(Designs designs, Packers packers, CompareListener listener) {
    this.designs = designs;
    this.packers = packers;
    this.listener = listener;
  }

  /** A mixed plan that may do with a sheet less than a plain one, and how many pieces it takes. */
  record Candidate(SegmentOption plain, Division division, int pieces) {
    private Standing hoped() {
      return Deepening.oneSheetLess(plain, pieces - 1);
    }
  }

  /** For each choice the best candidate, the most promising choice first. */
  List<Candidate> candidates(List<SegmentOption> options, JointPrice joint) {
    Comparator<Standing> order = Recommendation.order(joint.each());
    return options.stream()
        .filter(option -> !option.division().isMixed() && option.perSheet() > 0)
        .filter(option -> option.sheets() > Math.max(1, option.cost().leastSheets()))
        .flatMap(option -> best(option).stream())
        .sorted(Comparator.comparing(Candidate::hoped, order))
        .toList();
  }

  private Optional<Candidate> best(SegmentOption option) {
    return IntStream.rangeClosed(0, MOST_LEFT_OUT)
        .filter(left -> left < option.perSheet() && !listener.stopped())
        .boxed()
        .flatMap(left -> with(option, left).stream())
        .min(Comparator.comparingInt(Candidate::pieces));
  }

  /** Sheets of as many large pieces as fit, less some, filled up with small ones. */
  private List<Candidate> with(SegmentOption option, int leftOut) {
    List<Candidate> found = new ArrayList<>();
    int sheets = option.plan().purchase().sheets() - 1;
    Layout large = first(option.fill().orElseThrow().layout(), leftOut);
    int count = sheets * large.placements().size() / designs.layers();
    double missing = designs.turns() * 360 - count * option.angle().degrees();
    for (double degrees : SMALLER) {
      Angle angle = Angle.ofDegrees(degrees);
      if (missing > 0 && degrees <= MOST_SHARE * option.angle().degrees()) {
        int wanted = (int) Math.ceil(missing / degrees - 1e-9);
        int needed = (wanted * designs.layers() + sheets - 1) / sheets;
        if (fits(large, angle, needed)) {
          found.add(
              new Candidate(option, Division.mixed(count, option.angle(), angle), count + wanted));
        }
      }
    }
    return found;
  }

  private boolean fits(Layout large, Angle small, int needed) {
    Piece piece;
    try {
      piece = designs.segment(small);
    } catch (IllegalArgumentException impossible) {
      return false;
    }
    SearchSettings quick = designs.job().search().at(Effort.QUICK);
    Packer packer = packers.of(large.sheet(), large.cutting(), quick);
    Piece other = new Piece("small", piece.name(), piece.shape(), piece.grain(), piece.thickness());
    Layout filled =
        packer.fillUp(large, List.of(new Demand(other, needed)), listener.silent()).layout();
    return filled.placements().size() - large.placements().size() == needed;
  }

  private static Layout first(Layout layout, int leftOut) {
    int kept = layout.placements().size() - leftOut;
    return new Layout(layout.sheet(), layout.cutting(), layout.placements().subList(0, kept));
  }
}
