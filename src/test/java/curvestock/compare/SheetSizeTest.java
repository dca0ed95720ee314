package curvestock.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.answer.Choices;
import curvestock.answer.CompareWords;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.packing.Effort;
import curvestock.packing.Packers;
import curvestock.sheet.SizeTolerance;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What hangs on sheets of full size, on single pieces, on wood that is kept. Data invented. */
class SheetSizeTest {

  private static final Angle HALF = Angle.ofDegrees(180);
  private static final Angle QUARTER = Angle.ofDegrees(90);

  /**
   * One turn of 275 mm, 50 mm wide. By hand: a half is 600 mm across its ends and 300 mm deep; two
   * nest 170 mm apart, the root of 300² - 248². With 5 mm of margin they take 610 x 480 mm of a
   * sheet, so that the long side has 0.05 mm to spare. 3.5 mm less, which EN 315 (from memory)
   * allows a panel, a half fits only tilted by 9°, 45 mm deeper, and the second no longer does.
   */
  private static String job(String turns, String sheet) {
    return """
        curvestock: 1
        title: Tight halves
        units: mm
        sheets:
          - {name: panel, size: 610.05x490, thickness: 6, price: 10.00%s}
        cutting: {kerf: 2, margin: 5}
        helix: {turns: %s, radius: 275, width: 50, segments-per-turn: 4}
        search: {effort: quick}
        """
        .formatted(sheet, turns);
  }

  /** Without how far it holds, which takes longer. */
  private static Comparison compare(String job, Angle... angles) throws Exception {
    Question question = new Question(List.of(angles), false, OptionalInt.empty(), false);
    return new Comparer(JobReader.read(job, "job.yaml"), question, CompareListener.NONE)
        .compareBriefly();
  }

  private static Optional<LonePiece> alone(String text) throws Exception {
    Designs designs = Designs.of(JobReader.read(text, "job.yaml"));
    SegmentOption option =
        new Options(designs, Packers.FORGETFUL, CompareListener.NONE)
            .option(Division.of(QUARTER), "quarters", Effort.QUICK);
    return LonePiece.of(designs, option, Packers.FORGETFUL, CompareListener.NONE);
  }

  private static String reasons(Comparison comparison) {
    return String.join(" ", new CompareWords(Choices.of(comparison)).reasons());
  }

  @Test
  void halvesWithAHairToSpare_areNotRecommendedBeforeQuartersOnAsManySheets() throws Exception {
    Comparison comparison = compare(job("1", ""), HALF, QUARTER);

    assertThat(comparison.options()).allMatch(option -> option.sheets() == 1);
    assertThat(comparison.best().orElseThrow().angle()).isEqualTo(QUARTER);
    assertThat(comparison.best().orElseThrow().needsFullSheets()).isFalse();
    assertThat(comparison.options().get(0).onShort().orElseThrow().sheets()).isEqualTo(2);
    assertThat(reasons(comparison))
        .contains(
            "Sheets can come up to 3.5 mm undersize each way (EN 315, as quoted elsewhere); even then 1 sheet"
                + " is enough.",
            "Halves (180°) fit on 1 sheet only if the sheets are full size. They are not"
                + " recommended, because from sheets 3.5 mm undersize they take 2.",
            "write `tolerance: 0` for the sheet");
  }

  @Test
  void halvesOnMeasuredSheets_areRecommendedForTheirFewJoints() throws Exception {
    Comparison comparison = compare(job("1", ", tolerance: 0"), HALF, QUARTER);

    assertThat(comparison.best().orElseThrow().angle()).isEqualTo(HALF);
    assertThat(reasons(comparison)).doesNotContain("undersize", "tolerance");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "in | price: 10             | 0.0625 | PS 1-19",
        "mm | price: 10             | 3.5    | EN 315, as quoted elsewhere",
        "mm | on-hand: true         | 0      | as measured",
        "mm | price: 10, tolerance: 2 | 2    | as the job says",
        "in | price: 10, tolerance: 0 | 0    | as the job says"
      })
  void tolerance_leftOut_isThatOfTheStandard(
      String unit, String terms, double shortBy, String source) {
    Job job =
        JobReader.read(
            """
            curvestock: 1
            title: Sizes
            units: %s
            sheets: [{name: panel, size: 4x8 ft, thickness: 12 mm, %s}]
            cutting: {kerf: 0.1, margin: 0.1}
            pieces: [{name: plank, count: 1, strip: {length: 10 in, width: 8 in}}]
            """
                .formatted(unit, terms),
            "job.yaml");

    SizeTolerance tolerance = job.tolerance(job.sheets().get(0));

    assertThat(tolerance.shortBy().in(job.style().unit())).isCloseTo(shortBy, within(1e-9));
    assertThat(tolerance.source()).isEqualTo(source);
    Length less = job.sheets().get(0).length().minus(tolerance.shortBy());
    assertThat(job.onSmallestSheets().sheets().get(0).length().millimetres())
        .isCloseTo(less.millimetres(), within(1e-9));
  }

  /** Eight quarters fit a sheet; the ninth has one to itself until the roadbed is narrower. */
  @Test
  void pieceAloneOnASheet_isToldWithTheChangeThatSavesIt() throws Exception {
    LonePiece alone = alone(job("2 1/4", "")).orElseThrow();

    assertThat(alone.sheet()).isEqualTo(2);
    LonePiece.Saving saving = alone.saving().orElseThrow();
    assertThat(saving.dimension()).isEqualTo(Dimension.WIDTH);
    assertThat(saving.sheets()).isEqualTo(1);
    // The advice taken: the same job with that roadbed does with the sheets told.
    double width = 50 + saving.change().millimetres();
    String narrower = job("2 1/4", "").replace("width: 50", "width: " + width);
    assertThat(compare(narrower, QUARTER).best().orElseThrow().sheets()).isEqualTo(1);
  }

  @Test
  void sheetsWellFilled_haveNoPieceAlone() throws Exception {
    assertThat(alone(job("2", ""))).isEmpty();
  }

  /** Half a turn on a sheet of 3 m leaves most of it: 40 % of its share of the price. */
  @Test
  void offcutKept_isTakenOffAtItsWorth() throws Exception {
    String without = job("1/2", "").replace("610.05x490", "3000x700");
    String long3 = without + "rates: {offcuts-worth: 40 %}\n";
    SegmentOption option = compare(long3, QUARTER).best().orElseThrow();

    assertThat(option.offcuts()).hasSize(1);
    double share = option.offcuts().get(0).area() / (3000.0 * 700);
    assertThat(share).isGreaterThan(0.5);
    assertThat(option.offcutsWorth()).isEqualTo(new Money(Math.round(1000 * share * 0.4)));
    Money sheetsAndJoints = option.sheetCost().plus(option.work().eachJoint());
    assertThat(option.total()).isEqualTo(sheetsAndJoints.minus(option.offcutsWorth()));
    assertThat(compare(without, QUARTER).best().orElseThrow().offcutsWorth()).isEqualTo(Money.ZERO);
  }
}
