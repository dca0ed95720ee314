package curvestock.geometry;

/**
 * The least distance between two edges in closed form. Exact up to rounding: about 1e-12 of the
 * coordinates' size.
 *
 * <p>Two edges that do not cross are nearest either at an end of one of them, or at two inner
 * points whose connecting line stands square on both: for two arcs the line through their centres,
 * for an arc and a segment the foot of the centre on the segment. Those candidates are all tried.
 */
final class EdgeDistance {

  private EdgeDistance() {}

  static double between(Edge a, Edge b) {
    if (a instanceof Arc first) {
      return b instanceof Arc second ? arcArc(first, second) : arcSegment(first, (Segment) b);
    }
    return b instanceof Arc second
        ? arcSegment(second, (Segment) a)
        : segmentSegment((Segment) a, (Segment) b);
  }

  private static double atEnds(Edge a, Edge b) {
    return Math.min(
        Math.min(a.distanceTo(b.start()), a.distanceTo(b.end())),
        Math.min(b.distanceTo(a.start()), b.distanceTo(a.end())));
  }

  private static double segmentSegment(Segment a, Segment b) {
    return cross(a, b) ? 0 : atEnds(a, b);
  }

  private static boolean cross(Segment a, Segment b) {
    Point alongA = a.end().minus(a.start());
    Point alongB = b.end().minus(b.start());
    double sideStart = alongA.cross(b.start().minus(a.start()));
    double sideEnd = alongA.cross(b.end().minus(a.start()));
    double otherStart = alongB.cross(a.start().minus(b.start()));
    double otherEnd = alongB.cross(a.end().minus(b.start()));
    return sideStart * sideEnd < 0 && otherStart * otherEnd < 0;
  }

  private static double arcSegment(Arc arc, Segment segment) {
    double least = atEnds(arc, segment);
    Point along = segment.end().minus(segment.start());
    double length = along.norm();
    if (length == 0) {
      return least;
    }
    Point unit = along.times(1 / length);
    Point toCentre = arc.centre().minus(segment.start());
    double foot = toCentre.dot(unit);
    Point footPoint = segment.start().plus(unit.times(foot));
    double height = footPoint.distance(arc.centre());
    if (foot >= 0
        && foot <= length
        && height > 0
        && arc.spans(footPoint.minus(arc.centre()).angle())) {
      least = Math.min(least, Math.abs(height - arc.radius()));
    }
    if (height <= arc.radius()) {
      double half = Math.sqrt(arc.radius() * arc.radius() - height * height);
      for (double at : new double[] {foot - half, foot + half}) {
        Point crossing = segment.start().plus(unit.times(at));
        if (at >= 0 && at <= length && arc.spans(crossing.minus(arc.centre()).angle())) {
          return 0;
        }
      }
    }
    return least;
  }

  private static double arcArc(Arc a, Arc b) {
    double least = atEnds(a, b);
    Point line = b.centre().minus(a.centre());
    double apart = line.norm();
    if (apart == 0) {
      return least;
    }
    double direction = line.angle();
    for (double onA : new double[] {direction, direction + Math.PI}) {
      for (double onB : new double[] {direction, direction + Math.PI}) {
        if (a.spans(onA) && b.spans(onB)) {
          least = Math.min(least, a.pointAt(onA).distance(b.pointAt(onB)));
        }
      }
    }
    return circlesCross(a, b, apart, direction) ? 0 : least;
  }

  private static boolean circlesCross(Arc a, Arc b, double apart, double direction) {
    if (apart > a.radius() + b.radius() || apart < Math.abs(a.radius() - b.radius())) {
      return false;
    }
    double cos =
        (apart * apart + a.radius() * a.radius() - b.radius() * b.radius())
            / (2 * apart * a.radius());
    double turn = StrictMath.acos(Math.max(-1, Math.min(1, cos)));
    for (double onA : new double[] {direction + turn, direction - turn}) {
      Point crossing = a.pointAt(onA);
      if (a.spans(onA) && b.spans(crossing.minus(b.centre()).angle())) {
        return true;
      }
    }
    return false;
  }
}
