package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two plates a kerf of 6 apart on a wide sheet, by hand: A from x = 100, B from x = 206. */
class HoldingTest {

  private static final double TAB = 10;

  private static Length mm(double length) {
    return Length.ofMillimetres(length);
  }

  private static Holding holding(int needed) {
    Piece plate = Piece.of("P", "plate", new Strip(mm(100), mm(80)));
    Layout layout =
        new Layout(
            SheetStock.rectangle("sheet", mm(600), mm(400), mm(12), Money.ZERO),
            Cutting.leaving(mm(6), mm(0), mm(10)),
            List.of(
                new Placement(plate, new Pose(150, 140, 0)),
                new Placement(plate, new Pose(256, 140, 0))));
    return Holding.of(layout, TAB, needed);
  }

  /** The tool's way round the plate that begins at {@code x}, with gaps of a tab and a kerf. */
  private static List<List<Edge>> lines(double x, boolean below, boolean left, boolean right) {
    List<List<Edge>> lines = new ArrayList<>();
    double low = 97;
    double high = 183;
    add(lines, new Point(x - 3, low), new Point(x + 103, low), below);
    add(lines, new Point(x + 103, low), new Point(x + 103, high), right);
    add(lines, new Point(x + 103, high), new Point(x - 3, high), false);
    add(lines, new Point(x - 3, high), new Point(x - 3, low), left);
    return lines;
  }

  private static void add(List<List<Edge>> lines, Point from, Point to, boolean gap) {
    if (!gap) {
      lines.add(List.of(new Segment(from, to)));
      return;
    }
    Point half = to.minus(from).times((TAB + 6) / 2 / from.distance(to));
    Point middle = from.plus(to).times(0.5);
    lines.add(List.of(new Segment(from, middle.minus(half))));
    lines.add(List.of(new Segment(middle.plus(half), to)));
  }

  private static List<List<Edge>> both(List<List<Edge>> a, List<List<Edge>> b) {
    List<List<Edge>> all = new ArrayList<>(a);
    all.addAll(b);
    return all;
  }

  @Test
  void tabBesideANeighbour_isSeveredByTheNeighboursCut() {
    // A's only tab is on its right side, where B's cut runs without one.
    assertThat(
            holding(1)
                .looseAlong(both(lines(100, false, false, true), lines(206, true, true, false))))
        .isEmpty();
    assertThat(
            holding(1)
                .looseAlong(both(lines(100, false, false, true), lines(206, true, false, false))))
        .containsExactly(0);
  }

  @Test
  void piece_throughANeighbourThatIsLoose_isLoose() {
    assertThat(
            holding(1)
                .looseAlong(both(lines(100, false, false, true), lines(206, false, true, false))))
        .containsExactly(0, 1);
  }

  @Test
  void twoTabs_areNeeded_andMayLeadThroughTheNeighbour() {
    List<List<Edge>> lines = both(lines(100, true, false, true), lines(206, true, true, true));

    assertThat(holding(2).looseAlong(lines)).isEmpty();
    assertThat(
            holding(2)
                .looseAlong(both(lines(100, true, false, false), lines(206, true, false, true))))
        .containsExactly(0);
  }
}
