package curvestock.drawing;

import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.AnnularSector;
import curvestock.piece.FreeShape;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;

/** Valid layouts of known form for the tests of drawing and check. All figures are invented. */
public final class SampleLayouts {

  public static final Cutting CUTTING =
      new Cutting(Length.ofInches(0.0625), Length.ofInches(0.125), Length.ofInches(0.25));

  public static final SheetStock SHEET =
      SheetStock.rectangle(
          "4x8 ft",
          Length.ofInches(96),
          Length.ofInches(48),
          Length.ofInches(0.472),
          new Money(6400));

  /** A quarter turn of 31 in centre radius, 4 in wide. */
  public static final Piece QUARTER =
      Piece.of(
          "A",
          "quarter turn",
          new AnnularSector(Length.ofInches(31), Length.ofInches(4), Angle.ofDegrees(90)));

  /** A four-cornered plate without any symmetry. */
  public static final Piece PLATE =
      Piece.of(
          "P",
          "gusset",
          FreeShape.polygon(
              List.of(new Point(0, 0), new Point(160, 0), new Point(120, 90), new Point(0, 60))));

  public static final Piece RING =
      Piece.of(
          "R",
          "whole turn",
          new AnnularSector(
              Length.ofMillimetres(300), Length.ofMillimetres(90), Angle.ofDegrees(360)));

  public static final Piece BLOCK =
      Piece.of("B", "riser block", new Strip(Length.ofMillimetres(140), Length.ofMillimetres(90)));

  private SampleLayouts() {}

  /** Quarter turns shifted along the sheet by the least pitch at which their corners clear. */
  public static Layout stack() {
    return new Layout(SHEET, CUTTING, stack(QUARTER, pitch((AnnularSector) QUARTER.shape())));
  }

  /** The axis-stack formula of the shared figures, tagged there 'derived'. */
  public static double pitch(AnnularSector sector) {
    double outer = sector.outerRadius().millimetres();
    double inner = sector.innerRadius().millimetres();
    double half = sector.sweep().radians() / 2;
    double reach = outer + CUTTING.spacing().millimetres();
    double side = inner * Math.sin(half);
    return Math.sqrt(reach * reach - side * side) - inner * Math.cos(half);
  }

  private static List<Placement> stack(Piece piece, double pitch) {
    AnnularSector sector = (AnnularSector) piece.shape();
    double margin = CUTTING.margin().millimetres();
    double length = SHEET.length().millimetres();
    double outer = sector.outerRadius().millimetres();
    double back = sector.innerRadius().millimetres() * Math.cos(sector.sweep().radians() / 2);
    double middle = SHEET.width().millimetres() / 2;
    List<Placement> placements = new ArrayList<>();
    double x = margin - back;
    while (x + outer <= length - margin) {
      placements.add(new Placement(piece, new Pose(x, middle, 0)));
      x += pitch;
    }
    return placements;
  }

  /** A ring with a plate in its hole, blocks, plates and turned sectors, far from touching. */
  public static Layout mixed() {
    List<Placement> placements = new ArrayList<>();
    placements.add(new Placement(RING, new Pose(380, 400, 0.3)));
    placements.add(new Placement(PLATE, new Pose(340, 380, 0.5)));
    placements.add(new Placement(QUARTER, new Pose(1000, 120, Math.toRadians(60))));
    placements.add(new Placement(QUARTER, new Pose(1080, 258.6, Math.toRadians(60))));
    for (int i = 0; i < 4; i++) {
      placements.add(new Placement(BLOCK, new Pose(160 + 150 * i, 1100, i * Math.PI / 2)));
    }
    placements.add(new Placement(PLATE, new Pose(2100, 900, 2)));
    return new Layout(SHEET, CUTTING, placements);
  }

  /** 152 small sectors in four stacks, and 20 splice plates. */
  public static Layout many() {
    Piece small =
        Piece.of(
            "N",
            "eighth turn",
            new AnnularSector(
                Length.ofMillimetres(300), Length.ofMillimetres(50), Angle.ofDegrees(45)));
    Piece plate =
        Piece.of(
            "SP", "splice plate", new Strip(Length.ofMillimetres(110), Length.ofMillimetres(46)));
    double pitch = pitch((AnnularSector) small.shape());
    List<Placement> placements = new ArrayList<>();
    for (int row = 0; row < 4; row++) {
      for (int i = 0; i < 38; i++) {
        placements.add(new Placement(small, new Pose(-242 + i * pitch, 150 + row * 260, 0)));
      }
    }
    for (int i = 0; i < 20; i++) {
      placements.add(new Placement(plate, new Pose(80 + i * 114, 1180, 0)));
    }
    return new Layout(SHEET, CUTTING, placements);
  }

  public static SheetTitle title(LengthStyle style) {
    return new SheetTitle("Attic climb", 1, 2, style, "birch plywood", true, List.of());
  }
}
