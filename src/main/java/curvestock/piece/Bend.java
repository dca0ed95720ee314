package curvestock.piece;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Pose;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The bent part of a piece of roadbed, by which its inner edge is known: of a sector the whole, of
 * roadbed with straights or easements its longest arc.
 *
 * @param sector the part as a sector
 * @param pose where that sector lies in the piece's frame
 */
public record Bend(AnnularSector sector, Pose pose) {

  /** A bend that is less than this share of a piece does not stand for it. */
  private static final double LEAST_SHARE = 0.2;

  /** The bend of a shape, or nothing if it is no ring's part with an inner edge. */
  public static Optional<Bend> of(Shape shape) {
    Shape blank = shape.blank();
    if (blank instanceof AnnularSector sector && sector.innerRadius().millimetres() > 0) {
      return Optional.of(new Bend(sector, Pose.HOME));
    }
    if (blank instanceof FreeShape free) {
      return longest(free.course()).map(arc -> along(arc, free));
    }
    return Optional.empty();
  }

  private static Optional<Arc> longest(List<Edge> course) {
    double whole = course.stream().mapToDouble(Edge::length).sum();
    return course.stream()
        .filter(Arc.class::isInstance)
        .map(Arc.class::cast)
        .max(Comparator.comparingDouble(Arc::length))
        .filter(arc -> arc.length() >= LEAST_SHARE * whole);
  }

  private static Bend along(Arc arc, FreeShape free) {
    double half = free.outline().depth(arc.middle());
    AnnularSector sector =
        new AnnularSector(
            Length.ofMillimetres(arc.radius()),
            Length.ofMillimetres(2 * half),
            Angle.ofRadians(Math.abs(arc.sweep())));
    double bisector = arc.startAngle() + arc.sweep() / 2;
    return new Bend(sector, new Pose(arc.centre().x(), arc.centre().y(), bisector));
  }
}
