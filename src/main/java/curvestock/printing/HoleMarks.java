package curvestock.printing;

import curvestock.geometry.Point;
import curvestock.handwork.PieceMarks;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Where the holes of a kind of pieces are drilled. */
final class HoleMarks {

  /** Holes of a single piece in one table. */
  private static final int HOLES_A_TABLE = 6;

  /** Distances from corners to a row. */
  private static final int ACROSS = 4;

  private final PageFlow flow;
  private final Ruler ruler;

  HoleMarks(PageFlow flow, Ruler ruler) {
    this.flow = flow;
    this.ruler = ruler;
  }

  /**
   * The diameter of the holes; of a single piece where each hole lies on the sheet; of several
   * alike ones how far each lies from two corners, which holds for all of them.
   */
  void write(List<PieceMarks> same, List<String> labels) {
    PieceMarks first = same.get(0);
    int count = first.holes().size();
    if (count > 0) {
      flow.lead(diameters(first));
    }
    if (count > 0 && same.size() > 1) {
      flow.lead(
          "The holes are the same on all "
              + same.size()
              + " pieces: strike the two distances from the marked corners; the hole is where the arcs"
              + " cross on the piece.");
      List<Integer> all = IntStream.range(0, first.corners().size()).boxed().toList();
      grid(
          "Hole",
          IntStream.range(0, count)
              .mapToObj(
                  i -> struck(first, Integer.toString(i + 1), first.holes().get(i).centre(), all))
              .toList());
      return;
    }
    for (int from = 0; from < count; from += HOLES_A_TABLE) {
      int to = Math.min(count, from + HOLES_A_TABLE);
      List<String> head = new ArrayList<>(List.of("Piece"));
      for (int i = from; i < to; i++) {
        head.add("hole " + (i + 1) + " x (" + ruler.unit() + ")");
        head.add("y (" + ruler.unit() + ")");
      }
      List<String> row = new ArrayList<>(List.of(labels.get(first.index())));
      first.holes().subList(from, to).forEach(hole -> add(row, hole.centre()));
      flow.grid(head, List.of(row));
    }
  }

  /** Which holes have which only where they differ. */
  private String diameters(PieceMarks mark) {
    Map<Length, List<String>> numbers = new TreeMap<>();
    for (int i = 0; i < mark.holes().size(); i++) {
      numbers
          .computeIfAbsent(mark.holes().get(i).diameter(), any -> new ArrayList<>())
          .add(Integer.toString(i + 1));
    }
    boolean alike = numbers.size() == 1;
    List<String> told = new ArrayList<>();
    numbers.forEach(
        (diameter, those) ->
            told.add(
                ruler.given(diameter) + (alike ? "" : " for hole " + String.join(", ", those))));
    return "Hole diameter: " + String.join("; ", told) + ".";
  }

  /** The corners that a table of places leaves out, by their distances from those it has. */
  void otherCorners(PieceMarks mark, List<Integer> placing) {
    flow.lead(
        "The other corners are the same on all pieces of this kind: strike the two distances from corners"
            + " already marked.");
    grid(
        "Corner",
        IntStream.range(0, mark.corners().size())
            .filter(i -> !placing.contains(i))
            .mapToObj(i -> struck(mark, PieceMarks.letter(i), mark.corners().get(i), placing))
            .toList());
  }

  private List<String> struck(PieceMarks mark, String name, Point at, List<Integer> among) {
    PieceMarks.Struck struck = mark.struck(at, among);
    return List.of(name, from(mark, struck.from(), at), from(mark, struck.and(), at));
  }

  private String from(PieceMarks mark, int corner, Point at) {
    return PieceMarks.letter(corner) + " " + ruler.number(at.distance(mark.corners().get(corner)));
  }

  /** Several to a row. */
  private void grid(String what, List<List<String>> entries) {
    int across = Math.min(ACROSS, entries.size());
    List<String> head = new ArrayList<>();
    for (int i = 0; i < across; i++) {
      head.addAll(List.of(what, "from (" + ruler.unit() + ")", "and from"));
    }
    List<List<String>> rows = new ArrayList<>();
    for (int from = 0; from < entries.size(); from += across) {
      List<String> row = new ArrayList<>();
      for (int i = from; i < from + across; i++) {
        row.addAll(i < entries.size() ? entries.get(i) : List.of("", "", ""));
      }
      rows.add(row);
    }
    flow.grid(head, rows);
  }

  private void add(List<String> row, Point point) {
    row.add(ruler.number(point.x()));
    row.add(ruler.number(point.y()));
  }
}
