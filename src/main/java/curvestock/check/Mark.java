package curvestock.check;

import curvestock.geometry.Point;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Something on a drawing that is not cut: a mark, a number, a tab's tick.
 *
 * @param group of the SVG or layer of the DXF, in small letters
 * @param lines what is drawn; empty for a text
 * @param text where a text stands
 * @param isBold whether the text is in bold letters
 */
record Mark(String group, List<Chain> lines, Optional<Point> text, boolean isBold) {

  Mark {
    lines = List.copyOf(lines);
  }

  static Mark drawn(String group, List<Chain> lines) {
    return new Mark(group, lines, Optional.empty(), false);
  }

  static Mark written(String group, Point at, boolean isBold) {
    return new Mark(group, List.of(), Optional.of(at), isBold);
  }

  List<Trace> edges() {
    return lines.stream().flatMap(chain -> chain.edges().stream()).toList();
  }

  /** Ends and middles of all edges, or the place of the text. */
  List<Point> points() {
    if (text.isPresent()) {
      return List.of(text.get());
    }
    return edges().stream()
        .flatMap(edge -> Stream.of(edge.at(0), edge.at(0.5), edge.at(1)))
        .toList();
  }
}
