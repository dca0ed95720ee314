package curvestock.printing;

import curvestock.handwork.ArcMark;
import curvestock.handwork.ChordOffsets;
import curvestock.handwork.PieceMarks;
import curvestock.piece.Piece;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The shape of each kind of pieces: what to measure from corner to corner, between which corners an
 * edge is swung, and each arc from its chord.
 */
final class ShapeMarks {

  /** Heights in one table. */
  private static final int STATIONS_A_TABLE = 9;

  private static final Length SPACING_INCHES = Length.ofInches(4);
  private static final Length SPACING_METRIC = Length.ofMillimetres(100);

  private final PageFlow flow;
  private final Ruler ruler;
  private final Length spacing;
  private final Map<Piece, Integer> shown = new HashMap<>();
  private final Map<Piece, Integer> pictured = new HashMap<>();

  ShapeMarks(PageFlow flow, LengthStyle style) {
    this.flow = flow;
    this.ruler = Ruler.forHand(style);
    this.spacing = style.unit().isImperial() ? SPACING_INCHES : SPACING_METRIC;
  }

  /** Which letter is which corner, of a piece with too many of them for the sheet's map. */
  void picture(Piece piece, PieceMarks mark, int sheet) {
    int first = pictured.computeIfAbsent(piece, p -> sheet);
    if (first < sheet) {
      flow.lead(
          "%s: the letters are those of its picture under sheet %s.".formatted(piece.id(), first));
      return;
    }
    CornerPicture picture = new CornerPicture(piece.shape().outline());
    flow.flexible(
        picture.aspect(),
        "%s: its corners%s. It shows the side that faces up, as its full-size pattern does."
            .formatted(
                piece.id(), mark.holes().isEmpty() ? "" : ", and its holes by their numbers"),
        picture::draw);
  }

  void write(Piece piece, PieceMarks mark, int sheet) {
    int first = shown.computeIfAbsent(piece, p -> sheet);
    if (first < sheet) {
      flow.paragraph(
          piece.id() + ", " + piece.name() + ": use the measurements under sheet " + first + ".");
      return;
    }
    flow.heading(piece.id() + ", " + piece.name());
    List<String> checks = new ArrayList<>();
    int corners = mark.corners().size();
    for (int i = 0; i < corners; i++) {
      checks.add(distance(mark, i, (i + 1) % corners));
    }
    if (corners <= MarkingSheets.MOST_CORNERS) {
      mark.diagonals().forEach(check -> checks.add(distance(mark, check.from(), check.to())));
    }
    flow.paragraph(
        "Check with a tape, straight from corner to corner: " + String.join(", ", checks) + ".");
    if (!mark.isSwung()) {
      return;
    }
    if (mark.hasStops()) {
      flow.paragraph(stops(mark));
    }
    Map<String, List<ArcMark>> alike = new LinkedHashMap<>();
    for (ArcMark arc : mark.arcs()) {
      String size = ruler.of(arc.radius()) + " " + ruler.of(arc.radius() * arc.sweep());
      alike.computeIfAbsent(size, s -> new ArrayList<>()).add(arc);
    }
    alike.values().forEach(this::chord);
  }

  /** Between which corners each edge is swung; wood of the piece lies beyond. */
  private String stops(PieceMarks mark) {
    Map<String, List<ArcMark>> edges = new LinkedHashMap<>();
    for (ArcMark arc : mark.arcs()) {
      edges.computeIfAbsent(ruler.of(arc.radius()), r -> new ArrayList<>()).add(arc);
    }
    String told =
        edges.entrySet().stream()
            .map(edge -> "at R " + edge.getKey() + " only " + ends(edge.getValue()))
            .collect(Collectors.joining("; "));
    return "Stop each cut of the trammel at the end of its arc, where the piece goes on%s: %s. Saw the straight edges between with the jigsaw."
        .formatted(mark.hasEars() ? " with an ear or straight" : " straight", told);
  }

  private static String ends(List<ArcMark> arcs) {
    return arcs.stream()
        .map(each -> PieceMarks.letter(each.from()) + " to " + PieceMarks.letter(each.to()))
        .collect(Collectors.joining(", "));
  }

  private String distance(PieceMarks mark, int from, int to) {
    return PieceMarks.letter(from)
        + "\u2013"
        + PieceMarks.letter(to)
        + "\u00A0"
        + ruler.of(mark.corners().get(from).distance(mark.corners().get(to)));
  }

  /** Arcs of one size. */
  private void chord(List<ArcMark> arcs) {
    ArcMark arc = arcs.get(0);
    String what =
        (arcs.size() == 1 ? "Arc " : "Arcs ") + ends(arcs) + ", R " + ruler.of(arc.radius()) + ": ";
    if (arc.sweep() > Math.PI) {
      flow.paragraph(what + "more than half a turn; swing it.");
      return;
    }
    ChordOffsets chord = ChordOffsets.of(arc.radius(), arc.sweep(), spacing.millimetres());
    String found =
        what
            + "chord "
            + ruler.of(chord.chord())
            + ", height at its middle "
            + ruler.of(chord.midHeight());
    List<ChordOffsets.Offset> offsets = chord.offsets();
    if (offsets.isEmpty()) {
      flow.paragraph(found + ".");
      return;
    }
    if (offsets.size() == 1) {
      flow.paragraph(
          "%s, and %s both ways from there %s."
              .formatted(
                  found, ruler.of(offsets.get(0).station()), ruler.of(offsets.get(0).height())));
      return;
    }
    flow.lead(
        found
            + ". Draw the chord straight from corner to corner. Go these distances both ways from its middle;"
            + " at each mark measure square out to the arc:");
    for (int from = 0; from < offsets.size(); from += STATIONS_A_TABLE) {
      heights(offsets.subList(from, Math.min(offsets.size(), from + STATIONS_A_TABLE)));
    }
  }

  private void heights(List<ChordOffsets.Offset> offsets) {
    List<String> head = new ArrayList<>(List.of("along the chord (" + ruler.unit() + ")"));
    List<String> row = new ArrayList<>(List.of("out to the arc (" + ruler.unit() + ")"));
    for (ChordOffsets.Offset offset : offsets) {
      head.add(ruler.number(offset.station()));
      row.add(ruler.number(offset.height()));
    }
    flow.grid(head, List.of(row));
  }
}
