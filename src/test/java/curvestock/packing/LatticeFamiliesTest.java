package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.layout.TrueGaps;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lattices against closed forms, and that what is laid from them keeps its gaps. */
class LatticeFamiliesTest {

  private static final double INCH = 25.4;

  private static List<PeriodicLattice> lattices(Piece piece, double gapInches) {
    return new LatticeFamilies(new Body(piece), gapInches * INCH).all();
  }

  private static PeriodicLattice named(List<PeriodicLattice> lattices, String name) {
    return lattices.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  /**
   * Least pitch of sectors shifted along their bisector, where the inner corner governs: √((R+k)² −
   * r²·sin²(a/2)) − r·cos(a/2), and never below R − r + k. Values derived for this project and
   * checked there by brute force; no published source.
   */
  @ParameterizedTest
  @CsvSource({
    "27.5, 32.5, 90, 0.125, 6.7512",
    "27.5, 32.5, 120, 0.125, 8.5481",
    "27.5, 32.5, 60, 0.125, 5.7702",
    "28, 32, 60, 0, 4.5263",
    "28, 32, 60, 0.25, 4.8040",
    "28, 32, 90, 0, 5.3406",
    "28, 32, 90, 0.25, 5.6581",
    "28, 32, 120, 0, 6.8806",
    "28, 32, 120, 0.25, 7.2618",
    "28, 32, 180, 0, 15.4919",
    "28, 32, 180, 0.25, 16.0020"
  })
  void stack_ofSectors_hasThePitchOfTheClosedForm(
      double inner, double outer, double degrees, double gap, double pitch) {
    double half = Math.toRadians(degrees) / 2;
    double side = inner * Math.sin(half);
    double closed = Math.sqrt((outer + gap) * (outer + gap) - side * side) - inner * Math.cos(half);

    PeriodicLattice stack = named(lattices(Sheets.sector(inner, outer, degrees), gap), "stack");

    assertThat(stack.stepY() / INCH).isCloseTo(closed, Offset.offset(1e-6));
    assertThat(stack.stepY() / INCH).isCloseTo(pitch, Offset.offset(6e-5));
  }

  /**
   * Distance of alternating columns at 1/4 in gap, after ρ = −s·cos α + √((2R+k)² − (s·sin α −
   * k)²), X = ρ·sin α + k·cos α, s the stack's pitch. Derived for this project; no published
   * source. The program tries 64 heights, so it may miss the least distance by a little, never beat
   * it.
   */
  @ParameterizedTest
  @CsvSource({
    "27.5, 32.5, 45, 23.2084",
    "27.5, 32.5, 60, 30.2552",
    "27.5, 32.5, 90, 42.7456",
    "27.5, 32.5, 120, 52.4969",
    "27.5, 32.5, 180, 62.8497",
    "15, 18, 45, 12.8719",
    "15, 18, 60, 16.7451",
    "15, 18, 90, 23.6131",
    "15, 18, 120, 28.9880",
    "15, 18, 180, 34.8014"
  })
  void alternatingColumns_ofSectors_areAsFarApartAsTheClosedForm(
      double inner, double outer, double degrees, double apart) {
    double gap = 0.25;

    PeriodicLattice columns =
        named(lattices(Sheets.sector(inner, outer, degrees), gap), "alternating columns");

    double found = columns.nextX() / 2 / INCH;
    assertThat(found).as(String.valueOf(found)).isBetween(apart - 6e-5, apart * 1.004);
  }

  @Test
  void patterns_ofStrips_areRowsWithTheGapBetween() {
    List<PeriodicLattice> lattices = lattices(Sheets.strip("T", 10, 3), 0.25);

    PeriodicLattice best = named(lattices, "stack");
    assertThat(best.areaPerPiece() / INCH / INCH).isCloseTo(10.25 * 3.25, Offset.offset(1e-4));
  }

  /** Each piece of a fan is turned on by the same angle, and rests at the gap on one below it. */
  @ParameterizedTest
  @CsvSource({"27.5, 32.5, 90", "13.5, 16.5, 180", "8, 20, 60"})
  void fan_ofSectors_turnsOnEvenlyWithEachPieceAtTheGap(
      double inner, double outer, double degrees) {
    Piece piece = Sheets.sector(inner, outer, degrees);
    Body body = new Body(piece);
    double gap = 0.125;

    List<double[]> cell = named(lattices(piece, gap), "fan").cell();

    assertThat(cell).hasSizeGreaterThanOrEqualTo(3);
    double turn = cell.get(1)[2] - cell.get(0)[2];
    assertThat(turn).isPositive();
    for (int k = 1; k < cell.size(); k++) {
      double[] at = cell.get(k);
      assertThat(at[2] - cell.get(k - 1)[2]).isCloseTo(turn, Offset.offset(1e-12));
      double least = Double.POSITIVE_INFINITY;
      for (double[] below : cell.subList(0, k)) {
        least =
            Math.min(
                least,
                Contact.gap(body, below[2], body, at[0] - below[0], at[1] - below[1], at[2]));
      }
      assertThat(least / INCH).isCloseTo(gap, Offset.offset(1e-6));
    }
  }

  /** Half a million tenth-inch pieces would fit: no layout goes far beyond what is wanted. */
  @Test
  void candidates_ofTinyPieces_stopAtTheNumberWanted() {
    Piece tiny = Sheets.sector(0.05, 0.15, 90);
    Arena arena = new Arena(Sheets.inches(96, 48), Sheets.cutting(0.01, 0.25));

    List<Structured.Candidate> candidates =
        new Structured(arena, new Body(tiny), 1000).candidates();

    assertThat(candidates).isNotEmpty();
    assertThat(candidates).allMatch(candidate -> candidate.count() <= 1000);
    assertThat(candidates.get(0).count()).isEqualTo(1000);
  }

  /** Nine copies of each cell, two steps each way: no two of them nearer than the gap. */
  @Test
  void patterns_ofAnyShape_keepTheGapWhereverTheyAreRepeated() {
    int checked = 0;
    for (long seed = 1; seed <= 120; seed++) {
      RandomPacking random = new RandomPacking(seed);
      Piece piece = Piece.of("A", "random", random.shape());
      Body body = new Body(piece);
      double gap = random.between(0.5, 8);
      for (PeriodicLattice lattice : new LatticeFamilies(body, gap).all()) {
        checked++;
        assertThat(leastGap(body, lattice))
            .as("seed %d, %s of %s", seed, lattice.name(), piece.shape())
            .isGreaterThanOrEqualTo(gap - 1e-6);
      }
    }
    assertThat(checked).isGreaterThan(300);
  }

  private static double leastGap(Body body, PeriodicLattice lattice) {
    double least = Double.POSITIVE_INFINITY;
    double[] a = lattice.cell().get(0);
    for (int column = -3; column <= 3; column++) {
      for (int step = -6; step <= 6; step++) {
        for (double[] first : lattice.cell()) {
          for (double[] b : lattice.cell()) {
            boolean self = column == 0 && step == 0 && first == b;
            double x = b[0] - first[0] + step * lattice.stepX() + column * lattice.nextX();
            double y = b[1] - first[1] + step * lattice.stepY() + column * lattice.nextY();
            if (!self && Math.hypot(x, y) < 2.5 * body.radius + 4 * Math.hypot(a[0], a[1])) {
              least = Math.min(least, Contact.gap(body, first[2], body, x, y, b[2]));
            }
          }
        }
      }
    }
    return least;
  }

  @Test
  void candidates_onAnyRectangle_areValid() {
    int checked = 0;
    for (long seed = 1; seed <= 25; seed++) {
      RandomPacking random = new RandomPacking(seed);
      Piece piece = Piece.of("A", "random", random.shape());
      SheetStock sheet = Sheets.inches(random.between(10, 60), random.between(10, 50));
      Cutting cutting = Sheets.cutting(random.between(0.001, 0.3), random.between(0, 0.5));
      Body body = new Body(piece);
      for (Structured.Candidate candidate :
          new Structured(new Arena(sheet, cutting), body).candidates()) {
        Layout layout = layout(piece, sheet, cutting, candidate.poses());
        if (layout.placements().size() <= 60) {
          checked++;
          assertThat(TrueGaps.hold(layout))
              .as("seed %d, %s of %s", seed, candidate.name(), piece.shape())
              .isTrue();
        }
      }
    }
    assertThat(checked).isGreaterThan(50);
  }

  private static Layout layout(Piece piece, SheetStock sheet, Cutting cutting, double[] poses) {
    List<Placement> placements = new ArrayList<>();
    for (int k = 0; k < poses.length; k += 3) {
      placements.add(new Placement(piece, new Pose(poses[k], poses[k + 1], poses[k + 2])));
    }
    return new Layout(sheet, cutting, placements);
  }
}
