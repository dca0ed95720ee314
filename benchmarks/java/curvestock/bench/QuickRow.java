package curvestock.bench;

import curvestock.bound.Bound;
import curvestock.layout.Layout;
import curvestock.packing.Control;
import curvestock.packing.Effort;
import curvestock.packing.Packer;
import curvestock.packing.SearchSettings;
import java.util.List;

/**
 * One question at quick effort and at a greater one: pieces of a single kind, square millimetres of
 * several.
 *
 * @param rival the best of bounding rows and axis stack
 * @param seconds processor seconds at quick effort
 * @param longer the same at the greater one
 */
record QuickRow(
    String name,
    boolean mixed,
    double quick,
    double thorough,
    double rival,
    double seconds,
    double longer,
    boolean valid) {

  /** Areas are compared to a square millimetre. */
  private static final double SLACK = 1;

  static QuickRow of(BenchCase c, Effort greater) {
    double start = ProcessorTime.seconds();
    Layout quick = packed(c, Effort.QUICK);
    double middle = ProcessorTime.seconds();
    Layout thorough = packed(c, greater);
    double end = ProcessorTime.seconds();
    double rival =
        c.isMixed()
            ? Math.max(BoundingRows.area(c), AxisStack.area(c))
            : Math.max(BoundingRows.count(c), AxisStack.count(c));
    return new QuickRow(
        c.name(),
        c.isMixed(),
        Night.value(c, quick),
        Night.value(c, thorough),
        rival,
        middle - start,
        end - middle,
        LayoutJudge.accepts(quick) && LayoutJudge.accepts(thorough));
  }

  private static Layout packed(BenchCase c, Effort effort) {
    Packer packer = new Packer(c.sheet(), c.cutting(), new SearchSettings(1, effort));
    if (c.isMixed()) {
      return packer.fill(c.wanted(), Control.NONE).layout();
    }
    int bound = Bound.quick(c.piece(), c.sheet(), c.cutting()).count();
    return packer.most(c.piece(), bound, Control.NONE).layout();
  }

  boolean isReached() {
    return quick >= thorough - slack();
  }

  boolean isBelowRival() {
    return quick < rival - slack();
  }

  private double slack() {
    return mixed ? SLACK : 0;
  }

  /** As a journal keeps it, after the name. */
  List<String> cells() {
    return List.of(
        Boolean.toString(mixed),
        Double.toString(quick),
        Double.toString(thorough),
        Double.toString(rival),
        Double.toString(seconds),
        Double.toString(longer),
        Boolean.toString(valid));
  }

  /** The reverse of {@link #cells}. */
  static QuickRow parse(String name, List<String> cells) {
    return new QuickRow(
        name,
        Boolean.parseBoolean(cells.get(0)),
        Double.parseDouble(cells.get(1)),
        Double.parseDouble(cells.get(2)),
        Double.parseDouble(cells.get(3)),
        Double.parseDouble(cells.get(4)),
        Double.parseDouble(cells.get(5)),
        Boolean.parseBoolean(cells.get(6)));
  }
}
