package curvestock.packing;

import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.piece.AnnularSector;
import curvestock.piece.FreeShape;
import curvestock.piece.Grain;
import curvestock.piece.Piece;
import curvestock.piece.Shape;
import curvestock.piece.Strip;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;

/** Seeded pieces and sheets of all forms; the seed belongs in the message. */
final class RandomPacking {

  private final Random random;

  RandomPacking(long seed) {
    random = new Random(seed);
  }

  double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  int upTo(int most) {
    return 1 + random.nextInt(most);
  }

  Pose pose(double reach) {
    return new Pose(between(-reach, reach), between(-reach, reach), between(-7, 7));
  }

  Shape shape() {
    return switch (random.nextInt(6)) {
      case 0 -> sector(between(2, 60));
      case 1 -> sector(between(60, 180));
      case 2 -> sector(between(180, 355));
      case 3 -> new Strip(millimetres(between(20, 500)), millimetres(between(8, 120)));
      case 4 -> FreeShape.polygon(star(upTo(4) + 2, 30, 180));
      default -> random.nextInt(2) == 0 ? sector(360) : bigHole();
    };
  }

  private Shape sector(double degrees) {
    double radius = between(30, 500);
    double width = between(0.05, random.nextInt(4) == 0 ? 1.99 : 0.6) * radius;
    return new AnnularSector(millimetres(radius), millimetres(width), Angle.ofDegrees(degrees));
  }

  /** A plate with a round window. */
  private Shape bigHole() {
    double length = between(80, 300);
    Loop hole = Loop.circle(new Point(length / 2, length / 2), between(0.1, 0.4) * length);
    Outline plate = Outline.rectangle(length, length);
    return new FreeShape(new Outline(plate.outer(), List.of(hole.reversed())));
  }

  Piece piece(String id) {
    Grain grain =
        random.nextInt(4) == 0
            ? new Grain(Angle.ofDegrees(between(0, 180)), Angle.ofDegrees(between(0, 40)))
            : Grain.FREE;
    return new Piece(id, "random", shape(), grain);
  }

  Cutting cutting() {
    double kerf = random.nextInt(4) == 0 ? 0 : between(0.1, 8);
    double margin = random.nextInt(4) == 0 ? 0 : between(0.1, 15);
    return Cutting.leaving(millimetres(kerf), Length.ZERO, millimetres(margin));
  }

  /** Half of them rectangles; the others remnants with inner corners, and some with defects. */
  SheetStock sheet() {
    Outline outline =
        random.nextBoolean()
            ? Outline.rectangle(between(200, 1600), between(200, 1200))
            : SheetStock.polygonOutline(remnant());
    List<Outline> defects = new ArrayList<>();
    if (random.nextInt(3) == 0) {
      Point at = new Point(between(100, 500), between(100, 400));
      defects.add(
          random.nextBoolean()
              ? Outline.of(Loop.circle(at, between(5, 60)))
              : Outline.rectangle(between(5, 90), between(5, 90))
                  .at(new Pose(at.x(), at.y(), between(0, 3))));
    }
    return new SheetStock(
        "random sheet",
        outline,
        defects,
        millimetres(12),
        millimetres(12),
        new Money(100),
        OptionalInt.empty(),
        Angle.ofDegrees(random.nextInt(3) * 45));
  }

  private List<Point> remnant() {
    double w = between(400, 1500);
    double h = between(300, 1100);
    if (random.nextBoolean()) {
      double notchX = between(0.3, 0.8) * w;
      double notchY = between(0.3, 0.8) * h;
      return List.of(
          new Point(0, 0),
          new Point(w, 0),
          new Point(w, notchY),
          new Point(notchX, notchY),
          new Point(notchX, h),
          new Point(0, h));
    }
    List<Point> corners = new ArrayList<>();
    for (Point corner : star(upTo(4) + 3, h / 3, w / 2)) {
      corners.add(corner.plus(new Point(w / 2, w / 2)));
    }
    return corners;
  }

  /** Corners round a middle at random distances: never crosses itself, seldom convex. */
  private List<Point> star(int corners, double least, double most) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + between(0, 0.7)) / corners;
      points.add(Point.polar(between(Math.min(least, most), most), angle));
    }
    return points;
  }

  static Length millimetres(double value) {
    return Length.ofMillimetres(value);
  }
}
