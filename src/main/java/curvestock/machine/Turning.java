package curvestock.machine;

import curvestock.geometry.Box;
import curvestock.geometry.MirrorLine;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import curvestock.units.Length;
import java.util.List;

/**
 * How a sheet is turned over for what is done from below. The dowels lie so that the turned sheet
 * fits the same two again: both on the line, or each where the other comes to lie.
 *
 * @param line through the middle of the sheet
 * @param dowels middles of the two holes in the waste; empty if the waste has no room for two
 * @param diameter of the dowels
 */
public record Turning(MirrorLine line, List<Point> dowels, Length diameter) {

  /** Copies the list. */
  public Turning {
    dowels = List.copyOf(dowels);
  }

  /** The line over the whole sheet. */
  public Segment axis(Box sheet) {
    return line.upright()
        ? new Segment(new Point(line.at(), sheet.minY()), new Point(line.at(), sheet.maxY()))
        : new Segment(new Point(sheet.minX(), line.at()), new Point(sheet.maxX(), line.at()));
  }

  /** Which way it is flipped, in words. */
  public String flip() {
    return "so that its %s edges change places"
        .formatted(line.upright() ? "left and right" : "upper and lower");
  }

  /** The holes for the dowels. */
  public List<Drilling> holes() {
    return java.util.stream.IntStream.range(0, dowels.size())
        .mapToObj(i -> new Drilling(0, i + 1, dowels.get(i), diameter))
        .toList();
  }
}
