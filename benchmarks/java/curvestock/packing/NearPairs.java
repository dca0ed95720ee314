package curvestock.packing;

import curvestock.geometry.Flattening;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.List;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Polygon;

/**
 * Seeded pairs of quarter turns (R 30 in, 5 in wide) whose bounding boxes come near, made ready for
 * each way of measuring their distance.
 */
final class NearPairs {

  static final int COUNT = 1000;

  /** 0.001 in, in millimetres. */
  static final double FLATTENING = 0.0254;

  final Outline[] first = new Outline[COUNT];
  final Outline[] second = new Outline[COUNT];
  final Polygon[] firstFlat = new Polygon[COUNT];
  final Polygon[] secondFlat = new Polygon[COUNT];
  final double[] turn = new double[COUNT];
  final double[] x = new double[COUNT];
  final double[] y = new double[COUNT];
  final Piece piece =
      Piece.of(
          "A",
          "arc",
          new AnnularSector(Length.ofInches(30), Length.ofInches(5), Angle.ofDegrees(90)));
  final Body body = new Body(piece);
  final Overlap overlap;

  NearPairs(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Flattening flattening = new Flattening(FLATTENING);
    Outline home = piece.shape().outline();
    for (int k = 0; k < COUNT; k++) {
      do {
        turn[k] = random.nextDouble() * 2 * Math.PI;
        x[k] = (random.nextDouble() - 0.5) * 3000;
        y[k] = (random.nextDouble() - 0.5) * 3000;
        second[k] = home.at(new Pose(x[k], y[k], turn[k]));
      } while (home.box().distance(second[k].box()) > 10);
      first[k] = home;
      firstFlat[k] = flattening.inside(home);
      secondFlat[k] = flattening.inside(second[k]);
    }
    SheetStock sheet =
        SheetStock.rectangle(
            "sheet",
            Length.ofMillimetres(1e5),
            Length.ofMillimetres(1e5),
            Length.ofMillimetres(12),
            Money.ZERO);
    Cutting cutting = Cutting.leaving(Length.ofInches(0.125), Length.ZERO, Length.ZERO);
    overlap = new Overlap(new Arena(sheet, cutting), List.of(body, body));
  }

  int cornersOfFlatPiece() {
    return firstFlat[0].getNumPoints();
  }
}
