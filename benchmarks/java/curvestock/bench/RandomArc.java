package curvestock.bench;

import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * An arc on a usual sheet with a usual gap; the margin is twice the gap. Millimetres.
 *
 * @param parts of a full turn
 * @param radius at mid-width
 * @param sheet length and width
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record RandomArc(int parts, double radius, double width, double[] sheet, double gap) {

  private static final double[][] SHEETS = {
    {2438.4, 1219.2}, {2440, 1220}, {2500, 1250}, {1219.2, 1219.2}, {1525, 1525}, {1524, 1524}
  };

  private static final double[] GAPS = {3.175, 6.35, 3, 6};

  /** The next of a row of random questions on these sheets. */
  static RandomArc next(SplittableRandom random, int[] parts, int[] sheets) {
    int n = parts[random.nextInt(parts.length)];
    double radius = 240 * StrictMath.pow(4, random.nextDouble());
    double width = radius * random.nextDouble(0.1, 0.22);
    return new RandomArc(
        n,
        Math.rint(radius),
        Math.rint(width),
        SHEETS[sheets[random.nextInt(sheets.length)]],
        GAPS[random.nextInt(GAPS.length)]);
  }

  Piece piece() {
    return Piece.of(
        "A",
        "segment",
        new AnnularSector(
            Length.ofMillimetres(radius),
            Length.ofMillimetres(width),
            Angle.ofDegrees(360.0 / parts)));
  }

  SheetStock stock() {
    return SheetStock.rectangle(
        "sheet",
        Length.ofMillimetres(sheet[0]),
        Length.ofMillimetres(sheet[1]),
        Length.ofMillimetres(12),
        Money.ZERO);
  }

  Cutting cutting() {
    return Cutting.leaving(Length.ofMillimetres(gap), Length.ZERO, Length.ofMillimetres(2 * gap));
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "1/%d, radius %.0f, width %.0f, gap %.1f, sheet %.0f × %.0f",
        parts,
        radius,
        width,
        gap,
        sheet[0],
        sheet[1]);
  }
}
