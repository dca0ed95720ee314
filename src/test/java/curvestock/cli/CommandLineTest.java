package curvestock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole runs, as a user types them, in folders of their own. */
class CommandLineTest {

  @TempDir private Path folder;

  private record Run(int code, String out, String err) {}

  private static Run run(Object... args) {
    PrintStream oldOut = System.out;
    PrintStream oldErr = System.err;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    try {
      System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
      System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
      int code = Main.run(Arrays.stream(args).map(Object::toString).toArray(String[]::new));
      return new Run(
          code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    } finally {
      System.setOut(oldOut);
      System.setErr(oldErr);
    }
  }

  private Path job(String text) throws IOException {
    return Files.writeString(folder.resolve("job.yaml"), text);
  }

  private static final String SMALL =
      """
      curvestock: 1
      title: Small job (invented)
      invented: true
      units: in
      sheets:
        - {name: ply, size: 40 x 30, thickness: 1/2, price: 20}
      cutting: {kerf: 1/8, margin: 1/4}
      pieces:
        - {name: quarter, count: 4, arc: {radius: 12, width: 3, angle: 90}}
        - {name: plate, count: 2, strip: {length: 9, width: 2}}
      search: {effort: quick}
      """;

  private static SortedMap<String, byte[]> contents(Path dir) throws IOException {
    SortedMap<String, byte[]> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(dir)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        contents.put(dir.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return contents;
  }

  private static void requireNoTrace(Run run) {
    assertThat(run.out() + run.err()).doesNotContain("\tat ", "Exception", "curvestock.");
  }

  // ---- demo data ----

  static List<Path> demoJobs() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("demo-data"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "plan --seed -3 | --seed must be 0 or a whole number above it, but was -3",
        "plan --seed 7.5 | --seed must be 0 or a whole number above it, but was 7.5",
        "compare --seed many | --seed must be 0 or a whole number above it, but was many",
        "plan --effort fas | must be quick, normal or thorough, but was \"fas\"",
        "packet --out x --effort slow | must be quick, normal or thorough, but was \"slow\"",
        "plan --out '' | --out must name a folder, but was empty",
        "packet --out '' | --out must name a folder, but was empty",
      })
  void option_misspelt_isAnsweredInOneLineWithoutAPageOfUsage(String typed, String said) {
    Object[] words =
        Arrays.stream(typed.split(" ", -1)).map(word -> word.replace("''", "")).toArray();

    Run refused = run(words);

    assertThat(refused.code()).isEqualTo(2);
    assertThat(refused.out()).isEmpty();
    assertThat(refused.err()).contains(said).doesNotContain("Usage:", "Exception", " long");
    assertThat(refused.err().lines()).hasSize(2);
  }

  @ParameterizedTest
  @MethodSource("demoJobs")
  void plan_ofEachDemoJob_writesLayoutsThatCheckFindsRight(Path job) throws Exception {
    Path out = folder.resolve("out");

    Run plan = run("plan", job, "--out", out, "--effort", "quick");

    assertThat(plan.code()).as(plan.err()).isZero();
    assertThat(plan.out()).contains("Layouts", "Holds", "Add --details");
    requireNoTrace(plan);
    JsonNode json = new ObjectMapper().readTree(out.resolve("plan.json").toFile());
    for (JsonNode piece : json.get("pieces")) {
      String id = piece.get("id").asText();
      long laid =
          json.findValues("placements").stream()
              .flatMap(list -> list.findValuesAsText("piece").stream())
              .filter(id::equals)
              .count();
      assertThat(laid).as("pieces %s on all sheets", id).isEqualTo(piece.get("wanted").asLong());
    }
    for (int sheet = 1; sheet <= json.get("sheets").size(); sheet++) {
      String name = String.format(Locale.ROOT, "sheets/sheet-%02d", sheet);
      assertThat(out.resolve(name + ".png")).isNotEmptyFile();
    }
    for (Run check : new Run[] {run("check", out), run("check", out, "--job", job)}) {
      assertThat(check.code()).as(check.out() + check.err()).isZero();
      assertThat(check.out()).contains(": right", "cut files (DXF), ").doesNotContain("WRONG");
      assertThat(check.out().split(": complete, ", -1)).hasSize(4);
    }
  }

  @Test
  void plan_withoutAJob_plansTheDefaultAndSaysThatItsDataAreInvented() {
    Path out = folder.resolve("out");

    Run plan = run("plan", "--out", out, "--effort", "quick", "--quiet", "--details");

    assertThat(plan.code()).as(plan.err()).isZero();
    assertThat(plan.out()).contains("invented", "R2       19");
    assertThat(plan.err()).isEmpty();
    assertThat(out.resolve("plan.json")).isNotEmptyFile();
    assertThat(run("check", out).code()).isZero();
  }

  @Test
  void plan_withoutOut_writesNothingAndSaysSo() throws Exception {
    Run plan = run("plan", job(SMALL));

    assertThat(plan.code()).isZero();
    assertThat(plan.out()).contains("No files were saved");
    assertThat(contents(folder)).containsOnlyKeys("job.yaml");
  }

  // ---- the same again ----

  @Test
  void plan_twiceAndInAnotherCountry_isByteIdentical() throws Exception {
    Path job = job(SMALL);
    run("plan", job, "--out", folder.resolve("first"));
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String tag : new String[] {"de-DE", "ar-EG-u-nu-arab", "tr-TR", "hi-IN-u-nu-deva"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));

        Run again = run("plan", job, "--out", folder.resolve(tag));

        assertThat(again.code()).as(again.err()).isZero();
        assertThat(contents(folder.resolve(tag)).keySet())
            .isEqualTo(contents(folder.resolve("first")).keySet());
        contents(folder.resolve("first"))
            .forEach(
                (name, bytes) ->
                    assertThat(folder.resolve(tag).resolve(name)).as(tag).hasBinaryContent(bytes));
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void plan_outputOnTheScreen_isTheSameInAnotherCountry() throws Exception {
    Path job = job(SMALL);
    String here = run("plan", job).out();
    Locale locale = Locale.getDefault();
    try {
      for (String tag : new String[] {"de-DE", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(run("plan", job).out()).as(tag).isEqualTo(here);
      }
    } finally {
      Locale.setDefault(locale);
    }
  }

  // ---- wrong input ----

  @Test
  void plan_brokenJob_isLocatedAndNothingIsWritten() throws Exception {
    Path job = job(SMALL.replace("radius: 12", "radius: twelve").replace("kerf:", "curf:"));
    Path out = folder.resolve("out");

    Run plan = run("plan", job, "--out", out);

    assertThat(plan.code()).isEqualTo(2);
    assertThat(plan.err()).contains(job + ":9:", "twelve", job + ":7:", "curf", "kerf");
    requireNoTrace(plan);
    assertThat(out).doesNotExist();
    assertThat(contents(folder)).containsOnlyKeys("job.yaml");
  }

  @Test
  void plan_noSuchJob_isSaidPlainly() {
    Run plan = run("plan", folder.resolve("none.yaml"));

    assertThat(plan.code()).isEqualTo(2);
    assertThat(plan.err()).contains("none.yaml");
    requireNoTrace(plan);
  }

  @Test
  void plan_intoAFormerResult_needsForce() throws Exception {
    Path job = job(SMALL);
    Path out = folder.resolve("out");
    run("plan", job, "--out", out);
    SortedMap<String, byte[]> before = contents(out);

    Run refused = run("plan", job, "--out", out, "--seed", "9");

    assertThat(refused.code()).isEqualTo(2);
    assertThat(refused.err()).contains("--force");
    requireNoTrace(refused);
    assertThat(contents(out)).usingRecursiveComparison().isEqualTo(before);
    Run forced = run("plan", job, "--out", out, "--seed", "9", "--force");
    assertThat(forced.code()).as(forced.err()).isZero();
    assertThat(Files.readString(out.resolve("plan.json"))).contains("\"seed\" : 9");
  }

  @Test
  void plan_intoAFolderOfSomebodyElse_isRefusedEvenWithForce() throws Exception {
    Path out = Files.createDirectory(folder.resolve("photos"));
    Files.writeString(out.resolve("holiday.txt"), "mine");

    Run plan = run("plan", job(SMALL), "--out", out, "--force");

    assertThat(plan.code()).isEqualTo(2);
    requireNoTrace(plan);
    assertThat(contents(out)).containsOnlyKeys("holiday.txt");
  }

  // ---- the answer is no ----

  /** A piece that fits no sheet was told on stderr alone, beside 'works' and a total of 0.00. */
  @Test
  void helix_pieceThatFitsNoSheet_saysSoFirst_andHasNoTotal() throws Exception {
    Path job =
        job(
            """
            curvestock: 2
            title: Long lead (invented)
            invented: true
            units: in
            sheets: [{name: ply, size: 4x8 ft, thickness: 1/2, price: 68}]
            cutting: {kerf: 1/8, margin: 1/4}
            helix: {scale: HO, turns: 3, radius: 29, width: 4, rise-per-turn: 4 1/2,
                    segments-per-turn: 4, bottom: {lead-in: 100}}
            search: {effort: quick}
            """);

    Run helix = run("helix", job);

    assertThat(helix.code()).isEqualTo(1);
    List<String> lines = helix.out().lines().toList();
    assertThat(lines.get(1)).startsWith("This cannot be cut from the sheets");
    assertThat(helix.out())
        .contains("write `lead-in: 68 in`", "No total")
        .doesNotContain("Total 0");
    requireNoTrace(helix);
  }

  @Test
  void plan_ringThatFitsNoSheet_saysSoInPlainWordsWithAdvice() throws Exception {
    Path job = job(SMALL.replace("angle: 90", "angle: 360").replace("radius: 12", "radius: 30"));

    Run plan = run("plan", job, "--out", folder.resolve("out"));

    assertThat(plan.code()).isEqualTo(1);
    assertThat(plan.err())
        .contains("full ring", "63 in", "does not fit", "ply", "Cut it as shorter segments");
    requireNoTrace(plan);
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sheets that do not suffice | price: 20 | price: 20, available: 1",
        "no sheet to be had         | price: 20 | price: 20, available: 0",
        "a margin larger than the sheet | margin: 1/4 | margin: 20"
      })
  void plan_jobThatCannotBeCut_isAnsweredWithNo(String why, String from, String to)
      throws Exception {
    Path job = job(SMALL.replace(from, to).replace("count: 4", "count: 60"));

    Run plan = run("plan", job, "--out", folder.resolve("out"));

    assertThat(plan.code()).as(why + ": " + plan.out() + plan.err()).isEqualTo(1);
    assertThat(plan.err().lines().count()).isGreaterThan(0);
    requireNoTrace(plan);
    assertThat(folder.resolve("out")).doesNotExist();
  }

  /** A kind that cannot be had beside one that can must not disturb the plan. */
  @Test
  void plan_withOneKindOfSheetSoldOut_usesTheOther() throws Exception {
    Path job =
        job(
            SMALL.replace(
                "sheets:\n",
                "sheets:\n  - {name: gone, size: 96 x 48, thickness: 1/2, price: 1, available: 0}\n"));

    Run plan = run("plan", job);

    assertThat(plan.code()).as(plan.err()).isZero();
    assertThat(plan.out()).contains("ply").doesNotContain("x gone");
  }

  // ---- tight but possible ----

  @ParameterizedTest
  @CsvSource({"0, 0", "1/8, 0", "0, 1/4", "1/8, 1/4"})
  void plan_sheetExactlyAsLargeAsThePiece_isCut(String kerf, String margin) throws Exception {
    double usable = 40 - (margin.equals("0") ? 0 : 0.5);
    String text =
        SMALL
            .replace("kerf: 1/8, margin: 1/4", "kerf: " + kerf + ", margin: " + margin)
            .replaceFirst("(?m)^  - \\{name: quarter.*\n", "")
            .replace("length: 9, width: 2", "length: " + usable + ", width: 5");

    Run plan = run("plan", job(text), "--out", folder.resolve("out"));

    assertThat(plan.code()).as(plan.err()).isZero();
    assertThat(plan.out()).contains("Buy 1 sheet of ply");
  }

  @Test
  void plan_withoutKerf_sharesNoWood() throws Exception {
    Run plan =
        run("plan", job(SMALL.replace("kerf: 1/8", "kerf: 0")), "--out", folder.resolve("out"));

    assertThat(plan.code()).as(plan.err()).isZero();
  }

  @Test
  void plan_slivers_areCut() throws Exception {
    String slivers =
        SMALL.replace("angle: 90", "angle: 0.1") + "limits: {pieces-on-a-sheet: 10000}\n";
    Run plan = run("plan", job(slivers), "--out", folder.resolve("out"));

    assertThat(plan.code()).as(plan.err()).isZero();
  }

  // ---- plan.json against the drawing ----

  @Test
  void planJson_placements_areThoseOfTheDrawing() throws Exception {
    Path out = folder.resolve("out");
    run("plan", job(SMALL), "--out", out);
    JsonNode sheets = new ObjectMapper().readTree(out.resolve("plan.json").toFile()).get("sheets");
    int placements = 0;
    for (JsonNode sheet : sheets) {
      String svg = Files.readString(out.resolve(sheet.get("file").asText()));
      int number = 1;
      for (JsonNode placement : sheet.get("placements")) {
        placements++;
        assertThat(attribute(svg, "piece-" + number, "data-piece"))
            .isEqualTo(placement.get("piece").asText());
        String[] pose = attribute(svg, "piece-" + number, "data-pose").split("[ ,]+", -1);
        assertThat(Double.parseDouble(pose[0])).isCloseTo(placement.get("x").asDouble(), near());
        assertThat(Double.parseDouble(pose[1])).isCloseTo(placement.get("y").asDouble(), near());
        assertThat(Double.parseDouble(pose[2]))
            .isCloseTo(placement.get("rotation").asDouble(), near());
        assertThat(svg).contains(placement.get("label").asText());
        number++;
      }
      assertThat(svg).doesNotContain("\"piece-" + number + "\"");
    }
    assertThat(placements).isEqualTo(6);
  }

  private static org.assertj.core.data.Offset<Double> near() {
    return org.assertj.core.data.Offset.offset(1e-4);
  }

  /** The value of an attribute of the element with the id, by plain search in the text. */
  private static String attribute(String svg, String id, String name) {
    int at = svg.indexOf("id=\"" + id + "\"");
    assertThat(at).as(id).isPositive();
    String element = svg.substring(svg.lastIndexOf('<', at), svg.indexOf('>', at));
    int from = element.indexOf(name + "=\"") + name.length() + 2;
    return element.substring(from, element.indexOf('"', from));
  }

  // ---- check ----

  @Test
  void check_pieceMovedInTheFile_isWrong() throws Exception {
    Path job = job(SMALL);
    Path out = folder.resolve("out");
    run("plan", job, "--out", out);
    Path drawing = out.resolve("sheets/sheet-01.svg");
    String svg = Files.readString(drawing);
    int at = svg.indexOf("id=\"piece-1\"");
    int data = svg.indexOf(" d=\"", svg.lastIndexOf('<', at)) + 4;
    String path = svg.substring(data, svg.indexOf('"', data));
    // The first number of the path, 3 mm further: one corner is out of place.
    String moved = path.replaceFirst("M\\s*[0-9.]+", "M" + (firstNumber(path) + 3));
    Path tampered = Files.writeString(folder.resolve("tampered.svg"), svg.replace(path, moved));

    assertThat(moved).isNotEqualTo(path);
    Run check = run("check", tampered, "--job", job, "--partial");
    assertThat(check.code()).as(check.out()).isEqualTo(1);
    assertThat(check.out()).contains("WRONG", "piece-1");
    requireNoTrace(check);
  }

  private static double firstNumber(String path) {
    java.util.regex.Matcher number = java.util.regex.Pattern.compile("[0-9.]+").matcher(path);
    assertThat(number.find()).isTrue();
    return Double.parseDouble(number.group());
  }

  @Test
  void check_withAWiderKerfThanPlanned_isWrong() throws Exception {
    Path job = job(SMALL.replace("kerf: 1/8", "kerf: 1/16"));
    Path out = folder.resolve("out");
    run("plan", job, "--out", out);
    Path wider = Files.writeString(folder.resolve("wider.yaml"), SMALL);

    Run check = run("check", out.resolve("sheets/sheet-01.svg"), "--job", wider);

    assertThat(check.code()).as(check.out()).isEqualTo(1);
    assertThat(check.out()).contains("WRONG");
  }

  @ParameterizedTest
  @CsvSource({"''", "not a drawing", "<svg", "<html/>"})
  void check_ofSomethingElse_isRefusedPlainly(String text) throws Exception {
    Path file = Files.writeString(folder.resolve("x.svg"), text);

    Run check = run("check", file, "--job", job(SMALL));

    assertThat(check.code()).as(check.out()).isEqualTo(2);
    requireNoTrace(check);
  }

  @Test
  void check_ofAMissingFile_isSaidPlainly() throws Exception {
    Run check = run("check", folder.resolve("none.svg"), "--job", job(SMALL));

    assertThat(check.code()).isEqualTo(2);
    assertThat(check.err()).contains("none.svg");
    requireNoTrace(check);
  }

  // ---- the small commands ----

  @Test
  void schema_isJsonAndTheExampleIsAJob() throws Exception {
    Run schema = run("schema");
    assertThat(schema.code()).isZero();
    assertThat(new ObjectMapper().readTree(schema.out()).has("properties")).isTrue();
    Run example = run("schema", "--example");
    assertThat(run("plan", job(example.out()), "--effort", "quick").code()).isZero();
  }

  @Test
  void version_andHelp_areGiven() {
    assertThat(run("--version").out()).startsWith("curvestock ");
    assertThat(run("--help").out()).contains("plan", "check", "schema");
    assertThat(run("plan", "--help").out()).contains("--out", "--force", "--effort", "--seed");
    assertThat(run("--help").code()).isZero();
  }

  @ParameterizedTest
  @CsvSource({"plan --nonsense", "dance", "plan --effort mild", "plan --seed x", "check"})
  void anythingElse_isWrongInput(String line) {
    Run run = run((Object[]) line.split(" ", -1));

    assertThat(run.code()).isEqualTo(2);
    requireNoTrace(run);
  }

  @Test
  void nothing_showsTheUsage() {
    Run run = run();

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).contains("Usage", "plan");
  }

  @Test
  void completion_isAScriptThatKnowsTheCommandsAndOptions() {
    Run run = run("completion");

    assertThat(run.code()).isZero();
    assertThat(run.out())
        .startsWith("#!/usr/bin/env bash")
        .contains("complete", "curvestock", "plan", "compare", "--effort", "--force");
  }

  @Test
  void help_saysHowToStartAndWhatTheExitCodesMean() {
    String help = run("--help").out();

    assertThat(help).contains("To start:", "schema --example", "Exit codes:", "the answer is no");
    assertThat(help.lines()).allMatch(line -> line.length() <= 80);
  }
}
