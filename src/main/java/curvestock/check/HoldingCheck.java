package curvestock.check;

import curvestock.check.Finding.Kind;
import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Judges from the file whether tabs hold every piece once the sheet is cut: {@link Holding}. */
final class HoldingCheck {

  /** Two tabs keep a piece from turning; fewer are needed only where fewer were asked for. */
  private static final int ENOUGH = 2;

  /** A mark beside an outline stands off it by less than this, in millimetres. */
  private static final double BESIDE = 1;

  /** The chord of a gap in an arc is at least so much of its length. */
  private static final double NEARLY = 0.98;

  private final Expectation expectation;
  private final DrawingKind kind;
  private final CutForm form;
  private final List<DrawnPiece> pieces;
  private final Findings findings;
  private final double kerf;

  HoldingCheck(
      Expectation expectation,
      DrawingKind kind,
      CutForm form,
      List<DrawnPiece> pieces,
      Findings findings) {
    this.expectation = expectation;
    this.kind = kind;
    this.form = form;
    this.pieces = pieces;
    this.findings = findings;
    kerf = expectation.cutting().kerf().millimetres();
  }

  /**
   * Notes every piece that comes loose.
   *
   * @param lines of all cuts
   */
  void run(List<Chain> lines, List<Mark> marks) {
    boolean marked = form.tabs() == 0 && expectation.tabs().isPresent();
    if (kind == DrawingKind.ANNOTATED || pieces.isEmpty() || !(marked || form.tabs() > 0)) {
      return;
    }
    int needed = Math.min(ENOUGH, marked ? expectation.tabs().get().count() : form.tabs());
    double tab = marked ? expectation.tabs().get().width().millimetres() : form.tabGap() - kerf;
    Holding holding =
        new Holding(
            TraceShape.of(expectation.sheet().outline()),
            pieces.stream().map(DrawnPiece::shape).toList(),
            kerf,
            tab,
            needed);
    List<Integer> loose =
        !marked && form.grown() > 0
            ? holding.looseAfter(lines.stream().map(Chain::edges).toList())
            : holding.looseBut(marked ? atMarks(marks) : atGaps(lines));
    for (int index : loose) {
      DrawnPiece piece = pieces.get(index);
      findings.add(
          Kind.LOOSE,
          String.format(
              Locale.ROOT,
              "%s hangs on the frame by less than %s: screw it down or tape it before it is cut",
              piece.called(),
              needed == 1 ? "a tab" : needed + " tabs"),
          piece.name());
    }
  }

  /** Where marks propose tabs: a mark between two pieces is for both. */
  private List<List<Holding.Neck>> atMarks(List<Mark> marks) {
    List<Point> ends = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark.group().equals("tab") && !mark.edges().isEmpty()) {
        ends.add(mark.lines().get(0).start());
        ends.add(mark.lines().get(0).end());
      }
    }
    return necks(ends, form.grown() + BESIDE);
  }

  /** Where lines end as far from each other as a tab is long; another program may reorder them. */
  private List<List<Holding.Neck>> atGaps(List<Chain> lines) {
    List<Point> ends = new ArrayList<>();
    for (Chain line : lines) {
      if (!line.closed()) {
        ends.add(line.start());
        ends.add(line.end());
      }
    }
    List<Point> middles = new ArrayList<>();
    for (int i = 0; i < ends.size(); i++) {
      for (Point other : ends.subList(0, i)) {
        double apart = ends.get(i).distance(other);
        if (apart > NEARLY * form.tabGap()
            && apart <= form.tabGap() + LayoutCheck.SHAPE_TOLERANCE) {
          middles.add(ends.get(i).plus(other).times(0.5));
        }
      }
    }
    return necks(middles, BESIDE);
  }

  private List<List<Holding.Neck>> necks(List<Point> points, double within) {
    List<List<Holding.Neck>> necks = new ArrayList<>();
    for (DrawnPiece piece : pieces) {
      List<Holding.Neck> own = new ArrayList<>();
      for (Point point : points) {
        if (piece.bounds().holds(point, within)) {
          nearest(piece.shape().edges(), point, within)
              .ifPresent(edge -> own.add(neck(edge, point)));
        }
      }
      necks.add(own);
    }
    return necks;
  }

  private static Optional<Trace> nearest(List<Trace> edges, Point point, double within) {
    return edges.stream()
        .filter(edge -> edge.distanceTo(point) <= within)
        .min(Comparator.comparingDouble(edge -> edge.distanceTo(point)));
  }

  /** At the foot of the point; loops run with the wood to their left. */
  private static Holding.Neck neck(Trace edge, Point point) {
    if (edge instanceof Trace.Round round) {
      Point from = point.minus(round.centre());
      Point out = from.times(Math.signum(round.sweep()) / from.norm());
      Point at = round.centre().plus(from.times(round.radius() / from.norm()));
      return new Holding.Neck(at, out);
    }
    Point along = edge.startDirection();
    Point out = new Point(along.y(), -along.x());
    double off = point.minus(edge.start()).dot(out);
    return new Holding.Neck(point.minus(out.times(off)), out);
  }
}
