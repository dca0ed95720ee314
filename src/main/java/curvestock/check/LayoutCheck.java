package curvestock.check;

import curvestock.check.Finding.Kind;
import curvestock.piece.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

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
   * Judges a drawing, SVG or DXF.
   *
   * @param drawing the text of the file
   * @throws CheckException if the text is not a drawing that can be judged; the message says why
   */
  public static CheckReport check(String drawing, Expectation expectation) throws CheckException {
    LayoutCheck check = new LayoutCheck(expectation);
    if (drawing.stripLeading().startsWith("<") || drawing.startsWith("\uFEFF")) {
      check.readSvg(DrawingReader.read(drawing));
    } else {
      check.readDxf(DxfReader.read(drawing));
    }
    return check.report();
  }

  private void readSvg(DrawingFile file) throws CheckException {
    findings.addAll(file.oddities());
    DrawingScale.judge(file, findings);
    if (file.sheetEdge().isEmpty()) {
      findings.add(Kind.SHEET, "the sheet's edge (path 'edge' in group 'sheet') is not drawn");
    } else {
      String data = file.sheetEdge().get();
      checkSheetEdge(() -> PathReader.read(data, top));
    }
    FinishedSize form = finishedSize(CutForm.parse(file.form()));
    for (DrawingFile.OutlinePath path : file.outlines()) {
      if (!findings.isFull()) {
        Optional<Piece> piece = expectation.piece(path.piece());
        if (piece.isEmpty()) {
          findings.add(
              Kind.UNKNOWN_PIECE,
              path.name() + " is marked as piece '" + path.piece() + "', which was not asked for",
              path.name());
        }
        read(path.name(), piece, () -> form.of(chains(path)));
      }
    }
  }

  private List<Chain> chains(DrawingFile.OutlinePath path) throws CheckException {
    List<Chain> chains = new ArrayList<>();
    for (String data : path.data()) {
      chains.addAll(PathReader.read(data, top));
    }
    return chains;
  }

  /** A DXF names no pieces: each is taken for the first of its shape of which one is still due. */
  private void readDxf(DxfFile file) throws CheckException {
    findings.addAll(file.oddities());
    if (file.sheet().isEmpty()) {
      findings.add(Kind.SHEET, "the sheet's edge (first line of layer SHEET) is not drawn");
    } else {
      checkSheetEdge(() -> file.sheet().subList(0, 1));
    }
    FinishedSize form = finishedSize(file.form());
    int number = 0;
    for (List<Chain> chains : outlines(file)) {
      number++;
      if (!findings.isFull()) {
        String name = "outline " + number;
        Shaped shaped = () -> form.of(chains);
        read(name, alike(name, shaped), shaped);
      }
    }
  }

  private List<List<Chain>> outlines(DxfFile file) {
    try {
      return DxfPieces.of(file);
    } catch (CheckException e) {
      findings.add(Kind.SHAPE, e.getMessage());
      return List.of();
    }
  }

  private Optional<Piece> alike(String name, Shaped shaped) {
    TraceShape shape;
    try {
      shape = shaped.shape();
    } catch (CheckException e) {
      return Optional.empty();
    }
    List<Piece> alike =
        expectation.pieces().stream()
            .filter(
                piece ->
                    Congruence.fits(TraceShape.of(piece.shape().outline()), shape).stream()
                        .anyMatch(fit -> fit.error() <= SHAPE_TOLERANCE))
            .toList();
    if (alike.isEmpty()) {
      findings.add(Kind.UNKNOWN_PIECE, name + " has the shape of no piece asked for", name);
    }
    return alike.stream()
        .filter(piece -> counts.getOrDefault(piece.id(), 0) < wanted(piece))
        .findFirst()
        .or(() -> alike.stream().findFirst());
  }

  private int wanted(Piece piece) {
    return expectation
        .counts()
        .map(wanted -> wanted.getOrDefault(piece.id(), 0))
        .orElse(Integer.MAX_VALUE);
  }

  /** Notes a form that was not asked for; the drawing is then judged by what it says of itself. */
  private FinishedSize finishedSize(CutForm form) {
    if (!expectation.forms().contains(form)) {
      findings.add(
          Kind.STRUCTURE,
          "the outlines are said to be "
              + form.words()
              + ", but asked for is "
              + expectation.forms().stream()
                  .map(CutForm::words)
                  .collect(Collectors.joining(" or ")));
    }
    return new FinishedSize(form);
  }

  private CheckReport report() throws CheckException {
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

  private void checkSheetEdge(Drawn edge) {
    try {
      TraceShape drawn = new FinishedSize(CutForm.FINISHED).of(edge.chains());
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

  /** Lines as drawn. */
  private interface Drawn {
    List<Chain> chains() throws CheckException;
  }

  /** A piece's finished shape, by what is drawn. */
  private interface Shaped {
    TraceShape shape() throws CheckException;
  }

  private void read(String name, Optional<Piece> piece, Shaped shaped) {
    piece.ifPresent(known -> counts.merge(known.id(), 1, Integer::sum));
    try {
      DrawnPiece drawn = DrawnPiece.of(name, piece, shaped.shape());
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
      findings.add(Kind.SHAPE, name + ": " + e.getMessage(), name);
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
