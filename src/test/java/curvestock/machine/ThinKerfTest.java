package curvestock.machine;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.check.Expectation;
import curvestock.check.Finding;
import curvestock.check.LayoutCheck;
import curvestock.drawing.MachineDrawing;
import curvestock.drawing.SampleLayouts;
import curvestock.dxf.SheetDxf;
import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.machine.MachineSetup.Outlines;
import curvestock.piece.FreeShape;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.units.Length;
import curvestock.units.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines for arcs where the kerf is a laser's: arcs about corners are a tenth of a millimetre. */
class ThinKerfTest {

  private static final Cutting CUTTING =
      new Cutting(Length.ofMillimetres(0.2), Length.ofMillimetres(1.8), Length.ofMillimetres(6));

  /** A plate with as many corners as asked for, each of which turns alike. */
  private static Piece plate(int corners) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      points.add(Point.polar(120 + 40 * (i % 2), 2 * Math.PI * i / corners));
    }
    return Piece.of("P", "plate", FreeShape.polygon(points));
  }

  /** Roadbed of a straight, an arc so flat that it rises 0.0025 mm on 10 mm, and a sharper one. */
  private static Piece eased() {
    List<Edge> outer = new ArrayList<>();
    Arc flat = new Arc(new Point(100, -5032), 5000, Math.PI / 2, -0.002);
    Arc sharp = bend(flat, 400, -0.5);
    outer.add(new Segment(new Point(0, -32), new Point(100, -32)));
    outer.add(flat);
    outer.add(sharp);
    Arc back = new Arc(sharp.centre(), 464, sharp.startAngle() + sharp.sweep(), -sharp.sweep());
    Arc flatBack = new Arc(flat.centre(), 5064, flat.startAngle() + flat.sweep(), -flat.sweep());
    outer.add(new Segment(sharp.end(), back.start()));
    outer.add(back);
    outer.add(flatBack);
    outer.add(new Segment(flatBack.end(), new Point(0, 32)));
    outer.add(new Segment(new Point(0, 32), new Point(0, -32)));
    return Piece.of("E", "eased", new FreeShape(Outline.of(new Loop(outer))));
  }

  /** The arc that goes on from another in its direction. */
  private static Arc bend(Arc from, double radius, double sweep) {
    double angle = from.startAngle() + from.sweep();
    return new Arc(from.end().minus(Point.polar(radius, angle)), radius, angle, sweep);
  }

  @ParameterizedTest
  @CsvSource({
    "0.005, FINISHED",
    "0.01, FINISHED",
    "0.05, FINISHED",
    "0.2, FINISHED",
    "0.005, OFFSET",
    "0.01, OFFSET",
    "0.02, OFFSET",
    "0.05, OFFSET",
    "0.1, OFFSET",
    "0.2, OFFSET"
  })
  void lines_ofAThinKerf_areRightWhenReadBack(double within, Outlines outlines) throws Exception {
    for (Piece piece : List.of(plate(3), plate(4), plate(6), plate(8), plate(12), eased())) {
      Layout layout =
          new Layout(
              SampleLayouts.SHEET, CUTTING, List.of(new Placement(piece, new Pose(400, 400, 0.7))));
      MachineSetup setup =
          MachineFilesTest.setup(outlines, within, Optional.empty(), LengthUnit.MILLIMETRE, true);
      MachineSheet sheet = MachineSheet.of(layout, List.of("T1"), setup);

      for (String drawing : List.of(MachineDrawing.svg(sheet), SheetDxf.of(sheet))) {
        assertThat(LayoutCheck.check(drawing, Expectation.of(layout).in(sheet.form())).findings())
            .extracting(Finding::message)
            .isEmpty();
      }
    }
  }
}
