package curvestock.bound;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Flattening;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.piece.AnnularSector;
import curvestock.piece.FreeShape;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;

/** Areas by hand and by JTS, proofs that a piece does not fit, and laws that bounds obey. */
class BoundTest {

  private static Length mm(double value) {
    return Length.ofMillimetres(value);
  }

  private static Cutting cutting(double spacing, double margin) {
    return Cutting.leaving(mm(spacing), Length.ZERO, mm(margin));
  }

  private static Piece sector(double inner, double outer, double degrees) {
    return Piece.of(
        "S",
        "segment",
        new AnnularSector(mm((inner + outer) / 2), mm(outer - inner), Angle.ofDegrees(degrees)));
  }

  private static Piece strip(double length, double width) {
    return Piece.of("T", "strip", new Strip(mm(length), mm(width)));
  }

  private static SheetStock sheet(Outline outline) {
    return new SheetStock(
        "sheet",
        outline,
        List.of(),
        mm(12),
        mm(12),
        new Money(1),
        OptionalInt.empty(),
        Angle.ofDegrees(0));
  }

  private static SheetStock rectangle(double length, double width) {
    return sheet(Outline.rectangle(length, width));
  }

  // ---- areas ----

  /** A + P·d + π·d² by hand: strip 100 × 40 with d = 2; half ring 100..140 with d = 3. */
  @Test
  void ofPiece_byHand() {
    assertThat(InflatedArea.ofPiece(strip(100, 40), cutting(4, 0)))
        .isCloseTo(4000 + 280 * 2 + Math.PI * 4, Offset.offset(1e-9));
    double area = Math.PI / 2 * (140 * 140 - 100 * 100);
    double perimeter = Math.PI * 240 + 80;
    assertThat(InflatedArea.ofPiece(sector(100, 140, 180), cutting(6, 0)))
        .isCloseTo(area + perimeter * 3 + Math.PI * 9, Offset.offset(1e-6));
  }

  @Test
  void ofSheet_byHand() {
    assertThat(InflatedArea.ofSheet(rectangle(1000, 500), cutting(4, 10)))
        .isCloseTo(980 * 480 + 2 * (980 + 480) * 2 + Math.PI * 4, Offset.offset(1e-6));
  }

  /**
   * JTS buffers a polygon inside the piece, with 64 chords a quarter: all errs low, so it may fall
   * short of the true widened area by the flattening only. The bound's area may be smaller where
   * the formula is not sure, never larger.
   */
  @Test
  void ofPiece_anyShape_isNeverMoreThanTheBufferOfJts() {
    Flattening chords = new Flattening(0.002);
    int equal = 0;
    int cases = 600;
    for (long seed = 1; seed <= cases; seed++) {
      Random random = new Random(seed);
      Piece piece = anyPiece(random);
      double d = random.nextDouble() * (random.nextInt(3) == 0 ? 60 : 6);
      Outline outline = piece.shape().outline();
      Geometry widened = chords.around(outline).buffer(d, 64);
      double slack = 0.01 * (outline.perimeter() + 2 * Math.PI * d) + 2e-4 * Math.PI * d * d;

      double area = InflatedArea.ofPiece(piece, cutting(2 * d, 0));

      assertThat(area)
          .as("seed %d, %s widened by %f", seed, piece.shape(), d)
          .isLessThanOrEqualTo(widened.getArea() + slack);
      equal += Math.abs(area - widened.getArea()) <= slack ? 1 : 0;
    }
    assertThat(equal).as("cases in which the formula is exact").isGreaterThan(cases / 3);
  }

  private static Piece anyPiece(Random random) {
    double r = 20 + 400 * random.nextDouble();
    return switch (random.nextInt(4)) {
      case 0 -> strip(10 + r, 5 + 100 * random.nextDouble());
      case 1 -> Piece.of("F", "polygon", FreeShape.polygon(star(random)));
      case 2 -> sector(r, r + 5 + 90 * random.nextDouble(), 360 * random.nextDouble() + 1e-3);
      default -> sector(r, r + 5 + 90 * random.nextDouble(), random.nextBoolean() ? 360 : 350);
    };
  }

  private static List<Point> star(Random random) {
    int corners = 3 + random.nextInt(5);
    return java.util.stream.IntStream.range(0, corners)
        .mapToObj(
            i -> Point.polar(40 + 200 * random.nextDouble(), 2 * Math.PI * (i + 0.4) / corners))
        .toList();
  }

  /** The wood that can be used, by JTS: the sheet shrunk by the margin, then widened. */
  @Test
  void ofSheet_anyOutline_isNeverLessThanTheBufferOfJts() {
    for (long seed = 1; seed <= 200; seed++) {
      Random random = new Random(seed);
      Outline outline =
          random.nextBoolean()
              ? Outline.rectangle(200 + 900 * random.nextDouble(), 100 + random.nextInt(800))
              : SheetStock.polygonOutline(star(random));
      double margin = 10 * random.nextDouble() * random.nextInt(2);
      double d = 6 * random.nextDouble();
      Geometry usable = new Flattening(0.01).inside(outline).buffer(-margin, 64).buffer(d, 64);

      assertThat(InflatedArea.ofSheet(sheet(outline), cutting(2 * d, margin)))
          .as("seed %d, %s, margin %f, half gap %f", seed, outline, margin, d)
          .isGreaterThanOrEqualTo(usable.getArea() - 1e-6 * usable.getArea());
    }
  }

  // ---- counts ----

  /**
   * By hand: squares of 100 with gap 10 on 650 × 320 with margin 5 take 110·110 less the corners,
   * 12078.54 mm² each, of (640·310 + 2·950·5 + π·25 = 207978.5): 17.2.
   */
  @Test
  void quick_squaresByHand() {
    Bound bound = Bound.quick(strip(100, 100), rectangle(650, 320), cutting(10, 5));

    assertThat(bound.count()).isEqualTo(17);
    assertThat(bound.proof()).contains("area");
  }

  @Test
  void quick_squaresThatFillTheSheet_areAllAllowed() {
    for (int nx = 1; nx <= 12; nx++) {
      for (int ny = 1; ny <= 7; ny++) {
        Bound bound = Bound.quick(strip(50, 50), rectangle(50 * nx, 50 * ny), cutting(0, 0));
        assertThat(bound.count()).as("%d x %d", nx, ny).isEqualTo(nx * ny);
      }
    }
  }

  @Test
  void quick_moreKerf_neverRaisesTheBound() {
    for (long seed = 1; seed <= 200; seed++) {
      Random random = new Random(seed);
      Piece piece = anyPiece(random);
      SheetStock sheet =
          rectangle(700 + 1500 * random.nextDouble(), 700 + 500 * random.nextDouble());
      double margin = 10 * random.nextDouble();
      int last = Integer.MAX_VALUE;
      for (double kerf = 0; kerf < 40; kerf += 1 + random.nextInt(4)) {
        int count = Bound.quick(piece, sheet, cutting(kerf, margin)).count();
        assertThat(count)
            .as("seed %d, %s, margin %f, kerf %f", seed, piece.shape(), margin, kerf)
            .isLessThanOrEqualTo(last);
        last = count;
      }
    }
  }

  @Test
  void or_ofTwoBounds_isTheLower() {
    Bound low = new Bound(3, "counted");
    Bound high = new Bound(4, "weighed");

    assertThat(low.or(high)).isEqualTo(low);
    assertThat(high.or(low)).isEqualTo(low);
  }

  // ---- fit ----

  private static boolean impossible(Piece piece, SheetStock sheet, double margin) {
    return Fit.isImpossible(piece, sheet, cutting(3, margin));
  }

  @ParameterizedTest
  @CsvSource({"0", "6.35"})
  void isImpossible_stripAsLargeAsTheSheet_isNotClaimedButALittleLargerIs(double margin) {
    SheetStock sheet = rectangle(700 + 2 * margin, 200 + 2 * margin);

    assertThat(impossible(strip(700, 200), sheet, margin)).isFalse();
    assertThat(impossible(strip(200, 700), sheet, margin)).isFalse();
    // A thousandth of an inch.
    assertThat(impossible(strip(700.0254, 200), sheet, margin)).isTrue();
    assertThat(impossible(strip(700, 200.0254), sheet, margin)).isTrue();
  }

  @Test
  void isImpossible_ringAsWideAsTheSheet_isNotClaimedButALittleWiderIs() {
    SheetStock sheet = rectangle(900, 800);

    assertThat(impossible(sector(300, 400, 360), sheet, 0)).isFalse();
    assertThat(impossible(sector(300, 400.0127, 360), sheet, 0)).isTrue();
  }

  /** A strip of width w and length l fits a square of side (l + w)/√2 at 45°, and no smaller. */
  @Test
  void isImpossible_stripThatFitsAtFortyFiveDegreesOnly_isFound() {
    double side = (300 + 20) / Math.sqrt(2);

    assertThat(impossible(strip(300, 20), rectangle(side + 1e-6, side + 1e-6), 0)).isFalse();
    assertThat(impossible(strip(300, 20), rectangle(side - 0.02, side - 0.02), 0)).isTrue();
  }

  /**
   * Half turns: on a long sheet of height h one fits as long as its outer radius is at most h, its
   * chord along the sheet.
   */
  @Test
  void isImpossible_halfTurnOfTheSheetsHeight_isExactToAThousandthOfAnInch() {
    assertThat(impossible(sector(500, 600, 180), rectangle(3000, 600), 0)).isFalse();
    assertThat(impossible(sector(500, 600.0254, 180), rectangle(3000, 600), 0)).isTrue();
  }

  @Test
  void isImpossible_marginBeyondHalfTheSheet_isProven() {
    assertThat(impossible(strip(1, 1), rectangle(100, 100), 50)).isTrue();
    assertThat(impossible(strip(1, 1), rectangle(100, 100), 500)).isTrue();
  }
}
