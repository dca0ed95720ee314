package curvestock.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.check.Expectation;
import curvestock.check.LayoutCheck;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import curvestock.helix.build.RoadbedMark;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.AnnularSector;
import curvestock.piece.FreeShape;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Money;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class SheetDrawingTest {

  private static String annotated(Layout layout) {
    return SheetDrawing.annotated(layout, SampleLayouts.title(LengthStyle.INCH_FRACTIONS));
  }

  private static Document parse(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
  }

  private static List<Element> elements(Document document, String name) {
    NodeList list = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < list.getLength(); i++) {
      elements.add((Element) list.item(i));
    }
    return elements;
  }

  private static Layout single(Piece piece, Pose pose) {
    return new Layout(
        SampleLayouts.SHEET, SampleLayouts.CUTTING, List.of(new Placement(piece, pose)));
  }

  @Test
  void clean_sheet_isTheDocumentInMillimetres() throws Exception {
    Element root = parse(SheetDrawing.clean(SampleLayouts.stack())).getDocumentElement();

    assertThat(root.getAttribute("width")).isEqualTo("2438.4mm");
    assertThat(root.getAttribute("height")).isEqualTo("1219.2mm");
    assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 2438.4 1219.2");
  }

  /** SVG has y down: angles that grow counter-clockwise on the sheet run against its flag. */
  @Test
  void clean_sector_hasKnownPathData() {
    Piece piece =
        Piece.of(
            "S",
            "sector",
            new AnnularSector(
                Length.ofMillimetres(150), Length.ofMillimetres(100), Angle.ofDegrees(180)));

    String svg = SheetDrawing.clean(single(piece, new Pose(300, 400, 0)));

    // Hand-made: half turn, radii 100 and 200, centre (300, 400) → (300, 819.2), each arc in
    // two, begun at the middle of the outer one, away from the corners.
    assertThat(svg)
        .contains(
            "<path id=\"piece-1\" data-piece=\"S\" data-pose=\"300 400 0\" d=\""
                + "M 500 819.2 A 200 200 0 0 0 300 619.2 "
                + "L 300 719.2 A 100 100 0 0 1 400 819.2 A 100 100 0 0 1 300 919.2 "
                + "L 300 1019.2 A 200 200 0 0 0 500 819.2 Z\"/>");
  }

  @Test
  void clean_ring_isItsHoleAndThenItsOutsideOfFourArcsEach() throws Exception {
    String svg = SheetDrawing.clean(single(SampleLayouts.RING, new Pose(600, 600, 1)));
    List<Element> cuts =
        elements(parse(svg), "path").stream()
            .filter(path -> path.getAttribute("id").startsWith("piece-"))
            .toList();

    assertThat(cuts)
        .extracting(path -> path.getAttribute("id"))
        .containsExactly("piece-1-hole-1", "piece-1");
    for (Element cut : cuts) {
      assertThat(cut.getAttribute("d").split(" ", -1)).filteredOn("A"::equals).hasSize(4);
      assertThat(cut.getAttribute("d").split(" ", -1)).filteredOn("Z"::equals).hasSize(1);
    }
  }

  @Test
  void drawings_pathData_isPlainForEveryImporter() throws Exception {
    Pattern plain =
        Pattern.compile(
            "(?:(?:[ML] N N|A N N 0 0 [01] N N|Z)(?: |$))+".replace("N", "-?\\d+(?:\\.\\d{1,4})?"));
    for (String svg :
        List.of(annotated(SampleLayouts.mixed()), SheetDrawing.clean(SampleLayouts.mixed()))) {
      assertThat(svg).doesNotContain("transform", "style=", "class=", "clip", "href");
      for (Element path : elements(parse(svg), "path")) {
        assertThat(path.getAttribute("d")).matches(plain);
      }
    }
  }

  @Test
  void drawings_arcs_areAtMostAQuarterTurn() throws Exception {
    // The chord of at most 90° is at most √2 radii.
    Pattern arc = Pattern.compile("(\\S+) (\\S+) A (\\S+) \\S+ 0 0 [01] (\\S+) (\\S+)");
    int arcs = 0;
    for (Element path : elements(parse(SheetDrawing.clean(SampleLayouts.mixed())), "path")) {
      Matcher matcher = arc.matcher(path.getAttribute("d"));
      for (int at = 0; matcher.find(at); at = matcher.start(4) - 1) {
        double dx = Double.parseDouble(matcher.group(4)) - Double.parseDouble(matcher.group(1));
        double dy = Double.parseDouble(matcher.group(5)) - Double.parseDouble(matcher.group(2));
        double radius = Double.parseDouble(matcher.group(3));
        assertThat(Math.hypot(dx, dy)).isLessThanOrEqualTo(radius * Math.sqrt(2) + 0.001);
        arcs++;
      }
    }
    assertThat(arcs).isGreaterThan(12);
  }

  @Test
  void drawings_sameLayout_sameBytesInAnyLocale() {
    Locale before = Locale.getDefault();
    String first = annotated(SampleLayouts.mixed());
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(annotated(SampleLayouts.mixed()).getBytes(StandardCharsets.UTF_8))
          .isEqualTo(first.getBytes(StandardCharsets.UTF_8));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void annotated_titleBlock_saysWhatTheShopNeeds() {
    assertThat(annotated(SampleLayouts.stack()))
        .contains(
            "Attic climb - Sheet 1 of 2",
            "Sheet: 4x8 ft, birch plywood, 96 in × 48 in, 0.472 in thick.",
            "Kerf 1/16 in, pieces at least 1/8 in apart (no wood between two cuts), at least 1/4 in"
                + " from the sheet's edge.",
            "16 pieces: 16 × A (quarter turn). 67.6 % of the sheet is used.",
            "must measure 100 mm",
            "must measure 4 in",
            "Cautions: ",
            "invented");
  }

  @Test
  void annotated_scaleBars_areTrueInBothUnits() throws Exception {
    List<Double> lengths = new ArrayList<>();
    Pattern line = Pattern.compile("M (\\S+) (\\S+) L (\\S+) \\2 M");
    for (Element path : elements(parse(annotated(SampleLayouts.stack())), "path")) {
      Matcher matcher = line.matcher(path.getAttribute("d"));
      if (matcher.find()) {
        lengths.add(Double.parseDouble(matcher.group(3)) - Double.parseDouble(matcher.group(1)));
      }
    }
    // 1 in = 25.4 mm exactly (international inch).
    assertThat(lengths).containsExactly(100.0, 101.6);
  }

  /** Nothing of the drawing may lie outside its page, whatever the sheet and the names. */
  @ParameterizedTest
  @CsvSource({
    "2438.4, 1219.2, Attic climb",
    "200, 150, Attic climb",
    "60, 2000, A job with a name that goes on and on until it no longer fits in one line",
    "600, 300, Donaudampfschifffahrtsgesellschaftskapitänswendelunterbausperrholzplatten",
    "1220, 2440, 螺旋"
  })
  void annotated_anySheetAndName_staysWithinThePage(double length, double width, String job)
      throws Exception {
    Piece small =
        Piece.of("K", "wedge", new Strip(Length.ofMillimetres(40), Length.ofMillimetres(30)));
    SheetStock sheet =
        SheetStock.rectangle(
            "offcut",
            Length.ofMillimetres(length),
            Length.ofMillimetres(width),
            Length.ofMillimetres(12),
            Money.ZERO);
    Layout layout =
        new Layout(
            sheet,
            SampleLayouts.CUTTING,
            List.of(new Placement(small, new Pose(length / 2, width / 2, 0))));
    SheetTitle title = new SheetTitle(job, 1, 1, LengthStyle.METRIC, "", true, List.of());

    Document document = parse(SheetDrawing.annotated(layout, title));

    String[] view = document.getDocumentElement().getAttribute("viewBox").split(" ", -1);
    double left = Double.parseDouble(view[0]);
    double right = left + Double.parseDouble(view[2]);
    double bottom = Double.parseDouble(view[1]) + Double.parseDouble(view[3]);
    for (Element text : elements(document, "text")) {
      double x = Double.parseDouble(text.getAttribute("x"));
      double y = Double.parseDouble(text.getAttribute("y"));
      double wide =
          TextWidth.ems(text.getTextContent()) * Double.parseDouble(text.getAttribute("font-size"));
      boolean centred = text.getAttribute("text-anchor").equals("middle");
      assertThat(centred ? x - wide / 2 : x).as(text.getTextContent()).isGreaterThan(left);
      assertThat(centred ? x + wide / 2 : x + wide).as(text.getTextContent()).isLessThan(right);
      assertThat(y).as(text.getTextContent()).isLessThan(bottom);
    }
  }

  @Test
  void annotated_everyPiece_hasItsNumberAndTheSheetItsLabels() throws Exception {
    Layout layout = SampleLayouts.mixed();
    List<String> labels = List.of("T1", "T2", "T3", "T4", "T5", "T6", "T7", "T8", "T9");
    SheetTitle title = new SheetTitle("Job", 1, 1, LengthStyle.METRIC, "", false, labels);

    String texts =
        elements(parse(SheetDrawing.annotated(layout, title)), "text").stream()
            .map(Element::getTextContent)
            .reduce("", (a, b) -> a + "\n" + b);

    assertThat(texts).contains(labels).doesNotContain("invented");
  }

  /** Supports, laps and screws of the helix are drawn as marks, named, and explained below. */
  @Test
  void annotated_marksOfThePlan_areDrawnNamedAndExplained() throws Exception {
    Layout layout = single(SampleLayouts.QUARTER, new Pose(100, 600, 0));
    double radius = ((AnnularSector) SampleLayouts.QUARTER.shape()).radius().millimetres();
    Point on = Point.polar(radius, 0.3);
    List<RoadbedMark> marks =
        List.of(
            new RoadbedMark(
                RoadbedMark.Sort.STATION,
                List.of(new Segment(on, Point.polar(radius + 5, 0.3))),
                "S7",
                List.of(Point.polar(radius - 20, 0.3))),
            new RoadbedMark(
                RoadbedMark.Sort.SHOULDER,
                List.of(new Segment(Point.polar(radius - 9, 0.6), Point.polar(radius + 9, 0.6))),
                "cut away above",
                List.of(Point.polar(radius + 20, 0.7), Point.polar(radius - 20, 0.7))));
    SheetTitle title =
        new SheetTitle(
            "Job",
            1,
            1,
            LengthStyle.METRIC,
            "",
            false,
            List.of("7"),
            Optional.empty(),
            "",
            List.of("turn 2"),
            List.of(marks));

    Document document = parse(SheetDrawing.annotated(layout, title));

    List<String> texts = elements(document, "text").stream().map(Element::getTextContent).toList();
    assertThat(texts).contains("7", "turn 2", "S7", "cut away above");
    assertThat(String.join(" ", texts))
        .contains("where that support stands")
        .contains("above at a piece's upper end")
        .doesNotContain("through the splice plate");
    String tick =
        "M %s %s L"
            .formatted(
                SvgNumber.of(100 + on.x()),
                SvgNumber.of(layout.sheet().outline().box().maxY() - 600 - on.y()));
    assertThat(elements(document, "path").stream().map(path -> path.getAttribute("d")))
        .anyMatch(data -> data.startsWith(tick));
    assertThat(
            LayoutCheck.check(SheetDrawing.annotated(layout, title), Expectation.of(layout))
                .findings())
        .isEmpty();
  }

  @Test
  void annotated_labelsNotOneEach_isRefused() {
    SheetTitle title =
        new SheetTitle("Job", 1, 1, LengthStyle.METRIC, "", false, List.of("only one"));

    assertThatThrownBy(() -> SheetDrawing.annotated(SampleLayouts.mixed(), title))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("labels must be one for each of 9 pieces, but there were 1");
  }

  @Test
  void annotated_namesWithMarkup_areTextOnly() throws Exception {
    String nasty = "a<b>&\"c\" \u0001 ]]> ü 木";
    Piece piece = Piece.of("<&>", nasty, SampleLayouts.BLOCK.shape());
    SheetTitle title = new SheetTitle(nasty, 1, 1, LengthStyle.METRIC, nasty, false, List.of());

    Document document = parse(SheetDrawing.annotated(single(piece, new Pose(300, 300, 0)), title));

    assertThat(elements(document, "title").get(0).getTextContent())
        .isEqualTo("a<b>&\"c\" \uFFFD ]]> ü 木, sheet 1");
    assertThat(elements(document, "path").get(1).getAttribute("data-piece")).isEqualTo("<&>");
  }

  @Test
  void annotated_emptySheetAndTinyPiece_areDrawn() throws Exception {
    Piece tiny =
        Piece.of(
            "t",
            "chip",
            FreeShape.polygon(List.of(new Point(0, 0), new Point(1, 0), new Point(0, 0.5))));
    Layout empty = new Layout(SampleLayouts.SHEET, SampleLayouts.CUTTING, List.of());

    assertThat(annotated(empty)).contains("0 pieces. 0.0 % of the sheet is used.");
    assertThat(annotated(single(tiny, new Pose(100, 100, 0)))).contains("1 piece: 1 × t (chip).");
  }

  @Test
  void annotated_blankNamesAndLabels_areLeftOut() throws Exception {
    Piece nameless = Piece.of("x", "", SampleLayouts.QUARTER.shape());
    SheetTitle title = new SheetTitle("Job", 1, 1, LengthStyle.METRIC, "", false, List.of(""));

    String svg = SheetDrawing.annotated(single(nameless, new Pose(100, 600, 0)), title);

    assertThat(elements(parse(svg), "text")).noneMatch(text -> text.getTextContent().isBlank());
  }

  /** A number that covers the centre line must lie within its piece. */
  @Test
  void annotated_narrowPieces_haveReadableNumbersInside() throws Exception {
    Layout layout = SampleLayouts.many();
    Document document = parse(annotated(layout));

    List<Element> numbers =
        elements(document, "text").stream()
            .filter(text -> text.getTextContent().matches("\\d{1,3}"))
            .toList();
    assertThat(numbers).hasSize(172);
    for (int i = 0; i < numbers.size(); i++) {
      Element number = numbers.get(i);
      assertThat(number.getTextContent()).isEqualTo(Integer.toString(i + 1));
      double size = Double.parseDouble(number.getAttribute("font-size"));
      assertThat(size).isGreaterThan(12);
      Point middle =
          new Point(
              Double.parseDouble(number.getAttribute("x")),
              1219.2 - Double.parseDouble(number.getAttribute("y")) + 0.36 * size);
      assertThat(layout.placements().get(i).outline().contains(middle)).isTrue();
    }
  }
}
