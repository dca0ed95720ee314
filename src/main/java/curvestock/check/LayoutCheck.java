package curvestock.check;

import curvestock.check.Finding.Kind;
import curvestock.piece.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Judges a written drawing by what was ordered: that every outline is its nominal shape, that gaps,
 * margin, defects and grain are respected, and that nothing is missing or too many.
 *
 * <p>Exact but for two stated tolerances: {@link #SHAPE_TOLERANCE} and {@link #ROUNDING}.
 */
public final class LayoutCheck {

  /** An outline may stray this far from its nominal shape: about 0.001 in, in millimetres. */
  public static final double SHAPE_TOLERANCE = 0.02;

  /**
   * How far a gap may fall short because the file's numbers have four decimals, in millimetres.
   *
   * <p>Each coordinate is off by at most 0.00005, an end point by e = 0.00005·√2. An arc of at most
   * 90° moves with its ends by e, its sagitta s = r − √(r² − h²) changes with the half chord h by
   * at most e·tan 45°, and with the radius by 0.00005·(1/cos 45° − 1): 0.00017 in all. Two
   * outlines: 0.00034.
   */
  public static final double ROUNDING = 0.0005;

  private final Expectation expectation;
  private final Findings findings = new Findings();
  private final List<DrawnPiece> pieces = new ArrayList<>();
  private final Map<String, Integer> counts = new TreeMap<>();
  private final TraceShape sheet;
  private final double top;
  private double worstShapeError;

  private LayoutCheck(Expectation expectation) {
    this.expectation = expectation;
    sheet = TraceShape.of(expectation.sheet().outline());
    // The drawing's rule: SVG y = top of the sheet's bounding box − sheet y.
    top = sheet.edges().isEmpty() ? 0 : topOf(sheet);
  }

  /**
   * Judges a drawing.
   *
   * @param svg the text of the file
   * @throws CheckException if the text is not a drawing that can be judged; the message says why
   */
  public static CheckReport check(String svg, Expectation expectation) throws CheckException {
    return new LayoutCheck(expectation).run(svg);
  }

  private CheckReport run(String svg) throws CheckException {
    DrawingFile file = DrawingReader.read(svg);
    findings.addAll(file.oddities());
    DrawingScale.judge(file, findings);
    checkSheetEdge(file);
    for (DrawingFile.OutlinePath path : file.outlines()) {
      read(path);
    }
    checkCounts();
    SpacingCheck spacing = new SpacingCheck(expectation, sheet, pieces, findings);
    spacing.run();
    return new CheckReport(
        findings.list(), counts, spacing.leastGap(), spacing.leastMargin(), worstShapeError);
  }

  private static double topOf(TraceShape shape) {
    // Sheets may have round edges: the topmost point of each arc counts.
    double top = Double.NEGATIVE_INFINITY;
    for (Trace edge : shape.edges()) {
      top = Math.max(top, Math.max(edge.start().y(), edge.end().y()));
      if (edge instanceof Trace.Round round) {
        double up = (Math.PI / 2 - round.first()) * Math.signum(round.sweep());
        up -= 2 * Math.PI * Math.floor(up / (2 * Math.PI));
        if (up <= Math.abs(round.sweep())) {
          top = Math.max(top, round.centre().y() + round.radius());
        }
      }
    }
    return top;
  }

  private void checkSheetEdge(DrawingFile file) {
    if (file.sheetEdge().isEmpty()) {
      findings.add(Kind.SHEET, "the sheet's edge (path 'edge' in group 'sheet') is not drawn");
      return;
    }
    try {
      TraceShape drawn = TraceShape.of(PathReader.read(file.sheetEdge().get(), top));
      boolean same =
          Congruence.errorInPlace(sheet, drawn).orElse(Double.POSITIVE_INFINITY) <= SHAPE_TOLERANCE;
      if (!same) {
        findings.add(
            Kind.SHEET,
            "the sheet's edge as drawn is not that of "
                + expectation.sheet().name()
                + ", in size or place");
      }
    } catch (CheckException e) {
      findings.add(Kind.SHEET, "the sheet's edge: " + e.getMessage());
    }
  }

  private void read(DrawingFile.OutlinePath path) {
    if (findings.isFull()) {
      return;
    }
    Optional<Piece> piece = expectation.piece(path.piece());
    if (piece.isEmpty()) {
      findings.add(
          Kind.UNKNOWN_PIECE,
          path.name() + " is marked as piece '" + path.piece() + "', which was not asked for",
          path.name());
    } else {
      counts.merge(path.piece(), 1, Integer::sum);
    }
    try {
      TraceShape shape = TraceShape.of(PathReader.read(path.data(), top));
      DrawnPiece drawn = DrawnPiece.of(path.name(), piece, shape);
      if (drawn.inside().isValid()) {
        pieces.add(drawn);
        piece.ifPresent(p -> checkShape(drawn, p));
      } else {
        findings.add(
            Kind.SHAPE,
            drawn.called() + ": the outline crosses itself or encloses no area",
            drawn.name());
      }
    } catch (CheckException e) {
      findings.add(Kind.SHAPE, path.name() + ": " + e.getMessage(), path.name());
    }
  }

  private void checkShape(DrawnPiece drawn, Piece piece) {
    List<Congruence.Fit> fits =
        Congruence.fits(TraceShape.of(piece.shape().outline()), drawn.shape());
    double error =
        fits.stream().mapToDouble(Congruence.Fit::error).min().orElse(Double.POSITIVE_INFINITY);
    if (error > SHAPE_TOLERANCE) {
      String why =
          Double.isInfinite(error)
              ? "its lines and arcs are not those of the piece"
              : "it is off by "
                  + millimetres(error)
                  + " after the best fit, at most "
                  + millimetres(SHAPE_TOLERANCE)
                  + " is allowed";
      findings.add(
          Kind.SHAPE,
          drawn.called() + ": the outline is not the nominal shape: " + why,
          drawn.name());
      return;
    }
    worstShapeError = Math.max(worstShapeError, error);
    double grain = expectation.sheet().grain().radians();
    boolean allowed =
        fits.stream()
            .filter(fit -> fit.error() <= SHAPE_TOLERANCE)
            .anyMatch(
                fit ->
                    fit.rotation().isEmpty()
                        || piece.grain().allows(fit.rotation().getAsDouble(), grain));
    if (!allowed) {
      findings.add(
          Kind.GRAIN,
          drawn.called()
              + " is turned so that the face grain runs more than "
              + piece.grain().within()
              + " off the direction it asks for",
          drawn.name());
    }
  }

  private void checkCounts() {
    if (expectation.counts().isEmpty()) {
      return;
    }
    Map<String, Integer> wanted = expectation.counts().get();
    for (Piece piece : expectation.pieces()) {
      int found = counts.getOrDefault(piece.id(), 0);
      int asked = wanted.getOrDefault(piece.id(), 0);
      if (found != asked) {
        findings.add(
            Kind.COUNT,
            "piece " + piece.id() + " is drawn " + found + " times, but " + asked + " were asked");
      }
    }
  }

  static String millimetres(double value) {
    return String.format(Locale.ROOT, "%.4f mm", value);
  }
}
