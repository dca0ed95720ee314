package curvestock.printing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.BannedWords;
import curvestock.answer.Answer;
import curvestock.app.Workshop;
import curvestock.drawing.Legible;
import curvestock.drawing.Paper;
import curvestock.drawing.PaperSize;
import curvestock.files.MachineFonts;
import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.job.Job;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.printing.PdfLines.Line;
import curvestock.printing.PdfWords.Word;
import curvestock.printing.TileGrid.Tile;
import curvestock.report.ShopPaper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every page of the papers of demonstration jobs, read back and looked at with a ruler. */
@Tag("slow")
class PrintedPacketTest {

  private static final String DEFAULT = "default";
  private static final String PLATES = "helix/boathouse-spiral";
  private static final String RODS = "foundry-oval";
  private static final String LAYERS = "helix/orchard-climb";
  private static final String METRIC = "spare-room";

  /** Office printers leave about 4 to 6 mm blank; common practice, no source. */
  private static final double PRINTER_MARGIN = 6;

  private static final double INCH = 25.4;

  private static final Map<String, Map<String, byte[]>> PAPERS = new ConcurrentHashMap<>();

  /** A plan without a search: what is looked at is paper, not packing. */
  private static Plan plan(String text, String name) {
    try {
      return Workshop.plan(
          Workshop.readJob(text, name),
          new PlanListener() {
            @Override
            public boolean stopped() {
              return true;
            }
          });
    } catch (curvestock.plan.Infeasible e) {
      throw new IllegalStateException(e);
    }
  }

  private static Map<String, byte[]> papers(String demo) {
    return PAPERS.computeIfAbsent(demo, name -> papersOf(text(name), name));
  }

  private static String text(String demo) {
    try {
      return Files.readString(Path.of("demo-data", demo + ".yaml"));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static Map<String, byte[]> papersOf(String text, String name) {
    Plan plan = plan(text, name);
    Job job = plan.job();
    Answer answer = Answer.of(plan);
    SpareFonts spare = new MachineFonts();
    Map<String, byte[]> papers = new TreeMap<>(PaperTemplates.of(job, job.paper(), spare));
    papers.put("marking-out.pdf", MarkingSheets.pdf(plan, spare));
    papers.put("labels.pdf", LabelSheet.pdf(plan, spare));
    TrammelSheet.pdf(job, spare).ifPresent(pdf -> papers.put("trammel.pdf", pdf));
    papers.put(
        "report.pdf",
        ReportPdf.of(
            answer.heading(),
            ShopPaper.of(job, answer),
            ReportPictures.of(plan, answer),
            job.paper(),
            spare));
    job.structure()
        .ifPresent(
            order -> {
              papers.put("footprint.pdf", Footprint.pdf(job, order, job.paper(), spare));
              papers.put("support-table.pdf", SupportSheet.pdf(answer, job.paper(), spare));
            });
    return papers;
  }

  private static String words(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replace('\u00A0', ' ').replaceAll("\\s+", " ");
    }
  }

  /** What a tile shows of its drawing is cut off at its window: of its page only what is beside. */
  private static List<Word> unclipped(String name, byte[] pdf) {
    boolean tiled = name.startsWith("patterns/") || name.equals("footprint.pdf");
    return PdfWords.of(pdf).stream()
        .filter(
            word ->
                !tiled
                    || word.page() == 1
                    || word.text().matches("(Page|Full size|this bar|100 mm|4 in|\\d+/\\d+).*"))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {DEFAULT, PLATES, RODS, LAYERS, METRIC})
  void words_ofEveryPaper_areNotBanned(String demo) throws IOException {
    for (Map.Entry<String, byte[]> paper : papers(demo).entrySet()) {
      assertThat(BannedWords.in(words(paper.getValue()))).as(paper.getKey()).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {DEFAULT, PLATES, RODS, LAYERS, METRIC})
  void letters_ofEveryPaper_areSixPointsOrMore(String demo) {
    papers(demo)
        .forEach(
            (name, pdf) ->
                assertThat(PdfWords.of(pdf))
                    .as(name)
                    .isNotEmpty()
                    .allSatisfy(word -> assertThat(word.size()).isGreaterThanOrEqualTo(6)));
  }

  @ParameterizedTest
  @ValueSource(strings = {DEFAULT, PLATES, RODS, LAYERS, METRIC})
  void ink_ofEveryPaper_keepsThePrintersMargin(String demo) throws IOException {
    for (Map.Entry<String, byte[]> paper : papers(demo).entrySet()) {
      try (PDDocument document = Loader.loadPDF(paper.getValue())) {
        for (Word word : unclipped(paper.getKey(), paper.getValue())) {
          double width = document.getPage(word.page() - 1).getMediaBox().getWidth() / 72 * INCH;
          assertThat(word.left()).as("%s %s", paper.getKey(), word).isGreaterThan(PRINTER_MARGIN);
          assertThat(width - word.right())
              .as("%s %s", paper.getKey(), word)
              .isGreaterThan(PRINTER_MARGIN);
          assertThat(word.low()).as("%s %s", paper.getKey(), word).isGreaterThan(PRINTER_MARGIN);
        }
        for (PDPage page : document.getPages()) {
          double width = page.getMediaBox().getWidth() / 72 * INCH;
          double height = page.getMediaBox().getHeight() / 72 * INCH;
          for (Line line : PdfLines.of(page)) {
            double pen = line.width() / 2;
            line.shown()
                .forEach(
                    p ->
                        assertThat(
                                Math.min(
                                    Math.min(p.x(), width - p.x()),
                                    Math.min(p.y(), height - p.y())))
                            .as("%s of %s", p, paper.getKey())
                            .isGreaterThan(PRINTER_MARGIN + pen));
          }
        }
      }
    }
  }

  /**
   * ISO 32000-1:2008, 12.2, table 150: PrintScaling None keeps a viewer from fitting to the page.
   */
  @ParameterizedTest
  @ValueSource(strings = {DEFAULT, METRIC})
  void viewers_ofEveryPaper_areAskedToPrintUnscaled(String demo) throws IOException {
    for (byte[] pdf : papers(demo).values()) {
      try (PDDocument document = Loader.loadPDF(pdf)) {
        assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
            .isEqualTo("None");
      }
    }
  }

  /** A stack of loose pages can be put in order, and a lost one is noticed. */
  @ParameterizedTest
  @ValueSource(strings = {DEFAULT, PLATES, RODS, LAYERS})
  void pages_ofEveryPaper_sayWhichOfHowMany(String demo) throws IOException {
    for (Map.Entry<String, byte[]> paper : papers(demo).entrySet()) {
      try (PDDocument document = Loader.loadPDF(paper.getValue())) {
        int pages = document.getNumberOfPages();
        for (int page = 1; pages > 1 && page <= pages; page++) {
          PDFTextStripper stripper = new PDFTextStripper();
          stripper.setStartPage(page);
          stripper.setEndPage(page);
          assertThat(stripper.getText(document).replace('\u00A0', ' '))
              .as("%s, page %s", paper.getKey(), page)
              .contains(page + " of " + pages);
        }
      }
    }
  }

  /** A tenth of a page's ink box is a caption or a sliver. */
  @ParameterizedTest
  @ValueSource(strings = {DEFAULT, PLATES, RODS, LAYERS, METRIC})
  void pages_ofFlowingPapers_areNoSlivers(String demo) throws IOException {
    for (String name : List.of("report.pdf", "marking-out.pdf", "support-table.pdf")) {
      byte[] pdf = papers(demo).get(name);
      if (pdf == null) {
        continue;
      }
      try (PDDocument document = Loader.loadPDF(pdf)) {
        for (int i = 0; i < document.getNumberOfPages(); i++) {
          int page = i + 1;
          double high = document.getPage(i).getMediaBox().getHeight() / 72 * INCH;
          double lowestWord =
              PdfWords.of(pdf).stream()
                  .filter(word -> word.page() == page && word.low() > 12)
                  .mapToDouble(Word::low)
                  .min()
                  .orElse(high);
          double lowestLine =
              PdfLines.of(document.getPage(i)).stream()
                  .flatMap(line -> line.points().stream())
                  .mapToDouble(p -> p.y())
                  .min()
                  .orElse(high);
          double used = high - 14 - Math.min(lowestWord, lowestLine);
          assertThat(used / (high - 28)).as("%s, page %s", name, page).isGreaterThan(0.18);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {DEFAULT, PLATES, RODS, LAYERS, METRIC})
  void tiles_ofFullSizeDrawings_showMoreThanAStroke(String demo) {
    Job job = Workshop.readJob(text(demo), demo);
    for (PaperTemplate template : PaperTemplates.templates(job)) {
      assertNoStrokes(
          new TiledDrawing("t", List.of(), template.drawing(), job.paper()).grid(),
          InkPoints.of(template.drawing()));
    }
    job.structure()
        .ifPresent(
            order ->
                assertNoStrokes(
                    TileGrid.of(Footprint.drawing(job, order), job.paper()),
                    InkPoints.of(Footprint.drawing(job, order))));
  }

  private static void assertNoStrokes(TileGrid grid, InkPoints ink) {
    Map<Tile, Double> alone = ink.over(grid).alone(grid.tiles());
    assertThat(alone.values()).allSatisfy(length -> assertThat(length).isGreaterThan(10));
  }

  /** What a page given up would have shown must stand on others. */
  @Test
  void ink_ofATiledFootprint_isAllPrinted() {
    Job job = Workshop.readJob(text(DEFAULT), DEFAULT);
    Paper drawing = Footprint.drawing(job, job.structure().orElseThrow());
    TileGrid grid = TileGrid.of(drawing, PaperSize.LETTER);
    List<Box> windows = grid.tiles().stream().map(grid::window).toList();

    int points = 0;
    for (Paper.Thing thing : drawing.things()) {
      List<Edge> edges = thing instanceof Paper.Shape shape ? shape.edges() : List.of();
      for (Edge edge : edges) {
        int steps = Math.max(1, (int) Math.ceil(edge.length()));
        for (int i = 0; i < steps; i++) {
          Point at = edge.part(0, (i + 0.5) / steps).end();
          assertThat(windows).as("%s", at).anyMatch(box -> box.distance(Box.of(at, at)) == 0);
          points++;
        }
      }
    }
    assertThat(points).isGreaterThan(1000);
  }

  @ParameterizedTest
  @ValueSource(strings = {DEFAULT, RODS, LAYERS})
  void stations_ofTheSupportTable_areNamedOnEveryPageOfTheirs(String demo) throws IOException {
    byte[] pdf = papers(demo).get("support-table.pdf");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        List<String> lines = stripper.getText(document).lines().toList();
        // The head of a table never begins a page: its name stands above.
        assertThat(lines.get(0)).as("page %s", page).doesNotStartWith("Support Bearing");
        // Nor does a name end it.
        assertThat(lines.get(Math.max(0, lines.size() - 2))).doesNotStartWith("Turn ");
      }
    }
  }

  @Test
  void pictures_ofTheReport_areLinesAndLettersWithoutScaleBars() throws IOException {
    byte[] pdf = papers(DEFAULT).get("report.pdf");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getXObjectNames()) {
          assertThat(page.getResources().isImageXObject(name)).isFalse();
        }
      }
    }
    assertThat(words(pdf)).doesNotContain("must measure 100 mm").contains("turn 1", "S12", "J20");
  }

  /**
   * Far over 14 pages when every corner of every ear and every hole was told for each piece by
   * itself; a picture of each kind with the letters of its corners takes three more.
   */
  @Test
  void markingOut_ofManyAlikePiecesWithEars_isShort() throws IOException {
    byte[] pdf = papers(LAYERS).get("marking-out.pdf");

    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(18);
    }
    assertThat(words(pdf))
        .contains("The holes are the same on all")
        .contains("The other corners are the same on all");
  }

  /** The chapter's name stands once, on the page of the sentence and the table that follow it. */
  @ParameterizedTest
  @ValueSource(strings = {DEFAULT, PLATES, RODS, LAYERS})
  void checks_inTheReport_standUnderTheirHeading(String demo) throws IOException {
    try (PDDocument document = Loader.loadPDF(papers(demo).get("report.pdf"))) {
      PDFTextStripper stripper = new PDFTextStripper();
      int found = 0;
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        String text = stripper.getText(document).replace('\u00A0', ' ').replaceAll("\\s+", " ");
        int at = text.indexOf("Does the helix work? ");
        if (at >= 0) {
          found++;
          assertThat(text.substring(at)).contains("What is checked Finding");
          assertThat(text.indexOf("Does the helix work? ", at + 1)).isNegative();
        }
      }
      assertThat(found).isEqualTo(1);
    }
  }

  /** Small rings once had their turn's name upon the numbers of their pieces. */
  @ParameterizedTest
  @ValueSource(strings = {DEFAULT, PLATES, RODS})
  void namesOfTurns_standBelowTheirRings(String demo) throws IOException {
    List<Word> words = PdfWords.of(papers(demo).get("report.pdf"));
    List<Word> turns =
        words.stream().filter(word -> word.text().matches("turn \\d+, rail top .*")).toList();

    assertThat(turns).isNotEmpty();
    for (Word turn : turns) {
      assertThat(words)
          .filteredOn(word -> !word.equals(turn) && word.page() == turn.page())
          .noneMatch(
              word ->
                  word.left() < turn.right()
                      && word.right() > turn.left()
                      && word.low() < turn.low() + 0.7 * turn.size() / 72 * INCH
                      && word.low() + 0.7 * word.size() / 72 * INCH > turn.low());
    }
  }

  @Test
  void labels_ofTwoLayers_sayWhichAndExplainUp() throws IOException {
    String words = words(papers(LAYERS).get("labels.pdf"));

    assertThat(words).contains("L1, lower layer", "L2, upper layer", "'Up' is the side");
    assertThat(words(papers(LAYERS).get("marking-out.pdf"))).contains("'Up' is the side");
    assertThat(words(papers(LAYERS).get("report.pdf"))).contains("'Up' is the side");
  }

  @Test
  void cuttingLists_ofBlocksAndRods_standInReportAndOnTheSupportTable() throws IOException {
    for (String name : List.of("report.pdf", "support-table.pdf")) {
      assertThat(words(papers(DEFAULT).get(name)))
          .contains("Riser blocks; heights at the middle", "Cut list: ", "brace for block-18");
      assertThat(words(papers(RODS).get(name))).contains("Rods to cut", "Cut list: ");
    }
  }

  /** Hand value: the default helix's outer edge has a radius of 26 + 4 1/2 / 2 in. */
  @Test
  void footprint_ofARing_saysItsDiameterAcross() throws IOException {
    assertThat(words(papers(DEFAULT).get("footprint.pdf")))
        .contains("1 to 3: 56 1/2 in", "2 to 4: 56 1/2 in");
    assertThat(words(papers(RODS).get("footprint.pdf"))).contains("1 to 3: ");
  }

  @Test
  void report_ofAJobWithAMachine_showsTheOrderOfItsCuts() throws IOException {
    String job =
        text(DEFAULT).replaceAll("(?m)^#.*$", "") + "\nmachine: {tabs: {count: 3, width: 8 mm}}\n";
    String words = words(papersOf(job, "machine.yaml").get("report.pdf"));

    assertThat(words).contains("Order of machine cuts", "Sheet 1 of 2: order of machine cuts.");
    assertThat(words(papers(DEFAULT).get("report.pdf"))).doesNotContain("Order of machine cuts");
  }

  @Test
  void titles_ofAHundredAndEighteenLetters_keepTheMarginsAndTheirSize() {
    String title =
        IntStream.range(0, 118).mapToObj(i -> i % 9 == 8 ? " " : "W").collect(Collectors.joining());
    String job = text(METRIC).replaceFirst("(?m)^title:.*$", "title: " + title);

    papersOf(job, "long.yaml")
        .forEach(
            (name, pdf) ->
                unclipped(name, pdf)
                    .forEach(
                        word -> {
                          assertThat(word.size()).as(name).isGreaterThanOrEqualTo(6);
                          assertThat(word.left()).as(name).isGreaterThan(PRINTER_MARGIN);
                          assertThat(word.right()).as(name + word).isLessThan(297 - PRINTER_MARGIN);
                        }));
  }

  /** Greek and Cyrillic are in the built-in font. */
  @Test
  void titles_inOtherScripts_arePrintedOrNamed() throws IOException {
    String text = text(METRIC).replaceFirst("(?m)^title:.*$", "title: Σπείρα Спираль 螺旋");
    Job job = Workshop.readJob(text, "scripts.yaml");
    String words = words(papersOf(text, "scripts.yaml").get("report.pdf"));

    assertThat(words).contains("Σπείρα Спираль");
    assertThat(Typeface.unprintable("Σπείρα Спираль 螺旋", SpareFonts.NONE))
        .containsExactly("旋", "螺");
    assertThat(ReportPdf.unprintable(job.title(), SpareFonts.NONE).orElseThrow())
        .contains("旋 螺", "question mark", "Install a font");
    boolean machineHasThem = Typeface.unprintable("螺旋", new MachineFonts()).isEmpty();
    assertThat(words.contains("螺旋")).isEqualTo(machineHasThem);
    assertThat(Workshop.unprintable(job).isEmpty()).isEqualTo(machineHasThem);
  }

  @Test
  void smallestLetters_areTheLimitItself() {
    // A point is 1/72 in: PostScript Language Reference, 3rd ed., 4.3.1; from memory.
    assertThat(Legible.SMALLEST / INCH * 72).isCloseTo(6.24, within(0.01));
  }
}
