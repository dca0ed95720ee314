package curvestock.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import curvestock.machine.MachineSetup;
import curvestock.machine.Operation;
import curvestock.packing.Effort;
import curvestock.packing.SearchSettings;
import curvestock.piece.Grain;
import curvestock.piece.Strip;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import curvestock.units.Money;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class JobReaderTest {

  private static final String SHEETS = "- name: birch\n    size: 4x8 ft";

  private static Job read(String text) {
    return JobReader.read(text, "job.yaml");
  }

  private static Job with(String find, String put) {
    assertThat(BrokenJob.SOUND).contains(find);
    return read(BrokenJob.SOUND.replace(find, put));
  }

  private static List<Problem> problems(String text) {
    JobException e = catchThrowableOfType(JobException.class, () -> read(text));
    assertThat(e).as("a JobException for: %s", text).isNotNull();
    return e.problems();
  }

  private static SheetStock sheet(String find, String put) {
    return with(find, put).sheets().get(0);
  }

  static List<BrokenJob> broken() {
    return BrokenJob.all();
  }

  @Test
  void read_ofSoundJob_givesAllThatItSays() {
    Job job = read(BrokenJob.SOUND);

    assertThat(job.title()).isEqualTo("Test job");
    assertThat(job.note()).isEmpty();
    assertThat(job.invented()).isTrue();
    assertThat(job.currency()).isEqualTo("$");
    assertThat(job.style()).isEqualTo(LengthStyle.METRIC);
    assertThat(job.cutting().kerf()).isEqualTo(Length.ofInches(0.125));
    assertThat(job.cutting().shares()).isTrue();
    assertThat(job.helix().orElseThrow().turns()).isEqualTo(5.25);
    assertThat(job.helix().orElseThrow().segment()).isEqualTo(Angle.ofDegrees(90));
    assertThat(job.pieces()).hasSize(1);
    assertThat(job.pieces().get(0).piece().id()).isEqualTo("A");
    assertThat(job.pieces().get(0).piece().shape())
        .isEqualTo(new Strip(Length.ofInches(6), Length.ofInches(4)));
    assertThat(job.pieces().get(0).piece().grain()).isEqualTo(Grain.FREE);
    assertThat(job.search()).isEqualTo(new SearchSettings(1, Effort.NORMAL));
    assertThat(job.demands()).extracting(d -> d.piece().id()).containsExactly("S", "A");
    SheetStock sheet = job.sheets().get(0);
    assertThat(sheet.price()).isEqualTo(new Money(6800));
    assertThat(sheet.available()).isEmpty();
    assertThat(sheet.nominalThickness()).isEqualTo(sheet.thickness());
  }

  @ParameterizedTest
  @MethodSource("broken")
  void read_ofBrokenJob_saysWhereAndHowToMendIt(BrokenJob broken) {
    List<Problem> problems = problems(broken.text());

    assertThat(problems)
        .extracting(Problem::toString)
        .anySatisfy(
            line ->
                assertThat(line)
                    .startsWith("job.yaml:" + broken.place() + ": ")
                    .contains(broken.says()));
  }

  /** One slip, one line: the user must not hunt for the cause among its consequences. */
  @ParameterizedTest
  @MethodSource("broken")
  void read_ofOneSlip_givesOneProblem(BrokenJob broken) {
    assertThat(problems(broken.text())).hasSize(broken.put().equals("stock:\n") ? 2 : 1);
  }

  @Test
  void read_ofBadUnits_doesNotBlameEveryBareNumber() {
    String text = BrokenJob.SOUND.replace("currency: $", "units: inch").replace("26 in", "26");

    assertThat(problems(text)).extracting(Problem::path).containsExactly("units");
  }

  @Test
  void read_ofSeveralSlips_tellsThemAllInTheOrderOfTheFile() {
    String text =
        BrokenJob.SOUND
            .replace("search: {seed: 1", "search: {seed: x")
            .replace("kerf: 1/8 in", "curf: 1/8 in")
            .replace("26 in", "26")
            .replace("count: 3", "count: three");

    assertThat(problems(text))
        .extracting(problem -> problem.line() + " " + problem.path())
        .containsExactly("11 cutting", "15 helix.radius", "20 pieces[1].count", "22 search.seed");
    assertThatThrownBy(() -> read(text)).message().hasLineCount(4);
  }

  /** In format 1 the extra was added to a single kerf; such a job keeps its gap, and is told. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 | 0    | 3.175 | ",
        "1 | 1/16 | 4.7625 | leaves no wood between two cuts. Write `curvestock: 2`",
        "1 | 3/16 | 7.9375 | leaves 1/16 in between two cuts. Write `curvestock: 2`, where `extra:` is"
            + " that wood, and `extra: 1/16 in` for the same gap.",
        "2 | 0    | 3.175 | ",
        "2 | 1/16 | 7.9375 | ",
      })
  void read_ofExtra_isWoodBetweenTwoCuts_andOldJobsKeepTheirGap(
      String format, String extra, double gap, String told) {
    Job job =
        read(
            BrokenJob.SOUND
                .replace("curvestock: 1", "curvestock: " + format)
                .replace("currency: $", "units: in")
                .replace("kerf: 1/8 in", "kerf: 1/8 in\n  extra: " + extra));

    assertThat(job.cutting().spacing().millimetres()).isCloseTo(gap, within(1e-9));
    String message = job.sources().get(0).translated().orElse("");
    if (told == null) {
      assertThat(message).isEmpty();
    } else {
      assertThat(message).contains(told);
    }
  }

  @Test
  void read_ofABitWiderThanTheKerf_isRefusedWithTheFix() {
    String wide = BrokenJob.SOUND.replace("currency: $", "units: in\nmachine: {bit: 1/4}");

    assertThat(problems(wide))
        .extracting(Problem::toString)
        .containsExactly(
            "job.yaml:5:16: machine.bit: must be at most the kerf, 1/8 in, but was 1/4 in, which"
                + " would cut 1/16 in into every piece; write `kerf: 1/4 in` in `cutting:`, or fit a"
                + " narrower bit");
    assertThat(read(wide.replace("bit: 1/4", "bit: 1/8")).machine().bit()).isPresent();
  }

  @Test
  void read_ofUnknownKey_listsTheKeysAllowedThere() {
    assertThat(problems(BrokenJob.SOUND.replace("kerf:", "curf:")).get(0))
        .hasToString(
            "job.yaml:11:3: cutting: unknown key \"curf\"; did you mean \"kerf\"? allowed here:"
                + " kerf, extra, margin");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "4x8 ft | 2438.4 | 1219.2",
        "8x4 ft | 2438.4 | 1219.2",
        "5x5 ft | 1524 | 1524",
        "4' x 8' | 2438.4 | 1219.2",
        "1220x2440 mm | 2440 | 1220",
        "1220 × 2440 mm | 2440 | 1220",
        "1.22 X 2.44 m | 2440 | 1220",
        "48 x 96 in | 2438.4 | 1219.2",
        "48 in x 96 in | 2438.4 | 1219.2",
        "47 15/16 x 95 15/16 in | 2436.8125 | 1217.6125",
        "4 ft x 2440 mm | 2440 | 1219.2",
        "2 ft 6 in x 5 ft | 1524 | 762",
      })
  void size_ofEveryWrittenForm_liesWithItsLongerSideAlongX(String size, double x, double y) {
    SheetStock sheet = sheet("4x8 ft", size);

    assertThat(sheet.length().millimetres()).isCloseTo(x, within(1e-9));
    assertThat(sheet.width().millimetres()).isCloseTo(y, within(1e-9));
    assertThat(sheet.isRectangle()).isTrue();
  }

  @Test
  void size_bareInJobWithUnits_isInThem() {
    SheetStock sheet =
        sheet(
            "currency: $\nsheets:\n  - name: birch\n    size: 4x8 ft",
            "units: in\nsheets:\n  - name: birch\n    size: 48x96");

    assertThat(sheet.length().inches()).isCloseTo(96, within(1e-9));
  }

  @Test
  void remnant_withCorners_isMovedToTheOriginWithItsDefects() {
    SheetStock sheet =
        sheet(
            SHEETS,
            "- name: scrap\n    corners: [[10 mm, 20 mm], [10 mm, 220 mm], [110 mm, 20 mm]]\n"
                + "    defects: [{circle: {at: [30 mm, 40 mm], radius: 5 mm}}]");

    assertThat(sheet.outline().box().minX()).isZero();
    assertThat(sheet.outline().box().minY()).isZero();
    assertThat(sheet.area()).isCloseTo(100 * 200 / 2.0, within(1e-6));
    assertThat(sheet.defects()).hasSize(1);
    assertThat(sheet.defects().get(0).box().minX()).isCloseTo(15, within(1e-9));
    assertThat(sheet.defects().get(0).box().maxY()).isCloseTo(25, within(1e-9));
    assertThat(sheet.available()).isEqualTo(OptionalInt.of(1));
    assertThat(sheet.grain()).as("along its longer side").isEqualTo(Angle.ofDegrees(90));
  }

  @Test
  void sheetOnHand_withoutPriceOrCount_isOneAndCostsNothing() {
    SheetStock sheet = sheet("price: 68.00", "on-hand: true");

    assertThat(sheet.price()).isEqualTo(Money.ZERO);
    assertThat(sheet.available()).isEqualTo(OptionalInt.of(1));
    assertThat(sheet("price: 68.00", "on-hand: true\n    available: 3").available())
        .isEqualTo(OptionalInt.of(3));
  }

  @ParameterizedTest
  @CsvSource({"along, 0", "across, 90"})
  void grain_ofSheet_isMeasuredFromItsLongerSide(String word, double degrees) {
    assertThat(sheet("price: 68.00", "price: 68\n    grain: " + word).grain())
        .isEqualTo(Angle.ofDegrees(degrees));
  }

  /** What YAML 1.1 would make of these (8, 90, false, null) is not what a carpenter means. */
  @Test
  void values_thatYamlWouldChange_areReadAsWritten() {
    assertThat(with("count: 3", "count: 010").pieces().get(0).count()).isEqualTo(10);
    assertThat(with("currency: $", "currency: no").currency()).isEqualTo("no");
    assertThat(with("Test job", "1:30").title()).isEqualTo("1:30");
    assertThat(with("Test job", "2026-01-01").title()).isEqualTo("2026-01-01");
    assertThat(with("name: plate", "name: null").pieces().get(0).piece().name()).isEqualTo("null");
    assertThat(with("name: plate", "name: 0x1F").pieces().get(0).piece().name()).isEqualTo("0x1F");
  }

  @Test
  void units_atTheTop_countForBareNumbersOnly() {
    Job job =
        read(
            BrokenJob.SOUND
                .replace("currency: $", "units: cm")
                .replace("26 in", "66")
                .replace("1/4 in", "5 mm"));

    assertThat(job.helix().orElseThrow().radius()).isEqualTo(Length.ofMillimetres(660));
    assertThat(job.cutting().margin()).isEqualTo(Length.ofMillimetres(5));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "units: in | INCH | 64",
        "units: ft | INCH | 64",
        "units: m | MILLIMETRE | 0",
        "'print: {unit: in}' | INCH | 64",
        "'print: {unit: in, fraction: 0}' | INCH | 0",
        "'print: {unit: in, fraction: 16}' | INCH | 16",
        "'print: {unit: cm}' | CENTIMETRE | 0",
      })
  void print_orElseUnits_givesTheStyle(String line, LengthUnit unit, int denominator) {
    assertThat(with("currency: $", line).style()).isEqualTo(new LengthStyle(unit, denominator));
  }

  @Test
  void segmentAngle_withDegreeSign_isRead() {
    Job job = with("segments-per-turn: 4", "segment-angle: 60°");

    assertThat(job.helix().orElseThrow().segment()).isEqualTo(Angle.ofDegrees(60));
  }

  @Test
  void pieceGrain_withDirection_isRead() {
    Job job = with("count: 3", "count: 3\n    grain: {direction: 90, within: 15 deg}");

    assertThat(job.pieces().get(0).piece().grain())
        .isEqualTo(new Grain(Angle.ofDegrees(90), Angle.ofDegrees(15)));
  }

  @Test
  void polygon_clockwise_isTurnedRound() {
    Job job =
        with(
            "strip: {length: 6 in, width: 4 in}",
            "polygon: {corners: [[0 in, 0 in], [0 in, 3 in], [4 in, 0 in]]}");

    assertThat(job.pieces().get(0).piece().shape().area()).isCloseTo(6 * 25.4 * 25.4, within(1e-6));
  }

  @Test
  void job_withPiecesOnly_isEnough() {
    String text = BrokenJob.SOUND.replaceAll("(?s)helix:.*pieces:", "pieces:");

    assertThat(read(text).helix()).isEmpty();
    assertThat(read(text).demands()).hasSize(1);
    assertThat(problems(text.replaceAll("(?s)pieces:.*search:", "search:")))
        .extracting(Problem::message)
        .containsExactly("nothing to cut: add a `helix:` block, a `pieces:` list, or both");
  }

  @Test
  void sheets_withTheSameName_areRefused() {
    String text =
        BrokenJob.SOUND.replace(
            "cutting:\n",
            "  - {name: birch, size: 5x5 ft, thickness: 12 mm, price: 1}\ncutting:\n");

    assertThat(problems(text))
        .extracting(Problem::message)
        .containsExactly("the name \"birch\" is given twice");
  }

  @Test
  void ids_ofListedPieces_leaveOutThoseOfTheHelix() {
    List<String> ids = PieceReader.ids(60);

    assertThat(ids).doesNotHaveDuplicates().doesNotContain("S", "L");
    assertThat(ids).startsWith("A", "B", "C").contains("K", "M", "R", "T", "Z", "AA", "AB");
    assertThat(ids.get(24)).isEqualTo("AA");
  }

  @Test
  void machine_leftOut_isTheDefault() {
    assertThat(read(BrokenJob.SOUND).machine()).isEqualTo(MachineSetup.DEFAULT);
  }

  @Test
  void machine_givenInFull_isRead() {
    MachineSetup machine =
        read(BrokenJob.SOUND
                + """
                machine:
                  outlines: offset
                  lines-within: 0.05 mm
                  letters: none
                  colours: {cut: "#FF0000", mark: "#0000ff"}
                  line-width: 0.01 mm
                  tabs: {width: 1/4 in, count: 3}
                  bit: 1/8 in
                  bed: 48 x 24 in
                  dxf: {unit: in, edges: separate}
                """)
            .machine();

    assertThat(machine.isOffset()).isTrue();
    assertThat(machine.linesWithin()).contains(Length.ofMillimetres(0.05));
    assertThat(machine.letters()).isEqualTo(MachineSetup.Letters.NONE);
    assertThat(machine.colours())
        .containsEntry(Operation.CUT, "#ff0000")
        .containsEntry(Operation.SHEET, Operation.SHEET.colour());
    assertThat(machine.tabs().orElseThrow().form()).isEqualTo(MachineSetup.Tabs.Form.GAPS);
    assertThat(machine.bed().orElseThrow().length()).isEqualTo(Length.ofInches(48));
    assertThat(machine.dxfJoined()).isFalse();
    // Half of 1/8 in; a gap is the wood and the kerf.
    assertThat(machine.form(read(BrokenJob.SOUND).cutting()).words())
        .isEqualTo("grown 1.5875 mm, tabs 3 of 9.525 mm, lines within 0.05 mm");
  }

  /** Tabs for a program that offsets its tool leave the outline whole. */
  @Test
  void tabs_ofFinishedOutlines_areMarksUnlessSaid() {
    String tabs = BrokenJob.SOUND + "machine: {tabs: {width: 5 mm, count: 2}}";

    assertThat(read(tabs).machine().tabs().orElseThrow().form())
        .isEqualTo(MachineSetup.Tabs.Form.MARKS);
  }

  @Test
  void rates_givenInPart_leaveTheRestOpen() {
    Rates rates = read(BrokenJob.SOUND).rates();

    assertThat(rates.feedPerMinute()).contains(Length.ofInches(20));
    assertThat(rates.minutesPerJoint()).hasValue(10);
    assertThat(rates.machinePerHour()).isEqualTo(Money.ZERO);
    assertThat(rates.openings())
        .contains(new Rates.Opening("the stated", Length.ofInches(60), Length.ofInches(24)));
    assertThat(rates.costSomething()).isFalse();
  }

  @Test
  void rates_leftOut_costNothing() {
    assertThat(read(BrokenJob.SOUND.replaceAll("rates:.*", "")).rates()).isEqualTo(Rates.NONE);
  }

  @ParameterizedTest
  @CsvSource({
    "count: 3, count: 99000, sheets: 1200",
    "'length: 6 in, width: 4 in', 'length: 1 in, width: 1/2 in', pieces-on-a-sheet: 9000",
  })
  void read_bigJobWithRaisedLimit_isRead(String find, String put, String limit) {
    String big = BrokenJob.SOUND.replace(find, put);

    assertThat(catchThrowable(() -> read(big))).isInstanceOf(JobException.class);
    assertThat(read(big + "limits: {" + limit + "}\n").demands()).hasSize(2);
  }
}
