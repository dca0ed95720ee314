package curvestock.layout;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.check.CheckException;
import curvestock.check.Expectation;
import curvestock.check.LayoutCheck;
import curvestock.drawing.SheetDrawing;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.piece.AnnularSector;
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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Margins and spacings of nothing, where touching is right and crossing is not. */
class TrueGapsTest {

  private static final Cutting NOTHING = Cutting.leaving(Length.ZERO, Length.ZERO, Length.ZERO);

  private static final Piece STRIP = Piece.of("T", "strip", new Strip(mm(200), mm(50)));

  private static final Outline RECTANGLE = Outline.rectangle(600, 400);

  private static final Outline CUT_OFF =
      SheetStock.polygonOutline(
          List.of(
              new Point(0, 0),
              new Point(600, 0),
              new Point(600, 250),
              new Point(420, 400),
              new Point(0, 400)));

  private static Length mm(double millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static SheetStock sheet(Outline outline) {
    return new SheetStock(
        "sheet",
        outline,
        List.of(Outline.rectangle(20, 20).at(new Pose(300, 200, 0))),
        mm(12),
        mm(12),
        new Money(4000),
        OptionalInt.empty(),
        Angle.ofDegrees(0));
  }

  /** The strip's frame lies in its middle. */
  private static Layout layout(Outline sheet, double... xy) {
    List<Placement> placements = new java.util.ArrayList<>();
    for (int k = 0; k < xy.length; k += 2) {
      placements.add(new Placement(STRIP, new Pose(xy[k], xy[k + 1], 0)));
    }
    return new Layout(sheet(sheet), NOTHING, placements);
  }

  @ParameterizedTest
  @CsvSource({
    "100, 25, true, 0", "600, 25, false, -100", "0, 25, false, -100", "100, 0, false, -25",
    "500, 375, true, 0", "100, 375, true, 0", "800, 25, false, -300", "500.1, 25, false, -0.1",
  })
  void hold_marginOfNothing_isTheSheetItself(double x, double y, boolean holds, double gap) {
    Layout layout = layout(RECTANGLE, x, y);

    assertThat(TrueGaps.hold(layout)).isEqualTo(holds);
    assertThat(TrueGaps.broken(layout).isEmpty()).isEqualTo(holds);
    assertThat(TrueGaps.tightest(layout).get(0).holds()).isEqualTo(holds);
    assertThat(layout.sheet().inside(layout.placements().get(0).outline()))
        .isCloseTo(gap, org.assertj.core.data.Offset.offset(1e-9));
  }

  @Test
  void hold_onASheetWithACutOffCorner_crossingTheSlantIsWrong() {
    assertThat(TrueGaps.hold(layout(CUT_OFF, 480, 350))).isFalse();
    assertThat(TrueGaps.hold(layout(CUT_OFF, 100, 375))).isTrue();
    assertThat(TrueGaps.tightest(layout(CUT_OFF, 480, 350)).get(0).gap()).isLessThan(-10);
  }

  @Test
  void hold_spacingOfNothing_piecesMayTouchAndNotOverlap() {
    assertThat(TrueGaps.hold(layout(RECTANGLE, 100, 25, 300, 25, 100, 75))).isTrue();
    assertThat(TrueGaps.hold(layout(RECTANGLE, 100, 25, 100, 25))).isFalse();
    assertThat(TrueGaps.hold(layout(RECTANGLE, 100, 25, 299.99, 25))).isFalse();
    assertThat(TrueGaps.hold(layout(RECTANGLE, 320, 210))).as("over a defect").isFalse();
  }

  /** What passes here passes the check of the drawing, which shares no code with it. */
  @ParameterizedTest
  @CsvSource({"1", "2"})
  void hold_randomLayouts_agreesWithTheCheckOfTheDrawing(long seed) throws CheckException {
    Random random = new Random(seed);
    int held = 0;
    int broken = 0;
    for (int i = 0; i < 150; i++) {
      Piece bend =
          Piece.of(
              "S",
              "segment",
              new AnnularSector(
                  mm(80 + random.nextInt(120)),
                  mm(30 + random.nextInt(40)),
                  Angle.ofDegrees(20 + random.nextInt(100))));
      SheetStock sheet = sheet(random.nextBoolean() ? RECTANGLE : CUT_OFF);
      List<Placement> placements = new java.util.ArrayList<>();
      for (Piece piece : List.of(bend, STRIP)) {
        double angle = random.nextInt(8) * Math.PI / 4;
        placements.add(
            new Placement(piece, new Pose(random.nextInt(600), 40 + random.nextInt(330), angle)));
      }
      Layout layout = new Layout(sheet, NOTHING, placements);

      boolean holds = TrueGaps.hold(layout);

      boolean passes =
          LayoutCheck.check(SheetDrawing.clean(layout), Expectation.of(layout))
              .findings()
              .isEmpty();
      assertThat(holds).as("seed %d, case %d: %s", seed, i, placements).isEqualTo(passes);
      held += holds ? 1 : 0;
      broken += holds ? 0 : 1;
    }
    assertThat(held).isGreaterThan(15);
    assertThat(broken).isGreaterThan(15);
  }
}
