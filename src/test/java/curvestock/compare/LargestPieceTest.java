package curvestock.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.answer.Choices;
import curvestock.answer.CompareWords;
import curvestock.job.DefaultJob;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.packing.Effort;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.report.ComparePaper;
import curvestock.units.Angle;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** The largest piece of a size is often an end piece with its lead: tables and limits say so. */
class LargestPieceTest {

  private static Comparison thirds(String more) throws Exception {
    Job job = JobReader.read(DefaultJob.text() + more, "job");
    Question question =
        new Question(List.of(Angle.ofDegrees(120)), false, OptionalInt.empty(), false);
    return new Comparer(job.with(job.search().at(Effort.QUICK)), question, TestJobs.untilPlanned())
        .compare();
  }

  /**
   * A third of 28 1/4 in outer radius and a 2 in lap: 120° and 2/26 rad, 4.407°, more; across its
   * ends 2 × 28.25 × sin(62.2°).
   */
  @Test
  void wholeThird_isMuchShorterThanTheEndPieceWithItsLead() throws Exception {
    Comparison compared = thirds("");
    SegmentOption thirds = compared.options().get(0);
    double across = 2 * 28.25 * Math.sin(Math.toRadians((120 + Math.toDegrees(2 / 26.0)) / 2));

    assertThat(thirds.whole().length().inches()).isCloseTo(across, within(1e-3));
    assertThat(thirds.isLargestWithLead()).isTrue();
    assertThat(thirds.largest().length().inches()).isGreaterThan(across + 15);
    assertThat(String.join(" ", ComparePaper.brief(Choices.of(compared))).replaceAll(" +", " "))
        .contains("Largest piece,")
        .contains("its lead");
  }

  @Test
  void limitThatOnlyEndPiecesBreak_isBlamedOnTheirLeads() throws Exception {
    Comparison small = thirds("rates: {largest-piece: 60x30 in}\n");
    CompareWords words = new CompareWords(Choices.of(small));

    assertThat(String.join(" ", words.remarks())).contains("1/3 (120°) (only the end pieces");
    assertThat(words.decision().orElseThrow())
        .contains("shorten `lead-in:`")
        .doesNotContain("try shorter segments");
  }

  @Test
  void limitThatEverySegmentBreaks_asksForShorterSegments() throws Exception {
    CompareWords words = new CompareWords(Choices.of(thirds("rates: {largest-piece: 40x30 in}\n")));

    assertThat(words.decision().orElseThrow()).contains("try shorter segments");
  }

  /** The entry piece is the exit piece mirrored; found by whole degrees, one was 5/32 in wider. */
  @Test
  void mirroredEndPieces_fitTheSameRectangle() {
    List<Piece> ends =
        JobReader.read(DefaultJob.text(), "job").demands().stream()
            .map(Demand::piece)
            .filter(piece -> piece.name().contains("straight"))
            .toList();
    EnclosingRectangle one = EnclosingRectangle.of(ends.get(0));
    EnclosingRectangle other = EnclosingRectangle.of(ends.get(1));

    assertThat(ends).hasSize(2);
    assertThat(one.length().millimetres()).isCloseTo(other.length().millimetres(), within(0.2));
    assertThat(one.width().millimetres()).isCloseTo(other.width().millimetres(), within(0.2));
  }
}
