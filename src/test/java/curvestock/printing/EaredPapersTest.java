package curvestock.printing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.answer.Answer;
import curvestock.answer.Figures;
import curvestock.answer.HandCuts;
import curvestock.answer.Table;
import curvestock.app.Workshop;
import curvestock.drawing.Paper;
import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.handwork.ArcMark;
import curvestock.handwork.MarkingOut;
import curvestock.handwork.PieceMarks;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.units.Count;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Papers of roadbed with so many corners that each needs its letter where a builder can find it.
 */
class EaredPapersTest {

  /** Invented: rods on ears. */
  private static final String EARS =
      """
      curvestock: 2
      title: Attic helix on ears
      invented: true
      units: mm
      currency: EUR
      sheets:
        - {name: ply, size: 1250 x 2500, thickness: 12.2, price: 40}
      cutting: {kerf: 4, margin: 8}
      helix:
        scale: H0
        turns: 1 1/2
        radius: 560
        width: 90
        climb: 180
        segments-per-turn: 4
        joint: {half-lap: 40}
        heights: {underlay: 5, ties: 2, rail: 2.5}
        supports:
          per-turn: 12
          foot-height: 60
          rods: {thread: M8, inset: -14, washer: 24, end-allowance: 40, ear: {width: 40, reach: 30}, stock: {name: rod, length: 1000, price: 3}}
      search: {effort: quick}
      """;

  private static Plan plan;
  private static List<PdfWords.Word> marking;
  private static String text;

  @BeforeAll
  static void plan() throws Exception {
    Job job = JobReader.read(EARS, "ears.yaml");
    plan =
        Workshop.plan(
            job,
            new PlanListener() {
              @Override
              public boolean stopped() {
                return true;
              }
            });
    marking = PdfWords.of(MarkingSheets.pdf(plan, SpareFonts.NONE));
    text = marking.stream().map(PdfWords.Word::text).collect(Collectors.joining(" "));
    text = text.replace('\u00A0', ' ').replaceAll("\\s+", " ");
  }

  private static List<PieceMarks> pieces() {
    return MarkingOut.of(plan.layouts().get(0), Optional.empty());
  }

  @Test
  void letters_areDifferent_noPageOfAPattern_andNeverThePointM() {
    Set<String> letters = new HashSet<>();
    for (int i = 0; i < 700; i++) {
      letters.add(PieceMarks.letter(i));
    }

    assertThat(letters).hasSize(700).doesNotContain("M").noneMatch(l -> l.matches(".*\\d.*"));
    assertThat(PieceMarks.letter(24)).isEqualTo("Z");
    assertThat(PieceMarks.letter(25)).isEqualTo("AA");
  }

  /** What a table or a sentence names, a picture on the same sheets shows as a word of its own. */
  @Test
  void everyCorner_hasItsLetterOnAPicture() {
    int most = pieces().stream().mapToInt(mark -> mark.corners().size()).max().orElseThrow();
    assertThat(most).isGreaterThan(26);

    Set<String> alone =
        marking.stream().map(word -> word.text().strip()).collect(Collectors.toSet());
    for (int i = 0; i < most; i++) {
      assertThat(alone).contains(PieceMarks.letter(i));
    }
  }

  @Test
  void everyCorner_hasItsLetterOnThePattern() {
    for (PaperTemplate template : PaperTemplates.templates(plan.job())) {
      List<String> words =
          template.drawing().things().stream()
              .filter(thing -> thing instanceof Paper.Words)
              .map(thing -> ((Paper.Words) thing).text())
              .toList();
      pieces().stream()
          .filter(mark -> mark.placement().piece().id().equals(template.id()))
          .findFirst()
          .ifPresent(
              mark ->
                  assertThat(words)
                      .contains(PieceMarks.letter(0))
                      .contains(PieceMarks.letter(mark.corners().size() - 1)));
    }
  }

  /** A circle meets an ear at its foot: there the swing ends, on every arc that is named. */
  @Test
  void everyArc_saysFromWhichCornerToWhichItIsCut() {
    for (PieceMarks mark : pieces()) {
      assertThat(mark.hasEars()).isTrue();
      for (ArcMark arc : mark.arcs()) {
        assertThat(text)
            .contains(PieceMarks.letter(arc.from()) + " to " + PieceMarks.letter(arc.to()));
      }
    }
    assertThat(text).contains("Stop each cut of the trammel at the end of its arc");
    Matcher only = Pattern.compile("at R [^;.]*? only (\\w+) to (\\w+)").matcher(text);
    List<String> stops = new ArrayList<>();
    while (only.find()) {
      stops.add(only.group(1));
    }
    assertThat(stops).isNotEmpty();
  }

  /** Between two arcs of one circle the outline leaves it and comes back: the ear. */
  @Test
  void ear_liesOnTheCircleThatAFullSwingWouldCut() {
    PieceMarks mark = pieces().get(0);
    List<Edge> edges = mark.placement().outline().outer().edges();
    List<Arc> outer =
        edges.stream()
            .filter(edge -> edge instanceof Arc)
            .map(edge -> (Arc) edge)
            .filter(arc -> Math.abs(arc.radius() - 605) < 1e-6)
            .toList();

    // 560 mm and half of 90 mm; three ears stand on a quarter, so there are three gaps or more.
    assertThat(outer).hasSizeGreaterThanOrEqualTo(3);
  }

  @Test
  void orderOfCutting_andTrammel_sayToStopAtTheEars() {
    String order = String.join(" ", HandCuts.of(plan).get(0).pivots(figures()));
    String trammel =
        PdfWords.of(TrammelSheet.pdf(plan.job(), SpareFonts.NONE).orElseThrow()).stream()
            .map(PdfWords.Word::text)
            .collect(Collectors.joining(" "))
            .replace('\u00A0', ' ')
            .replaceAll("\\s+", " ");

    assertThat(order).contains("stop the trammel where each arc ends");
    assertThat(trammel).contains("start after an ear and stop before the next");
    // The farthest hole is a rod's, 14 mm outside the edge; the bit runs half of 4 mm outside it.
    assertThat(trammel)
        .contains(
            "at least 619 mm long, and reach half your router's base beyond the bit at 607 mm");
  }

  private static Figures figures() {
    return Figures.of(plan.job());
  }

  /** Halfway along the longest arc of the outer edge, not along the first stub of it. */
  @Test
  void pointM_isNamedOnlyWhereAllCornersAre() {
    assertThat(text).doesNotContain("M x (mm)");
  }

  /** A sheet of the plan that holds more of a kind shows that so many fit. */
  @Test
  void perSheet_isNoLessThanAnyLayoutHolds() {
    Answer answer = Answer.of(plan);
    Table per = answer.bought().perSheet();
    for (int i = 0; i < per.rows().size(); i++) {
      String kind = per.words(i, "kind", answer.figures());
      long most =
          plan.layouts().stream()
              .mapToLong(
                  layout ->
                      layout.placements().stream()
                          .filter(placement -> placement.piece().id().equals(kind))
                          .count())
              .max()
              .orElse(0);
      assertThat(((Count) per.at(i, "found")).number()).as(kind).isGreaterThanOrEqualTo(most);
    }
  }
}
