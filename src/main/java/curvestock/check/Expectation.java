package curvestock.check;

import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a drawing is judged by.
 *
 * @param sheet the sheet it must show
 * @param cutting the gaps and margin that must be kept
 * @param pieces the pieces that may appear
 * @param counts how many of each, by piece id (a piece not named: none); empty if any number may
 * @param forms how the outlines may differ from the finished size; the drawing must say one of them
 * @param tabs the tabs that marks beside whole outlines propose; empty if there are none
 * @param recesses where pieces are to be halved in thickness, by piece id
 * @param toolRadius of the tool that clears them, in millimetres
 * @param numbers on the wood, in the order in which the drawing numbers its pieces; empty if they
 *     are not known
 */
public record Expectation(
    SheetStock sheet,
    Cutting cutting,
    List<Piece> pieces,
    Optional<Map<String, Integer>> counts,
    List<CutForm> forms,
    Optional<MarkedTabs> tabs,
    Map<String, List<Recess>> recesses,
    double toolRadius,
    List<String> numbers) {

  /**
   * Tabs whose places are marked only; the machine's program makes them.
   *
   * @param count to each piece
   */
  public record MarkedTabs(Length width, int count) {}

  /**
   * @throws IllegalArgumentException if two pieces have the same id
   */
  public Expectation {
    pieces = List.copyOf(pieces);
    counts = counts.map(Map::copyOf);
    forms = List.copyOf(forms);
    recesses = Map.copyOf(recesses);
    numbers = List.copyOf(numbers);
    if (pieces.stream().map(Piece::id).distinct().count() != pieces.size()) {
      throw new IllegalArgumentException("pieces must have different ids");
    }
  }

  /** Outlines of the finished size. */
  public Expectation(
      SheetStock sheet,
      Cutting cutting,
      List<Piece> pieces,
      Optional<Map<String, Integer>> counts) {
    this(
        sheet,
        cutting,
        pieces,
        counts,
        List.of(CutForm.FINISHED),
        Optional.empty(),
        Map.of(),
        0,
        List.of());
  }

  /** The same with outlines of one of the given forms. */
  public Expectation in(CutForm... allowed) {
    return new Expectation(
        sheet, cutting, pieces, counts, List.of(allowed), tabs, recesses, toolRadius, numbers);
  }

  /** The same with tabs marked beside the outlines. */
  public Expectation with(Optional<MarkedTabs> marked) {
    return new Expectation(
        sheet, cutting, pieces, counts, forms, marked, recesses, toolRadius, numbers);
  }

  /**
   * The same with pieces halved in thickness.
   *
   * @param areas by piece id
   * @param radius of the tool, in millimetres
   */
  public Expectation with(Map<String, List<Recess>> areas, double radius) {
    return new Expectation(sheet, cutting, pieces, counts, forms, tabs, areas, radius, numbers);
  }

  /** Where a piece is to be cleared from that side. */
  List<Recess> recesses(String piece, boolean fromAbove) {
    return recesses.getOrDefault(piece, List.of()).stream()
        .filter(recess -> recess.fromAbove() == fromAbove)
        .toList();
  }

  /** The same with exactly so many of each piece, by id. */
  public Expectation exactly(Map<String, Integer> wanted) {
    return new Expectation(
        sheet, cutting, pieces, Optional.of(wanted), forms, tabs, recesses, toolRadius, numbers);
  }

  /** The same with the numbers that its pieces bear, so that messages can name them. */
  public Expectation numbered(List<String> onWood) {
    return new Expectation(
        sheet, cutting, pieces, counts, forms, tabs, recesses, toolRadius, onWood);
  }

  /**
   * The number on the wood of an outline, by its name in the file, such as {@code piece-3}; empty
   * if it is not known.
   */
  Optional<String> number(String name) {
    if (!name.matches("piece-[0-9]{1,6}")) {
      return Optional.empty();
    }
    int index = Integer.parseInt(name.substring(name.indexOf('-') + 1)) - 1;
    return index >= 0 && index < numbers.size()
        ? Optional.of(numbers.get(index))
        : Optional.empty();
  }

  /** Exactly the pieces of a layout, wherever they lie. */
  public static Expectation of(Layout layout) {
    Map<String, Integer> counts = new TreeMap<>();
    for (Placement placement : layout.placements()) {
      counts.merge(placement.piece().id(), 1, Integer::sum);
    }
    List<Piece> pieces = layout.placements().stream().map(Placement::piece).distinct().toList();
    return new Expectation(layout.sheet(), layout.cutting(), pieces, Optional.of(counts));
  }

  /** Any number of the given pieces. */
  public static Expectation anyOf(SheetStock sheet, Cutting cutting, List<Piece> pieces) {
    return new Expectation(sheet, cutting, pieces, Optional.empty());
  }

  /**
   * The forms in which a drawing of the kind may be: those for people have the finished size, those
   * for machines the machine's form where both are expected.
   */
  List<CutForm> formsOf(DrawingKind kind) {
    List<CutForm> others =
        forms.stream().filter(form -> !form.equals(CutForm.FINISHED)).distinct().toList();
    if (others.isEmpty() || !forms.contains(CutForm.FINISHED)) {
      return forms.stream().distinct().toList();
    }
    return kind == DrawingKind.ANNOTATED ? List.of(CutForm.FINISHED) : others;
  }

  Optional<Piece> piece(String id) {
    return pieces.stream().filter(piece -> piece.id().equals(id)).findFirst();
  }
}
