package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.drawing.MachineDrawing;
import curvestock.drawing.SampleLayouts;
import curvestock.drawing.SheetDrawing;
import curvestock.dxf.SheetDxf;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.machine.MachineSetup;
import curvestock.machine.MachineSheet;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Drawings damaged on purpose are caught, each for what is wrong with it; drawings that another
 * program has saved again without harm are right. All are made here from a sample layout.
 */
class DamagedDrawingsTest {

  private static final Layout LAYOUT = SampleLayouts.mixed();
  private static final String SVG = MachineDrawing.svg(sheet(MachineSetup.DEFAULT));
  private static final String DXF = SheetDxf.of(sheet(MachineSetup.DEFAULT));
  private static final String PEOPLE =
      SheetDrawing.annotated(LAYOUT, SampleLayouts.title(LengthStyle.METRIC));

  private static MachineSheet sheet(MachineSetup setup) {
    List<String> names = new ArrayList<>();
    LAYOUT.placements().forEach(p -> names.add(p.piece().id() + "-" + (names.size() + 1)));
    return MachineSheet.of(LAYOUT, names, setup);
  }

  private static MachineSetup setup(LengthUnit unit, boolean joined) {
    MachineSetup usual = MachineSetup.DEFAULT;
    return new MachineSetup(
        usual.outlines(),
        usual.linesWithin(),
        usual.letters(),
        Map.of(),
        usual.lineWidth(),
        usual.tabs(),
        usual.bit(),
        usual.bed(),
        unit,
        joined);
  }

  private static JobReport check(String... texts) {
    Map<Piece, Integer> wanted = new LinkedHashMap<>();
    for (Placement placement : LAYOUT.placements()) {
      wanted.merge(placement.piece(), 1, Integer::sum);
    }
    List<Demand> demands = new ArrayList<>();
    wanted.forEach((piece, count) -> demands.add(new Demand(piece, count)));
    JobCheck check =
        new JobCheck(
            List.of(
                Expectation.anyOf(LAYOUT.sheet(), LAYOUT.cutting(), List.copyOf(wanted.keySet()))),
            Expectation.of(SampleLayouts.stack()),
            demands,
            Optional.empty());
    for (int i = 0; i < texts.length; i++) {
      check.add("drawing " + (i + 1), texts[i], Optional.empty());
    }
    return check.report(false);
  }

  /** All that is said of the drawings. */
  private static String said(JobReport report) {
    StringBuilder said = new StringBuilder(String.join("\n", report.counts()));
    for (JobReport.Judged drawing : report.drawings()) {
      said.append('\n').append(drawing.unreadable());
      drawing
          .report()
          .ifPresent(r -> r.findings().forEach(f -> said.append('\n').append(f.message())));
    }
    return said.toString();
  }

  /** A change to a drawing, and some of the words by which it is told. */
  private record Change(String what, String before, UnaryOperator<String> change, String words) {

    @Override
    public String toString() {
      return what;
    }
  }

  // ---- SVG ----

  private static String path(String id) {
    int at = SVG.indexOf("<path id=\"" + id + "\"");
    return SVG.substring(at, SVG.indexOf("/>", at) + 2);
  }

  private static String first(String group, String svg) {
    int at = svg.indexOf("<path", svg.indexOf("<g id=\"" + group + "\""));
    return svg.substring(at, svg.indexOf("/>", at) + 2);
  }

  private static UnaryOperator<String> around(String open, String close) {
    return svg -> svg.replaceFirst("</desc>", "</desc>" + open).replace("</svg>", close + "</svg>");
  }

  private static UnaryOperator<String> swap(String from, String to) {
    return svg -> svg.replace(from, to);
  }

  /** The path's numbers, each pair of coordinates moved to the right. */
  private static String shifted(String path, double by) {
    return Pattern.compile("([ML]) ?(-?[\\d.]+)")
        .matcher(path)
        .replaceAll((MatchResult m) -> m.group(1) + " " + (Double.parseDouble(m.group(2)) + by));
  }

  private static String marks(String path) {
    return path.replaceAll("id=\"[^\"]*\"|data-[a-z]+=\"[^\"]*\"", "");
  }

  private static Change svg(String what, UnaryOperator<String> change, String words) {
    return new Change(what, SVG, change, words);
  }

  static Stream<Change> damagedSvgs() {
    String piece = path("piece-3");
    String mark = "<g id=\"mark\"";
    int endOfMarks = SVG.indexOf("</g>", SVG.indexOf(mark));
    String marksGroup = SVG.substring(SVG.indexOf(mark), endOfMarks);
    String number = first("label", SVG);
    return Stream.of(
        svg(
            "moved and scaled two levels up",
            around("<g id=\"layer\"><g transform=\"translate(300,50) scale(1.1)\">", "</g></g>"),
            "<g> has the attribute 'transform'"),
        svg("in defs", around("<defs>", "</defs>"), "in <defs>, where nothing is drawn"),
        svg(
            "hidden two levels up",
            around("<g><g display=\"none\">", "</g></g>"),
            "<g> hides what it holds (display none)"),
        svg(
            "hidden by a style",
            around("<g style=\"fill:red;visibility: hidden\">", "</g>"),
            "hides what it holds (visibility hidden)"),
        svg("in a symbol", around("<symbol>", "</symbol>"), "<symbol> may change"),
        svg("in a clip path", around("<clipPath>", "</clipPath>"), "<clipPath> may change"),
        svg("in a mask", around("<mask>", "</mask>"), "<mask> may change"),
        svg("in an SVG within", around("<svg viewBox=\"0 0 9 9\">", "</svg>"), "<svg> may"),
        svg("repeated", swap("</svg>", "<use href=\"#piece-1\"/></svg>"), "<use> may change"),
        svg(
            "transparent",
            swap("<g id=\"cut\"", "<g style=\"opacity:0.0\" id=\"cut\""),
            "hides what it holds (opacity 0.0)"),
        svg(
            "without a line",
            swap("<path id=\"piece-3\"", "<path style=\"stroke:none\" id=\"piece-3\""),
            "has an invisible line (stroke none)"),
        svg(
            "moved by a style",
            swap("<g id=\"cut\"", "<g style=\"translate:9px\" id=\"cut\""),
            "has the attribute 'style'"),
        svg("a piece deleted", swap(piece, ""), "missing: 1 x "),
        svg(
            "no pieces",
            svg -> svg.replaceAll("(?s)(<g id=\"cut\"[^>]*>).*</g>", "$1</g>"),
            "no piece is drawn"),
        svg(
            "a piece among the marks",
            svg -> svg.replace(piece, "").replace(marksGroup, marksGroup + marks(piece)),
            "in 'mark' near"),
        svg(
            "an outline twice",
            swap(marksGroup, marksGroup + marks(piece)),
            "is drawn a second time in 'mark'"),
        svg("a number moved", swap(number, shifted(number, 820)), "number"),
        svg(
            "a centre line moved",
            swap(first("mark", SVG), shifted(first("mark", SVG), 820)),
            "centre line"),
        svg(
            "a piece twice",
            swap(piece, piece + piece.replace("piece-3", "piece-99")),
            "more than wanted"),
        svg(
            "an arc of another radius",
            svg -> svg.replaceFirst("A 736\\.6 736\\.6", "A 736.9 736.9"),
            "not the nominal shape"),
        svg("scaled", swap("width=\"2438.4mm\"", "width=\"96.1in\""), "one user unit must be"),
        svg("a second group of cuts", swap("</svg>", "<g id=\"cut\"/></svg>"), "a second group"),
        svg(
            "a second edge",
            swap(path("edge"), path("edge") + path("edge")),
            "edge is drawn twice"),
        new Change(
            "a number moved on a drawing for people",
            PEOPLE,
            svg -> {
              int at = svg.indexOf("font-weight=\"bold\"");
              int from = svg.lastIndexOf("<text", at);
              String text = svg.substring(from, svg.indexOf(">", from));
              return svg.replace(text, text.replaceFirst(" y=\"", " y=\"1"));
            },
            "number"));
  }

  @ParameterizedTest
  @MethodSource("damagedSvgs")
  void svg_damaged_isCaughtForWhatIsWrong(Change damage) {
    String damaged = damage.change().apply(damage.before());

    assertThat(damaged).isNotEqualTo(damage.before());
    assertThat(said(check(damage.before()))).doesNotContain(damage.words());
    JobReport report = check(damaged);
    assertThat(report.passed()).isFalse();
    assertThat(said(report)).contains(damage.words());
  }

  // ---- DXF ----

  private static Change dxf(String what, Consumer<DxfEdit> change, String words) {
    return new Change(what, DXF, text -> DxfEdit.change(text, change), words);
  }

  private static DxfEdit.Entity cut(DxfEdit dxf, int index) {
    return dxf.on("CUT").get(index);
  }

  static Stream<Change> damagedDxfs() {
    return Stream.of(
        dxf(
            "all cuts twice",
            dxf -> dxf.entities.addAll(dxf.on("CUT").stream().map(e -> e.copy()).toList()),
            "is drawn twice on the same lines"),
        dxf(
            "one piece twice",
            dxf -> dxf.entities.add(cut(dxf, 4).copy()),
            "is drawn twice on the same lines"),
        dxf("a piece deleted", dxf -> dxf.entities.remove(cut(dxf, 4)), "is not cut at"),
        dxf(
            "a piece deleted, the list gone",
            dxf -> dxf.dropComments().entities.remove(cut(dxf, 4)),
            "missing: 1 x "),
        dxf(
            "no cuts",
            dxf -> dxf.dropComments().remove(e -> e.layer().equals("CUT")),
            "no piece is drawn"),
        dxf("a piece on MARK", dxf -> cut(dxf, 4).onLayer("MARK"), "is drawn in 'mark' near"),
        dxf("a piece on a layer of its own", dxf -> cut(dxf, 4).onLayer("0"), "is drawn in '0'"),
        dxf(
            "an outline once more on MARK",
            dxf -> dxf.entities.add(cut(dxf, 4).copy().onLayer("MARK")),
            "is drawn a second time in 'mark'"),
        dxf(
            "a number moved",
            dxf -> dxf.on("LABEL").forEach(e -> e.moved(10, 820).moved(11, 820)),
            "number"),
        dxf("a centre line moved", dxf -> dxf.on("MARK").get(0).moved(10, 820), "centre line"),
        dxf(
            "layer CUT off",
            dxf -> dxf.head.set(dxf.head.indexOf(new DxfEdit.Pair(2, "CUT")) + 2, pair(62, "-7")),
            "switched off or frozen"),
        dxf("an invisible piece", dxf -> cut(dxf, 4).with(60, "1"), "is invisible"),
        dxf("a piece in paper space", dxf -> cut(dxf, 4).with(67, "1"), "paper space"),
        dxf("a mirrored plane", dxf -> cut(dxf, 4).with(230, "-1.0"), "plane of its own"),
        dxf("a height", dxf -> cut(dxf, 4).with(38, "5.0"), "has a height"),
        dxf("another unit", dxf -> dxf.header("$INSUNITS", 70, "1"), "say different units"),
        dxf(
            "another unit, comments gone",
            dxf -> dxf.dropComments().header("$INSUNITS", 70, "1"),
            "the sheet's edge as drawn is not"),
        dxf("a unit unknown", dxf -> dxf.header("$INSUNITS", 70, "9"), "$INSUNITS is 9"),
        dxf("a curve", dxf -> dxf.entities.add(entity("SPLINE", "CUT")), "SPLINE on the layer CUT"),
        dxf("a block", dxf -> dxf.entities.add(entity("INSERT", "0")), "a block is inserted"),
        dxf(
            "a piece moved",
            dxf -> cut(dxf, 4).moved(10, 3),
            "at the head of the file, but is not cut at"),
        dxf(
            "a corner moved",
            dxf -> {
              DxfEdit.Entity piece = cut(dxf, 0);
              int at = piece.pairs().lastIndexOf(last(piece, 20));
              piece.pairs().set(at, pair(20, Double.parseDouble(last(piece, 20).value()) + 0.1));
            },
            "nominal shape"),
        dxf(
            "an open outline",
            dxf -> {
              DxfEdit.Entity piece = cut(dxf, 4);
              piece.pairs().set(piece.pairs().indexOf(pair(70, "1")), pair(70, "0"));
            },
            "the path is open"),
        dxf(
            "another form",
            dxf ->
                dxf.head.replaceAll(p -> pair(p.code(), p.value().replace("grown 0", "grown 1"))),
            "asked for is"),
        new Change("cut off", DXF, text -> text.substring(0, text.length() / 2), "EOF"));
  }

  private static DxfEdit.Pair last(DxfEdit.Entity entity, int code) {
    return entity.pairs().stream().filter(p -> p.code() == code).reduce((a, b) -> b).orElseThrow();
  }

  private static DxfEdit.Pair pair(int code, Object value) {
    return new DxfEdit.Pair(code, value.toString());
  }

  private static DxfEdit.Entity entity(String name, String layer) {
    return new DxfEdit.Entity(new ArrayList<>(List.of(pair(0, name), pair(8, layer))));
  }

  @ParameterizedTest
  @MethodSource("damagedDxfs")
  void dxf_damaged_isCaughtForWhatIsWrong(Change damage) {
    String damaged = damage.change().apply(damage.before());

    assertThat(damaged).isNotEqualTo(damage.before());
    JobReport report = check(damaged);
    assertThat(report.passed()).isFalse();
    assertThat(said(report)).contains(damage.words());
  }

  @Test
  void dxf_findings_nameThePiece() {
    String damaged = DxfEdit.change(DXF, dxf -> dxf.entities.add(cut(dxf, 4).copy()));

    assertThat(said(check(damaged))).containsPattern("piece-\\d+ \\([A-Z]\\) is drawn twice");
  }

  // ---- saved again without harm ----

  static Stream<Change> harmless() {
    String inches = SheetDxf.of(sheet(setup(LengthUnit.INCH, true)));
    String edges = SheetDxf.of(sheet(setup(LengthUnit.MILLIMETRE, false)));
    return Stream.of(
        svg(
            "sizes in inches",
            svg -> svg.replace("\"2438.4mm\"", "\"96in\"").replace("\"1219.2mm\"", "\"48in\""),
            ""),
        svg("commas", swap("\"0 0 2438.4 1219.2\"", "\"0,0 2438.4, 1219.2\""), ""),
        svg("closed by coordinates", DamagedDrawingsTest::withoutZ, ""),
        svg(
            "a program's own notes",
            around(
                "<defs id=\"d\"/><n:view xmlns:n=\"urn:n\" n:zoom=\"1\"/><metadata/>"
                    + "<!-- saved again --><g id=\"layer\" style=\"display:inline\">",
                "</g>"),
            ""),
        svg(
            "colours in a style",
            svg ->
                svg.replaceAll(
                    "fill=\"none\" stroke=\"([^\"]*)\" stroke-width=\"([^\"]*)\"",
                    "style=\"fill:none;stroke:$1;stroke-width:$2;stroke-opacity:1\""),
            ""),
        svg("its form forgotten", svg -> svg.replaceAll(" data-form=\"[^\"]*\"", ""), ""),
        svg("poses forgotten", svg -> svg.replaceAll(" data-pose=\"[^\"]*\"", ""), ""),
        dxf(
            "lightweight polylines, comments gone",
            dxf -> dxf.dropComments().header("$INSUNITS", 70, "4").lightweight(),
            ""),
        dxf("comments gone, no unit", DxfEdit::dropComments, ""),
        new Change(
            "comments gone, no unit, in inches",
            inches,
            text -> DxfEdit.change(text, DxfEdit::dropComments),
            ""),
        new Change(
            "lines and arcs in another order",
            edges,
            text ->
                DxfEdit.change(
                    text, dxf -> Collections.shuffle(dxf.dropComments().entities, new Random(7))),
            ""),
        dxf("numbers with exponents", DxfEdit::exponents, ""),
        new Change("line feeds alone", DXF, text -> DxfEdit.of(text).text("\n"), ""),
        dxf("layers in small letters", dxf -> dxf.entities.forEach(DamagedDrawingsTest::small), ""),
        new Change("a drawing for people", PEOPLE, text -> text + "\n", ""));
  }

  private static void small(DxfEdit.Entity entity) {
    entity.onLayer(entity.layer().toLowerCase(java.util.Locale.ROOT));
  }

  /** Each path comes back to its start by a line of its own. */
  private static String withoutZ(String svg) {
    return Pattern.compile("d=\"M ([-\\d.]+) ([-\\d.]+) ([^\"]*?) Z( M [^\"]*)?\"")
        .matcher(svg)
        .replaceAll(
            m ->
                m.group(4) == null
                    ? "d=\"M $1 $2 $3 L $1 $2\""
                        .replace("$1", m.group(1))
                        .replace("$2", m.group(2))
                        .replace("$3", m.group(3))
                    : m.group());
  }

  @ParameterizedTest
  @MethodSource("harmless")
  void drawing_savedAgainWithoutHarm_isRight(Change resave) {
    String saved = resave.change().apply(resave.before());

    assertThat(saved).isNotEqualTo(resave.before());
    JobReport report = check(saved);
    assertThat(said(report)).contains("complete, ");
    assertThat(report.passed()).as(said(report)).isTrue();
  }

  // ---- several drawings ----

  @Test
  void drawings_ofThreeKinds_areEachASetOfTheirOwn() {
    JobReport report = check(SVG, DXF, PEOPLE);

    assertThat(report.passed()).as(said(report)).isTrue();
    assertThat(report.counts())
        .containsExactly(
            "drawings for people (SVG), 1 file: complete, 9 of 9 pieces",
            "cut files (SVG), 1 file: complete, 9 of 9 pieces",
            "cut files (DXF), 1 file: complete, 9 of 9 pieces");
  }

  @Test
  void drawing_givenTwice_isTold() {
    for (String text : List.of(SVG, DXF, PEOPLE)) {
      assertThat(said(check(text, text)))
          .contains("more than wanted: ", "is the same drawing as drawing 1");
      assertThat(check(text, text).passed()).isFalse();
    }
  }

  @Test
  void drawing_thatIsNone_isNamedAndTheOthersAreJudged() {
    JobReport report = check("nonsense", SVG);

    assertThat(report.unreadable()).containsExactly("drawing 1");
    assertThat(report.drawings().get(1).passed()).isTrue();
    assertThat(report.passed()).isFalse();
  }
}
