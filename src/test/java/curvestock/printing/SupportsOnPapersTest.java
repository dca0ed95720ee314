package curvestock.printing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.answer.DemoPlans;
import curvestock.drawing.Paper;
import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.PieceKind;
import curvestock.helix.build.SupportRow;
import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.spec.Riser;
import curvestock.job.Job;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Papers show a support only where the table of supports has one. */
class SupportsOnPapersTest {

  private static final Path DEFAULT = Path.of("demo-data", "default.yaml");

  static List<Path> jobs() {
    return DemoPlans.files();
  }

  /** By the table alone, which is made before any paper. */
  private static Edges edges(HelixPlan plan, BedPiece.StationPlace place) {
    return plan.supports().rows().stream()
        .filter(row -> row.station().name().equals(place.station().name()))
        .filter(row -> Math.abs(row.at() - place.at()) < 1e-6)
        .findFirst()
        .map(SupportRow::edges)
        .orElse(Edges.NONE);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void patterns_showNoBlockWhereNoneWillStand(Path file) {
    Job job = DemoPlans.job(file);
    Optional<HelixPlan> helix = job.structure().map(HelixOrder::plan);
    if (helix.isEmpty() || !(helix.get().spec().supports().riser() instanceof Riser.WoodBlocks)) {
      return;
    }
    HelixPlan plan = helix.get();
    for (PaperTemplate template : PaperTemplates.templates(job)) {
      Optional<PieceKind> kind =
          plan.roadbed().kinds().stream().filter(k -> k.id().equals(template.id())).findFirst();
      boolean differ =
          template.notes().stream().anyMatch(note -> note.contains("different places"));
      if (kind.isEmpty() || differ) {
        continue;
      }
      List<BedPiece> pieces =
          plan.roadbed().pieces().stream().filter(p -> p.kindId().equals(template.id())).toList();
      int stand = 0;
      String notes = String.join("\n", template.notes());
      for (int i = 0; i < pieces.get(0).stations().size(); i++) {
        boolean outer = false;
        boolean inner = false;
        boolean middle = false;
        for (BedPiece piece : pieces) {
          Edges edges = edges(plan, piece.stations().get(i));
          outer |= edges.atOuter();
          inner |= edges.atInner();
          middle |= edges == Edges.MIDDLE;
        }
        stand += (outer ? 1 : 0) + (inner ? 1 : 0) + (middle ? 1 : 0);
        for (BedPiece piece : pieces) {
          Edges edges = edges(plan, piece.stations().get(i));
          String name = piece.stations().get(i).station().name();
          if ((outer && !edges.atOuter()) || (inner && !edges.atInner())) {
            assertThat(notes).containsPattern("No block stands at .*\\b" + name + "\\b");
            assertThat(notes)
                .containsPattern(name + " \\(pieces? [^)]*\\b" + piece.number() + "\\b");
          }
        }
      }
      assertThat(blocks(template.drawing())).as(file + " " + template.id()).isEqualTo(stand);
    }
  }

  private static long blocks(Paper drawing) {
    return drawing.things().stream()
        .filter(thing -> thing instanceof Paper.Shape)
        .map(thing -> (Paper.Shape) thing)
        .filter(shape -> shape.pen().dashes().equals("1.5 1.5"))
        .count();
  }

  /** S12's outer block is left out of the default job, where the entry's lead passes. */
  @Test
  void pattern_ofTheDefaultJob_saysWhichPiecesHaveNoOuterBlock() {
    PaperTemplate quarter =
        PaperTemplates.templates(DemoPlans.job(DEFAULT)).stream()
            .filter(template -> template.id().equals("R2"))
            .findFirst()
            .orElseThrow();

    assertThat(quarter.notes())
        .anySatisfy(
            note ->
                assertThat(note)
                    .isEqualTo(
                        "No block stands at the outer edge at S12 (pieces 4, 8, 12, 16, 20): skip it there."));
  }

  /** Twelve supports and four pieces a turn: every fourth piece ends on the first one above. */
  @Test
  void label_ofAPieceThatEndsOnTheNextTurn_namesThatTurn() throws IOException {
    String text;
    byte[] labels = LabelSheet.pdf(DemoPlans.plan(DEFAULT), SpareFonts.NONE);
    try (PDDocument document = Loader.loadPDF(labels)) {
      text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }

    for (int turn = 1; turn <= 5; turn++) {
      assertThat(text)
          .contains("rests on S10 S11 S12 (inner edge), then S1 of turn " + (turn + 1) + " ");
    }
    assertThat(text).contains("rests on S1 S2 S3 S4 ").doesNotContain("S12 S1 ");
  }
}
