package curvestock.check;

import curvestock.check.CheckReport.Measure;
import curvestock.check.Finding.Kind;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/** Judges where the pieces lie: distance from the edge, from defects and from each other. */
final class SpacingCheck {

  /** Gaps larger than the spacing by this are not measured. */
  private static final double OF_INTEREST = 50;

  /** Some seconds of work; a full sheet of small pieces takes less than a hundredth. */
  private static final long MOST_EDGE_PAIRS = 20_000_000;

  private final Expectation expectation;
  private final TraceShape sheet;
  private final Polygon sheetInside;
  private final List<DrawnPiece> pieces;
  private final Findings findings;
  private long edgePairs;
  private Optional<Measure> leastGap = Optional.empty();
  private Optional<Measure> leastMargin = Optional.empty();

  SpacingCheck(
      Expectation expectation, TraceShape sheet, List<DrawnPiece> pieces, Findings findings) {
    this.expectation = expectation;
    this.sheet = sheet;
    this.pieces = pieces;
    this.findings = findings;
    sheetInside = OverlayOpinion.inside(sheet);
  }

  void run() throws CheckException {
    checkMargins();
    checkDefects();
    checkGaps();
  }

  Optional<Measure> leastGap() {
    return leastGap;
  }

  Optional<Measure> leastMargin() {
    return leastMargin;
  }

  private void checkMargins() throws CheckException {
    double margin = expectation.cutting().margin().millimetres();
    for (DrawnPiece piece : pieces) {
      if (findings.isFull()) {
        return;
      }
      double ceiling =
          Math.max(margin, leastMargin.map(Measure::millimetres).orElse(Double.MAX_VALUE));
      GapMeasure.Gap gap = GapMeasure.between(piece.shape().edges(), sheet.edges(), ceiling);
      double outside = areaOutsideSheet(piece);
      // A point on the edge itself is neither inside nor outside: then the area decides.
      boolean off = gap.distance() > LayoutCheck.ROUNDING && !sheet.holds(aPointOf(piece));
      boolean over = off || outside > slackArea(piece);
      double distance = over ? -gap.distance() : gap.distance();
      if (leastMargin.isEmpty() || distance < leastMargin.get().millimetres()) {
        leastMargin = Optional.of(new Measure(distance, piece.called() + " to the sheet's edge"));
      }
      if (over) {
        findings.add(
            Kind.MARGIN,
            String.format(
                Locale.ROOT,
                "%s reaches over the sheet's edge near %s: %.2f mm² lie outside",
                piece.called(),
                Shown.place(aPointOf(piece)),
                outside),
            piece.name());
      } else if (tooClose(distance, margin)) {
        findings.add(
            Kind.MARGIN,
            piece.called()
                + " is "
                + LayoutCheck.millimetres(distance)
                + " from the sheet's edge near "
                + Shown.place(gap.at())
                + ", at least "
                + LayoutCheck.millimetres(margin)
                + " is asked",
            piece.name());
      }
    }
  }

  private double areaOutsideSheet(DrawnPiece piece) throws CheckException {
    return OverlayOpinion.areaOutside(piece.inside(), sheetInside);
  }

  /** An overlap no deeper than the rounding, along the whole outline, still counts as touching. */
  private static double slackArea(DrawnPiece piece) {
    return LayoutCheck.ROUNDING * piece.shape().length();
  }

  private static Point aPointOf(DrawnPiece piece) {
    return piece.shape().outer().edges().get(0).at(0.5);
  }

  private void checkDefects() throws CheckException {
    double spacing = expectation.cutting().spacing().millimetres();
    int number = 0;
    for (Outline outline : expectation.sheet().defects()) {
      number++;
      TraceShape shape = TraceShape.of(outline);
      DrawnPiece defect =
          DrawnPiece.of(
              "defect " + number, Optional.empty(), Optional.empty(), shape, shape.outer());
      for (DrawnPiece piece : pieces) {
        if (findings.isFull()) {
          return;
        }
        GapMeasure.Gap gap = gap(piece, defect, spacing);
        double shared = OverlayOpinion.sharedArea(piece.inside(), defect.inside());
        if (shared > slackArea(piece) || tooClose(gap.distance(), spacing)) {
          findings.add(
              Kind.DEFECT,
              piece.called()
                  + " is "
                  + LayoutCheck.millimetres(shared > slackArea(piece) ? 0 : gap.distance())
                  + " from "
                  + defect.name()
                  + " of the sheet near "
                  + Shown.place(gap.at())
                  + ", at least "
                  + LayoutCheck.millimetres(spacing)
                  + " is asked",
              piece.name());
        }
      }
    }
  }

  private void checkGaps() throws CheckException {
    double spacing = expectation.cutting().spacing().millimetres();
    for (int i = 0; i < pieces.size(); i++) {
      for (int j = 0; j < i && !findings.isFull(); j++) {
        double least = leastGap.map(Measure::millimetres).orElse(spacing + OF_INTEREST);
        double ceiling = Math.max(spacing, least);
        if (pieces.get(j).bounds().distance(pieces.get(i).bounds()) < ceiling) {
          checkPair(pieces.get(j), pieces.get(i), spacing, ceiling);
        }
      }
    }
  }

  private void checkPair(DrawnPiece a, DrawnPiece b, double spacing, double ceiling)
      throws CheckException {
    GapMeasure.Gap gap = gap(a, b, ceiling);
    if (gap.distance() < ceiling) {
      if (leastGap.isEmpty() || gap.distance() < leastGap.get().millimetres()) {
        leastGap = Optional.of(new Measure(gap.distance(), a.called() + " and " + b.called()));
      }
    }
    double shared = OverlayOpinion.sharedArea(a.inside(), b.inside());
    if (shared > Math.min(slackArea(a), slackArea(b))) {
      findings.add(
          Kind.OVERLAP,
          String.format(
              Locale.ROOT,
              "%s and %s overlap near %s: %.2f mm² belong to both",
              a.called(),
              b.called(),
              Shown.place(gap.at()),
              shared),
          a.name(),
          b.name());
    } else if (tooClose(gap.distance(), spacing)) {
      findings.add(
          Kind.GAP,
          a.called()
              + " and "
              + b.called()
              + " are "
              + LayoutCheck.millimetres(gap.distance())
              + " apart near "
              + Shown.place(gap.at())
              + ", at least "
              + LayoutCheck.millimetres(spacing)
              + " is asked",
          a.name(),
          b.name());
    }
  }

  /** The gap between two shapes' material, up to a ceiling: 0 where one lies in the other. */
  private GapMeasure.Gap gap(DrawnPiece a, DrawnPiece b, double ceiling) throws CheckException {
    edgePairs += (long) a.shape().edges().size() * b.shape().edges().size();
    if (edgePairs > MOST_EDGE_PAIRS) {
      throw new CheckException(
          "the outlines have too many edges to measure all gaps: more than "
              + MOST_EDGE_PAIRS
              + " pairs");
    }
    GapMeasure.Gap gap = GapMeasure.between(a.shape().edges(), b.shape().edges(), ceiling);
    if (a.shape().holds(aPointOf(b))) {
      return new GapMeasure.Gap(0, aPointOf(b));
    }
    return b.shape().holds(aPointOf(a)) ? new GapMeasure.Gap(0, aPointOf(a)) : gap;
  }

  private static boolean tooClose(double measured, double asked) {
    return measured - GapMeasure.ACCURACY < asked - LayoutCheck.ROUNDING;
  }
}
