package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Clearance;
import curvestock.geometry.Flattening;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.piece.Piece;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The search's own gap against two other measures: exact clearances, and JTS on chords. */
class ContactTest {

  private static final int PAIRS = 3000;
  private static final double FLATTENING = 0.01;

  private static Piece piece(RandomPacking random, String id) {
    return Piece.of(id, "random", random.shape());
  }

  @Test
  void gap_ofBodiesApart_isTheExactClearance() {
    int apart = 0;
    for (long seed = 1; seed <= PAIRS; seed++) {
      RandomPacking random = new RandomPacking(seed);
      Piece a = piece(random, "A");
      Piece b = piece(random, "B");
      double turn = random.between(-7, 7);
      Pose pose = random.pose(900);

      double gap = Contact.gap(new Body(a), turn, new Body(b), pose.x(), pose.y(), pose.rotation());

      double clearance =
          Clearance.between(
              a.shape().outline().at(new Pose(0, 0, turn)), b.shape().outline().at(pose));
      if (clearance > 0) {
        apart++;
        assertThat(gap)
            .as("seed %d, %s and %s at %s", seed, a.shape(), b.shape(), pose)
            .isCloseTo(clearance, Offset.offset(1e-7));
      }
    }
    assertThat(apart).isGreaterThan(PAIRS / 4);
  }

  /** JTS measures polygons; chords inside both shapes can only add to the distance. */
  @Test
  void gap_ofBodiesApart_agreesWithJtsWithinTheFlattening() {
    Flattening chords = new Flattening(FLATTENING);
    int apart = 0;
    for (long seed = 1; seed <= PAIRS / 10; seed++) {
      RandomPacking random = new RandomPacking(seed);
      Piece a = piece(random, "A");
      Piece b = piece(random, "B");
      Pose pose = random.pose(900);
      Outline there = b.shape().outline().at(pose);

      double jts = chords.inside(a.shape().outline()).distance(chords.inside(there));

      if (jts > 3 * FLATTENING) {
        apart++;
        double gap = Contact.gap(new Body(a), 0, new Body(b), pose.x(), pose.y(), pose.rotation());
        assertThat(gap).as("seed %d", seed).isBetween(jts - 2 * FLATTENING - 1e-9, jts + 1e-9);
      }
    }
    assertThat(apart).isGreaterThan(PAIRS / 40);
  }

  @Test
  void gap_ofTheOtherWayRound_isTheSame() {
    for (long seed = 1; seed <= 500; seed++) {
      RandomPacking random = new RandomPacking(seed);
      Body a = new Body(piece(random, "A"));
      Body b = new Body(piece(random, "B"));
      Pose pose = random.pose(900);

      double forth = Contact.gap(a, 0, b, pose.x(), pose.y(), pose.rotation());
      double back = Contact.gap(b, pose.rotation(), a, -pose.x(), -pose.y(), 0);

      assertThat(back).as("seed %d", seed).isCloseTo(forth, Offset.offset(1e-7));
    }
  }

  @Test
  void leastShift_alongAnyDirection_keepsTheGapFromThereOn() {
    double need = 3;
    int touching = 0;
    for (long seed = 1; seed <= 400; seed++) {
      RandomPacking random = new RandomPacking(seed);
      Piece a = piece(random, "A");
      Piece b = piece(random, "B");
      double turnA = random.between(-7, 7);
      double turnB = random.between(-7, 7);
      double direction = random.between(-7, 7);
      double dx = Math.cos(direction);
      double dy = Math.sin(direction);
      double off = random.between(-200, 200);

      double shift =
          Contact.leastShift(
              new Body(a),
              turnA,
              new Body(b),
              turnB,
              -dy * off,
              dx * off,
              dx,
              dy,
              need,
              Double.NEGATIVE_INFINITY);

      if (Double.isFinite(shift)) {
        Outline fixed = a.shape().outline().at(new Pose(0, 0, turnA));
        double least = Double.POSITIVE_INFINITY;
        for (double further : new double[] {0, 0.001, 0.1, 1, 10, 50, 200, 500}) {
          double t = shift + further;
          Pose pose = new Pose(-dy * off + t * dx, dx * off + t * dy, turnB);
          double clearance = Clearance.between(fixed, b.shape().outline().at(pose));
          assertThat(clearance)
              .as("seed %d, %s further", seed, further)
              .isGreaterThanOrEqualTo(need - 1e-6);
          least = further == 0 ? clearance : least;
        }
        touching += least < need + 1e-3 ? 1 : 0;
      }
    }
    assertThat(touching).as("shifts that end in contact").isGreaterThan(200);
  }

  @Test
  void leastShift_withAFloor_isTheSameAboveItAndLessBelow() {
    int above = 0;
    int below = 0;
    for (long seed = 1; seed <= 200; seed++) {
      RandomPacking random = new RandomPacking(seed);
      Body a = new Body(piece(random, "A"));
      Body b = new Body(piece(random, "B"));
      double turn = random.between(-7, 7);
      double off = random.between(-200, 200);
      double floor = random.between(-200, 600);

      double free = Contact.leastShift(a, 0, b, turn, 0, off, 1, 0, 3, Double.NEGATIVE_INFINITY);
      double floored = Contact.leastShift(a, 0, b, turn, 0, off, 1, 0, 3, floor);

      if (free >= floor) {
        assertThat(floored).as("seed %d", seed).isEqualTo(free);
        above++;
      } else {
        assertThat(floored).as("seed %d", seed).isLessThan(floor);
        below++;
      }
    }
    assertThat(Math.min(above, below)).as("both ways are tried").isGreaterThan(20);
  }
}
