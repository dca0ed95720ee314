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
  private final Drawing drawing;
  private final CutForm form;
  private final Findings findings = new Findings();
  private final List<MarkCheck.Placed> pieces = new ArrayList<>();
  private final Map<String, Integer> counts = new TreeMap<>();
  private final TraceShape sheet;
  private SharedLines shared = SharedLines.NONE;
  private double worstShapeError;

  private LayoutCheck(Expectation expectation, Drawing drawing, CutForm form) {
    this.expectation = expectation;
    this.drawing = drawing;
    this.form = form;
    sheet = TraceShape.of(expectation.sheet().outline());
  }

  /**
   * Judges a drawing, SVG or DXF. One that does not say how its outlines differ from the finished
   * size (another program may have dropped the words) is judged by each of the forms expected, and
   * the one that explains it best is taken.
   *
   * @param drawing the text of the file
   * @throws CheckException if the text is not a drawing that can be judged; the message says why
   */
  public static CheckReport check(String drawing, Expectation expectation) throws CheckException {
    Drawing read = Drawing.read(drawing, expectation.sheet());
    List<CutForm> forms =
        read.form().map(List::of).orElseGet(() -> expectation.formsOf(read.kind()));
    Optional<CheckReport> best = Optional.empty();
    for (CutForm form : forms) {
      CheckReport report = new LayoutCheck(expectation, read, form).report();
      if (best.isEmpty() || report.findings().size() < best.get().findings().size()) {
        best = Optional.of(report);
      }
    }
    return best.orElseThrow();
  }

  /**
   * Judges the drawing of a sheet's underside.
   *
   * @param underside the text of the file
   * @param above the text of the file of the same sheet's upper side
   * @throws CheckException if one of them cannot be judged
   */
  public static CheckReport checkUnderside(String underside, String above, Expectation expectation)
      throws CheckException {
    return UndersideCheck.check(underside, above, expectation);
  }

  private CheckReport report() throws CheckException {
    findings.addAll(drawing.oddities());
    checkSheetEdge();
    checkForm();
    List<Drawing.Cut> cuts = readPieces();
    checkCounts(cuts);
    checkPockets();
    List<DrawnPiece> drawn = pieces.stream().map(MarkCheck.Placed::drawn).toList();
    SpacingCheck spacing = new SpacingCheck(expectation, sheet, drawn, findings);
    spacing.run();
    List<Mark> marks = drawing.marks();
    if (pieces.size() == cuts.size()) {
      new HoldingCheck(expectation, drawing.kind(), form, drawn, findings)
          .run(drawing.cutLines(), marks);
    }
    new MarkCheck(expectation, drawing.kind(), form, pieces, marks, findings)
        .run(pieces.size() == cuts.size());
    return new CheckReport(
        drawing.kind(),
        findings.list(),
        counts,
        spacing.leastGap(),
        spacing.leastMargin(),
        worstShapeError,
        marks.stream().anyMatch(mark -> mark.group().equals("label")));
  }

  private List<Drawing.Cut> readPieces() {
    List<Drawing.Cut> cuts = drawing.cuts(form, findings);
    shared = SharedLines.of(drawing.cutLines());
    for (Drawing.Cut cut : cuts) {
      if (!findings.isFull()) {
        read(cut);
      }
    }
    return cuts;
  }

  /** Drawings for people show laps in words. */
  private void checkPockets() throws CheckException {
    if (drawing.kind() == DrawingKind.ANNOTATED) {
      return;
    }
    List<DrawnPocket> above = new ArrayList<>();
    for (DrawnPocket pocket : drawing.pockets()) {
      if (pocket.fromAbove()) {
        above.add(pocket);
      } else {
        findings.add(
            Kind.POCKET,
            pocket.name() + " is cleared from below: it belongs in the file of the underside",
            pocket.name());
      }
    }
    new PocketCheck(expectation, true, pieces, findings).run(above);
  }

  /** The pieces of a drawing where they lie, whatever else is wrong with it. */
  static List<MarkCheck.Placed> pieces(Drawing drawing, Expectation expectation) {
    CutForm form = drawing.form().orElseGet(() -> expectation.formsOf(drawing.kind()).get(0));
    LayoutCheck check = new LayoutCheck(expectation, drawing, form);
    check.readPieces();
    return check.pieces;
  }

  private void checkSheetEdge() {
    Optional<String> fault =
        Optional.of(
            drawing.kind() == DrawingKind.DXF
                ? "the sheet's edge (a closed line on layer SHEET) is not drawn"
                : "the sheet's edge (path 'edge' in group 'sheet') is not drawn");
    for (Drawing.Lines lines : drawing.sheetEdges()) {
      try {
        TraceShape drawn = new FinishedSize(CutForm.FINISHED).of(lines.chains());
        double error = Congruence.errorInPlace(sheet, drawn).orElse(Double.POSITIVE_INFINITY);
        if (error <= SHAPE_TOLERANCE) {
          return;
        }
        fault =
            Optional.of(
                "the sheet's edge as drawn is not that of "
                    + expectation.sheet().name()
                    + ", in size or place");
      } catch (CheckException e) {
        fault = Optional.of("the sheet's edge: " + e.getMessage());
      }
    }
    fault.ifPresent(message -> findings.add(Kind.SHEET, message));
  }

  /** Notes a form that was not asked for; the drawing is then judged by what it says of itself. */
  private void checkForm() {
    List<CutForm> allowed = expectation.formsOf(drawing.kind());
    if (!allowed.contains(form)) {
      findings.add(
          Kind.STRUCTURE,
          "the outlines are said to be "
              + form.words()
              + ", but asked for is "
              + allowed.stream().map(CutForm::words).collect(Collectors.joining(" or ")));
    }
  }

  private void read(Drawing.Cut cut) {
    try {
      List<Chain> chains = cut.lines().chains();
      TraceShape shape = drilled(new FinishedSize(form, shared).of(chains), cut);
      Optional<Piece> piece = piece(cut, Optional.of(shape));
      piece.ifPresent(known -> counts.merge(known.id(), 1, Integer::sum));
      DrawnPiece drawn =
          DrawnPiece.of(cut.name(), expectation.number(cut.name()), piece, shape, outside(chains));
      if (!drawn.inside().isValid()) {
        findings.add(
            Kind.SHAPE,
            drawn.called() + ": the outline crosses itself or encloses no area",
            drawn.name());
        return;
      }
      pieces.add(new MarkCheck.Placed(drawn, piece.map(p -> fits(drawn, p)).orElse(List.of())));
      if (cut.doubled()) {
        findings.add(
            Kind.OVERLAP,
            drawn.called() + " is drawn twice on the same lines and would be cut twice: delete one",
            drawn.name());
      }
    } catch (CheckException e) {
      piece(cut, Optional.empty()).ifPresent(known -> counts.merge(known.id(), 1, Integer::sum));
      findings.add(Kind.SHAPE, cut.name() + ": " + e.getMessage(), cut.name());
    }
  }

  private static TraceShape drilled(TraceShape shape, Drawing.Cut cut) {
    List<TraceLoop> holes = new ArrayList<>(shape.holes());
    cut.drilled().forEach(rim -> holes.add(new TraceLoop(rim.edges()).turned(false)));
    return new TraceShape(shape.outer(), holes);
  }

  private static TraceLoop outside(List<Chain> chains) {
    return TraceShape.of(chains.stream().map(chain -> new TraceLoop(chain.edges())).toList())
        .outer();
  }

  /**
   * What a piece is: as the drawing says, or else the first of its shape of which one is still due.
   */
  private Optional<Piece> piece(Drawing.Cut cut, Optional<TraceShape> shape) {
    Optional<Piece> said = cut.piece().flatMap(expectation::piece);
    if (said.isPresent()) {
      return said;
    }
    if (cut.piece().isPresent() && drawing.kind() != DrawingKind.DXF) {
      findings.add(
          Kind.UNKNOWN_PIECE,
          cut.name() + " is marked as piece '" + cut.piece().get() + "', which was not asked for",
          cut.name());
      return Optional.empty();
    }
    if (shape.isEmpty()) {
      return Optional.empty();
    }
    Optional<Piece> alike = new Alike(expectation, counts).of(shape.get());
    if (alike.isEmpty()) {
      findings.add(
          Kind.UNKNOWN_PIECE, cut.name() + " has the shape of no piece asked for", cut.name());
    }
    return alike;
  }

  private List<Congruence.Fit> fits(DrawnPiece drawn, Piece piece) {
    List<Congruence.Fit> fits =
        Congruence.fits(TraceShape.of(piece.shape().outline()), drawn.shape());
    checkShape(drawn, piece, fits);
    return fits.stream().filter(fit -> fit.error() <= SHAPE_TOLERANCE).toList();
  }

  private void checkShape(DrawnPiece drawn, Piece piece, List<Congruence.Fit> fits) {
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
              + " off the direction that the job gives",
          drawn.name());
    }
  }

  private void checkCounts(List<Drawing.Cut> cuts) {
    if (expectation.counts().isEmpty()) {
      if (cuts.isEmpty()) {
        findings.add(
            Kind.COUNT, "no piece is drawn: the group or layer of cuts has no closed outline");
      }
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
