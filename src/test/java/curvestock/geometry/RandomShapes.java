package curvestock.geometry;

import java.util.List;
import java.util.Random;

/**
 * Seeded sectors, rings, strips and half discs at random poses; the seed belongs in the message.
 */
final class RandomShapes {

  private final Random random;

  RandomShapes(long seed) {
    random = new Random(seed);
  }

  double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  Pose pose(double reach) {
    return new Pose(between(0, reach), between(0, reach), between(-7, 7));
  }

  Outline shape() {
    return switch (random.nextInt(4)) {
      case 0 -> Outline.rectangle(between(10, 400), between(10, 120));
      case 1 -> ring(between(60, 500), between(5, 50));
      case 2 -> halfDisc(between(20, 200));
      default ->
          sector(
              between(60, 800), between(10, 50), between(Math.toRadians(5), Math.toRadians(350)));
    };
  }

  static Outline ring(double radius, double halfWidth) {
    return new Outline(
        Loop.circle(Point.ORIGIN, radius + halfWidth),
        List.of(Loop.circle(Point.ORIGIN, radius - halfWidth).reversed()));
  }

  static Outline sector(double radius, double halfWidth, double sweep) {
    Arc outer = new Arc(Point.ORIGIN, radius + halfWidth, -sweep / 2, sweep);
    Arc inner = new Arc(Point.ORIGIN, radius - halfWidth, sweep / 2, -sweep);
    return Outline.of(
        new Loop(
            List.of(outer, Segment.joining(outer, inner), inner, Segment.joining(inner, outer))));
  }

  static Outline halfDisc(double radius) {
    Arc arc = new Arc(Point.ORIGIN, radius, 0, Math.PI);
    return Outline.of(new Loop(List.of(arc, Segment.joining(arc, arc))));
  }
}
