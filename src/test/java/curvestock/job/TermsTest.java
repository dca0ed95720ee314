package curvestock.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import curvestock.piece.Demand;
import curvestock.purchase.PriceBreak;
import curvestock.purchase.Product;
import curvestock.sheet.SheetStock;
import curvestock.units.Money;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What can be written about buying. The job is invented. */
class TermsTest {

  private static final String JOB =
      """
      curvestock: 1
      title: Shelf loop (invented)
      units: in
      currency: $
      sheets:
        - name: half-inch
          size: 48x96
          thickness: 0.47
          nominal-thickness: 1/2
          price: 60
          price-breaks: [{from: 3, price: 55}, {from: 6, price: 50.50}]
          minimum-buy: 2
          half-sheet: 34
          quarter-sheet: 18
        - {name: thin, size: 48x96, thickness: 0.23, nominal-thickness: 1/4, price: 30}
      store-cuts: {price: 1.50, tolerance: 1/8, carry: 48.5x60}
      tax: 8.25 %
      cutting: {kerf: 1/8}
      pieces:
        - {name: bed, count: 21, arc: {radius: 20, width: 4, angle: 60}}
        - {name: plate, count: 20, strip: {length: 5, width: 3}, thickness: 1/4}
      spares: {A: 10 %, plate: 2}
      """;

  private static Job read(String text) {
    return JobReader.read(text, "job.yaml");
  }

  @Test
  void read_sellersTerms_areKept() {
    Product product = read(JOB).wholeProducts().get(0);

    assertThat(product.minimumBuy()).isEqualTo(2);
    assertThat(product.breaks())
        .containsExactly(new PriceBreak(3, new Money(5500)), new PriceBreak(6, new Money(5050)));
  }

  /** A half of 96 loses half of a 1/8 in saw cut, a quarter of 48 by 96 on both sides. */
  @Test
  void read_halfAndQuarter_areSheetsOfTheSameWood() {
    List<SheetStock> sheets = read(JOB).sheets();

    assertThat(sheets)
        .extracting(SheetStock::name)
        .containsExactly("half-inch", "half-inch, half", "half-inch, quarter", "thin");
    assertThat(sheets.get(1).length().inches()).isCloseTo(48, offset(1e-9));
    assertThat(sheets.get(1).width().inches()).isCloseTo(47.9375, offset(1e-9));
    assertThat(sheets.get(1).grain().degrees()).isEqualTo(90);
    assertThat(sheets.get(2).length().inches()).isCloseTo(47.9375, offset(1e-9));
    assertThat(sheets.get(2).width().inches()).isCloseTo(23.9375, offset(1e-9));
    assertThat(sheets.get(2).price()).isEqualTo(new Money(1800));
    assertThat(sheets.get(2).thickness()).isEqualTo(sheets.get(0).thickness());
  }

  /** 21 and a tenth of it, rounded up; 20 and 2. */
  @Test
  void demands_withSpares_roundUp() {
    Job job = read(JOB);

    assertThat(job.wanted()).extracting(Demand::count).containsExactly(21, 20);
    assertThat(job.demands()).extracting(Demand::count).containsExactly(24, 22);
  }

  @Test
  void suits_thicknessMeasuredOrAsSold_decides() {
    Job job = read(JOB);

    assertThat(job.suits(job.pieces().get(0).piece(), job.sheets().get(0))).isTrue();
    assertThat(job.suits(job.pieces().get(0).piece(), job.sheets().get(3))).isFalse();
    assertThat(job.suits(job.pieces().get(1).piece(), job.sheets().get(0))).isFalse();
    assertThat(job.suits(job.pieces().get(1).piece(), job.sheets().get(3))).isTrue();
  }

  @Test
  void products_tooLargeToCarry_areRippedExceptOnHand() {
    Job job = read(JOB.replace("price: 30}", "on-hand: true}"));

    assertThat(job.products().get(0).breakdowns()).allMatch(way -> way.cuts() > 0);
    assertThat(job.products().get(1).breakdowns()).noneMatch(way -> way.isRipped());
    assertThat(job.products().get(3).breakdowns()).noneMatch(way -> way.isRipped());
  }

  @Test
  void tax_onAPrice_isRoundedToCents() {
    assertThat(read(JOB).terms().tax().on(new Money(12_345))).isEqualTo(new Money(1018));
  }

  /** A cheaper sheet, as comparisons make it, does not trip over its own price breaks. */
  @Test
  void whole_sheetCheaperThanItsBreak_leavesTheBreakOut() {
    Job job = read(JOB);
    SheetStock sheet = job.sheets().get(0);
    SheetStock cheap = sheet.part(sheet.name(), sheet.length(), sheet.width(), new Money(5200));

    assertThat(job.terms().whole(cheap).breaks())
        .containsExactly(new PriceBreak(6, new Money(5050)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "price: 55}, {from: 6 | price: 65}, {from: 6 | 6:5: sheets[1]: price breaks of half-inch must rise",
        "minimum-buy: 2 | minimum-buy: 0 | minimum-buy: must be a whole number from 1",
        "price: 30} | on-hand: true, minimum-buy: 3} | sheets[2].minimum-buy: is a seller's term",
        "thickness: 1/4} | thickness: 3/8} | pieces[2].thickness: must be the thickness of one of the sheets (0.47 in, sold as 1/2 in, 0.23 in, sold as 1/4 in), but was \"3/8\"",
        "tax: 8.25 % | tax: 8,25 % | tax: must be a rate in percent from 0 to 100",
        "tax: 8.25 % | tax: 101 | tax: must be a rate in percent from 0 to 100",
        "A: 10 % | A: some | spares.A: must be a",
        "plate: 2} | plat: 2} | did you mean \"plate\"?",
        "carry: 48.5x60 | carry: 48.5 | store-cuts.carry: must be two lengths",
        "price: 1.50, tolerance | tolerance | store-cuts.price: is missing",
      })
  void read_wrongTerms_areLocated(String from, String to, String message) {
    assertThatThrownBy(() -> read(JOB.replace(from, to)))
        .isInstanceOf(JobException.class)
        .hasMessageContaining(message);
  }

  private static StockFiles stock(String text) {
    return path -> StockFiles.Found.text(text);
  }

  @Test
  void read_stockFile_addsItsSheets() {
    String stock =
        "sheets:\n  - {name: rest, size: 20 in x 30 in, thickness: 0.47 in, on-hand: true}\n";
    Job job = JobReader.read(JOB + "stock-file: old/remnants.yaml\n", "job.yaml", stock(stock));

    SheetStock rest = job.sheets().get(4);
    assertThat(rest.name()).isEqualTo("rest");
    assertThat(rest.price()).isEqualTo(Money.ZERO);
    assertThat(rest.available()).hasValue(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sheets: [{name: rest}] | has a mistake in it: old.yaml:1:10: sheets[1]",
        "pieces: [] | has a mistake in it: old.yaml:1:1: unknown key",
        "sheets: [{name: thin, size: 2x2 in, thickness: 6 mm, on-hand: true}] | \"thin\" is given twice",
      })
  void read_wrongStockFile_isLocated(String text, String message) {
    assertThatThrownBy(
            () -> JobReader.read(JOB + "stock-file: old.yaml\n", "job.yaml", stock(text)))
        .isInstanceOf(JobException.class)
        .hasMessageContaining(message);
  }

  @Test
  void read_stockFileOfATextThatIsNoFile_saysWhatToDo() {
    assertThatThrownBy(() -> read(JOB + "stock-file: old.yaml\n"))
        .hasMessageContaining("stock-file: can only be read for a job that is itself a file");
  }
}
