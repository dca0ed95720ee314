package curvestock.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.piece.Demand;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BatchTest {

  private static final String JOB =
      """
      curvestock: 1
      title: TITLE
      units: in
      currency: $
      sheets:
        - {name: panel, size: 24x16, thickness: 0.476, price: 10}
      cutting: {kerf: 1/8, margin: 1/4}
      helix: {turns: 1/2, radius: 9, width: 3, segment-angle: 60}
      pieces:
        - {name: plate, count: 2, strip: {length: 4, width: 2}}
      """;

  private static Job job(String title) {
    return job(title, "", "");
  }

  private static Job job(String title, String find, String put) {
    return JobReader.read(JOB.replace("TITLE", title).replace(find, put), title + ".yaml");
  }

  @Test
  void jobs_together_keepTheirPiecesApartByLetter_onSheetsNamedOnce() {
    Batch batch = Batch.of(List.of(job("one"), job("two")));
    Job together = batch.together();

    assertThat(together.demands())
        .extracting(demand -> demand.piece().id())
        .containsExactly("A.S", "A.A", "B.S", "B.A");
    assertThat(together.demands()).extracting(Demand::count).containsExactly(3, 2, 3, 2);
    assertThat(together.sheets()).hasSize(1);
    assertThat(together.title()).isEqualTo("2 jobs: one, two");
    assertThat(batch.members().get(0).owns("A.S")).isTrue();
    assertThat(batch.members().get(0).owns("AA.S")).isFalse();
  }

  @Test
  void jobs_withSheetsOfOtherNames_haveAllOfThem() {
    Batch batch = Batch.of(List.of(job("one"), job("two", "name: panel", "name: other panel")));

    assertThat(batch.together().sheets())
        .extracting(sheet -> sheet.name())
        .containsExactly("panel", "other panel");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "kerf: 1/8        | kerf: 1/16        | must be cut alike",
        "margin: 1/4      | margin: 1/2       | has kerf 1/8 in, gap 1/8 in, margin 1/4 in and job B",
        "currency: $      | currency: EUR     | must have one currency",
        "thickness: 0.476 | thickness: 0.7    | must be of one thickness",
        "price: 10        | price: 12         | is not the same in job A (one) and job B (two)",
        "size: 24x16      | size: 24x17       | is not the same in"
      })
  void jobs_thatCannotShareSheets_areRefusedWithTheReason(String find, String put, String reason) {
    List<Job> jobs = List.of(job("one"), job("two", find, put));

    assertThatThrownBy(() -> Batch.of(jobs))
        .isInstanceOf(BatchException.class)
        .hasMessageContaining(reason);
  }

  @Test
  void letters_goOnBeyondZ() {
    assertThat(PieceReader.letters(28)).endsWith("Z", "AA", "AB").contains("S", "L");
  }
}
