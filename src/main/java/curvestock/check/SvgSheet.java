package curvestock.check;

import curvestock.geometry.Point;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** A drawing read from SVG. */
final class SvgSheet implements Drawing {

  /** A drawing for a machine is as large as its sheet within this; others are larger by 40 mm. */
  private static final double AS_LARGE = 15;

  /** Capitals stand 0.72 of the font size high; their middle is what lies on the piece. */
  private static final double TO_MIDDLE = 0.36;

  private final DrawingFile file;
  private final TraceShape sheet;
  private final double top;
  private final Optional<CutForm> form;

  private SvgSheet(DrawingFile file, SheetStock sheet) throws CheckException {
    this.file = file;
    this.sheet = TraceShape.of(sheet.outline());
    // The drawing's rule: SVG y = top of the sheet's bounding box − sheet y.
    top = this.sheet.edges().isEmpty() ? 0 : topOf(this.sheet);
    form = file.form().isEmpty() ? Optional.empty() : Optional.of(CutForm.parse(file.form()));
  }

  static SvgSheet read(String text, SheetStock sheet) throws CheckException {
    return new SvgSheet(DrawingReader.read(text), sheet);
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

  @Override
  public DrawingKind kind() {
    Bounds bounds = Bounds.of(sheet.edges());
    boolean asLarge =
        DrawingScale.size(file.viewBox())
            .filter(size -> Math.abs(size[0] - (bounds.right() - bounds.left())) < AS_LARGE)
            .filter(size -> Math.abs(size[1] - (bounds.top() - bounds.bottom())) < AS_LARGE)
            .isPresent();
    return form.isPresent() || asLarge || isUnderside()
        ? DrawingKind.MACHINE_SVG
        : DrawingKind.ANNOTATED;
  }

  @Override
  public Optional<CutForm> form() {
    return form;
  }

  @Override
  public List<Finding> oddities() {
    Findings findings = new Findings();
    findings.addAll(file.oddities());
    DrawingScale.judge(file.width(), file.height(), file.viewBox(), findings);
    return findings.list();
  }

  @Override
  public List<Lines> sheetEdges() {
    return file.sheetEdge().map(data -> List.of(lines(List.of(data)))).orElse(List.of());
  }

  private Lines lines(List<String> paths) {
    return () -> {
      List<Chain> chains = new ArrayList<>();
      for (String data : paths) {
        chains.addAll(PathReader.read(data, top));
      }
      return chains;
    };
  }

  @Override
  public List<Cut> cuts(CutForm as, Findings findings) {
    Map<String, List<Chain>> drilled = drilled(findings);
    List<Cut> cuts =
        file.outlines().stream()
            .map(
                path ->
                    new Cut(
                        path.name(),
                        Optional.of(path.piece()),
                        lines(path.data()),
                        Optional.ofNullable(drilled.remove(path.name())).orElse(List.of()),
                        false))
            .toList();
    drilled
        .keySet()
        .forEach(
            owner ->
                findings.add(
                    Finding.Kind.STRUCTURE,
                    "a hole is drilled in "
                        + (owner.isEmpty() ? "no piece" : owner + ", which is not drawn")));
    return cuts;
  }

  /** The holes of each piece; each must be as large as the drawing says. */
  private Map<String, List<Chain>> drilled(Findings findings) {
    Map<String, List<Chain>> drilled = new TreeMap<>();
    for (DrawingFile.HolePath hole : file.drilled()) {
      try {
        for (Chain chain : PathReader.read(hole.data(), top)) {
          DrilledHole.check(chain, number(hole.diameter()), findings);
          drilled.computeIfAbsent(hole.owner(), key -> new ArrayList<>()).add(chain);
        }
      } catch (CheckException e) {
        findings.add(Finding.Kind.SHAPE, "a hole to be drilled: " + e.getMessage());
      }
    }
    return drilled;
  }

  private static OptionalDouble number(String text) {
    try {
      return OptionalDouble.of(Double.parseDouble(text));
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }

  @Override
  public List<DrawnPocket> pockets() {
    return file.pockets().stream()
        .map(
            path ->
                new DrawnPocket(
                    path.name(),
                    path.fromAbove(),
                    number(path.depth()),
                    lines(List.of(path.data()))))
        .toList();
  }

  @Override
  public List<Chain> drilled() {
    List<Chain> rims = new ArrayList<>();
    for (DrawingFile.HolePath hole : file.drilled()) {
      try {
        rims.addAll(PathReader.read(hole.data(), top));
      } catch (CheckException e) {
        // Judged where the holes of pieces are.
      }
    }
    return rims;
  }

  @Override
  public boolean isUnderside() {
    return file.isUnderside();
  }

  @Override
  public List<Chain> cutLines() {
    List<Chain> lines = new ArrayList<>();
    for (DrawingFile.OutlinePath path : file.outlines()) {
      try {
        lines.addAll(lines(path.data()).chains());
      } catch (CheckException e) {
        // It is noted when the piece itself is read.
      }
    }
    return lines;
  }

  @Override
  public List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    for (DrawingFile.OtherPath path : file.others()) {
      if (path.group().equals("label") && kind() == DrawingKind.ANNOTATED) {
        // Bars and frames of the title block.
        continue;
      }
      try {
        marks.add(Mark.drawn(path.group(), PathReader.read(path.data(), top)));
      } catch (CheckException e) {
        // A curve that is not ours is no mark of ours, and no outline either.
      }
    }
    for (DrawingFile.Written text : file.texts()) {
      double up = text.centred() ? TO_MIDDLE * text.size() : 0;
      Point at = new Point(text.x(), top - text.y() + up);
      boolean isOfTheSheet = kind() == DrawingKind.MACHINE_SVG || sheet.holds(at);
      if (!isOnRemnant(text)) {
        marks.add(Mark.written(isOfTheSheet ? "label" : "title", at, text.bold()));
      }
    }
    return marks;
  }

  private boolean isOnRemnant(DrawingFile.Written text) {
    return file.remnant()
        .filter(rest -> text.x() >= rest.x() && text.x() <= rest.x() + rest.width())
        .filter(rest -> text.y() >= rest.y() && text.y() <= rest.y() + rest.height())
        .isPresent();
  }
}
