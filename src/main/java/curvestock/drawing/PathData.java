package curvestock.drawing;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Writes outlines as SVG path data: lines as {@code L}, arcs as {@code A} of at most 90° each (many
 * importers misread larger ones), every number set off by a space, each loop closed by {@code Z}
 * with no zero-length line before it.
 */
final class PathData {

  private static final double LARGEST_ARC = Math.PI / 2;

  /** So that a quarter turn with a rounding error stays one arc. */
  private static final double ROUNDING = 1e-9;

  private final double top;

  /**
   * @param top the sheet's y that is drawn at SVG y = 0
   */
  PathData(double top) {
    this.top = top;
  }

  /** The outer loop and then each hole as a closed sub-path. */
  String closed(Outline outline) {
    return outline.loops().map(loop -> closed(loop.edges())).collect(Collectors.joining(" "));
  }

  /** An open line along the edges, which must follow on each other. */
  String open(List<Edge> edges) {
    List<String> words = new ArrayList<>();
    words.add("M " + at(edges.get(0).start()));
    for (Edge edge : edges) {
      addEdge(edge, edge.end(), words);
    }
    return String.join(" ", words);
  }

  /** A closed sub-path along the edges, of which the last meets the first. */
  String closed(List<Edge> edges) {
    List<String> words = new ArrayList<>();
    words.add("M " + at(edges.get(0).start()));
    for (int i = 0; i < edges.size(); i++) {
      boolean last = i == edges.size() - 1;
      Edge edge = edges.get(i);
      // The joint is written as the next edge's start, so that the loop closes to the last digit.
      Point end = edges.get(last ? 0 : i + 1).start();
      if (edge instanceof Arc || !last) {
        addEdge(edge, end, words);
      }
    }
    words.add("Z");
    return String.join(" ", words);
  }

  private void addEdge(Edge edge, Point end, List<String> words) {
    if (!(edge instanceof Arc arc)) {
      words.add("L " + at(end));
      return;
    }
    int parts = (int) Math.ceil(Math.abs(arc.sweep()) / LARGEST_ARC - ROUNDING);
    parts = Math.max(1, parts);
    String radius = SvgNumber.of(arc.radius());
    // With y down, a counter-clockwise arc runs against SVG's positive direction of angles.
    String direction = arc.sweep() > 0 ? "0" : "1";
    for (int i = 1; i <= parts; i++) {
      Point to = i == parts ? end : arc.pointAt(arc.startAngle() + arc.sweep() * i / parts);
      words.add("A " + radius + " " + radius + " 0 0 " + direction + " " + at(to));
    }
  }

  private String at(Point point) {
    return SvgNumber.of(point.x()) + " " + SvgNumber.of(top - point.y());
  }
}
