package curvestock.printing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.app.Workshop;
import curvestock.drawing.Ink;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.drawing.Paper.Words;
import curvestock.drawing.PaperSize;
import curvestock.geometry.Box;
import curvestock.geometry.Point;
import curvestock.job.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names on full-size papers: whole on a page, and clear of each other and of lines. */
class LetteringTest {

  private static final Pen PEN = Pen.of(Ink.CUT, 0.3);

  private static List<Words> words(Paper paper) {
    return paper.things().stream().filter(Words.class::isInstance).map(Words.class::cast).toList();
  }

  private static List<Box> boxes(Paper paper) {
    return words(paper).stream().map(word -> Lettering.box(word, word.at())).toList();
  }

  private static boolean shows(Box page, Box word) {
    return page.minX() <= word.minX()
        && page.maxX() >= word.maxX()
        && page.minY() <= word.minY()
        && page.maxY() >= word.maxY();
  }

  @Test
  void word_onALineAndASeam_movesClearOfBoth() {
    Paper drawing = new Paper();
    drawing.line(new Point(0, 0), new Point(400, 0), PEN);
    drawing.line(new Point(0, 40), new Point(400, 40), PEN);
    TileGrid bare = TileGrid.of(drawing, PaperSize.A4);
    double seam = bare.cell(bare.tiles().get(0)).maxX();
    drawing.text("joint 90°: J1 J5", new Point(seam, 0), 4, Anchor.MIDDLE, true);

    Words before = words(drawing).get(0);
    Words after = words(Lettering.clear(drawing, TileGrid.of(drawing, PaperSize.A4))).get(0);

    Box box = Lettering.box(after, after.at());
    TileGrid grid = TileGrid.of(drawing, PaperSize.A4);
    assertThat(grid.tiles()).hasSizeGreaterThan(1);
    assertThat(grid.tiles().stream().map(grid::window)).anyMatch(page -> shows(page, box));
    assertThat(box.minY() > 0 || box.maxY() < 0).isTrue();
    assertThat(after.at().distance(before.at())).isLessThan(40);
  }

  @Test
  void word_thatStandsClear_staysWhereItIs() {
    Paper drawing = new Paper();
    drawing.line(new Point(0, 0), new Point(150, 0), PEN);
    drawing.text("S1", new Point(60, 30), 4, Anchor.MIDDLE, true);

    Paper clear = Lettering.clear(drawing, TileGrid.of(drawing, PaperSize.A4));

    assertThat(clear.things()).isEqualTo(drawing.things());
  }

  /** Names of joints were as wide as the roadbed, and cut in two wherever a page ended. */
  @ParameterizedTest
  @ValueSource(
      strings = {"default", "foundry-oval", "helix/orchard-climb", "helix/boathouse-spiral"})
  void names_ofEveryFullSizeDrawing_standWholeOnAPageAndApart(String demo) throws IOException {
    String text = Files.readString(Path.of("demo-data", demo + ".yaml"));
    Job job = Workshop.readJob(text, demo);
    List<Paper> drawings = new ArrayList<>();
    PaperTemplates.templates(job).forEach(template -> drawings.add(template.drawing()));
    drawings.add(Footprint.drawing(job, job.structure().orElseThrow()));

    for (Paper drawing : drawings) {
      TileGrid grid = TileGrid.of(drawing, job.paper());
      Paper clear = Lettering.clear(drawing, grid);
      List<Box> boxes = boxes(clear);
      for (int i = 0; i < boxes.size(); i++) {
        Box box = boxes.get(i);
        String name = words(clear).get(i).text();
        assertThat(grid.tiles().stream().map(grid::window).anyMatch(page -> shows(page, box)))
            .as(name)
            .isTrue();
        for (int j = 0; j < i; j++) {
          Box other = boxes.get(j);
          boolean apart =
              box.minX() >= other.maxX()
                  || other.minX() >= box.maxX()
                  || box.minY() >= other.maxY()
                  || other.minY() >= box.maxY();
          assertThat(apart).as(name + " on " + words(clear).get(j).text()).isTrue();
        }
      }
    }
  }
}
