package curvestock.packing;

import java.util.Arrays;
import java.util.List;

/**
 * How much a set of poses breaks the rules, as a smooth energy with its gradient: the sum of
 * squared shortfalls of gap and margin, each pair with a weight.
 *
 * <p>For two pieces the shortfall is measured at points of one in the distance field of the other:
 * all corners, points along the boundary (for deep overlaps), and the points where two curves can
 * be nearest between their ends (on the line of centres of two arcs, at the foot of an arc's centre
 * on a straight edge). By the case analysis of {@link curvestock.geometry.Clearance} that list is
 * complete for pieces that lie apart. Pieces can also cross with no corner of one in the other:
 * bands are felt by the points along them; two corners cross so only if one is sharper than a right
 * angle (of the four-sided part that they share, the angles at two neighbouring crossings exceed
 * half a turn by the corner's angle), and then the middles of the chords that straight edges cut
 * from the other piece are points too. So of straight-sided pieces where either has a sharp corner
 * an energy of zero means that the true gaps hold, and of others too unless they cross where both
 * are narrower than their points are apart, or a sharp corner of an arc crosses another; such
 * layouts are for {@link curvestock.layout.TrueGaps} to find. Nothing is flattened.
 *
 * <p>Poses are x, y, angle per piece; angles are scaled by {@link #scale} when minimised. Cost
 * grows with the number of near pairs.
 */
final class Overlap {

  /** Gaps are searched this much wider than asked (mm), so that the end of a descent is valid. */
  static final double ALLOWANCE = 0.0005;

  /** Share of the narrowest piece's width by which groups may be further off than the gap. */
  private static final double SLACK = 0.04;

  /** Taken off a clearance before it is relied on (mm). */
  private static final double CLEAR_ROUNDING = 1e-6;

  final Body[] bodies;
  final int count;
  final double[] pairWeight;
  final double[] wallWeight;

  /** The only piece that moves, or -1 if any may. */
  private final int mover;

  /** Unweighted energy of each pair and of each piece against the walls, after an evaluation. */
  final double[] pairEnergy;

  final double[] wallEnergy;

  private final Walls walls;
  private final double gap;
  private final double[] placedX;
  private final double[] placedY;
  private final double[] placedAngle;
  private final double[] cos;
  private final double[] sin;
  private final double[] circleX;
  private final double[] circleY;
  private final Rotation rotation = new Rotation();
  private final double[] ignored;
  private final Encounter encounter;

  /**
   * How far each piece has travelled, all steps added up: no point of it has moved further. By that
   * a pair knows how long what it found out stays true.
   */
  private final double[] travel;

  /**
   * Up to which travel of both pieces together the groups not among the {@link #active} are out.
   */
  private final double[] activeUntil;

  /** For an ordered pair the groups of the first that may be near the second, as bits. */
  private final long[] active;

  /** Up to which travel of both pieces together their energy stays zero. */
  private final double[] clearUntil;

  /** Pairs tested, and walls at what they cost: a piece that is alone has no pairs. */
  private long pairsTested;

  private final BroadPhase nearPairs;
  private final boolean manyPieces;

  /** Pieces that nobody moves: among themselves and with the walls they trouble no one. */
  private final boolean[] frozen;

  Overlap(Arena arena, List<Body> bodies) {
    this(arena, bodies, new boolean[bodies.size()]);
  }

  Overlap(Arena arena, List<Body> bodies, boolean[] frozen) {
    this(arena, bodies, frozen, -1);
  }

  /** For {@link #evaluateOne} of the last body only: its memory grows with the number of bodies. */
  static Overlap ofLast(Arena arena, List<Body> bodies) {
    return new Overlap(arena, bodies, new boolean[bodies.size()], bodies.size() - 1);
  }

  private Overlap(Arena arena, List<Body> bodies, boolean[] frozen, int mover) {
    this.mover = mover;
    this.frozen = frozen.clone();
    this.bodies = bodies.toArray(Body[]::new);
    this.count = this.bodies.length;
    this.gap = arena.gap + ALLOWANCE;
    this.walls = new Walls(arena, arena.margin + ALLOWANCE, gap);
    int pairs = mover < 0 ? count * count : 2 * count;
    pairWeight = new double[pairs];
    wallWeight = new double[count];
    pairEnergy = new double[pairs];
    wallEnergy = new double[count];
    resetWeights();
    placedX = new double[count];
    placedY = new double[count];
    placedAngle = new double[count];
    Arrays.fill(placedAngle, Double.NaN);
    travel = new double[count];
    activeUntil = new double[pairs];
    Arrays.fill(activeUntil, -1);
    active = new long[pairs];
    clearUntil = new double[pairs];
    cos = new double[count];
    sin = new double[count];
    ignored = new double[3 * count];
    circleX = new double[count];
    circleY = new double[count];
    nearPairs = new BroadPhase(this.bodies, gap);
    double slack =
        SLACK * Arrays.stream(this.bodies).mapToDouble(b -> b.area / b.radius).min().orElse(1);
    encounter = new Encounter(gap, slack);
    manyPieces = count > 24;
  }

  void resetWeights() {
    Arrays.fill(pairWeight, 1);
    Arrays.fill(wallWeight, 1);
  }

  /** Millimetres that one radian of piece i is worth to the minimiser. */
  double scale(int i) {
    return bodies[i].radius * 0.6;
  }

  long pairsTested() {
    return pairsTested;
  }

  /** Energy of all pieces; {@code gradient} (3 per piece: x, y, angle) is filled. */
  double evaluate(double[] pose, double[] gradient) {
    Arrays.fill(gradient, 0, 3 * count, 0);
    for (int i = 0; i < count; i++) {
      place(i, pose);
    }
    double total = 0;
    pairsTested += (long) count * walls.cost();
    for (int i = 0; i < count; i++) {
      double wall =
          frozen[i]
              ? 0
              : walls.energy(bodies[i], pose, 3 * i, cos[i], sin[i], wallWeight[i], gradient);
      wallEnergy[i] = wall;
      total += wallWeight[i] * wall;
    }
    return total + (manyPieces ? listedPairs(pose, gradient) : allPairs(pose, gradient));
  }

  private double allPairs(double[] pose, double[] gradient) {
    double total = 0;
    for (int i = 0; i < count; i++) {
      for (int j = i + 1; j < count; j++) {
        total += pairIfNear(i, j, pose, gradient);
      }
    }
    return total;
  }

  private double listedPairs(double[] pose, double[] gradient) {
    if (nearPairs.update(circleX, circleY)) {
      Arrays.fill(pairEnergy, 0);
    }
    double total = 0;
    for (int k = 0; k < nearPairs.listed; k++) {
      int pair = nearPairs.pairs[k];
      total += pairIfNear(pair / count, pair % count, pose, gradient);
    }
    return total;
  }

  /** Where an ordered pair is noted: in a square of all, or in two rows, to and from the mover. */
  private int at(int a, int b) {
    if (mover < 0) {
      return a * count + b;
    }
    return a == mover ? count + b : a;
  }

  private double pairIfNear(int i, int j, double[] pose, double[] gradient) {
    int key = at(i, j);
    int back = at(j, i);
    boolean known = travel[i] + travel[j] <= activeUntil[key];
    if ((known && (active[key] | active[back]) == 0) || isApart(i, j, known)) {
      pairEnergy[key] = 0;
      return 0;
    }
    pairsTested++;
    double travelled = travel[i] + travel[j];
    if (known && travelled <= clearUntil[key]) {
      pairEnergy[key] = 0;
      return 0;
    }
    double weight = pairWeight[key];
    double sum = feel(i, j, known, pose, gradient, weight);
    double spare = encounter.spare;
    double clearance = encounter.clearance;
    sum += feel(j, i, known, pose, gradient, weight);
    if (!known) {
      activeUntil[key] = travelled + Math.min(spare, encounter.spare);
    }
    clearUntil[key] = sum > 0 ? -1 : clear(travelled, Math.min(clearance, encounter.clearance));
    pairEnergy[key] = sum;
    return weight * sum;
  }

  /** Rounded down by more than what places and distances are rounded by. */
  private static double clear(double travelled, double clearance) {
    return travelled + clearance - CLEAR_ROUNDING;
  }

  /** Whether the bounding circles are apart, or both pieces frozen; if so, notes for how long. */
  private boolean isApart(int i, int j, boolean known) {
    int key = at(i, j);
    double dx = circleX[i] - circleX[j];
    double dy = circleY[i] - circleY[j];
    double limit = bodies[i].radius + bodies[j].radius + gap;
    double square = dx * dx + dy * dy;
    if (known) {
      return square >= limit * limit;
    }
    if (frozen[i] && frozen[j]) {
      activeUntil[key] = Double.POSITIVE_INFINITY;
    } else if (square >= limit * limit) {
      activeUntil[key] = travel[i] + travel[j] + Math.sqrt(square) - limit;
    } else {
      return false;
    }
    active[key] = 0;
    active[at(j, i)] = 0;
    return true;
  }

  /** Energy of piece i alone at its pose, against all others as they were placed and the walls. */
  double evaluateOne(int i, double[] pose, double[] gradient) {
    gradient[3 * i] = 0;
    gradient[3 * i + 1] = 0;
    gradient[3 * i + 2] = 0;
    place(i, pose);
    nearPairs.forget();
    pairsTested += walls.cost();
    double total =
        wallWeight[i]
            * walls.energy(bodies[i], pose, 3 * i, cos[i], sin[i], wallWeight[i], gradient);
    for (int j = 0; j < count; j++) {
      if (j != i) {
        total += pairIfNear(Math.min(i, j), Math.max(i, j), pose, gradient);
      }
    }
    return total;
  }

  /**
   * Energy of piece i at a pose that it is only tried at, against all others as they were placed
   * and the walls: no gradient, and nothing is noted. May stop, at any value above the limit.
   */
  double weigh(int i, double[] pose, double limit) {
    Body body = bodies[i];
    rotation.turn(pose[3 * i + 2]);
    double c = rotation.cos;
    double s = rotation.sin;
    double x = pose[3 * i] + c * body.centreX - s * body.centreY;
    double y = pose[3 * i + 1] + s * body.centreX + c * body.centreY;
    pairsTested += walls.cost();
    double total = wallWeight[i] * walls.energy(body, pose, 3 * i, c, s, wallWeight[i], ignored);
    for (int j = 0; j < count && total <= limit; j++) {
      double dx = x - circleX[j];
      double dy = y - circleY[j];
      double reach = body.radius + bodies[j].radius + gap;
      if (j != i && dx * dx + dy * dy < reach * reach) {
        pairsTested++;
        double weight = pairWeight[at(Math.min(i, j), Math.max(i, j))];
        total += weight * weighPair(i, c, s, j, pose, (limit - total) / weight);
      }
    }
    return total;
  }

  /** Piece i, turned by a cosine and a sine, and piece j as it was placed; either in the other. */
  private double weighPair(int i, double c, double s, int j, double[] pose, double limit) {
    double dx = pose[3 * i] - pose[3 * j];
    double dy = pose[3 * i + 1] - pose[3 * j + 1];
    double turnC = c * cos[j] + s * sin[j];
    double turnS = s * cos[j] - c * sin[j];
    double there =
        encounter.energy(
            bodies[i],
            bodies[j],
            turnC,
            turnS,
            cos[j] * dx + sin[j] * dy,
            -sin[j] * dx + cos[j] * dy,
            limit);
    return there > limit
        ? there
        : there
            + encounter.energy(
                bodies[j], bodies[i], turnC, -turnS, -c * dx - s * dy, s * dx - c * dy, limit);
  }

  /** Brings the stored cosines and circles up to date with all poses. */
  void placeAll(double[] pose) {
    for (int i = 0; i < count; i++) {
      place(i, pose);
    }
    nearPairs.forget();
  }

  private void place(int i, double[] pose) {
    double x = pose[3 * i];
    double y = pose[3 * i + 1];
    double angle = pose[3 * i + 2];
    if (x == placedX[i] && y == placedY[i] && angle == placedAngle[i]) {
      return;
    }
    Body body = bodies[i];
    if (angle != placedAngle[i]) {
      rotation.turn(angle);
      cos[i] = rotation.cos;
      sin[i] = rotation.sin;
    }
    double cx = x + cos[i] * body.centreX - sin[i] * body.centreY;
    double cy = y + sin[i] * body.centreX + cos[i] * body.centreY;
    double turned = Math.abs(angle - placedAngle[i]) * body.radius;
    double dx = cx - circleX[i];
    double dy = cy - circleY[i];
    double moved = Math.sqrt(dx * dx + dy * dy) + turned;
    // Rounded up a little; the first time there is nothing to compare with.
    travel[i] = moved >= 0 ? travel[i] + moved * (1 + 1e-9) + 1e-9 : travel[i];
    circleX[i] = cx;
    circleY[i] = cy;
    placedX[i] = x;
    placedY[i] = y;
    placedAngle[i] = angle;
  }

  /** Points of piece a in the field of piece b. */
  private double feel(
      int a, int b, boolean known, double[] pose, double[] gradient, double weight) {
    int key = at(a, b);
    // a's frame in b's frame: turn by (c, s), then move by (tx, ty).
    double c = cos[a] * cos[b] + sin[a] * sin[b];
    double s = sin[a] * cos[b] - cos[a] * sin[b];
    double dx = pose[3 * a] - pose[3 * b];
    double dy = pose[3 * a + 1] - pose[3 * b + 1];
    double tx = cos[b] * dx + sin[b] * dy;
    double ty = -sin[b] * dx + cos[b] * dy;
    encounter.feel(bodies[a], bodies[b], c, s, tx, ty, known ? active[key] : Encounter.ALL);
    if (!known) {
      active[key] = encounter.near;
    }
    if (encounter.energy > 0) {
      double fx = weight * (cos[b] * encounter.pullX - sin[b] * encounter.pullY);
      double fy = weight * (sin[b] * encounter.pullX + cos[b] * encounter.pullY);
      gradient[3 * a] += fx;
      gradient[3 * a + 1] += fy;
      gradient[3 * b] -= fx;
      gradient[3 * b + 1] -= fy;
      gradient[3 * a + 2] += weight * encounter.torque;
      gradient[3 * b + 2] += weight * encounter.counterTorque;
    }
    return encounter.energy;
  }
}
