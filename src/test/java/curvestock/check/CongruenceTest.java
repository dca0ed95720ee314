package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.piece.AnnularSector;
import curvestock.piece.FreeShape;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class CongruenceTest {

  private static final Outline SECTOR =
      new AnnularSector(Length.ofMillimetres(700), Length.ofMillimetres(100), Angle.ofDegrees(200))
          .outline();

  private static final Outline GUSSET =
      FreeShape.polygon(
              List.of(new Point(0, 0), new Point(160, 0), new Point(120, 90), new Point(0, 60)))
          .outline();

  private static Outline discWithHole(double x) {
    return new Outline(
        Loop.circle(Point.ORIGIN, 100), List.of(Loop.circle(new Point(x, 0), 10).reversed()));
  }

  private static Congruence.Fit best(Outline nominal, TraceShape drawn) {
    return Congruence.fits(TraceShape.of(nominal), drawn).stream()
        .min(Comparator.comparingDouble(Congruence.Fit::error))
        .orElseThrow();
  }

  /** Cuts every edge into parts at random, starts at any of them and maybe runs backwards. */
  private static TraceShape cutUp(Outline outline, Random random) {
    List<TraceLoop> loops = new ArrayList<>();
    for (TraceLoop loop : TraceShape.of(outline).loops()) {
      List<Trace> parts = new ArrayList<>();
      for (Trace edge : loop.edges()) {
        double at = 0;
        while (at < 1) {
          double next = at > 0.5 ? 1 : at + 0.2 + 0.3 * random.nextDouble();
          parts.add(part(edge, at, next));
          at = next;
        }
      }
      int start = random.nextInt(parts.size());
      List<Trace> turned = new ArrayList<>(parts.subList(start, parts.size()));
      turned.addAll(parts.subList(0, start));
      loops.add(new TraceLoop(turned).turned(random.nextBoolean()));
    }
    return TraceShape.of(loops);
  }

  private static Trace part(Trace edge, double from, double to) {
    return edge instanceof Trace.Round arc
        ? new Trace.Round(
            arc.centre(), arc.radius(), arc.first() + from * arc.sweep(), (to - from) * arc.sweep())
        : new Trace.Straight(edge.at(from), edge.at(to));
  }

  @Test
  void fits_movedAndCutUpShapes_findTheRotation() {
    long seed = 21;
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      double turn = 6 * random.nextDouble() - 3;
      Pose pose = new Pose(1000 * random.nextDouble(), 1000 * random.nextDouble(), turn);
      for (Outline outline : List.of(SECTOR, GUSSET, discWithHole(50))) {
        Congruence.Fit fit = best(outline, cutUp(outline.at(pose), random));

        assertThat(fit.error()).as("seed %d, case %d", seed, i).isLessThan(1e-6);
        double off = fit.rotation().orElseThrow() - turn;
        assertThat(Math.IEEEremainder(off, 2 * Math.PI))
            .as("seed %d, case %d", seed, i)
            .isCloseTo(0, Offset.offset(1e-7));
      }
    }
  }

  @Test
  void fits_ring_leavesTheRotationFree() {
    Congruence.Fit fit =
        best(discWithHole(0), cutUp(discWithHole(0).at(new Pose(3, 4, 1)), new Random(1)));

    assertThat(fit.error()).isLessThan(1e-9);
    assertThat(fit.rotation()).isEmpty();
  }

  @Test
  void fits_holeMovedByFiveHundredths_areOffByThat() {
    Congruence.Fit fit = best(discWithHole(50), TraceShape.of(discWithHole(50.05)));

    assertThat(fit.error()).isCloseTo(0.05, Offset.offset(1e-9));
  }

  @Test
  void fits_mirrored_areFarOffUnlessSymmetric() {
    TraceShape mirrored =
        TraceShape.of(
            FreeShape.polygon(
                    List.of(
                        new Point(0, 0), new Point(-160, 0), new Point(-120, 90), new Point(0, 60)))
                .outline());

    assertThat(Congruence.fits(TraceShape.of(GUSSET), mirrored)).allMatch(fit -> fit.error() > 1);
  }

  /** A sector that is a little too wide is off by that, less what the best fit can share out. */
  @Test
  void fits_alteredSector_errorIsOfTheSizeOfTheChange() {
    Outline wider =
        new AnnularSector(
                Length.ofMillimetres(700.01),
                Length.ofMillimetres(100.02),
                Angle.ofDegrees(200.001))
            .outline();
    double error = best(SECTOR, TraceShape.of(wider)).error();

    // The outer radii differ by 0.02 mm: no rigid move can hide more than a part of it.
    assertThat(error).isBetween(0.01, 0.03);
  }

  @Test
  void joined_finePolyline_staysManyLines() {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < 1500; i++) {
      corners.add(Point.polar(500, 2 * Math.PI * i / 1500));
    }
    TraceLoop loop = TraceLoop.of(Loop.polygon(corners));

    // Sagitta of a step: 500·(1 − cos(0.12°)) = 0.0011 mm, so at most a few steps join.
    assertThat(Joined.of(loop).edges()).hasSizeGreaterThan(400);
  }

  /** A disc with a plate-shaped hole: the hole's corners alone tell the rotation. */
  @Test
  void fits_discWithACorneredHole_findTheRotation() {
    Outline disc =
        new Outline(
            Loop.circle(Point.ORIGIN, 100),
            List.of(
                Loop.polygon(
                        List.of(
                            new Point(0, 0), new Point(30, 0), new Point(30, 20), new Point(0, 10)))
                    .reversed()));
    for (double turn : new double[] {0, 0.7, 2, -2.5}) {
      Congruence.Fit fit = best(disc, TraceShape.of(disc.at(new Pose(40, -7, turn))));

      assertThat(fit.error()).isLessThan(1e-9);
      assertThat(Math.IEEEremainder(fit.rotation().orElseThrow() - turn, 2 * Math.PI))
          .isCloseTo(0, Offset.offset(1e-9));
    }
  }

  @Test
  void fits_twoHolesOfOneSize_areToldApartByTheirPlaces() {
    Outline two =
        new Outline(
            Loop.circle(Point.ORIGIN, 100),
            List.of(
                Loop.circle(new Point(50, 0), 10).reversed(),
                Loop.circle(new Point(0, 50), 10).reversed()));
    Outline both =
        new Outline(
            Loop.circle(Point.ORIGIN, 100),
            List.of(
                Loop.circle(new Point(50, 0), 10).reversed(),
                Loop.circle(new Point(50, 0), 10).reversed()));

    assertThat(best(two, TraceShape.of(two.at(new Pose(1, 2, 3)))).error()).isLessThan(1e-9);
    // One drawn hole must not serve for two.
    assertThat(best(both, TraceShape.of(two)).error()).isGreaterThan(20);
  }

  @Test
  void errorInPlace_isByWhatIsDrawnWhereItIs() {
    TraceShape plate = TraceShape.of(Outline.rectangle(60, 40));
    TraceShape moved = TraceShape.of(Outline.rectangle(60, 40).at(new Pose(0.3, 0.4, 0)));

    assertThat(Congruence.errorInPlace(plate, moved).orElseThrow())
        .isCloseTo(0.5, Offset.offset(1e-12));
    assertThat(Congruence.errorInPlace(plate, plate).orElseThrow()).isZero();
    assertThat(Congruence.errorInPlace(plate, TraceShape.of(discWithHole(0)))).isEmpty();
    assertThat(Congruence.errorInPlace(plate, TraceShape.of(GUSSET))).isEmpty();
    assertThat(Congruence.fits(plate, TraceShape.of(discWithHole(0)))).isEmpty();
  }

  /** Arcs whose ends agree but which bulge otherwise: 2·3 over the half of a chord of 6. */
  @Test
  void fits_arcsOfOtherDirectionOrRadius_areNone() {
    Outline out = bow(1);
    Outline in = bow(-1);

    assertThat(Congruence.fits(TraceShape.of(out), TraceShape.of(in))).isEmpty();
    assertThat(best(out, TraceShape.of(out.at(new Pose(5, 6, 1)))).error()).isLessThan(1e-9);
  }

  /** A plate of 60 x 40 whose top is an arc of radius 50, bent out or in. */
  private static Outline bow(int outwards) {
    double half = Math.asin(30 / 50.0);
    double height = 50 * Math.cos(half);
    curvestock.geometry.Arc top =
        outwards > 0
            ? new curvestock.geometry.Arc(
                new Point(30, 40 - height), 50, Math.PI / 2 - half, 2 * half)
            : new curvestock.geometry.Arc(
                new Point(30, 40 + height), 50, -Math.PI / 2 + half, -2 * half);
    return Outline.of(
        new Loop(
            List.of(
                new curvestock.geometry.Segment(new Point(0, 0), new Point(60, 0)),
                new curvestock.geometry.Segment(new Point(60, 0), new Point(60, 40)),
                top,
                new curvestock.geometry.Segment(new Point(0, 40), new Point(0, 0)))));
  }
}
