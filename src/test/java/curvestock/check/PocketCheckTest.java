package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.drawing.MachineDrawing;
import curvestock.dxf.SheetDxf;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.helix.build.HalfLaps;
import curvestock.helix.build.Lap;
import curvestock.helix.build.LapEnd;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.machine.Caption;
import curvestock.machine.MachineSetup;
import curvestock.machine.MachineSetup.Letters;
import curvestock.machine.MachineSetup.Outlines;
import curvestock.machine.MachineSheet;
import curvestock.machine.Machining;
import curvestock.machine.SheetWork;
import curvestock.machine.Turning;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthUnit;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Half-laps in files for machines, right ones and damaged ones. Data invented. */
class PocketCheckTest {

  private static final AnnularSector SECTOR =
      new AnnularSector(Length.ofMillimetres(300), Length.ofMillimetres(80), Angle.ofDegrees(60));

  private static final Piece PIECE = Piece.of("S", "sixth", SECTOR);

  /** The second piece lies outside the first, nearer than 30 mm at its ends. */
  private static final Layout LAYOUT =
      new Layout(
          SheetStock.rectangle(
              "birch",
              Length.ofMillimetres(700),
              Length.ofMillimetres(500),
              Length.ofMillimetres(12),
              Money.ZERO),
          new Cutting(Length.ofMillimetres(6), Length.ofMillimetres(7), Length.ofMillimetres(8)),
          List.of(
              new Placement(PIECE, new Pose(0, 250, 0)),
              new Placement(PIECE, new Pose(120, 250, 0))));

  private static final Expectation EXPECTED =
      Expectation.of(LAYOUT).with(Map.of("S", recesses(50)), 3);

  private static List<Lap> laps(double length) {
    Length lap = Length.ofMillimetres(length);
    return List.of(HalfLaps.of(SECTOR, LapEnd.UPPER, lap), HalfLaps.of(SECTOR, LapEnd.LOWER, lap));
  }

  private static List<Recess> recesses(double length) {
    return laps(length).stream()
        .map(lap -> new Recess(lap.end() == LapEnd.UPPER, lap.area()))
        .toList();
  }

  private static MachineSheet sheet(double lap, MachineSetup setup) {
    List<Lap> each = laps(lap);
    SheetWork work = new SheetWork(List.of(), List.of(each, each), Optional.empty(), Caption.PLAIN);
    return MachineSheet.of(LAYOUT, List.of("1", "2"), work, setup);
  }

  private static MachineSetup setup(
      Outlines outlines, LengthUnit unit, boolean joined, double bit) {
    return new MachineSetup(
        outlines,
        Optional.empty(),
        Letters.STROKES,
        Map.of(),
        Length.ofMillimetres(0.1),
        Optional.empty(),
        bit > 0 ? Optional.of(Length.ofMillimetres(bit)) : Optional.empty(),
        Optional.empty(),
        unit,
        joined);
  }

  private static List<String> said(CheckReport report) {
    return report.findings().stream().map(Finding::message).toList();
  }

  private static List<String> above(MachineSheet sheet, UnaryOperator<String> damage)
      throws CheckException {
    return said(LayoutCheck.check(damage.apply(MachineDrawing.svg(sheet)), EXPECTED));
  }

  private static List<String> below(MachineSheet sheet, UnaryOperator<String> damage)
      throws CheckException {
    String svg = MachineDrawing.svg(sheet);
    String under = damage.apply(MachineDrawing.underside(sheet));
    return said(LayoutCheck.checkUnderside(under, svg, EXPECTED));
  }

  @ParameterizedTest
  @CsvSource({
    "FINISHED, MILLIMETRE, true",
    "FINISHED, INCH, false",
    "OFFSET, MILLIMETRE, false",
    "OFFSET, INCH, true"
  })
  void laps_inEveryForm_areRightWhenReadBack(Outlines outlines, LengthUnit unit, boolean joined)
      throws Exception {
    MachineSheet sheet = sheet(50, setup(outlines, unit, joined, 0));
    Expectation expected = EXPECTED.in(sheet.form());
    String svg = MachineDrawing.svg(sheet);
    String dxf = SheetDxf.of(sheet);
    String svgBelow = MachineDrawing.underside(sheet);
    String dxfBelow = SheetDxf.underside(sheet);

    assertThat(said(LayoutCheck.check(svg, expected))).isEmpty();
    assertThat(said(LayoutCheck.check(dxf, expected))).isEmpty();
    assertThat(said(LayoutCheck.checkUnderside(svgBelow, svg, expected))).isEmpty();
    assertThat(said(LayoutCheck.checkUnderside(dxfBelow, dxf, expected))).isEmpty();
  }

  @Test
  void depth_thatIsNotHalfTheThickness_isFound() throws Exception {
    MachineSheet sheet = sheet(50, MachineSetup.DEFAULT);

    assertThat(above(sheet, svg -> svg.replaceFirst("data-depth=\"6\"", "data-depth=\"7\"")))
        .singleElement()
        .asString()
        .contains("is 7.000 mm deep, but half the thickness is 6.000 mm");
    String dxf = SheetDxf.of(sheet).replace("POCKET-TOP-6_00MM", "POCKET-TOP");
    assertThat(said(LayoutCheck.check(dxf, EXPECTED)))
        .hasSize(2)
        .allMatch(message -> message.contains("of no stated depth"));
  }

  @Test
  void lap_thatIsNotCleared_isFound() throws Exception {
    MachineSheet sheet = sheet(50, MachineSetup.DEFAULT);

    assertThat(above(sheet, svg -> svg.replaceFirst("<path id=\"piece-2-pocket-top\"[^>]*/>", "")))
        .singleElement()
        .asString()
        .contains("piece-2 (S): 1 lap on top would not be cleared whole");
    assertThat(
            below(sheet, svg -> svg.replaceFirst("<path id=\"piece-1-pocket-bottom\"[^>]*/>", "")))
        .singleElement()
        .asString()
        .contains("piece-1 (S): 1 lap below would not be cleared whole");
  }

  @Test
  void lap_thatIsTooShort_leavesWoodAtTheShoulder() throws Exception {
    assertThat(above(sheet(49.9, MachineSetup.DEFAULT), svg -> svg))
        .hasSize(2)
        .allMatch(message -> message.contains("would not be cleared whole"));
  }

  /** A round tool leaves its radius in the corners of an area that is not larger than the lap. */
  @Test
  void area_thatIsNotGrownByTheTool_leavesCorners() throws Exception {
    MachineSheet narrow = sheet(50, setup(Outlines.FINISHED, LengthUnit.MILLIMETRE, true, 1));

    assertThat(above(narrow, svg -> svg))
        .hasSize(2)
        .allMatch(message -> message.contains("by a tool 6.0000 mm wide"));
  }

  @Test
  void area_thatReachesOverTheShoulder_takesTheRoadbedsWood() throws Exception {
    assertThat(above(sheet(51, MachineSetup.DEFAULT), svg -> svg))
        .hasSize(2)
        .allMatch(message -> message.contains("of wood from piece-"))
        .allMatch(message -> message.contains("beside its laps"));
  }

  @Test
  void area_thatReachesIntoTheNeighbour_takesItsWood() throws Exception {
    MachineSheet wide = sheet(50, setup(Outlines.FINISHED, LengthUnit.MILLIMETRE, true, 60));

    assertThat(above(wide, svg -> svg))
        .singleElement()
        .asString()
        .contains("piece-2-pocket-top takes", "of wood from piece-1 (S)");
  }

  @Test
  void areasOfTheOtherSide_areFound() throws Exception {
    MachineSheet sheet = sheet(50, MachineSetup.DEFAULT);

    assertThat(above(sheet, svg -> svg.replace("id=\"pocket-top\"", "id=\"pocket-bottom\"")))
        .anyMatch(message -> message.contains("belongs in the file of the underside"));
  }

  @Test
  void underside_thatIsTurnedTheOtherWay_isFound() throws Exception {
    MachineSheet sheet = sheet(50, MachineSetup.DEFAULT);

    assertThat(
            below(
                sheet,
                svg ->
                    svg.replaceFirst(
                        "id=\"axis\" d=\"[^\"]*\"", "id=\"axis\" d=\"M 0 250 L 700 250\"")))
        .isNotEmpty();
    assertThat(below(sheet, svg -> svg.replaceFirst("<path id=\"axis\"[^>]*/>", "")))
        .singleElement()
        .asString()
        .contains("the line over which the sheet is turned (flip) is missing");
  }

  @Test
  void dowels_inAPieceOrUneven_areFound() throws Exception {
    MachineSheet sheet = sheet(50, MachineSetup.DEFAULT);
    Turning turning = sheet.machining().turning().orElseThrow();
    Point wood = new Point(300, 250);

    assertThat(below(with(sheet, List.of(wood, turning.line().apply(wood))), svg -> svg))
        .anyMatch(message -> message.contains("a dowel lies in or too near to piece-1"));
    assertThat(below(with(sheet, List.of(new Point(20, 20), new Point(500, 30))), svg -> svg))
        .anyMatch(message -> message.contains("does not fit its dowels"));
  }

  private static MachineSheet with(MachineSheet sheet, List<Point> dowels) {
    Machining own = sheet.machining();
    Turning turning = own.turning().orElseThrow();
    Machining other =
        new Machining(
            own.pockets(),
            own.drillings(),
            own.words(),
            own.levelNumbers(),
            Optional.of(new Turning(turning.line(), dowels, turning.diameter())),
            own.remnant(),
            own.caption());
    return new MachineSheet(
        sheet.layout(),
        sheet.setup(),
        sheet.contours(),
        sheet.marks(),
        sheet.ticks(),
        sheet.labels(),
        sheet.travelAsLaidOut(),
        sheet.travel(),
        sheet.tabless(),
        sheet.loose(),
        sheet.sharedCut(),
        other);
  }

  /** A folder must hold an underside for each upper side that needs one. */
  @Test
  void undersides_ofAJob_areToldApartAndMissed() {
    MachineSheet sheet = sheet(50, MachineSetup.DEFAULT);
    JobReport whole = report(sheet, true);
    JobReport without = report(sheet, false);

    assertThat(whole.passed()).isTrue();
    assertThat(whole.drawings()).hasSize(2);
    assertThat(without.passed()).isFalse();
    List<String> words = new ArrayList<>();
    without.drawings().forEach(drawing -> words.addAll(said(drawing.report().orElseThrow())));
    assertThat(words).singleElement().asString().contains("no file of the underside was given");
  }

  private static JobReport report(MachineSheet sheet, boolean underside) {
    Expectation other = Expectation.of(new Layout(LAYOUT.sheet(), LAYOUT.cutting(), List.of()));
    JobCheck check =
        new JobCheck(
            List.of(EXPECTED),
            other,
            List.of(new curvestock.piece.Demand(PIECE, 2)),
            Optional.empty());
    check.add("upper", MachineDrawing.svg(sheet), Optional.empty());
    if (underside) {
      check.add("under", MachineDrawing.underside(sheet), Optional.empty());
    }
    return check.report(false);
  }
}
