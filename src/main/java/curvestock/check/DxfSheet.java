package curvestock.check;

import curvestock.check.DxfFile.Note;
import curvestock.geometry.Point;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A drawing read from DXF. Its outlines bear no names; a list at its head may give them some. */
final class DxfSheet implements Drawing {

  /** A listed piece has its point on its outline within this, in millimetres. */
  private static final double ON_OUTLINE = 0.01;

  private static final double INCH = 25.4;

  private final DxfFile file;

  private DxfSheet(DxfFile file) {
    this.file = file;
  }

  /** A file that says no unit is in the one in which its sheet is as large as the one expected. */
  static DxfSheet read(String text, SheetStock sheet) throws CheckException {
    DxfFile file = DxfReader.read(text);
    if (!file.unitSaid() && !file.sheet().isEmpty()) {
      DxfFile inches = DxfReader.read(text, INCH);
      if (offBy(inches, sheet) < offBy(file, sheet)) {
        file = inches;
      }
    }
    return new DxfSheet(file);
  }

  private static double offBy(DxfFile file, SheetStock sheet) {
    Bounds wanted = Bounds.of(TraceShape.of(sheet.outline()).edges());
    return file.sheet().stream()
        .map(chain -> Bounds.of(chain.edges()))
        .mapToDouble(
            drawn ->
                Math.abs(drawn.right() - wanted.right()) + Math.abs(drawn.top() - wanted.top()))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  @Override
  public DrawingKind kind() {
    return DrawingKind.DXF;
  }

  @Override
  public Optional<CutForm> form() {
    return file.form();
  }

  @Override
  public List<Finding> oddities() {
    return file.oddities();
  }

  @Override
  public List<Lines> sheetEdges() {
    return file.sheet().stream().<Lines>map(chain -> () -> List.of(chain)).toList();
  }

  @Override
  public List<Cut> cuts(CutForm form, Findings findings) {
    DxfPieces.Sorted sorted =
        DxfPieces.of(file.cuts(), form, file.notes().stream().map(Note::at).toList());
    IdentityHashMap<DxfPieces.Drawn, List<Chain>> drilled = drilled(sorted.pieces(), findings);
    sorted.faults().forEach(fault -> findings.add(Finding.Kind.SHAPE, fault));
    IdentityHashMap<DxfPieces.Drawn, Note> names = names(sorted.pieces());
    List<Cut> cuts = new ArrayList<>();
    for (DxfPieces.Drawn piece : sorted.pieces()) {
      Optional<Note> note = Optional.ofNullable(names.get(piece));
      cuts.add(
          new Cut(
              note.map(Note::name).orElseGet(() -> place(piece)),
              note.map(Note::id),
              piece::chains,
              drilled.getOrDefault(piece, List.of()),
              piece.doubled()));
    }
    findings.addAll(notDrawn(names.values()));
    return cuts;
  }

  /** The holes of each piece: those that lie in it and in no smaller one. */
  private IdentityHashMap<DxfPieces.Drawn, List<Chain>> drilled(
      List<DxfPieces.Drawn> pieces, Findings findings) {
    IdentityHashMap<DxfPieces.Drawn, List<Chain>> drilled = new IdentityHashMap<>();
    if (isUnderside()) {
      return drilled;
    }
    for (DxfFile.Hole hole : file.drilled()) {
      DrilledHole.check(hole.rim(), hole.diameter(), findings);
      Point at = hole.rim().start();
      Optional<DxfPieces.Drawn> around =
          pieces.stream()
              .filter(piece -> Bounds.of(outside(piece).edges()).holds(at, 0))
              .filter(piece -> outside(piece).windings(at) != 0)
              .min(Comparator.comparingDouble(piece -> Math.abs(outside(piece).area())));
      if (around.isEmpty()) {
        findings.add(
            Finding.Kind.STRUCTURE, "a hole at " + Shown.place(at) + " is drilled in no piece");
      } else {
        drilled.computeIfAbsent(around.get(), key -> new ArrayList<>()).add(hole.rim());
      }
    }
    return drilled;
  }

  private static TraceLoop outside(DxfPieces.Drawn piece) {
    return new TraceLoop(piece.chains().get(0).edges());
  }

  @Override
  public List<DrawnPocket> pockets() {
    List<DrawnPocket> pockets = new ArrayList<>();
    for (DxfFile.Cleared each : file.pockets()) {
      String side = each.fromAbove() ? "pocket-top" : "pocket-bottom";
      String name = side + " near " + Shown.place(each.edge().start());
      pockets.add(
          new DrawnPocket(name, each.fromAbove(), each.depth(), () -> List.of(each.edge())));
    }
    return pockets;
  }

  @Override
  public List<Chain> drilled() {
    return file.drilled().stream().map(DxfFile.Hole::rim).toList();
  }

  @Override
  public boolean isUnderside() {
    return file.cuts().isEmpty() && file.pockets().stream().anyMatch(each -> !each.fromAbove());
  }

  private static String place(DxfPieces.Drawn piece) {
    return "piece near " + Shown.place(piece.chains().get(0).edges().get(0).at(0.5));
  }

  /**
   * By the piece itself, since doubled pieces are equal. The point of a note may lie on two pieces
   * that share a cut, so a piece gives its note up where another can have none else (augmenting
   * paths, Kuhn 1955).
   */
  private IdentityHashMap<DxfPieces.Drawn, Note> names(List<DxfPieces.Drawn> pieces) {
    IdentityHashMap<DxfPieces.Drawn, Note> names = new IdentityHashMap<>();
    for (Note note : file.notes()) {
      name(note, pieces, names, Collections.newSetFromMap(new IdentityHashMap<>()));
    }
    return names;
  }

  private static boolean name(
      Note note,
      List<DxfPieces.Drawn> pieces,
      IdentityHashMap<DxfPieces.Drawn, Note> names,
      Set<DxfPieces.Drawn> tried) {
    for (DxfPieces.Drawn piece : pieces) {
      if (!tried.contains(piece) && goesThrough(piece, note)) {
        tried.add(piece);
        if (!names.containsKey(piece) || name(names.get(piece), pieces, names, tried)) {
          names.put(piece, note);
          return true;
        }
      }
    }
    return false;
  }

  private static boolean goesThrough(DxfPieces.Drawn piece, Note note) {
    List<Trace> edges = piece.chains().get(0).edges();
    return Bounds.of(edges).holds(note.at(), ON_OUTLINE)
        && edges.stream().anyMatch(edge -> edge.distanceTo(note.at()) <= ON_OUTLINE);
  }

  @Override
  public List<Chain> cutLines() {
    return file.cuts();
  }

  @Override
  public List<Mark> marks() {
    List<Mark> marks = new ArrayList<>(file.marks());
    file.sheet().forEach(chain -> marks.add(Mark.drawn("sheet", List.of(chain))));
    return marks;
  }

  private List<Finding> notDrawn(Collection<Note> drawn) {
    return file.notes().stream()
        .filter(note -> !drawn.contains(note))
        .map(
            note ->
                Finding.of(
                    Finding.Kind.COUNT,
                    note.name()
                        + " ("
                        + note.id()
                        + ") is listed at the head of the file, but is not cut at "
                        + Shown.place(note.at()),
                    note.name()))
        .toList();
  }
}
