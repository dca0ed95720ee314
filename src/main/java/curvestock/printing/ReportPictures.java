package curvestock.printing;

import curvestock.answer.Answer;
import curvestock.compare.Comparison;
import curvestock.drawing.HelixEndsDrawing;
import curvestock.drawing.HelixPlanDrawing;
import curvestock.drawing.HelixSideDrawing;
import curvestock.drawing.HelixTitle;
import curvestock.drawing.Legible;
import curvestock.drawing.Paper;
import curvestock.helix.HelixOrder;
import curvestock.machine.MachineSheet;
import curvestock.plan.Plan;
import curvestock.report.CompareCharts;
import curvestock.report.SheetFiles;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleFunction;

/**
 * The pictures of a printed report, drawn anew for the size that they have there: what is shrunk to
 * a page has letters that nobody can read, and scale bars that are false.
 */
public final class ReportPictures {

  /** Letters to a helix's width are tried from this many down to the fewest. */
  private static final int MOST_LETTERS = 84;

  private static final int FEWEST_LETTERS = 24;

  /** The small figures of the turns leave less to their letters. */
  private static final int FEWEST_IN_TURNS = 40;

  /** Heights of an unrolled helix are drawn this many times too tall. */
  private static final double STRETCH = 3;

  private ReportPictures() {}

  /**
   * A drawing whose letters are chosen so that they can be read where it stands.
   *
   * @param lettered the drawing with so many letters' heights to its width
   * @param fewest letters' heights to its width
   */
  record Drawn(DoubleFunction<Paper> lettered, int fewest) implements Illustration {
    @Override
    public void place(PageFlow flow, String caption) {
      // Smaller where the page goes on, if its letters can still be told from its lines.
      Optional<Paper> here = legible(flow, caption, true);
      Paper drawing =
          here.or(() -> legible(flow, caption, false)).orElseGet(() -> lettered.apply(fewest));
      flow.drawing(drawing, caption, here.isPresent());
    }

    private Optional<Paper> legible(PageFlow flow, String caption, boolean onThisPage) {
      for (int letters = MOST_LETTERS; letters >= fewest; letters -= 4) {
        Paper tried = lettered.apply(letters);
        double factor = flow.drawingFactor(tried, caption, onThisPage);
        if (smallest(tried) * factor >= Legible.SMALLEST) {
          return Optional.of(tried);
        }
      }
      return Optional.empty();
    }

    private static double smallest(Paper drawing) {
      return drawing.things().stream()
          .filter(Paper.Words.class::isInstance)
          .mapToDouble(thing -> ((Paper.Words) thing).size())
          .min()
          .orElse(Double.POSITIVE_INFINITY);
    }
  }

  /** The chart of segment sizes. */
  record Chart(Comparison comparison) implements Illustration {
    @Override
    public void place(PageFlow flow, String caption) {
      flow.chart(
          CompareCharts.WIDTH,
          CompareCharts.HEIGHT,
          CompareCharts.choicesPainter(comparison),
          caption);
    }
  }

  /** All pictures by the names that the report gives them. */
  public static Map<String, Illustration> of(Plan plan, Answer answer) {
    Map<String, Illustration> pictures = new TreeMap<>();
    plan.job()
        .structure()
        .ifPresent(
            order -> {
              HelixTitle title =
                  new HelixTitle(
                      answer.heading().title(),
                      answer.figures().style(),
                      answer.heading().invented());
              addHelix(pictures, order, title);
            });
    for (int i = 0; i < plan.layouts().size(); i++) {
      pictures.put(
          stem(SheetFiles.picture(i + 1)),
          new SheetPicture(plan.layouts().get(i), plan.labels().get(i)));
      if (plan.job().isForMachine()) {
        MachineSheet sheet = answer.machineSheets().orElseThrow().list().get(i);
        pictures.put(SheetFiles.toolpath(i + 1), new ToolpathPicture(sheet));
      }
    }
    answer
        .choices()
        .ifPresent(choices -> pictures.put("charts/choices", new Chart(choices.comparison())));
    return pictures;
  }

  private static void addHelix(
      Map<String, Illustration> pictures, HelixOrder order, HelixTitle title) {
    pictures.put(
        "helix-plan",
        new Drawn(letters -> HelixPlanDrawing.large(order, title, letters), FEWEST_LETTERS));
    pictures.put(
        "helix-turns",
        new Drawn(letters -> HelixPlanDrawing.turns(order, title, letters), FEWEST_IN_TURNS));
    pictures.put(
        "helix-side",
        new Drawn(
            letters -> HelixSideDrawing.figure(order.plan(), title, STRETCH, letters),
            FEWEST_LETTERS));
    pictures.put(
        "helix-ends",
        new Drawn(letters -> HelixEndsDrawing.figure(order.plan(), title), MOST_LETTERS));
  }

  private static String stem(String path) {
    return path.substring(0, path.lastIndexOf('.'));
  }
}
