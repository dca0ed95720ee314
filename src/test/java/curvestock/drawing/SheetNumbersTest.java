package curvestock.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.answer.DemoPlans;
import curvestock.app.Workshop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.layout.Layout;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A sheet's drawing printed on one page: which piece is which must be readable. */
class SheetNumbersTest {

  /** Six points, in millimetres; smaller print is hard to read at arm's length: common practice. */
  private static final double SIX_POINTS = 6 * 25.4 / 72;

  /** Letter lying, less a margin of 6 mm, in millimetres. */
  private static final double WIDE = 279.4 - 12;

  private static final double HIGH = 215.9 - 12;

  private static final Pattern SIZE =
      Pattern.compile("width=\"([0-9.]+)mm\" height=\"([0-9.]+)mm\"");
  private static final Pattern TEXT = Pattern.compile("<text ([^>]*)>([^<]*)</text>");

  private record Words(String text, Point at, double printed) {}

  @ParameterizedTest
  @ValueSource(strings = {"porch-helix-store-cut", "foundry-oval", "helix/boathouse-spiral"})
  void number_ofEveryPiece_isReadable(String demo) {
    assertThat(unreadable(DemoPlans.plan(Path.of("demo-data", demo + ".yaml")))).isEmpty();
  }

  /** More than a hundred blocks of 1 1/2 in among the roadbed. */
  @Test
  void number_amongManyBlocks_isReadableButForAFew() throws Exception {
    String text =
        Files.readString(Path.of("demo-data", "default.yaml"))
            .replaceAll("      board: \\{.*\n", "      from-sheets: true\n");
    Job job = JobReader.read(text, "blocks.yaml");
    Plan plan =
        Workshop.plan(
            job,
            new PlanListener() {
              @Override
              public boolean stopped() {
                return true;
              }
            });
    // A block of three digits, or a narrow brace, that lies askew has no room for six points.
    assertThat(unreadable(plan))
        .hasSizeLessThan(4)
        .allMatch(label -> label.matches("block-\\d+-\\d{3}|brace-\\d+-\\d+"));
    assertThat(svg(plan, 0)).contains("19-100 for block-19-100");
  }

  private static String svg(Plan plan, int sheet) {
    List<String> labels = plan.labels().get(sheet);
    return SheetDrawing.annotated(
        plan.layouts().get(sheet),
        new SheetTitle(
            "Job", sheet + 1, plan.layouts().size(), plan.job().style(), "", true, labels));
  }

  /** Pieces that hold no bold text of six points that is their number or its end. */
  private static List<String> unreadable(Plan plan) {
    List<String> unreadable = new ArrayList<>();
    for (int sheet = 0; sheet < plan.layouts().size(); sheet++) {
      Layout layout = plan.layouts().get(sheet);
      List<Words> words = words(svg(plan, sheet), layout.sheet().outline().box().maxY());
      for (int i = 0; i < layout.placements().size(); i++) {
        Outline piece = layout.placements().get(i).outline();
        String label = plan.labels().get(sheet).get(i);
        boolean found =
            words.stream()
                .filter(each -> piece.contains(each.at()) && each.printed() >= SIX_POINTS)
                .flatMap(each -> Stream.of(each.text().split("  ", -1)[0]))
                .anyMatch(
                    text ->
                        label.equals(text)
                            || ShortName.of(label).equals(text)
                            || label.matches("block-\\d+-" + text));
        if (!found) {
          unreadable.add(label);
        }
      }
    }
    return unreadable;
  }

  /** Bold words, where they stand on the sheet and how large they are printed. */
  private static List<Words> words(String svg, double top) {
    Matcher size = SIZE.matcher(svg);
    assertThat(size.find()).isTrue();
    double width = Double.parseDouble(size.group(1));
    double height = Double.parseDouble(size.group(2));
    double factor =
        Math.max(Math.min(WIDE / width, HIGH / height), Math.min(HIGH / width, WIDE / height));
    List<Words> words = new ArrayList<>();
    Matcher text = TEXT.matcher(svg);
    while (text.find()) {
      if (text.group(1).contains("bold")) {
        double font = number(text.group(1), "font-size");
        double y = top - number(text.group(1), "y") + 0.36 * font;
        words.add(
            new Words(text.group(2), new Point(number(text.group(1), "x"), y), font * factor));
      }
    }
    return words;
  }

  private static double number(String attributes, String name) {
    Matcher found = Pattern.compile("(?:^| )" + name + "=\"([-0-9.]+)\"").matcher(attributes);
    assertThat(found.find()).isTrue();
    return Double.parseDouble(found.group(1));
  }
}
