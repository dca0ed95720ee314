package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.helix.HelixOrder;
import curvestock.job.HelixJob;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.plan.Planner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a plan says of sheets that come short, of single pieces and of assumed wood. Invented. */
class BuyingRemarksTest {

  /** Planks of 300 x 50 mm; two lie one above the other on a board of 130 mm. */
  private static String remarks(String margin, int planks, String sheet) throws Exception {
    Job job =
        JobReader.read(
            """
            curvestock: 1
            title: Planks
            units: mm
            sheets:
              - {name: board, size: %s, thickness: 9, price: 5}
            cutting: {kerf: 3, margin: %s}
            pieces:
              - {name: plank, count: %s, strip: {length: 300, width: 50}}
            search: {effort: quick}
            """
                .formatted(sheet, margin, planks),
            "job.yaml");
    Plan plan = new Planner(job, PlanListener.NONE).plan();
    return String.join(" ", new BuyingWords(Answer.of(plan)).remarks());
  }

  /** By hand: 113 - 5 - 2 x 50 - 3 = 5 mm, less 3.5; without room or margin nothing is left. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5 | 330x113 | Mark out from the lower left corner: even then the pieces stay at least 1.5 mm",
        "0 | 300x103 | Pieces of sheet 1 would then run over its edge: measure yours",
      })
  void sheetThatMayBeShort_isTold(String margin, String sheet, String said) throws Exception {
    assertThat(remarks(margin, 2, sheet))
        .contains(
            "Sheets can come up to 3.5 mm undersize each way (EN 315, as quoted elsewhere).", said);
  }

  @Test
  void pieceAloneOnABoughtSheet_isPointedOut() throws Exception {
    assertThat(remarks("5", 3, "330x130"))
        .contains("Sheet 2 holds only one piece, A-3.")
        .doesNotContain("compare");
    assertThat(remarks("5", 4, "330x130")).doesNotContain("only one piece");
  }

  /** The leads are 70 mm wide, of a sheet of 800 x 1200 mm for 20.00. */
  @Test
  void assumedLeads_areToldWithWhatTheyCost() {
    String text = HelixJob.TEXT.replace(", lead-in: 220", "");
    Job job = JobReader.read(text, "helix.yaml");

    AssumedWood wood = AssumedWood.of(job, job.structure().orElseThrow()).orElseThrow();

    double length =
        job.structure().orElseThrow().plan().spec().bottom().leadIn().millimetres()
            + job.structure().orElseThrow().plan().spec().top().leadIn().millimetres();
    assertThat(length).isPositive();
    assertThat(wood.plates()).isZero();
    assertThat(wood.leads()).isEqualTo(length * 70);
    assertThat(wood.money().minorUnits())
        .isEqualTo(Math.round(2000 * length * 70 / (800.0 * 1200)));
    // By hand: length x 70 mm x thickness x density is less than a kilogram.
    assertThat(wood.words(Figures.PLAIN))
        .matches("The assumed straight leads take [1-9][0-9]{2} g of plywood, .*");
    assertThat(AssumedWood.of(HelixJob.read(), HelixJob.read().structure().orElseThrow()))
        .isEmpty();
  }

  /** Supports that nobody asked for are bought all the same. */
  @Test
  void assumedSupports_areToldWithWhatTheyAskFor() {
    String text = HelixJob.TEXT.replaceAll("\\s+per-turn: \\d+", "");
    Job job = JobReader.read(text, "helix.yaml");
    HelixOrder order = job.structure().orElseThrow();
    HelixOrder stated = HelixJob.read().structure().orElseThrow();

    assertThat(AssumedWood.bought(order, Figures.PLAIN))
        .startsWith(
            "The assumed " + order.plan().spec().supports().perTurn() + " supports per turn need")
        .contains("nuts");
    assertThat(AssumedWood.bought(stated, Figures.PLAIN)).isEmpty();
  }
}
