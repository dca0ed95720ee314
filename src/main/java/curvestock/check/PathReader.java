package curvestock.check;

import curvestock.check.PathCommands.Command;
import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Follows SVG path data into chains of lines and circular arcs, in the sheet's frame (y up). */
final class PathReader {

  /** Ends nearer than this meet, in millimetres: the rounding of four decimals, and air. */
  private static final double MEET = 0.001;

  private final double top;
  private final List<Chain> chains = new ArrayList<>();
  private List<Trace> edges = new ArrayList<>();
  private Point start = Point.ORIGIN;
  private Point at = Point.ORIGIN;

  private PathReader(double top) {
    this.top = top;
  }

  /**
   * @param top the sheet's y that is drawn at SVG y = 0
   * @throws CheckException if the data is malformed, has other curves than circular arcs, or is out
   *     of bounds; the message starts with what is wrong
   */
  static List<Chain> read(String data, double top) throws CheckException {
    PathReader reader = new PathReader(top);
    for (Command command : PathCommands.of(data)) {
      reader.follow(command);
    }
    reader.end(false);
    if (reader.chains.isEmpty()) {
      throw new CheckException("the path encloses nothing");
    }
    return reader.chains;
  }

  private void follow(Command command) throws CheckException {
    boolean relative = Character.isLowerCase(command.letter());
    double x = relative ? at.x() : 0;
    double y = relative ? at.y() : 0;
    switch (Character.toUpperCase(command.letter())) {
      case 'M' -> move(new Point(x + command.value(0), y + command.value(1)));
      case 'L' -> line(new Point(x + command.value(0), y + command.value(1)));
      case 'H' -> line(new Point(x + command.value(0), at.y()));
      case 'V' -> line(new Point(at.x(), y + command.value(0)));
      case 'A' -> arc(command, new Point(x + command.value(5), y + command.value(6)));
      case 'Z' -> close();
      default ->
          throw new CheckException(
              "the path has a curve that is neither line nor circular arc: command "
                  + command.letter());
    }
  }

  private void move(Point to) {
    end(false);
    start = to;
    at = to;
  }

  private void line(Point to) {
    if (!to.equals(at)) {
      edges.add(new Trace.Straight(at, to));
    }
    at = to;
  }

  private void arc(Command command, Point to) throws CheckException {
    double radius = command.value(0);
    if (radius != command.value(1)) {
      throw new CheckException(
          "the path has an arc that is not circular: radii "
              + radius
              + " and "
              + command.value(1)
              + " mm");
    }
    SvgArc.of(at, radius, command.value(3) != 0, command.value(4) != 0, to).ifPresent(edges::add);
    at = to;
  }

  private void close() {
    line(start);
    end(true);
  }

  /** A line that comes back to its start is closed, with or without the command to close it. */
  private void end(boolean closed) {
    if (!edges.isEmpty()) {
      boolean comesBack = edges.size() > 1 && at.distance(start) <= MEET;
      chains.add(new Chain(edges.stream().map(this::upright).toList(), closed || comesBack));
    }
    edges = new ArrayList<>();
  }

  /** From SVG's axes to the sheet's: y is turned over, so angles change their sign. */
  private Trace upright(Trace edge) {
    if (edge instanceof Trace.Round round) {
      return new Trace.Round(
          upright(round.centre()), round.radius(), -round.first(), -round.sweep());
    }
    return new Trace.Straight(upright(edge.start()), upright(edge.end()));
  }

  private Point upright(Point point) {
    return new Point(point.x(), top - point.y());
  }
}
