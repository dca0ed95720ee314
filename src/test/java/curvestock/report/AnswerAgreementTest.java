package curvestock.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import curvestock.BannedWords;
import curvestock.answer.Answer;
import curvestock.answer.Building;
import curvestock.answer.Buying;
import curvestock.answer.BuyingWords;
import curvestock.answer.Choices;
import curvestock.answer.ChosenWords;
import curvestock.answer.CompareWords;
import curvestock.answer.DemoPlans;
import curvestock.answer.Figures;
import curvestock.answer.Table;
import curvestock.app.Workshop;
import curvestock.compare.CompareListener;
import curvestock.compare.Comparison;
import curvestock.compare.Question;
import curvestock.compare.SegmentOption;
import curvestock.job.Job;
import curvestock.packing.Effort;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.printing.ReportPdf;
import curvestock.printing.SpareFonts;
import curvestock.units.Angle;
import curvestock.units.Count;
import curvestock.units.Money;
import curvestock.units.Quantity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every figure that more than one output shows, of every demo job, in all of them: text, data,
 * comma-separated values, the report as HTML and PDF, the page.
 */
class AnswerAgreementTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  /** Takes the first layouts found: how full they are does not matter here. */
  private static final CompareListener AT_ONCE =
      new CompareListener() {
        @Override
        public boolean stopped() {
          return true;
        }
      };

  /** One job's outputs, white space made one. */
  private record Written(
      String name,
      Answer answer,
      String summary,
      String helix,
      String html,
      String pdf,
      JsonNode planJson,
      JsonNode page,
      Map<String, String> csv) {

    Figures figures() {
      return answer.figures();
    }

    /** What people read of the whole answer. */
    List<String> readable() {
      return List.of(summary, html, pdf);
    }

    @Override
    public String toString() {
      return name;
    }
  }

  private static final List<Written> ALL = new ArrayList<>();

  @BeforeAll
  static void writeAll() throws Exception {
    List<Path> files;
    try (Stream<Path> found = Files.walk(Path.of("demo-data"))) {
      files = found.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
    for (Path file : files) {
      ALL.add(write(file));
    }
  }

  static List<Written> all() {
    return ALL;
  }

  private static Written write(Path file) throws Exception {
    Job job = Workshop.readJob(Optional.of(file));
    Plan plan = planned(job);
    Answer answer = Answer.of(plan);
    List<ReportPart> parts = ShopPaper.of(job, answer);
    boolean helix = answer.building().isPresent();
    return new Written(
        file.getFileName().toString(),
        answer,
        plain(String.join(" ", PlanPaper.text(job, answer))),
        helix ? plain(String.join(" ", HelixPaper.withLists(answer))) : "",
        plain(ReportHtml.of(answer.heading(), parts, Map.of()).replaceAll("<[^>]*>", " ")),
        plain(pdf(ReportPdf.of(answer.heading(), parts, Map.of(), job.paper(), SpareFonts.NONE))),
        JSON.readTree(PlanJson.of(plan, answer)),
        AnswerJson.buying(answer),
        helix
            ? Map.of(
                "shopping", TableCsv.of(answer.shopping(), answer.figures()),
                "supports", csv(answer, building(answer).supports()))
            : Map.of());
  }

  /** Where sheets are few, the first layouts may not do. */
  private static Plan planned(Job job) throws Infeasible {
    try {
      return Workshop.plan(job, AT_ONCE);
    } catch (Infeasible e) {
      return Workshop.plan(job.with(job.search().at(Effort.QUICK)), PlanListener.NONE);
    }
  }

  private static Building building(Answer answer) {
    return answer.building().orElseThrow();
  }

  private static String csv(Answer answer, Table table) {
    return TableCsv.of(table, answer.figures());
  }

  private static String pdf(byte[] bytes) throws IOException {
    try (PDDocument document = Loader.loadPDF(bytes)) {
      return new PDFTextStripper().getText(document);
    }
  }

  private static String plain(String text) {
    return text.replace("&amp;", "&")
        .replace("&quot;", "\"")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replaceAll("[\\s\\u00a0]+", " ");
  }

  /** One voice and one system of units, whatever the job. */
  @ParameterizedTest
  @MethodSource("all")
  void words_ofEveryPaper_areOursAndOfOneSystem(Written job) {
    for (String text : List.of(job.summary(), job.helix(), job.html(), job.pdf())) {
      assertThat(BannedWords.in(text)).isEmpty();
      assertThat(BannedWords.otherUnits(job.figures().isImperial(), text)).isEmpty();
    }
  }

  /** What is paid, tax and all, is the same everywhere; so is the proven least. */
  @ParameterizedTest
  @MethodSource("all")
  void money_isTheSameInEveryOutput(Written job) {
    Buying buying = job.answer().bought();
    String paid = job.figures().money(buying.cost().paid());
    boolean buys = !buying.cost().net().equals(Money.ZERO);

    for (String text : job.readable()) {
      assertThat(text).contains(buys ? paid : "Nothing to buy");
      // That one sheet at least is needed goes without saying.
      if (!buying.cost().isProvenLeast() && buying.cost().leastSheets() > 1) {
        assertThat(text)
            .contains(
                "No purchase under "
                    + job.figures().money(buying.cost().leastPaid())
                    + " is possible");
      }
    }
    // One sheet would do for everything only if it held everything.
    assertThat(new BuyingWords(job.answer()).obstacles())
        .filteredOn(line -> line.startsWith("One sheet"))
        .allMatch(line -> line.contains("held all " + buying.pieces() + " "));
    assertThat(new BuyingWords(job.answer()).obstacles())
        .allMatch(
            line ->
                line.matches(
                    "(To spend less on these pieces, one|One) sheet of .* (would have to hold|held)"
                        + " (all )?\\d+ .*pieces.*; the fullest layout found holds \\d+.*\\."));
    assertThat(job.page().get("money").asText()).isEqualTo(paid);
    for (JsonNode json : List.of(job.planJson(), job.page())) {
      assertThat(json.at("/cost/paid").asLong()).isEqualTo(buying.cost().paid().minorUnits());
      assertThat(json.at("/cost/leastPaid").asLong())
          .isEqualTo(buying.cost().leastPaid().minorUnits());
    }
    assertThat(json(job.planJson(), "purchase", "cost") + job.planJson().at("/cost/tax").asLong())
        .isEqualTo(buying.cost().paid().minorUnits());
  }

  private static long json(JsonNode root, String table, String column) {
    long sum = 0;
    for (JsonNode row : root.get(table)) {
      sum += row.path(column).asLong();
    }
    return sum;
  }

  /** The shopping list comes to the same in data, CSV, words and both reports. */
  @ParameterizedTest
  @MethodSource("all")
  void shopping_comesToTheSameInEveryOutput(Written job) {
    String total = "Total " + job.figures().money(job.answer().priced());

    assertThat(json(job.planJson(), "shopping", "price"))
        .isEqualTo(job.answer().priced().minorUnits());
    assertThat(job.html()).contains(total);
    assertThat(job.pdf()).contains(total);
    if (!job.csv().isEmpty()) {
      assertThat(job.helix()).contains(total);
      long cents =
          job.csv()
              .get("shopping")
              .lines()
              .skip(1)
              .map(line -> line.replaceAll("\"[^\"]*\"", "").split(",", -1)[3])
              .filter(price -> !price.isEmpty())
              .mapToLong(price -> Math.round(Double.parseDouble(price) * 100))
              .sum();
      assertThat(cents).isEqualTo(job.answer().priced().minorUnits());
    }
  }

  /** Sheets, pieces and how full they are. */
  @ParameterizedTest
  @MethodSource("all")
  void counts_areTheSameInEveryOutput(Written job) {
    Buying buying = job.answer().bought();
    Table kinds = buying.kinds();
    long pieces = 0;
    for (int i = 0; i < kinds.rows().size(); i++) {
      pieces += ((Count) kinds.at(i, "count")).number();
      String kind = kinds.words(i, "kind", job.figures());
      assertThat(job.summary()).contains(kind + " " + kinds.words(i, "count", job.figures()) + " ");
      assertThat(job.html()).contains(kind + " " + kinds.words(i, "count", job.figures()) + " ");
      assertThat(job.pdf()).contains(kind);
    }
    assertThat(pieces).isEqualTo(buying.pieces()).isEqualTo(job.page().get("pieces").asLong());
    assertThat(job.html()).contains(Figures.count(buying.pieces(), "piece") + " to cut. ");
    assertThat(job.planJson().get("sheets")).hasSize(buying.layouts());
    String used = job.figures().percent(buying.yield()) + " of the plywood is used";
    assertThat(job.readable()).allSatisfy(text -> assertThat(text).contains(used));
    assertThat(job.page().get("used").asText()).startsWith(used);
    assertThat(job.page().get("sheets").asInt()).isEqualTo(buying.sheets());
  }

  /** Every cell of the tables that people read twice. */
  @ParameterizedTest
  @MethodSource("all")
  void tables_areTheSameOnEveryPaper(Written job) {
    List<Table> tables = new ArrayList<>();
    tables.add(PlanPaper.purchase(job.answer().bought()));
    tables.add(job.answer().bought().remnants());
    for (Table table : tables) {
      cells(job, table).forEach(cell -> contain(job.readable(), cell));
    }
    job.answer()
        .building()
        .ifPresent(
            helix -> {
              cells(job, helix.checks().only("state", "title", "finding", "fix"))
                  .forEach(c -> contain(List.of(job.helix(), job.html()), c));
              cells(job, job.answer().shopping())
                  .forEach(c -> contain(List.of(job.helix(), job.html()), c));
              cells(job, helix.schedule().only("piece", "kind", "undersideFrom", "undersideTo"))
                  .forEach(c -> contain(List.of(job.helix(), job.html(), job.pdf()), c));
              cells(job, helix.heights())
                  .forEach(c -> contain(List.of(job.helix(), job.html(), job.pdf()), c));
              assertThat(job.csv().get("supports").lines())
                  .hasSize(helix.supports().rows().size() + 1);
            });
  }

  private static void contain(List<String> papers, String cell) {
    assertThat(papers).allSatisfy(paper -> assertThat(paper).contains(cell));
  }

  private static List<String> cells(Written job, Table table) {
    List<String> cells = new ArrayList<>();
    for (List<Quantity> row : table.rows()) {
      for (int c = 0; c < row.size(); c++) {
        cells.add(plain(job.figures().of(row.get(c), table.columns().get(c).measure())));
      }
    }
    return cells;
  }

  /**
   * Searched as quickly as a comparison does, a plan and the row of its size are the same thing.
   */
  @ParameterizedTest
  @MethodSource("helices")
  void rowOfTheJobsOwnSize_andThePlan_haveTheSamePiecesAndMoney(Path file) throws Exception {
    Job job = Workshop.readJob(Optional.of(file));
    Job quick = job.with(job.search().at(Effort.QUICK));
    Comparison comparison =
        Workshop.compare(
            quick,
            new Question(own(job), false, OptionalInt.empty(), false),
            new CompareListener() {});
    Plan plan = Workshop.plan(quick, PlanListener.NONE);
    SegmentOption row = comparison.own().orElseThrow();
    Set<String> others =
        job.pieces().stream().map(demand -> demand.piece().id()).collect(Collectors.toSet());
    int cut =
        plan.layouts().stream()
            .flatMap(layout -> layout.placements().stream())
            .map(placement -> placement.piece().id())
            .filter(id -> !others.contains(id) && !id.matches("(block|base|plate|side).*"))
            .mapToInt(id -> 1)
            .sum();

    assertThat(((Count) Choices.of(comparison).options().at(0, "pieces")).number()).isEqualTo(cut);
    assertThat(row.sheetCost().minus(row.assumedCost())).isEqualTo(plan.cost().paid());
    assertThat(row.sheets() - row.assumedSheets()).isEqualTo(plan.purchase().sheets());
    assertThat(String.join(" ", new CompareWords(Choices.of(comparison)).reasons()))
        .matches(text -> text.contains("include splice plates") == row.assumedSheets() > 0);
  }

  /** The angle of the job's own segments. */
  private static List<Angle> own(Job job) {
    return List.of(job.helix().orElseThrow().segment());
  }

  /** A spare, assumed plates, metric, and the plainest; all demo jobs would take minutes. */
  static List<Path> helices() {
    return DemoPlans.files().stream()
        .filter(
            file -> file.toString().matches(".*(closet-spiral|porch.*|spare-room|default).yaml"))
        .toList();
  }

  /** The comparison: text, data, report and page. */
  @ParameterizedTest
  @MethodSource("compared")
  void comparison_isTheSameInEveryOutput(String file) throws Exception {
    Job job = Workshop.readJob(Optional.of(Path.of("demo-data", file)));
    Question question =
        new Question(
            Stream.of(90, 60, 45).map(Angle::ofDegrees).toList(),
            false,
            OptionalInt.empty(),
            false);
    Comparison comparison =
        Workshop.compare(job.with(job.search().at(Effort.QUICK)), question, AT_ONCE);
    Choices choices = Choices.of(comparison);
    Plan plan = planned(job);
    Answer answer = Answer.of(plan).compared(comparison);
    String text = plain(String.join(" ", ComparePaper.text(choices)));
    String html =
        plain(
            ReportHtml.of(answer.heading(), ShopPaper.of(job, answer), Map.of())
                .replaceAll("<[^>]*>", " "));
    JsonNode json = JSON.readTree(CompareJson.of(choices));
    JsonNode page = AnswerJson.choices(choices);
    String chart = CompareCharts.choices(comparison);

    assertThat(choices.options().rows()).hasSizeGreaterThan(2);
    assertThat(ComparePaper.brief(choices)).allMatch(line -> line.length() <= 100);
    for (int i = 0; i < choices.options().rows().size(); i++) {
      long paid = ((Money) choices.options().at(i, "cost")).minorUnits();
      String money = answer.figures().money(new Money(paid));
      assertThat(paid).isEqualTo(comparison.options().get(i).cost().paid().minorUnits());
      assertThat(List.of(text, html)).allSatisfy(paper -> assertThat(paper).contains(money));
      assertThat(json.at("/choices/" + i + "/cost").asLong()).isEqualTo(paid);
      assertThat(page.at("/options/rows/" + i + "/words/cost").asText()).isEqualTo(money);
      assertThat(chart).contains(money.replace(".00", ""));
    }
    String chosen = plain(new ChosenWords(answer).sentence().orElseThrow());
    assertThat(chosen).contains(answer.figures().money(plan.cost().paid()));
    assertThat(List.of(html, plain(String.join(" ", PlanPaper.text(job, answer)))))
        .allSatisfy(paper -> assertThat(paper).contains(chosen));
    String decision = plain(json.at("/recommendation/sentence").asText());
    assertThat(List.of(text, html, plain(page.get("decision").asText())))
        .allSatisfy(paper -> assertThat(paper).contains(decision));
  }

  static Stream<String> compared() {
    return Stream.of("porch-helix-store-cut.yaml", "first-helix-quarter.yaml");
  }
}
