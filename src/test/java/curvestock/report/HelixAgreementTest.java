package curvestock.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import curvestock.answer.Answer;
import curvestock.answer.Table;
import curvestock.app.Workshop;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.SupportRow;
import curvestock.helix.spec.Riser;
import curvestock.job.Job;
import curvestock.plan.PlanListener;
import curvestock.units.Count;
import curvestock.units.LengthUnit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * All that is written of a whole helix, of every demo job that orders one, against each other
 * number by number. (The cut layouts against the schedule: HelixLabelsTest.)
 */
class HelixAgreementTest {

  /** Tables in inches have three decimals. */
  private static final double ROUNDING = 0.0011;

  /** One written result, read back. */
  private record Written(String name, Answer report, Map<String, String> files) {

    HelixPlan plan() {
      return report.building().orElseThrow().plan();
    }

    List<Map<String, String>> table(String file) {
      List<List<String>> rows = files.get(file).lines().map(Written::cells).toList();
      List<Map<String, String>> table = new ArrayList<>();
      for (List<String> row : rows.subList(1, rows.size())) {
        Map<String, String> named = new HashMap<>();
        for (int i = 0; i < row.size(); i++) {
          // Without the unit, which is the job's.
          named.put(rows.get(0).get(i).replaceAll(" \\(.*\\)", ""), row.get(i));
        }
        table.add(named);
      }
      return table;
    }

    private static List<String> cells(String line) {
      Matcher matcher =
          Pattern.compile("\"((?:[^\"]|\"\")*)\"|([^,]+)|(?<=,)(?=,|$)").matcher(line);
      List<String> cells = new ArrayList<>();
      while (matcher.find()) {
        cells.add(matcher.group(1) != null ? matcher.group(1) : matcher.group());
      }
      return cells;
    }

    /** Millimetres of a number in a table. */
    double mm(String number) {
      LengthUnit unit = report.figures().style().unit();
      return Double.parseDouble(number) * (unit == LengthUnit.INCH ? 25.4 : 1);
    }

    double tolerance() {
      return report.figures().style().unit() == LengthUnit.INCH ? ROUNDING * 25.4 : 0.011;
    }

    @Override
    public String toString() {
      return name;
    }
  }

  private static List<Written> results = List.of();

  static List<Written> results() throws IOException {
    if (results.isEmpty()) {
      results = writeAll();
    }
    return results;
  }

  private static List<Written> writeAll() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("demo-data"))) {
      return files
          .filter(file -> file.toString().endsWith(".yaml"))
          .sorted()
          .map(HelixAgreementTest::write)
          .flatMap(Optional::stream)
          .toList();
    }
  }

  private static Optional<Written> write(Path file) {
    try {
      Job job = Workshop.readJob(Optional.of(file));
      if (job.structure().isEmpty()) {
        return Optional.empty();
      }
      Answer report = Workshop.helix(job, false, PlanListener.NONE);
      Map<String, String> written = new HashMap<>();
      Workshop.helixResult(report)
          .contents()
          .forEach((path, bytes) -> written.put(path, new String(bytes, StandardCharsets.UTF_8)));
      return Optional.of(new Written(file.getFileName().toString(), report, written));
    } catch (Exception e) {
      throw new IllegalStateException(file + ": " + e.getMessage(), e);
    }
  }

  /** Where one piece ends the next begins, and the joint between them is the table's. */
  @ParameterizedTest
  @MethodSource("results")
  void joints_tieThePiecesThatTheScheduleSays(Written helix) {
    Map<String, Map<String, String>> pieces = new HashMap<>();
    helix.table("schedule.csv").forEach(row -> pieces.put(row.get("piece"), row));
    List<Map<String, String>> joints = helix.table("joints.csv");
    int layers = helix.plan().joints().layers();

    assertThat(joints).hasSize(pieces.size() - layers);
    for (Map<String, String> joint : joints) {
      Map<String, String> lower = pieces.get(joint.get("lower piece"));
      Map<String, String> upper = pieces.get(joint.get("upper piece"));
      assertThat(lower.get("upper joint")).isEqualTo(joint.get("joint"));
      assertThat(upper.get("lower joint")).isEqualTo(joint.get("joint"));
      for (String place : List.of("bearing", "underside")) {
        assertThat(lower.get(place + " to")).isEqualTo(joint.get(place));
        assertThat(upper.get(place + " from")).isEqualTo(joint.get(place));
      }
      assertThat(lower.get("rail top to")).isEqualTo(upper.get("rail top from"));
    }
  }

  /** Each piece's own part of the ring begins where the last one's ended: every turn once. */
  @ParameterizedTest
  @MethodSource("results")
  void pieces_ofALayer_coverEachTurnOnce(Written helix) {
    for (int layer = 1; layer <= helix.plan().joints().layers(); layer++) {
      double covered = 0;
      for (var piece : helix.plan().roadbed().pieces()) {
        if (piece.layer() == layer) {
          assertThat(piece.from()).isCloseTo(covered, within(1e-9));
          covered = piece.to();
        }
      }
      assertThat(covered).isCloseTo(helix.plan().climb().ringLength(), within(1e-9));
    }
  }

  /** From the foot to the head the heights never fall, and their rises add up to the climb. */
  @ParameterizedTest
  @MethodSource("results")
  void heights_riseAllTheWay_andAddUpToTheClimb(Written helix) {
    HelixPlan plan = helix.plan();
    double last = plan.profile().heightAt(plan.profile().foot());
    double sum = 0;
    for (SupportRow row : plan.supports().rows()) {
      double height = plan.profile().heightAt(row.at());
      assertThat(height).isGreaterThanOrEqualTo(last - 1e-9);
      if (row.at() >= plan.profile().foot() && row.at() <= plan.profile().head()) {
        sum += height - last;
        last = height;
      }
    }
    sum += plan.profile().heightAt(plan.profile().head()) - last;
    assertThat(sum).isCloseTo(plan.climb().climb().millimetres(), within(1e-6));
  }

  /** A station's height lies between those of the ends of the piece that it holds. */
  @ParameterizedTest
  @MethodSource("results")
  void supports_holdThePiecesOfTheSchedule_atTheirHeights(Written helix) {
    double most = helix.tolerance();
    for (Map<String, String> row : helix.table("supports.csv")) {
      boolean ring = row.get("turn").matches("\\d+");
      double height = helix.mm(row.get("underside"));
      List<Map<String, String>> held =
          helix.table("schedule.csv").stream()
              .filter(piece -> piece.get("layer").equals("1"))
              .filter(
                  piece ->
                      words(piece.get("supports").replace(",", "")).contains(row.get("support")))
              .filter(
                  piece ->
                      (row.get("turn").equals("entry lead")
                              && piece.get("lower joint").equals("entry"))
                          || (row.get("turn").equals("exit lead")
                              && piece.get("upper joint").equals("exit"))
                          || (ring
                              && height >= helix.mm(piece.get("underside from")) - most - lap(helix)
                              && height <= helix.mm(piece.get("underside to")) + most + lap(helix)))
              .toList();
      assertThat(held).as("pieces on %s", row).isNotEmpty().hasSizeLessThanOrEqualTo(2);
    }
  }

  /** What a lap's half climbs. */
  private static double lap(Written helix) {
    return 30 * helix.plan().climb().grade().ratio();
  }

  /** From the base up, blocks or gaps and the plywood between reach each height of the table. */
  @ParameterizedTest
  @MethodSource("results")
  void gaps_stackedFromTheBase_reachEveryHeight(Written helix) {
    Riser riser = helix.plan().spec().supports().riser();
    String column = riser instanceof Riser.WoodBlocks ? "block height" : "gap below";
    Map<String, Double> tops = new HashMap<>();
    List<Map<String, String>> rows = helix.table("supports.csv");
    for (int i = 0; i < rows.size(); i++) {
      Map<String, String> row = rows.get(i);
      double stands = tops.getOrDefault(row.get("support"), 0.0);
      // One block at an edge alone carries no cross piece.
      boolean alone = riser instanceof Riser.WoodBlocks && row.get("under").endsWith(" edge");
      double cross = alone ? 0 : riser.crossPiece().millimetres();
      // A gap between turns on rods is what is open, with or without a plate in it.
      double plate =
          riser instanceof Riser.WoodBlocks
              ? helix.plan().supports().rows().get(i).plate().millimetres()
              : 0;
      double reached = stands + helix.mm(row.get(column)) + cross + plate;
      assertThat(helix.mm(row.get("underside"))).isCloseTo(reached, within(2 * helix.tolerance()));
      tops.put(
          row.get("support"),
          helix.mm(row.get("underside")) + helix.plan().spec().plywood().millimetres());
    }
  }

  /** The cutting list holds a length for every support, and as many boards as are bought. */
  @ParameterizedTest
  @MethodSource("results")
  void cuttingList_hasALengthForEverySupport(Written helix) {
    List<Map<String, String>> cuts = helix.table("cutting-list.csv");
    Riser riser = helix.plan().spec().supports().riser();
    List<Map<String, String>> supports = helix.table("supports.csv");
    if (riser instanceof Riser.WoodBlocks wood) {
      Map<String, Integer> wanted = new HashMap<>();
      supports.stream()
          .filter(row -> !row.get("block").equals("none"))
          .forEach(
              row ->
                  wanted.merge(
                      row.get("block"), Integer.parseInt(row.get("blocks")), Integer::sum));
      Map<String, Integer> cut = new HashMap<>();
      if (wood.stock().isPresent()) {
        cuts.stream()
            .map(row -> row.get("part"))
            .filter(part -> !part.contains("brace for "))
            .forEach(part -> cut.merge(part, 1, Integer::sum));
      } else {
        helix.plan().demands().stream()
            .filter(demand -> demand.piece().id().startsWith("block-"))
            .forEach(demand -> cut.put(demand.piece().id(), demand.count()));
      }
      assertThat(cut).isEqualTo(wanted);
    } else {
      long stations = supports.stream().map(row -> row.get("support")).distinct().count();
      Table rods = helix.report().building().orElseThrow().rods();
      long count = 0;
      long nuts = 0;
      for (int i = 0; i < rods.rows().size(); i++) {
        long here = ((Count) rods.at(i, "count")).number();
        count += here;
        nuts += here * ((Count) rods.at(i, "nutsEach")).number();
      }
      assertThat(rods.rows()).hasSize((int) stations);
      assertThat(
              cuts.stream().filter(row -> !row.get("part").matches(".*\\([2-9] of \\d\\)")).count())
          .isEqualTo(count);
      assertThat(quantity(helix, "nuts ")).isEqualTo(nuts);
      // Two nuts for each rod at each turn, and two at the base.
      long atTurns = supports.stream().mapToLong(row -> Long.parseLong(row.get("rods"))).sum();
      assertThat(nuts).isEqualTo(2 * atTurns + 2 * count);
    }
    if (!cuts.isEmpty()) {
      assertThat(quantity(helix, cuts.get(0).get("stock")))
          .isEqualTo(Long.parseLong(cuts.get(cuts.size() - 1).get("board")));
    }
  }

  private static long quantity(Written helix, String item) {
    return helix.table("shopping.csv").stream()
        .filter(row -> row.get("item").startsWith(item))
        .mapToLong(row -> Long.parseLong(row.get("quantity")))
        .findFirst()
        .orElse(0);
  }

  @ParameterizedTest
  @MethodSource("results")
  void screws_boughtAreThoseOfTheJoints(Written helix) {
    long screws =
        helix.table("joints.csv").stream()
            .mapToLong(row -> Long.parseLong(row.get("screws")))
            .sum();

    assertThat(quantity(helix, "screws for plates")).isEqualTo(screws);
  }

  /** The data say what the tables say. */
  @ParameterizedTest
  @MethodSource("results")
  void json_saysWhatTheTablesSay(Written helix) {
    JsonNode json = json(helix);
    List<Map<String, String>> schedule = helix.table("schedule.csv");
    List<Map<String, String>> supports = helix.table("supports.csv");

    assertThat(json.get("schedule")).hasSameSizeAs(schedule);
    for (int i = 0; i < schedule.size(); i++) {
      JsonNode row = json.get("schedule").get(i);
      assertThat(row.get("piece").asText()).isEqualTo(schedule.get(i).get("piece"));
      assertThat(row.get("undersideFrom").asDouble())
          .isCloseTo(helix.mm(schedule.get(i).get("underside from")), within(helix.tolerance()));
    }
    assertThat(json.get("supports")).hasSameSizeAs(supports);
    for (int i = 0; i < supports.size(); i++) {
      JsonNode row = json.get("supports").get(i);
      assertThat(row.get("station").asText()).isEqualTo(supports.get(i).get("support"));
      assertThat(row.get("railTop").asDouble())
          .isCloseTo(helix.mm(supports.get(i).get("rail top")), within(helix.tolerance()));
    }
    assertThat(json.get("shopping")).hasSameSizeAs(helix.table("shopping.csv"));
  }

  /** The height budgets, each less the spare, are nowhere below the tallest train. */
  @ParameterizedTest
  @MethodSource("results")
  void json_tallestTrain_passesBelowEverything(Written helix) {
    JsonNode json = json(helix);
    double spare = helix.plan().spec().traffic().spare().millimetres();
    double tallest = json.get("figures").get(0).get("tallestTrain").asDouble();

    assertThat(tallest).isGreaterThan(10);
    for (JsonNode row : json.get("heightBudgets")) {
      if (row.get("item").asText().equals("clearance")) {
        assertThat(row.get("height").asDouble() - spare).isGreaterThanOrEqualTo(tallest - 1e-6);
      }
    }
  }

  private static JsonNode json(Written helix) {
    try {
      return new ObjectMapper()
          .readTree(helix.files().get("helix.json").getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The words have a line for every piece and every station, with the table's names. */
  @ParameterizedTest
  @MethodSource("results")
  void words_listEveryPieceAndStation(Written helix) {
    List<String> lines = helix.files().get("helix.txt").lines().toList();
    List<String> assembly = section(lines, "Assembly, from the bottom up");
    List<String> heights = section(lines, "Heights to check");
    List<String> pieces =
        helix.table("schedule.csv").stream().map(row -> row.get("piece")).toList();

    assertThat(assembly.stream().map(line -> words(line).get(0)).filter(pieces::contains))
        .containsExactlyElementsOf(pieces);
    assertThat(
            heights.stream()
                .map(line -> words(line).get(0))
                .dropWhile(word -> !word.equals("Support"))
                .skip(1))
        .containsExactlyInAnyOrderElementsOf(
            helix.table("supports.csv").stream()
                .map(row -> row.get("support"))
                .distinct()
                .toList());
  }

  private static List<String> words(String line) {
    return Pattern.compile(" +").splitAsStream(line.strip()).toList();
  }

  private static List<String> section(List<String> lines, String heading) {
    return lines.stream()
        .dropWhile(line -> !line.startsWith(heading))
        .skip(1)
        .takeWhile(line -> !line.isBlank())
        .toList();
  }

  /** What is priced adds up to the total in words. */
  @ParameterizedTest
  @MethodSource("results")
  void total_isTheSumOfThePrices(Written helix) {
    long cents =
        helix.table("shopping.csv").stream()
            .map(row -> row.get("price"))
            .filter(price -> !price.isEmpty())
            .mapToLong(price -> Math.round(Double.parseDouble(price) * 100))
            .sum();

    assertThat(helix.files().get("helix.txt"))
        .contains(String.format(Locale.ROOT, "%.2f, sheets not included", cents / 100.0));
  }
}
