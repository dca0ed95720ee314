package curvestock.answer;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.handwork.PieceMarks;
import curvestock.helix.build.Lap;
import curvestock.helix.build.LapEnd;
import curvestock.helix.spec.Construction;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.piece.Piece;
import curvestock.plan.MarkedPieces;
import curvestock.plan.Plan;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The half-laps that are cut by hand: where, how long, how deep, from which face, in sentences. */
public final class HalfLapWords {

  private final Plan plan;
  private final Figures figures;

  HalfLapWords(Plan plan) {
    this.plan = plan;
    this.figures = Figures.of(plan.job());
  }

  /** Why angles of pieces are larger than the segment size; empty if they are not. */
  public static Optional<String> added(Job job) {
    return job.structure()
        .filter(order -> order.plan().spec().construction() instanceof Construction.HalfLap)
        .map(
            order ->
                "Each piece is cut a few degrees longer than its share of the turn, to make the half-laps.");
  }

  /** The same in short, after a list of them. */
  static String included(Answer answer) {
    return answer
            .building()
            .filter(helix -> helix.plan().spec().construction() instanceof Construction.HalfLap)
            .isPresent()
        ? " The angles include the half-laps."
        : "";
  }

  /** How deep laps are in wood so thick. */
  static Length depth(Length thickness) {
    return thickness.times(0.5);
  }

  /** Half the thickness; in inches by the nearest 64th as well, as rules are marked. */
  static String depthWords(Length thickness, Figures figures) {
    Length depth = depth(thickness);
    String given = figures.given(depth);
    String fraction = figures.sawn(depth);
    if (fraction.equals(given) || !figures.isImperial()) {
      return given;
    }
    boolean over = depth.compareTo(figures.style().roundSawn(depth)) > 0;
    return "%s, a hair %s %s".formatted(given, over ? "over" : "under", fraction);
  }

  /**
   * The laps of one size on one kind of piece.
   *
   * @param places at which ends and from which faces, corners lettered as on every drawing
   * @param size how long; may differ from one end of a piece to the other
   * @param depth how deep
   */
  public record OfKind(String places, String size, String depth) {}

  /**
   * How laps are cut: each size once, then its kinds, then the depth.
   *
   * @param laps of all sheets or of one
   */
  public static List<String> told(List<OfKind> laps) {
    Map<String, List<OfKind>> alike =
        laps.stream()
            .distinct()
            .collect(Collectors.groupingBy(OfKind::size, LinkedHashMap::new, Collectors.toList()));
    List<String> lines = new ArrayList<>();
    alike.forEach(
        (size, kinds) -> {
          lines.add((alike.size() == 1 ? "Each half-lap is %s." : "Half-laps %s:").formatted(size));
          kinds.stream().map(OfKind::places).distinct().forEach(lines::add);
        });
    laps.stream().map(OfKind::depth).distinct().forEach(lines::add);
    return lines;
  }

  /**
   * Each kind of piece on a sheet that has laps; none if there are no laps.
   *
   * @param sheet from 1
   */
  List<OfKind> ofSheet(int sheet) {
    Layout layout = plan.layouts().get(sheet - 1);
    List<List<Lap>> laps = MarkedPieces.laps(plan, sheet);
    Map<Piece, List<Lap>> kinds = new LinkedHashMap<>();
    for (int i = 0; i < laps.size(); i++) {
      kinds.putIfAbsent(layout.placements().get(i).piece(), laps.get(i));
    }
    String depth =
        "The depth of each half-lap is half of what your own sheet measures: %s, if it is as thick as your job says."
            .formatted(depthWords(layout.sheet().thickness(), figures));
    List<OfKind> told = new ArrayList<>();
    kinds.forEach(
        (piece, ends) ->
            ends.stream()
                .collect(Collectors.groupingBy(this::size, LinkedHashMap::new, Collectors.toList()))
                .forEach((size, same) -> told.add(new OfKind(places(piece, same), size, depth))));
    return told;
  }

  private static String places(Piece piece, List<Lap> laps) {
    return "%s: cut the half-lap%s %s."
        .formatted(
            piece.id(),
            laps.size() == 1 ? "" : "s",
            laps.stream().map(lap -> place(piece, lap)).collect(Collectors.joining(" and ")));
  }

  private static String place(Piece piece, Lap lap) {
    boolean upper = lap.end() == LapEnd.UPPER;
    return "at "
        + face(piece, lap)
        + (upper ? " (upper end) from the top" : " (lower end) from the underside");
  }

  /** The face at the end of the wood, by the letters of its corners. */
  private static String face(Piece piece, Lap lap) {
    Point end = lap.course().get(lap.course().size() - 1).end();
    List<Edge> edges = piece.shape().outline().outer().edges();
    int nearest = 0;
    for (int i = 1; i < edges.size(); i++) {
      if (edges.get(i).distanceTo(end) < edges.get(nearest).distanceTo(end)) {
        nearest = i;
      }
    }
    return PieceMarks.letter(nearest) + "–" + PieceMarks.letter((nearest + 1) % edges.size());
  }

  /** Its length in the middle, and at both edges where these differ. */
  private String size(Lap lap) {
    double middle = length(lap, 0);
    double half = lap.width().millimetres() / 2;
    double one = length(lap, half);
    double other = length(lap, -half);
    String along = figures.given(Length.ofMillimetres(middle)) + " long";
    return Math.abs(one - other) < 0.1
        ? along
        : along
            + " on the centre line ("
            + figures.marked(Length.ofMillimetres(Math.max(one, other)))
            + " at the outer edge, "
            + figures.marked(Length.ofMillimetres(Math.min(one, other)))
            + " at the inner)";
  }

  private static double length(Lap lap, double outwards) {
    return lap.course().stream().mapToDouble(edge -> length(edge, outwards)).sum();
  }

  private static double length(Edge edge, double outwards) {
    return edge instanceof Arc arc
        ? Math.abs(arc.sweep()) * (arc.radius() + outwards)
        : edge.length();
  }

  /** How laps are cut by hand, and when. */
  public static final List<String> BY_HAND =
      List.of(
          "The letters (A, B and so on) are the corners on the patterns and the marking-out sheets. Cut"
              + " this way, each piece rests on the piece before it.",
          "Cut the half-laps last, on the finished piece, if you cut by hand. Clamp it flat on scrap"
              + " with the face you are cutting facing up. Measure the lap from the end of the piece along both edges, mark it there, and join the marks with a straight line: that is the shoulder. Run the router, in two passes"
              + " or more, with a straight, flat-bottomed bit along a fence clamped so that the bit stops at the"
              + " shoulder line. Or saw a row of kerfs to depth and chisel out the waste.",
          "Set the depth on two scraps of the same sheet until their laps close flush on both faces,"
              + " then do not change it.");

  /**
   * What a pattern says of its laps.
   *
   * @param ends those of its piece that are lapped; the first and the last piece have one
   */
  public static String onPattern(
      List<LapEnd> ends, Length lap, Length thickness, LengthStyle style) {
    String where =
        ends.stream()
            .map(
                end ->
                    end == LapEnd.UPPER
                        ? "from the top at the upper end"
                        : "from the underside at the lower end")
            .collect(Collectors.joining(", "));
    return (ends.size() == 1 ? "Half-lap" : "Half-laps")
        + ": cut away half the thickness ("
        + depthWords(thickness, new Figures(style, ""))
        + ") over the last "
        + style.formatGiven(lap)
        + ", from the end to the dashed shoulder line: "
        + where
        + ". Each piece then rests on the one before. The dashed line in the middle of the lap is"
        + " where the plan shows the joint.";
  }
}
