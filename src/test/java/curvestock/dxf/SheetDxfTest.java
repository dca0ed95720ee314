package curvestock.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.check.CheckException;
import curvestock.check.CheckReport;
import curvestock.check.Expectation;
import curvestock.check.Finding;
import curvestock.check.LayoutCheck;
import curvestock.drawing.SampleLayouts;
import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.machine.MachineSetup;
import curvestock.machine.MachineSheet;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The DXF as a stranger reads it: pairs of lines, sections, tables, entities. */
class SheetDxfTest {

  private record Group(int code, String value) {}

  private static List<Group> groups(String dxf) {
    String[] lines = dxf.split("\r\n", -1);
    List<Group> groups = new ArrayList<>();
    for (int i = 0; i + 1 < lines.length; i += 2) {
      groups.add(new Group(Integer.parseInt(lines[i].strip()), lines[i + 1]));
    }
    return groups;
  }

  private static String mixed() {
    return SheetDxf.of(MachineSheet.of(SampleLayouts.mixed(), List.of(), MachineSetup.DEFAULT));
  }

  private static List<String> values(List<Group> groups, int code) {
    return groups.stream().filter(g -> g.code() == code).map(Group::value).toList();
  }

  @Test
  void file_hasItsSectionsAndOnlyTheEntitiesOfRelease12() {
    List<Group> groups = groups(mixed());

    assertThat(values(groups, 2)).containsSubsequence("HEADER", "TABLES", "ENTITIES");
    assertThat(values(groups, 1)).contains("AC1009");
    assertThat(values(groups, 0))
        .containsOnly(
            "SECTION",
            "ENDSEC",
            "TABLE",
            "ENDTAB",
            "LTYPE",
            "LAYER",
            "STYLE",
            "TEXT",
            "POLYLINE",
            "VERTEX",
            "SEQEND",
            "LINE",
            "ARC",
            "CIRCLE",
            "EOF")
        .endsWith("ENDSEC", "EOF");
    assertThat(values(groups, 999)).contains("curvestock unit: mm");
    assertThat(mixed()).matches("\\p{ASCII}*");
  }

  @Test
  void everyEntity_isOnALayerOfTheTable() {
    List<Group> groups = groups(mixed());
    Set<String> layers = new TreeSet<>(values(groups, 8));

    assertThat(layers).containsExactly("CUT", "MARK", "SHEET", "TITLE");
    assertThat(values(groups, 2)).containsAll(layers);
  }

  @Test
  void header_holdsTheSheetsExtent() {
    List<Group> groups = groups(mixed());
    int at = values(groups, 9).indexOf("$EXTMAX");

    assertThat(at).isPositive();
    int place = groups.indexOf(new Group(9, "$EXTMAX"));
    assertThat(Double.parseDouble(groups.get(place + 1).value())).isEqualTo(2438.4);
    assertThat(Double.parseDouble(groups.get(place + 2).value())).isEqualTo(1219.2);
  }

  /** A quarter's bulge is tan(90°/4): the published definition of the bulge. */
  @Test
  void quarter_isOneBulgedEdgeOfItsSweep() {
    Layout layout =
        new Layout(
            SampleLayouts.SHEET,
            SampleLayouts.CUTTING,
            List.of(new Placement(SampleLayouts.QUARTER, new Pose(300, 600, 0))));
    List<Group> groups =
        groups(SheetDxf.of(MachineSheet.of(layout, List.of(), MachineSetup.DEFAULT)));

    List<Double> bulges =
        values(groups.subList(groups.indexOf(new Group(2, "ENTITIES")), groups.size()), 42).stream()
            .map(Double::parseDouble)
            .toList();
    double eighth = Math.tan(Math.PI / 16);
    double quarter = Math.tan(Math.PI / 8);
    // The second half of the outer arc, begun at its middle; the inner arc; the first half.
    assertThat(bulges).hasSize(3);
    assertThat(bulges.get(0)).isCloseTo(eighth, org.assertj.core.data.Offset.offset(1e-11));
    assertThat(bulges.get(1)).isCloseTo(-quarter, org.assertj.core.data.Offset.offset(1e-11));
    assertThat(bulges.get(2)).isCloseTo(eighth, org.assertj.core.data.Offset.offset(1e-11));
  }

  /**
   * Written by hand, from memory of the format's reference; no line of it comes from our writer.
   */
  private static final String BY_HAND =
      """
      999
      half turn, radii 100 and 200 about (300, 250), on a sheet of 600 x 500
      0
      SECTION
      2
      ENTITIES
      0
      LINE
      8
      SHEET
      10
      0
      20
      0
      11
      600
      21
      0
      0
      LINE
      8
      SHEET
      10
      600
      20
      500
      11
      600
      21
      0
      0
      LINE
      8
      SHEET
      10
      600
      20
      500
      11
      0
      21
      500
      0
      LINE
      8
      SHEET
      10
      0
      20
      500
      11
      0
      21
      0
      0
      ARC
      8
      Cut
      10
      300
      20
      250
      40
      200
      50
      270
      51
      90
      0
      LINE
      8
      CUT
      10
      300
      20
      350
      11
      300
      21
      450
      0
      ARC
      8
      CUT
      10
      300
      20
      250
      40
      100
      50
      -90
      51
      90
      0
      LINE
      8
      CUT
      10
      300
      20
      150
      11
      300
      21
      50
      0
      TEXT
      8
      NOTES
      10
      0
      20
      0
      40
      9
      1
      not looked at
      0
      ENDSEC
      0
      EOF
      """;

  private static CheckReport check(String dxf) throws CheckException {
    Piece half =
        Piece.of(
            "H",
            "half turn",
            new AnnularSector(
                Length.ofMillimetres(150), Length.ofMillimetres(100), Angle.ofDegrees(180)));
    SheetStock sheet =
        SheetStock.rectangle(
            "sheet",
            Length.ofMillimetres(600),
            Length.ofMillimetres(500),
            Length.ofMillimetres(12),
            Money.ZERO);
    return LayoutCheck.check(
        dxf,
        Expectation.of(
            new Layout(
                sheet, SampleLayouts.CUTTING, List.of(new Placement(half, new Pose(0, 0, 0))))));
  }

  @Test
  void check_fileByAnotherHand_isRead() throws Exception {
    CheckReport report = check(BY_HAND);

    assertThat(report.findings()).extracting(Finding::message).isEmpty();
    assertThat(report.counts()).containsEntry("H", 1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "40\n100\n",
        "50\n270\n",
        "8\nCUT\n10\n300\n20\n350",
        "999\nhalf",
        "8\nSHEET\n10\n600"
      })
  void check_fileWithOneThingChanged_isNotRight(String there) throws Exception {
    String changed =
        switch (there) {
          case "40\n100\n" -> BY_HAND.replace(there, "40\n101\n");
          case "50\n270\n" -> BY_HAND.replace(there, "50\n275\n");
          case "999\nhalf" -> BY_HAND.replace(there, "999\ncurvestock unit: in\n999\nhalf");
          case "8\nSHEET\n10\n600" -> BY_HAND.replaceFirst(there, "8\nSHEET\n10\n601");
          default -> BY_HAND.replace(there, there + ".5");
        };

    assertThat(changed).isNotEqualTo(BY_HAND);
    assertThat(check(changed).passed()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"EOF", "40\n100", "50\n-90"})
  void check_brokenFile_isRefused(String there) {
    String broken = BY_HAND.replace(there, there.equals("EOF") ? "EO" : "40\nlots");

    assertThatThrownBy(() -> check(broken)).isInstanceOf(CheckException.class);
  }
}
