package curvestock.check;

import curvestock.check.Finding.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.TopologyException;

/**
 * Judges the areas to be cleared on one side of a sheet: each lap of each piece is cleared whole by
 * a round tool that stays inside the area, no wood beside the laps is touched, be it the piece's
 * own or its neighbours', and the depth is half the thickness.
 *
 * <p>By areas of polygons (JTS), which lie within the drawn ones by at most a thousandth of a
 * millimetre; what is less than {@value LayoutCheck#SHAPE_TOLERANCE} mm off is forgiven.
 */
final class PocketCheck {

  /** Chords in a quarter of the circle that a tool turns about; off by 0.0005 mm at 6 mm. */
  private static final int CHORDS = 64;

  /** Less shared area than this is rounding, in square millimetres. */
  private static final double NOTHING = 0.01;

  /**
   * Depths in the names of layers are rounded to hundredths of a millimetre or thousandths of an
   * inch.
   */
  private static final double DEPTH = 0.02;

  private final Expectation expectation;
  private final boolean fromAbove;
  private final List<MarkCheck.Placed> pieces;
  private final Findings findings;
  private final List<Area> areas = new ArrayList<>();

  /** A drawn area, and what a round tool that stays in it clears. */
  private record Area(DrawnPocket drawn, Polygon whole, Geometry cleared) {}

  PocketCheck(
      Expectation expectation,
      boolean fromAbove,
      List<MarkCheck.Placed> pieces,
      Findings findings) {
    this.expectation = expectation;
    this.fromAbove = fromAbove;
    this.pieces = pieces;
    this.findings = findings;
  }

  /**
   * Judges the areas of this side.
   *
   * @throws CheckException if outlines cross themselves so that areas cannot be told
   */
  void run(List<DrawnPocket> pockets) throws CheckException {
    try {
      for (DrawnPocket pocket : pockets) {
        read(pocket);
      }
      boolean[] used = new boolean[areas.size()];
      List<Geometry> laps = new ArrayList<>();
      for (MarkCheck.Placed piece : pieces) {
        laps.add(judge(piece, used));
      }
      for (int i = 0; i < areas.size() && !findings.isFull(); i++) {
        findGouges(areas.get(i), laps);
        if (!used[i]) {
          findings.add(
              Kind.POCKET,
              areas.get(i).drawn().name() + " clears no lap of any piece: delete it",
              areas.get(i).drawn().name());
        }
      }
    } catch (TopologyException e) {
      throw new CheckException("an area to be cleared crosses itself: " + e.getMessage(), e);
    }
  }

  private void read(DrawnPocket pocket) {
    try {
      List<Chain> chains = pocket.lines().chains();
      if (chains.size() != 1 || !chains.get(0).closed()) {
        throw new CheckException("an area to be cleared must be one closed line");
      }
      TraceShape shape = TraceShape.of(List.of(new TraceLoop(chains.get(0).edges())));
      Polygon whole = OverlayOpinion.inside(shape);
      if (!whole.isValid()) {
        throw new CheckException("the area crosses itself");
      }
      double radius = expectation.toolRadius();
      areas.add(new Area(pocket, whole, whole.buffer(-radius, CHORDS).buffer(radius, CHORDS)));
    } catch (CheckException e) {
      findings.add(Kind.POCKET, pocket.name() + ": " + e.getMessage(), pocket.name());
    }
    checkDepth(pocket);
  }

  private void checkDepth(DrawnPocket pocket) {
    double wanted = expectation.sheet().thickness().millimetres() / 2;
    OptionalDouble said = pocket.depth();
    if (said.isEmpty() || Math.abs(said.getAsDouble() - wanted) > DEPTH) {
      findings.add(
          Kind.POCKET,
          String.format(
              Locale.ROOT,
              "%s is %s, but half the thickness is %.3f mm",
              pocket.name(),
              said.isEmpty()
                  ? "of no stated depth"
                  : String.format(Locale.ROOT, "%.3f mm deep", said.getAsDouble()),
              wanted),
          pocket.name());
    }
  }

  /** Finds the areas for a piece's laps; gives the laps where they lie. */
  private Geometry judge(MarkCheck.Placed piece, boolean[] used) {
    List<Recess> wanted =
        piece.drawn().piece().map(p -> expectation.recesses(p.id(), fromAbove)).orElse(List.of());
    Geometry none = piece.drawn().inside().getFactory().createPolygon();
    if (wanted.isEmpty() || piece.fits().isEmpty()) {
      return none;
    }
    Geometry best = none;
    int least = Integer.MAX_VALUE;
    for (Congruence.Fit fit : piece.fits()) {
      List<Polygon> laps = wanted.stream().map(recess -> placed(recess, fit.move())).toList();
      int missing = (int) laps.stream().filter(lap -> !isCleared(lap)).count();
      if (missing < least) {
        least = missing;
        best = none;
        for (Polygon lap : laps) {
          best = best.union(lap.buffer(LayoutCheck.SHAPE_TOLERANCE, CHORDS));
        }
      }
    }
    if (least > 0) {
      findings.add(
          Kind.POCKET,
          piece.drawn().called()
              + ": "
              + least
              + (least == 1 ? " lap" : " laps")
              + (fromAbove ? " on top" : " below")
              + " would not be cleared whole by a tool "
              + LayoutCheck.millimetres(2 * expectation.toolRadius())
              + " wide",
          piece.drawn().name());
    }
    for (int i = 0; i < areas.size(); i++) {
      Polygon whole = areas.get(i).whole();
      used[i] |=
          whole.getEnvelopeInternal().intersects(best.getEnvelopeInternal())
              && whole.intersection(best).getArea() > NOTHING;
    }
    return best;
  }

  private static Polygon placed(Recess recess, Congruence.Move move) {
    TraceShape nominal = TraceShape.of(recess.area());
    List<Trace> moved = nominal.outer().edges().stream().map(edge -> moved(edge, move)).toList();
    return OverlayOpinion.inside(new TraceShape(new TraceLoop(moved), List.of()));
  }

  private static Trace moved(Trace edge, Congruence.Move move) {
    return edge instanceof Trace.Round round
        ? new Trace.Round(
            move.apply(round.centre()), round.radius(), round.first() + move.angle(), round.sweep())
        : new Trace.Straight(move.apply(edge.start()), move.apply(edge.end()));
  }

  /** Whether one area clears the lap whole. */
  private boolean isCleared(Polygon lap) {
    Geometry core = lap.buffer(-LayoutCheck.SHAPE_TOLERANCE, CHORDS);
    return areas.stream()
        .filter(area -> area.whole().getEnvelopeInternal().intersects(lap.getEnvelopeInternal()))
        .anyMatch(area -> core.difference(area.cleared()).getArea() <= NOTHING);
  }

  /** Wood beside the laps that would be cleared too. */
  private void findGouges(Area area, List<Geometry> laps) {
    for (int i = 0; i < pieces.size(); i++) {
      DrawnPiece piece = pieces.get(i).drawn();
      if (!piece.inside().getEnvelopeInternal().intersects(area.whole().getEnvelopeInternal())) {
        continue;
      }
      double gouged = area.whole().intersection(piece.inside()).difference(laps.get(i)).getArea();
      if (gouged > NOTHING) {
        findings.add(
            Kind.POCKET,
            String.format(
                Locale.ROOT,
                "%s takes %.1f mm² of wood from %s beside its laps",
                area.drawn().name(),
                gouged,
                piece.called()),
            area.drawn().name(),
            piece.name());
      }
    }
  }
}
