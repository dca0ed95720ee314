package curvestock.packing;

import java.util.SplittableRandom;

/** Random poses and moves of pieces, within the arena and its grain. */
final class Poses {

  private final Arena arena;
  private final Body[] bodies;
  private final SplittableRandom random;

  Poses(Arena arena, Body[] bodies, SplittableRandom random) {
    this.arena = arena;
    this.bodies = bodies;
    this.random = random;
  }

  /** A random pose for piece i into {@code to}; its angle may be borrowed from another piece. */
  void sample(int i, double[] from, double[] to) {
    double angle;
    double choice = random.nextDouble();
    if (choice < 0.5 || bodies.length < 2) {
      angle = random.nextDouble() * 2 * Math.PI;
    } else {
      int other = random.nextInt(bodies.length);
      double turned = choice < 0.75 ? 0 : choice < 0.9 ? Math.PI : Math.PI / 2;
      angle = from[3 * other + 2] + turned;
    }
    place(i, withGrain(bodies[i], angle), to);
  }

  /** As {@link #sample}, but square to the sheet or to another piece. */
  void sampleTidy(int i, double[] from, double[] to) {
    double quarter = random.nextInt(4) * Math.PI / 2;
    double base =
        bodies.length > 1 && random.nextDouble() < 0.6
            ? from[3 * random.nextInt(bodies.length - 1) + 2]
            : 0;
    place(i, withGrain(bodies[i], base + quarter), to);
  }

  /** Puts piece i at the angle with its bounding circle's centre anywhere sensible in the sheet. */
  private void place(int i, double angle, double[] to) {
    Body body = bodies[i];
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    double reach =
        Math.min(body.radius * 0.35, 0.25 * Math.min(arena.usableWidth(), arena.usableHeight()));
    double inset = arena.margin + reach;
    double cx =
        arena.box.minX() + inset + random.nextDouble() * Math.max(0, arena.box.width() - 2 * inset);
    double cy =
        arena.box.minY()
            + inset
            + random.nextDouble() * Math.max(0, arena.box.height() - 2 * inset);
    to[3 * i] = cx - (cos * body.centreX - sin * body.centreY);
    to[3 * i + 1] = cy - (sin * body.centreX + cos * body.centreY);
    to[3 * i + 2] = angle;
  }

  /** All pieces anywhere. */
  void scatter(double[] to, boolean[] frozen) {
    for (int i = 0; i < bodies.length; i++) {
      if (!frozen[i]) {
        place(i, withGrain(bodies[i], random.nextDouble() * 2 * Math.PI), to);
      }
    }
  }

  /** All pieces anywhere, nearly parallel to each other, some of them turned half round. */
  void scatterParallel(double[] to, boolean[] frozen) {
    double base = random.nextInt(4) * Math.PI / 2 + (random.nextDouble() - 0.5) * 0.2;
    double turnedShare = random.nextDouble() < 0.5 ? 0 : 0.5;
    for (int i = 0; i < bodies.length; i++) {
      if (!frozen[i]) {
        double angle = base + (random.nextDouble() - 0.5) * 0.3;
        angle += random.nextDouble() < turnedShare ? Math.PI : 0;
        place(i, withGrain(bodies[i], angle), to);
      }
    }
  }

  /** Turns the piece by half a turn about the middle of its bounding circle. */
  void turnHalfRound(int i, double[] poses) {
    double[] middle = centre(i, poses);
    centreAt(i, middle[0], middle[1], poses[3 * i + 2] + Math.PI, poses);
  }

  private void centreAt(int i, double cx, double cy, double angle, double[] poses) {
    Body body = bodies[i];
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    poses[3 * i] = cx - (cos * body.centreX - sin * body.centreY);
    poses[3 * i + 1] = cy - (sin * body.centreX + cos * body.centreY);
    poses[3 * i + 2] = angle;
  }

  /** Exchanges the middles of two pieces; each keeps its angle. */
  void exchange(int i, int j, double[] poses) {
    double[] a = centre(i, poses);
    double[] b = centre(j, poses);
    centreAt(i, b[0], b[1], poses[3 * i + 2], poses);
    centreAt(j, a[0], a[1], poses[3 * j + 2], poses);
  }

  private double[] centre(int i, double[] poses) {
    Body body = bodies[i];
    double cos = StrictMath.cos(poses[3 * i + 2]);
    double sin = StrictMath.sin(poses[3 * i + 2]);
    return new double[] {
      poses[3 * i] + cos * body.centreX - sin * body.centreY,
      poses[3 * i + 1] + sin * body.centreX + cos * body.centreY
    };
  }

  /** Shakes all pieces by a share of their width. */
  void jiggle(double[] poses, boolean[] frozen, double share) {
    for (int i = 0; i < bodies.length; i++) {
      if (!frozen[i]) {
        double size = share * bodies[i].area / bodies[i].radius;
        poses[3 * i] += (random.nextDouble() - 0.5) * 2 * size;
        poses[3 * i + 1] += (random.nextDouble() - 0.5) * 2 * size;
        poses[3 * i + 2] += (random.nextDouble() - 0.5) * 2 * size / bodies[i].radius;
      }
    }
  }

  /** The nearest angle that the piece's grain allows. */
  private double withGrain(Body body, double angle) {
    if (body.grainFree()) {
      return angle;
    }
    double off = body.grainDirection + angle - arena.grain;
    double whole = Math.PI * Math.rint(off / Math.PI);
    double rest = off - whole;
    double clamped = Math.max(-body.grainWithin, Math.min(body.grainWithin, rest));
    return angle - rest + clamped;
  }
}
