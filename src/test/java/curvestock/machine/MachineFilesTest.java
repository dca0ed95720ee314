package curvestock.machine;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.check.CheckReport;
import curvestock.check.CutForm;
import curvestock.check.Expectation;
import curvestock.check.Finding;
import curvestock.check.LayoutCheck;
import curvestock.drawing.MachineDrawing;
import curvestock.drawing.SampleLayouts;
import curvestock.dxf.SheetDxf;
import curvestock.geometry.Edge;
import curvestock.layout.Layout;
import curvestock.machine.MachineSetup.Letters;
import curvestock.machine.MachineSetup.Outlines;
import curvestock.machine.MachineSetup.Tabs;
import curvestock.units.Length;
import curvestock.units.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every form of machine file, written and read back by the independent check. */
class MachineFilesTest {

  static MachineSetup setup(
      Outlines outlines, double linesWithin, Optional<Tabs> tabs, LengthUnit unit, boolean joined) {
    return new MachineSetup(
        outlines,
        linesWithin > 0 ? Optional.of(Length.ofMillimetres(linesWithin)) : Optional.empty(),
        Letters.STROKES,
        Map.of(),
        Length.ofMillimetres(0.1),
        tabs,
        Optional.empty(),
        Optional.empty(),
        unit,
        joined);
  }

  static Optional<Tabs> gaps(int count) {
    return Optional.of(new Tabs(Length.ofMillimetres(4), count, Tabs.Form.GAPS));
  }

  static List<MachineSetup> setups() {
    List<MachineSetup> all = new ArrayList<>();
    for (Outlines outlines : Outlines.values()) {
      for (double lines : new double[] {0, 0.05}) {
        for (Optional<Tabs> tabs : List.of(Optional.<Tabs>empty(), gaps(1), gaps(4))) {
          all.add(setup(outlines, lines, tabs, LengthUnit.MILLIMETRE, true));
          all.add(setup(outlines, lines, tabs, LengthUnit.INCH, false));
        }
      }
    }
    return all;
  }

  private static List<String> names(Layout layout) {
    return IntStream.rangeClosed(1, layout.placements().size()).mapToObj(i -> "T" + i).toList();
  }

  private static CheckReport check(String text, Layout layout, CutForm form) throws Exception {
    return LayoutCheck.check(text, Expectation.of(layout).in(form));
  }

  @ParameterizedTest
  @MethodSource("setups")
  void files_ofEveryForm_areRightWhenReadBack(MachineSetup setup) throws Exception {
    for (Layout layout : List.of(SampleLayouts.mixed(), SampleLayouts.stack())) {
      MachineSheet sheet = MachineSheet.of(layout, names(layout), setup);

      CheckReport svg = check(MachineDrawing.svg(sheet), layout, sheet.form());
      CheckReport dxf = check(SheetDxf.of(sheet), layout, sheet.form());

      assertThat(svg.findings()).extracting(Finding::message).isEmpty();
      assertThat(dxf.findings()).extracting(Finding::message).isEmpty();
      assertThat(dxf.counts()).isEqualTo(svg.counts());
    }
  }

  @Test
  void file_ofAnotherFormThanAsked_isRefused() throws Exception {
    Layout layout = SampleLayouts.stack();
    MachineSetup setup = setup(Outlines.OFFSET, 0, Optional.empty(), LengthUnit.MILLIMETRE, true);
    String svg = MachineDrawing.svg(MachineSheet.of(layout, names(layout), setup));

    assertThat(check(svg, layout, CutForm.FINISHED).findings())
        .extracting(Finding::kind)
        .containsExactly(Finding.Kind.STRUCTURE);
  }

  /** What a drawing says of itself is not believed: it is undone, and the result compared. */
  @Test
  void file_thatLiesAboutItsForm_isFound() throws Exception {
    Layout layout = SampleLayouts.stack();
    MachineSheet sheet = MachineSheet.of(layout, names(layout), MachineSetup.DEFAULT);
    CutForm grown = new CutForm(0.8, 0, 0, 0);
    String lie = MachineDrawing.svg(sheet).replace(sheet.form().words(), grown.words());
    String dxf = SheetDxf.of(sheet).replace(sheet.form().words(), grown.words());

    assertThat(check(lie, layout, grown).passed()).isFalse();
    assertThat(check(dxf, layout, grown).passed()).isFalse();
  }

  @Test
  void grownOutlines_withOneCornerMoved_areFound() throws Exception {
    Layout layout = SampleLayouts.stack();
    MachineSetup setup = setup(Outlines.OFFSET, 0, Optional.empty(), LengthUnit.MILLIMETRE, true);
    MachineSheet sheet = MachineSheet.of(layout, names(layout), setup);
    String svg = MachineDrawing.svg(sheet);
    int at = svg.indexOf(" L ", svg.indexOf("\"piece-1\"")) + 3;
    String x = svg.substring(at, svg.indexOf(' ', at));
    String moved =
        svg.substring(0, at) + (Double.parseDouble(x) + 0.1) + svg.substring(at + x.length());

    assertThat(check(moved, layout, sheet.form()).findings())
        .extracting(Finding::kind)
        .contains(Finding.Kind.SHAPE);
  }

  /** Nothing is cut twice: no two edges of a sheet lie on each other. */
  @ParameterizedTest
  @MethodSource("setups")
  void cuts_ofASheet_neverRunAlongEachOther(MachineSetup setup) {
    MachineSheet sheet =
        MachineSheet.of(SampleLayouts.mixed(), names(SampleLayouts.mixed()), setup);
    List<Edge> edges = sheet.contours().stream().flatMap(c -> c.edges().stream()).toList();
    for (int i = 0; i < edges.size(); i++) {
      for (int j = 0; j < i; j++) {
        Edge a = edges.get(i);
        Edge b = edges.get(j);
        assertThat(b.distanceTo(a.middle()) < 1e-6 && b.distanceTo(a.part(0, 0.4).end()) < 1e-6)
            .isFalse();
      }
    }
    assertThat(edges).allMatch(edge -> edge.length() > 1e-6);
  }
}
