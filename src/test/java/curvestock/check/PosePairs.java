package curvestock.check;

import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.piece.AnnularSector;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.SplittableRandom;

/**
 * Seeded pairs of sectors, rings and strips: anywhere, nearly touching, nearly concentric, stacked.
 * Each pair is measured three times: as the packing engine's last word does, as the check does, and
 * with forty digits.
 */
final class PosePairs {

  /** What doubles may lose at coordinates of a few metres. */
  static final double ROUNDING = 1e-9;

  private final SplittableRandom random;
  private int apart;
  private int near;
  private int sharing;
  private double worstPacker;
  private double worstCheck;

  PosePairs(long seed) {
    random = new SplittableRandom(seed);
  }

  private record Measures(boolean strip, double a, double b, double sweep) {

    Outline at(Pose pose) {
      return strip
          ? Outline.rectangle(a, b).at(pose)
          : new AnnularSector(
                  Length.ofMillimetres(a), Length.ofMillimetres(b), Angle.ofDegrees(sweep))
              .outline()
              .at(pose);
    }

    PreciseShape precise(Pose pose) {
      return strip
          ? PreciseShape.rectangle(a, b, pose.x(), pose.y(), pose.rotation())
          : PreciseShape.sector(
              a, b, Angle.ofDegrees(sweep).radians(), pose.x(), pose.y(), pose.rotation());
    }
  }

  private double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private Measures measures() {
    if (random.nextInt(4) == 0) {
      return new Measures(true, between(10, 400), between(10, 150), 0);
    }
    double radius = between(60, 900);
    double degrees = random.nextInt(6) == 0 ? 360 : between(1, 350);
    return new Measures(false, radius, between(10, Math.min(150, 1.9 * radius)), degrees);
  }

  private Pose pose(double reach) {
    return new Pose(between(0, reach), between(0, reach), between(0, 2 * Math.PI));
  }

  /** A small distance of any order of size from a nanometre to a centimetre, or none. */
  private double hair() {
    return random.nextInt(8) == 0
        ? 0
        : Math.pow(10, between(-6, 1)) * (random.nextBoolean() ? 1 : -1);
  }

  /**
   * Measures one pair.
   *
   * @throws AssertionError if two of the three disagree
   */
  void next() {
    Measures first = measures();
    Pose here = pose(900);
    Measures second = measures();
    Pose there = pose(900);
    switch (random.nextInt(5)) {
      case 0 -> {
        // Nearly concentric: the same gap all along.
        second = new Measures(first.strip, first.a + between(1, 60), first.b, first.sweep);
        there = new Pose(here.x() + hair(), here.y() + hair(), here.rotation() + hair() / 1000);
      }
      case 1 -> {
        // Side by side, nearly touching: moved along the first one's own axes.
        second = first;
        double step = first.b + hair();
        there =
            new Pose(
                here.x() - step * Math.sin(here.rotation()),
                here.y() + step * Math.cos(here.rotation()),
                here.rotation());
      }
      case 2 -> {
        // A strip that nearly touches a sector's outer edge in its middle.
        first = new Measures(false, between(60, 900), 40, between(1, 350));
        second = new Measures(true, between(10, 400), between(10, 150), 0);
        double out = here.rotation();
        double rim = first.a + first.b / 2 + hair();
        there =
            new Pose(
                here.x() + rim * Math.cos(out) - second.a / 2 * Math.sin(out),
                here.y() + rim * Math.sin(out) + second.a / 2 * Math.cos(out),
                out - Math.PI / 2);
      }
      default -> {
        // Anywhere.
      }
    }
    judge(first, here, second, there);
  }

  private void judge(Measures first, Pose here, Measures second, Pose there) {
    String pair = first + " at " + here + ", " + second + " at " + there;
    PreciseShape a = first.precise(here);
    PreciseShape b = second.precise(there);
    double precise = PreciseShape.distance(a, b).doubleValue();
    double packer = Math.max(0, Clearance.between(first.at(here), second.at(there)));
    double check = check(first.at(here), second.at(there));
    require(Math.abs(packer - precise) <= ROUNDING, "packer " + packer, precise, pair);
    require(
        check >= precise - ROUNDING && check <= precise + GapMeasure.ACCURACY + ROUNDING,
        "check " + check,
        precise,
        pair);
    worstPacker = Math.max(worstPacker, Math.abs(packer - precise));
    worstCheck = Math.max(worstCheck, Math.abs(check - precise));
    apart += precise > 0 ? 1 : 0;
    near += precise > 0 && precise < 1 ? 1 : 0;
    sharing += precise == 0 ? 1 : 0;
  }

  /** As {@code SpacingCheck} has it: nothing where one lies in the other. */
  private static double check(Outline first, Outline second) {
    TraceShape a = TraceShape.of(first);
    TraceShape b = TraceShape.of(second);
    try {
      double gap = GapMeasure.between(a.edges(), b.edges(), 1e9).distance();
      boolean nested =
          a.holds(b.outer().edges().get(0).at(0.5)) || b.holds(a.outer().edges().get(0).at(0.5));
      return nested ? 0 : gap;
    } catch (CheckException e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }

  private static void require(boolean holds, String found, double precise, String pair) {
    if (!holds) {
      throw new AssertionError(found + " mm, but with forty digits " + precise + " mm: " + pair);
    }
  }

  int apart() {
    return apart;
  }

  int near() {
    return near;
  }

  int sharing() {
    return sharing;
  }

  @Override
  public String toString() {
    return apart
        + " apart, "
        + near
        + " of them by less than 1 mm, "
        + sharing
        + " sharing wood; largest error of the packer "
        + worstPacker
        + " mm, of the check "
        + worstCheck
        + " mm";
  }
}
