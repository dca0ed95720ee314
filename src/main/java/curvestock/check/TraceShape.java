package curvestock.check;

import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** A closed shape: its outer loop, counter-clockwise, and its holes, clockwise. */
record TraceShape(TraceLoop outer, List<TraceLoop> holes) {

  TraceShape {
    holes = List.copyOf(holes);
  }

  /** From loops in any order and direction: the one of the largest area is the outer one. */
  static TraceShape of(List<TraceLoop> loops) {
    int outer = 0;
    for (int i = 1; i < loops.size(); i++) {
      if (Math.abs(loops.get(i).area()) > Math.abs(loops.get(outer).area())) {
        outer = i;
      }
    }
    List<TraceLoop> holes = new ArrayList<>();
    for (int i = 0; i < loops.size(); i++) {
      if (i != outer) {
        holes.add(loops.get(i).turned(false));
      }
    }
    return new TraceShape(loops.get(outer).turned(true), holes);
  }

  static TraceShape of(Outline outline) {
    return of(outline.loops().map(TraceLoop::of).toList());
  }

  List<TraceLoop> loops() {
    List<TraceLoop> loops = new ArrayList<>();
    loops.add(outer);
    loops.addAll(holes);
    return loops;
  }

  List<Trace> edges() {
    return loops().stream().flatMap(loop -> loop.edges().stream()).toList();
  }

  double length() {
    return loops().stream().mapToDouble(TraceLoop::length).sum();
  }

  /** The same with straight lines for the arcs that rise so much over their chords or less. */
  TraceShape withChords(double rise) {
    return new TraceShape(
        outer.withChords(rise), holes.stream().map(hole -> hole.withChords(rise)).toList());
  }

  /** Whether the point lies in the material. */
  boolean holds(Point point) {
    return loops().stream().mapToInt(loop -> loop.windings(point)).sum() != 0;
  }
}
