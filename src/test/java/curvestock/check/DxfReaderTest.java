package curvestock.check;

import static org.assertj.core.api.Assertions.as;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Lines, arcs and chains of DXF files written here, group by group. The meaning of the groups is
 * from memory of the format's published reference; the figures are by hand.
 */
class DxfReaderTest {

  /** A whole file around entities, one group after another as 'code value'. */
  private static String file(String comment, String... entities) {
    StringBuilder text = new StringBuilder();
    if (!comment.isEmpty()) {
      text.append("999\n").append(comment).append('\n');
    }
    text.append(
        "0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1009\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n");
    for (String entity : entities) {
      for (String group : entity.split(";", -1)) {
        String[] parts = group.strip().split(" ", 2);
        text.append(parts[0]).append('\n').append(parts[1]).append('\n');
      }
    }
    return text + "0\nENDSEC\n0\nEOF\n";
  }

  private static String line(String layer, double x1, double y1, double x2, double y2) {
    return "0 LINE; 8 %s; 10 %s; 20 %s; 11 %s; 21 %s".formatted(layer, x1, y1, x2, y2);
  }

  private static String arc(double x, double y, double radius, double first, double last) {
    return "0 ARC; 8 CUT; 10 %s; 20 %s; 40 %s; 50 %s; 51 %s".formatted(x, y, radius, first, last);
  }

  private static DxfFile read(String... entities) throws CheckException {
    return DxfReader.read(file("", entities));
  }

  private static void assertAt(Point point, double x, double y) {
    assertThat(point.distance(new Point(x, y)))
        .as("%s, not (%s, %s)", point, x, y)
        .isLessThan(1e-9);
  }

  @ParameterizedTest
  @CsvSource({"0, 90, 90", "270, 90, 180", "-90, 90, 180", "350, 10, 20", "90, 0, 270"})
  void read_arc_runsCounterClockwiseInDegrees(double first, double last, double sweep)
      throws Exception {
    Trace.Round round =
        (Trace.Round) read(arc(10, 20, 5, first, last)).cuts().get(0).edges().get(0);

    assertThat(Math.toDegrees(round.sweep())).isCloseTo(sweep, Offset.offset(1e-9));
    assertThat(round.centre()).isEqualTo(new Point(10, 20));
    assertThat(round.radius()).isEqualTo(5);
    assertThat(Math.toDegrees(round.first())).isCloseTo(first, Offset.offset(1e-9));
  }

  @Test
  void read_circle_isClosed() throws Exception {
    Chain circle = read("0 CIRCLE; 8 cut; 10 10; 20 20; 40 5").cuts().get(0);

    assertThat(circle.closed()).isTrue();
    assertThat(circle.edges().get(0).length()).isCloseTo(10 * Math.PI, Offset.offset(1e-9));
  }

  /** The bulge is the tangent of a quarter of the sweep: 1 is a half turn, above 1 more. */
  @ParameterizedTest
  @CsvSource({
    // From (0, 0) to (8, 0): sweep, centre's y, radius.
    "1, 180, 0, 4",
    "-1, -180, 0, 4",
    "0.41421356237309503, 90, 4, 5.656854249492381",
    "-0.41421356237309503, -90, -4, 5.656854249492381",
    "2, 253.7397952917, -3, 5",
    "-0.5, -106.2602047083, -3, 5",
    "0.5, 106.2602047083, 3, 5"
  })
  void read_bulge_isTheArcByHand(double bulge, double sweep, double y, double radius)
      throws Exception {
    DxfFile file =
        read(
            "0 POLYLINE; 8 CUT; 66 1; 70 0",
            "0 VERTEX; 8 CUT; 10 0; 20 0; 42 " + bulge,
            "0 VERTEX; 8 CUT; 10 8; 20 0",
            "0 SEQEND; 8 CUT");
    Trace.Round round = (Trace.Round) file.cuts().get(0).edges().get(0);

    assertThat(Math.toDegrees(round.sweep())).isCloseTo(sweep, Offset.offset(1e-9));
    assertAt(round.centre(), 4, y);
    assertThat(round.radius()).isCloseTo(radius, Offset.offset(1e-9));
    assertAt(round.start(), 0, 0);
    assertAt(round.end(), 8, 0);
    assertThat(file.cuts()).hasSize(1);
    assertThat(file.cuts().get(0).closed()).isFalse();
  }

  /** The same arc on a slanting chord: from (0, 0) to (3, 4), bulge 1, centre half-way. */
  @Test
  void read_bulgeOnASlantingChord_hasItsCentreBesideTheChord() throws Exception {
    DxfFile file =
        read(
            "0 POLYLINE; 8 CUT; 70 1",
            "0 VERTEX; 8 CUT; 10 0; 20 0; 42 0.5",
            "0 VERTEX; 8 CUT; 10 6; 20 8",
            "0 VERTEX; 8 CUT; 10 6; 20 8",
            "0 VERTEX; 8 CUT; 10 0; 20 8; 42 1",
            "0 SEQEND; 8 CUT",
            line("SHEET", 0, 0, 1, 0));
    Chain chain = file.cuts().get(0);
    Trace.Round first = (Trace.Round) chain.edges().get(0);

    // Half chord 5, bulge 1/2: radius 5·1.25/1 = 6.25, centre 5·0.75 = 3.75 to the left of (3, 4).
    assertThat(first.radius()).isCloseTo(6.25, Offset.offset(1e-12));
    assertAt(first.centre(), 3 - 0.8 * 3.75, 4 + 0.6 * 3.75);
    assertThat(chain.closed()).isTrue();
    assertThat(chain.edges()).hasSize(3);
    assertAt(((Trace.Round) chain.edges().get(2)).centre(), 0, 4);
    assertThat(file.sheet()).hasSize(1);
  }

  @Test
  void read_layersOfOtherUse_areLeftOut() throws Exception {
    DxfFile file =
        read(
            line("MARK", 0, 0, 1, 1),
            "0 TEXT; 8 MARK; 10 0; 20 0; 1 words",
            "0 TEXT; 8 SHEET; 10 0; 20 0; 1 words",
            line("sheet", 0, 0, 9, 0),
            line("Cut", 1, 2, 3, 4));

    assertThat(file.cuts()).hasSize(1);
    assertThat(file.sheet()).hasSize(1);
    assertThat(file.oddities()).isEmpty();
    assertAt(file.cuts().get(0).start(), 1, 2);
    assertAt(file.cuts().get(0).end(), 3, 4);
  }

  @Test
  void read_otherThingsOnTheCutLayer_areTold() throws Exception {
    String[] many = new String[25];
    Arrays.fill(many, "0 SPLINE; 8 CUT; 70 8");

    assertThat(read("0 SPLINE; 8 CUT; 70 8").oddities())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.kind()).isEqualTo(Finding.Kind.STRUCTURE);
              assertThat(f.message())
                  .isEqualTo("line 15: SPLINE on the layer CUT: outlines must be lines and arcs");
            });
    assertThat(read(many).oddities()).hasSize(20);
  }

  @Test
  void read_comments_sayUnitAndForm() throws Exception {
    String inch = file("curvestock unit: in", line("CUT", 1, 2, 3, 4), arc(1, 2, 3, 0, 90));
    String form = file("curvestock form: grown 1.5 mm, tabs 4 of 9.25 mm, lines within 0.05 mm");

    DxfFile inches = DxfReader.read(inch);
    assertAt(inches.cuts().get(0).end(), 76.2, 101.6);
    assertThat(((Trace.Round) inches.cuts().get(1).edges().get(0)).radius())
        .isCloseTo(76.2, Offset.offset(1e-12));
    assertThat(DxfReader.read(form).form()).contains(new CutForm(1.5, 4, 9.25, 0.05));
    assertThat(DxfReader.read(file("curvestock unit: mm")).form()).isEmpty();
    assertThatThrownBy(() -> DxfReader.read(file("curvestock unit: ft")))
        .hasMessage("the unit must be mm or in, but was ft");
    assertThatThrownBy(() -> DxfReader.read(file("curvestock form: large")))
        .hasMessageContaining("must read like 'grown 0 mm, tabs 0 of 0 mm, lines within 0 mm'");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0 CIRCLE; 8 CUT; 10 0; 20 0; 40 0|line 15: a radius must be above zero",
        "0 CIRCLE; 8 CUT; 10 0; 20 0|line 15: a radius must be above zero",
        "0 ARC; 8 CUT; 10 0; 20 0; 40 -1|line 15: a radius must be above zero",
        "0 LINE; 8 CUT; 10 lots; 20 0|line 15: LINE has 'lots' where a number must be",
        "0 LINE; 8 CUT; 10 1000001; 20 0|line 15: a number of LINE is out of bounds",
        "0 LINE; 8 CUT; 10 NaN; 20 0|line 15: a number of LINE is out of bounds",
        "0 LINE; 8 CUT; x 1|line 19: the file is neither SVG nor DXF"
      })
  void read_badNumber_isRefusedWithItsLine(String entity, String message) {
    assertThatThrownBy(() -> read(entity))
        .isInstanceOf(CheckException.class)
        .hasMessageContaining(message);
  }

  @Test
  void read_largestNumbersAllowed_areRead() throws Exception {
    assertAt(read(line("CUT", 1e6, -1e6, 0, 0)).cuts().get(0).start(), 1e6, -1e6);
  }

  @Test
  void read_truncatedFile_isRefused() {
    String whole = file("", line("CUT", 0, 0, 1, 1));

    assertThatThrownBy(() -> DxfReader.read(whole.replace("EOF", "ENDSEC")))
        .hasMessage("the file is no whole DXF drawing: it does not end with EOF");
    assertThatThrownBy(() -> DxfReader.read(whole.substring(0, whole.length() / 2)))
        .isInstanceOf(CheckException.class);
  }

  @Test
  void read_entitiesOutsideTheirSection_areNotLookedAt() throws Exception {
    String blocks =
        "0\nSECTION\n2\nBLOCKS\n0\nLINE\n8\nCUT\n10\n0\n20\n0\n11\n5\n21\n5\n0\nENDSEC\n";
    String text = file("", line("CUT", 0, 0, 1, 1));

    DxfFile file = DxfReader.read(blocks + text.replace("0\nEOF\n", blocks + "0\nEOF\n"));

    assertThat(file.cuts()).hasSize(1);
    assertThat(DxfReader.read(text.replace("\n", "\r\n")).cuts()).hasSize(1);
  }

  @Test
  void chains_ofLooseEdges_areJoinedEitherWayRound() throws Exception {
    List<Chain> cuts =
        read(
                line("CUT", 10, 0, 0, 0),
                line("CUT", 10, 0, 10, 10),
                line("CUT", 0, 10, 10, 10),
                line("CUT", 0, 10, 0, 0),
                line("CUT", 50, 0, 60, 0),
                line("CUT", 80, 0, 90, 0),
                line("CUT", 90, 0.0009, 95, 5),
                line("CUT", 95, 5.0011, 95, 9))
            .cuts();

    assertThat(cuts).extracting(Chain::closed).containsExactly(true, false, false, false);
    assertThat(cuts).extracting(c -> c.edges().size()).containsExactly(4, 1, 2, 1);
    assertAt(cuts.get(0).start(), 0, 0);
    assertAt(cuts.get(0).end(), 0, 0);
    assertAt(cuts.get(2).end(), 95, 5);
  }

  @Test
  void chains_twoClosedLoopsBehindEachOther_staySeparate() throws Exception {
    List<Chain> cuts =
        read(
                arc(0, 0, 5, 0, 180),
                arc(0, 0, 5, 180, 360),
                arc(0, 0, 3, 90, 270),
                arc(0, 0, 3, -90, 90),
                "0 CIRCLE; 8 CUT; 10 40; 20 0; 40 5",
                arc(50, 0, 5, 0, 180))
            .cuts();

    assertThat(cuts).extracting(Chain::closed).containsExactly(true, true, true, false);
    assertThat(cuts).extracting(c -> c.edges().size()).containsExactly(2, 2, 1, 1);
  }

  @Test
  void chains_openPolylineThatComesBack_isClosed() throws Exception {
    String[] triangle = {
      "0 POLYLINE; 8 CUT; 70 0",
      "0 VERTEX; 8 CUT; 10 0; 20 0",
      "0 VERTEX; 8 CUT; 10 9; 20 0",
      "0 VERTEX; 8 CUT; 10 9; 20 9",
      "0 VERTEX; 8 CUT; 10 0; 20 0.0005",
      "0 SEQEND; 8 CUT"
    };

    assertThat(read(triangle).cuts().get(0).closed()).isTrue();
    triangle[4] = triangle[4].replace("0.0005", "0.002");
    assertThat(read(triangle).cuts().get(0).closed()).isFalse();
  }

  private static List<List<Chain>> pieces(DxfFile file) {
    return DxfPieces.of(file.cuts(), file.form().orElse(CutForm.FINISHED)).pieces().stream()
        .map(DxfPieces.Drawn::chains)
        .toList();
  }

  private static List<String> faults(DxfFile file) {
    return DxfPieces.of(file.cuts(), file.form().orElse(CutForm.FINISHED)).faults();
  }

  private static String circle(double x, double radius) {
    return "0 CIRCLE; 8 CUT; 10 " + x + "; 20 0; 40 " + radius;
  }

  @Test
  void pieces_nested_areOutsidesAndTheirHoles() throws Exception {
    List<List<Chain>> pieces =
        pieces(
            read(
                circle(0, 4),
                circle(0, 50),
                circle(0, 40),
                circle(0, 8),
                circle(200, 9),
                circle(70, 9)));

    // Rings 50/40 and 8/4, and two discs.
    assertThat(pieces).hasSize(4);
    assertThat(pieces)
        .extracting(p -> p.stream().map(c -> ((Trace.Round) c.edges().get(0)).radius()).toList())
        .containsExactlyInAnyOrder(
            List.of(50.0, 40.0), List.of(8.0, 4.0), List.of(9.0), List.of(9.0));
  }

  @Test
  void pieces_withTabs_areClosedInAnyDirection() throws Exception {
    String[] plain = {line("CUT", 4, 0, 45, 0), line("CUT", 55, 0, 96, 0)};
    String form = "curvestock form: grown 0 mm, tabs 2 of 10 mm, lines within 0 mm";
    // Two halves of a plate 100 x 40, with a gap of 10 below and one above; each run either way.
    String[][] halves = {
      {line("CUT", 45, 0, 0, 0), line("CUT", 0, 0, 0, 40), line("CUT", 0, 40, 45, 40)},
      {line("CUT", 55, 40, 100, 40), line("CUT", 100, 40, 100, 0), line("CUT", 100, 0, 55, 0)},
      {line("CUT", 55, 0, 100, 0), line("CUT", 100, 0, 100, 40), line("CUT", 100, 40, 55, 40)}
    };
    for (int second : new int[] {1, 2}) {
      String[] both = new String[6];
      System.arraycopy(halves[0], 0, both, 0, 3);
      System.arraycopy(halves[second], 0, both, 3, 3);
      List<List<Chain>> pieces = pieces(DxfReader.read(file(form, both)));
      assertThat(pieces).hasSize(1);
      Chain chain = pieces.get(0).get(0);
      assertThat(chain.closed()).isTrue();
      assertThat(Math.abs(new TraceLoop(chain.edges()).area()))
          .isCloseTo(4000, Offset.offset(1e-9));
    }
    assertThat(faults(DxfReader.read(file(form, plain))))
        .singleElement(as(InstanceOfAssertFactories.STRING))
        .contains("that is no tab of 10.0000 mm");
    assertThat(faults(read(plain)))
        .containsExactly(
            "the line that starts at (4.0, 0.0) mm: the path is open: each part must be closed",
            "the line that starts at (55.0, 0.0) mm: the path is open: each part must be closed");
  }

  /** Three parts of a plate with gaps of 10; each may stand in the file either way round. */
  @ParameterizedTest
  @CsvSource({
    "false, false, false",
    "true, false, false",
    "false, true, false",
    "true, true, false",
    "false, false, true",
    "true, false, true",
    "false, true, true",
    "true, true, true"
  })
  void pieces_ofThreePartsRunEitherWay_areOneOutline(boolean first, boolean second, boolean third)
      throws Exception {
    double[][][] parts = {
      {{55, 0}, {100, 0}, {100, 40}, {70, 40}},
      {{60, 40}, {40, 40}},
      {{30, 40}, {0, 40}, {0, 0}, {45, 0}}
    };
    boolean[] turned = {first, second, third};
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      int count = parts[i].length;
      for (int k = 0; k + 1 < count; k++) {
        double[] a = parts[i][turned[i] ? count - 1 - k : k];
        double[] b = parts[i][turned[i] ? count - 2 - k : k + 1];
        lines.add(line("CUT", a[0], a[1], b[0], b[1]));
      }
    }
    String form = "curvestock form: grown 0 mm, tabs 3 of 10 mm, lines within 0 mm";
    List<List<Chain>> pieces = pieces(DxfReader.read(file(form, lines.toArray(String[]::new))));

    assertThat(pieces).hasSize(1);
    assertThat(pieces.get(0)).hasSize(1);
    assertThat(Math.abs(new TraceLoop(pieces.get(0).get(0).edges()).area()))
        .isCloseTo(4000, Offset.offset(1e-9));
  }
}
