package curvestock.geometry;

/**
 * A line over which a sheet is turned: upright or level, at a distance from the origin.
 *
 * @param upright whether it runs along y; else along x
 * @param at its x, or its y, in mm
 */
public record MirrorLine(boolean upright, double at) {

  /** Where the point comes to lie. */
  public Point apply(Point point) {
    return upright
        ? new Point(2 * at - point.x(), point.y())
        : new Point(point.x(), 2 * at - point.y());
  }

  /** The edge seen from the other side, run the same way. */
  public Edge apply(Edge edge) {
    if (edge instanceof Arc arc) {
      double start = upright ? Math.PI - arc.startAngle() : -arc.startAngle();
      return new Arc(apply(arc.centre()), arc.radius(), start, -arc.sweep());
    }
    return new Segment(apply(edge.start()), apply(edge.end()));
  }

  /** The outline seen from the other side. */
  public Outline apply(Outline outline) {
    return new Outline(apply(outline.outer()), outline.holes().stream().map(this::apply).toList());
  }

  /** Mirrored, a loop runs the other way round; so it is run backwards. */
  private Loop apply(Loop loop) {
    return new Loop(loop.edges().stream().map(this::apply).toList()).reversed();
  }
}
