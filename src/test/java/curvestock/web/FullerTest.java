package curvestock.web;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.app.Workshop;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.plan.Glance;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.Money;
import org.junit.jupiter.api.Test;

/** Which of the layouts that a search finds are told to the page. */
class FullerTest {

  private final Job job = Workshop.readJob(Jobs.PIECES, "pieces.yaml");
  private final Layout pattern = Glance.at(job).orElseThrow().layout();
  private final Fuller fuller = new Fuller(job);

  private Layout of(SheetStock sheet, int count) {
    return new Layout(sheet, job.cutting(), pattern.placements().subList(0, count));
  }

  @Test
  void layout_withMoreThanBefore_isToldWithWhatItGained() {
    SheetStock sheet = pattern.sheet();
    fuller.known(of(sheet, 1));

    assertThat(fuller.view(of(sheet, 1))).isEmpty();
    assertThat(fuller.view(of(sheet, 3)).orElseThrow().get("words").textValue())
        .contains("3 pieces")
        .contains("2 more than before");
    assertThat(fuller.view(of(sheet, 2))).isEmpty();
  }

  /** Pieces are moved together on the end of a sheet, which is told when the plan is made. */
  @Test
  void layout_onTheEndOfASheet_isNotTold() {
    SheetStock end =
        SheetStock.rectangle(
            pattern.sheet().name(),
            Length.ofMillimetres(1000),
            Length.ofMillimetres(1200),
            Length.ofMillimetres(12),
            Money.ZERO);

    assertThat(fuller.view(of(end, 3))).isEmpty();
  }
}
